using System.Numerics;
using System.Runtime.InteropServices;

namespace Finwright.Making.Cure;

/// <summary>The symmetric system of a body's cells: a diagonal, and the conductances between neighbours off it.</summary>
/// <remarks>
/// Conjugate gradients with an incomplete Cholesky factor as preconditioner, E D⁻¹ Eᵀ with E = D + L (exact in one dimension), in the form that needs one sweep up and one down an iteration and no
/// product with the matrix (S. C. Eisenstat, "Efficient implementation of a class of preconditioned conjugate gradient methods", SIAM J. Sci. Stat. Comput. 2 (1981) 1, from memory): with the residual r̂ = E⁻¹ r,
/// the product with the preconditioned matrix is t + E⁻¹(p − (2D − A) t), t = E⁻ᵀ p, where A stands for the matrix's diagonal.
/// </remarks>
internal sealed class CellSystem
{
    private const int MostIterations = 2000;

    private readonly CellLinks[] _links;
    private readonly int _n;

    // One longer: what is no neighbour reads and writes there, with a conductance of zero.
    private readonly double[] _pivot, _overPivot, _excess, _direction, _down, _up, _residual;

    public CellSystem(CureCells cells)
    {
        (_links, _n) = (cells.Links, cells.Count);
        Diagonal = new double[_n];
        (_pivot, _overPivot, _excess, _direction) = (new double[_n], new double[_n + 1], new double[_n], new double[_n]);
        (_down, _up, _residual) = (new double[_n + 1], new double[_n + 1], new double[_n + 1]);
    }

    /// <summary>The matrix's diagonal, set before <see cref="Factor"/>.</summary>
    public double[] Diagonal { get; }

    /// <summary>Works out the incomplete factor; false when the matrix is not positive.</summary>
    public bool Factor()
    {
        double[] over = _overPivot;
        for (int i = 0; i < Diagonal.Length; i++)
        {
            ref readonly CellLinks own = ref _links[i];
            double pivot = Diagonal[i] - own.GX * own.GX * over[own.X] - own.GY * own.GY * over[own.Y] - own.GZ * own.GZ * over[own.Z];
            if (!(pivot > 0))
                return false;
            (_pivot[i], over[i], _excess[i]) = (pivot, 1 / pivot, 2 * pivot - Diagonal[i]);
        }

        return true;
    }

    /// <summary>Solves for one right side; false when it does not come to an end.</summary>
    /// <param name="x">The first guess, and the solution; one longer than the cells.</param>
    /// <param name="right">Right side.</param>
    /// <param name="goal">Square of the error, in the norm of the preconditioner's inverse, at which it ends.</param>
    public bool Solve(double[] x, double[] right, double goal)
    {
        double square = Begin(x, right), was = 0;
        for (int iteration = 0; iteration < MostIterations; iteration++)
        {
            // At least once, which in one dimension is all it takes.
            if (square <= (iteration > 0 ? goal : 0))
                return square >= 0;
            Descend(iteration == 0 ? 0 : square / was);
            double curve = Ascend();
            if (!(curve > 0))
                return false;
            was = square;
            square = Move(x, square / curve);
        }

        return false;
    }

    /// <summary>Residual of the first guess, seen through the factor; returns its square.</summary>
    private double Begin(double[] x, double[] right)
    {
        double[] r = _residual, over = _overPivot, diagonal = Diagonal;
        r[_n] = x[_n] = 0;
        for (int i = 0; i < diagonal.Length; i++)
        {
            ref readonly CellLinks own = ref _links[i];
            double xi = x[i];
            r[i] = right[i] - diagonal[i] * xi + own.GX * x[own.X] + own.GY * x[own.Y] + own.GZ * x[own.Z];
            r[own.X] += own.GX * xi;
            r[own.Y] += own.GY * xi;
            r[own.Z] += own.GZ * xi;
        }

        double square = 0;
        r[_n] = 0;
        for (int i = 0; i < diagonal.Length; i++)
        {
            ref readonly CellLinks own = ref _links[i];
            double ri = r[i] + own.GX * r[own.X] + own.GY * r[own.Y] + own.GZ * r[own.Z];
            square += ri * (r[i] = ri * over[i]);
        }

        Array.Clear(_down);
        return square;
    }

    /// <summary>The next direction, and the step in the temperatures that belongs to it: a sweep from the last cell to the first.</summary>
    private void Descend(double beta)
    {
        double[] direction = _direction, t = _down, over = _overPivot, pivot = _pivot, r = _residual;
        for (int i = direction.Length - 1; i >= 0; i--)
        {
            ref readonly CellLinks own = ref _links[i];
            double p = pivot[i] * r[i] + beta * direction[i], ti = (p + t[i]) * over[i];
            (direction[i], t[i]) = (p, ti);
            t[own.X] += own.GX * ti;
            t[own.Y] += own.GY * ti;
            t[own.Z] += own.GZ * ti;
        }
    }

    /// <summary>The rest of the product with the preconditioned matrix, from the first cell to the last; returns the product along the direction.</summary>
    private double Ascend()
    {
        double[] direction = _direction, t = _down, u = _up, over = _overPivot, excess = _excess;
        double curve = 0;
        u[_n] = 0;
        for (int i = 0; i < direction.Length; i++)
        {
            ref readonly CellLinks own = ref _links[i];
            double p = direction[i], ti = t[i];
            double ui = (p - excess[i] * ti + own.GX * u[own.X] + own.GY * u[own.Y] + own.GZ * u[own.Z]) * over[i];
            u[i] = ui;
            curve += p * (ti + ui);
        }

        return curve;
    }

    /// <summary>Goes along the direction; returns the square of what is left.</summary>
    private double Move(double[] x, double alpha)
    {
        Vector<double> step = new(alpha), sum = Vector<double>.Zero;
        Span<Vector<double>> xs = Vectors(x), rs = Vectors(_residual), ts = Vectors(_down), us = Vectors(_up), pivots = Vectors(_pivot);
        for (int i = 0; i < xs.Length; i++)
        {
            Vector<double> t = ts[i], r = rs[i] - step * (t + us[i]);
            xs[i] += step * t;
            rs[i] = r;
            ts[i] = Vector<double>.Zero;
            sum += pivots[i] * r * r;
        }

        double square = Vector.Sum(sum);
        for (int i = xs.Length * Vector<double>.Count; i < _n; i++)
        {
            double t = _down[i], r = _residual[i] - alpha * (t + _up[i]);
            x[i] += alpha * t;
            (_residual[i], _down[i]) = (r, 0);
            square += _pivot[i] * r * r;
        }

        return square;
    }

    private Span<Vector<double>> Vectors(double[] of) => MemoryMarshal.Cast<double, Vector<double>>(of.AsSpan(0, _n));
}
