using Finwright.Assessment.Loaded;
using Finwright.Design;
using Finwright.Numerics;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Joints;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Packing;

/// <summary>
/// Whether a fin bends, twists, opens or breaks, as <c>strength.json</c> and <c>finwright strength --json</c> give it. Field names are these properties in lower case with
/// underscores; each carries its unit. Deflections are positive the way the side force pushes; twist is positive when the trailing edge goes farther, which unloads the blade.
/// </summary>
public sealed record StrengthSummary() : DesignAnswer("finwright-strength")
{
    /// <summary>Why there are no load cases, and what to do; null when there are.</summary>
    public string? Problem { get; init; }

    /// <summary>How the fin stands, worst first.</summary>
    public IReadOnlyList<VerdictSummary> Verdicts { get; init; } = [];

    /// <summary>The load cases in which the water bends the fin.</summary>
    public IReadOnlyList<LoadedSummary> LoadCases { get; init; } = [];

    /// <summary>A strike on the ground; null when it was not worked out.</summary>
    public GroundingSummary? Grounding { get; init; }

    /// <summary>Speed at which the blade would twist without end; null when it never does.</summary>
    public double? DivergenceSpeedMPerS { get; init; }

    /// <summary>First frequencies in air.</summary>
    public IReadOnlyList<double> FrequenciesInAirHz { get; init; } = [];

    /// <summary>First frequencies in water.</summary>
    public IReadOnlyList<double> FrequenciesInWaterHz { get; init; } = [];

    /// <summary>Lowest frequency of the trailing edge's eddies, at getting going.</summary>
    public double? EddiesFromHz { get; init; }

    /// <summary>Highest, at top speed.</summary>
    public double? EddiesToHz { get; init; }

    /// <summary>Sections from the root down, each by finite elements of its own.</summary>
    public IReadOnlyList<SectionSummary> Sections { get; init; } = [];

    /// <summary>How the root is held; null when the structure could not be worked out.</summary>
    public RootSummary? Root { get; init; }

    /// <summary>What the fin is made of.</summary>
    public IReadOnlyList<MaterialSummary> Materials { get; init; } = [];

    /// <summary>What is assumed throughout, and what to take care of.</summary>
    public IReadOnlyList<string> Assumptions { get; init; } = [];

    /// <summary>Everything found about the design, worst first.</summary>
    public required IReadOnlyList<FindingSummary> Findings { get; init; }

    /// <summary>Sums a result up.</summary>
    /// <param name="result">A result worked out at least to strength.</param>
    /// <param name="programVersion">Version of the program.</param>
    public static StrengthSummary Of(AssessmentResult result, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(result);
        StrengthSummary head = new()
        {
            MadeBy = $"Finwright {programVersion}",
            Name = result.Design?.Name,
            DesignSha256 = result.DesignHash,
            Sentence = "Nothing could be worked out yet.",
            Findings = [.. result.Findings.Select(FindingSummary.Of)],
        };
        if (result is not { Design: { } design, Loaded: { } loaded })
            return head;
        FinStructure? structure = loaded.Structure;
        return head with
        {
            Sentence = LoadedSentence.Of(loaded),
            Problem = loaded.Problem,
            Verdicts = [.. result.StrengthVerdicts.Select(VerdictSummary.Of)],
            LoadCases = [.. loaded.Cases.Select(LoadedSummary.Of)],
            Grounding = GroundingSummary.Of(loaded.Grounding),
            DivergenceSpeedMPerS = loaded.DivergenceSpeed is double speed ? Rounded.Digits(speed) : null,
            FrequenciesInAirHz = [.. (result.Vibration?.Dry ?? []).Select(Rounded.Digits)],
            FrequenciesInWaterHz = [.. (result.Vibration?.Wet ?? []).Select(Rounded.Digits)],
            EddiesFromHz = result.Vibration?.Eddies is { } slow ? Rounded.Digits(slow.Low) : null,
            EddiesToHz = result.Vibration?.Eddies is { } fast ? Rounded.Digits(fast.High) : null,
            Sections = structure is null ? [] : [.. structure.Sections.Select(SectionSummary.Of)],
            Root = structure is null ? null : RootSummary.Of(structure, loaded.Torques),
            Materials = structure is null ? [] : [.. MaterialSummary.Of(structure.Materials)],
            Assumptions = LoadedSentence.Assumptions(design),
        };
    }
}

/// <summary>What one load case does to the fin.</summary>
public sealed record LoadedSummary
{
    /// <summary>The situation.</summary>
    public required LoadCaseKind Case { get; init; }

    /// <summary>Speed through the water.</summary>
    public required double SpeedMPerS { get; init; }

    /// <summary>Side force.</summary>
    public required double SideForceN { get; init; }

    /// <summary>How it came out.</summary>
    public required LoadedStatus Status { get; init; }

    /// <summary>Moment that bends the root.</summary>
    public required double RootMomentNm { get; init; }

    /// <summary>Greatest deflection over the span; null when the calculation does not reach that far.</summary>
    public required double? DeflectionPercent { get; init; }

    /// <summary>Deflection and twist from root to tip; empty when the calculation does not reach that far.</summary>
    public required IReadOnlyList<BendSummary> Along { get; init; }

    /// <summary>Most strained places; empty when the calculation does not reach that far.</summary>
    public required IReadOnlyList<StressSummary> Stresses { get; init; }

    /// <summary>The joint; null when there is none to open.</summary>
    public required JointSummary? Joint { get; init; }

    /// <summary>The base in its box; null when the root is taken as clamped.</summary>
    public required BaseSummary? Base { get; init; }

    /// <summary>Leeway of a fin that does not bend.</summary>
    public required double? StiffLeewayDegrees { get; init; }

    /// <summary>Leeway of the bent fin at the same side force.</summary>
    public required double? BentLeewayDegrees { get; init; }

    /// <summary>Change of side force by bending, at the leeway of the stiff fin.</summary>
    public required double? SideForceChangePercent { get; init; }

    /// <summary>How much deeper the load acts for the bending.</summary>
    public required double? EffortShiftMm { get; init; }

    internal static LoadedSummary Of(CaseLoaded loaded) => new()
    {
        Case = loaded.Load.Kind,
        SpeedMPerS = Rounded.Digits(loaded.Load.Speed),
        SideForceN = Rounded.Digits(loaded.Load.SideForce),
        Status = loaded.Status,
        RootMomentNm = Rounded.Digits(loaded.RootMoment),
        DeflectionPercent = loaded.HasNumbers ? Rounded.Percent(loaded.Plate.DeflectionShare) : null,
        Along = loaded.HasNumbers ? [.. loaded.Along.Select(BendSummary.Of)] : [],
        Stresses = loaded.HasNumbers ? [.. loaded.Peaks.Select(StressSummary.Of)] : [],
        Joint = JointSummary.Of(loaded.Joint),
        Base = loaded.Base is { } own ? new(Rounded.Digits(1e-6 * own.HullEdgePressure), Rounded.Digits(1e-6 * own.TopEdgePressure), Rounded.Digits(1e-6 * own.GreatestBendingStress)) : null,
        StiffLeewayDegrees = loaded.StiffLeeway is double stiff ? Rounded.Degrees(stiff) : null,
        BentLeewayDegrees = loaded.BentLeeway is double bent ? Rounded.Degrees(bent) : null,
        SideForceChangePercent = loaded.SideForceShare is double share ? Rounded.Percent(share - 1) : null,
        EffortShiftMm = loaded.EffortShift is double shift ? Rounded.Mm(shift) : null,
    };
}

/// <summary>The base in its box.</summary>
/// <param name="HullEdgeMpa">Pressure at the hull edge.</param>
/// <param name="TopEdgeMpa">Pressure at the top edge, on the other side.</param>
/// <param name="BendingMpa">Greatest bending stress.</param>
public sealed record BaseSummary(double HullEdgeMpa, double TopEdgeMpa, double BendingMpa);

/// <summary>How far one section moves.</summary>
/// <param name="DepthMm">Its depth.</param>
/// <param name="LeadingEdgeMm">Deflection of its leading edge.</param>
/// <param name="MidChordMm">Of its middle.</param>
/// <param name="TrailingEdgeMm">Of its printed trailing edge.</param>
/// <param name="TwistDegrees">Turn of its chord, positive when the trailing edge goes farther.</param>
public sealed record BendSummary(double DepthMm, double LeadingEdgeMm, double MidChordMm, double TrailingEdgeMm, double TwistDegrees)
{
    internal static BendSummary Of(SectionBend bend) =>
        new(Rounded.Mm(bend.Depth), Rounded.Mm(bend.LeadingEdge), Rounded.Mm(bend.MidChord), Rounded.Mm(bend.TrailingEdge), Rounded.Degrees(bend.Twist));
}

/// <summary>A strike on hard ground.</summary>
/// <param name="SpeedMPerS">Speed of the load case.</param>
/// <param name="MassKg">Mass that is stopped.</param>
/// <param name="GiveMmPerKn">Give of blade and joint fore and aft.</param>
/// <param name="BearableN">Push aft that is borne.</param>
/// <param name="GivesFirst">What gives then.</param>
/// <param name="BearableSpeedMPerS">Speed of a strike that reaches it.</param>
/// <param name="PushAtSpeedN">Push aft at the speed of the load case.</param>
/// <param name="RidesUp">Whether the edge slides up over the ground.</param>
public sealed record GroundingSummary(double SpeedMPerS, double MassKg, double GiveMmPerKn, double BearableN, string GivesFirst, double BearableSpeedMPerS, double PushAtSpeedN, bool RidesUp)
{
    internal static GroundingSummary? Of(GroundStrike? strike) => strike is null ? null : new(
        Rounded.Digits(strike.Load.Speed), Rounded.Digits(strike.Mass), Rounded.Digits(1e6 * strike.Compliance), Rounded.Digits(strike.BearableForce), strike.GivesFirst,
        Rounded.Digits(strike.BearableSpeed), Rounded.Digits(strike.ForceAtSpeed), strike.RidesUp);
}

/// <summary>A section as a beam sees it.</summary>
public sealed record SectionSummary
{
    /// <summary>Its depth.</summary>
    public required double DepthMm { get; init; }

    /// <summary>Its chord.</summary>
    public required double ChordMm { get; init; }

    /// <summary>EI against bending to the side.</summary>
    public required double BendingRigidityNm2 { get; init; }

    /// <summary>EI against bending fore and aft.</summary>
    public required double EdgewiseRigidityNm2 { get; init; }

    /// <summary>GJ.</summary>
    public required double TorsionRigidityNm2 { get; init; }

    /// <summary>EA.</summary>
    public required double AxialStiffnessN { get; init; }

    /// <summary>Centre of stretching, aft of the leading edge.</summary>
    public required double CentroidMm { get; init; }

    /// <summary>Shear centre, aft of the leading edge: a push there does not twist.</summary>
    public required double ShearCentreMm { get; init; }

    /// <summary>Mass per length.</summary>
    public required double MassKgPerM { get; init; }

    internal static SectionSummary Of(SectionAtDepth section) => new()
    {
        DepthMm = Rounded.Mm(section.Depth),
        ChordMm = Rounded.Mm(section.Chord),
        BendingRigidityNm2 = Rounded.Digits(section.Stiffness.FlapRigidity),
        EdgewiseRigidityNm2 = Rounded.Digits(section.Stiffness.EdgeRigidity),
        TorsionRigidityNm2 = Rounded.Digits(section.Stiffness.TorsionRigidity),
        AxialStiffnessN = Rounded.Digits(section.Stiffness.AxialStiffness),
        CentroidMm = Rounded.Mm(section.Stiffness.Centroid - section.LeadingEdge),
        ShearCentreMm = Rounded.Mm(section.Stiffness.ShearCentre - section.LeadingEdge),
        MassKgPerM = Rounded.Digits(section.Stiffness.MassPerLength),
    };
}

/// <summary>How the root is held.</summary>
public sealed record RootSummary
{
    /// <summary>As which it is taken.</summary>
    public required RootHold Hold { get; init; }

    /// <summary>Stiffness against bending while nothing opens; null when clamped.</summary>
    public required double? StiffnessNmPerDegree { get; init; }

    /// <summary>Whether a joint between blade and base can open.</summary>
    public required bool HasJoint { get; init; }

    /// <summary>Bolts and rods across the joint.</summary>
    public required IReadOnlyList<TieSummary> Ties { get; init; }

    /// <summary>How hard each bolt may be tightened; an estimate, makers' data go before it.</summary>
    public required IReadOnlyList<TorqueSummary> Torques { get; init; }

    internal static RootSummary Of(FinStructure structure, IReadOnlyList<NutTorque> torques) => new()
    {
        Hold = structure.Root.Kind,
        StiffnessNmPerDegree = structure.Root.Kind is RootHold.Clamped ? null : Rounded.Digits(structure.Root.ClosedStiffness * Math.PI / 180),
        HasJoint = structure.Root.Joint is not null,
        Ties = [.. structure.Root.Ties.Select((tie, i) => TieSummary.Of(tie, structure.TieStrengthRange(i)))],
        Torques = [.. torques.Select(TorqueSummary.Of)],
    };
}

/// <summary>A bolt or rod across the joint.</summary>
/// <param name="Name">Its name.</param>
/// <param name="AftMm">Where it crosses, aft of the root quarter chord.</param>
/// <param name="PreloadN">Pull when hand-tight; 0 for a bonded rod.</param>
/// <param name="BearsN">Pull at which it, its nut or its bond gives.</param>
/// <param name="BearsLowN">Lower end of that.</param>
public sealed record TieSummary(string Name, double AftMm, double PreloadN, double BearsN, double BearsLowN)
{
    internal static TieSummary Of(JointTie tie, Ranged strength) =>
        new(tie.Name, Rounded.Mm(tie.Tie.X), Rounded.Digits(tie.Tie.Preload), Rounded.Digits(strength.Value), Rounded.Digits(strength.Low));
}

/// <summary>How hard a bolt may be tightened.</summary>
/// <param name="Bolt">Which.</param>
/// <param name="LeastNm">Least that keeps the joint closed; 0 when nothing asks for it.</param>
/// <param name="GreatestNm">Greatest that stays off every limit.</param>
/// <param name="LimitedBy">Which limit.</param>
/// <param name="Reason">In words.</param>
public sealed record TorqueSummary(string Bolt, double LeastNm, double GreatestNm, TorqueLimit LimitedBy, string Reason)
{
    internal static TorqueSummary Of(NutTorque torque) =>
        new(torque.Name, Rounded.Digits(torque.Advice.Least), Rounded.Digits(torque.Advice.Greatest), torque.Advice.LimitedBy, torque.Advice.Reason);
}

/// <summary>One number of a material with its range.</summary>
/// <param name="Place">What it is used for.</param>
/// <param name="Material">Its name.</param>
/// <param name="Quantity">Which number.</param>
/// <param name="Value">The number.</param>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
/// <param name="Unit">Unit.</param>
public sealed record MaterialSummary(string Place, string Material, string Quantity, double Value, double Low, double High, string Unit)
{
    private const double Giga = 1e-9, Mega = 1e-6;

    internal static IEnumerable<MaterialSummary> Of(FinMaterials materials)
    {
        yield return Row("walls", materials.Printed.Name, "modulus along layers", materials.Printed.ModulusAlong, Giga, "GPa");
        yield return Row("walls", materials.Printed.Name, "modulus across layers", materials.Printed.ModulusAcross, Giga, "GPa");
        yield return Row("walls", materials.Printed.Name, "strength along layers", materials.Printed.StrengthAlong, Mega, "MPa");
        yield return Row("walls", materials.Printed.Name, "strength across layers", materials.Printed.StrengthAcross, Mega, "MPa");
        yield return Row("walls", "bench", "stiffness factor", materials.WallFactor, 1, "");
        yield return Row("core", $"{materials.Printed.Name} in {materials.Resin.Name}", "modulus", materials.Core.Modulus, Giga, "GPa");
        yield return Row("core", $"{materials.Printed.Name} in {materials.Resin.Name}", "strength", materials.CoreStrength, Mega, "MPa");
        yield return Row("core", "bench", "stiffness factor", materials.CoreFactor, 1, "");
        yield return Row("rods", materials.Rod.Name, "modulus", materials.Rod.Modulus, Giga, "GPa");
        yield return Row("rods", materials.Rod.Name, "compressive strength", materials.Rod.CompressiveStrength, Mega, "MPa");
        yield return Row("rods", materials.Rod.Name, "bond strength", materials.Rod.BondStrength, Mega, "MPa");
        yield return Row("bolts", materials.Bolt.Name, "yield", materials.Bolt.Yield, Mega, "MPa");
    }

    private static MaterialSummary Row(string place, string material, string quantity, Ranged range, double factor, string unit) =>
        new(place, material, quantity, Rounded.Digits(factor * range.Value), Rounded.Digits(factor * range.Low), Rounded.Digits(factor * range.High), unit);
}
