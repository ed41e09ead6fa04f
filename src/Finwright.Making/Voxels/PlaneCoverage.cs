using Finwright.Geometry;

namespace Finwright.Making.Voxels;

/// <summary>
/// Lays rings on a plane grid and gives, for every cell, the exact area inside them, the exact length of grid line inside them, and the exact
/// length of ring. Owns its arrays; each call writes over the last.
/// </summary>
/// <remarks>
/// By Green's theorem the area left of a line x = X in a row is ∮ min(x, X) dy over the ring's pieces in that row, and the length of that line
/// inside is its derivative. So each piece adds to its own cell and, whole, to all cells left of it; a sum from right to left does the latter.
/// </remarks>
internal sealed class PlaneCoverage
{
    private readonly Point2 _origin;
    private readonly double _cellX;
    private readonly double _cellY;
    private readonly int _countX;
    private readonly int _countY;
    private readonly double[] _leftOf;
    private readonly double[] _linesLeftOf;

    /// <summary>Makes the grid.</summary>
    /// <param name="origin">Corner of the first cell, metres.</param>
    /// <param name="cellX">Width of a cell, metres.</param>
    /// <param name="cellY">Depth of a cell, metres.</param>
    /// <param name="countX">Cells along x.</param>
    /// <param name="countY">Cells along y.</param>
    public PlaneCoverage(Point2 origin, double cellX, double cellY, int countX, int countY)
    {
        (_origin, _cellX, _cellY, _countX, _countY) = (origin, cellX, cellY, countX, countY);
        Shares = new double[countX * countY];
        Lengths = new double[countX * countY];
        LinesX = new double[(countX + 1) * countY];
        LinesY = new double[countX * (countY + 1)];
        _leftOf = new double[countX * countY];
        _linesLeftOf = new double[countX * (countY + 1)];
    }

    /// <summary>Share of each cell inside the rings, x fastest.</summary>
    public double[] Shares { get; }

    /// <summary>Length of ring in each cell, metres.</summary>
    public double[] Lengths { get; }

    /// <summary>Share of each cell side across x inside the rings; side (i, j) lies before cell i; index i + (countX + 1) j.</summary>
    public double[] LinesX { get; }

    /// <summary>Share of each cell side across y inside the rings; index i + countX j.</summary>
    public double[] LinesY { get; }

    /// <summary>Lays rings on the grid. They must lie within it, do not cross, and run counter-clockwise outside and clockwise round holes.</summary>
    public void Lay(IReadOnlyList<IReadOnlyList<Point2>> rings)
    {
        Array.Clear(Shares);
        Array.Clear(Lengths);
        Array.Clear(LinesX);
        Array.Clear(LinesY);
        Array.Clear(_leftOf);
        Array.Clear(_linesLeftOf);
        foreach (IReadOnlyList<Point2> ring in rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                Point2 a = ring[i], b = ring[i + 1 == ring.Count ? 0 : i + 1];
                double u0 = (a.X - _origin.X) / _cellX, v0 = (a.Y - _origin.Y) / _cellY;
                double u1 = (b.X - _origin.X) / _cellX, v1 = (b.Y - _origin.Y) / _cellY;
                Trace(u0, v0, u1, v1);
                Cross(u0, v0, u1, v1);
            }
        }

        for (int j = 0; j < _countY; j++)
        {
            double inside = 0;
            for (int i = _countX - 1; i >= 0; i--)
            {
                Shares[i + _countX * j] = WithoutDust(Shares[i + _countX * j] + inside);
                inside = WithoutDust(inside + _leftOf[i + _countX * j]);
                LinesX[i + (_countX + 1) * j] = inside;
            }
        }

        for (int j = 0; j <= _countY; j++)
        {
            double inside = 0;
            for (int i = _countX - 1; i >= 0; i--)
            {
                LinesY[i + _countX * j] = WithoutDust(LinesY[i + _countX * j] + inside);
                inside += _linesLeftOf[i + _countX * j];
            }
        }
    }

    /// <summary>Cuts an edge, given in cells, at the grid lines and hands each piece to its cell.</summary>
    private void Trace(double u0, double v0, double u1, double v1)
    {
        double du = u1 - u0, dv = v1 - v0, t = 0;
        if (du == 0 && dv == 0)
            return;
        double length = Math.Sqrt(du * du * _cellX * _cellX + dv * dv * _cellY * _cellY);
        int stepU = du > 0 ? 1 : -1, stepV = dv > 0 ? 1 : -1;
        double nextU = du > 0 ? Math.Floor(u0) + 1 : Math.Ceiling(u0) - 1;
        double nextV = dv > 0 ? Math.Floor(v0) + 1 : Math.Ceiling(v0) - 1;
        while (t < 1)
        {
            double tU = du == 0 ? double.PositiveInfinity : (nextU - u0) / du;
            double tV = dv == 0 ? double.PositiveInfinity : (nextV - v0) / dv;
            double end = Math.Min(1, Math.Min(tU, tV));
            if (tU <= end)
                nextU += stepU;
            if (tV <= end)
                nextV += stepV;
            if (end <= t)
                continue;
            double middle = (t + end) / 2, u = u0 + middle * du, v = v0 + middle * dv;
            // The inside lies to the left of an edge. A piece that runs along a grid line belongs to the cell on that side.
            int i = Cell(u, dv > 0, _countX), j = Cell(v, du < 0, _countY), cell = i + _countX * j;
            double rise = (end - t) * dv;
            Shares[cell] += rise * (u - i);
            Lengths[cell] += (end - t) * length;
            _leftOf[cell] += rise;
            t = end;
        }
    }

    /// <summary>Notes where an edge, given in cells, crosses the grid lines along x.</summary>
    private void Cross(double u0, double v0, double u1, double v1)
    {
        int sign = v1 > v0 ? 1 : -1;
        double low = Math.Min(v0, v1), high = Math.Max(v0, v1);
        // Lines with low < V ≤ high: a corner on a line is counted with exactly one of its edges.
        for (int line = (int)Math.Floor(low) + 1; line <= high; line++)
        {
            double u = u0 + (line - v0) / (v1 - v0) * (u1 - u0);
            int i = Cell(u, sign > 0, _countX), at = i + _countX * Math.Clamp(line, 0, _countY);
            LinesY[at] += sign * (u - i);
            _linesLeftOf[at] += sign;
        }
    }

    /// <summary>Sums of many pieces that should be nothing leave a rest of some 1e-14; no true share is that small.</summary>
    private static double WithoutDust(double share) => Math.Abs(share) < 1e-11 ? 0 : share;

    private static int Cell(double u, bool before, int count)
    {
        double floor = Math.Floor(u);
        return Math.Clamp((int)(before && floor == u ? floor - 1 : floor), 0, count - 1);
    }
}
