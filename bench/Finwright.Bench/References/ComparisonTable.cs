using System.Globalization;

namespace Finwright.Bench.References;

/// <summary>Comparisons as tables in Markdown, so that they can go into a file of results as they are.</summary>
internal static class ComparisonTable
{
    public static void Write(Comparison comparison, TextWriter to)
    {
        to.WriteLine($"## {comparison.Title}");
        to.WriteLine();
        to.WriteLine($"Reference: {comparison.Reference}.");
        to.WriteLine();
        to.WriteLine("| What | Size | Ours | Theirs | Difference | Our time | Their time | Ratio | Ratio of the quickest |");
        to.WriteLine("| --- | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (ComparisonRow row in comparison.Rows)
        {
            string unit = row.Unit.Length > 0 ? " " + row.Unit : "";
            string times = row is { OurTimes: { } ours, TheirTimes: { } theirs }
                ? $"{Time(ours.Median)} | {Time(theirs.Median)} | {Ratio(ours.Median / theirs.Median)} | {Ratio(ours.Quickest / theirs.Quickest)}"
                : "as above | as above | | ";
            to.WriteLine($"| {row.What} | {row.Size} | {Value(row.Ours)}{unit} | {Value(row.Theirs)}{unit} | {Difference(row)} | {times} |");
        }

        to.WriteLine();
    }

    private static string Value(double value) => value.ToString("G7", CultureInfo.InvariantCulture);

    private static string Difference(ComparisonRow row)
    {
        string size = row.DifferenceUnit.Length > 0
            ? $"{row.Difference.ToString("G2", CultureInfo.InvariantCulture)} {row.DifferenceUnit}"
            : row.Difference.ToString("0.0e0", CultureInfo.InvariantCulture);
        return row.Agrees ? size : $"{size}, more than {row.Limit.ToString("G2", CultureInfo.InvariantCulture)}";
    }

    private static string Ratio(double ratio) => ratio.ToString(ratio < 0.1 ? "0.0000" : "0.00", CultureInfo.InvariantCulture);

    private static string Time(double seconds) => seconds switch
    {
        < 1e-3 => (seconds * 1e6).ToString("0.0", CultureInfo.InvariantCulture) + " µs",
        < 1 => (seconds * 1e3).ToString("0.00", CultureInfo.InvariantCulture) + " ms",
        _ => seconds.ToString("0.00", CultureInfo.InvariantCulture) + " s",
    };
}
