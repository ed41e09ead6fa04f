using System.Globalization;
using Finwright.Design;
using MathNet.Numerics.Distributions;

namespace Finwright.Workshop.Tracks;

/// <summary>Whether one fin was faster than another, said only as far as the runs prove it.</summary>
/// <remarks>
/// Runs are compared with the same sail and in wind bands that overlap. Days on which both fins were sailed come first: the difference is taken within each day and averaged, with weights nₐn_b/(nₐ + n_b).
/// Its variance is that of the means (B. L. Welch, 1947, The generalization of "Student's" problem when several different population variances are involved, Biometrika 34, 28-35), with degrees of freedom
/// after F. E. Satterthwaite, 1946, An approximate distribution of estimates of variance components, Biometrics Bulletin 2, 110-114; when the days disagree by more than their runs explain, their spread is added
/// (R. DerSimonian, N. Laird, 1986, Meta-analysis in clinical trials, Controlled Clinical Trials 7, 177-188). Without such days the means of days are compared by Student's t with their pooled spread.
/// A difference below <see cref="Floor"/> is never called proven. Limits: runs of one day are not quite independent of each other, which makes the interval somewhat too narrow; sail them alternating. When the difference itself changes with the day by 0.6 m/s,
/// equal fins are told apart 13 times in a hundred on two days and 9 times on three to five (made cases of ten runs each): few days show little of that.
/// </remarks>
public sealed record FairComparison
{
    /// <summary>What receivers can prove at best, m/s: half a knot. Common practice, no source.</summary>
    public const double SmallestFloor = 0.5 * SpeedUnits.Knot;

    /// <summary>Fewest runs of each fin for a comparison. Judgement.</summary>
    public const int FewestRuns = 3;

    /// <summary>Runs of each fin below which a caution is given. Common practice, no source.</summary>
    public const int GoodRuns = 10;

    /// <summary>Days together below which a caution is given: from fewer, nobody knows how much the difference itself changes with the day. Judgement.</summary>
    public const int GoodDays = 3;

    private const double Confidence = 0.95;

    /// <summary>What it comes to.</summary>
    public required FairVerdict Verdict { get; init; }

    /// <summary>How days were handled.</summary>
    public required DayHandling Days { get; init; }

    /// <summary>The first fin's compared runs.</summary>
    public required FairSide First { get; init; }

    /// <summary>The second fin's compared runs.</summary>
    public required FairSide Second { get; init; }

    /// <summary>By how much the first is faster, m/s, days handled; null when nothing was compared.</summary>
    public double? Difference { get; init; }

    /// <summary>Lower end of the interval that holds the difference with 95 %, m/s.</summary>
    public double? Low { get; init; }

    /// <summary>Upper end of the same, m/s.</summary>
    public double? High { get; init; }

    /// <summary>Degrees of freedom of the interval.</summary>
    public double? Freedom { get; init; }

    /// <summary>Smallest difference that is called proven, m/s: <see cref="SmallestFloor"/>, or the usual error of one run's 10 s where that is greater.</summary>
    public double Floor { get; init; } = SmallestFloor;

    /// <summary>Why it is not comparable, or what to take care of.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Compares.</summary>
    /// <param name="first">Runs of the first fin.</param>
    /// <param name="second">Runs of the second fin.</param>
    /// <exception cref="ArgumentException">A speed or error is no number.</exception>
    public static FairComparison Of(IReadOnlyList<ComparedRun> first, IReadOnlyList<ComparedRun> second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ThrowIfUnsound(first, nameof(first));
        ThrowIfUnsound(second, nameof(second));
        ComparedRun[] a = Alike(first, second), b = Alike(second, first);
        // Within days both fins meet the same sail and wind on that day, or the day does not count.
        List<DayBlock> together = DayBlock.Together(a, b);
        int togetherA = together.Sum(block => block.First.Length), togetherB = together.Sum(block => block.Second.Length);
        if (togetherA >= FewestRuns && togetherB >= FewestRuns)
            return Judge(DayStatistics.Within(together), DayHandling.WithinDays, first, second, [.. together.SelectMany(block => block.First)], [.. together.SelectMany(block => block.Second)]);
        if (a.Length < FewestRuns || b.Length < FewestRuns)
            return NotComparable(first, second, a, b, TooFew(first, second, a, b));
        DayDifference? between = DayStatistics.Between(a, b);
        return between is null
            ? NotComparable(first, second, a, b, new("comparison-fin-or-day", Severity.Error, "outings", "The fins were never sailed enough on the same day, and too few days were sailed to know how much days differ: the fin cannot be told from the day.", "Sail both fins on one day, changing after every few runs."))
            : Judge(between, DayHandling.BetweenDays, first, second, a, b);
    }

    /// <summary>What it comes to, in a sentence.</summary>
    /// <param name="first">Name of the first fin.</param>
    /// <param name="second">Name of the second fin.</param>
    public string Sentence(string first, string second)
    {
        if (this is not { Difference: double difference, Low: double low, High: double high })
            return $"{first} and {second} are not comparable. {string.Join(' ', Findings.Where(finding => finding.IsError).Select(finding => finding.Message))}".TrimEnd();
        if (Verdict == FairVerdict.CannotTell)
        {
            string why = low <= 0 && high >= 0 ? "zero lies within the range" : $"less than {Knots(Floor)} knots is not provable";
            return $"{first} and {second} cannot be told apart: {first} less {second} is {Knots(difference)} knots, within {Knots(low)} to {Knots(high)} knots with 95 % certainty, and {why}.";
        }

        bool isFirst = Verdict == FairVerdict.FirstFaster;
        (double least, double most) = isFirst ? (low, high) : (-high, -low);
        return $"{(isFirst ? first : second)} is faster than {(isFirst ? second : first)} by {Knots(least)} to {Knots(most)} knots ({least:0.00} to {most:0.00} m/s) with 95 % certainty.";
    }

    private static string Knots(double speed) => (speed / SpeedUnits.Knot).ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>Whether the sails are the same and the wind bands share half of the narrower one.</summary>
    internal static bool IsAlike(ComparedRun a, ComparedRun b)
    {
        if (a is not { Sail: double sailA, WindLow: double lowA, WindHigh: double highA } || b is not { Sail: double sailB, WindLow: double lowB, WindHigh: double highB })
            return false;
        double common = Math.Min(highA, highB) - Math.Max(lowA, lowB), narrower = Math.Min(highA - lowA, highB - lowB);
        return sailA.Equals(sailB) && common >= 0 && common >= narrower / 2;
    }

    private static void ThrowIfUnsound(IReadOnlyList<ComparedRun> runs, string name)
    {
        if (runs.Any(run => !double.IsFinite(run.Speed) || !double.IsFinite(run.Error)))
            throw new ArgumentException("A run has a speed or an error that is no number.", name);
    }

    private static ComparedRun[] Alike(IReadOnlyList<ComparedRun> runs, IReadOnlyList<ComparedRun> others) => [.. runs.Where(run => others.Any(other => IsAlike(run, other)))];

    private static FairComparison Judge(DayDifference found, DayHandling handling, IReadOnlyList<ComparedRun> first, IReadOnlyList<ComparedRun> second, ComparedRun[] a, ComparedRun[] b)
    {
        double half = found.Deviation * (found.Deviation > 0 ? StudentT.InvCDF(0, 1, Math.Max(1, found.Freedom), (1 + Confidence) / 2) : 0);
        double floor = Math.Max(SmallestFloor, Math.Max(a.Average(run => run.Error), b.Average(run => run.Error)));
        double low = found.Difference - half, high = found.Difference + half;
        FairVerdict verdict = Math.Abs(found.Difference) < floor || (low <= 0 && high >= 0) ? FairVerdict.CannotTell : found.Difference > 0 ? FairVerdict.FirstFaster : FairVerdict.SecondFaster;
        List<Finding> findings = [];
        if (a.Length < GoodRuns || b.Length < GoodRuns)
            findings.Add(new("comparison-few-runs", Severity.Caution, "outings", $"Only {a.Length} and {b.Length} runs were compared; {GoodRuns} of each are wanted before a difference is believed.", "Sail more runs with both fins, alternating, with the same sail on the same course."));
        if (handling == DayHandling.BetweenDays)
            findings.Add(new("comparison-other-days", Severity.Caution, "outings", "The fins were not sailed enough on the same days; how much days differ is in the range, and makes it wide.", "Sail both fins on one day, changing after every few runs."));
        if (handling == DayHandling.WithinDays && DaysOf(a) is int days and < GoodDays)
            findings.Add(new("comparison-few-days", Severity.Caution, "outings", $"The fins met on {(days == 1 ? "one day" : $"{days} days")} only. A fin may suit one day's water better than another's; that is not in the range.", $"Sail both on {GoodDays} days or more before you believe it of all days."));
        if (found.HasUnevenDays)
            findings.Add(new("comparison-uneven-days", Severity.Note, "outings", "The difference changes from day to day by more than the runs' spread explains; the range includes it.", "Look for what changed with the days: course, water, trim."));
        return new()
        {
            Verdict = verdict,
            Days = handling,
            First = Side(first, a),
            Second = Side(second, b),
            Difference = found.Difference,
            Low = low,
            High = high,
            Freedom = found.Freedom,
            Floor = floor,
            Findings = findings,
        };
    }

    private static FairComparison NotComparable(IReadOnlyList<ComparedRun> first, IReadOnlyList<ComparedRun> second, ComparedRun[] a, ComparedRun[] b, Finding reason) => new()
    {
        Verdict = FairVerdict.NotComparable,
        Days = DayHandling.None,
        First = Side(first, a),
        Second = Side(second, b),
        Findings = [reason],
    };

    private static Finding TooFew(IReadOnlyList<ComparedRun> first, IReadOnlyList<ComparedRun> second, ComparedRun[] a, ComparedRun[] b)
    {
        if (first.Count < FewestRuns || second.Count < FewestRuns)
            return new("comparison-too-few-runs", Severity.Error, "outings", $"There are {first.Count} and {second.Count} runs of 10 s; at least {FewestRuns} of each are needed to say anything, {GoodRuns} to believe it.", "Sail more runs and keep their tracks.");
        string unknown = first.Concat(second).Any(run => run.SailArea is null || run.WindLow is null || run.WindHigh is null) ? " Some outings do not say their sail or their wind." : "";
        return new("comparison-nothing-alike", Severity.Error, "outings", $"Only {a.Length} and {b.Length} runs were sailed with the same sail in the same wind; at least {FewestRuns} of each are needed.{unknown}", "Sail both fins with the same sail in the same wind, and write both down.");
    }

    private static int DaysOf(ComparedRun[] runs) => runs.Select(run => run.Day).Distinct().Count();

    private static FairSide Side(IReadOnlyList<ComparedRun> all, ComparedRun[] runs)
    {
        double[] speeds = [.. runs.Select(run => run.Speed)];
        (double mean, double deviation) = DayStatistics.MeanAndDeviation(speeds);
        return new(runs.Length, DaysOf(runs), mean, deviation, all.Count - runs.Length);
    }
}
