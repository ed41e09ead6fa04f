using Finwright.Geometry;
using Finwright.Geometry.Solids;
using Finwright.Making.Layers;

namespace Finwright.Making.Tests.Layers;

/// <summary>Simple solids, whose volumes are known, cut into layers.</summary>
internal static class TestParts
{
    /// <summary>One kernel for all tests: its calls wait for one another.</summary>
    public static ManifoldKernel Kernel { get; } = new();

    public static PrintSettings Settings { get; } = new()
    {
        LayerHeight = 0.2e-3,
        LineWidth = 0.45e-3,
        Walls = 3,
        SolidLayers = 5,
        InfillShare = 0.15,
        PlasticDensity = 1270,
    };

    public static TriangleMesh Build(SolidExpression solid) => Kernel.Evaluate([solid])[0].Mesh;

    public static PartLayers Slice(TriangleMesh mesh, Placement? toBed = null, PrintSettings? settings = null) =>
        LayerSlicer.Slice("part", mesh, toBed ?? Placement.Identity, settings ?? Settings, Kernel, TestContext.Current.CancellationToken);

    public static PartLayers Slice(SolidExpression solid, Placement? toBed = null, PrintSettings? settings = null) => Slice(Build(solid), toBed, settings);

    public static SolidExpression Box(double x, double y, double z) => new PrismSolid([Rings.Rectangle(x, y)], z);

    /// <summary>A solid of revolution about z.</summary>
    /// <param name="radius">Radius over height; 0 at an end makes a point.</param>
    /// <param name="heights">Heights of the rings, rising, metres.</param>
    /// <param name="around">Corners of each ring; the polygon has the circle's area.</param>
    public static TriangleMesh Revolved(Func<double, double> radius, IReadOnlyList<double> heights, int around)
    {
        double fair = Math.Sqrt(2 * Math.PI / (around * Math.Sin(2 * Math.PI / around)));
        List<double> points = [];
        List<int> corners = [], last = [];
        foreach (double z in heights)
        {
            double r = radius(z) * fair;
            List<int> ring = [];
            for (int i = 0; i < (r > 0 ? around : 1); i++)
            {
                ring.Add(points.Count / 3);
                points.AddRange([r * Math.Cos(2 * Math.PI * i / around), r * Math.Sin(2 * Math.PI * i / around), z]);
            }

            for (int i = 0; i < around && last.Count > 0; i++)
            {
                int a = last[i % last.Count], b = last[(i + 1) % last.Count], c = ring[i % ring.Count], d = ring[(i + 1) % ring.Count];
                if (a != b)
                    corners.AddRange([a, b, d]);
                if (c != d)
                    corners.AddRange([a, d, c]);
            }

            if (last.Count == 0)
                Cap(ring, up: false);
            last = ring;
        }

        Cap(last, up: true);
        return new([.. points], [.. corners]);

        void Cap(List<int> ring, bool up)
        {
            for (int i = 1; i + 1 < ring.Count; i++)
                corners.AddRange(up ? [ring[0], ring[i], ring[i + 1]] : [ring[0], ring[i + 1], ring[i]]);
        }
    }

    public static TriangleMesh Sphere(double radius, int around = 180)
    {
        double[] heights = [.. Enumerable.Range(0, around / 2 + 1).Select(i => -radius * Math.Cos(2 * Math.PI * i / around))];
        return Revolved(z => Math.Abs(z) >= radius * (1 - 1e-12) ? 0 : Math.Sqrt(radius * radius - z * z), heights, around);
    }
}
