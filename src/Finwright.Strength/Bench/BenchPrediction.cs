using Finwright.Numerics;
using Finwright.Strength.Joints;
using Finwright.Strength.Margins;
using Finwright.Strength.Plates;

namespace Finwright.Strength.Bench;

/// <summary>What the bench should show under a hung weight.</summary>
public sealed record BenchPrediction
{
    /// <summary>The weight.</summary>
    public required BenchLoad Load { get; init; }

    /// <summary>Whether the blade was solved.</summary>
    public required PlateStatus Status { get; init; }

    /// <summary>The section at which it hangs.</summary>
    public required StationBend AtLoad { get; init; }

    /// <summary>The tip.</summary>
    public required StationBend AtTip { get; init; }

    /// <summary>Deflection and twist from root to tip.</summary>
    public required IReadOnlyList<SectionBend> Along { get; init; }

    /// <summary>Stiffness against a push at 40 % of the span on the middle of the chord, N/m.</summary>
    public required Ranged PushStiffness { get; init; }

    /// <summary>Most strained places under the weight.</summary>
    public required IReadOnlyList<StressPeak> Peaks { get; init; }

    /// <summary>The joint under the weight; null when there is none to open.</summary>
    public required JointState? Joint { get; init; }

    /// <summary>Moment about x at the hull plane, N·m.</summary>
    public required double RootMoment { get; init; }

    /// <summary>Greatest deflection over the span.</summary>
    public required double DeflectionShare { get; init; }

    /// <summary>By how much the weight may grow before the first crack is to be expected.</summary>
    public StressPeak? FirstCrack => Peaks.MinBy(peak => peak.Reserve);
}

/// <summary>How far one section moves with the load.</summary>
/// <param name="Depth">Its depth, metres.</param>
/// <param name="LeadingEdge">Deflection of its leading edge, metres.</param>
/// <param name="MidChord">Of its middle.</param>
/// <param name="TrailingEdge">Of its trailing edge.</param>
/// <param name="Twist">Turn of its chord, radians, positive when the trailing edge goes farther.</param>
public sealed record StationBend(double Depth, Ranged LeadingEdge, Ranged MidChord, Ranged TrailingEdge, Ranged Twist);
