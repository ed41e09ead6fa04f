using System.Text.Json;
using Finwright.Numerics;

namespace Finwright.Bench.References;

/// <summary>Full systems of equations: the factors of the sections' flow and of the lifting surface, against LAPACK.</summary>
internal static class DenseSolveComparison
{
    private const int Seed = 20261127;

    // Both eliminate with row exchange; what is left is rounding times the condition of a random matrix of these sizes, 1e3 to 1e5.
    private const double Limit = 1e-9;

    private static readonly int[] Orders = [50, 100, 200, 400, 800];

    public static Comparison Run()
    {
        List<ComparisonRow> rows = [];
        string name = "";
        foreach (int n in Orders)
        {
            Random random = new(Seed + n);
            double[] matrix = [.. Enumerable.Range(0, n * n).Select(_ => 2 * random.NextDouble() - 1)];
            double[] right = [.. Enumerable.Range(0, n).Select(_ => 2 * random.NextDouble() - 1)];
            JsonElement answer = ReferenceProgram.Ask(
                ReferenceProgram.Python, "dense_solve.py", "python3 python3-numpy", new { order = n, matrix, right, timing = Sampling.Usual.Told });
            name = ReferenceProgram.Name(answer);
            double[] theirs = ReferenceProgram.Numbers(answer, "solution");
            Times theirTimes = ReferenceProgram.Times(answer);

            DenseLu factors = new(n);
            double[] solution = new double[n];
            (Times times, bool isSolved) = Sampling.Usual.Measure(() =>
            {
                bool good = factors.Factor(matrix);
                if (good)
                    factors.Solve(right, solution);
                return good;
            });
            rows.Add(Row(n, isSolved, solution, theirs, times, theirTimes));
        }

        return new("Full systems of equations", name, rows);
    }

    private static ComparisonRow Row(int n, bool isSolved, double[] ours, double[] theirs, Times ourTimes, Times theirTimes) =>
        new("`DenseLu`", $"{n} unknowns", "", Vectors.Largest(ours), Vectors.Largest(theirs), isSolved ? Vectors.Difference(ours, theirs) : double.NaN, "", Limit, ourTimes, theirTimes);
}
