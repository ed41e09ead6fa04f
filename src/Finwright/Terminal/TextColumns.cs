using Finwright.Assessment.Packing;

namespace Finwright.Terminal;

/// <summary>Rows of words in columns as wide as they need; the last column takes what is left of the line, and wraps.</summary>
/// <param name="headings">Names of the columns; one that begins with a blank is set flush right, as numbers are.</param>
internal sealed class TextColumns(params IReadOnlyList<string> headings)
{
    private const int Indent = 2, Between = 2, Widest = 32, Least = 26, Below = 6;

    private readonly List<IReadOnlyList<string>> _rows = [];

    /// <summary>Adds a row.</summary>
    /// <param name="cells">As many as there are columns.</param>
    public void Add(params IReadOnlyList<string> cells) => _rows.Add(cells);

    /// <summary>Writes the rows, with the headings above them. Columns that say nothing are left out.</summary>
    public void Write(TextStreams streams)
    {
        IReadOnlyList<string>[] all = [[.. headings.Select(heading => heading.Trim())], .. _rows];
        int last = headings.Count - 1;
        int[] shown = [.. Enumerable.Range(0, last).Where(column => _rows.Any(row => row[column].Length > 0))];
        int[] widths = [.. headings.Select((_, column) => Math.Min(Widest, all.Max(row => row[column].Length)))];
        // Where little is left of the line, the last column goes below.
        bool below = Indent + shown.Sum(column => widths[column] + Between) + Least > streams.Width;
        foreach ((int i, IReadOnlyList<string> row) in all.Index())
        {
            string line = new string(' ', Indent) + string.Concat(shown.Select(column => (headings[column].StartsWith(' ') ? row[column].PadLeft(widths[column]) : row[column].PadRight(widths[column])) + new string(' ', Between)));
            if (!below)
                line += Wrapping.Wrap(row[last], streams.Width, line.Length, line.Length);
            streams.Out.WriteLine(line.TrimEnd());
            if (below && i > 0 && row[last].Length > 0)
                streams.Out.WriteLine(new string(' ', Below) + Wrapping.Wrap(row[last], streams.Width, Below, Below));
        }
    }
}
