using System.Globalization;

namespace Finwright.Design.Tables;

/// <summary>One row of a table; what does not fit is told to the table, with line and column.</summary>
public sealed class CsvRow
{
    private readonly CsvTable _table;
    private readonly List<string> _cells;

    internal CsvRow(CsvTable table, int line, List<string> cells) => (_table, Line, _cells) = (table, line, cells);

    /// <summary>Its line in the file, from 1.</summary>
    public int Line { get; }

    /// <summary>A person's words as they were; empty when there are none.</summary>
    public string Text(string column) => CsvText.Unguarded(Cell(column));

    /// <summary>Words that must be there.</summary>
    public string NeededText(string column)
    {
        string text = Text(column);
        if (string.IsNullOrWhiteSpace(text))
            Say(column, "missing-text", "is empty", "Fill it in.");
        return text;
    }

    /// <summary>A number within its range; null when there is none.</summary>
    public double? Number(string column, double least, double greatest)
    {
        string text = Cell(column).Trim();
        if (text.Length == 0)
            return null;
        string plain = _table.Separator == ',' ? text : text.Replace(',', '.');
        if (!double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) || !double.IsFinite(value))
        {
            Say(column, "not-a-number", $"is \"{CsvTable.Short(text)}\", which is no number", "Give a plain number, without its unit and without separators of thousands.");
            return null;
        }

        if (value >= least && value <= greatest)
            return value;
        Say(column, "out-of-range", $"is {CsvTable.Short(text)}, outside {least} to {greatest}", "Check the unit, and the place of the decimal point.");
        return null;
    }

    /// <summary>A number that must be there.</summary>
    public double NeededNumber(string column, double least, double greatest)
    {
        if (Cell(column).Trim().Length == 0)
            Say(column, "missing-number", "is empty", "Give the number.");
        return Number(column, least, greatest) ?? 0;
    }

    /// <summary>A whole number within its range; null when there is none.</summary>
    public int? Whole(string column, int least, int greatest)
    {
        if (Number(column, least, greatest) is not double value)
            return null;
        if (value == Math.Floor(value))
            return (int)value;
        Say(column, "not-whole", $"is {value}, which is no whole number", "Give a whole number.");
        return null;
    }

    /// <summary>A day; null when there is none.</summary>
    public DateOnly? Day(string column)
    {
        string text = Cell(column).Trim();
        if (text.Length == 0)
            return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day))
            return day;
        Say(column, "not-a-day", $"is \"{CsvTable.Short(text)}\", which is no day", "Write it with the year first, for example 2027-05-31.");
        return null;
    }

    /// <summary>A day that must be there.</summary>
    public DateOnly NeededDay(string column)
    {
        if (Cell(column).Trim().Length == 0)
            Say(column, "missing-day", "is empty", "Give the day, for example 2027-05-31.");
        return Day(column) ?? default;
    }

    /// <summary>One of several words, whatever the capitals; null when there is none.</summary>
    /// <param name="column">The column.</param>
    /// <param name="words">The words with what they mean.</param>
    /// <param name="what">What they are: "place on the chord".</param>
    public T? Word<T>(string column, IReadOnlyDictionary<string, T> words, string what)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(words);
        string text = Cell(column).Trim();
        if (text.Length == 0)
            return null;
        if (words.TryGetValue(text.ToLowerInvariant(), out T value))
            return value;
        Say(column, "unknown-word", $"is \"{CsvTable.Short(text)}\", which is no {what}", $"Give one of {string.Join(", ", words.Keys)}.");
        return null;
    }

    /// <summary>One of several words that must be there.</summary>
    /// <inheritdoc cref="Word{T}"/>
    public T NeededWord<T>(string column, IReadOnlyDictionary<string, T> words, string what)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(words);
        if (Cell(column).Trim().Length == 0)
            Say(column, "missing-word", "is empty", $"Give one of {string.Join(", ", words.Keys)}.");
        return Word(column, words, what) ?? default;
    }

    /// <summary>Notes that a cell is wrong.</summary>
    /// <param name="column">Its column.</param>
    /// <param name="code">Kebab-case name of what is wrong.</param>
    /// <param name="what">What is wrong, continuing "Column 3, place, ...".</param>
    /// <param name="remedy">What to do.</param>
    public void Say(string column, string code, string what, string remedy) => _table.Say(Line, code, column, $"Column {_table.IndexOf(column) + 1}, {column}, {what}.", remedy);

    private string Cell(string column)
    {
        int at = _table.IndexOf(column);
        return at < 0 || at >= _cells.Count ? "" : _cells[at];
    }
}
