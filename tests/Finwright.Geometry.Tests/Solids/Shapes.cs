using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.Solids;

/// <summary>Simple solids with closed-form volumes.</summary>
internal static class Shapes
{
    /// <summary>A box with one corner at a point.</summary>
    public static TriangleMesh Box(Point3 corner, Point3 size) => SampleMeshes.Box(size.X, size.Y, size.Z).Placed(Placement.Shift(corner));

    /// <summary>A box as a solid.</summary>
    public static SolidExpression Block(Point3 corner, Point3 size) => new MeshSolid(Box(corner, size));

    /// <summary>Rings of points joined into a closed skin along z, flat at both ends; all rings have the same number of points, counter-clockwise.</summary>
    public static TriangleMesh Loft(IReadOnlyList<Point2[]> rings, IReadOnlyList<double> heights)
    {
        int n = rings[0].Length, layers = rings.Count;
        List<double> vertices = [];
        List<int> triangles = [];
        for (int k = 0; k < layers; k++)
            foreach (Point2 p in rings[k])
                vertices.AddRange([p.X, p.Y, heights[k]]);
        for (int k = 0; k + 1 < layers; k++)
            for (int i = 0; i < n; i++)
            {
                int a = k * n + i, b = k * n + (i + 1) % n;
                triangles.AddRange([a, b, b + n, a, b + n, a + n]);
            }

        for (int end = 0; end < 2; end++)
        {
            int hub = vertices.Count / 3, first = end == 0 ? 0 : (layers - 1) * n;
            Point2[] ring = rings[end == 0 ? 0 : layers - 1];
            vertices.AddRange([ring.Average(p => p.X), ring.Average(p => p.Y), heights[end == 0 ? 0 : layers - 1]]);
            for (int i = 0; i < n; i++)
            {
                int a = first + i, b = first + (i + 1) % n;
                triangles.AddRange(end == 0 ? [hub, b, a] : [hub, a, b]);
            }
        }

        return new([.. vertices], [.. triangles]);
    }

    /// <summary>A lens-shaped fin-like loft, thick in the middle of the chord, span along z.</summary>
    /// <param name="around">Points round a ring.</param>
    /// <param name="layers">Rings along the span.</param>
    /// <param name="tipChord">Chord at the tip, metres; negative makes the edges cross.</param>
    public static TriangleMesh Blade(int around, int layers, double tipChord = 0.04)
    {
        const double RootChord = 0.12, Span = 0.3, Ratio = 0.1;
        List<Point2[]> rings = [];
        List<double> heights = [];
        for (int k = 0; k < layers; k++)
        {
            double share = (double)k / (layers - 1), chord = RootChord + (tipChord - RootChord) * share;
            rings.Add([.. Enumerable.Range(0, around).Select(i =>
            {
                double angle = 2 * Math.PI * i / around;
                return new Point2(0.1 * share + chord * Math.Cos(angle) / 2, Math.Abs(chord) * Ratio * Math.Sin(angle) / 2);
            })]);
            heights.Add(Span * share);
        }

        return Loft(rings, heights);
    }

    /// <summary>Area of a ring, positive when counter-clockwise.</summary>
    public static double Area(IReadOnlyList<Point2> ring)
    {
        double sum = 0;
        for (int i = 0; i < ring.Count; i++)
            sum += (ring[i] - ring[0]).Cross(ring[(i + 1) % ring.Count] - ring[0]);
        return sum / 2;
    }
}
