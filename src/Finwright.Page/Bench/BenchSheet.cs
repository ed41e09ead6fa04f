using Finwright.Design;
using Finwright.Page.Fields;
using Finwright.Page.Words;
using Finwright.Strength.Files;
using Finwright.Workshop.Bench;

namespace Finwright.Page.Bench;

/// <summary>Readings of one bench test as they are typed: the weight, the places, the day.</summary>
public sealed class BenchSheet
{
    /// <summary>Names of the fields beside the rows.</summary>
    public const string Mass = "mass", At = "hung-at", AtChord = "hung-where", Hold = "hold", Day = "day", Note = "note";

    private const int LongestNote = 2000;

    // Where no span is known yet, a usual one stands in for the places to read.
    private const double UsualSpanMm = 300;

    private readonly Reader _reader;

    /// <summary>A sheet with the places that the papers name.</summary>
    /// <param name="reader">The reader's words and units.</param>
    /// <param name="design">The design: its weight and hold come first.</param>
    /// <param name="spanMm">Depth of the tip, mm; null when it is not known.</param>
    /// <param name="today">The day.</param>
    public BenchSheet(Reader reader, FinDesign design, double? spanMm, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(design);
        (_reader, Head, Today) = (reader, new(reader), today);
        double span = spanMm ?? UsualSpanMm, at = Math.Round(design.Prove.AtSpanPercent / 100 * span);
        Head.Put(Mass, design.Prove.MassKg, "kg");
        Head.Put(At, at, "mm");
        Head[AtChord] = design.Prove.AtChord.ToString();
        Head[Hold] = design.Base.RootHold.ToString();
        Head.Put(Day, today);
        Rows =
        [
            new(reader, at, ChordPlace.MidChord),
            new(reader, span, ChordPlace.LeadingEdge),
            new(reader, span, ChordPlace.MidChord),
            new(reader, span, ChordPlace.TrailingEdge),
            new(reader, span, null),
        ];
    }

    /// <summary>The weight, the hold, the day, the note.</summary>
    public TypedForm Head { get; }

    /// <summary>The places.</summary>
    public IList<ReadingRow> Rows { get; }

    /// <summary>What is wrong as a whole; null when nothing is.</summary>
    public string? Problem { get; private set; }

    /// <summary>How the root is held.</summary>
    public RootHold RootHold => Enum.TryParse(Head[Hold], out RootHold hold) ? hold : RootHold.Joint;

    private DateOnly Today { get; }

    /// <summary>The places with what was read, as far as they can be understood.</summary>
    /// <param name="spanMm">Depth of the tip, mm.</param>
    /// <returns>One entry a row; null where something is wrong.</returns>
    public IReadOnlyList<BenchReadingLine?> Lines(double? spanMm)
    {
        Head.Judge();
        Problem = null;
        double? mass = Head.Number(Mass, 0.2, 80, "kg", isNeeded: true), at = Head.Number(At, 1, spanMm ?? 1000, "mm", isNeeded: true);
        HungWeight? load = mass is double kg && at is double mm ? new(kg, mm, Enum.TryParse(Head[AtChord], out ChordPlace place) ? place : ChordPlace.MidChord) : null;
        return
        [
            .. Rows.Select((row, i) =>
            {
                BenchReadingLine? line = row.Line(load, i + 1);
                if (line is null || spanMm is not double span || !line.Beyond(1e-3 * span).Any())
                    return line;
                row.Form.Refuse(ReadingRow.At, _reader["Beyond the tip, which is {0} below the hull.", _reader.Tongue.Length(1e-3 * span)]);
                return null;
            }),
        ];
    }

    /// <summary>The readings, ready to be kept.</summary>
    /// <param name="build">Number of the build.</param>
    /// <param name="spanMm">Depth of the tip, mm.</param>
    /// <returns>The session; null when something is wrong, which is said in its place.</returns>
    public BenchSession? ToKeep(long build, double? spanMm)
    {
        IReadOnlyList<BenchReadingLine?> lines = Lines(spanMm);
        DateOnly? day = Head.Day(Day, Today, isNeeded: true);
        string note = Head.Text(Note, LongestNote);
        if (!Head.IsSound || Rows.Any(row => !row.Form.IsSound))
        {
            Problem = _reader["Something is wrong above. Nothing was kept yet, and nothing is lost."];
            return null;
        }

        BenchReadingLine[] read = [.. lines.Where((_, i) => Rows[i].IsRead).Select((line, i) => line! with { Line = i + 1 })];
        if (read.Length == 0)
        {
            Problem = _reader["Nothing was read yet: type what one place shows under the weight."];
            return null;
        }

        if (BenchReadings.Problem(read) is { } wrong)
        {
            Problem = $"{_reader[wrong.Message]} {_reader[wrong.Remedy]}";
            return null;
        }

        return new(0, build, day!.Value, RootHold, note, read);
    }

    /// <summary>Reads a place once more: a further row without a reading.</summary>
    public void Repeat(ReadingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        ReadingRow again = new(_reader, 0, ChordPlace.MidChord) { Predicted = row.Predicted };
        again.Form[ReadingRow.At] = row.Form[ReadingRow.At];
        again.Form[ReadingRow.Where] = row.Form[ReadingRow.Where];
        Rows.Insert(Rows.IndexOf(row) + 1, again);
    }

    /// <summary>After keeping: the places stay, what was read goes.</summary>
    public void Clear()
    {
        foreach (ReadingRow row in Rows)
        {
            row.Form[ReadingRow.Before] = row.Form[ReadingRow.Loaded] = row.Form[ReadingRow.After] = "";
            row.Form.Judge();
        }

        Head[Note] = "";
    }
}
