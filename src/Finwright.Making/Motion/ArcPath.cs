using Finwright.Geometry;

namespace Finwright.Making.Motion;

/// <summary>An arc in the plane of the bed, or a full circle; with a rise it is a helix.</summary>
/// <param name="Centre">Centre, metres.</param>
/// <param name="Radius">Radius at the start, metres.</param>
/// <param name="Start">Angle of the start from the x axis, rad.</param>
/// <param name="Sweep">Angle swept, rad; positive counter-clockwise.</param>
internal readonly record struct ArcPath(Point2 Centre, double Radius, double Start, double Sweep)
{
    /// <summary>Length in the plane, metres.</summary>
    public double Length => Radius * Math.Abs(Sweep);

    /// <summary>Direction of motion after a share of the sweep.</summary>
    public Point2 Direction(double share)
    {
        (double sin, double cos) = Math.SinCos(Start + share * Sweep);
        return Sweep > 0 ? new(-sin, cos) : new(sin, -cos);
    }

    /// <summary>Place after a share of the sweep, metres.</summary>
    public Point2 At(double share)
    {
        (double sin, double cos) = Math.SinCos(Start + share * Sweep);
        return new(Centre.X + Radius * cos, Centre.Y + Radius * sin);
    }

    /// <summary>From centre and end; equal ends make a full circle.</summary>
    /// <param name="from">Start, metres.</param>
    /// <param name="to">End, metres.</param>
    /// <param name="centre">Centre, metres.</param>
    /// <param name="counterClockwise">Sense seen from above.</param>
    /// <param name="whole">Whether no end was given, so that a full circle is meant.</param>
    public static ArcPath Round(Point2 from, Point2 to, Point2 centre, bool counterClockwise, bool whole)
    {
        Point2 a = from - centre, b = to - centre;
        double start = Math.Atan2(a.Y, a.X), sweep = Math.Atan2(a.Cross(b), a.Dot(b));
        if (whole || (to - from).Length < SamePlace)
            sweep = counterClockwise ? 2 * Math.PI : -2 * Math.PI;
        else if (counterClockwise && sweep < 0)
            sweep += 2 * Math.PI;
        else if (!counterClockwise && sweep > 0)
            sweep -= 2 * Math.PI;
        return new(centre, a.Length, start, sweep);
    }

    /// <summary>From radius and end: the shorter arc for a positive radius, the longer for a negative one.</summary>
    /// <returns>Null when no such arc reaches the end.</returns>
    public static ArcPath? WithRadius(Point2 from, Point2 to, double radius, bool counterClockwise)
    {
        Point2 chord = to - from;
        double length = chord.Length, half = length / 2, r = Math.Abs(radius);
        // Printed digits may leave a half circle short by a little.
        if (length < SamePlace || r is 0 || half > r * (1 + 1e-3) + SamePlace)
            return null;
        double height = Math.Sqrt(Math.Max(0, r * r - half * half));
        // The centre lies left of the chord for a short arc counter-clockwise.
        double side = counterClockwise == radius > 0 ? 1 : -1;
        Point2 centre = 0.5 * (from + to) + side * height / length * new Point2(-chord.Y, chord.X);
        return Round(from, to, centre, counterClockwise, false);
    }

    // A micrometre: below what motion files resolve.
    private const double SamePlace = 1e-6;
}
