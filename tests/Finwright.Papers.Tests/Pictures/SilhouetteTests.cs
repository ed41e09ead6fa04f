using Finwright.Geometry;
using Finwright.Papers.Pictures;

namespace Finwright.Papers.Tests.Pictures;

public sealed class SilhouetteTests
{
    [Fact]
    public void A_tetrahedron_from_above_is_its_largest_triangle()
    {
        // Corners (0 0 0), (4 0 0), (0 3 0) and a tip over the inside: the triangle of area 6 hides the rest.
        TriangleMesh mesh = new([0, 0, 0, 4, 0, 0, 0, 3, 0, 1, 1, 2], [0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3]);
        IReadOnlyList<Point2> ring = Assert.Single(Silhouette.Of(mesh, p => new(p.X, p.Y)));
        Assert.Equal(6, Area(ring), 6 * 0.005);
        Assert.Equal(4, ring.Max(p => p.X) - ring.Min(p => p.X), 0.02);
        Assert.InRange(ring.Count, 3, 12);
    }

    [Fact]
    public void A_hole_that_goes_through_stays_open()
    {
        // A square frame as two flat sides, looked at square: 10 outside, 4 inside.
        double[] vertices = [.. Corners(0, 10, 0), .. Corners(3, 7, 0)];
        List<int> triangles = [];
        for (int i = 0; i < 4; i++)
        {
            int next = (i + 1) % 4;
            triangles.AddRange([i, next, 4 + next, i, 4 + next, 4 + i]);
        }

        IReadOnlyList<IReadOnlyList<Point2>> rings = Silhouette.Of(new(vertices, [.. triangles]), p => new(p.X, p.Y));
        Assert.Equal(2, rings.Count);
        Assert.Equal([16.0, 100.0], rings.Select(Area).Order(), (a, b) => Math.Abs(a - b) < 0.01 * b);
        Assert.True(Silhouette.Holds(rings, new(1, 1)));
        Assert.False(Silhouette.Holds(rings, new(5, 5)));
        Assert.False(Silhouette.Holds(rings, new(11, 5)));

        static double[] Corners(double low, double high, double z) => [low, low, z, high, low, z, high, high, z, low, high, z];
    }

    private static double Area(IReadOnlyList<Point2> ring) => Math.Abs(ring.Select((p, i) => p.Cross(ring[(i + 1) % ring.Count])).Sum()) / 2;
}
