using System.Text.Json;
using Finwright.Numerics;
using Finwright.Strength.Plates;

namespace Finwright.Bench.References;

/// <summary>The stiffness of plates as their solver meets it, against LAPACK's band Cholesky.</summary>
internal static class BandSolveComparison
{
    // Rounding times the condition of a thin plate's stiffness. The plate itself takes one step of refinement after this.
    private const double Limit = 1e-6;

    private static readonly (int Chord, int Span)[] Meshes = [(4, 8), (8, 14), (12, 21), (16, 28)];

    public static Comparison Run()
    {
        List<ComparisonRow> rows = [];
        string name = "";
        foreach ((int chord, int span) in Meshes)
        {
            PlateModel plate = PlateModel.Create(PlateComparison.Blade, new() { ChordElements = chord, SpanElements = span });
            BandMatrix matrix = plate.Stiffness.Trailing(plate.Assembly.RootUnknowns);
            int n = matrix.Order, b = matrix.Bandwidth;
            // A newton on each node's deflection; the slopes of a node follow it.
            double[] right = [.. Enumerable.Range(0, n).Select(i => i % 3 == 0 ? 1.0 : 0)];
            double[] diagonals = new double[(b + 1) * n];
            for (int d = 0; d <= b; d++)
                for (int j = 0; j + d < n; j++)
                    diagonals[d * n + j] = matrix[j + d, j];
            JsonElement answer = ReferenceProgram.Ask(
                ReferenceProgram.Python, "band_solve.py", "python3 python3-scipy", new { order = n, bandwidth = b, diagonals, right, timing = Sampling.Usual.Told });
            name = ReferenceProgram.Name(answer);
            double[] theirs = ReferenceProgram.Numbers(answer, "solution");

            double[] solution = new double[n];
            (Times times, bool isSolved) = Sampling.Usual.Measure(() =>
            {
                right.CopyTo(solution, 0);
                BandCholesky? factor = BandCholesky.TryFactor(matrix);
                factor?.Solve(solution);
                return factor is not null;
            });
            rows.Add(new(
                $"plate of {chord} × {span} elements", $"{n} unknowns, band {b}", "m", Vectors.Largest(solution), Vectors.Largest(theirs),
                isSolved ? Vectors.Difference(solution, theirs) : double.NaN, "", Limit, times, ReferenceProgram.Times(answer)));
        }

        return new("Symmetric band systems", name, rows);
    }
}
