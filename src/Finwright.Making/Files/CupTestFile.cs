using System.Globalization;
using Finwright.Design;
using Finwright.Design.Tables;
using Finwright.Making.Resins;

namespace Finwright.Making.Files;

/// <summary>
/// Cup tests as CSV: lines <c>mass_g</c>, <c>room_celsius</c> and <c>cup_diameter_mm</c> with their number, then rows of minutes and degrees. Cells are parted by
/// commas, semicolons or tabs; with semicolons or tabs a decimal comma is read too. Lines that begin with # are comments; a heading <c>minutes, celsius</c> may stand above the rows.
/// </summary>
public static class CupTestFile
{
    private const int LargestFile = 2 * 1024 * 1024, MostReadings = 50_000, MostFindings = 20, FewestReadings = 5, LongestCell = 200;

    // Resin is warmed to thin it, but nobody mixes it at the heat of boiling water.
    private const double Zero = 273.15, HottestBeginning = 100;

    private static readonly Dictionary<string, (double Least, double Greatest, string Meaning)> Keys = new(StringComparer.OrdinalIgnoreCase)
    {
        ["mass_g"] = (5, 20_000, "mass of the mix"),
        ["room_celsius"] = (-5, 50, "temperature of the room"),
        ["cup_diameter_mm"] = (10, 500, "inner diameter of the cup"),
    };

    /// <summary>Reads a cup test.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <returns>The test, or everything that is wrong with the file.</returns>
    public static CupTestReading Read(ReadOnlySpan<byte> utf8) =>
        CsvLines.Decode(utf8, LargestFile, "readings of a cup", out Finding? problem) is string text ? new Parser().Read(text) : new(null, [problem!]);

    private sealed class Parser
    {
        private readonly List<Finding> _findings = [];
        private readonly Dictionary<string, double> _given = new(StringComparer.OrdinalIgnoreCase);
        private readonly List<CupReading> _readings = [];
        private int _line;
        private double _lastMinutes = double.NegativeInfinity;

        public CupTestReading Read(string text)
        {
            foreach (CsvLine line in CsvLines.Read(text, LongestCell, _findings.Add))
            {
                _line = line.Number;
                if (line.Cells.Any(cell => cell.Length > 0))
                    Line(line);
                if (_findings.Count >= MostFindings || _readings.Count > MostReadings)
                    break;
            }

            _line = 0;
            foreach ((string key, (_, _, string meaning)) in Keys.Where(k => !_given.ContainsKey(k.Key)))
                Report("missing-field", $"\"{key}\" is not given: {meaning}.", $"Write a line: {key}, and its number.");
            if (_readings.Count > MostReadings)
                Report("too-many-readings", $"The file has more than {MostReadings} readings.", "One a minute is plenty.");
            else if (_readings.Count < FewestReadings && _findings.Count < MostFindings)
                Report("too-few-readings", $"The file has {_readings.Count} readings; nothing can be learned from fewer than {FewestReadings}.", "Give rows of minutes and degrees from mixing until it cools again.");
            else if (_readings.Count > 0 && _readings[0].Temperature > HottestBeginning + Zero)
                Report("hot-beginning", Text($"The first reading is {_readings[0].Temperature - Zero:0.#} °C; a test begins when the mix is fresh, at {HottestBeginning} °C at most."), "Give the readings from mixing on.");
            return _findings.Count > 0 ? new(null, _findings) : new(new(_given["mass_g"] * 1e-3, _given["room_celsius"] + Zero, _given["cup_diameter_mm"] * 1e-3, _readings), []);
        }

        private void Line(CsvLine line)
        {
            string[] cells = [.. line.Cells.Select(cell => cell.Trim())];
            // Empty cells behind are what spreadsheets leave.
            int count = cells.Length;
            while (count > 2 && cells[count - 1].Length is 0)
                count--;
            if (count is not 2)
            {
                Report("not-two-cells", $"The line has {count} cells; two are meant: a name and its number, or minutes and degrees.", "Part them by a comma, a semicolon or a tab, and write decimals with a point (or, with semicolons, a comma).");
                return;
            }

            bool comma = line.Separator is not ',';
            if (Keys.TryGetValue(cells[0], out (double Least, double Greatest, string Meaning) limits))
                Given(cells[0].ToLowerInvariant(), cells[1], comma, limits);
            else if (Number(cells[0], comma) is double minutes)
                Row(minutes, cells[1], comma);
            else if (!(_readings.Count is 0 && cells[0].Equals("minutes", StringComparison.OrdinalIgnoreCase) && cells[1].Equals("celsius", StringComparison.OrdinalIgnoreCase)))
                Report("unknown-field", $"\"{Shown(cells[0])}\" is neither a name nor a number of minutes.", $"Known here: {string.Join(", ", Keys.Keys)}.");
        }

        private void Given(string key, string cell, bool comma, (double Least, double Greatest, string Meaning) limits)
        {
            if (Number(cell, comma) is not double number)
                Report("wrong-type", $"\"{Shown(cell)}\" is no number for {key}.", "Write the number without its unit.");
            else if (!(number >= limits.Least && number <= limits.Greatest))
                Report("out-of-range", Text($"{number} cannot be meant for {key}: it must lie between {limits.Least} and {limits.Greatest}."), "Check the number and the unit in the field's name.");
            else if (!_given.TryAdd(key, number))
                Report("duplicate-field", $"\"{key}\" stands here a second time; only one of them can count.", "Take one of them out.");
        }

        private void Row(double minutes, string cell, bool comma)
        {
            if (Number(cell, comma) is not double celsius)
            {
                Report("wrong-type", $"\"{Shown(cell)}\" is no temperature.", "Write degrees Celsius without the unit; leave out rows without a reading.");
                return;
            }

            if (minutes is < 0 or > 14_400)
                Report("out-of-range", Text($"{minutes} minutes cannot be meant: from 0 at mixing to 14400, ten days."), "Check the column's unit.");
            else if (minutes <= _lastMinutes)
                Report("time-order", Text($"{minutes} minutes do not come after {_lastMinutes}."), "Put the rows in the order of time, one a time.");
            else if (celsius is < -20 or > 400)
                Report("out-of-range", Text($"{celsius} °C cannot be meant: it must lie between -20 and 400."), "Check the column's unit.");
            else
                _readings.Add(new(minutes * 60, celsius + Zero));
            _lastMinutes = Math.Max(_lastMinutes, minutes);
        }

        private static double? Number(string cell, bool comma)
        {
            string text = comma && cell.Count(c => c is ',') is 1 && !cell.Contains('.', StringComparison.Ordinal) ? cell.Replace(',', '.') : cell;
            return double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : null;
        }

        private void Report(string code, string message, string remedy) =>
            _findings.Add(new(code, Severity.Error, _line > 0 ? $"line {_line}" : "file", message, remedy) { Line = _line > 0 ? _line : null });

        private static string Shown(string text) => text.Length > 40 ? text[..40] + "…" : text;

        private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
    }
}

/// <summary>What came of reading a cup test.</summary>
/// <param name="Test">The test; null when anything was wrong.</param>
/// <param name="Findings">Everything found.</param>
public sealed record CupTestReading(CupTest? Test, IReadOnlyList<Finding> Findings);
