namespace Finwright.Geometry.Solids;

/// <summary>Closed polygons for prisms: counter-clockwise, centred on the origin, metres.</summary>
public static class Rings
{
    /// <summary>Greatest distance between a drawn circle and its polygon unless said otherwise, metres: well below what a printer can show.</summary>
    public const double CircleTolerance = 4e-6;

    /// <summary>A circle as a regular polygon of the same area, so that bores are neither tight nor loose on average.</summary>
    /// <param name="radius">Radius, metres, positive.</param>
    /// <param name="tolerance">Greatest distance between circle and polygon, metres.</param>
    public static IReadOnlyList<Point2> Circle(double radius, double tolerance = CircleTolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radius);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        // Sagitta of a chord: r (1 - cos(π/n)). A multiple of four keeps the extreme points on the axes.
        double half = Math.Acos(Math.Max(0.7, 1 - tolerance / radius));
        int count = 4 * (int)Math.Ceiling(Math.PI / half / 4);
        double equalArea = radius * Math.Sqrt(2 * Math.PI / (count * Math.Sin(2 * Math.PI / count)));
        return Regular(count, equalArea, 0);
    }

    /// <summary>A hexagon with two sides parallel to x.</summary>
    /// <param name="acrossFlats">Distance between opposite sides, metres.</param>
    public static IReadOnlyList<Point2> Hexagon(double acrossFlats) => Regular(6, acrossFlats / Math.Sqrt(3), 0);

    /// <summary>A rectangle.</summary>
    /// <param name="sizeX">Size along x, metres.</param>
    /// <param name="sizeY">Size along y, metres.</param>
    public static IReadOnlyList<Point2> Rectangle(double sizeX, double sizeY)
    {
        double x = sizeX / 2, y = sizeY / 2;
        return [new(-x, -y), new(x, -y), new(x, y), new(-x, y)];
    }

    private static Point2[] Regular(int count, double radius, double start)
    {
        Point2[] ring = new Point2[count];
        for (int i = 0; i < count; i++)
        {
            double angle = start + 2 * Math.PI * i / count;
            ring[i] = new(radius * Math.Cos(angle), radius * Math.Sin(angle));
        }

        return ring;
    }
}
