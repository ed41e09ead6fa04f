using Finwright.Geometry;

namespace Finwright.Papers.Views;

/// <summary>Cuts of a closed mesh.</summary>
internal static class MeshSlice
{
    /// <summary>The rings in which a plane of one depth meets a mesh: x aft, y to starboard, metres.</summary>
    /// <param name="mesh">Closed mesh, design axes.</param>
    /// <param name="depth">Depth, metres; not that of any corner.</param>
    public static IReadOnlyList<IReadOnlyList<Point2>> Rings(TriangleMesh mesh, double depth)
    {
        // Every triangle that is met leads from one of its edges to another; neighbours share edges.
        Dictionary<(int, int), (int, int)> next = [];
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int t = 0; t < mesh.TriangleCount; t++)
        {
            (int, int)? down = null, up = null;
            for (int k = 0; k < 3; k++)
            {
                int a = corners[3 * t + k], b = corners[3 * t + (k + 1) % 3];
                bool fromBelow = mesh.Vertex(a).Y > depth, toBelow = mesh.Vertex(b).Y > depth;
                if (fromBelow && !toBelow)
                    up = Key(a, b);
                else if (!fromBelow && toBelow)
                    down = Key(a, b);
            }

            if (down is { } from && up is { } to)
                next[from] = to;
        }

        List<IReadOnlyList<Point2>> rings = [];
        while (next.Count > 0)
        {
            (int, int) edge = next.Keys.Min();
            List<Point2> ring = [];
            while (next.Remove(edge, out (int, int) following))
            {
                ring.Add(Crossing(edge));
                edge = following;
            }

            rings.Add(ring);
        }

        return rings;

        static (int, int) Key(int a, int b) => (Math.Min(a, b), Math.Max(a, b));

        Point2 Crossing((int A, int B) edge)
        {
            Point3 a = mesh.Vertex(edge.A), b = mesh.Vertex(edge.B);
            Point3 p = a + (depth - a.Y) / (b.Y - a.Y) * (b - a);
            return new(p.X, p.Z);
        }
    }

    /// <summary>How far a mesh reaches to port and to starboard at depths.</summary>
    /// <param name="mesh">Closed mesh, design axes.</param>
    /// <param name="depths">Depths, metres, rising; none that of a corner.</param>
    /// <returns>Least and greatest z at each depth, metres.</returns>
    public static IReadOnlyList<(double Port, double Starboard)> Reach(TriangleMesh mesh, double[] depths)
    {
        (double Port, double Starboard)[] reach = new (double, double)[depths.Length];
        Array.Fill(reach, (double.PositiveInfinity, double.NegativeInfinity));
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i++)
        {
            Point3 a = mesh.Vertex(corners[i]), b = mesh.Vertex(corners[i % 3 == 2 ? i - 2 : i + 1]);
            if (a.Y >= b.Y)
                continue;
            int first = Array.BinarySearch(depths, a.Y);
            for (int k = first < 0 ? ~first : first; k < depths.Length && depths[k] < b.Y; k++)
            {
                double z = a.Z + (depths[k] - a.Y) / (b.Y - a.Y) * (b.Z - a.Z);
                reach[k] = (Math.Min(reach[k].Port, z), Math.Max(reach[k].Starboard, z));
            }
        }

        return reach;
    }
}
