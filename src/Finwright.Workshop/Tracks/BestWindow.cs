namespace Finwright.Workshop.Tracks;

/// <summary>The fastest piece of a given time or way: for each first point the shortest piece that reaches it, found in one pass.</summary>
internal static class BestWindow
{
    // Times and ways are sums of decimal steps: what misses by their rounding alone has reached.
    private const double Rounding = 1e-9;

    /// <summary>Fastest piece that lasts as long as asked; null when none does.</summary>
    /// <param name="track">The trusted points.</param>
    /// <param name="from">First point.</param>
    /// <param name="to">Last point, of the same stretch.</param>
    /// <param name="seconds">Least time, s.</param>
    /// <param name="run">Number of the run, for the answer.</param>
    public static BestSpeed? OfTime(CleanTrack track, int from, int to, double seconds, int? run = null) => Of(track, from, to, seconds, 0, run);

    /// <summary>Fastest piece as long as asked; null when none is.</summary>
    /// <param name="track">The trusted points.</param>
    /// <param name="from">First point.</param>
    /// <param name="to">Last point, of the same stretch.</param>
    /// <param name="metres">Least way, metres.</param>
    /// <param name="run">Number of the run, for the answer.</param>
    public static BestSpeed? OfWay(CleanTrack track, int from, int to, double metres, int? run = null) => Of(track, from, to, 0, metres, run);

    private static BestSpeed? Of(CleanTrack track, int from, int to, double seconds, double metres, int? run)
    {
        ReadOnlySpan<TrackPoint> points = track.Points;
        ReadOnlySpan<double> ways = track.Ways;
        double leastTime = seconds * (1 - Rounding), leastWay = metres * (1 - Rounding), best = -1;
        int bestFrom = 0, bestTo = 0;
        for (int i = from, j = from; i < to; i++)
        {
            j = Math.Max(j, i + 1);
            while (j <= to && (points[j].Time - points[i].Time < leastTime || ways[j] - ways[i] < leastWay))
                j++;
            if (j > to)
                break;
            double speed = (ways[j] - ways[i]) / (points[j].Time - points[i].Time);
            if (speed > best)
                (best, bestFrom, bestTo) = (speed, i, j);
        }

        if (best < 0)
            return null;
        double duration = points[bestTo].Time - points[bestFrom].Time;
        return new(best, points[bestFrom].Time, duration, ways[bestTo] - ways[bestFrom], run, SpeedError.Usual(track.Source, duration));
    }
}
