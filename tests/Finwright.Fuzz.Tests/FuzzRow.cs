using System.Globalization;

namespace Finwright.Fuzz.Tests;

/// <summary>What a run over spoilt files of one kind found.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Files">How many were tried.</param>
/// <param name="Taken">How many of them could be used in spite of everything; the others were refused in words.</param>
/// <param name="SlowestMilliseconds">The longest that one took.</param>
/// <param name="PeakMegabytes">The most memory that the whole process held.</param>
internal sealed record FuzzRow(string Kind, int Files, int Taken, double SlowestMilliseconds, long PeakMegabytes)
{
    private const string Ending = ".row";

    /// <summary>The row of the table in docs/fuzz.md.</summary>
    public string Text => string.Create(CultureInfo.InvariantCulture, $"| {Kind} | {Files} | {Taken} | {Files - Taken} | {SlowestMilliseconds:0} | {PeakMegabytes} |");

    /// <summary>A row of the table; null for any other line.</summary>
    public static FuzzRow? Of(string line) =>
        line.Trim('|', ' ', '\n').Split('|', StringSplitOptions.TrimEntries) is [var kind, var files, var taken, var refused, var slowest, var peak]
        && int.TryParse(files, NumberStyles.None, CultureInfo.InvariantCulture, out int all)
        && int.TryParse(taken, NumberStyles.None, CultureInfo.InvariantCulture, out int good)
        && int.TryParse(refused, NumberStyles.None, CultureInfo.InvariantCulture, out int bad) && good + bad == all
        && double.TryParse(slowest, NumberStyles.None, CultureInfo.InvariantCulture, out double milliseconds)
        && long.TryParse(peak, NumberStyles.None, CultureInfo.InvariantCulture, out long megabytes)
            ? new(kind, all, good, milliseconds, megabytes)
            : null;

    /// <summary>Keeps the row until the document is written.</summary>
    public void Keep(string folder) => File.WriteAllText(Path.Combine(folder, Kind.Replace(' ', '-') + Ending), Text + "\n");

    /// <summary>The row of a kind that was kept; null for none.</summary>
    public static FuzzRow? Kept(string folder, string kind) => Path.Combine(folder, kind.Replace(' ', '-') + Ending) is var path && File.Exists(path) ? Of(File.ReadAllText(path)) : null;
}
