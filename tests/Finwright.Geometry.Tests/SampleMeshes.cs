namespace Finwright.Geometry.Tests;

/// <summary>Closed meshes whose volume is known.</summary>
internal static class SampleMeshes
{
    /// <summary>A box from the origin.</summary>
    public static TriangleMesh Box(double x, double y, double z) => new(
        [0, 0, 0, x, 0, 0, x, y, 0, 0, y, 0, 0, 0, z, x, 0, z, x, y, z, 0, y, z],
        [0, 2, 1, 0, 3, 2, 4, 5, 6, 4, 6, 7, 0, 1, 5, 0, 5, 4, 1, 2, 6, 1, 6, 5, 2, 3, 7, 2, 7, 6, 3, 0, 4, 3, 4, 7]);

    /// <summary>A ball about a centre, as rings of points between two poles.</summary>
    public static TriangleMesh Ball(double radius, Point3 centre, int rings = 24)
    {
        int around = 2 * rings;
        List<double> vertices = [centre.X, centre.Y, centre.Z - radius];
        for (int i = 1; i < rings; i++)
            for (int j = 0; j < around; j++)
            {
                double polar = Math.PI * i / rings, turn = 2 * Math.PI * j / around;
                vertices.AddRange([centre.X + radius * Math.Sin(polar) * Math.Cos(turn), centre.Y + radius * Math.Sin(polar) * Math.Sin(turn), centre.Z - radius * Math.Cos(polar)]);
            }

        vertices.AddRange([centre.X, centre.Y, centre.Z + radius]);
        int top = 1 + (rings - 1) * around;
        List<int> triangles = [];
        int At(int ring, int j) => 1 + (ring - 1) * around + j % around;
        for (int j = 0; j < around; j++)
        {
            triangles.AddRange([0, At(1, j + 1), At(1, j), top, At(rings - 1, j), At(rings - 1, j + 1)]);
            for (int i = 1; i < rings - 1; i++)
                triangles.AddRange([At(i, j), At(i, j + 1), At(i + 1, j + 1), At(i, j), At(i + 1, j + 1), At(i + 1, j)]);
        }

        return new([.. vertices], [.. triangles]);
    }
}
