namespace Finwright.Making.Cure;

/// <summary>The body that cures as the solver sees it: cells that hold heat and resin, links between neighbours, surfaces.</summary>
/// <remarks>
/// Each cell links to at most three neighbours of a lower number, one a direction, and these to it. No two cells that link to the same cell link to one another, as on a grid: the solver's
/// preconditioner relies on it.
/// </remarks>
internal sealed class CureCells
{
    public CureCells(int count, int surfaces)
    {
        Count = count;
        Capacity = new double[count];
        ResinMass = new double[count];
        Links = new CellLinks[count];
        Array.Fill(Links, CellLinks.None(count));
        SurfaceCell = new int[surfaces];
        SurfaceArea = new double[surfaces];
        SurfaceConductance = new double[surfaces];
        SurfaceFilm = new int[surfaces];
    }

    /// <summary>Cells.</summary>
    public int Count { get; }

    /// <summary>Heat capacity, J/K, positive.</summary>
    public double[] Capacity { get; }

    /// <summary>Resin in each cell, kg.</summary>
    public double[] ResinMass { get; }

    /// <summary>Links to neighbours of lower number.</summary>
    public CellLinks[] Links { get; }

    /// <summary>Cell of each surface.</summary>
    public int[] SurfaceCell { get; }

    /// <summary>Area of each surface, m².</summary>
    public double[] SurfaceArea { get; }

    /// <summary>Conductance from the cell's middle to its surface, W/K.</summary>
    public double[] SurfaceConductance { get; }

    /// <summary>Which film lies on each surface.</summary>
    public int[] SurfaceFilm { get; }
}

/// <summary>Links of a cell to its neighbours of lower number, one a direction.</summary>
/// <param name="X">Number of the neighbour; the count of cells for none.</param>
/// <param name="Y">The same along the second direction.</param>
/// <param name="Z">The same along the third.</param>
/// <param name="GX">Conductance to the first, W/K; 0 for none.</param>
/// <param name="GY">Conductance to the second.</param>
/// <param name="GZ">Conductance to the third.</param>
internal readonly record struct CellLinks(int X, int Y, int Z, double GX, double GY, double GZ)
{
    /// <summary>No neighbour at all.</summary>
    /// <param name="count">The count of cells.</param>
    public static CellLinks None(int count) => new(count, count, count, 0, 0, 0);
}
