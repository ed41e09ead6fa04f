namespace Finwright.Geometry.Pictures;

/// <summary>Normals at the corners of triangles, smooth over rounded skin and sharp at creases.</summary>
internal static class SmoothNormals
{
    /// <summary>Faces that meet at a sharper angle keep their own normals: well above the facets of a skin, below any drawn edge.</summary>
    private static readonly double CreaseCosine = Math.Cos(Math.PI / 6);

    /// <summary>One normal a corner, in the order of the mesh's corners; unit length, or zero where a triangle has no area.</summary>
    public static Point3[] Of(TriangleMesh mesh)
    {
        ReadOnlySpan<int> corners = mesh.Corners;
        Point3[] weighted = new Point3[mesh.TriangleCount];
        int[] first = new int[mesh.VertexCount + 1];
        for (int i = 0; i < weighted.Length; i++)
        {
            Point3 a = mesh.Vertex(corners[3 * i]);
            // Twice the area long, so that slivers count little.
            weighted[i] = (mesh.Vertex(corners[3 * i + 1]) - a).Cross(mesh.Vertex(corners[3 * i + 2]) - a);
        }

        // Triangles round each vertex, in one array: starts by counting, then filling.
        foreach (int vertex in corners)
            first[vertex + 1]++;
        for (int i = 0; i < mesh.VertexCount; i++)
            first[i + 1] += first[i];
        int[] round = new int[corners.Length], next = first[..^1];
        for (int i = 0; i < corners.Length; i++)
            round[next[corners[i]]++] = i / 3;

        Point3[] normals = new Point3[corners.Length];
        for (int i = 0; i < corners.Length; i++)
        {
            Point3 own = weighted[i / 3], sum = default;
            for (int k = first[corners[i]]; k < first[corners[i] + 1]; k++)
            {
                Point3 other = weighted[round[k]];
                if (own.Dot(other) >= CreaseCosine * own.Length * other.Length)
                    sum += other;
            }

            double length = sum.Length;
            normals[i] = length > 0 ? 1 / length * sum : default;
        }

        return normals;
    }
}
