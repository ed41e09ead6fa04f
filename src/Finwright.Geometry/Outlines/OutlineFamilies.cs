namespace Finwright.Geometry.Outlines;

/// <summary>Control points of an outline, root first: X aft of the root quarter chord, Y depth; metres.</summary>
/// <param name="LeadingEdge">Control points of the leading edge.</param>
/// <param name="TrailingEdge">Control points of the trailing edge.</param>
public sealed record OutlinePoints(IReadOnlyList<Point2> LeadingEdge, IReadOnlyList<Point2> TrailingEdge)
{
    /// <summary>The outline of these points.</summary>
    /// <param name="faults">Receives what keeps them from making one.</param>
    /// <returns>The outline, or null.</returns>
    public SplineOutline? Outline(ICollection<OutlineFault> faults) =>
        SplineOutline.TryCreate(LeadingEdge, TrailingEdge, out SplineOutline? outline, faults) ? outline : null;
}

/// <summary>
/// A family of outlines: a few numbers in, control points out. The edges meet at the full depth, where both run level, so the tip is
/// round without a corner.
/// </summary>
/// <remarks>
/// Rake is the angle from straight down of the straight line from the root's quarter chord to the tip, the tip being the point
/// where the edges meet at the full depth; it is met exactly. The control points lie on a chord law c(s) and a line of quarter
/// chords q(s) over the share s of the span; the corners at the tip are control points that the spline rounds off. All shape constants were drawn
/// by eye (from memory of common fins, no source).
/// </remarks>
public sealed record OutlineFamilies
{
    // Depths of the control points along each edge, as shares of the span; the point where the edges meet comes after.
    private readonly double[] _leadingShares, _trailingShares;

    private OutlineFamilies(double[] leadingShares, double[] trailingShares) => (_leadingShares, _trailingShares) = (leadingShares, trailingShares);

    /// <summary>Deep and narrow, close to straight down, with a slightly tapered front and a curved back.</summary>
    public static OutlineFamilies Upright { get; } = new([0, 0.22, 0.46, 0.68, 0.84, 1], [0, 0.22, 0.46, 0.70, 0.93, 1])
    {
        Rake = Degrees(6),
        TipRatio = 0.55,
        RakeBend = 1.7,
        Taper = 2,
        MeetingPoint = 0.7,
    };

    /// <summary>Curved aft more and more toward the tip.</summary>
    public static OutlineFamilies Raked { get; } = new([0, 0.22, 0.46, 0.68, 0.84, 1], [0, 0.22, 0.46, 0.70, 0.92, 1])
    {
        Rake = Degrees(25),
        TipRatio = 0.35,
        RakeBend = 1.7,
        Taper = 1.4,
        MeetingPoint = 0.8,
    };

    /// <summary>Leading edge swept so far that weed slides off.</summary>
    public static OutlineFamilies SteepRake { get; } = new([0, 0.22, 0.46, 0.68, 0.86, 1], [0, 0.22, 0.46, 0.70, 0.92, 1])
    {
        Rake = Degrees(45),
        TipRatio = 0.35,
        RakeBend = 1,
        Taper = 1.15,
        MeetingPoint = 0.55,
    };

    /// <summary>Short, with a wide root, a nearly straight front and a small tip.</summary>
    public static OutlineFamilies WideDelta { get; } = new([0, 0.25, 0.50, 0.72, 0.88, 1], [0, 0.25, 0.50, 0.75, 0.92, 1])
    {
        Rake = Degrees(38),
        TipRatio = 0.18,
        RakeBend = 1,
        Taper = 1,
        MeetingPoint = 0.75,
    };

    /// <summary>The family's own rake, radians.</summary>
    public required double Rake { get; init; }

    /// <summary>The family's own chord near the tip over the root chord, before the corners are rounded.</summary>
    public required double TipRatio { get; init; }

    /// <summary>Power of the quarter-chord line over depth: 1 straight, more curves aft toward the tip.</summary>
    public required double RakeBend { get; init; }

    /// <summary>Power with which the chord falls from root to tip: 1 straight, more keeps it longer.</summary>
    public required double Taper { get; init; }

    /// <summary>Where on the tip's chord the edges meet, from its leading corner, as a share.</summary>
    public required double MeetingPoint { get; init; }

    /// <summary>Control points for a given root chord.</summary>
    /// <param name="span">Depth of the tip, metres, positive.</param>
    /// <param name="rootChord">Chord at the root, metres, positive.</param>
    /// <param name="rake">Rake, radians; null for the family's own.</param>
    /// <param name="tipRatio">Chord near the tip over the root chord; null for the family's own.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is not positive, or an angle beyond 85 degrees.</exception>
    public OutlinePoints WithRootChord(double span, double rootChord, double? rake = null, double? tipRatio = null)
    {
        Check(span, rake, tipRatio);
        if (!(rootChord > 0 && double.IsFinite(rootChord)))
            throw new ArgumentOutOfRangeException(nameof(rootChord), rootChord, "The root chord must be above 0.");
        return Points(span, rootChord, rake ?? Rake, tipRatio ?? TipRatio);
    }

    /// <summary>Control points for a given area.</summary>
    /// <param name="span">Depth of the tip, metres, positive.</param>
    /// <param name="area">Area of the outline, m², positive; met to rounding.</param>
    /// <param name="rake">Rake, radians; null for the family's own.</param>
    /// <param name="tipRatio">Chord near the tip over the root chord; null for the family's own.</param>
    /// <returns>Control points; null when rake and depth alone, without any chord, already enclose more than the area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is not positive, or an angle beyond 85 degrees.</exception>
    /// <remarks>Every control point moves in proportion to the root chord at fixed depth, so the area is a straight line over the root chord: two areas give the third.</remarks>
    public OutlinePoints? WithArea(double span, double area, double? rake = null, double? tipRatio = null)
    {
        Check(span, rake, tipRatio);
        if (!(area > 0 && double.IsFinite(area)))
            throw new ArgumentOutOfRangeException(nameof(area), area, "The area must be above 0.");
        double near = area / span, far = 2 * near;
        double atNear = AreaOf(Points(span, near, rake ?? Rake, tipRatio ?? TipRatio));
        double atFar = AreaOf(Points(span, far, rake ?? Rake, tipRatio ?? TipRatio));
        double root = near + (area - atNear) * (far - near) / (atFar - atNear);
        return root > 0 ? Points(span, root, rake ?? Rake, tipRatio ?? TipRatio) : null;
    }

    private static double Degrees(double degrees) => degrees * Math.PI / 180;

    private static void Check(double span, double? rake, double? tipRatio)
    {
        if (!(span > 0 && double.IsFinite(span)))
            throw new ArgumentOutOfRangeException(nameof(span), span, "The span must be above 0.");
        if (rake is double angle && !(Math.Abs(angle) <= Degrees(85)))
            throw new ArgumentOutOfRangeException(nameof(rake), angle, "The rake must lie within 85 degrees of straight down.");
        if (tipRatio is double ratio && !(ratio > 0 && double.IsFinite(ratio)))
            throw new ArgumentOutOfRangeException(nameof(tipRatio), ratio, "The tip chord must be above 0.");
    }

    private static double AreaOf(OutlinePoints points)
    {
        static double Under(IReadOnlyList<Point2> edge) => Numerics.BSplineCurve.WithUniformKnots(
            [.. edge.Select(p => p.X)], [.. edge.Select(p => p.Y)]).IntegralXdY();

        return Under(points.TrailingEdge) - Under(points.LeadingEdge);
    }

    private OutlinePoints Points(double span, double rootChord, double rake, double tipRatio)
    {
        double tipChord = tipRatio * rootChord, tip = span * Math.Tan(rake);
        double tipLeading = tip - MeetingPoint * tipChord;
        double tipQuarter = tipLeading + 0.25 * tipChord;

        double Quarter(double s) => tipQuarter * Math.Pow(s, RakeBend);
        double Chord(double s) => rootChord + (tipChord - rootChord) * Math.Pow(s, Taper);
        Point2 Leading(double s) => new(Quarter(s) - 0.25 * Chord(s), s * span);
        Point2 Trailing(double s) => new(Quarter(s) + 0.75 * Chord(s), s * span);

        Point2 meeting = new(tip, span);
        return new([.. _leadingShares.Select(Leading), meeting], [.. _trailingShares.Select(Trailing), meeting]);
    }
}
