using Finwright.Geometry;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Cure;

/// <summary>Boxes on a grid, filled by exact overlaps.</summary>
internal static class CureBoxes
{
    /// <summary>A box with a wall all round, its corner at the origin.</summary>
    /// <param name="size">Outer size, metres.</param>
    /// <param name="wall">Thickness of the walls along each axis, metres.</param>
    /// <param name="cell">Size of a cell, metres.</param>
    /// <param name="shift">Where in its cell the corner lies, in cells, 0 to 1.</param>
    /// <param name="isCooledAllRound">False: only across z.</param>
    public static PartVoxels Box(Point3 size, Point3 wall, Point3 cell, double shift = 0, bool isCooledAllRound = true)
    {
        int nx = Cells(size.X, cell.X, shift), ny = Cells(size.Y, cell.Y, shift), nz = Cells(size.Z, cell.Z, shift);
        PartVoxels voxels = new((-1 - shift) * cell, cell, nx, ny, nz);
        for (int k = 0; k <= nz; k++)
        {
            for (int j = 0; j <= ny; j++)
            {
                for (int i = 0; i <= nx; i++)
                {
                    Point3 low = voxels.Centre(i, j, k) - 0.5 * cell;
                    double x = Overlap(low.X, cell.X, 0, size.X), y = Overlap(low.Y, cell.Y, 0, size.Y), z = Overlap(low.Z, cell.Z, 0, size.Z);
                    if (j < ny && k < nz)
                        voxels.FacesX[i + (nx + 1) * (j + ny * k)] = Inside(low.X, size.X) * y * z;
                    if (i < nx && k < nz)
                        voxels.FacesY[i + nx * (j + (ny + 1) * k)] = Inside(low.Y, size.Y) * x * z;
                    if (i < nx && j < ny)
                        voxels.FacesZ[i + nx * (j + ny * k)] = Inside(low.Z, size.Z) * x * y;
                    if (i == nx || j == ny || k == nz)
                        continue;
                    int n = voxels.Index(i, j, k);
                    voxels.Part[n] = x * y * z;
                    voxels.Core[n] = Overlap(low.X, cell.X, wall.X, size.X - wall.X) * Overlap(low.Y, cell.Y, wall.Y, size.Y - wall.Y) * Overlap(low.Z, cell.Z, wall.Z, size.Z - wall.Z);
                    voxels.CooledArea[n] = Ends(low.Z, cell.Z, size.Z) * x * y * cell.X * cell.Y;
                    if (isCooledAllRound)
                        voxels.CooledArea[n] += Ends(low.X, cell.X, size.X) * y * z * cell.Y * cell.Z + Ends(low.Y, cell.Y, size.Y) * x * z * cell.X * cell.Z;
                }
            }
        }

        return voxels;
    }

    // A hair against rounding, in metres.
    private const double Hair = 1e-9;

    private static int Cells(double size, double cell, double shift) => (int)Math.Ceiling((size - Hair) / cell + shift) + 2;

    private static double Overlap(double low, double cell, double from, double to) => Math.Max(0, Math.Min(low + cell, to) - Math.Max(low, from)) / cell is var share && share > 1e-6 ? share : 0;

    private static double Inside(double plane, double size) => plane > Hair && plane < size - Hair ? 1 : 0;

    /// <summary>How many of the box's two ends lie in a cell that holds some of the box.</summary>
    private static int Ends(double low, double cell, double size) =>
        (low <= Hair && low + cell > Hair ? 1 : 0) + (low < size - Hair && low + cell >= size - Hair ? 1 : 0);
}
