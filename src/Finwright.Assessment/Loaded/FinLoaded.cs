using Finwright.Strength.FromDesign;
using Finwright.Strength.Joints;
using Finwright.Strength.Margins;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;
using Finwright.Water.Lifting;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Loaded;

/// <summary>Whether a fin bends, twists, opens or breaks, as far as it could be worked out.</summary>
public sealed record FinLoaded
{
    /// <summary>Why there are no load cases, and what to do; null when there are.</summary>
    public string? Problem { get; init; }

    /// <summary>The fin's structure.</summary>
    public required FinStructure Structure { get; init; }

    /// <summary>The load cases in which the water bends the fin; empty when there is a <see cref="Problem"/>.</summary>
    public IReadOnlyList<CaseLoaded> Cases { get; init; } = [];

    /// <summary>Dynamic pressure at which the fin would twist without end, Pa; null when it never does, or was not worked out.</summary>
    public double? DivergencePressure { get; init; }

    /// <summary>Speed at that pressure, m/s.</summary>
    public double? DivergenceSpeed { get; init; }

    /// <summary>One load case; null when it was not worked out.</summary>
    /// <param name="kind">Which.</param>
    public CaseLoaded? this[LoadCaseKind kind] => Cases.FirstOrDefault(own => own.Load.Kind == kind);
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
}

/// <summary>What one load case does to the fin.</summary>
public sealed record CaseLoaded
{
    /// <summary>The situation.</summary>
    public required LoadCase Load { get; init; }

    /// <summary>How it came out.</summary>
    public required LoadedStatus Status { get; init; }

    /// <summary>Rounds between water and blade.</summary>
    public required int Passes { get; init; }

    /// <summary>Forces on the blade, along z.</summary>
    public required IReadOnlyList<PlateLoad> Forces { get; init; }

    /// <summary>The blade under them.</summary>
    public required PlateSolution Plate { get; init; }

    /// <summary>Deflection and twist from root to tip.</summary>
    public required IReadOnlyList<SpanBend> Along { get; init; }

    /// <summary>Moment about x at the hull plane, N·m.</summary>
    public required double RootMoment { get; init; }

    /// <summary>Most strained places, part by part.</summary>
    public required IReadOnlyList<StressPeak> Peaks { get; init; }

    /// <summary>The joint between blade and base; null when there is none to open.</summary>
    public required JointState? Joint { get; init; }

    /// <summary>Leeway of a fin that did not bend, radians; null when it does not carry the load.</summary>
    public required double? StiffLeeway { get; init; }

    /// <summary>Leeway of the bent fin at the same side force, radians; null when not settled.</summary>
    public required double? BentLeeway { get; init; }

    /// <summary>Side force of the bent fin over that of one that does not bend, at the same leeway; null when not settled.</summary>
    public required double? SideForceShare { get; init; }

    /// <summary>How much deeper the load acts for the bending, metres; negative when it comes up; null when not settled.</summary>
    public required double? EffortShift { get; init; }

    /// <summary>The tip.</summary>
    public SpanBend Tip => Along[^1];
}

/// <summary>How far one section moves.</summary>
/// <param name="Depth">Its depth, metres.</param>
/// <param name="LeadingEdge">Deflection of its leading edge, metres.</param>
/// <param name="MidChord">Of its middle.</param>
/// <param name="TrailingEdge">Of its trailing edge.</param>
/// <param name="Twist">Turn of its chord, radians, positive when the trailing edge goes farther with the load: the blade washes out and unloads.</param>
public readonly record struct SpanBend(double Depth, double LeadingEdge, double MidChord, double TrailingEdge, double Twist)
{
    /// <summary>Reads a section off a loaded plate.</summary>
    internal static SpanBend At(PlateSolution plate, PlateFin fin, double y)
    {
        double leading = fin.LeadingEdge(y), trailing = fin.TrailingEdge(y), chord = trailing - leading;
        double Deflection(double share) => plate.Deflection(leading + share * chord, y);
        // Between tenths: nose and trailing edge are thin and bend by themselves.
        double twist = chord > 0 ? (Deflection(0.9) - Deflection(0.1)) / (0.8 * chord) : 0;
        return new(y, Deflection(0), Deflection(0.5), Deflection(1), twist);
    }
}
