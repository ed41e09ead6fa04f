using System.Globalization;
using Finwright.Assessment.Packing;
using Finwright.Commands.Bench;

namespace Finwright.Terminal;

/// <summary>Readings that are kept, and what they taught, as plain text.</summary>
internal static class BenchSessionText
{
    /// <summary>Says what was kept.</summary>
    public static void WriteKept(TextStreams streams, BenchSessionAnswer session) =>
        streams.Out.WriteLine(Wrapping.Wrap($"Kept {Lines(session)} of {session.Build} as readings {session.Number}, root {Choice.Of(session.RootHold)}. \"finwright built show\" holds them against the prediction; \"finwright bench learn\" learns from them.", streams.Width));

    /// <summary>Lists readings.</summary>
    public static void WriteList(TextStreams streams, BenchListAnswer answer)
    {
        TextWriter o = streams.Out;
        if (answer.Sessions.Count == 0)
        {
            o.WriteLine(Wrapping.Wrap("No readings are kept. \"finwright bench add\" keeps some.", streams.Width));
            return;
        }

        o.WriteLine("  number  day         root      lines  build");
        foreach (BenchSessionAnswer session in answer.Sessions)
        {
            string head = $"  {session.Number,6}  {session.TakenOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}  {Choice.Of(session.RootHold),-8}  {session.Readings.Count,5}  ";
            string taught = session.TaughtCalibrations.Count > 0 ? $" (taught calibration{(session.TaughtCalibrations.Count == 1 ? "" : "s")} {string.Join(", ", session.TaughtCalibrations)})" : "";
            o.WriteLine(head + Wrapping.Wrap($"{session.Build}{taught}{(session.Note.Length > 0 ? $": {session.Note}" : "")}", streams.Width, head.Length, head.Length));
        }
    }

    /// <summary>Says what a build taught.</summary>
    public static void WriteLearned(TextStreams streams, BenchLearnAnswer answer)
    {
        TextWriter o = streams.Out;
        o.WriteLine(Wrapping.Wrap($"Learned from {answer.Build}: measured over expected, against what the design's materials say. It goes into the predictions of further builds of the same batches.", streams.Width));
        o.WriteLine();
        ReviewText.WriteTaught(streams, answer.Calibrations);
        NotesText.Write(streams, "What the readings leave open", answer.Remarks);
        NotesText.Write(streams, "Not learned", answer.NotTaught);
    }

    private static string Lines(BenchSessionAnswer session) => session.Readings.Count == 1 ? "one line" : $"{session.Readings.Count} lines";
}
