namespace Finwright.Water.Lifting;

/// <summary>A square matrix as the product of its triangles, with row exchange; solves in place without allocating.</summary>
/// <remarks>Golub and Van Loan, Matrix Computations, Gaussian elimination with partial pivoting. One thread, so that the same matrix gives the same bits.</remarks>
internal sealed class DenseFactor
{
    // A pivot below this share of the largest entry of the matrix means that the equations do not determine the answer.
    private const double SmallestPivot = 1e-13;

    private readonly double[] _a;
    private readonly int[] _rows;

    /// <summary>Factorises.</summary>
    /// <param name="matrix">Row-major, n·n; overwritten and kept.</param>
    /// <param name="n">Order.</param>
    public DenseFactor(double[] matrix, int n)
    {
        (_a, Order, _rows) = (matrix, n, new int[n]);
        Factorise();
    }

    /// <summary>Number of equations.</summary>
    public int Order { get; }

    /// <summary>Whether the matrix could not be factorised; solutions then mean nothing.</summary>
    public bool IsSingular { get; private set; }

    /// <summary>Factorises the numbers that the caller has put into the matrix again.</summary>
    public void Factorise()
    {
        int n = Order;
        double largest = 0;
        foreach (double v in _a)
            largest = Math.Max(largest, Math.Abs(v));
        IsSingular = !(largest > 0 && double.IsFinite(largest));
        for (int k = 0; k < n && !IsSingular; k++)
        {
            int pivot = k;
            for (int i = k + 1; i < n; i++)
                if (Math.Abs(_a[i * n + k]) > Math.Abs(_a[pivot * n + k]))
                    pivot = i;
            _rows[k] = pivot;
            Span<double> row = _a.AsSpan(k * n, n);
            if (pivot != k)
            {
                Span<double> other = _a.AsSpan(pivot * n, n);
                for (int j = 0; j < n; j++)
                    (row[j], other[j]) = (other[j], row[j]);
            }

            if (!(Math.Abs(row[k]) > SmallestPivot * largest))
            {
                IsSingular = true;
                return;
            }

            double inverse = 1 / row[k];
            ReadOnlySpan<double> tail = row[(k + 1)..];
            for (int i = k + 1; i < n; i++)
            {
                double factor = _a[i * n + k] *= inverse;
                if (factor != 0)
                    AddScaled(_a.AsSpan(i * n + k + 1, n - k - 1), -factor, tail);
            }
        }
    }

    /// <summary>Solves for one right-hand side, in place.</summary>
    public void Solve(Span<double> x) => Solve(x, 1);

    /// <summary>Solves for several right-hand sides at once, in place.</summary>
    /// <param name="x">Row-major, n rows of <paramref name="columns"/>.</param>
    /// <param name="columns">Number of right-hand sides.</param>
    public void Solve(Span<double> x, int columns)
    {
        int n = Order;
        for (int i = 0; i < n; i++)
            if (_rows[i] != i)
                for (int j = 0; j < columns; j++)
                    (x[i * columns + j], x[_rows[i] * columns + j]) = (x[_rows[i] * columns + j], x[i * columns + j]);
        for (int i = 1; i < n; i++)
            for (int k = 0; k < i; k++)
                AddScaled(x.Slice(i * columns, columns), -_a[i * n + k], x.Slice(k * columns, columns));
        for (int i = n - 1; i >= 0; i--)
        {
            Span<double> row = x.Slice(i * columns, columns);
            for (int k = i + 1; k < n; k++)
                AddScaled(row, -_a[i * n + k], x.Slice(k * columns, columns));
            double inverse = 1 / _a[i * n + i];
            for (int j = 0; j < columns; j++)
                row[j] *= inverse;
        }
    }

    private static void AddScaled(Span<double> to, double factor, ReadOnlySpan<double> from)
    {
        int j = 0, wide = System.Numerics.Vector<double>.Count;
        System.Numerics.Vector<double> factors = new(factor);
        for (; j + wide <= to.Length; j += wide)
        {
            System.Numerics.Vector<double> sum = new System.Numerics.Vector<double>(to[j..]) + factors * new System.Numerics.Vector<double>(from[j..]);
            sum.CopyTo(to[j..]);
        }

        for (; j < to.Length; j++)
            to[j] += factor * from[j];
    }
}
