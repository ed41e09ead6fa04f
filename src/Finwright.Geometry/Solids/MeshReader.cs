namespace Finwright.Geometry.Solids;

/// <summary>Turns the kernel's arrays into a mesh that is closed by its vertex numbers.</summary>
internal static class MeshReader
{
    /// <summary>A mesh in metres, with merged vertices made one, edges without length collapsed, and unused vertices left out.</summary>
    /// <param name="coordinates">x, y, z of each vertex.</param>
    /// <param name="corners">Three vertices a triangle.</param>
    /// <param name="mergeFrom">Vertices that are the same point as …</param>
    /// <param name="mergeTo">… these.</param>
    /// <param name="scale">Metres in a unit of the coordinates.</param>
    public static TriangleMesh Mesh(float[] coordinates, uint[] corners, uint[] mergeFrom, uint[] mergeTo, double scale)
    {
        int count = coordinates.Length / 3;
        int[] same = new int[count];
        for (int v = 0; v < count; v++)
            same[v] = v;
        for (int i = 0; i < mergeFrom.Length; i++)
            same[mergeFrom[i]] = (int)mergeTo[i];

        int[] triangles = Array.ConvertAll(corners, c => same[c]);
        triangles = ZeroEdges.Collapse(coordinates, triangles);

        int[] numbers = new int[count];
        Array.Fill(numbers, -1);
        List<double> vertices = new(coordinates.Length);
        for (int i = 0; i < triangles.Length; i++)
        {
            int vertex = triangles[i];
            if (numbers[vertex] < 0)
            {
                numbers[vertex] = vertices.Count / 3;
                for (int axis = 0; axis < 3; axis++)
                    vertices.Add(coordinates[3 * vertex + axis] * scale);
            }

            triangles[i] = numbers[vertex];
        }

        return new([.. vertices], triangles);
    }
}
