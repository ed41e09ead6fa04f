namespace Finwright.Geometry.Files;

/// <summary>
/// A mesh as files for printing carry it: millimetres in single precision, vertices shared. Rounding can bring two
/// vertices together; they are joined, and the triangles that thereby lost their area are left out.
/// </summary>
/// <param name="Vertices">x, y, z of each vertex, millimetres.</param>
/// <param name="Triangles">Three vertex numbers a triangle, all different.</param>
internal sealed record RoundedMesh(float[] Vertices, int[] Triangles)
{
    private const double MillimetresPerMetre = 1000;
    private const double MetresPerMillimetre = 1e-3;

    /// <summary>Rounds a mesh.</summary>
    /// <param name="mesh">Metres.</param>
    /// <exception cref="ArgumentException">A coordinate is too large for single precision, or no triangle is left.</exception>
    public static RoundedMesh From(TriangleMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        VertexWelder welder = new(mesh.VertexCount);
        int[] joined = new int[mesh.VertexCount];
        for (int i = 0; i < joined.Length; i++)
        {
            Point3 p = MillimetresPerMetre * mesh.Vertex(i);
            joined[i] = welder.Add((float)p.X, (float)p.Y, (float)p.Z);
        }

        List<int> triangles = new(mesh.Corners.Length);
        for (int i = 0; i < mesh.Corners.Length; i += 3)
        {
            int a = joined[mesh.Corners[i]], b = joined[mesh.Corners[i + 1]], c = joined[mesh.Corners[i + 2]];
            if (a != b && b != c && c != a)
                triangles.AddRange([a, b, c]);
        }

        CancelOpposites(triangles);
        if (triangles.Count == 0)
            throw new ArgumentException("The mesh has no triangle that single precision can tell from a point.", nameof(mesh));
        RoundedMesh rounded = new RoundedMesh(welder.Vertices, [.. triangles]).WithoutLooseVertices();
        foreach (float value in rounded.Vertices)
            if (!float.IsFinite(value))
                throw new ArgumentException("A coordinate is too large for a file in single precision.", nameof(mesh));
        return rounded;
    }

    /// <summary>A sliver that rounding folded flat leaves two triangles back to back; they enclose nothing and would give one edge four faces.</summary>
    private static void CancelOpposites(List<int> triangles)
    {
        Dictionary<(int, int, int), int> standing = new(triangles.Count / 3);
        HashSet<int> cancelled = [];
        for (int i = 0; i < triangles.Count; i += 3)
        {
            int a = triangles[i], b = triangles[i + 1], c = triangles[i + 2];
            if (standing.Remove(SmallestFirst(a, c, b), out int opposite))
            {
                cancelled.Add(opposite);
                cancelled.Add(i);
            }
            else
            {
                standing[SmallestFirst(a, b, c)] = i;
            }
        }

        if (cancelled.Count == 0)
            return;
        int kept = 0;
        for (int i = 0; i < triangles.Count; i += 3)
        {
            if (cancelled.Contains(i))
                continue;
            (triangles[kept], triangles[kept + 1], triangles[kept + 2]) = (triangles[i], triangles[i + 1], triangles[i + 2]);
            kept += 3;
        }

        triangles.RemoveRange(kept, triangles.Count - kept);
    }

    /// <summary>Turns a triangle, keeping its sense, so that equal ones compare equal.</summary>
    private static (int, int, int) SmallestFirst(int a, int b, int c) =>
        a < b && a < c ? (a, b, c) : b < c ? (b, c, a) : (c, a, b);

    private RoundedMesh WithoutLooseVertices()
    {
        int[] number = new int[Vertices.Length / 3];
        foreach (int index in Triangles)
            number[index] = 1;
        int used = 0;
        float[] vertices = new float[Vertices.Length];
        for (int i = 0; i < number.Length; i++)
        {
            if (number[i] == 0)
                continue;
            Vertices.AsSpan(3 * i, 3).CopyTo(vertices.AsSpan(3 * used));
            number[i] = used++;
        }

        return new(vertices[..(3 * used)], [.. Triangles.Select(index => number[index])]);
    }

    /// <summary>The mesh in metres, as a reader of the file would get it.</summary>
    public TriangleMesh ToMetres() => new([.. Vertices.Select(v => v * MetresPerMillimetre)], Triangles);
}
