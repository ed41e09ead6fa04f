namespace Finwright.Geometry.Outlines;

/// <summary>
/// The planform: leading and trailing edge over depth. Design axes: x aft of the root quarter chord, y depth below the hull; metres.
/// </summary>
public abstract class Outline
{
    /// <summary>Depth of the tip, metres.</summary>
    public abstract double Span { get; }

    /// <summary>Leading edge, x at depth y.</summary>
    /// <param name="y">Depth, metres, 0 to <see cref="Span"/>.</param>
    public abstract double LeadingEdge(double y);

    /// <summary>Trailing edge, x at depth y.</summary>
    /// <param name="y">Depth, metres, 0 to <see cref="Span"/>.</param>
    public abstract double TrailingEdge(double y);

    /// <summary>Chord at depth y, metres.</summary>
    public double Chord(double y) => TrailingEdge(y) - LeadingEdge(y);
}
