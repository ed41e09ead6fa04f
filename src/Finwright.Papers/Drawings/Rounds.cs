using Finwright.Geometry;

namespace Finwright.Papers.Drawings;

/// <summary>Circles and arcs as points.</summary>
public static class Rounds
{
    /// <summary>Greatest distance between a drawn round and the true one, metres: far below the width of any pen.</summary>
    private const double Tolerance = 5e-6;

    /// <summary>A circle, first point not repeated.</summary>
    public static IReadOnlyList<Point2> Circle(Point2 centre, double radius) => [.. Arc(centre, radius, 0, Math.Tau).SkipLast(1)];

    /// <summary>An arc.</summary>
    /// <param name="centre">Its centre, metres.</param>
    /// <param name="radius">Its radius, metres, positive.</param>
    /// <param name="from">Where it begins: from straight right, counter-clockwise as seen on paper, radians.</param>
    /// <param name="to">Where it ends.</param>
    public static IReadOnlyList<Point2> Arc(Point2 centre, double radius, double from, double to)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radius);
        int steps = Math.Max(4, (int)Math.Ceiling(Math.Abs(to - from) / (2 * Math.Acos(Math.Max(0.7, 1 - Tolerance / radius)))));
        return [.. Enumerable.Range(0, steps + 1).Select(i => At(centre, radius, from + (to - from) * i / steps))];
    }

    /// <summary>A point of a circle.</summary>
    public static Point2 At(Point2 centre, double radius, double turn) => centre + radius * new Point2(Math.Cos(turn), -Math.Sin(turn));
}
