using System.Globalization;
using Finwright.Assessment.Packing;
using Finwright.Strength.Bench;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Reviewing;

namespace Finwright.Terminal;

/// <summary>A build held against its prediction, as plain text.</summary>
internal static class ReviewText
{
    /// <summary>Writes the answer.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="review">The answer.</param>
    public static void Write(TextStreams streams, ReviewSummary review)
    {
        TextWriter o = streams.Out;
        o.WriteLine(review.Build);
        string of = string.Join(", ", new[] { review.Filament, review.Resin }.Where(batch => batch.Length > 0));
        o.WriteLine(Wrapping.Wrap($"Made of {review.Revision}{(review.MadeOn is DateOnly day ? $", finished on {day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}" : "")}{(of.Length > 0 ? $"; {of}" : "")}. {review.Sentence}", streams.Width));
        o.WriteLine();
        o.WriteLine($"  {"",-29}{"expected",8}  {"range",-16}{"measured",8}  ratio");
        foreach (ReviewedSummary line in review.Lines)
            Row(o, line.Unit.Length > 0 ? $"{line.Name}, {line.Unit}" : line.Name, line);
        if (review.TakenFromStock is double taken)
            o.WriteLine($"  taken from the stock, at the prices paid: {taken.ToString("0.00", CultureInfo.InvariantCulture)} {review.StockCurrency}".TrimEnd());
        if (review.Readings.Count > 0)
            Readings(o, review);
        WriteFindings(streams, review, says: false);
        if (review.Used.Count > 0)
        {
            Heading(o, "What earlier builds taught went into the prediction");
            WriteLearned(streams, review.Used);
        }

        if (review.Taught.Count > 0)
        {
            Heading(o, "What this build taught; it goes into the predictions of others");
            WriteTaught(streams, review.Taught);
        }
    }

    /// <summary>Writes which assumption was off, and what was not measured.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="review">The answer.</param>
    /// <param name="says">Whether its sentence comes first.</param>
    public static void WriteFindings(TextStreams streams, ReviewSummary review, bool says = true)
    {
        TextWriter o = streams.Out;
        if (says)
            Item(streams, review.Sentence);
        if (review.Remarks.Count > 0 && !says)
            Heading(o, "Which assumption was off");
        foreach (ReviewRemark remark in review.Remarks)
            Item(streams, remark.Text);
        if (review.BenchProblem is string problem)
            Item(streams, $"The bench was not predicted: {problem}");
        if (review.Problems.Length > 0)
            Item(streams, $"Noted while it was made: {review.Problems}");
        if (review.NotMeasured.Count > 0)
        {
            if (!says)
                o.WriteLine();
            Item(streams, $"Not measured: {string.Join(", ", review.NotMeasured)}.");
        }
    }

    /// <summary>Writes factors that were joined from earlier builds.</summary>
    public static void WriteLearned(TextStreams streams, IReadOnlyList<LearnedSummary> learned)
    {
        foreach (LearnedSummary own in learned)
            Item(streams, $"{LearnedWords.Name(own.Quantity)}: {Factor(own.Factor, own.Low, own.High)}, from {string.Join(", ", own.Builds)}{(own.SameBatch ? "" : " (other batches of the same material)")}; {(own.Calibrations.Count == 1 ? "calibration" : "calibrations")} {string.Join(", ", own.Calibrations)}.");
    }

    /// <summary>Writes calibrations.</summary>
    public static void WriteTaught(TextStreams streams, IReadOnlyList<CalibrationSummary> taught)
    {
        foreach (CalibrationSummary own in taught)
            Item(streams, $"{LearnedWords.Name(own.Quantity)}: {Factor(own.Factor, own.Low, own.High)}{(own.Sessions.Count > 0 ? $", from readings {string.Join(", ", own.Sessions)}" : "")}; calibration {own.Number}.");
    }

    private static void Readings(TextWriter o, ReviewSummary review)
    {
        foreach (IGrouping<long, ReviewedReadingSummary> session in review.Readings.GroupBy(reading => reading.Session))
        {
            ReviewedReadingSummary first = session.First();
            Heading(o, $"Readings {session.Key}, {first.TakenOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}, root {Choice.Of(first.RootHold)}");
            foreach (ReviewedReadingSummary own in session)
                Row(o, $"{own.MassKg:0.##} kg at {own.AtMm:0} {Letter(own.AtChord)}, {own.ReadAtMm:0} {(own.Quantity is BenchQuantity.Twist ? "twist, °" : $"{Letter(own.ReadChord)}, mm")}", own.Reading);
        }

        o.WriteLine("  weight, where it hung, where it was read: mm below the hull, and");
        o.WriteLine("  L at the leading edge, M mid-chord, T at the trailing edge");
        foreach ((string what, double? mean) in (ReadOnlySpan<(string, double?)>)[("deflection", review.MeanDeflectionRatio), ("twist", review.MeanTwistRatio)])
            if (mean is double ratio)
                o.WriteLine($"  on average the {what} is {ratio.ToString("0.00", CultureInfo.InvariantCulture)} times what was expected");
    }

    private static void Row(TextWriter o, string name, ReviewedSummary line)
    {
        string range = line is { Low: double low, High: double high } ? $"{Number(line, low)} to {Number(line, high)}" : "";
        string ratio = line.Ratio is double own && Math.Abs(line.Predicted!.Value) > line.Doubt ? own.ToString("0.00", CultureInfo.InvariantCulture) : "";
        string state = line.State switch
        {
            ReviewState.Below => "  below",
            ReviewState.Above => "  above",
            _ => "",
        };
        o.WriteLine($"  {name,-29}{(line.Predicted is double predicted ? Number(line, predicted) : "-"),8}  {range,-16}{(line.Measured is double measured ? Number(line, measured) : "-"),8}  {ratio,5}{state}".TrimEnd());
    }

    private static char Letter(Design.ChordPlace place) => place switch
    {
        Design.ChordPlace.LeadingEdge => 'L',
        Design.ChordPlace.MidChord => 'M',
        Design.ChordPlace.TrailingEdge => 'T',
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "Unknown place."),
    };

    private static string Number(ReviewedSummary line, double value) => (Math.Round(value, line.Decimals) + 0.0).ToString("F" + line.Decimals, CultureInfo.InvariantCulture);

    private static string Factor(double factor, double low, double high) => $"{factor:0.000} ({low:0.000} to {high:0.000})";

    private static void Heading(TextWriter o, string text)
    {
        o.WriteLine();
        o.WriteLine(text);
    }

    private static void Item(TextStreams streams, string text) => streams.Out.WriteLine("  " + Wrapping.Wrap(text, streams.Width, 4, 2));
}
