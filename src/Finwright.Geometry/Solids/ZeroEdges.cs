namespace Finwright.Geometry.Solids;

/// <summary>
/// Takes out edges whose two ends lie in the same place, together with the two triangles beside each. Such edges appear
/// when vertices that the kernel holds apart in double precision come out equal in single precision.
/// </summary>
/// <remarks>
/// An edge is collapsed only where that keeps the surface a closed surface: its ends may have no common neighbour
/// other than the two opposite corners, and no triangle may fold onto another (the link condition; Dey, Edelsbrunner,
/// Guha and Nekhayev 1999, "Topology preserving edge contraction"). Ends that touch without an edge between them stay
/// two vertices: joining them would give an edge four faces.
/// </remarks>
internal static class ZeroEdges
{
    /// <summary>Corners without edges of no length.</summary>
    /// <param name="coordinates">x, y, z of each vertex.</param>
    /// <param name="corners">Closed and oriented; not changed.</param>
    public static int[] Collapse(ReadOnlySpan<float> coordinates, int[] corners)
    {
        Queue<(int Keep, int Drop)> pending = [];
        for (int i = 0; i < corners.Length; i++)
        {
            int from = corners[i], to = corners[i % 3 == 2 ? i - 2 : i + 1];
            // Each edge is met from both sides; one is enough.
            if (from < to && Coincide(coordinates, from, to))
                pending.Enqueue((from, to));
        }

        if (pending.Count == 0)
            return corners;

        int[] working = [.. corners];
        List<int>[] around = TrianglesByVertex(working, coordinates.Length / 3);
        while (pending.TryDequeue(out (int Keep, int Drop) edge))
        {
            if (!TryCollapse(working, around, edge.Keep, edge.Drop))
                continue;
            foreach (int neighbour in Neighbours(working, around, edge.Keep))
                if (Coincide(coordinates, edge.Keep, neighbour))
                    pending.Enqueue((edge.Keep, neighbour));
        }

        List<int> left = new(working.Length);
        for (int i = 0; i < working.Length; i += 3)
            if (working[i] != Gone)
                left.AddRange(working.AsSpan(i, 3));
        return [.. left];
    }

    /// <summary>Marks the first corner of a triangle that was taken out.</summary>
    private const int Gone = -1;

    private static bool TryCollapse(int[] corners, List<int>[] around, int keep, int drop)
    {
        List<int> shared = around[drop].FindAll(t => corners.AsSpan(t, 3).Contains(keep));
        if (shared.Count != 2)
            return false;
        SortedSet<int> common = Neighbours(corners, around, keep);
        common.IntersectWith(Neighbours(corners, around, drop));
        if (common.Count != 2)
            return false;
        // On a tetrahedron both opposite corners also share a triangle with either end; it would fold flat.
        if (around[drop].Exists(t => !shared.Contains(t) && corners.AsSpan(t, 3).Contains(common.Min) && corners.AsSpan(t, 3).Contains(common.Max)))
            return false;

        foreach (int triangle in shared)
        {
            foreach (int corner in corners.AsSpan(triangle, 3))
                around[corner].Remove(triangle);
            corners[triangle] = Gone;
        }

        foreach (int triangle in around[drop])
        {
            corners.AsSpan(triangle, 3).Replace(drop, keep);
            around[keep].Add(triangle);
        }

        around[drop].Clear();
        return true;
    }

    private static SortedSet<int> Neighbours(int[] corners, List<int>[] around, int vertex)
    {
        SortedSet<int> neighbours = [];
        foreach (int triangle in around[vertex])
            foreach (int corner in corners.AsSpan(triangle, 3))
                if (corner != vertex)
                    neighbours.Add(corner);
        return neighbours;
    }

    /// <summary>For each vertex the first corner index of every triangle that uses it.</summary>
    private static List<int>[] TrianglesByVertex(int[] corners, int vertexCount)
    {
        List<int>[] around = new List<int>[vertexCount];
        for (int v = 0; v < vertexCount; v++)
            around[v] = [];
        for (int i = 0; i < corners.Length; i++)
            around[corners[i]].Add(i - i % 3);
        return around;
    }

    private static bool Coincide(ReadOnlySpan<float> coordinates, int a, int b) =>
        coordinates.Slice(3 * a, 3).SequenceEqual(coordinates.Slice(3 * b, 3));
}
