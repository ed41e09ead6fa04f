using Finwright.Geometry;

namespace Finwright.Making.Voxels;

/// <summary>Tells the surface that air or water flows past from that of narrow bores, pockets and slots, where it stands still or resin sits.</summary>
/// <remarks>
/// The outside is opened with a ball: what a ball that comes from far away can sweep is open (morphological opening; J. Serra, "Image Analysis
/// and Mathematical Morphology", 1982, from memory). Exact to about a cell.
/// </remarks>
internal static class OpenSurface
{
    /// <summary>Marks the cells whose surface is reached.</summary>
    /// <param name="voxels">The part with its shares.</param>
    /// <param name="radius">Radius of the ball, metres.</param>
    /// <returns>For each cell of the grid whether a surface in it is reached.</returns>
    public static bool[] Reached(PartVoxels voxels, double radius)
    {
        Point3 cell = voxels.Cell;
        // Room all round for the ball to pass.
        int marginX = Margin(cell.X), marginY = Margin(cell.Y), marginZ = Margin(cell.Z);
        int nx = voxels.CountX + 2 * marginX, ny = voxels.CountY + 2 * marginY, nz = voxels.CountZ + 2 * marginZ;
        bool[] solid = new bool[nx * ny * nz];
        for (int k = 0; k < voxels.CountZ; k++)
            for (int j = 0; j < voxels.CountY; j++)
                for (int i = 0; i < voxels.CountX; i++)
                    solid[i + marginX + nx * (j + marginY + ny * (k + marginZ))] = voxels.Part[voxels.Index(i, j, k)] > 0.5;

        double[] toSolid = SquaredDistances.Of(solid, nx, ny, nz, cell.X, cell.Y, cell.Z);
        bool[] centres = Flood(toSolid, radius * radius, nx, ny, nz);
        double[] toCentre = SquaredDistances.Of(centres, nx, ny, nz, cell.X, cell.Y, cell.Z);
        // Half the smallest cell more: middles of cells do not lie on the ball's path.
        double reach = radius + Math.Min(cell.X, Math.Min(cell.Y, cell.Z)) / 2, squared = reach * reach;

        bool[] reached = new bool[voxels.Count];
        for (int k = 0; k < voxels.CountZ; k++)
            for (int j = 0; j < voxels.CountY; j++)
                for (int i = 0; i < voxels.CountX; i++)
                    reached[voxels.Index(i, j, k)] = NearOpen(i + marginX, j + marginY, k + marginZ);
        return reached;

        int Margin(double size) => (int)Math.Ceiling(radius / size) + 2;

        bool NearOpen(int x, int y, int z)
        {
            for (int dz = -1; dz <= 1; dz++)
            {
                for (int dy = -1; dy <= 1; dy++)
                {
                    for (int dx = -1; dx <= 1; dx++)
                    {
                        int index = x + dx + nx * (y + dy + ny * (z + dz));
                        if (!solid[index] && toCentre[index] <= squared)
                            return true;
                    }
                }
            }

            return false;
        }
    }

    /// <summary>Where the middle of the ball can get to from the corner of the grid, which lies outside all else.</summary>
    private static bool[] Flood(double[] toSolid, double squaredRadius, int nx, int ny, int nz)
    {
        bool[] reached = new bool[toSolid.Length];
        Stack<int> open = new();
        Visit(0);
        while (open.TryPop(out int index))
        {
            int x = index % nx, y = index / nx % ny, z = index / (nx * ny);
            if (x > 0)
                Visit(index - 1);
            if (x + 1 < nx)
                Visit(index + 1);
            if (y > 0)
                Visit(index - nx);
            if (y + 1 < ny)
                Visit(index + nx);
            if (z > 0)
                Visit(index - nx * ny);
            if (z + 1 < nz)
                Visit(index + nx * ny);
        }

        return reached;

        void Visit(int index)
        {
            if (reached[index] || toSolid[index] < squaredRadius)
                return;
            reached[index] = true;
            open.Push(index);
        }
    }
}
