using Finwright.Geometry.Outlines;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Parts;

/// <summary>A plane square to the chord plane that parts a blade in two.</summary>
/// <param name="Through">Point of the quarter-chord line that it goes through, design axes, metres.</param>
/// <param name="Slope">Slope in the x–y plane, radians, positive when it goes deeper toward the trailing edge.</param>
public readonly record struct CutPlane(Point3 Through, double Slope)
{
    /// <summary>A plane through the line of quarter chords.</summary>
    /// <param name="outline">The planform.</param>
    /// <param name="depth">Depth of the crossing, metres, 0 to the span.</param>
    /// <param name="slope">Slope, radians.</param>
    public static CutPlane Across(Outline outline, double depth, double slope)
    {
        ArgumentNullException.ThrowIfNull(outline);
        return new(new(outline.LeadingEdge(depth) + outline.Chord(depth) / 4, depth, 0), slope);
    }

    /// <summary>Unit normal, toward the tip.</summary>
    public Point3 Normal => new(-Math.Sin(Slope), Math.Cos(Slope), 0);

    /// <summary>Distance from the origin along the normal, metres.</summary>
    public double Offset => Normal.Dot(Through);

    /// <summary>How far a point lies beyond the plane on the tip's side, metres.</summary>
    public double Beyond(Point3 point) => Normal.Dot(point) - Offset;

    /// <summary>The part of a solid on the tip's side.</summary>
    /// <param name="solid">What is cut.</param>
    /// <param name="gap">Half of it is taken off, metres.</param>
    public SolidExpression TipSide(SolidExpression solid, double gap)
    {
        ArgumentNullException.ThrowIfNull(solid);
        return solid.TrimmedBy(Normal, Offset + gap / 2);
    }

    /// <summary>The part of a solid on the root's side.</summary>
    /// <param name="solid">What is cut.</param>
    /// <param name="gap">Half of it is taken off, metres.</param>
    public SolidExpression RootSide(SolidExpression solid, double gap)
    {
        ArgumentNullException.ThrowIfNull(solid);
        return solid.TrimmedBy(-1 * Normal, gap / 2 - Offset);
    }

    /// <summary>
    /// Depths at which the plane leaves the planform through the leading and the trailing edge, metres; null when it
    /// leaves through the root or the tip instead.
    /// </summary>
    public (double Leading, double Trailing)? Exits(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        return Exit(outline.LeadingEdge, outline.Span) is { } leading && Exit(outline.TrailingEdge, outline.Span) is { } trailing
            ? (leading, trailing)
            : null;
    }

    // The edge starts on the root's side and ends on the tip's side; halving finds a crossing to a nanometre.
    private double? Exit(Func<double, double> edge, double span)
    {
        double low = 0, high = span;
        if (Beyond(new(edge(low), low, 0)) >= 0 || Beyond(new(edge(high), high, 0)) <= 0)
            return null;
        while (high - low > 1e-9)
        {
            double middle = (low + high) / 2;
            if (Beyond(new(edge(middle), middle, 0)) < 0)
                low = middle;
            else
                high = middle;
        }

        return high;
    }
}
