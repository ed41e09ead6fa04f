using Finwright.Geometry;

namespace Finwright.Making.Voxels;

/// <summary>
/// A part on a grid of equal cells, each with the exact share that part and core take in it. Layer axes, metres. Arrays run with x fastest,
/// then y, then z.
/// </summary>
/// <remarks>
/// Faces carry the share of them that lies inside the part, so that what flows through a cell's faces and through the part's own surface in it
/// balances: the vector area of the surface in a cell is the difference of its open faces (divergence theorem).
/// </remarks>
public sealed class PartVoxels
{
    /// <summary>Makes an empty grid.</summary>
    /// <param name="origin">Corner of the first cell, metres.</param>
    /// <param name="cell">Edge lengths of a cell, metres.</param>
    /// <param name="countX">Cells along x.</param>
    /// <param name="countY">Cells along y.</param>
    /// <param name="countZ">Cells along z.</param>
    public PartVoxels(Point3 origin, Point3 cell, int countX, int countY, int countZ)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(countX);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(countY);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(countZ);
        (Origin, Cell, CountX, CountY, CountZ) = (origin, cell, countX, countY, countZ);
        Part = new double[Count];
        Core = new double[Count];
        CooledArea = new double[Count];
        FacesX = new double[(countX + 1) * countY * countZ];
        FacesY = new double[countX * (countY + 1) * countZ];
        FacesZ = new double[countX * countY * (countZ + 1)];
    }

    /// <summary>Corner of the first cell, metres.</summary>
    public Point3 Origin { get; }

    /// <summary>Edge lengths of a cell, metres.</summary>
    public Point3 Cell { get; }

    /// <summary>Cells along x.</summary>
    public int CountX { get; }

    /// <summary>Cells along y.</summary>
    public int CountY { get; }

    /// <summary>Cells along z.</summary>
    public int CountZ { get; }

    /// <summary>All cells.</summary>
    public int Count => CountX * CountY * CountZ;

    /// <summary>Volume of a cell, m³.</summary>
    public double CellVolume => Cell.X * Cell.Y * Cell.Z;

    /// <summary>Share of each cell inside the part, 0 to 1.</summary>
    public double[] Part { get; }

    /// <summary>Share of each cell inside walls and solid layers, gyroid and pores together; never above <see cref="Part"/>.</summary>
    public double[] Core { get; }

    /// <summary>Area of the part's surface in each cell that air or water reaches, m². Narrow bores, pockets and slots do not count.</summary>
    public double[] CooledArea { get; }

    /// <summary>Share of each face across x inside the part; face (i, j, k) lies before cell i; index i + (CountX + 1)(j + CountY k).</summary>
    public double[] FacesX { get; }

    /// <summary>Share of each face across y inside the part; index i + CountX (j + (CountY + 1) k).</summary>
    public double[] FacesY { get; }

    /// <summary>Share of each face across z inside the part; index i + CountX (j + CountY k).</summary>
    public double[] FacesZ { get; }

    /// <summary>Number of a cell in the arrays.</summary>
    public int Index(int i, int j, int k) => i + CountX * (j + CountY * k);

    /// <summary>Middle of a cell, metres.</summary>
    public Point3 Centre(int i, int j, int k) => new(Origin.X + (i + 0.5) * Cell.X, Origin.Y + (j + 0.5) * Cell.Y, Origin.Z + (k + 0.5) * Cell.Z);

    /// <summary>Volume of the part on the grid, m³.</summary>
    public double PartVolume => CellVolume * Part.Sum();

    /// <summary>Volume of the core on the grid, m³.</summary>
    public double CoreVolume => CellVolume * Core.Sum();
}
