using Finwright.Assessment.Packing;

namespace Finwright.Terminal;

/// <summary>Notes under a heading: what an answer assumes, what it leaves open, what to take care of.</summary>
internal static class NotesText
{
    /// <summary>Writes what an answer assumes, and what to take care of.</summary>
    public static void Write(TextStreams streams, IReadOnlyList<string> notes) => Write(streams, "How sure this is, and what to take care of", notes);

    /// <summary>Writes notes under a heading; nothing when there are none.</summary>
    public static void Write(TextStreams streams, string heading, IReadOnlyList<string> notes)
    {
        if (notes.Count == 0)
            return;
        streams.Out.WriteLine();
        streams.Out.WriteLine(heading);
        foreach (string note in notes)
            streams.Out.WriteLine("  " + Wrapping.Wrap(note, streams.Width, 4, 2));
    }
}
