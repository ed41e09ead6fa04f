using Finwright.Assessment.Packing;

namespace Finwright.Terminal;

/// <summary>What an answer assumes, and what to take care of.</summary>
internal static class NotesText
{
    /// <summary>Writes the notes under their heading.</summary>
    public static void Write(TextStreams streams, IReadOnlyList<string> notes)
    {
        if (notes.Count == 0)
            return;
        streams.Out.WriteLine();
        streams.Out.WriteLine("How sure this is, and what to take care of");
        foreach (string note in notes)
            streams.Out.WriteLine("  " + Wrapping.Wrap(note, streams.Width, 4, 2));
    }
}
