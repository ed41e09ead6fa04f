namespace Finwright.Workshop.Tracks;

/// <summary>Rejects points of a run whose speed no board can have reached.</summary>
/// <remarks>
/// Common practice, no source: the speed of the last good point is held against those that follow. A point counts as good again when its speed is what <see cref="TrackLimits.Acceleration"/> allows
/// from there over one step (a second at least), give or take <see cref="TrackLimits.SpeedSlack"/>; the allowance does not grow with waiting, else any false plateau would come to be believed. When none is good for
/// <see cref="TrackLimits.LongestHold"/>, or to the end of the run, the rest of the run is rejected.
/// </remarks>
internal static class AccelerationLimit
{
    // Speeds closer together than this are as noisy as the same speed told twice.
    private const double ShortestStep = 1;

    /// <summary>Tells which points are rejected.</summary>
    /// <param name="track">The trusted points.</param>
    /// <param name="runs">First and last point of each run.</param>
    /// <returns>For each point whether it goes.</returns>
    public static bool[] Rejected(CleanTrack track, IReadOnlyList<(int From, int To)> runs)
    {
        bool[] rejected = new bool[track.Count];
        foreach ((int from, int to) in runs)
        {
            int good = from;
            for (int i = from + 1; i <= to; i++)
            {
                double since = track.Points[i].Time - track.Points[good].Time, step = Math.Max(ShortestStep, track.Points[i].Time - track.Points[i - 1].Time);
                double allowed = TrackLimits.Acceleration * Math.Min(since, step) + TrackLimits.SpeedSlack;
                if (Math.Abs(track.Speeds[i] - track.Speeds[good]) <= allowed)
                {
                    good = i;
                    continue;
                }

                rejected[i] = true;
                if (since < TrackLimits.LongestHold && i < to)
                    continue;
                rejected.AsSpan(i, to - i + 1).Fill(true);
                break;
            }
        }

        return rejected;
    }
}
