namespace Finwright.Geometry.Outlines;

/// <summary>An edge of the outline.</summary>
public enum OutlineEdge
{
    /// <summary>The leading edge.</summary>
    Leading,

    /// <summary>The trailing edge.</summary>
    Trailing,
}

/// <summary>What keeps points from making an outline.</summary>
public enum OutlineFaultKind
{
    /// <summary>An edge has fewer than two points.</summary>
    TooFewPoints,

    /// <summary>A coordinate is not a finite number.</summary>
    NotFinite,

    /// <summary>The first point does not lie at the hull.</summary>
    RootOffHull,

    /// <summary>A point lies less deep than the one before it.</summary>
    DepthFalls,

    /// <summary>So many points in a row share one depth that the edge jumps there.</summary>
    DepthStands,

    /// <summary>The edges end at different depths.</summary>
    TipsDiffer,

    /// <summary>The outline has no depth.</summary>
    NoDepth,

    /// <summary>The trailing edge lies ahead of the leading edge, or on it, above the tip.</summary>
    EdgesCross,
}

/// <summary>One thing that keeps points from making an outline.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Edge">Which edge; the leading one when both are concerned.</param>
/// <param name="Point">Number of the control point, from 0; -1 when no single point is to blame.</param>
/// <param name="Depth">Depth of the place, metres.</param>
/// <param name="Amount">Size of the fault, metres: the chord where edges cross, the step of depth, or the difference of the tips.</param>
public readonly record struct OutlineFault(OutlineFaultKind Kind, OutlineEdge Edge, int Point, double Depth, double Amount);
