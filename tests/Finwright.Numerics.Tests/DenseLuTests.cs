using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace Finwright.Numerics.Tests;

public sealed class DenseLuTests
{
    private static readonly Gen<(int Order, double[] Matrix, double[] Right)> Systems =
        from order in Gen.Int[1, 60]
        from matrix in Gen.Double[-1, 1].Array[order * order]
        from right in Gen.Double[-1, 1].Array[order]
        select (order, matrix, right);

    [Fact]
    public void Solve_agrees_with_the_general_library() => Systems.Hold(system =>
    {
        // General-purpose reference: MathNet.Numerics, LU with partial pivoting.
        (int n, double[] matrix, double[] right) = system;
        for (int i = 0; i < n; i++)
            matrix[i * n + i] += 3;
        DenseLu lu = new(n);
        Assert.True(lu.Factor(matrix));
        double[] solution = new double[n], many = new double[2 * n], twice = new double[2 * n];
        lu.Solve(right, solution);
        double[] expected = Matrix<double>.Build.Dense(n, n, (i, j) => matrix[i * n + j]).LU().Solve(Vector<double>.Build.Dense(right)).ToArray();
        for (int i = 0; i < n; i++)
            (twice[2 * i], twice[2 * i + 1]) = (right[i], -2 * right[i]);
        lu.SolveMany(twice, 2, many);
        for (int i = 0; i < n; i++)
        {
            Assert.Equal(expected[i], solution[i], 1e-9 * (1 + Math.Abs(expected[i])));
            Assert.Equal(solution[i], many[2 * i], 1e-9 * (1 + Math.Abs(expected[i])));
            Assert.Equal(-2 * solution[i], many[2 * i + 1], 1e-9 * (1 + Math.Abs(expected[i])));
        }
    });

    [Fact]
    public void Factor_pivots_where_the_first_entry_is_nothing()
    {
        DenseLu lu = new(2);
        Assert.True(lu.Factor([0, 1, 2, 0]));
        double[] solution = new double[2];
        lu.Solve([3, 8], solution);
        Assert.Equal([4, 3], solution);
    }

    [Fact]
    public void Factor_refuses_singular_and_broken_matrices()
    {
        Assert.False(new DenseLu(2).Factor([1, 2, 2, 4]));
        Assert.False(new DenseLu(2).Factor([1, double.NaN, 0, 1]));
        Assert.False(new DenseLu(2).Factor([0, 0, 0, 0]));
        Assert.Throws<ArgumentException>(() => new DenseLu(2).Factor([1, 2, 3]));
    }
}
