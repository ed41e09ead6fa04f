using Finwright.Assessment.Afloat;
using Finwright.Numerics;
using Finwright.Water;
using Finwright.Water.Lifting;
using Finwright.Water.Polars;
using Finwright.Water.Sailing;
using Finwright.Water.Ventilation;

namespace Finwright.Assessment.Packing;

/// <summary>What the fin does in one load case.</summary>
public sealed record LoadCaseSummary
{
    /// <summary>The situation.</summary>
    public required LoadCaseKind Case { get; init; }

    /// <summary>Speed through the water.</summary>
    public required double SpeedMPerS { get; init; }

    /// <summary>Side force that the fin must carry.</summary>
    public required double SideForceN { get; init; }

    /// <summary>Lower end of what it may be.</summary>
    public required double SideForceLowN { get; init; }

    /// <summary>Upper end of what it may be.</summary>
    public required double SideForceHighN { get; init; }

    /// <summary>Push from ahead at the tip; 0 but for grounding.</summary>
    public required double ImpactN { get; init; }

    /// <summary>How the search for leeway came out; null where the water does not matter.</summary>
    public LeewayStatus? Status { get; init; }

    /// <summary>Leeway; null when the fin does not carry the side force.</summary>
    public double? LeewayDegrees { get; init; }

    /// <summary>Lift coefficient of the fin.</summary>
    public double? CL { get; init; }

    /// <summary>Drag coefficient of the fin.</summary>
    public double? CD { get; init; }

    /// <summary>Drag and where it comes from.</summary>
    public DragSummary? Drag { get; init; }

    /// <summary>Depth of the load below the hull.</summary>
    public double? CentreOfEffortDepthMm { get; init; }

    /// <summary>Place of the load aft of the root quarter chord.</summary>
    public double? CentreOfEffortAftMm { get; init; }

    /// <summary>Place of the load aft of the middle of the box.</summary>
    public double? CentreOfEffortFromBoxMm { get; init; }

    /// <summary>Moment that turns the board about the root quarter chord; negative turns the bow to port under a starboard force.</summary>
    public double? YawMomentNm { get; init; }

    /// <summary>Where stall starts; null when it does not within 25 degrees.</summary>
    public StallSummary? StallOnset { get; init; }

    /// <summary>Greatest side force at this speed; null when none was found.</summary>
    public double? GreatestSideForceN { get; init; }

    /// <summary>Side force left before stall starts; negative past it.</summary>
    public double? ReserveN { get; init; }

    /// <summary>Side force over that at the onset of stall.</summary>
    public double? ShareOfStall { get; init; }

    /// <summary>The same fin under an endless hull: upper bound.</summary>
    public BoundSummary? UnderMirror { get; init; }

    /// <summary>The same fin with no hull: lower bound.</summary>
    public BoundSummary? UnderBareSurface { get; init; }

    /// <summary>Margins before the fin lets go.</summary>
    public IReadOnlyList<MarginSummary> Margins { get; init; } = [];

    /// <summary>Share of the side force that would be left once ventilated.</summary>
    public double? SideForceKeptShare { get; init; }

    /// <summary>What becomes of air that gets in.</summary>
    public CavityFate? CavityFate { get; init; }

    /// <summary>What limits the trust in these numbers.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>What the case is for.</summary>
    public required string Purpose { get; init; }

    /// <summary>How its load was come by.</summary>
    public required string Derivation { get; init; }

    /// <summary>What the load stands on.</summary>
    public required Certainty Certainty { get; init; }

    internal static LoadCaseSummary OfLoadOnly(LoadCase load) => new()
    {
        Case = load.Kind,
        SpeedMPerS = Rounded.Digits(load.Speed),
        SideForceN = Rounded.Digits(load.SideForce),
        SideForceLowN = Rounded.Digits(load.SideForceLow),
        SideForceHighN = Rounded.Digits(load.SideForceHigh),
        ImpactN = Rounded.Digits(load.ImpactForce),
        Purpose = load.Purpose,
        Derivation = load.Derivation,
        Certainty = load.Certainty,
    };

    // A pointed tip always works below the Reynolds numbers of any table; it carries next to nothing.
    private const double AreaThatMatters = 0.03;

    private static LiftingValidity Weighty(LiftingResult result)
    {
        double beyond = result.Strips.Where(strip => strip.Section is { Origin: PolarOrigin.BeyondTable }).Sum(strip => strip.Chord * strip.Width);
        return beyond > AreaThatMatters * result.Area ? result.Validity : result.Validity & ~LiftingValidity.BeyondPolar;
    }

    internal static LoadCaseSummary Of(CaseAfloat own, double boxMiddle)
    {
        LeewayResult found = own.UnderHull;
        LoadCaseSummary load = OfLoadOnly(own.Load) with
        {
            Status = found.Status,
            StallOnset = found.Limits.Onset is { } onset ? StallSummary.Of(onset, found.Limits.IsOnsetCertain) : null,
            GreatestSideForceN = found.Limits.Maximum is { } maximum ? Rounded.Digits(Math.Abs(maximum.SideForce)) : null,
            ReserveN = found.Limits.Onset is { } start ? Rounded.Digits(Math.Abs(start.SideForce) - Math.Abs(found.Asked)) : null,
            ShareOfStall = own.ShareOfStall is double share ? Rounded.Digits(share) : null,
            UnderMirror = BoundSummary.Of(own.UnderMirror),
            UnderBareSurface = BoundSummary.Of(own.UnderBareSurface),
            Margins = [.. own.Margins.All.Select(MarginSummary.Of)],
            SideForceKeptShare = own.Margins.SideForceKept is double kept ? Rounded.Digits(kept) : null,
            CavityFate = own.Margins.Fate,
            Notes = Weighty(found.Result).Describe(),
        };
        if (!own.IsCarried)
            return load;
        LiftingResult result = found.Result;
        return load with
        {
            LeewayDegrees = Rounded.Degrees(result.Flow.Leeway),
            CL = Rounded.Digits(result.CL),
            CD = Rounded.Digits(result.CD),
            Drag = DragSummary.Of(result.Drag),
            CentreOfEffortDepthMm = result.CentreOfEffort is { } deep ? Rounded.Mm(deep.Y) : null,
            CentreOfEffortAftMm = result.CentreOfEffort is { } aft ? Rounded.Mm(aft.X) : null,
            CentreOfEffortFromBoxMm = result.CentreOfEffort is { } place ? Rounded.Mm(place.X - boxMiddle) : null,
            YawMomentNm = Rounded.Digits(result.YawMoment),
        };
    }
}

/// <summary>Drag along the stream.</summary>
public sealed record DragSummary
{
    /// <summary>All together.</summary>
    public required double TotalN { get; init; }

    /// <summary>For the side force itself.</summary>
    public required double InducedN { get; init; }

    /// <summary>Friction and wake of the sections.</summary>
    public required double SectionN { get; init; }

    /// <summary>Lost suction and cross-flow at the tip.</summary>
    public required double SeparationN { get; init; }

    /// <summary>Where fin and hull meet.</summary>
    public required double JunctionN { get; init; }

    /// <summary>Spray.</summary>
    public required double SprayN { get; init; }

    internal static DragSummary Of(DragSplit drag) => new()
    {
        TotalN = Rounded.Digits(drag.Total),
        InducedN = Rounded.Digits(drag.Induced),
        SectionN = Rounded.Digits(drag.Section),
        SeparationN = Rounded.Digits(drag.Separation),
        JunctionN = Rounded.Digits(drag.Junction),
        SprayN = Rounded.Digits(drag.Spray),
    };
}

/// <summary>Where stall starts.</summary>
public sealed record StallSummary
{
    /// <summary>Leeway there.</summary>
    public required double LeewayDegrees { get; init; }

    /// <summary>Side force there.</summary>
    public required double SideForceN { get; init; }

    /// <summary>Depth where it starts.</summary>
    public required double? DepthMm { get; init; }

    /// <summary>Whether the computed points pass over the peak of lift; when not, stall comes later than shown.</summary>
    public required bool IsCertain { get; init; }

    internal static StallSummary Of(LiftingResult onset, bool certain) => new()
    {
        LeewayDegrees = Rounded.Degrees(Math.Abs(onset.Flow.Leeway)),
        SideForceN = Rounded.Digits(Math.Abs(onset.SideForce)),
        DepthMm = onset.Critical is { } strip ? Rounded.Mm(strip.Depth) : null,
        IsCertain = certain,
    };
}

/// <summary>The fin under another root condition.</summary>
public sealed record BoundSummary
{
    /// <summary>How the search came out.</summary>
    public required LeewayStatus Status { get; init; }

    /// <summary>Leeway; null when the side force is not carried.</summary>
    public required double? LeewayDegrees { get; init; }

    /// <summary>Drag there.</summary>
    public required double? DragN { get; init; }

    /// <summary>Side force where stall starts.</summary>
    public required double? StallOnsetSideForceN { get; init; }

    internal static BoundSummary Of(LeewayResult found)
    {
        bool carried = found.Status is LeewayStatus.Found or LeewayStatus.FoundPastOnset;
        return new()
        {
            Status = found.Status,
            LeewayDegrees = carried ? Rounded.Degrees(found.Result.Flow.Leeway) : null,
            DragN = carried ? Rounded.Digits(found.Result.Drag.Total) : null,
            StallOnsetSideForceN = found.Limits.Onset is { } onset ? Rounded.Digits(Math.Abs(onset.SideForce)) : null,
        };
    }
}

/// <summary>One value against its limit, in SI units.</summary>
public sealed record MarginSummary
{
    /// <summary>What is judged.</summary>
    public required string Name { get; init; }

    /// <summary>The value.</summary>
    public required double? Value { get; init; }

    /// <summary>The limit.</summary>
    public required double? Limit { get; init; }

    /// <summary>How far the value may be off.</summary>
    public required double? Uncertainty { get; init; }

    /// <summary>How it stands.</summary>
    public required MarginState State { get; init; }

    /// <summary>Speed at which it begins.</summary>
    public required double? BeginsAtMPerS { get; init; }

    /// <summary>Whether it begins when sailing faster or slower than that.</summary>
    public required OnsetDirection? BeginsWhen { get; init; }

    /// <summary>What stands behind it.</summary>
    public required string Explanation { get; init; }

    internal static MarginSummary Of(Margin margin) => new()
    {
        Name = margin.Name,
        Value = Number(margin.Value),
        Limit = Number(margin.Limit),
        Uncertainty = Number(margin.Uncertainty),
        State = margin.State,
        BeginsAtMPerS = Number(margin.Onset?.Speed),
        BeginsWhen = margin.Onset?.Direction,
        Explanation = margin.Explanation,
    };

    private static double? Number(double? value) => value is double known ? Rounded.Digits(known) : null;
}
