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
        foreach ((int from, int to) in runs)
        {
            // The last good point, and the last that is a second old: points between them that were rejected are stepped over.
            int good = from, old = from;
            for (int i = from + 1; i <= to; i++)
            {
                for (int next = old + 1; next <= good && track.Points[i].Time - track.Points[next].Time >= Span - Rounding; next++)
                    old = rejected[next] ? old : next;
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
}
