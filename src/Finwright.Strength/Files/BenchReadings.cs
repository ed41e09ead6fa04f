using System.Text;
using Finwright.Design;
using Finwright.Design.Tables;

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

    private const string Mass = "mass_kg", At = "at_mm", AtChord = "at_chord", ReadAt = "read_at_mm", ReadChord = "read_chord", Note = "note", Place = "place on the chord";
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

    private static readonly CsvRules Rules = new("readings of a bench", "reading", [Mass, At, AtChord, ReadAt, ReadChord, Deflection, DeflectionDeviation, Twist, TwistDeviation, Note], [Mass, At, AtChord], [Mass, At, AtChord, Deflection])
    {
        TooManyRemedy = "Take the mean of repeated readings.",
        NeededRemedy = "Add it: every weight needs its mass and the place where it hangs.",
        OneOf = [Deflection, Twist],
        OneOfWhat = "what was read",
    };

    /// <summary>Names of the columns that a file may have.</summary>
    public static IReadOnlyList<string> Columns => Rules.Columns;

    /// <summary>Reads a file of readings.</summary>
    /// <param name="stream">The file; read no farther than to its greatest size.</param>
    /// <returns>The readings, or everything that is wrong with the file.</returns>
    public static BenchReadingsContent Read(Stream stream) => Read(CsvTable.Read(stream, Rules));

    /// <summary>Reads a file of readings.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <returns>The readings, or everything that is wrong with the file.</returns>
    public static BenchReadingsContent Read(ReadOnlySpan<byte> utf8) => Read(CsvTable.Read(utf8, Rules));

    /// <summary>Writes readings; read back they are the same.</summary>
    /// <param name="lines">The readings, in their order.</param>
    /// <returns>The file's text.</returns>
    public static string Write(IReadOnlyList<BenchReadingLine> lines) => Write([new BenchReadingsBlock("", lines)]);

    /// <summary>Writes readings of several days, each under a comment.</summary>
    /// <param name="blocks">The days.</param>
    /// <returns>The file's text.</returns>
    public static string Write(IReadOnlyList<BenchReadingsBlock> blocks)
    {
        ArgumentNullException.ThrowIfNull(blocks);
        StringBuilder text = new(CsvText.Line(Columns));
        foreach (BenchReadingsBlock block in blocks)
        {
            if (block.Comment.Length > 0)
                text.Append("# ").Append(string.Concat(block.Comment.Select(sign => char.IsControl(sign) ? ' ' : sign))).Append('\n');
            foreach (BenchReadingLine line in block.Lines)
                text.Append(Line(line));
        }

        return text.ToString();
    }

    /// <summary>What is wrong with readings that came another way than through a file; null when nothing is.</summary>
    /// <param name="lines">The readings.</param>
    public static Finding? Problem(IReadOnlyList<BenchReadingLine> lines) => Read(Encoding.UTF8.GetBytes(Write(lines))).Findings is [var first, ..] ? first : null;

    private static string Line(BenchReadingLine line) => CsvText.Line(
        CsvText.Number(line.MassKg),
        CsvText.Number(line.AtMm),
        WordOf(line.AtChord),
        CsvText.Number(line.ReadAtMm),
        WordOf(line.ReadChord),
        CsvText.Number(line.DeflectionMm?.Value),
        CsvText.Number(line.DeflectionMm?.Deviation),
        CsvText.Number(line.TwistDegrees?.Value),
        CsvText.Number(line.TwistDegrees?.Deviation),
        CsvText.Words(line.Note));

    private static string WordOf(ChordPlace place) => Places.First(own => own.Value == place).Key;

    private static BenchReadingsContent Read(CsvTable table)
    {
        List<BenchReadingLine> readings = [];
        foreach (CsvRow row in table.Rows)
        {
            if (table.IsHopeless)
                break;
            if (Reading(row, table) is { } reading)
                readings.Add(reading);
        }

        return new(table.Findings.Count > 0 ? [] : readings, table.Findings);
    }

    private static BenchReadingLine? Reading(CsvRow row, CsvTable table)
    {
        int before = table.Findings.Count;
        double mass = Needed(Mass), at = Needed(At);
        ChordPlace atChord = row.NeededWord(AtChord, Places, Place);
        double readAt = Number(ReadAt) ?? at;
        ChordPlace readChord = row.Word(ReadChord, Places, Place) ?? atChord;
        double? deflection = Number(Deflection), deflectionDeviation = Number(DeflectionDeviation), twist = Number(Twist), twistDeviation = Number(TwistDeviation);
        if (table.Findings.Count == before && deflection is null && twist is null)
            table.Say(row.Line, "nothing-read", "line", "The line has neither a deflection nor a twist.", $"Give {Deflection} or {Twist}, or take the line away.");
        return table.Findings.Count > before
            ? null
            : new(row.Line, mass, at, atChord, readAt, readChord, Value(deflection, deflectionDeviation, UsualMillimetres), Value(twist, twistDeviation, UsualDegrees), row.Text(Note));

        double Needed(string column) => row.NeededNumber(column, Numbers[column].Least, Numbers[column].Greatest);

        double? Number(string column) => row.Number(column, Numbers[column].Least, Numbers[column].Greatest);
    }

    private static ReadValue? Value(double? value, double? deviation, double usual) =>
        value is double read ? new(read, deviation ?? Math.Sqrt(usual * usual + UsualShare * UsualShare * read * read)) : null;
}

/// <summary>Readings under a comment of their own.</summary>
/// <param name="Comment">The comment; empty for none.</param>
/// <param name="Lines">The readings.</param>
public sealed record BenchReadingsBlock(string Comment, IReadOnlyList<BenchReadingLine> Lines);
