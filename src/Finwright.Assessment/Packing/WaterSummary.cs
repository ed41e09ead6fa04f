using Finwright.Assessment.Afloat;
using Finwright.Assessment.Verdicts;
using Finwright.Water.Lifting;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Packing;

/// <summary>
/// What a fin does when it sails, as <c>water.json</c> and <c>finwright water --json</c> give it. Field names are these properties in lower
/// case with underscores; each carries its unit. Numbers have nine digits, which is more than the methods deserve; the verdicts say how sure.
/// </summary>
public sealed record WaterSummary() : DesignAnswer("finwright-water")
{
    /// <summary>Why there are no load cases, and what to do; null when there are.</summary>
    public string? Problem { get; init; }

    /// <summary>Name of the fin compared with; null for none.</summary>
    public string? Against { get; init; }

    /// <summary>How the fin stands, worst first.</summary>
    public IReadOnlyList<VerdictSummary> Verdicts { get; init; } = [];

    /// <summary>The load cases in which the water matters.</summary>
    public IReadOnlyList<LoadCaseSummary> LoadCases { get; init; } = [];

    /// <summary>Side force over the depth at cruise.</summary>
    public IReadOnlyList<SpanLoadSummary> SpanLoad { get; init; } = [];

    /// <summary>The fin over leeway, at cruise speed unless asked otherwise.</summary>
    public IReadOnlyList<SweepSummary> Sweep { get; init; } = [];

    /// <summary>What the trade says of the fin's size; stands beside the computed answer, judges nothing.</summary>
    public IReadOnlyList<RuleOfThumbSummary> RulesOfThumb { get; init; } = [];

    /// <summary>How smooth it has to be sanded; null when cruise was not worked out.</summary>
    public SmoothnessSummary? Smoothness { get; init; }

    /// <summary>The water; null when the design is wrong.</summary>
    public WaterStateSummary? Water { get; init; }

    /// <summary>What is assumed throughout.</summary>
    public IReadOnlyList<string> Assumptions { get; init; } = [];

    /// <summary>Everything found about the design, worst first.</summary>
    public required IReadOnlyList<FindingSummary> Findings { get; init; }

    /// <summary>Sums a result up.</summary>
    /// <param name="result">A result worked out at least to the water.</param>
    /// <param name="programVersion">Version of the program.</param>
    /// <param name="reference">The result of a fin to compare with; null for none.</param>
    public static WaterSummary Of(AssessmentResult result, string programVersion, AssessmentResult? reference = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        WaterSummary head = new()
        {
            MadeBy = $"Finwright {programVersion}",
            Name = result.Design?.Name,
            DesignSha256 = result.DesignHash,
            Sentence = "Nothing could be worked out yet.",
            Against = reference?.Design?.Name,
            Findings = [.. result.Findings.Select(FindingSummary.Of)],
        };
        if (result is not { Design: { } design, Afloat: { } afloat })
            return head;
        IReadOnlyList<Verdict> verdicts = reference is null ? result.Verdicts : WaterVerdicts.Of(design, afloat, reference.Afloat, reference.Design?.Name);
        return head with
        {
            Sentence = AfloatSentence.Of(afloat),
            Problem = afloat.Problem,
            Verdicts = [.. verdicts.Select(VerdictSummary.Of)],
            LoadCases = [.. afloat.Cases.Select(own => LoadCaseSummary.Of(own, afloat.BoxMiddle)), LoadCaseSummary.OfLoadOnly(afloat.Balance[LoadCaseKind.Grounding])],
            SpanLoad = afloat[LoadCaseKind.Cruise] is { } cruise ? [.. cruise.UnderHull.Result.Strips.Select(SpanLoadSummary.Of)] : [],
            Sweep = [.. afloat.Sweep.Select(SweepSummary.Of)],
            RulesOfThumb = [.. afloat.RulesOfThumb.Select(RuleOfThumbSummary.Of)],
            Smoothness = afloat.Smoothness is { } smooth ? new(smooth.Speed, Rounded.Digits(1e6 * smooth.Friction), Rounded.Digits(1e6 * smooth.Ridges)) : null,
            Water = WaterStateSummary.Of(afloat, result.Polars!),
            Assumptions = SailingBalance.Assumptions,
        };
    }
}

/// <summary>The water and how the blade meets it.</summary>
public sealed record WaterStateSummary
{
    /// <summary>Density.</summary>
    public required double DensityKgPerM3 { get; init; }

    /// <summary>Kinematic viscosity.</summary>
    public required double KinematicViscosityM2PerS { get; init; }

    /// <summary>Vapour pressure.</summary>
    public required double VapourPressurePa { get; init; }

    /// <summary>Amplification exponent n at which a laminar layer turns turbulent.</summary>
    public required double CriticalAmplification { get; init; }

    /// <summary>Finish of the starboard side.</summary>
    public required string StarboardFinish { get; init; }

    /// <summary>Finish of the port side.</summary>
    public required string PortFinish { get; init; }

    /// <summary>Points of the polars that were asked for.</summary>
    public required int PolarPoints { get; init; }

    /// <summary>Points of them that converged; the others are bridged, or taken as stalled.</summary>
    public required int PolarPointsConverged { get; init; }

    internal static WaterStateSummary Of(FinAfloat afloat, FinPolars polars) => new()
    {
        DensityKgPerM3 = Rounded.Digits(afloat.Water.Density),
        KinematicViscosityM2PerS = Rounded.Significant(afloat.Water.KinematicViscosity),
        VapourPressurePa = Rounded.Digits(afloat.Water.VapourPressure),
        CriticalAmplification = Rounded.Digits(polars.CriticalAmplification),
        StarboardFinish = polars.StarboardFinish,
        PortFinish = polars.PortFinish,
        PolarPoints = polars.Family?.PointCount ?? 0,
        PolarPointsConverged = polars.Family?.SolvedCount ?? 0,
    };
}

/// <summary>How smooth a blade has to be sanded.</summary>
/// <param name="SpeedMPerS">At this speed.</param>
/// <param name="FrictionBelowUm">Roughness below this height adds no friction.</param>
/// <param name="RidgesTripAboveUm">Ridges across the stream above this height end the laminar layer a tenth of the chord behind the nose.</param>
public sealed record SmoothnessSummary(double SpeedMPerS, double FrictionBelowUm, double RidgesTripAboveUm);

/// <summary>Side force at one depth.</summary>
public sealed record SpanLoadSummary
{
    /// <summary>Depth below the hull.</summary>
    public required double DepthMm { get; init; }

    /// <summary>Side force per depth.</summary>
    public required double LoadNPerM { get; init; }

    /// <summary>The same if the load were a half ellipse of the same side force.</summary>
    public required double EllipticNPerM { get; init; }

    /// <summary>Lift coefficient of the strip.</summary>
    public required double Cl { get; init; }

    /// <summary>Angle of the section from zero lift over that at its peak of lift.</summary>
    public required double ShareOfStall { get; init; }

    internal static SpanLoadSummary Of(StripResult strip) => new()
    {
        DepthMm = Rounded.Mm(strip.Depth),
        LoadNPerM = Rounded.Digits(strip.Load),
        EllipticNPerM = Rounded.Digits(strip.EllipticLoad),
        Cl = Rounded.Digits(strip.Cl),
        ShareOfStall = Rounded.Digits(strip.StallShare),
    };
}

/// <summary>The fin at one leeway.</summary>
public sealed record SweepSummary
{
    /// <summary>Leeway.</summary>
    public required double LeewayDegrees { get; init; }

    /// <summary>Speed.</summary>
    public required double SpeedMPerS { get; init; }

    /// <summary>How the answer came out.</summary>
    public required LiftingStatus Status { get; init; }

    /// <summary>Side force; null when the answer did not converge.</summary>
    public required double? SideForceN { get; init; }

    /// <summary>Another side force found at the same leeway, as past stall there may be; null for none.</summary>
    public required double? OtherSideForceN { get; init; }

    /// <summary>Drag; null when the answer did not converge.</summary>
    public required double? DragN { get; init; }

    /// <summary>Lift coefficient of the fin.</summary>
    public required double? CL { get; init; }

    /// <summary>Drag coefficient of the fin.</summary>
    public required double? CD { get; init; }

    /// <summary>Depth of the load.</summary>
    public required double? CentreOfEffortDepthMm { get; init; }

    /// <summary>Place of the load aft of the root quarter chord.</summary>
    public required double? CentreOfEffortAftMm { get; init; }

    /// <summary>Sums one state up.</summary>
    public static SweepSummary Of(LiftingResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        bool good = result.Status is LiftingStatus.Attached or LiftingStatus.Stalled;
        return new()
        {
            LeewayDegrees = Rounded.Degrees(result.Flow.Leeway),
            SpeedMPerS = Rounded.Digits(result.Flow.Speed),
            Status = result.Status,
            SideForceN = good ? Rounded.Digits(result.SideForce) : null,
            OtherSideForceN = good && !result.OtherSideForce.Equals(result.SideForce) ? Rounded.Digits(result.OtherSideForce) : null,
            DragN = good ? Rounded.Digits(result.Drag.Total) : null,
            CL = good ? Rounded.Digits(result.CL) : null,
            CD = good ? Rounded.Digits(result.CD) : null,
            CentreOfEffortDepthMm = good && result.CentreOfEffort is { } deep ? Rounded.Mm(deep.Y) : null,
            CentreOfEffortAftMm = good && result.CentreOfEffort is { } aft ? Rounded.Mm(aft.X) : null,
        };
    }
}

/// <summary>A rule of thumb beside the computed answer.</summary>
public sealed record RuleOfThumbSummary
{
    /// <summary>The rule in a few words.</summary>
    public required string Name { get; init; }

    /// <summary>Unit of the numbers: <c>cm2</c> or <c>mm</c>.</summary>
    public required string Unit { get; init; }

    /// <summary>Lower end of the band.</summary>
    public required double Low { get; init; }

    /// <summary>Upper end of the band.</summary>
    public required double High { get; init; }

    /// <summary>The fin's own.</summary>
    public required double Value { get; init; }

    /// <summary>Where the fin stands.</summary>
    public required BandPosition Position { get; init; }

    /// <summary>Where the rule comes from and whom it fits.</summary>
    public required string Basis { get; init; }

    internal static RuleOfThumbSummary Of(RuleOfThumb rule)
    {
        bool area = rule.Measure == FinMeasure.Area;
        double Number(double value) => area ? Rounded.Cm2(value) : Rounded.Mm(value);
        return new()
        {
            Name = rule.Name,
            Unit = area ? "cm2" : "mm",
            Low = Number(rule.Low),
            High = Number(rule.High),
            Value = Number(rule.Value),
            Position = rule.Position,
            Basis = rule.Basis,
        };
    }
}
