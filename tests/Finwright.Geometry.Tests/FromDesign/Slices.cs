using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.FromDesign;

/// <summary>Measures finished solids by cutting them.</summary>
internal static class Slices
{
    /// <summary>Rings of a cut square to an axis, in a frame whose z runs along it.</summary>
    public static IReadOnlyList<IReadOnlyList<Point2>> Cut(ISolidKernel kernel, SolidExpression solid, Placement frame, double height) =>
        kernel.Slice(solid.Placed(Inverse(frame)), [height])[0].Rings;

    /// <summary>Signed area.</summary>
    public static double Area(IReadOnlyList<Point2> ring)
    {
        double twice = 0;
        for (int i = 0; i < ring.Count; i++)
            twice += ring[i].Cross(ring[(i + 1) % ring.Count]);
        return twice / 2;
    }

    /// <summary>Centroid of the area.</summary>
    public static Point2 Centroid(IReadOnlyList<Point2> ring)
    {
        Point2 sum = default;
        double twice = 0;
        for (int i = 0; i < ring.Count; i++)
        {
            Point2 a = ring[i], b = ring[(i + 1) % ring.Count];
            sum += a.Cross(b) * (a + b);
            twice += a.Cross(b);
        }

        return 1 / (3 * twice) * sum;
    }

    /// <summary>Diameter of the circle of the same area.</summary>
    public static double Diameter(IReadOnlyList<Point2> ring) => Math.Sqrt(4 * Math.Abs(Area(ring)) / Math.PI);

    /// <summary>Smallest and largest value of a coordinate.</summary>
    public static (double Low, double High) Range(IEnumerable<Point2> ring, Func<Point2, double> of) => (ring.Min(of), ring.Max(of));

    /// <summary>The way back from a frame of unit axes.</summary>
    public static Placement Inverse(Placement f) => new(
        new(f.AxisX.X, f.AxisY.X, f.AxisZ.X),
        new(f.AxisX.Y, f.AxisY.Y, f.AxisZ.Y),
        new(f.AxisX.Z, f.AxisY.Z, f.AxisZ.Z),
        new(-f.AxisX.Dot(f.Origin), -f.AxisY.Dot(f.Origin), -f.AxisZ.Dot(f.Origin)));
}
