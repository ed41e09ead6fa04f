using System.Globalization;
using System.Text;
using Finwright.Design;
using Finwright.Design.Reading;

namespace Finwright.Strength.Files;

/// <summary>
/// Readings of the bench, <c>*.readings.csv</c>: one line a hung weight and what was read under it, columns named in the first line, the unit in the name.
/// Columns are separated by commas, semicolons or tabs; with the latter two a decimal comma is read too. The reader is strict, so that no reading goes astray.
/// </summary>
public static class BenchReadings
{
    /// <summary>What a deflection may be off when its column says nothing: this share of it, and <see cref="UsualMillimetres"/> (judgement).</summary>
    public const double UsualShare = 0.02;

    /// <summary>What a deflection may be off besides, mm: a dial gauge with its stand (judgement).</summary>
    public const double UsualMillimetres = 0.1;

    /// <summary>What a twist may be off besides <see cref="UsualShare"/>, degrees: an electronic level put on by hand (judgement).</summary>
    public const double UsualDegrees = 0.1;

    // A reading needs some 60 characters.
    private const int LargestFile = 512 * 1024, MostReadings = 2000, MostFindings = 20, LongestCell = 200;

    private const string Mass = "mass_kg", At = "at_mm", AtChord = "at_chord", ReadAt = "read_at_mm", ReadChord = "read_chord", Note = "note";
    private const string Deflection = "deflection_mm", DeflectionDeviation = "deflection_deviation_mm", Twist = "twist_degrees", TwistDeviation = "twist_deviation_degrees";

    private static readonly Dictionary<string, (double Least, double Greatest)> Numbers = new(StringComparer.Ordinal)
    {
        [Mass] = (0.2, 80),
        [At] = (1, 1000),
        [ReadAt] = (0, 1000),
        [Deflection] = (-300, 300),
        [DeflectionDeviation] = (0.001, 50),
        [Twist] = (-45, 45),
        [TwistDeviation] = (0.001, 20),
    };

    private static readonly Dictionary<string, ChordPlace> Places = new(StringComparer.Ordinal)
    {
        ["leading-edge"] = ChordPlace.LeadingEdge,
        ["mid-chord"] = ChordPlace.MidChord,
        ["trailing-edge"] = ChordPlace.TrailingEdge,
    };

    /// <summary>Names of the columns that a file may have.</summary>
    public static IReadOnlyList<string> Columns { get; } = [Mass, At, AtChord, ReadAt, ReadChord, Deflection, DeflectionDeviation, Twist, TwistDeviation, Note];

    /// <summary>Reads a file of readings.</summary>
    /// <param name="stream">The file; read no farther than to its greatest size.</param>
    /// <returns>The readings, or everything that is wrong with the file.</returns>
    public static BenchReadingsContent Read(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        byte[] bytes = new byte[LargestFile + 1];
        return Read(bytes.AsSpan(0, stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)));
    }

    /// <summary>Reads a file of readings.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <returns>The readings, or everything that is wrong with the file.</returns>
    public static BenchReadingsContent Read(ReadOnlySpan<byte> utf8)
    {
        if (utf8.Length > LargestFile)
            return Refused(new("too-large", Severity.Error, "file", $"The file is larger than {LargestFile / 1024} kB; readings of a bench need a few.", "Check that it is the file of readings."));
        if (utf8 is [0xEF, 0xBB, 0xBF, ..])
            utf8 = utf8[3..];
        string text;
        try
        {
            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(utf8);
        }
        catch (DecoderFallbackException)
        {
            return Refused(new("not-text", Severity.Error, "file", "The file is no text in UTF-8.", "Save the table as CSV in UTF-8."));
        }

        return text.Any(sign => char.IsControl(sign) && sign is not ('\t' or '\n' or '\r'))
            ? Refused(new("not-text", Severity.Error, "file", "The file holds signs that no text has.", "Save the table as CSV in UTF-8."))
            : new Run().Read(text);
    }

    private static BenchReadingsContent Refused(Finding finding) => new([], [finding]);

    /// <summary>One reading of one file.</summary>
    private sealed class Run
    {
        private readonly List<Finding> _findings = [];
        private string[] _header = [];
        private string[] _cells = [];
        private char _separator;
        private int _line;

        public BenchReadingsContent Read(string text)
        {
            List<BenchReadingLine> readings = [];
            foreach (string line in text.ReplaceLineEndings("\n").Split('\n'))
            {
                _line++;
                if (string.IsNullOrWhiteSpace(line) || line.TrimStart()[0] == '#')
                    continue;
                if (_header.Length == 0)
                {
                    ReadHeader(line);
                    if (_findings.Count > 0)
                        break;
                }
                else if (Cells(line) is { } cells && Array.Exists(cells, cell => cell.Length > 0) && Row(cells) is { } reading)
                {
                    readings.Add(reading);
                }

                if (readings.Count > MostReadings)
                    Say("too-many", "file", $"There are more than {MostReadings} readings.", "Take the mean of repeated readings.");
                if (_findings.Count >= MostFindings || readings.Count > MostReadings)
                    break;
            }

            if (_findings.Count == 0 && readings.Count == 0)
            {
                _line = 0;
                Say("no-readings", "file", "There is no reading in the file.", $"Begin with a line of column names ({string.Join(", ", Mass, At, AtChord, Deflection)}), then one line a reading.");
            }

            return new(_findings.Count > 0 ? [] : readings, _findings);
        }

        private void ReadHeader(string line)
        {
            _separator = line.Contains(';', StringComparison.Ordinal) ? ';' : line.Contains('\t', StringComparison.Ordinal) ? '\t' : ',';
            if (Cells(line) is not { } cells)
                return;
            _header = [.. cells.Select(cell => cell.ToLowerInvariant())];
            for (int i = 0; i < _header.Length; i++)
            {
                string name = _header[i];
                if (name.Length == 0)
                    Say("no-name", "header", $"Column {i + 1} has no name.", "Name it, or take it away.");
                else if (!Columns.Contains(name, StringComparer.Ordinal))
                    Say("unknown-column", "header", $"Column {i + 1}, \"{Short(cells[i])}\", is none that is known{(NearestName.Among(name, Columns) is string near ? $"; perhaps \"{near}\" is meant" : "")}.", $"Columns: {string.Join(", ", Columns)}. Remarks go into \"{Note}\".");
                else if (Array.IndexOf(_header, name) < i)
                    Say("column-twice", "header", $"Column {i + 1}, \"{name}\", is there twice.", "Take one of them away.");
            }

            // A file of quite other things is told so once, not column by column.
            if (!_header.Any(name => Columns.Contains(name, StringComparer.Ordinal)))
            {
                _findings.Clear();
                Say("no-header", "header", "The first line does not name the columns.", $"Begin with a line of column names, for example {string.Join(',', Mass, At, AtChord, Deflection)}.");
                return;
            }

            foreach (string needed in (string[])[Mass, At, AtChord])
            {
                if (!_header.Contains(needed, StringComparer.Ordinal))
                    Say("column-missing", "header", $"The column \"{needed}\" is missing.", "Add it: every weight needs its mass and the place where it hangs.");
            }

            if (!_header.Contains(Deflection, StringComparer.Ordinal) && !_header.Contains(Twist, StringComparer.Ordinal))
                Say("column-missing", "header", "There is no column of what was read.", $"Add {Deflection}, {Twist}, or both.");
        }

        private BenchReadingLine? Row(string[] cells)
        {
            if (cells.Length > _header.Length && Array.Exists(cells[_header.Length..], cell => cell.Length > 0))
            {
                string why = _separator == ',' ? " With decimal commas, separate the columns by semicolons." : "";
                Say("too-many-cells", "line", $"The line has {cells.Length} cells, but there are {_header.Length} columns.{why}", "Put one value into each column, and a text with separators into quotes.");
                return null;
            }

            _cells = cells;
            int before = _findings.Count;
            double mass = Needed(Mass), at = Needed(At);
            ChordPlace atChord = Place(AtChord) ?? Missing(AtChord);
            double readAt = Number(ReadAt) ?? at;
            ChordPlace readChord = Place(ReadChord) ?? atChord;
            double? deflection = Number(Deflection), deflectionDeviation = Number(DeflectionDeviation), twist = Number(Twist), twistDeviation = Number(TwistDeviation);
            string note = Text(Note);
            if (_findings.Count == before && deflection is null && twist is null)
                Say("nothing-read", "line", "The line has neither a deflection nor a twist.", $"Give {Deflection} or {Twist}, or take the line away.");
            return _findings.Count > before
                ? null
                : new(_line, mass, at, atChord, readAt, readChord, Reading(deflection, deflectionDeviation, UsualMillimetres), Reading(twist, twistDeviation, UsualDegrees), note);
        }

        private static ReadValue? Reading(double? value, double? deviation, double usual) =>
            value is double read ? new(read, deviation ?? Math.Sqrt(usual * usual + UsualShare * UsualShare * read * read)) : null;

        private string Text(string column)
        {
            int at = Array.IndexOf(_header, column);
            return at < 0 || at >= _cells.Length ? "" : _cells[at];
        }

        private double Needed(string column)
        {
            if (Text(column).Length == 0)
                SayOf(column, "missing-number", "is empty", "Give the number.");
            return Number(column) ?? 0;
        }

        private double? Number(string column)
        {
            string text = Text(column);
            if (text.Length == 0)
                return null;
            string plain = _separator == ',' ? text : text.Replace(',', '.');
            if (!double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) || !double.IsFinite(value))
            {
                SayOf(column, "not-a-number", $"is \"{Short(text)}\", which is no number", "Give a plain number, without its unit and without separators of thousands.");
                return null;
            }

            (double least, double greatest) = Numbers[column];
            if (value >= least && value <= greatest)
                return value;
            SayOf(column, "out-of-range", $"is {Short(text)}, outside {least} to {greatest}", "Check the unit, and the place of the decimal point.");
            return null;
        }

        private ChordPlace? Place(string column)
        {
            string text = Text(column);
            if (text.Length == 0)
                return null;
            if (Places.TryGetValue(text.ToLowerInvariant(), out ChordPlace place))
                return place;
            SayOf(column, "unknown-place", $"is \"{Short(text)}\", which is no place on the chord", $"Give one of {string.Join(", ", Places.Keys)}.");
            return ChordPlace.MidChord;
        }

        private ChordPlace Missing(string column)
        {
            SayOf(column, "missing-place", "is empty", $"Give one of {string.Join(", ", Places.Keys)}.");
            return ChordPlace.MidChord;
        }

        // Cells between separators; one that begins with a quote ends with one, and holds a quote as two.
        private string[]? Cells(string line)
        {
            List<string> cells = [];
            int at = 0;
            while (true)
            {
                while (at < line.Length && line[at] == ' ')
                    at++;
                string cell;
                if (at < line.Length && line[at] == '"')
                {
                    StringBuilder quoted = new();
                    for (at++; ; at++)
                    {
                        if (at >= line.Length)
                        {
                            Say("open-quote", "line", $"The quote in cell {cells.Count + 1} does not end on its line.", "End it, or take the quotes away.");
                            return null;
                        }

                        if (line[at] != '"')
                            quoted.Append(line[at]);
                        else if (at + 1 < line.Length && line[at + 1] == '"')
                            quoted.Append(line[at++]);
                        else
                            break;
                    }

                    int end = line.IndexOf(_separator, at);
                    if (line[(at + 1)..(end < 0 ? line.Length : end)].Trim().Length > 0)
                    {
                        Say("after-quote", "line", $"Behind the quote in cell {cells.Count + 1} something else follows.", "Put the whole cell into quotes.");
                        return null;
                    }

                    (cell, at) = (quoted.ToString().Trim(), end);
                }
                else
                {
                    int end = line.IndexOf(_separator, at);
                    (cell, at) = (line[at..(end < 0 ? line.Length : end)].Trim(), end);
                }

                if (cell.Length > LongestCell)
                {
                    Say("too-long", "line", $"Cell {cells.Count + 1} has {cell.Length} characters; {LongestCell} are the most.", "Shorten it.");
                    return null;
                }

                cells.Add(cell);
                if (at < 0)
                    return [.. cells];
                at++;
            }
        }

        private void SayOf(string column, string code, string what, string remedy) => Say(code, column, $"Column {Array.IndexOf(_header, column) + 1}, {column}, {what}.", remedy);

        private void Say(string code, string place, string message, string remedy) =>
            _findings.Add(new(code, Severity.Error, place, message, remedy) { Line = _line > 0 ? _line : null });

        private static string Short(string text) => text.Length <= 40 ? text : string.Concat(text.AsSpan(0, 37), "...");
    }
}
