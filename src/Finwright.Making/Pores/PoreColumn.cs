using Finwright.Geometry;
using Finwright.Making.Layers;
using Finwright.Making.Voxels;
using Finwright.Numerics;

namespace Finwright.Making.Pores;

/// <summary>The core of a part as a column of slabs, from its lowest point up in the attitude in which it is poured.</summary>
/// <param name="SlabHeight">Height of each slab, metres.</param>
/// <param name="CoreArea">Level area of the core in each slab, gyroid and pores together, m²; from the bottom up; all above zero.</param>
public sealed record PoreColumn(double SlabHeight, IReadOnlyList<double> CoreArea)
{
    /// <summary>Height of the column, metres.</summary>
    public double Height => SlabHeight * CoreArea.Count;

    /// <summary>Volume of the core, m³.</summary>
    public double Volume => SlabHeight * CoreArea.Sum();

    /// <summary>A column of the same area throughout.</summary>
    /// <param name="height">Height, metres.</param>
    /// <param name="coreArea">Area, m².</param>
    /// <param name="slabs">Slabs.</param>
    public static PoreColumn Straight(double height, double coreArea, int slabs = 200)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(slabs);
        return new(Require.Positive(height) / slabs, [.. Enumerable.Repeat(Require.Positive(coreArea), slabs)]);
    }

    /// <summary>The column of a part that is poured as it was printed: bed down.</summary>
    /// <param name="part">The part.</param>
    /// <param name="slabs">Slabs.</param>
    /// <returns>The column; null when the part has no core.</returns>
    public static PoreColumn? Of(PartLayers part, int slabs = 100)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(slabs);
        List<(double Low, double High, double Volume)> pieces = [];
        foreach (Layer layer in part.Layers)
            if (layer.CoreArea > 0)
                pieces.Add((layer.Bottom, layer.Top, layer.CoreArea * layer.Height));
        return Stack(pieces, slabs);
    }

    /// <summary>The column of a part in an attitude.</summary>
    /// <param name="part">The part on its grid.</param>
    /// <param name="up">Upward direction in layer axes; need not be of unit length.</param>
    /// <param name="slabs">Slabs.</param>
    /// <returns>The column; null when the part has no core.</returns>
    /// <remarks>Each cell's core is spread evenly over the cell's height, so slabs thinner than that gain nothing.</remarks>
    public static PoreColumn? Of(PartVoxels part, Point3 up, int slabs = 100)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(slabs);
        Point3 unit = 1 / Require.Positive(up.Length) * up;
        double half = (Math.Abs(unit.X) * part.Cell.X + Math.Abs(unit.Y) * part.Cell.Y + Math.Abs(unit.Z) * part.Cell.Z) / 2;
        List<(double Low, double High, double Volume)> pieces = [];
        for (int k = 0; k < part.CountZ; k++)
            for (int j = 0; j < part.CountY; j++)
                for (int i = 0; i < part.CountX; i++)
                {
                    double share = part.Core[part.Index(i, j, k)];
                    double middle = part.Centre(i, j, k).Dot(unit);
                    if (share > 0)
                        pieces.Add((middle - half, middle + half, share * part.CellVolume));
                }

        return Stack(pieces, slabs);
    }

    private static PoreColumn? Stack(List<(double Low, double High, double Volume)> pieces, int slabs)
    {
        if (pieces.Count == 0)
            return null;
        double bottom = pieces.Min(piece => piece.Low), top = pieces.Max(piece => piece.High), step = (top - bottom) / slabs;
        double[] volume = new double[slabs];
        foreach ((double low, double high, double share) in pieces)
        {
            int first = Math.Clamp((int)((low - bottom) / step), 0, slabs - 1), last = Math.Clamp((int)((high - bottom) / step), 0, slabs - 1);
            for (int slab = first; slab <= last; slab++)
            {
                double overlap = Math.Min(high, bottom + (slab + 1) * step) - Math.Max(low, bottom + slab * step);
                if (overlap > 0)
                    volume[slab] += share * overlap / (high - low);
            }
        }

        // A gap between two cores that lie one above the other passes no resin of its own; a thousandth of the mean area keeps it finite, and slow.
        double least = 1e-3 * volume.Sum() / slabs;
        return new(step, [.. volume.Select(v => Math.Max(v, least) / step)]);
    }
}
