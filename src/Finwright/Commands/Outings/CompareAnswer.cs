using Finwright.Assessment.Packing;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Tracks;

namespace Finwright.Commands.Outings;

/// <summary>Two fins compared, as JSON.</summary>
internal sealed record CompareAnswer
{
    public string Kind { get; init; } = "finwright-compare-outings";

    public int Layout { get; init; } = 1;

    public required string MadeBy { get; init; }

    public required string Sentence { get; init; }

    public required FairVerdict Verdict { get; init; }

    public required DayHandling DayHandling { get; init; }

    public required SpeedSource SpeedSource { get; init; }

    public required bool MeasuredSpeedsSetAside { get; init; }

    public required CompareSideAnswer First { get; init; }

    public required CompareSideAnswer Second { get; init; }

    public required double? DifferenceKnots { get; init; }

    public required double? LowKnots { get; init; }

    public required double? HighKnots { get; init; }

    public required double? DegreesOfFreedom { get; init; }

    public required double FloorKnots { get; init; }

    public required IReadOnlyList<TrackFindingAnswer> Findings { get; init; }

    public static CompareAnswer Of(OutingComparison outings, string first, string second) => Of(
        outings, outings.Comparison, CompareSideAnswer.Of(first, outings.First, outings.Comparison.First), CompareSideAnswer.Of(second, outings.Second, outings.Comparison.Second));

    private static CompareAnswer Of(OutingComparison outings, FairComparison comparison, CompareSideAnswer first, CompareSideAnswer second) => new()
    {
        MadeBy = $"Finwright {ProgramVersion.Text}",
        Sentence = comparison.Sentence(first.Build, second.Build),
        Verdict = comparison.Verdict,
        DayHandling = comparison.Days,
        SpeedSource = outings.Source,
        MeasuredSpeedsSetAside = outings.IsReduced,
        First = first,
        Second = second,
        DifferenceKnots = Knots(comparison.Difference),
        LowKnots = Knots(comparison.Low),
        HighKnots = Knots(comparison.High),
        DegreesOfFreedom = comparison.Freedom is double freedom && double.IsFinite(freedom) ? Rounded.Digits(freedom) : null,
        FloorKnots = Rounded.Digits(comparison.Floor / SpeedUnits.Knot),
        Findings = [.. comparison.Findings.Select(TrackFindingAnswer.Of)],
    };

    internal static double? Knots(double? speed) => speed is double value && double.IsFinite(value) ? Rounded.Digits(value / SpeedUnits.Knot) : null;
}

/// <summary>One of the two fins.</summary>
internal sealed record CompareSideAnswer(string Build, int Outings, int OutingsWithTrack, int RunsCompared, int RunsLeftOut, int Days, double? MeanKnots, double? SpreadKnots)
{
    public static CompareSideAnswer Of(string build, IReadOnlyList<Outing> outings, FairSide side) =>
        new(build, outings.Count, outings.Count(outing => outing.HasTrack), side.Runs, side.LeftOut, side.Days, CompareAnswer.Knots(side.Mean), CompareAnswer.Knots(side.Deviation));
}
