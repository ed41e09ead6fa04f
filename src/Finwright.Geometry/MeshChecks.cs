namespace Finwright.Geometry;

/// <summary>What is wrong at one place of a mesh.</summary>
public enum MeshDefectKind
{
    /// <summary>A triangle names the same vertex twice.</summary>
    RepeatedCorner,

    /// <summary>An edge has a triangle on one side only.</summary>
    OpenEdge,

    /// <summary>Two triangles run along an edge in the same direction: more than two meet there, or one is turned over.</summary>
    EdgeUsedTwice,

    /// <summary>Two vertices share a place in single-precision millimetres.</summary>
    SamePlace,

    /// <summary>A triangle has no area in single-precision millimetres.</summary>
    NoArea,

    /// <summary>A vertex belongs to no triangle.</summary>
    IdleVertex,
}

/// <summary>One defect of a mesh.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="From">First vertex of the edge.</param>
/// <param name="To">Second vertex of the edge.</param>
/// <param name="Message">What and where, with numbers.</param>
public sealed record MeshDefect(MeshDefectKind Kind, int From, int To, string Message);

/// <summary>
/// Tells whether a mesh is a closed, oriented surface: every edge is run along exactly once in each direction. This is
/// what the 3MF Core Specification asks of a solid, and what a volume needs to mean anything.
/// </summary>
/// <remarks>
/// Works on vertex numbers, not positions: two vertices in one place are two. Surfaces that touch in a single vertex
/// pass, and so do surfaces that run through each other; <see cref="Solids.FoldCheck"/> looks for those.
/// </remarks>
public static class MeshChecks
{
    /// <summary>Whether the mesh is closed and oriented, and has at least one triangle.</summary>
    public static bool IsClosed(TriangleMesh mesh) => Defects(mesh, 1).Count == 0 && mesh.TriangleCount > 0;

    /// <summary>The first defects, in the order of their first vertex.</summary>
    /// <param name="mesh">What to look at.</param>
    /// <param name="limit">Greatest number of defects to report.</param>
    /// <returns>Empty when the mesh is closed and oriented, and also for a mesh without triangles.</returns>
    public static IReadOnlyList<MeshDefect> Defects(TriangleMesh mesh, int limit = 10)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(limit);
        List<MeshDefect> defects = [];
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3)
        {
            int a = corners[i], b = corners[i + 1], c = corners[i + 2];
            if (a != b && b != c && c != a)
                continue;
            int twice = a == b || a == c ? a : b;
            defects.Add(new(MeshDefectKind.RepeatedCorner, twice, twice, $"triangle {i / 3} uses vertex {twice} at {Place(mesh, twice)} twice."));
            if (defects.Count == limit)
                return defects;
        }

        (int[] starts, int[] ends) = EdgesByStart(mesh);
        for (int from = 0; from < mesh.VertexCount; from++)
        {
            ReadOnlySpan<int> targets = ends.AsSpan(starts[from]..starts[from + 1]);
            for (int i = 0; i < targets.Length; i++)
            {
                int to = targets[i];
                MeshDefectKind kind;
                if (i > 0 && targets[i - 1] == to)
                    kind = MeshDefectKind.EdgeUsedTwice;
                else if (ends.AsSpan(starts[to]..starts[to + 1]).BinarySearch(from) < 0)
                    kind = MeshDefectKind.OpenEdge;
                else
                    continue;
                string what = kind == MeshDefectKind.OpenEdge ? "has a triangle on one side only" : "is used twice in the same direction";
                defects.Add(new(kind, from, to, $"the edge from vertex {from} at {Place(mesh, from)} to vertex {to} at {Place(mesh, to)} {what}."));
                if (defects.Count == limit)
                    return defects;
            }
        }

        return defects;
    }

    /// <summary>What would go wrong in a file of single-precision millimetres, such as binary STL: the first vertices that merge, empty triangles and idle vertices.</summary>
    /// <param name="mesh">What to look at.</param>
    /// <param name="limit">Greatest number of defects to report.</param>
    /// <returns>Empty when the mesh survives the rounding with all its triangles.</returns>
    public static IReadOnlyList<MeshDefect> SinglePrecisionDefects(TriangleMesh mesh, int limit = 10)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(limit);
        List<MeshDefect> defects = [];
        Dictionary<(float, float, float), int> places = new(mesh.VertexCount);
        bool[] used = new bool[mesh.VertexCount];
        foreach (int corner in mesh.Corners)
            used[corner] = true;
        for (int v = 0; v < mesh.VertexCount && defects.Count < limit; v++)
        {
            if (!used[v])
                defects.Add(new(MeshDefectKind.IdleVertex, v, v, $"vertex {v} at {Place(mesh, v)} belongs to no triangle."));
            else if (!places.TryAdd(Rounded(mesh.Vertex(v)), v))
                defects.Add(new(MeshDefectKind.SamePlace, places[Rounded(mesh.Vertex(v))], v, $"vertices {places[Rounded(mesh.Vertex(v))]} and {v} share the place {Place(mesh, v)}."));
        }

        for (int i = 0; i < mesh.Corners.Length && defects.Count < limit; i += 3)
        {
            Point3 a = Widened(mesh, mesh.Corners[i]), b = Widened(mesh, mesh.Corners[i + 1]), c = Widened(mesh, mesh.Corners[i + 2]);
            if (!((b - a).Cross(c - a).Length > 0))
                defects.Add(new(MeshDefectKind.NoArea, mesh.Corners[i], mesh.Corners[i + 1], $"triangle {i / 3} at {Place(mesh, mesh.Corners[i])} has no area."));
        }

        return defects;
    }

    private static (float X, float Y, float Z) Rounded(Point3 p) => ((float)(1000 * p.X), (float)(1000 * p.Y), (float)(1000 * p.Z));

    private static Point3 Widened(TriangleMesh mesh, int vertex)
    {
        (float x, float y, float z) = Rounded(mesh.Vertex(vertex));
        return new(x, y, z);
    }

    /// <summary>For each vertex the ends of the edges that leave it, ascending; vertex v owns starts[v] to starts[v + 1].</summary>
    private static (int[] Starts, int[] Ends) EdgesByStart(TriangleMesh mesh)
    {
        ReadOnlySpan<int> corners = mesh.Corners;
        int[] starts = new int[mesh.VertexCount + 1];
        foreach (int corner in corners)
            starts[corner + 1]++;
        for (int v = 0; v < mesh.VertexCount; v++)
            starts[v + 1] += starts[v];
        int[] next = starts[..^1];
        int[] ends = new int[corners.Length];
        for (int i = 0; i < corners.Length; i += 3)
        {
            ends[next[corners[i]]++] = corners[i + 1];
            ends[next[corners[i + 1]]++] = corners[i + 2];
            ends[next[corners[i + 2]]++] = corners[i];
        }

        for (int v = 0; v < mesh.VertexCount; v++)
            ends.AsSpan(starts[v]..starts[v + 1]).Sort();
        return (starts, ends);
    }

    private static string Place(TriangleMesh mesh, int vertex)
    {
        Point3 p = mesh.Vertex(vertex);
        return $"({1000 * p.X:0.###}, {1000 * p.Y:0.###}, {1000 * p.Z:0.###}) mm";
    }
}
