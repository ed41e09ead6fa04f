using MathNet.Numerics.Integration;

namespace Finwright.Geometry.Outlines;

/// <summary>Measures of an outline seen from the side.</summary>
public sealed record Planform
{
    /// <summary>Gauss points on each polynomial piece; the integrands are smooth there, so this is far beyond 1e-9 relative.</summary>
    private const int GaussPoints = 20;

    private readonly SplineOutline _outline;

    private Planform(SplineOutline outline) => _outline = outline;

    /// <summary>Depth of the tip, metres.</summary>
    public double Span => _outline.Span;

    /// <summary>Area, m².</summary>
    public required double Area { get; init; }

    /// <summary>Span² over area, of the single fin.</summary>
    public double AspectRatio => Span * Span / Area;

    /// <summary>Area over span, metres.</summary>
    public double MeanChord => Area / Span;

    /// <summary>Mean aerodynamic chord: the integral of chord² over depth, divided by the area; metres.</summary>
    public required double MeanAerodynamicChord { get; init; }

    /// <summary>Middle of the area: X aft of the root quarter chord, Y depth; metres.</summary>
    public required Point2 Centroid { get; init; }

    /// <summary>
    /// Angle from straight down of the straight line from the root's quarter chord to the tip's quarter chord, radians, positive aft.
    /// The tip is taken at the full depth: where the edges meet in one point, that point.
    /// </summary>
    public double Rake => Math.Atan2(_outline.LeadingEdge(Span) + 0.25 * _outline.Chord(Span), Span);

    /// <summary>Measures an outline.</summary>
    /// <remarks>
    /// Area and moments by Gauss-Legendre quadrature piece by piece. A depth substitution that slows at both ends of each piece
    /// takes the square-root closing of a round tip out of the integrand.
    /// </remarks>
    public static Planform Of(SplineOutline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        double area = outline.TrailingCurve.IntegralXdY() - outline.LeadingCurve.IntegralXdY();
        double chordSquared = 0, momentX = 0, momentY = 0;
        double[] pieces = outline.PieceDepths();
        for (int i = 1; i < pieces.Length; i++)
        {
            double from = pieces[i - 1], height = pieces[i] - from;
            GaussLegendreRule rule = new(0, 1, GaussPoints);
            for (int k = 0; k < GaussPoints; k++)
            {
                double s = rule.GetAbscissa(k);
                double y = from + height * s * s * (3 - 2 * s);
                double weight = rule.GetWeight(k) * height * 6 * s * (1 - s);
                double leading = outline.LeadingEdge(y), trailing = outline.TrailingEdge(y), chord = trailing - leading;
                chordSquared += weight * chord * chord;
                momentX += weight * chord * (leading + trailing) / 2;
                momentY += weight * chord * y;
            }
        }

        return new(outline)
        {
            Area = area,
            MeanAerodynamicChord = chordSquared / area,
            Centroid = new(momentX / area, momentY / area),
        };
    }

    /// <summary>Angle of the leading edge from straight down at a depth, radians, positive when it runs aft; π/2 where a round tip runs level.</summary>
    /// <param name="y">Depth, metres, 0 to the span.</param>
    public double LeadingEdgeSweep(double y)
    {
        (double dx, double dy) = _outline.LeadingCurve.Derivative(_outline.LeadingCurve.ParameterAtY(y));
        return Math.Atan2(dx, dy);
    }

    /// <summary>Angle of the quarter-chord line from straight down at a depth, radians, positive when it runs aft.</summary>
    /// <param name="y">Depth, metres, 0 to the span.</param>
    /// <remarks>Where both edges of a round tip run level, the line's direction there is that of the edges' bisected run, which has no limit; ±π/2 is returned.</remarks>
    public double QuarterChordSweep(double y)
    {
        (double lx, double ly) = _outline.LeadingCurve.Derivative(_outline.LeadingCurve.ParameterAtY(y));
        (double tx, double ty) = _outline.TrailingCurve.Derivative(_outline.TrailingCurve.ParameterAtY(y));
        // d(0.75 L + 0.25 T)/dy with both slopes brought to one denominator, which stays positive but at a level tip.
        return Math.Atan2(0.75 * lx * ty + 0.25 * tx * ly, ly * ty);
    }

    /// <summary>The outline as a closed line: down the leading edge, across a flat tip, up the trailing edge; the first point is not repeated.</summary>
    /// <param name="tolerance">Greatest distance between the true edge and the line, metres, positive.</param>
    /// <returns>X aft of the root quarter chord, Y depth; metres.</returns>
    public IReadOnlyList<Point2> Polyline(double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        List<Point2> line = CurvePolyline.Of(_outline.LeadingCurve, tolerance);
        List<Point2> back = CurvePolyline.Of(_outline.TrailingCurve, tolerance);
        back.Reverse();
        bool closes = (back[0] - line[^1]).Length < tolerance / 2;
        line.AddRange(closes ? back[1..] : back);
        return line;
    }
}
