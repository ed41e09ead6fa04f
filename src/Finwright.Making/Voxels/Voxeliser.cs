using Finwright.Geometry;
using Finwright.Making.Layers;
using Finwright.Numerics;

namespace Finwright.Making.Voxels;

/// <summary>Lays a sliced part on a grid: exact shares of cells and faces, and the surface that is cooled.</summary>
/// <remarks>
/// <para>Shares of cells, and of faces across x and y, are exact for the stack of layers. Faces across z are taken between the outlines of the
/// layers below and above them, so that a slope is a slope and no flight of steps.</para>
/// <para>Surface: from one layer's middle to the next, a cell holds a strip whose upright side is its length of outline times the rise, and whose
/// level side is the change of its area inside; both together give its true area, exact for a flat surface. Level faces under the first
/// layer and on the last are added whole.</para>
/// </remarks>
public static class Voxeliser
{
    /// <summary>Radius of the ball that must get to a surface for it to count as cooled, metres: openings up to about 10 mm are shut.</summary>
    public const double BallRadius = 0.005;

    /// <summary>Cells round the part on each side are at least this many.</summary>
    private const int Padding = 1;

    /// <summary>Shares that differ by less are equal but for rounding.</summary>
    private const double Dust = 1e-10;

    /// <summary>More cells than this are refused: a mistyped size would take all memory.</summary>
    private const long MostCells = 40_000_000;

    /// <summary>Lays a part on a grid.</summary>
    /// <param name="layers">The part; at least one layer.</param>
    /// <param name="cell">Edge lengths of a cell, metres.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The grid, with at least one empty cell all round.</returns>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static PartVoxels Of(PartLayers layers, Point3 cell, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(layers);
        Require.Positive(cell.X);
        Require.Positive(cell.Y);
        Require.Positive(cell.Z);
        (long x, long y, long z) = (Cells(layers.Size.X, cell.X), Cells(layers.Size.Y, cell.Y), Cells(layers.Size.Z, cell.Z));
        if (x * y * z > MostCells)
            throw new ArgumentException($"{x} × {y} × {z} cells are more than {MostCells}; make the cells larger.", nameof(cell));
        Point3 origin = new((layers.Size.X - x * cell.X) / 2, (layers.Size.Y - y * cell.Y) / 2, (layers.Size.Z - z * cell.Z) / 2);
        PartVoxels voxels = new(origin, cell, (int)x, (int)y, (int)z);
        new Stacking(voxels, layers.Layers).Run(cancellation);
        Bound(voxels);
        cancellation.ThrowIfCancellationRequested();
        bool[] reached = OpenSurface.Reached(voxels, BallRadius);
        for (int i = 0; i < voxels.Count; i++)
            if (!reached[i])
                voxels.CooledArea[i] = 0;
        return voxels;
    }

    /// <summary>Chooses cells: fine across the part's thinnest direction, where heat takes its way out, coarser along the others.</summary>
    /// <param name="layers">The part.</param>
    /// <param name="finestAcross">Edge of a cell across the thinnest direction, metres; made longer when the cells would be too many or too flat.</param>
    /// <param name="mostCells">Most cells of the whole grid, the empty ones round the part included; at least 1,000.</param>
    public static Point3 CellFor(PartLayers layers, double finestAcross, int mostCells)
    {
        // Flatter cells than this gain nothing: the field along the part is then the coarser one by far.
        const double flattest = 6, growth = 1.02;
        ArgumentNullException.ThrowIfNull(layers);
        Require.Positive(finestAcross);
        ArgumentOutOfRangeException.ThrowIfLessThan(mostCells, 1000);
        Point3 size = layers.Size;
        double thinnest = Math.Min(size.X, Math.Min(size.Y, size.Z));
        double across = finestAcross, along = finestAcross;
        while (Count(Cell()) > mostCells)
        {
            along *= growth;
            across = Math.Max(across, along / flattest);
        }

        return Cell();

        Point3 Cell() =>
            size.Z == thinnest ? new(along, along, across)
            : size.Y == thinnest ? new(along, across, along)
            : new(across, along, along);

        double Count(Point3 cell) => (double)Cells(size.X, cell.X) * Cells(size.Y, cell.Y) * Cells(size.Z, cell.Z);
    }

    /// <summary>
    /// Cells along a side: the part's own and at least one empty one at each end. A part of a whole number of cells gets half a cell more at
    /// each end, so that its faces lie within cells and not in their sides.
    /// </summary>
    private static long Cells(double size, double cell) => (long)Math.Min(Math.Floor(size / cell) + 1 + 2 * Padding, int.MaxValue);

    /// <summary>Takes rounding out of the shares.</summary>
    private static void Bound(PartVoxels voxels)
    {
        foreach (double[] shares in (ReadOnlySpan<double[]>)[voxels.Part, voxels.FacesX, voxels.FacesY, voxels.FacesZ])
            for (int i = 0; i < shares.Length; i++)
                shares[i] = Math.Clamp(shares[i], 0, 1);
        for (int i = 0; i < voxels.Count; i++)
            voxels.Core[i] = Math.Clamp(voxels.Core[i], 0, voxels.Part[i]);
    }

    /// <summary>Goes through the layers from the bed up, keeping the outline below at hand.</summary>
    private sealed class Stacking
    {
        private readonly PartVoxels _voxels;
        private readonly IReadOnlyList<Layer> _layers;
        private readonly PlaneCoverage _core;
        private readonly int _plane;
        private PlaneCoverage _below;
        private PlaneCoverage _here;

        public Stacking(PartVoxels voxels, IReadOnlyList<Layer> layers)
        {
            (_voxels, _layers) = (voxels, layers);
            _plane = voxels.CountX * voxels.CountY;
            _core = Coverage();
            _below = Coverage();
            _here = Coverage();

            PlaneCoverage Coverage() => new(new(voxels.Origin.X, voxels.Origin.Y), voxels.Cell.X, voxels.Cell.Y, voxels.CountX, voxels.CountY);
        }

        public void Run(CancellationToken cancellation)
        {
            for (int i = 0; i < _layers.Count; i++)
            {
                cancellation.ThrowIfCancellationRequested();
                Layer layer = _layers[i];
                _here.Lay(layer.Outline);
                _core.Lay(layer.Core);
                Fill(layer);
                if (i == 0)
                {
                    Level(_here, Row(layer.Bottom));
                    Rise(_here, _here, layer.Bottom, layer.Middle);
                }
                else
                {
                    Rise(_below, _here, _layers[i - 1].Middle, layer.Middle);
                }

                if (i == _layers.Count - 1)
                {
                    Rise(_here, _here, layer.Middle, layer.Top);
                    // A top that lies in the side of two cells belongs to the lower one.
                    Level(_here, Math.Max(0, (int)Math.Ceiling((layer.Top - _voxels.Origin.Z) / _voxels.Cell.Z) - 1));
                }

                (_below, _here) = (_here, _below);
            }
        }

        private int Row(double z) => Math.Clamp((int)Math.Floor((z - _voxels.Origin.Z) / _voxels.Cell.Z), 0, _voxels.CountZ - 1);

        /// <summary>Length of a stretch of height that lies in a row of cells, metres.</summary>
        private double Within(int row, double from, double to)
        {
            double low = _voxels.Origin.Z + row * _voxels.Cell.Z;
            return Math.Max(0, Math.Min(to, low + _voxels.Cell.Z) - Math.Max(from, low));
        }

        /// <summary>Shares of cells and of upright faces, by the layer's height in each row.</summary>
        private void Fill(Layer layer)
        {
            for (int k = Row(layer.Bottom); k <= Row(layer.Top); k++)
            {
                double share = Within(k, layer.Bottom, layer.Top) / _voxels.Cell.Z;
                Add(_here.Shares, _voxels.Part, k, share);
                Add(_core.Shares, _voxels.Core, k, share);
                Add(_here.LinesX, _voxels.FacesX, k, share);
                Add(_here.LinesY, _voxels.FacesY, k, share);
            }
        }

        private static void Add(double[] layer, double[] all, int row, double share)
        {
            int start = row * layer.Length;
            for (int i = 0; i < layer.Length; i++)
                all[start + i] += share * layer[i];
        }

        /// <summary>Surface and level faces from one height to another, the outline changing evenly between them.</summary>
        private void Rise(PlaneCoverage low, PlaneCoverage high, double from, double to)
        {
            double rise = to - from, cellArea = _voxels.Cell.X * _voxels.Cell.Y;
            if (!(rise > 0))
                return;
            for (int k = Row(from); k <= Row(to); k++)
            {
                double share = Within(k, from, to) / rise;
                int start = k * _plane;
                for (int i = 0; i < _plane; i++)
                {
                    double upright = (low.Lengths[i] + high.Lengths[i]) / 2 * rise, level = (high.Shares[i] - low.Shares[i]) * cellArea;
                    if (upright > 0 || Math.Abs(level) > Dust * cellArea)
                        _voxels.CooledArea[start + i] += share * Math.Sqrt(upright * upright + level * level);
                }

                // The face under this row, when it lies within the stretch.
                double face = _voxels.Origin.Z + k * _voxels.Cell.Z;
                if (face < from || face >= to)
                    continue;
                double way = (face - from) / rise;
                for (int i = 0; i < _plane; i++)
                    _voxels.FacesZ[start + i] = (1 - way) * low.Shares[i] + way * high.Shares[i];
            }
        }

        private void Level(PlaneCoverage at, int row)
        {
            double cellArea = _voxels.Cell.X * _voxels.Cell.Y;
            for (int i = 0; i < _plane; i++)
                _voxels.CooledArea[row * _plane + i] += at.Shares[i] * cellArea;
        }
    }
}
