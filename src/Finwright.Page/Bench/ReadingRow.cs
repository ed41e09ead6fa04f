using Finwright.Design;
using Finwright.Numerics;
using Finwright.Page.Fields;
using Finwright.Page.Words;
using Finwright.Strength.Files;
using Finwright.Workshop.Reviewing;

namespace Finwright.Page.Bench;

/// <summary>How a reading stands to what was predicted.</summary>
public enum ReadingState
{
    /// <summary>Nothing was read, or nothing predicted.</summary>
    Open,

    /// <summary>Within the range.</summary>
    Fits,

    /// <summary>It moves less than the range allows.</summary>
    Stiffer,

    /// <summary>It moves more than the range allows: beyond the pass line.</summary>
    Weaker,
}

/// <summary>One place that is read, as it is typed: before, loaded, after.</summary>
public sealed class ReadingRow
{
    /// <summary>Names of the fields.</summary>
    public const string At = "at", Where = "where", Before = "before", Loaded = "loaded", After = "after";

    /// <summary>What is chosen for a twist in place of a place on the chord.</summary>
    public const string Turn = "turn";

    // What stays beyond this after the weight is off is more than reading it twice explains: judgement. Per cent of the movement, and mm or degrees.
    private const double StaysShare = 0.05, StaysAnyhow = 0.3;

    private static int Count;

    private readonly Reader _reader;

    /// <summary>A place.</summary>
    /// <param name="reader">The reader's words and units.</param>
    /// <param name="atMm">Depth below the hull, mm.</param>
    /// <param name="where">Where on the chord; null for the turn of the section.</param>
    public ReadingRow(Reader reader, double atMm, ChordPlace? where)
    {
        (_reader, Form) = (reader, new(reader));
        Form.Put(At, Math.Round(atMm, 1), "mm");
        Form[Where] = where?.ToString() ?? Turn;
    }

    /// <summary>Tells rows apart.</summary>
    public int Key { get; } = Interlocked.Increment(ref Count);

    /// <summary>What is typed.</summary>
    public TypedForm Form { get; }

    /// <summary>What is predicted, metres or radians; null when it is not known.</summary>
    public Ranged? Predicted { get; set; }

    /// <summary>Whether the turn of a section is read.</summary>
    public bool IsTurn => Form[Where] == Turn;

    /// <summary>Whether something was read.</summary>
    public bool IsRead => Form[Loaded].Trim().Length > 0;

    /// <summary>Unit in the store.</summary>
    public string Unit => IsTurn ? "°" : "mm";

    /// <summary>How far it moved, mm or degrees; null when it was not read.</summary>
    public double? Moved { get; private set; }

    /// <summary>What stayed after the weight was off, mm or degrees; null when that was not read.</summary>
    public double? Stayed { get; private set; }

    /// <summary>Whether more stayed than reading it twice explains.</summary>
    public bool DidNotComeBack => Stayed is double stayed && Moved is double moved && Math.Abs(stayed) > Math.Max(StaysAnyhow, StaysShare * Math.Abs(moved));

    /// <summary>Reads what was typed.</summary>
    /// <param name="load">The weight; null when it is not known yet.</param>
    /// <param name="line">Its number, from 1.</param>
    /// <returns>The reading, or the place alone when nothing was read yet; null when something is wrong.</returns>
    public BenchReadingLine? Line(HungWeight? load, int line)
    {
        Form.Judge();
        (Moved, Stayed) = (null, null);
        double? at = Form.Number(At, 0, 1000, "mm", isNeeded: true);
        double most = IsTurn ? 45 : 300;
        double before = Form.Number(Before, -10 * most, 10 * most, Unit) ?? 0;
        double? loaded = Form.Number(Loaded, -10 * most, 10 * most, Unit), after = Form.Number(After, -10 * most, 10 * most, Unit);
        if (loaded is double read && Form.IsSound)
        {
            if (Math.Abs(read - before) > most)
                Form.Refuse(Loaded, _reader["More than {0} from before: look at the sign and the unit.", _reader.Tongue.Number(most, 0) + " " + Unit]);
            else
                (Moved, Stayed) = (read - before, after - before);
        }

        if (load is not { } hung || at is not double depth || !Form.IsSound)
            return null;
        double value = Moved ?? 0, usual = IsTurn ? BenchReadings.UsualDegrees : BenchReadings.UsualMillimetres;
        ReadValue own = new(value, double.Hypot(usual, BenchReadings.UsualShare * value));
        ChordPlace place = IsTurn ? ChordPlace.MidChord : Enum.Parse<ChordPlace>(Form[Where]);
        return new(line, hung.MassKg, hung.AtMm, hung.AtChord, depth, place, IsTurn ? null : own, IsTurn ? own : null, "");
    }

    /// <summary>How the reading stands.</summary>
    public ReadingState State
    {
        get
        {
            if (Moved is not double moved || Predicted is not { } range)
                return ReadingState.Open;
            double unit = IsTurn ? 180 / Math.PI : 1e3, usual = IsTurn ? BenchReadings.UsualDegrees : BenchReadings.UsualMillimetres;
            ReviewLine against = new("", "", Unit, unit * range.Value, unit * range.Low, unit * range.High, moved, 2 * double.Hypot(usual, BenchReadings.UsualShare * moved), 1);
            return against.State switch
            {
                ReviewState.Within => ReadingState.Fits,
                ReviewState.Above => IsPassedAbove(range) ? ReadingState.Weaker : ReadingState.Stiffer,
                ReviewState.Below => IsPassedAbove(range) ? ReadingState.Stiffer : ReadingState.Weaker,
                _ => ReadingState.Open,
            };
        }
    }

    /// <summary>Whether the pass line is the upper end of the range: the one that a weaker fin would pass.</summary>
    public static bool IsPassedAbove(Ranged range) => Math.Abs(range.High) >= Math.Abs(range.Low);
}

/// <summary>The weight of a bench test.</summary>
/// <param name="MassKg">Mass, kg.</param>
/// <param name="AtMm">Where it hangs, mm below the hull.</param>
/// <param name="AtChord">Where along the chord.</param>
public sealed record HungWeight(double MassKg, double AtMm, ChordPlace AtChord);
