using Finwright.Making.Voxels;

namespace Finwright.Making.Cure;

/// <summary>A grid of half as many cells each way that holds the same part.</summary>
internal static class VoxelMerge
{
    /// <summary>Joins two by two by two cells. Volumes, areas and open faces are kept exactly.</summary>
    public static PartVoxels Halve(PartVoxels fine)
    {
        int nx = (fine.CountX + 1) / 2, ny = (fine.CountY + 1) / 2, nz = (fine.CountZ + 1) / 2;
        PartVoxels coarse = new(fine.Origin, 2 * fine.Cell, nx, ny, nz);
        for (int k = 0; k < fine.CountZ; k++)
        {
            for (int j = 0; j < fine.CountY; j++)
            {
                for (int i = 0; i < fine.CountX; i++)
                {
                    int from = fine.Index(i, j, k), to = coarse.Index(i / 2, j / 2, k / 2);
                    coarse.Part[to] += fine.Part[from] / 8;
                    coarse.Core[to] += fine.Core[from] / 8;
                    coarse.CooledArea[to] += fine.CooledArea[from];
                }
            }
        }

        for (int k = 0; k < fine.CountZ; k++)
        {
            for (int j = 0; j < fine.CountY; j++)
            {
                for (int i = 0; i <= fine.CountX; i += 2)
                    coarse.FacesX[i / 2 + (nx + 1) * (j / 2 + ny * (k / 2))] += fine.FacesX[i + (fine.CountX + 1) * (j + fine.CountY * k)] / 4;
            }
        }

        for (int k = 0; k < fine.CountZ; k++)
        {
            for (int j = 0; j <= fine.CountY; j += 2)
            {
                for (int i = 0; i < fine.CountX; i++)
                    coarse.FacesY[i / 2 + nx * (j / 2 + (ny + 1) * (k / 2))] += fine.FacesY[i + fine.CountX * (j + (fine.CountY + 1) * k)] / 4;
            }
        }

        for (int k = 0; k <= fine.CountZ; k += 2)
        {
            for (int j = 0; j < fine.CountY; j++)
            {
                for (int i = 0; i < fine.CountX; i++)
                    coarse.FacesZ[i / 2 + nx * (j / 2 + ny * (k / 2))] += fine.FacesZ[i + fine.CountX * (j + fine.CountY * k)] / 4;
            }
        }

        return coarse;
    }
}
