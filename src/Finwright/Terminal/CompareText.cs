using Finwright.Assessment.Packing;
using Finwright.Commands.Outings;
using Finwright.Workshop.Tracks;

namespace Finwright.Terminal;

/// <summary>Two fins compared, as plain text.</summary>
internal static class CompareText
{
    /// <summary>Writes the answer.</summary>
    public static void Write(TextStreams streams, CompareAnswer answer)
    {
        TextWriter o = streams.Out;
        o.WriteLine(Wrapping.Wrap(answer.Sentence, streams.Width));
        o.WriteLine();
        TextColumns columns = new("build", " runs", " left out", " days", " mean, kn", " spread, kn", "");
        foreach (CompareSideAnswer side in (CompareSideAnswer[])[answer.First, answer.Second])
            columns.Add(side.Build, $"{side.RunsCompared}", $"{side.RunsLeftOut}", $"{side.Days}", $"{side.MeanKnots:0.00}", $"{side.SpreadKnots:0.00}", "");
        columns.Write(streams);
        if (answer.DifferenceKnots is double difference)
        {
            o.WriteLine();
            o.WriteLine("  " + Wrapping.Wrap($"difference {difference:0.00} kn, range {answer.LowKnots:0.00} to {answer.HighKnots:0.00} kn; {Days(answer.DayHandling)}", streams.Width, 2, 2));
        }

        if (answer.MeasuredSpeedsSetAside)
        {
            o.WriteLine();
            o.WriteLine("  " + Wrapping.Wrap("Some tracks tell no speed, so that all speeds were worked out from positions: like is compared with like.", streams.Width, 2, 2));
        }

        foreach (TrackFindingAnswer finding in answer.Findings)
        {
            o.WriteLine();
            // Why nothing was compared is said at the top.
            o.WriteLine("  " + Wrapping.Wrap($"{(finding.Severity == Design.Severity.Error ? "" : finding.Message + " ")}What to do: {finding.Remedy}", streams.Width, 2, 2));
        }
    }

    private static string Days(DayHandling handling) => handling == DayHandling.WithinDays ? "taken within each day and averaged" : "between the means of days";
}
