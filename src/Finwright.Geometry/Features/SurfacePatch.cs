using Finwright.Geometry.Bases;
using Finwright.Geometry.Blades;

namespace Finwright.Geometry.Features;

/// <summary>A piece of smooth surface over the unit square, with a grid of its points kept for searching.</summary>
public sealed class SurfacePatch
{
    private readonly Func<double, double, Point3> _point;
    private readonly double[] _rows;
    private readonly double[] _columns;
    private readonly Point3[] _grid;
    private readonly double _widestCell;

    /// <summary>Samples the surface.</summary>
    /// <param name="point">Point of the surface at (s, t), both 0 to 1.</param>
    /// <param name="rows">Values of s for the grid, rising from 0 to 1.</param>
    /// <param name="columns">Values of t for the grid, rising from 0 to 1.</param>
    public SurfacePatch(Func<double, double, Point3> point, double[] rows, double[] columns)
    {
        (_point, _rows, _columns) = (point, rows, columns);
        _grid = new Point3[rows.Length * columns.Length];
        for (int i = 0; i < rows.Length; i++)
            for (int j = 0; j < columns.Length; j++)
                _grid[i * columns.Length + j] = point(rows[i], columns[j]);
        for (int i = 1; i < rows.Length; i++)
            for (int j = 1; j < columns.Length; j++)
                _widestCell = Math.Max(_widestCell, (_grid[i * columns.Length + j] - _grid[(i - 1) * columns.Length + j - 1]).Length);
    }

    /// <summary>Both sides of a blade, its blunt trailing edge and its flat tip if it has one; the root face is left out.</summary>
    /// <param name="blade">The blade.</param>
    /// <returns>Starboard side, port side, trailing edge, tip: in this order.</returns>
    public static IReadOnlyList<SurfacePatch> OfBlade(BladeShape blade)
    {
        double[] depths = Depths(73), round = Even(37), few = Even(3);
        return
        [
            new((s, t) => blade.Skin(s * blade.Span, t / 2), depths, round),
            new((s, t) => blade.Skin(s * blade.Span, 1 - t / 2), depths, round),
            new((s, t) => Between(blade.Skin(s * blade.Span, 0), blade.Skin(s * blade.Span, 1), t), depths, few),
            new((s, t) => Between(blade.Skin(blade.Span, s / 2), blade.Skin(blade.Span, 1 - s / 2), t), round, few),
        ];
    }

    /// <summary>The faces of a base, without the hull plane and without the rounding of its corners.</summary>
    /// <param name="plan">The base.</param>
    /// <returns>Starboard side, port side, front, rear, top edge: in this order.</returns>
    public static IReadOnlyList<SurfacePatch> OfBase(BasePlan plan)
    {
        Point2 front = plan.FrontTop, rear = plan.RearTop, frontHull = new(plan.FrontX, 0), rearHull = new(plan.RearX, 0);
        Point3 OnSide(Point2 a, Point2 b, double along, double across)
        {
            Point2 p = a + along * (b - a);
            return new(p.X, p.Y, across * plan.Width(p.Y) / 2);
        }

        SurfacePatch Side(double side) =>
            new((s, t) => OnSide(frontHull + s * (front - frontHull), rearHull + s * (rear - rearHull), t, side), Even(25), Even(49));
        SurfacePatch Edge(Point2 a, Point2 b, int count) => new((s, t) => OnSide(a, b, s, 2 * t - 1), Even(count), Even(9));
        return [Side(1), Side(-1), Edge(frontHull, front, 25), Edge(rearHull, rear, 25), Edge(front, rear, 49)];
    }

    /// <summary>The point of the surface where a distance is least.</summary>
    /// <param name="distance">A distance of places: no two values differ by more than the places are apart.</param>
    /// <param name="bound">A value already found elsewhere: larger ones are of no interest.</param>
    /// <returns>The least value and where it was found; positive infinity when it cannot be below the bound.</returns>
    /// <remarks>
    /// The best few grid points that are not neighbours are each followed down by a compass search over the patch, until
    /// the steps are a ten-thousandth of a grid cell, well below a micrometre. Starts that lie more than a grid cell above
    /// what is found already cannot lead below it. A minimum narrower than a cell can be missed; the skins of fins are smooth.
    /// </remarks>
    public (double Value, Point3 Place) Least(Func<Point3, double> distance, double bound = double.PositiveInfinity)
    {
        const int starts = 3;
        Span<(double Value, int Index)> best = stackalloc (double, int)[starts];
        best.Fill((double.PositiveInfinity, -1));
        for (int i = 0; i < _grid.Length; i++)
        {
            double value = distance(_grid[i]);
            if (value < best[^1].Value && value < bound + _widestCell)
                Insert(best, value, i);
        }

        double least = double.PositiveInfinity;
        Point3 place = _grid[0];
        foreach ((double value, int index) in best)
        {
            if (index < 0 || value > Math.Min(least, bound) + _widestCell)
                continue;
            (double Value, Point3 Place) found = Descend(distance, value, index);
            if (found.Value < least)
                (least, place) = found;
        }

        return (least, place);
    }

    // Keeps the best starts sorted; a neighbour of a start takes its place instead of adding one.
    private void Insert(Span<(double Value, int Index)> best, double value, int index)
    {
        int slot = best.Length - 1;
        for (int k = 0; k < best.Length; k++)
        {
            if (best[k].Index < 0 || !Neighbours(best[k].Index, index))
                continue;
            if (best[k].Value <= value)
                return;
            slot = k;
            break;
        }

        best[slot] = (value, index);
        for (int k = slot; k > 0 && best[k].Value < best[k - 1].Value; k--)
            (best[k], best[k - 1]) = (best[k - 1], best[k]);
    }

    private bool Neighbours(int a, int b) =>
        Math.Abs(a / _columns.Length - b / _columns.Length) <= 2 && Math.Abs(a % _columns.Length - b % _columns.Length) <= 2;

    private (double Value, Point3 Place) Descend(Func<Point3, double> function, double value, int index)
    {
        int row = index / _columns.Length, column = index % _columns.Length;
        double s = _rows[row], t = _columns[column];
        double stepS = Gap(_rows, row), stepT = Gap(_columns, column);
        Point3 place = _grid[index];
        const double settled = 1e-4;
        ReadOnlySpan<(int S, int T)> compass = [(1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (1, -1), (-1, 1), (-1, -1)];
        for (double scale = 0.5; scale > settled;)
        {
            bool moved = false;
            foreach ((int ds, int dt) in compass)
            {
                double tryS = Math.Clamp(s + ds * scale * stepS, 0, 1), tryT = Math.Clamp(t + dt * scale * stepT, 0, 1);
                Point3 candidate = _point(tryS, tryT);
                double found = function(candidate);
                if (found >= value)
                    continue;
                (value, place, s, t, moved) = (found, candidate, tryS, tryT, true);
                break;
            }

            if (!moved)
                scale /= 3;
        }

        return (value, place);
    }

    private static double Gap(double[] values, int index) =>
        index + 1 < values.Length ? values[index + 1] - values[index] : values[index] - values[index - 1];

    private static Point3 Between(Point3 a, Point3 b, double t) => a + t * (b - a);

    private static double[] Even(int count) => [.. Enumerable.Range(0, count).Select(i => i / (count - 1.0))];

    // Denser toward the tip, where the rounding turns the skin within a few millimetres.
    private static double[] Depths(int count) => [.. Even(count).Select(s => s * (1.6 - 0.6 * s))];
}
