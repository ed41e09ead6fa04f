namespace Finwright.Geometry.Tests;

/// <summary>What a mesh must be to be printed, judged on single-precision millimetres as files carry them.</summary>
internal static class MeshCheck
{
    /// <summary>Null when every directed edge has exactly one opposite, no two vertices share a place and no triangle is empty; else what is wrong.</summary>
    public static string? Fault(TriangleMesh mesh)
    {
        Dictionary<(float, float, float), int> places = [];
        for (int i = 0; i < mesh.VertexCount; i++)
            if (!places.TryAdd(Millimetres(mesh.Vertex(i)), i))
                return $"vertices {places[Millimetres(mesh.Vertex(i))]} and {i} share the place {mesh.Vertex(i)}";
        HashSet<(int, int)> edges = [];
        bool[] used = new bool[mesh.VertexCount];
        for (int t = 0; t < mesh.Corners.Length; t += 3)
            for (int k = 0; k < 3; k++)
            {
                int a = mesh.Corners[t + k], b = mesh.Corners[t + (k + 1) % 3];
                used[a] = true;
                if (a == b || !edges.Add((a, b)))
                    return $"edge {mesh.Vertex(a)} to {mesh.Vertex(b)} is used twice in one direction";
            }

        foreach ((int a, int b) in edges)
            if (!edges.Contains((b, a)))
                return $"edge {mesh.Vertex(a)} to {mesh.Vertex(b)} has no opposite";
        if (Array.IndexOf(used, false) is >= 0 and int idle)
            return $"vertex {idle} belongs to no triangle";
        for (int t = 0; t < mesh.Corners.Length; t += 3)
            if (!(FloatArea(mesh, t) > 0))
                return $"triangle {t / 3} at {mesh.Vertex(mesh.Corners[t])} has no area in single precision";
        return null;
    }

    private static (float X, float Y, float Z) Millimetres(Point3 p) => ((float)(1000 * p.X), (float)(1000 * p.Y), (float)(1000 * p.Z));

    private static double FloatArea(TriangleMesh mesh, int t)
    {
        Point3 At(int k)
        {
            (float x, float y, float z) = Millimetres(mesh.Vertex(mesh.Corners[t + k]));
            return new(x, y, z);
        }

        return (At(1) - At(0)).Cross(At(2) - At(0)).Length / 2;
    }
}
