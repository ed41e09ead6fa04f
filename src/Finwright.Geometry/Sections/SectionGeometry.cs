namespace Finwright.Geometry.Sections;

/// <summary>Surface points of a section and the numbers that follow from its shape.</summary>
public static class SectionGeometry
{
    // The nose and the trailing edge are looked at through this many samples, this far apart.
    private const int LimitSamples = 7;
    private const double LimitStep = 0.01;

    /// <summary>
    /// Point of the surface at the common parameter: u = 0 is the starboard (upper) trailing edge corner, 0.5 the nose, 1 the port
    /// (lower) corner, with the chordwise station x = (1 + cos 2πu) / 2.
    /// </summary>
    /// <param name="section">The section.</param>
    /// <param name="u">Place round the section, 0 to 1. For u and 1 - u the station is the same to the last bit.</param>
    /// <returns>x from the nose aft, y to starboard, chords. With thickness laid square to the camber line, x is not exactly the station.</returns>
    public static Point2 PointAt(Section section, double u)
    {
        ArgumentNullException.ThrowIfNull(section);
        return u <= 0.5 ? SurfaceAt(section, Station(u), 1) : SurfaceAt(section, Station(1 - u), -1);
    }

    /// <summary>Chordwise station of the common parameter on the starboard half.</summary>
    /// <param name="u">0 at the trailing edge to 0.5 at the nose.</param>
    internal static double Station(double u)
    {
        // cos(π/2) is 6e-17, not 0, in floating point: the nose is met exactly by hand.
        if (u >= 0.5)
            return 0;
        double c = Math.Cos(Math.PI * u);
        return c * c;
    }

    /// <summary>Point of one side at a station.</summary>
    /// <param name="section">The section.</param>
    /// <param name="station">Station on the chord, 0 to 1.</param>
    /// <param name="side">+1 starboard (upper), -1 port (lower).</param>
    public static Point2 SurfaceAt(Section section, double station, int side)
    {
        ArgumentNullException.ThrowIfNull(section);
        double half = side * section.HalfThickness(station), camber = section.Camber(station), share = section.SquareShare;
        if (share is 0)
            return new(station, camber + half);
        double slope = section.CamberSlope(station);
        double cosine = 1 / Math.Sqrt(1 + slope * slope), sine = slope * cosine;
        return new(station - share * half * sine, camber + half * (1 - share + share * cosine));
    }

    /// <summary>Area, centroid, second moments and the lengths that describe a section.</summary>
    /// <param name="section">The section.</param>
    /// <returns>Numbers for unit chord. Area and moments are good to about 1e-10 for a smooth section whose <see cref="Section.Joins"/> are complete.</returns>
    public static SectionProperties Properties(Section section)
    {
        ArgumentNullException.ThrowIfNull(section);
        ContourMoments moments = ContourMoments.Of(section);
        (double thickestAt, double half) = ChordPeak.Of(section.HalfThickness);
        (double highestAt, double high) = ChordPeak.Of(section.Camber);
        (double lowestAt, double low) = ChordPeak.Of(x => -section.Camber(x));
        bool up = high >= low;
        Point2 centroid = new(moments.X / moments.Area, moments.Y / moments.Area);
        return new(
            moments.Area,
            centroid,
            moments.YY,
            moments.XX - moments.Area * centroid.X * centroid.X,
            2 * half,
            thickestAt,
            up ? high : -low,
            up ? highestAt : lowestAt,
            LeadingEdgeRadius(section),
            2 * section.HalfThickness(1),
            2 * Math.Atan(-TrailingSlope(section)));
    }

    // Half thickness over √x runs smoothly into √(2 r) at the nose.
    private static double LeadingEdgeRadius(Section section)
    {
        double root = Limit(s => section.HalfThickness(s * s) / s);
        return root * root / 2;
    }

    private static double TrailingSlope(Section section)
    {
        double end = section.HalfThickness(1);
        return Limit(e => (end - section.HalfThickness(1 - e)) / e);
    }

    // Value of a smooth function at 0 from samples beside it: Neville's scheme.
    private static double Limit(Func<double, double> function)
    {
        Span<double> value = stackalloc double[LimitSamples];
        for (int i = 0; i < LimitSamples; i++)
            value[i] = function((i + 1) * LimitStep);
        for (int level = 1; level < LimitSamples; level++)
            for (int i = 0; i < LimitSamples - level; i++)
                value[i] = ((i + 1 + level) * value[i] - (i + 1) * value[i + 1]) / level;
        return value[0];
    }
}
