using Finwright.Design;

namespace Finwright.Workshop.Tracks;

/// <summary>What a track says about an outing: best speeds, runs, way and time. SI.</summary>
/// <remarks>
/// The measures sailors compare themselves by. 2 s, 10 s and 100 to 500 m lie within one run; the nautical mile and the hour may span turns, but no gap. For the five best 10 s each run counts once.
/// A piece goes from one recorded point to another: the shortest that reaches the time or the way.
/// </remarks>
public sealed record TrackMeasures
{
    /// <summary>Number of runs in the measure 5 x 10 s.</summary>
    public const int RunsOfFive = 5;

    /// <summary>A best 2 s this much above the best 10 s is doubted: an arm that swings or a fall shows so, a gust does not. Judgement.</summary>
    public const double GreatestPeakRatio = 1.25;

    private const double TwoSecondsLength = 2, TenSecondsLength = 10, HourLength = 3600;

    /// <summary>Where speeds and ways come from.</summary>
    public required SpeedSource Source { get; init; }

    /// <summary>The runs, in the order sailed.</summary>
    public required IReadOnlyList<SailedRun> Runs { get; init; }

    /// <summary>Best 2 s; null when no run lasts as long.</summary>
    public required BestSpeed? TwoSeconds { get; init; }

    /// <summary>Best 10 s; null when no run lasts as long.</summary>
    public required BestSpeed? TenSeconds { get; init; }

    /// <summary>Best 10 s of each run, the five best of them, fastest first; fewer when there are fewer runs.</summary>
    public required IReadOnlyList<BestSpeed> BestOfRuns { get; init; }

    /// <summary>Mean of the five best 10 s, m/s; null when fewer than five runs last 10 s.</summary>
    public required double? FiveTimesTen { get; init; }

    /// <summary>Best 100 m within a run; null when none is as long.</summary>
    public required BestSpeed? HundredMetres { get; init; }

    /// <summary>Best 250 m within a run; null when none is as long.</summary>
    public required BestSpeed? QuarterKilometre { get; init; }

    /// <summary>Best 500 m within a run; null when none is as long.</summary>
    public required BestSpeed? HalfKilometre { get; init; }

    /// <summary>Best nautical mile (1852 m), turns included; null when no stretch without a gap is as long.</summary>
    public required BestSpeed? NauticalMile { get; init; }

    /// <summary>Best hour, turns and pauses included; null when no stretch without a gap lasts as long.</summary>
    public required BestSpeed? Hour { get; init; }

    /// <summary>All the way sailed faster than 1 m/s, metres; gaps add nothing.</summary>
    public required double Distance { get; init; }

    /// <summary>Time sailed faster than 1 m/s, s; gaps add nothing.</summary>
    public required double TimeSailed { get; init; }

    /// <summary>When the first trusted point was recorded; not the start of the track when its clock was wrong at first.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>The day of the first trusted point, by the sun where it lies.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Time from the first trusted point to the last, s.</summary>
    public required double Duration { get; init; }

    /// <summary>Speed by course over the ground, bin by bin from north by east.</summary>
    public required IReadOnlyList<CourseSpeed> ByCourse { get; init; }

    /// <summary>Points recorded, and points trusted.</summary>
    public required (int Recorded, int Trusted) Points { get; init; }

    /// <summary>What was left out, reason by reason.</summary>
    public required IReadOnlyList<Rejection> Rejections { get; init; }

    /// <summary>What to know about the track as it came and the measures.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Measures a track.</summary>
    /// <param name="track">The track as recorded.</param>
    /// <param name="positionsOnly">Whether to reckon from positions even where the receiver tells speeds.</param>
    /// <exception cref="ArgumentException">A point cannot be: see <see cref="Track.FirstUnsound"/>.</exception>
    public static TrackMeasures Of(Track track, bool positionsOnly = false)
    {
        ArgumentNullException.ThrowIfNull(track);
        CleaningResult cleaning = TrackCleaning.Clean(track, positionsOnly);
        CleanTrack clean = cleaning.Track;
        List<(int From, int To)> ranges = RunSplitting.Split(clean);
        List<Rejection> rejections = [.. cleaning.Rejections];
        bool[] rejected = AccelerationLimit.Rejected(clean, ranges);
        int first = Array.IndexOf(rejected, true);
        if (first >= 0)
        {
            rejections.Add(new(RejectionReason.Acceleration, rejected.AsSpan().Count(true), clean.Points[first].Time));
            CleanTrack before = clean;
            clean = before.Without(rejected);
            ranges = Narrowed(ranges, rejected, clean);
        }

        SailedRun[] runs = [.. ranges.Select((range, i) => RunOf(clean, range, i + 1))];
        BestSpeed[] bests = [.. runs.Select(run => run.BestTenSeconds).OfType<BestSpeed>().OrderByDescending(best => best.Speed).Take(RunsOfFive)];
        (double way, double time) = Sailed(clean);
        BestSpeed? two = InRuns((from, to, run) => BestWindow.OfTime(clean, from, to, TwoSecondsLength, run));
        DateTimeOffset start = clean.Count > 0 ? track.Start.AddSeconds(clean.Points[0].Time) : track.Start;
        List<Finding> findings = [.. cleaning.Findings];
        Remark(findings, track, clean, runs, bests, two);
        return new()
        {
            Source = clean.Source,
            Runs = runs,
            TwoSeconds = two,
            TenSeconds = bests.FirstOrDefault(),
            BestOfRuns = bests,
            FiveTimesTen = bests.Length == RunsOfFive ? bests.Average(best => best.Speed) : null,
            HundredMetres = InRuns((from, to, run) => BestWindow.OfWay(clean, from, to, 100, run)),
            QuarterKilometre = InRuns((from, to, run) => BestWindow.OfWay(clean, from, to, 250, run)),
            HalfKilometre = InRuns((from, to, run) => BestWindow.OfWay(clean, from, to, 500, run)),
            NauticalMile = InStretches(clean, (from, to) => BestWindow.OfWay(clean, from, to, SpeedUnits.NauticalMile)),
            Hour = InStretches(clean, (from, to) => BestWindow.OfTime(clean, from, to, HourLength)),
            Distance = way,
            TimeSailed = time,
            Start = start,
            Day = Track.DayOf(start, clean.Count > 0 ? clean.Points[0].Longitude : 0),
            Duration = clean.Count > 0 ? clean.Points[^1].Time - clean.Points[0].Time : 0,
            ByCourse = SpeedByCourse.Of(clean, ranges),
            Points = (track.Points.Count, clean.Count),
            Rejections = rejections,
            Findings = findings,
        };

        BestSpeed? InRuns(Func<int, int, int, BestSpeed?> measure) => Fastest(ranges.Select((range, i) => measure(range.From, range.To, i + 1)));
    }

    private static BestSpeed? Fastest(IEnumerable<BestSpeed?> speeds) => speeds.OfType<BestSpeed>().MaxBy(best => best.Speed);

    private static BestSpeed? InStretches(CleanTrack track, Func<int, int, BestSpeed?> measure)
    {
        BestSpeed? best = null;
        for (int from = 0, to = 0; from < track.Count; from = to)
        {
            while (to < track.Count && track.Stretches[to] == track.Stretches[from])
                to++;
            BestSpeed? here = measure(from, to - 1);
            best = here is not null && (best is null || here.Speed > best.Speed) ? here : best;
        }

        return best;
    }

    private static SailedRun RunOf(CleanTrack track, (int From, int To) range, int number)
    {
        TrackPoint first = track.Points[range.From], last = track.Points[range.To];
        double duration = last.Time - first.Time, way = track.Ways[range.To] - track.Ways[range.From];
        return new(number, first.Time, duration, way, way / duration, Geodesic.Course(first.Latitude, first.Longitude, last.Latitude, last.Longitude), BestWindow.OfTime(track, range.From, range.To, TenSecondsLength, number));
    }

    private static (double Way, double Time) Sailed(CleanTrack track)
    {
        double way = 0, time = 0;
        for (int i = 1; i < track.Count; i++)
        {
            double stepTime = track.Points[i].Time - track.Points[i - 1].Time, step = track.Ways[i] - track.Ways[i - 1];
            if (track.Stretches[i] != track.Stretches[i - 1] || step < TrackLimits.SlowestSailing * stepTime)
                continue;
            way += step;
            time += stepTime;
        }

        return (way, time);
    }

    /// <summary>Runs by the numbers of the points that are left; what the rejected points cut off or made too short goes.</summary>
    private static List<(int From, int To)> Narrowed(List<(int From, int To)> runs, bool[] rejected, CleanTrack clean)
    {
        int[] before = new int[rejected.Length + 1];
        for (int i = 0; i < rejected.Length; i++)
            before[i + 1] = before[i] + (rejected[i] ? 0 : 1);
        List<(int From, int To)> narrowed = [];
        foreach ((int from, int to) in runs)
        {
            int end = before[to + 1] - 1;
            for (int first = before[from], last = first; first <= end; first = last)
            {
                while (last <= end && clean.Stretches[last] == clean.Stretches[first])
                    last++;
                if (clean.Points[last - 1].Time - clean.Points[first].Time >= RunSplitting.ShortestRun)
                    narrowed.Add((first, last - 1));
            }
        }

        return narrowed;
    }

    private static void Remark(List<Finding> findings, Track track, CleanTrack clean, SailedRun[] runs, BestSpeed[] bests, BestSpeed? two)
    {
        if (clean.Count * 2 < track.Points.Count)
            findings.Add(new("track-mostly-rejected", Severity.Caution, "track", $"Only {clean.Count} of {track.Points.Count} points can be trusted: the track says little.", "See above what was left out and why; wear the receiver where it sees the sky."));
        if (runs.Length == 0)
            findings.Add(new("track-no-runs", Severity.Caution, "track", $"No run was found: the board did not go {RunSplitting.PlaningSpeed / SpeedUnits.Knot:0} knots or more for {RunSplitting.ShortestRun:0} s on one course.", "Nothing, if there was no wind; only way and time are told."));
        else if (bests.Length < RunsOfFive)
            findings.Add(new("track-few-runs", Severity.Note, "track", $"{(bests.Length == 1 ? "Only one run lasts" : $"Only {bests.Length} runs last")} 10 s, so there is no 5 x 10 s.", "Sail at least five runs with a gybe or tack between them."));
        if (two is null)
            return;
        double ten = (two.Run is int run ? runs[run - 1].BestTenSeconds : null)?.Speed ?? bests.FirstOrDefault()?.Speed ?? double.NaN;
        if (two.Speed > GreatestPeakRatio * ten)
            findings.Add(new("track-peak-doubtful", Severity.Caution, "track", $"The best 2 s ({two.Speed / SpeedUnits.Knot:0.0} knots) are {two.Speed / ten:0.00} times the best 10 s of the same run ({ten / SpeedUnits.Knot:0.0} knots): more likely a fall or a swinging arm than a gust.", "Do not count the 2 s; take the 10 s.") { Value = $"{two.Speed / ten:0.00}", Limit = $"{GreatestPeakRatio:0.00}" });
    }
}
