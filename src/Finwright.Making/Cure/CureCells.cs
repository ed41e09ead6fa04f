namespace Finwright.Making.Cure;

/// <summary>The body that cures as the solver sees it: cells that hold heat and resin, links between neighbours, surfaces.</summary>
/// <remarks>
/// Each cell links to at most three neighbours of a lower number, one a direction (<see cref="Below"/>, three a cell, the count itself for none), and these to it. No two cells that
/// link to the same cell link to one another, as on a grid: the solver's preconditioner relies on it.
/// </remarks>
internal sealed class CureCells
{
    public CureCells(int count, int surfaces)
    {
        Count = count;
        Capacity = new double[count];
        ResinMass = new double[count];
        Below = new int[3 * count];
        Array.Fill(Below, count);
        Links = new double[3 * count];
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

    /// <summary>Neighbours of lower number.</summary>
    public int[] Below { get; }

    /// <summary>Conductance to each of them, W/K; 0 for none.</summary>
    public double[] Links { get; }

    /// <summary>Cell of each surface.</summary>
    public int[] SurfaceCell { get; }

    /// <summary>Area of each surface, m².</summary>
    public double[] SurfaceArea { get; }

    /// <summary>Conductance from the cell's middle to its surface, W/K.</summary>
    public double[] SurfaceConductance { get; }

    /// <summary>Which film lies on each surface.</summary>
    public int[] SurfaceFilm { get; }
}
