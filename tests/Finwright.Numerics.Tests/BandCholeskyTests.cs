using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace Finwright.Numerics.Tests;

public sealed class BandCholeskyTests
{
    private static readonly Gen<(int Order, int Band, double[] Entries, double[] Right)> Systems =
        from order in Gen.Int[1, 60]
        from band in Gen.Int[0, order - 1]
        from entries in Gen.Double[-1, 1].Array[order * (band + 1)]
        from right in Gen.Double[-1, 1].Array[order]
        select (order, band, entries, right);

    [Fact]
    public void Solve_agrees_with_the_general_library() => Systems.Hold(system =>
    {
        // General-purpose reference: MathNet.Numerics, dense Cholesky.
        (int n, int band, _, double[] right) = system;
        BandMatrix matrix = Dominant(system);
        double[] solution = [.. right], product = new double[n];
        BandCholesky? factor = BandCholesky.TryFactor(matrix);
        Assert.NotNull(factor);
        factor.Solve(solution);
        double[] expected = Matrix<double>.Build.Dense(n, n, (i, j) => matrix[i, j]).Cholesky().Solve(Vector<double>.Build.Dense(right)).ToArray();
        matrix.Multiply(solution, product);
        for (int i = 0; i < n; i++)
        {
            Assert.Equal(expected[i], solution[i], 1e-10);
            Assert.Equal(right[i], product[i], 1e-10);
        }
    });

    [Fact]
    public void TryFactor_refuses_what_is_not_positive_definite()
    {
        BandMatrix indefinite = new(2, 1), broken = new(1, 0), floating = new(2, 1);
        indefinite.Add(0, 0, 1);
        indefinite.Add(1, 0, 2);
        indefinite.Add(1, 1, 1);
        broken.Add(0, 0, double.NaN);
        // A spring between two free points: it moves as a whole for nothing.
        floating.Add(0, 0, 1);
        floating.Add(1, 1, 1);
        floating.Add(0, 1, -1);
        Assert.Null(BandCholesky.TryFactor(indefinite));
        Assert.Null(BandCholesky.TryFactor(broken));
        Assert.Null(BandCholesky.TryFactor(floating));
    }

    [Fact]
    public void Add_refuses_entries_outside_the_band()
    {
        BandMatrix matrix = new(4, 1);
        Assert.Throws<ArgumentOutOfRangeException>(() => matrix.Add(3, 0, 1));
        Assert.Equal(0, matrix[3, 0]);
    }

    [Fact]
    public void Add_of_a_multiple_adds_entry_by_entry() => Systems.Hold(system =>
    {
        BandMatrix sum = new(system.Order, system.Band), one = Dominant(system);
        sum.Add(one, 0.25);
        sum.Add(one, 0.5);
        for (int i = 0; i < system.Order; i++)
            for (int j = 0; j < system.Order; j++)
                Assert.Equal(0.75 * one[j, i], sum[i, j], 1e-13);
    }, iter: 20);

    [Fact]
    public void Trailing_block_keeps_what_lies_behind_the_first_rows() => Systems.Hold(system =>
    {
        BandMatrix whole = Dominant(system);
        int from = system.Order / 2;
        BandMatrix block = whole.Trailing(from);
        Assert.Equal(system.Order - from, block.Order);
        for (int i = 0; i < block.Order; i++)
            for (int j = 0; j < block.Order; j++)
                Assert.Equal(whole[i + from, j + from], block[i, j]);
    }, iter: 20);

    private static BandMatrix Dominant((int Order, int Band, double[] Entries, double[] Right) system)
    {
        (int n, int band, double[] entries, _) = system;
        BandMatrix matrix = new(n, band);
        for (int i = 0; i < n; i++)
            for (int k = 0; k <= Math.Min(band, i); k++)
                matrix.Add(i, i - k, entries[i * (band + 1) + k] + (k == 0 ? 2 * band + 2 : 0));
        return matrix;
    }
}
