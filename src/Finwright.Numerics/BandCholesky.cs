namespace Finwright.Numerics;

/// <summary>The Cholesky factor of a symmetric positive definite band matrix: factor once, solve as often as needed.</summary>
/// <remarks>
/// Golub and Van Loan, Matrix Computations, band Cholesky (from memory). Row by row, each entry by one product of two rows. Order n and band b cost n b² operations and n b for a
/// solution. Immutable once made, so several threads may solve at once.
/// </remarks>
public sealed class BandCholesky
{
    // A pivot this small beside the diagonal it came from has been eaten by rounding: the matrix is not positive definite.
    private const double PivotNoise = 1e-13;

    private readonly BandMatrix _factor;

    private BandCholesky(BandMatrix factor) => _factor = factor;

    /// <summary>Number of unknowns.</summary>
    public int Order => _factor.Order;

    /// <summary>Factors a matrix.</summary>
    /// <param name="matrix">Left as it is.</param>
    /// <returns>The factor; null when the matrix is not positive definite to working precision or holds a value that is not finite.</returns>
    public static BandCholesky? TryFactor(BandMatrix matrix)
    {
        ArgumentNullException.ThrowIfNull(matrix);
        int n = matrix.Order, b = matrix.Bandwidth;
        BandMatrix factor = new(n, b);
        factor.Add(matrix, 1);
        for (int i = 0; i < n; i++)
        {
            Span<double> row = factor.Row(i);
            double before = row[b];
            int first = Math.Max(0, i - b);
            for (int j = first; j < i; j++)
            {
                // Columns both rows have: first .. j − 1. In row j column c stands at b − j + c, in row i at b − i + c.
                int common = Math.Max(first, j - b), length = j - common;
                Span<double> other = factor.Row(j);
                int at = b - i + j;
                row[at] = (row[at] - BandMatrix.Dot(row.Slice(b - i + common, length), other.Slice(b - j + common, length))) / other[b];
            }

            ReadOnlySpan<double> own = row.Slice(b - i + first, i - first);
            double pivot = before - BandMatrix.Dot(own, own);
            if (!(pivot > PivotNoise * before) || !double.IsFinite(pivot))
                return null;
            row[b] = Math.Sqrt(pivot);
        }

        return new(factor);
    }

    /// <summary>Solves in place.</summary>
    /// <param name="values">Right-hand side; receives the solution.</param>
    public void Solve(Span<double> values)
    {
        int n = Order, b = _factor.Bandwidth;
        if (values.Length != n)
            throw new ArgumentException($"The right-hand side has {values.Length} values; {n} are needed.", nameof(values));
        for (int i = 0; i < n; i++)
        {
            int first = Math.Max(0, i - b);
            ReadOnlySpan<double> row = _factor.Row(i);
            values[i] = (values[i] - BandMatrix.Dot(row.Slice(b - i + first, i - first), values[first..i])) / row[b];
        }

        for (int i = n - 1; i >= 0; i--)
        {
            int first = Math.Max(0, i - b);
            ReadOnlySpan<double> row = _factor.Row(i);
            double value = values[i] /= row[b];
            ReadOnlySpan<double> left = row.Slice(b - i + first, i - first);
            for (int k = 0; k < left.Length; k++)
                values[first + k] -= value * left[k];
        }
    }
}
