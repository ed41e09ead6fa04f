namespace Finwright.Design.Tables;

/// <summary>What a table in CSV may be.</summary>
/// <param name="What">What it holds, in words: "readings of a bench".</param>
/// <param name="Row">What one row is: "reading".</param>
/// <param name="Columns">Names of the columns that it may have.</param>
/// <param name="Needed">Names of those that it must have.</param>
/// <param name="Example">Columns for a first line that would do.</param>
public sealed record CsvRules(string What, string Row, IReadOnlyList<string> Columns, IReadOnlyList<string> Needed, IReadOnlyList<string> Example)
{
    /// <summary>Largest file, bytes.</summary>
    public int LargestFile { get; init; } = 512 * 1024;

    /// <summary>Most rows.</summary>
    public int MostRows { get; init; } = 2000;

    /// <summary>Most characters of a cell.</summary>
    public int LongestCell { get; init; } = 200;

    /// <summary>What to do with more rows than <see cref="MostRows"/>.</summary>
    public string TooManyRemedy { get; init; } = "Split the file.";

    /// <summary>Column for what has no column of its own.</summary>
    public string RemarksColumn { get; init; } = "note";

    /// <summary>Why a needed column is needed.</summary>
    public string NeededRemedy { get; init; } = "Add it.";

    /// <summary>Columns of which at least one must be there; empty for none.</summary>
    public IReadOnlyList<string> OneOf { get; init; } = [];

    /// <summary>What those hold, in words.</summary>
    public string OneOfWhat { get; init; } = "";
}
