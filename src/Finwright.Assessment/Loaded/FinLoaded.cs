using Finwright.Strength.FromDesign;
using Finwright.Strength.Joints;
using Finwright.Strength.Margins;
using Finwright.Strength.Plates;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Loaded;

/// <summary>Whether a fin bends, twists, opens or breaks, as far as it could be worked out.</summary>
public sealed record FinLoaded
{
    /// <summary>Why there are no load cases, and what to do; null when there are.</summary>
    public string? Problem { get; init; }

    /// <summary>The fin's structure; null when it could not be worked out.</summary>
    public FinStructure? Structure { get; init; }

    /// <summary>The load cases in which the water bends the fin; empty when there is a <see cref="Problem"/>.</summary>
    public IReadOnlyList<CaseLoaded> Cases { get; init; } = [];

    /// <summary>What a strike on the ground does; null when there is a <see cref="Problem"/>.</summary>
    public GroundStrike? Grounding { get; init; }

    /// <summary>Dynamic pressure at which the fin would twist without end, Pa; null when it never does, or was not worked out.</summary>
    public double? DivergencePressure { get; init; }

    /// <summary>Speed at that pressure, m/s.</summary>
    public double? DivergenceSpeed { get; init; }

    /// <summary>How hard the bolts may be tightened; empty without bolts or when there is a <see cref="Problem"/>.</summary>
    public IReadOnlyList<NutTorque> Torques { get; init; } = [];

    /// <summary>One load case; null when it was not worked out.</summary>
    /// <param name="kind">Which.</param>
    public CaseLoaded? this[LoadCaseKind kind] => Cases.FirstOrDefault(own => own.Load.Kind == kind);
}

/// <summary>The tip of the leading edge strikes ground.</summary>
public sealed record GroundStrike
{
    /// <summary>The situation.</summary>
    public required LoadCase Load { get; init; }

    /// <summary>Mass that is stopped, kg.</summary>
    public required double Mass { get; init; }

    /// <summary>How far the fin gives fore and aft at the place that strikes, m/N.</summary>
    public required double Compliance { get; init; }

    /// <summary>Push aft at which blade or joint gives, N.</summary>
    public required double BearableForce { get; init; }

    /// <summary>What gives first.</summary>
    public required string GivesFirst { get; init; }

    /// <summary>Speed of a strike on hard ground that reaches that force, m/s.</summary>
    public required double BearableSpeed { get; init; }

    /// <summary>Push aft of a strike on hard ground at the speed of the load case, N.</summary>
    public required double ForceAtSpeed { get; init; }

    /// <summary>Whether the edge leans so far that it slides up over the ground instead of catching.</summary>
    public required bool RidesUp { get; init; }
}

/// <summary>How the search for the shape under load came out.</summary>
public enum LoadedStatus
{
    /// <summary>Load and shape agree.</summary>
    Settled,

    /// <summary>The fin stalls before it carries the side force; the load is what it would be, with the fin's own spread.</summary>
    NotCarried,

    /// <summary>Load and shape did not settle: near divergence, or the flow did not converge.</summary>
    NotSettled,

    /// <summary>The blade could not be solved.</summary>
    NotSolved,

    /// <summary>The blade would bend by more than <see cref="CaseLoaded.FarthestShare"/> of its span, which a linear calculation does not reach.</summary>
    BeyondRange,
}

/// <summary>What one load case does to the fin.</summary>
public sealed record CaseLoaded
{
    /// <summary>Bending over the span beyond which a linear calculation has nothing to say (judgement): a quarter.</summary>
    public const double FarthestShare = 0.25;

    /// <summary>The situation.</summary>
    public required LoadCase Load { get; init; }

    /// <summary>How it came out.</summary>
    public required LoadedStatus Status { get; init; }

    /// <summary>Whether deflections and stresses may be shown.</summary>
    public bool HasNumbers => Status is LoadedStatus.Settled or LoadedStatus.NotCarried;

    /// <summary>Rounds between water and blade.</summary>
    public required int Passes { get; init; }

    /// <summary>Forces on the blade, along z.</summary>
    public required IReadOnlyList<PlateLoad> Forces { get; init; }

    /// <summary>The blade under them.</summary>
    public required PlateSolution Plate { get; init; }

    /// <summary>Deflection and twist from root to tip.</summary>
    public required IReadOnlyList<SectionBend> Along { get; init; }

    /// <summary>Moment about x at the hull plane, N·m.</summary>
    public required double RootMoment { get; init; }

    /// <summary>Most strained places, part by part.</summary>
    public required IReadOnlyList<StressPeak> Peaks { get; init; }

    /// <summary>The joint between blade and base; null when there is none to open.</summary>
    public required JointState? Joint { get; init; }

    /// <summary>The base in its box; null when the root is taken as clamped.</summary>
    public required BaseInBoxState? Base { get; init; }

    /// <summary>Leeway of a fin that did not bend, radians; null when it does not carry the load.</summary>
    public required double? StiffLeeway { get; init; }

    /// <summary>Leeway of the bent fin at the same side force, radians; null when not settled.</summary>
    public required double? BentLeeway { get; init; }

    /// <summary>Side force of the bent fin over that of one that does not bend, at the same leeway; null when not settled.</summary>
    public required double? SideForceShare { get; init; }

    /// <summary>How much deeper the load acts for the bending, metres; negative when it comes up; null when not settled.</summary>
    public required double? EffortShift { get; init; }

    /// <summary>The tip.</summary>
    public SectionBend Tip => Along[^1];
}
