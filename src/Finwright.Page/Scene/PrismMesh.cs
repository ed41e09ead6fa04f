using Finwright.Geometry;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Features;
using Finwright.Geometry.Solids;

namespace Finwright.Page.Scene;

/// <summary>Meshes of simple bodies for looking at: bores, pockets, the base before boring.</summary>
internal static class PrismMesh
{
    /// <summary>The room of a feature; null for one that is no plain prism.</summary>
    public static TriangleMesh? Of(FeatureVolume volume) =>
        volume.Tool() is PlacedSolid { Solid: PrismSolid { Rings: [{ } ring] } prism, Placement: var placement }
            ? Between([.. ring.Select(p => placement.Apply(new(p.X, p.Y, 0)))], [.. ring.Select(p => placement.Apply(new(p.X, p.Y, prism.Height)))])
            : null;

    /// <summary>The base before anything is bored into it.</summary>
    public static TriangleMesh Of(BasePlan plan)
    {
        IReadOnlyList<Point2> ring = plan.Ring();
        return Between([.. ring.Select(p => new Point3(p.X, p.Y, -plan.Width(p.Y) / 2))], [.. ring.Select(p => new Point3(p.X, p.Y, plan.Width(p.Y) / 2))]);
    }

    /// <summary>The body between two convex rings of as many points; the first is seen clockwise from outside.</summary>
    public static TriangleMesh Between(IReadOnlyList<Point3> low, IReadOnlyList<Point3> high)
    {
        int n = low.Count;
        double[] points = new double[3 * (2 * n + 2)];
        Point3 lowMiddle = default, highMiddle = default;
        for (int i = 0; i < n; i++)
        {
            Put(points, i, low[i]);
            Put(points, n + i, high[i]);
            (lowMiddle, highMiddle) = (lowMiddle + 1.0 / n * low[i], highMiddle + 1.0 / n * high[i]);
        }

        Put(points, 2 * n, lowMiddle);
        Put(points, 2 * n + 1, highMiddle);
        List<int> corners = [];
        for (int i = 0; i < n; i++)
        {
            int next = (i + 1) % n;
            corners.AddRange([i, next, n + next, i, n + next, n + i, 2 * n, next, i, 2 * n + 1, n + i, n + next]);
        }

        return new(points, [.. corners]);
    }

    private static void Put(double[] points, int at, Point3 p) => (points[3 * at], points[3 * at + 1], points[3 * at + 2]) = (p.X, p.Y, p.Z);
}
