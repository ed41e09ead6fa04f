using Finwright.Assessment.Loaded;
using Finwright.Design;
using Finwright.Numerics;
using Finwright.Strength.Bench;
using Finwright.Strength.Margins;

namespace Finwright.Assessment.Packing;

/// <summary>
/// What the bench should show, as <c>finwright bench --json</c> gives it. Field names are these properties in camel case; each carries its unit. Deflections are positive the way the
/// weight pulls; twist is positive when the trailing edge goes farther than the leading edge.
/// </summary>
public sealed record BenchSummary() : DesignAnswer("finwright-bench")
{
    /// <summary>Why there is no prediction, and what to do; null when there is one.</summary>
    public string? Problem { get; init; }

    /// <summary>The prediction; null when there is a problem.</summary>
    public BenchNumbers? Prediction { get; init; }

    /// <summary>Mass of the weight; null without a prediction.</summary>
    public double? MassKg { get; init; }

    /// <summary>Its force.</summary>
    public double? ForceN { get; init; }

    /// <summary>Where it hangs, from the hull plane.</summary>
    public double? AtMm { get; init; }

    /// <summary>Where it hangs along the chord.</summary>
    public ChordPlace? AtChord { get; init; }

    /// <summary>How the root is taken to be held.</summary>
    public RootHold? RootHold { get; init; }

    /// <summary>Deflections at the weight's section and at the tip.</summary>
    public BenchDeflections? DeflectionMm { get; init; }

    /// <summary>Lower ends of what they may be.</summary>
    public BenchDeflections? DeflectionLowMm { get; init; }

    /// <summary>Upper ends.</summary>
    public BenchDeflections? DeflectionHighMm { get; init; }

    /// <summary>Twist of the tip.</summary>
    public double? TwistDegrees { get; init; }

    /// <summary>Lower end of what it may be.</summary>
    public double? TwistLowDegrees { get; init; }

    /// <summary>Upper end.</summary>
    public double? TwistHighDegrees { get; init; }

    /// <summary>Twist of the section where the weight hangs.</summary>
    public double? TwistAtLoadDegrees { get; init; }

    /// <summary>What is assumed, and what to take care of.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Everything found about the design, worst first.</summary>
    public required IReadOnlyList<FindingSummary> Findings { get; init; }

    /// <summary>Sums a result up.</summary>
    /// <param name="result">A result worked out at least to the bench.</param>
    /// <param name="programVersion">Version of the program.</param>
    public static BenchSummary Of(AssessmentResult result, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(result);
        BenchSummary head = new()
        {
            MadeBy = $"Finwright {programVersion}",
            Name = result.Design?.Name,
            DesignSha256 = result.DesignHash,
            Sentence = "Nothing could be worked out yet.",
            Findings = [.. result.Findings.Select(FindingSummary.Of)],
        };
        if (result is not { Design: { } design, Bench: { } bench })
            return head;
        if (bench.Prediction is not { } prediction)
            return head with { Problem = bench.Problem, Sentence = $"The bench test was not worked out. {bench.Problem}" };
        BenchLoad load = prediction.Load;
        return head with
        {
            Sentence = BenchSentence.Of(design, prediction),
            MassKg = Rounded.Digits(load.Mass),
            ForceN = Rounded.Digits(load.Force),
            AtMm = Rounded.Mm(load.Depth),
            AtChord = design.Prove.AtChord,
            RootHold = design.Base.RootHold,
            DeflectionMm = BenchDeflections.Of(prediction, range => range.Value),
            DeflectionLowMm = BenchDeflections.Of(prediction, range => range.Low),
            DeflectionHighMm = BenchDeflections.Of(prediction, range => range.High),
            TwistDegrees = Rounded.Degrees(prediction.AtTip.Twist.Value),
            TwistLowDegrees = Rounded.Degrees(prediction.AtTip.Twist.Low),
            TwistHighDegrees = Rounded.Degrees(prediction.AtTip.Twist.High),
            TwistAtLoadDegrees = Rounded.Degrees(prediction.AtLoad.Twist.Value),
            Prediction = BenchNumbers.Of(prediction, result.Vibration),
            Notes = BenchSentence.Notes(design, prediction),
        };
    }
}

/// <summary>Deflections at two sections.</summary>
/// <param name="LoadStation">Where the weight hangs.</param>
/// <param name="Tip">The tip.</param>
public sealed record BenchDeflections(EdgeDeflections LoadStation, EdgeDeflections Tip)
{
    internal static BenchDeflections Of(BenchPrediction prediction, Func<Ranged, double> end) =>
        new(EdgeDeflections.Of(prediction.AtLoad, end), EdgeDeflections.Of(prediction.AtTip, end));
}

/// <summary>Deflections of one section, mm.</summary>
/// <param name="LeadingEdge">At the leading edge.</param>
/// <param name="MidChord">At mid-chord.</param>
/// <param name="TrailingEdge">At the printed trailing edge.</param>
public sealed record EdgeDeflections(double LeadingEdge, double MidChord, double TrailingEdge)
{
    internal static EdgeDeflections Of(StationBend bend, Func<Ranged, double> end) =>
        new(Rounded.Mm(end(bend.LeadingEdge)), Rounded.Mm(end(bend.MidChord)), Rounded.Mm(end(bend.TrailingEdge)));
}

/// <summary>Everything else that the bench may show.</summary>
public sealed record BenchNumbers
{
    /// <summary>Stiffness against a push at 40 % of the span on mid-chord.</summary>
    public required double PushStiffnessNPerMm { get; init; }

    /// <summary>Lower end.</summary>
    public required double PushStiffnessLowNPerMm { get; init; }

    /// <summary>Upper end.</summary>
    public required double PushStiffnessHighNPerMm { get; init; }

    /// <summary>By how much the weight may grow before the first crack is to be expected.</summary>
    public required double? FirstCrackReserve { get; init; }

    /// <summary>Where it is expected.</summary>
    public required string? FirstCrackAt { get; init; }

    /// <summary>Most strained places.</summary>
    public required IReadOnlyList<StressSummary> Stresses { get; init; }

    /// <summary>The joint under the weight; null when there is none to open.</summary>
    public required JointSummary? Joint { get; init; }

    /// <summary>First frequencies in air, to be heard when the held fin is tapped; empty when they were not worked out.</summary>
    public required IReadOnlyList<double> FrequenciesInAirHz { get; init; }

    /// <summary>Mass of the blade below the hull.</summary>
    public required double? BladeMassG { get; init; }

    internal static BenchNumbers Of(BenchPrediction prediction, FinVibration? vibration)
    {
        StressPeak? first = prediction.FirstCrack;
        return new()
        {
            PushStiffnessNPerMm = Rounded.Digits(1e-3 * prediction.PushStiffness.Value),
            PushStiffnessLowNPerMm = Rounded.Digits(1e-3 * prediction.PushStiffness.Low),
            PushStiffnessHighNPerMm = Rounded.Digits(1e-3 * prediction.PushStiffness.High),
            FirstCrackReserve = first is null ? null : Rounded.Digits(first.Reserve),
            FirstCrackAt = first is null ? null : StressSummary.Words(first),
            Stresses = [.. prediction.Peaks.Select(StressSummary.Of)],
            Joint = JointSummary.Of(prediction.Joint),
            FrequenciesInAirHz = [.. (vibration?.Dry ?? []).Select(Rounded.Digits)],
            BladeMassG = vibration is { Problem: null } ? Rounded.Digits(1e3 * vibration.BladeMass) : null,
        };
    }
}
