using Finwright.Making.Voxels;
using Finwright.Numerics;

namespace Finwright.Making.Pores;

/// <summary>Core that is too thin for the gyroid's labyrinths to hang together in it.</summary>
/// <param name="Volume">Volume of such core, gyroid and pores together, m³.</param>
/// <param name="Share">Its share of all core, 0 to 1.</param>
/// <param name="Thickness">Core thinner than this is meant, metres.</param>
/// <param name="Resolution">Thickness is told apart to this, metres: the longest edge of a cell.</param>
public sealed record ThinCoreResult(double Volume, double Share, double Thickness, double Resolution);

/// <summary>
/// Finds core thinner than about half the gyroid's cell edge: there both labyrinths break into pockets that meet no port. Whether they fill is not
/// known; keep such an edge solid, or accept it.
/// </summary>
public static class ThinCore
{
    /// <summary>Share of the cell edge below which core is thin: a plate of half the edge still holds whole bends of both labyrinths, thinner ones do not everywhere (judgement).</summary>
    public const double UsualShare = 0.5;

    /// <summary>Measures.</summary>
    /// <param name="part">The part on its grid.</param>
    /// <param name="cellEdge">Edge of the gyroid's cubic cell, metres.</param>
    /// <param name="share">Share of the cell edge below which core is thin.</param>
    /// <remarks>
    /// Core is thick where a ball as wide as the limit, wholly inside, covers it; sharp edges of thick core count as thin. Balls are placed at the middles
    /// of cells, so the thickness of a slab is told to about half a cell.
    /// </remarks>
    public static ThinCoreResult Measure(PartVoxels part, double cellEdge, double share = UsualShare)
    {
        ArgumentNullException.ThrowIfNull(part);
        double thickness = Require.Positive(cellEdge) * Require.Between(share, 0.05, 2), radius = thickness / 2;
        int countX = part.CountX + 2, countY = part.CountY + 2, countZ = part.CountZ + 2;
        double half = Math.Min(part.Cell.X, Math.Min(part.Cell.Y, part.Cell.Z)) / 2;
        bool[] marked = new bool[countX * countY * countZ];
        Array.Fill(marked, true);
        int Padded(int i, int j, int k) => i + 1 + countX * (j + 1 + countY * (k + 1));
        for (int k = 0; k < part.CountZ; k++)
            for (int j = 0; j < part.CountY; j++)
                for (int i = 0; i < part.CountX; i++)
                    marked[Padded(i, j, k)] = part.Core[part.Index(i, j, k)] < 0.5;
        double[] squared = SquaredDistances.Of(marked, countX, countY, countZ, part.Cell.X, part.Cell.Y, part.Cell.Z);
        // From the middle of the nearest cell outside to the border between is half a cell; the middle of a slab lies in a cell's middle or, as often, half a
        // cell beside it, for which a quarter is allowed.
        for (int i = 0; i < marked.Length; i++)
            marked[i] = Math.Sqrt(squared[i]) - half >= radius - half / 2;
        squared = SquaredDistances.Of(marked, countX, countY, countZ, part.Cell.X, part.Cell.Y, part.Cell.Z);
        double thin = 0, all = 0;
        for (int k = 0; k < part.CountZ; k++)
            for (int j = 0; j < part.CountY; j++)
                for (int i = 0; i < part.CountX; i++)
                {
                    double core = part.Core[part.Index(i, j, k)];
                    all += core;
                    // A cell that the ball reaches is covered.
                    if (!(Math.Sqrt(squared[Padded(i, j, k)]) <= radius + half))
                        thin += core;
                }

        return new(thin * part.CellVolume, all > 0 ? thin / all : 0, thickness, Math.Max(part.Cell.X, Math.Max(part.Cell.Y, part.Cell.Z)));
    }
}
