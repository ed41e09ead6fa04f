using Finwright.Design.Reading;

namespace Finwright.Design.Tables;

/// <summary>
/// A table in CSV as someone wrote it: columns named in the first line, separated by commas, semicolons or tabs; with the latter two a decimal comma is read too.
/// A cell in quotes may hold separators, line breaks and doubled quotes; empty lines and lines that begin with # are passed over. Everything that is wrong is found at once.
/// </summary>
public sealed class CsvTable
{
    /// <summary>After how many findings reading stops.</summary>
    public const int MostFindings = 20;

    private readonly CsvRules _rules;
    private readonly List<Finding> _findings = [];
    private readonly List<CsvRow> _rows = [];
    private string[] _header = [];

    private CsvTable(CsvRules rules) => _rules = rules;

    /// <summary>The rows that can be read; look at <see cref="Findings"/> before using them.</summary>
    public IReadOnlyList<CsvRow> Rows => _rows;

    /// <summary>Everything that is wrong so far; its places are columns.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Whether so much is wrong that there is no use in looking further.</summary>
    public bool IsHopeless => _findings.Count >= MostFindings;

    /// <summary>What stands between cells.</summary>
    public char Separator { get; private set; } = ',';

    /// <summary>Reads a table.</summary>
    /// <param name="stream">The file; read no farther than to its greatest size.</param>
    /// <param name="rules">What it may be.</param>
    public static CsvTable Read(Stream stream, CsvRules rules)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(rules);
        byte[] bytes = new byte[rules.LargestFile + 1];
        return Read(bytes.AsSpan(0, stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)), rules);
    }

    /// <summary>Reads a table.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <param name="rules">What it may be.</param>
    public static CsvTable Read(ReadOnlySpan<byte> utf8, CsvRules rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        CsvTable table = new(rules);
        if (CsvLines.Decode(utf8, rules.LargestFile, rules.What, out Finding? problem) is string text)
            table.Read(text);
        else
            table._findings.Add(problem!);
        return table;
    }

    /// <summary>Notes something that is wrong.</summary>
    /// <param name="line">Its line, from 1; null for the file as a whole.</param>
    /// <param name="code">Kebab-case name of what is wrong.</param>
    /// <param name="place">The column, "line", "header" or "file".</param>
    /// <param name="message">What is wrong and why.</param>
    /// <param name="remedy">What to do.</param>
    public void Say(int? line, string code, string place, string message, string remedy) => _findings.Add(new(code, Severity.Error, place, message, remedy) { Line = line });

    /// <summary>Where a column stands, from 0; below 0 when the file has it not.</summary>
    internal int IndexOf(string column) => Array.IndexOf(_header, column);

    /// <summary>A text that fits a message.</summary>
    internal static string Short(string text) => text.Length <= 40 ? text : string.Concat(text.AsSpan(0, 37), "...");

    private void Read(string text)
    {
        CsvScanner scanner = new(text);
        while (!IsHopeless && scanner.NextLine())
        {
            if (_header.Length == 0)
                Separator = scanner.Separator();
            if (scanner.Cells(Separator, _rules.LongestCell, (code, message, remedy) => Say(scanner.Line, code, "line", message, remedy)) is not { } cells)
            {
                if (_header.Length == 0)
                    return;
                continue;
            }

            if (_header.Length == 0)
            {
                ReadHeader(cells, scanner.Line);
                if (_findings.Count > 0)
                    return;
            }
            else if (cells.Exists(cell => cell.Length > 0))
            {
                Add(cells, scanner.Line);
            }

            if (_rows.Count > _rules.MostRows)
            {
                Say(scanner.Line, "too-many", "file", $"There are more than {_rules.MostRows} {_rules.Row}s.", _rules.TooManyRemedy);
                return;
            }
        }

        if (_findings.Count == 0 && _rows.Count == 0)
            Say(null, "no-rows", "file", $"There is no {_rules.Row} in the file.", $"Begin with a line of column names ({string.Join(", ", _rules.Example)}), then one line a {_rules.Row}.");
    }

    private void Add(List<string> cells, int line)
    {
        if (cells.Count > _header.Length && cells[_header.Length..].Exists(cell => cell.Length > 0))
        {
            string why = Separator == ',' ? " With decimal commas, separate the columns by semicolons." : "";
            Say(line, "too-many-cells", "line", $"The line has {cells.Count} cells, but there are {_header.Length} columns.{why}", "Put one value into each column, and a text with separators into quotes.");
            return;
        }

        _rows.Add(new(this, line, cells));
    }

    private void ReadHeader(List<string> cells, int line)
    {
        _header = [.. cells.Select(cell => cell.Trim().ToLowerInvariant())];
        for (int i = 0; i < _header.Length; i++)
        {
            string name = _header[i];
            if (name.Length == 0)
                Say(line, "no-name", "header", $"Column {i + 1} has no name.", "Name it, or take it away.");
            else if (!_rules.Columns.Contains(name, StringComparer.Ordinal))
                Say(line, "unknown-column", "header", $"Column {i + 1}, \"{Short(cells[i])}\", is none that is known{(NearestName.Among(name, _rules.Columns) is string near ? $"; perhaps \"{near}\" is meant" : "")}.", $"Columns: {string.Join(", ", _rules.Columns)}. Remarks go into \"{_rules.RemarksColumn}\".");
            else if (Array.IndexOf(_header, name) < i)
                Say(line, "column-twice", "header", $"Column {i + 1}, \"{name}\", is there twice.", "Take one of them away.");
        }

        // A file of quite other things is told so once, not column by column.
        if (!_header.Any(name => _rules.Columns.Contains(name, StringComparer.Ordinal)))
        {
            _findings.Clear();
            Say(line, "no-header", "header", "The first line does not name the columns.", $"Begin with a line of column names, for example {string.Join(',', _rules.Example)}.");
            return;
        }

        foreach (string needed in _rules.Needed.Where(needed => !_header.Contains(needed, StringComparer.Ordinal)))
            Say(line, "column-missing", "header", $"The column \"{needed}\" is missing.", _rules.NeededRemedy);
        if (_rules.OneOf.Count > 0 && !_rules.OneOf.Any(own => _header.Contains(own, StringComparer.Ordinal)))
            Say(line, "column-missing", "header", $"There is no column of {_rules.OneOfWhat}.", $"Add {string.Join(" or ", _rules.OneOf)}.");
    }
}
