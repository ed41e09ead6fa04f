using System.Globalization;
using Finwright.Assessment.Packing;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Reviewing;

namespace Finwright.Terminal;

/// <summary>Two fins side by side, as plain text.</summary>
internal static class SideBySideText
{
    /// <summary>Writes the answer.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="summary">The answer.</param>
    /// <param name="svg">The file that both were drawn into; null for none.</param>
    public static void Write(TextStreams streams, CompareSummary summary, string? svg)
    {
        TextWriter o = streams.Out;
        o.WriteLine(Wrapping.Wrap($"A {summary.First.Label}", streams.Width, 2));
        o.WriteLine(Wrapping.Wrap($"B {summary.Second.Label}", streams.Width, 2));
        o.WriteLine(Wrapping.Wrap(summary.Sentence, streams.Width));
        if (summary.Inputs.Count > 0)
            Heading(o, "What was changed");
        WriteInputs(streams, summary.Inputs);
        Results(streams, summary.Results);
        if (summary.Measured.Count > 0)
            Measured(streams, summary.Measured);
        // Two fins of the same batches use the same: it is said once.
        bool isAlike = summary.First.Used.Select(Told).SequenceEqual(summary.Second.Used.Select(Told));
        foreach (ComparedSideSummary side in (ComparedSideSummary[])[summary.First, summary.Second])
        {
            if (side.Review is { } review)
            {
                Heading(o, $"{side.Label}, held against its prediction");
                ReviewText.WriteFindings(streams, review);
            }

            if (side.Used.Count > 0 && !isAlike)
                Used(streams, $"{side.Label}: what builds have taught went into its results", side);
            if (side.Problem is string problem)
                Paragraph(streams, $"{side.Label}: {problem}");
        }

        if (isAlike && summary.First.Used.Count > 0)
            Used(streams, "What builds have taught went into the results of both", summary.First);
        if (summary.NotCompared.Count > 0)
            Paragraph(streams, $"Not worked out of both, so not compared: {string.Join(", ", summary.NotCompared.Select(Choice.Of))}.");
        if (svg is not null)
            Paragraph(streams, $"Wrote {svg}: both over each other.");
    }

    /// <summary>Writes in which fields two designs differ, a line each.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="inputs">The fields.</param>
    public static void WriteInputs(TextStreams streams, IReadOnlyList<DesignChange> inputs)
    {
        foreach (DesignChange change in inputs)
        {
            string unit = change.Unit.Length > 0 ? $" {change.Unit}" : "";
            string what = change.Kind switch
            {
                DesignChangeKind.Added => $"{change.New}{unit}, before not given",
                DesignChangeKind.Removed => $"no longer given, before {change.Old}{unit}",
                _ => $"{change.Old} -> {change.New}{unit}{Percent(change.Percent)}",
            };
            Item(streams, $"{change.Path["$.".Length..]}: {what}");
        }
    }

    private static (LearnedQuantity Quantity, double Factor, double Low, double High) Told(LearnedSummary own) => (own.Quantity, own.Factor, own.Low, own.High);

    private static void Used(TextStreams streams, string heading, ComparedSideSummary side)
    {
        Heading(streams.Out, heading);
        ReviewText.WriteLearned(streams, side.Used);
    }

    private static void Results(TextStreams streams, IReadOnlyList<ResultChangeSummary> results)
    {
        foreach (IGrouping<string, ResultChangeSummary> group in results.GroupBy(change => change.TurnsVerdict ? "Verdicts that turned" : Title(change.Group), StringComparer.Ordinal))
        {
            Heading(streams.Out, group.Key);
            foreach (ResultChangeSummary change in group)
                Item(streams, $"{change.Name}: {Or(change.OldShown)} -> {Or(change.NewShown)}{Percent(change.Percent)}");
        }

        static string Or(string shown) => shown.Length > 0 ? shown : "none";
    }

    private static void Measured(TextStreams streams, IReadOnlyList<MeasuredPair> pairs)
    {
        Heading(streams.Out, "What was measured");
        foreach (MeasuredPair pair in pairs)
        {
            string format = "F" + pair.Decimals;
            string Number(double value) => value.ToString(format, CultureInfo.InvariantCulture);
            string expected = pair is { FirstPredicted: double first, SecondPredicted: double second } ? $"; expected {Number(first)} -> {Number(second)}" : "";
            Item(streams, $"{pair.Name}: {Number(pair.First)} -> {Number(pair.Second)} {pair.Unit}{(pair.IsBeyondDoubt ? Percent(pair.Percent) : ", the same within the doubt of measuring")}{expected}");
        }
    }

    private static string Title(ResultGroup group) => group switch
    {
        ResultGroup.Shape => "Shape",
        ResultGroup.Water => "In the water",
        ResultGroup.Strength => "Strength",
        ResultGroup.Print => "Print",
        ResultGroup.Pour => "Pour",
        ResultGroup.Cure => "Cure",
        ResultGroup.Plan => "Mass, cost and time",
        ResultGroup.Bench => "On the bench",
        ResultGroup.Verdicts => "Verdicts",
        _ => throw new ArgumentOutOfRangeException(nameof(group), group, "Unknown group."),
    };

    private static string Percent(double? percent) => percent switch
    {
        null => "",
        double value when Math.Abs(value) < 0.05 => "",
        double value => $" ({value.ToString(Math.Abs(value) < 10 ? "+0.0;-0.0" : "+0;-0", CultureInfo.InvariantCulture)} %)",
    };

    private static void Heading(TextWriter o, string text)
    {
        o.WriteLine();
        o.WriteLine(text);
    }

    private static void Item(TextStreams streams, string text) => streams.Out.WriteLine("  " + Wrapping.Wrap(text, streams.Width, 4, 2));

    private static void Paragraph(TextStreams streams, string text)
    {
        streams.Out.WriteLine();
        streams.Out.WriteLine(Wrapping.Wrap(text, streams.Width));
    }
}
