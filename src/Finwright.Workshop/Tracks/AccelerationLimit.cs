namespace Finwright.Workshop.Tracks;

/// <summary>Rejects points of a run whose speed no board can have reached.</summary>
/// <remarks>
/// Common practice, no source: the speed of the last good point is held against those that follow. A point is good when its speed is what <see cref="TrackLimits.Acceleration"/> allows from the good point a second
/// before, give or take <see cref="TrackLimits.SpeedSlack"/>, and from the last good one, give or take <see cref="TrackLimits.SwingSlack"/>. What is allowed does not grow with waiting, else any
/// false plateau would come to be believed. When no point is good for <see cref="TrackLimits.LongestHold"/>, or to the end of the run, the rest of the run is rejected.
/// </remarks>
internal static class AccelerationLimit
{
    // Over less, an acceleration is that of the arm, and of noise.
    private const double Span = 1, Rounding = 1e-6;

    /// <summary>Tells which points are rejected.</summary>
    /// <param name="track">The trusted points.</param>
    /// <param name="runs">First and last point of each run.</param>
    /// <returns>For each point whether it goes.</returns>
    public static bool[] Rejected(CleanTrack track, IReadOnlyList<(int From, int To)> runs)
    {
        bool[] rejected = new bool[track.Count];
        double[] begins = Begins(track);
        foreach ((int from, int to) in runs)
        {
            // The last good point, and the last that is a second old: points between them that were rejected are stepped over.
            // The points before the run count, else a fault that begins at rest would be a run of its own; but not the first ones that a receiver tells.
            int old = from;
            while (old > 0 && track.Points[from].Time - track.Points[old].Time < Span - Rounding && !rejected[old - 1]
                && track.Stretches[old - 1] == track.Stretches[from] && track.Points[old - 1].Time - begins[track.Stretches[from]] >= TrackLimits.LongestHold)
            {
                old--;
            }

            int good = Math.Max(old, from - 1), seen = old;
            for (int i = good + 1; i <= to; i++)
            {
                while (seen < good && track.Points[i].Time - track.Points[seen + 1].Time >= Span - Rounding)
                {
                    seen++;
                    old = rejected[seen] ? old : seen;
                }

                double step = Math.Max(Span, track.Points[i].Time - track.Points[i - 1].Time);
                if (IsReached(good, TrackLimits.SwingSlack) && IsReached(old, TrackLimits.SpeedSlack))
                {
                    good = i;
                    continue;
                }

                rejected[i] = true;
                if (track.Points[i].Time - track.Points[good].Time < TrackLimits.LongestHold && i < to)
                    continue;
                rejected.AsSpan(i, to - i + 1).Fill(true);
                break;

                bool IsReached(int before, double slack) =>
                    Math.Abs(track.Speeds[i] - track.Speeds[before]) <= TrackLimits.Acceleration * Math.Min(track.Points[i].Time - track.Points[before].Time, step) + slack;
            }
        }

        return rejected;
    }

    /// <summary>When each stretch begins.</summary>
    private static double[] Begins(CleanTrack track)
    {
        List<double> begins = [];
        for (int i = 0; i < track.Count; i++)
        {
            if (i == 0 || track.Stretches[i] != track.Stretches[i - 1])
                begins.Add(track.Points[i].Time);
        }

        return [.. begins];
    }
}
