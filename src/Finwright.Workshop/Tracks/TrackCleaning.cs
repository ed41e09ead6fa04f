using System.Runtime.InteropServices;
using Finwright.Design;

namespace Finwright.Workshop.Tracks;

/// <summary>Takes the faults of the receiver out of a track; <see cref="TrackLimits"/> says what is taken for one.</summary>
/// <remarks>
/// In this order: clock, satellites, leaps, kind of speed, then agreement of speeds or thinning, gaps. The limit on acceleration needs runs and comes after them (<see cref="AccelerationLimit"/>).
/// Each point is judged against the last good one, never mended.
/// </remarks>
public static class TrackCleaning
{
    /// <summary>The trusted points of a track, and what was left out.</summary>
    /// <param name="track">The track as recorded.</param>
    /// <param name="positionsOnly">Whether to reckon from positions even where the receiver tells speeds.</param>
    public static CleaningResult Clean(Track track, bool positionsOnly = false)
    {
        ArgumentNullException.ThrowIfNull(track);
        Sieve sieve = new(track);
        KeepOneClock(sieve);
        sieve.Reject(RejectionReason.FewSatellites, point => point.Satellites is > 0 and < TrackLimits.FewestSatellites || point.Dilution > TrackLimits.GreatestDilution);
        RejectLeaps(sieve);
        List<Finding> findings = [];
        SpeedSource source = positionsOnly ? SpeedSource.Positions : ChooseSource(sieve, findings);
        if (source == SpeedSource.Measured)
        {
            sieve.Reject(RejectionReason.NoSpeed, point => !(point.Speed <= TrackLimits.FastestSpeed));
            RejectDisagreement(sieve);
        }
        else
        {
            Thin(sieve);
        }

        CleanTrack clean = CleanTrack.Of(sieve.Points, sieve.Breaks, source);
        Warn(clean, findings);
        return new(clean, sieve.Rejections, findings);
    }

    /// <summary>Leaves one clock: the longest piece in which it runs on, and of the others what fits before or after it.</summary>
    private static void KeepOneClock(Sieve sieve)
    {
        ReadOnlySpan<TrackPoint> points = sieve.Points;
        RejectionReason?[] reasons = new RejectionReason?[points.Length];
        // A doubled time is told at once; pieces end where the clock goes back or leaps.
        int from = 0, best = 0, bestFrom = 0, bestTo = 0, last = 0, count = points.Length > 0 ? 1 : 0;
        for (int i = 1; i <= points.Length; i++)
        {
            double step = i < points.Length ? points[i].Time - points[last].Time : double.NaN;
            if (step is 0)
            {
                reasons[i] = RejectionReason.DoubledTime;
                continue;
            }

            if (step is > 0 and <= TrackLimits.LongestPause)
            {
                count++;
            }
            else
            {
                if (count > best)
                    (best, bestFrom, bestTo) = (count, from, i);
                (from, count) = (i, 1);
            }

            last = i;
        }

        Fit(bestTo, points.Length, 1, bestTo - 1);
        Fit(bestFrom - 1, -1, -1, bestFrom);
        sieve.Reject(reasons);

        void Fit(int first, int end, int direction, int good)
        {
            ReadOnlySpan<TrackPoint> all = sieve.Points;
            // The last of the piece may itself be a doubled time, which has the same time.
            for (int i = first; i != end; i += direction)
            {
                double step = direction * (all[i].Time - all[good].Time);
                if (step is > 0 and <= TrackLimits.LongestPause)
                    good = i;
                else
                    reasons[i] ??= step > 0 || step < -TrackLimits.LongestPause ? RejectionReason.OtherDay : step is 0 ? RejectionReason.DoubledTime : RejectionReason.ClockWentBack;
                if (good == i)
                    reasons[i] = null;
            }
        }
    }

    private static void RejectLeaps(Sieve sieve)
    {
        ReadOnlySpan<TrackPoint> points = sieve.Points;
        RejectionReason?[] reasons = new RejectionReason?[points.Length];
        int good = 0, pending = -1, pendingLast = -1, pendingCount = 0;
        for (int i = 1; i < points.Length; i++)
        {
            if (Reaches(points[good], points[i]))
            {
                good = i;
                pending = -1;
                continue;
            }

            reasons[i] = RejectionReason.Leap;
            bool goesOn = pending >= 0 && Reaches(points[pendingLast], points[i]);
            (pending, pendingCount) = goesOn ? (pending, pendingCount + 1) : (i, 1);
            pendingLast = i;
            if (pendingCount < TrackLimits.PointsToBelieve)
                continue;
            // The leap was true, or the points before it were the fault: go on from here, nothing is measured across.
            for (int k = pending; k <= i; k++)
                reasons[k] = null;
            sieve.BreakBefore(pending);
            good = i;
            pending = -1;
        }

        sieve.Reject(reasons);
    }

    private static bool Reaches(in TrackPoint from, in TrackPoint to) =>
        Geodesic.Distance(from.Latitude, from.Longitude, to.Latitude, to.Longitude) <= TrackLimits.FastestSpeed * (to.Time - from.Time) + TrackLimits.PositionSlack;

    private static SpeedSource ChooseSource(Sieve sieve, List<Finding> findings)
    {
        ReadOnlySpan<TrackPoint> points = sieve.Points;
        int told = 0;
        double measured = 0, between = 0;
        for (int i = 0; i < points.Length; i++)
        {
            told += double.IsNaN(points[i].Speed) ? 0 : 1;
            if (i == 0)
                continue;
            double step = points[i].Time - points[i - 1].Time, way = (points[i].Speed + points[i - 1].Speed) / 2 * step;
            // Slow steps say nothing: positions wander while the board stands.
            if (step <= TrackLimits.LongestStep && way > TrackLimits.SlowestSailing * step)
            {
                measured += way;
                between += Geodesic.Distance(points[i - 1].Latitude, points[i - 1].Longitude, points[i].Latitude, points[i].Longitude);
            }
        }

        if (told < TrackLimits.MeasuredShare * points.Length || told == 0)
        {
            if (told > 0)
                findings.Add(new("track-few-speeds", Severity.Note, "track", $"Only {told} of {points.Length} points tell a speed; speeds are worked out from positions.", "Set the receiver to record speed with every point."));
            return SpeedSource.Positions;
        }

        // A track without a step that is fast enough has nothing to compare.
        double ratio = measured / between;
        if (ratio is > TrackLimits.GreatestRatio or < 1 / TrackLimits.GreatestRatio)
        {
            string unit = Math.Abs(ratio - 3.6) < 0.3 ? "they look like km/h" : Math.Abs(ratio - 1 / SpeedUnits.Knot) < 0.2 ? "they look like knots" : Math.Abs(ratio - 2.237) < 0.2 ? "they look like miles an hour" : "their unit cannot be told";
            findings.Add(new("track-speed-unit", Severity.Caution, "track", $"The speeds told are {ratio:0.00} times those between positions: they should be m/s, but {unit}. Speeds are worked out from positions.", "Export the track with speeds in m/s.") { Value = $"{ratio:0.00}" });
            return SpeedSource.Positions;
        }

        return SpeedSource.Measured;
    }

    private static void RejectDisagreement(Sieve sieve)
    {
        // Both ways up to each point. Positions count in legs of a second or more: at ten points a second their noise would add up.
        const double Leg = 1;
        CleanTrack clean = CleanTrack.Of(sieve.Points, sieve.Breaks, SpeedSource.Measured);
        ReadOnlySpan<TrackPoint> points = clean.Points;
        List<int> corners = [];
        List<double> ways = [];
        for (int i = 0; i < points.Length; i++)
        {
            bool fresh = i == 0 || clean.Stretches[i] != clean.Stretches[i - 1];
            if (!fresh && points[i].Time - points[corners[^1]].Time < Leg)
                continue;
            ways.Add(fresh ? 0 : ways[^1] + Geodesic.Distance(points[corners[^1]].Latitude, points[corners[^1]].Longitude, points[i].Latitude, points[i].Longitude));
            corners.Add(i);
        }

        RejectionReason?[] reasons = new RejectionReason?[points.Length];
        for (int i = 0, back = 0, ahead = 0; i < points.Length; i++)
        {
            ahead = Math.Max(ahead, back);
            while (ahead + 1 < corners.Count && SameStretch(corners[ahead + 1], i) && points[corners[ahead]].Time < points[i].Time + TrackLimits.CompareSeconds / 2)
                ahead++;
            while (!SameStretch(corners[back], i) || (back + 1 < corners.Count && SameStretch(corners[back + 1], i) && points[corners[back + 1]].Time <= points[i].Time - TrackLimits.CompareSeconds / 2))
                back++;
            ahead = Math.Max(ahead, back);
            int from = corners[back], to = corners[ahead];
            double time = points[to].Time - points[from].Time;
            if (time >= TrackLimits.CompareSeconds / 2 && SameStretch(to, from) && Math.Abs(clean.Ways[to] - clean.Ways[from] - (ways[ahead] - ways[back])) > TrackLimits.SpeedDifference * time)
                reasons[i] = RejectionReason.SpeedsDisagree;

            bool SameStretch(int a, int b) => clean.Stretches[a] == clean.Stretches[b];
        }

        sieve.Reject(reasons);
    }

    private static void Thin(Sieve sieve)
    {
        // Clocks told to a millisecond.
        const double Rounding = 5e-3;
        RejectionReason?[] reasons = new RejectionReason?[sieve.Points.Length];
        for (int i = 1, kept = 0; i < reasons.Length; i++)
        {
            if (!sieve.Breaks[i] && sieve.Points[i].Time - sieve.Points[kept].Time < TrackLimits.ShortestPositionStep - Rounding)
                reasons[i] = RejectionReason.TooClose;
            else
                kept = i;
        }

        sieve.Reject(reasons);
    }

    private static void Warn(CleanTrack clean, List<Finding> findings)
    {
        int slow = 0, gaps = 0, few = 0;
        double longest = 0;
        for (int i = 0; i < clean.Count; i++)
        {
            few += clean.Points[i].Satellites is > 0 and < TrackLimits.GoodSatellites ? 1 : 0;
            if (i == 0)
                continue;
            double step = clean.Points[i].Time - clean.Points[i - 1].Time;
            longest = Math.Max(longest, step);
            if (clean.Stretches[i] != clean.Stretches[i - 1])
                gaps++;
            else if (step > TrackLimits.LongestGoodStep)
                slow++;
        }

        if (gaps > 0)
            findings.Add(new("track-gaps", Severity.Caution, "track", $"The track is interrupted {gaps} {(gaps == 1 ? "time" : "times")} (more than {TrackLimits.LongestStep:0} s, or a new segment), for {longest:0} s at most between two points; no speed spans an interruption.", "Keep the receiver high and dry, and let it record every second."));
        if (slow > 0)
            findings.Add(new("track-slow-steps", Severity.Caution, "track", $"{slow} {(slow == 1 ? "step between points lasts" : "steps between points last")} more than {TrackLimits.LongestGoodStep:0} s, as with watches that record only now and then: short bests are less sure.", "Set the receiver to record every second, or faster."));
        if (few > clean.Count / 10)
            findings.Add(new("track-few-satellites", Severity.Note, "track", $"{few} of {clean.Count} points had fewer than {TrackLimits.GoodSatellites} satellites.", "Wear the receiver where it sees the sky, and let it settle before you sail."));
    }

    /// <summary>The points that are left, with breaks before some of them.</summary>
    private sealed class Sieve
    {
        private readonly Dictionary<RejectionReason, Rejection> _rejections = [];

        public Sieve(Track track)
        {
            if (track.FirstUnsound() is >= 0 and int bad)
                throw new ArgumentException($"Point {bad} of the track has a time, place or speed that cannot be.", nameof(track));
            Points = track.Points is List<TrackPoint> list ? CollectionsMarshal.AsSpan(list).ToArray() : [.. track.Points];
            Breaks = new bool[Points.Length];
            for (int i = 0; i < Points.Length; i++)
                Breaks[i] = Points[i].StartsSegment;
        }

        public TrackPoint[] Points { get; private set; }

        public bool[] Breaks { get; private set; }

        public IReadOnlyList<Rejection> Rejections => [.. _rejections.Values.OrderBy(rejection => rejection.Reason)];

        public void BreakBefore(int index) => Breaks[index] = true;

        public void Reject(RejectionReason reason, Predicate<TrackPoint> isBad)
        {
            RejectionReason?[] reasons = new RejectionReason?[Points.Length];
            for (int i = 0; i < reasons.Length; i++)
                reasons[i] = isBad(Points[i]) ? reason : null;
            Reject(reasons);
        }

        public void Reject(ReadOnlySpan<RejectionReason?> reasons)
        {
            int kept = 0;
            bool breaks = false;
            for (int i = 0; i < reasons.Length; i++)
            {
                // A break before a point that goes is a break before the next that stays.
                breaks |= Breaks[i];
                if (reasons[i] is RejectionReason reason)
                {
                    Rejection before = _rejections.GetValueOrDefault(reason) ?? new(reason, 0, Points[i].Time);
                    _rejections[reason] = before with { Count = before.Count + 1, FirstTime = Math.Min(before.FirstTime, Points[i].Time) };
                    continue;
                }

                Points[kept] = Points[i];
                Breaks[kept] = breaks;
                breaks = false;
                kept++;
            }

            Points = Points[..kept];
            Breaks = Breaks[..kept];
        }
    }
}

/// <summary>What came of cleaning a track.</summary>
/// <param name="Track">The points that can be trusted.</param>
/// <param name="Rejections">What was left out, reason by reason.</param>
/// <param name="Findings">What to know about the track as it came.</param>
public sealed record CleaningResult(CleanTrack Track, IReadOnlyList<Rejection> Rejections, IReadOnlyList<Finding> Findings);
