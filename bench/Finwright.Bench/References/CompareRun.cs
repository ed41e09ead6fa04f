using System.Runtime.InteropServices;

namespace Finwright.Bench.References;

/// <summary>Our numerics beside general-purpose programs, one after the other in one run.</summary>
internal static class CompareRun
{
    private static readonly (string Name, Func<Comparison> Run)[] All =
    [
        ("dense", DenseSolveComparison.Run),
        ("band", BandSolveComparison.Run),
        ("cure", CureComparison.Run),
        ("booleans", BooleanComparison.Run),
        ("plate", PlateComparison.Run),
    ];

    /// <summary>Runs the comparisons and writes their tables.</summary>
    /// <param name="names">Those wanted; none for all.</param>
    /// <param name="to">Where they are written.</param>
    /// <returns>0 when what was compared agrees, also when a reference is not installed; 1 when something disagrees or a reference failed; 2 for a name that is none.</returns>
    public static int Run(IReadOnlyList<string> names, TextWriter to)
    {
        string[] unknown = [.. names.Where(name => !All.Any(one => string.Equals(one.Name, name, StringComparison.Ordinal)))];
        if (unknown.Length > 0)
        {
            to.WriteLine($"There is no comparison \"{unknown[0]}\"; there are {string.Join(", ", All.Select(one => one.Name))}.");
            return 2;
        }

        to.WriteLine($"{Environment.ProcessorCount} {RuntimeInformation.ProcessArchitecture} cores, {RuntimeInformation.FrameworkDescription}. Times are medians; a ratio below 1 means that ours is faster.");
        to.WriteLine();
        List<string> missing = [], wrong = [];
        int compared = 0;
        foreach ((string name, Func<Comparison> run) in All)
        {
            if (names.Count > 0 && !names.Contains(name, StringComparer.Ordinal))
                continue;
            try
            {
                Comparison comparison = run();
                ComparisonTable.Write(comparison, to);
                compared += comparison.Rows.Count;
                wrong.AddRange(comparison.Rows.Where(row => !row.Agrees).Select(row => $"{name}: {row.What}, {row.Size}"));
            }
            catch (ReferenceMissingException problem)
            {
                missing.Add($"{name} was left out: {problem.Message.TrimEnd('.')}. Debian packages: {problem.Packages}.");
            }
            catch (InvalidOperationException problem)
            {
                wrong.Add($"{name}: {problem.Message}");
            }
        }

        foreach (string line in missing)
            to.WriteLine(line);
        foreach (string line in wrong)
            to.WriteLine($"Disagrees: {line}");
        to.WriteLine($"{compared} lines compared, {wrong.Count} disagree, {missing.Count} comparisons left out.");
        return wrong.Count > 0 ? 1 : 0;
    }
}
