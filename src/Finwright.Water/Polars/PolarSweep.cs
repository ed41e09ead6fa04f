using System.Runtime.ExceptionServices;
using Finwright.Water.Sections;

namespace Finwright.Water.Polars;

/// <summary>Solves all curves of a family on all cores.</summary>
public static class PolarSweep
{
    /// <summary>Solves the curves of some nodes.</summary>
    /// <param name="nodes">The nodes, places rising.</param>
    /// <param name="solver">Solves one curve; called from several threads at once, for different curves.</param>
    /// <param name="maximumLiftFactor">See <see cref="SectionPolarTable"/>.</param>
    /// <param name="progress">Takes the share of the curves that are done, 0 to 1, rising; null when nobody listens.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The same to the last bit whatever the number of cores: each curve is solved by itself and put in its own place.</returns>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    /// <remarks>What the solver throws comes out as it is.</remarks>
    public static PolarSweepResult Solve(
        IReadOnlyList<PolarNode> nodes,
        SectionCurveSolver solver,
        double maximumLiftFactor = 1,
        IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(nodes);
        ArgumentNullException.ThrowIfNull(solver);
        (int Node, int Number)[] tasks = [.. nodes.SelectMany((node, n) => node.ReynoldsNumbers.Select((_, r) => (n, r)))];
        SectionCurve[][] curves = [.. nodes.Select(node => new SectionCurve[node.ReynoldsNumbers.Count])];
        Lock gate = new();
        int done = 0;
        try
        {
            Parallel.For(0, tasks.Length, new() { CancellationToken = cancellation, MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
            {
                (int n, int r) = tasks[i];
                curves[n][r] = Curve(nodes[n], nodes[n].ReynoldsNumbers[r], solver, cancellation);
                lock (gate)
                    progress?.Report((double)++done / tasks.Length);
            });
        }
        catch (AggregateException several)
        {
            // A solver that saw the stop before the loop did; else the first refusal speaks for all.
            cancellation.ThrowIfCancellationRequested();
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }

        int[] empty = [.. Enumerable.Range(0, nodes.Count).Where(n => !SectionPolarTable.IsEnough(curves[n]))];
        return empty.Length > 0
            ? new(null, curves, empty)
            : new(new([.. nodes.Select(node => node.Position)], [.. curves.Select(own => new SectionPolarTable(own, maximumLiftFactor))]), curves, empty);
    }

    private static SectionCurve Curve(PolarNode node, double reynoldsNumber, SectionCurveSolver solver, CancellationToken cancellation)
    {
        SectionConditions conditions = new()
        {
            ReynoldsNumber = reynoldsNumber,
            CriticalAmplification = node.CriticalAmplification,
            Upper = node.Upper,
            Lower = node.Lower,
        };
        bool half = node.IsSymmetric;
        SectionCurve curve = solver(node.Section, conditions, PolarGrid.Angles(half), cancellation);
        return half ? curve.Mirrored() : curve;
    }
}

/// <summary>What came of solving a family.</summary>
/// <param name="Family">The family; null when a node has too few converged points.</param>
/// <param name="Curves">All curves as solved, node by node.</param>
/// <param name="EmptyNodes">Numbers of the nodes of which no curve has enough converged points.</param>
public sealed record PolarSweepResult(SectionPolarFamily? Family, IReadOnlyList<IReadOnlyList<SectionCurve>> Curves, IReadOnlyList<int> EmptyNodes);
