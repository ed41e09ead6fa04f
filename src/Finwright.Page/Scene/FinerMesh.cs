using Finwright.Geometry;

namespace Finwright.Page.Scene;

/// <summary>A mesh with shorter edges and the same surface: a skin is coarse where it is flat, and a field is not.</summary>
internal static class FinerMesh
{
    // Halvings at most: 64 pieces of an edge are more than any skin needs.
    private const int Rounds = 6;

    /// <summary>Divides edges until none is longer than asked for.</summary>
    /// <param name="mesh">The mesh.</param>
    /// <param name="longest">Longest edge, metres.</param>
    public static TriangleMesh Of(TriangleMesh mesh, double longest)
    {
        List<double> points = [.. mesh.Coordinates];
        List<int> corners = [.. mesh.Corners];
        for (int round = 0; round < Rounds; round++)
        {
            Dictionary<(int, int), int> middles = [];
            List<int> next = new(2 * corners.Count);
            for (int t = 0; t < corners.Count; t += 3)
                Divide(corners[t], corners[t + 1], corners[t + 2]);
            corners = next;
            if (middles.Count == 0)
                break;

            void Divide(int a, int b, int c)
            {
                int ab = Middle(a, b), bc = Middle(b, c), ca = Middle(c, a);
                // Turned so that what is divided comes first: one edge, then two; a neighbour divides the same edges, so no gap opens.
                switch (ab >= 0, bc >= 0, ca >= 0)
                {
                    case (false, false, false):
                        next.AddRange([a, b, c]);
                        break;
                    case (true, true, true):
                        next.AddRange([a, ab, ca, ab, b, bc, ca, bc, c, ab, bc, ca]);
                        break;
                    case (true, false, false):
                        next.AddRange([a, ab, c, ab, b, c]);
                        break;
                    case (true, true, false):
                        next.AddRange([b, bc, ab, a, ab, bc, a, bc, c]);
                        break;
                    default:
                        Divide(b, c, a);
                        break;
                }
            }

            int Middle(int a, int b)
            {
                double x = points[3 * a] - points[3 * b], y = points[3 * a + 1] - points[3 * b + 1], z = points[3 * a + 2] - points[3 * b + 2];
                if (x * x + y * y + z * z <= longest * longest)
                    return -1;
                (int, int) key = (Math.Min(a, b), Math.Max(a, b));
                if (!middles.TryGetValue(key, out int middle))
                {
                    middles[key] = middle = points.Count / 3;
                    points.AddRange([points[3 * a] - x / 2, points[3 * a + 1] - y / 2, points[3 * a + 2] - z / 2]);
                }

                return middle;
            }
        }

        return new([.. points], [.. corners]);
    }
}
