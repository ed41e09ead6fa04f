namespace Finwright.Workshop.Tracks;

/// <summary>Speed by course over the ground.</summary>
public static class SpeedByCourse
{
    /// <summary>Number of bins, of 15 degrees each; the first lies round north.</summary>
    public const int Bins = 24;

    // As runs are told from noise: courses are those of chords of 2 s or more.
    private const double HalfChord = 1, TenSeconds = 10;

    /// <summary>Works it out.</summary>
    /// <param name="track">The trusted points.</param>
    /// <param name="runs">First and last point of each run.</param>
    internal static IReadOnlyList<CourseSpeed> Of(CleanTrack track, IReadOnlyList<(int From, int To)> runs)
    {
        double[] times = new double[Bins], ways = new double[Bins], bests = new double[Bins];
        ReadOnlySpan<TrackPoint> points = track.Points;
        for (int i = 1, back = 0, ahead = 0; i < points.Length; i++)
        {
            if (track.Stretches[i] != track.Stretches[i - 1])
                continue;
            double time = points[i].Time - points[i - 1].Time, way = track.Ways[i] - track.Ways[i - 1];
            while (track.Stretches[back] != track.Stretches[i] || (back + 1 < i && points[i].Time - points[back + 1].Time >= HalfChord))
                back++;
            ahead = Math.Max(ahead, i);
            while (ahead + 1 < points.Length && track.Stretches[ahead + 1] == track.Stretches[i] && points[ahead].Time - points[i - 1].Time < HalfChord)
                ahead++;
            if (way < TrackLimits.SlowestSailing * time)
                continue;
            int bin = BinOf(points[back], points[ahead]);
            times[bin] += time;
            ways[bin] += way;
        }

        foreach ((int from, int to) in runs)
        {
            for (int i = from, j = from; i < to; i++)
            {
                while (j <= to && points[j].Time - points[i].Time < TenSeconds * (1 - 1e-9))
                    j++;
                if (j > to)
                    break;
                int bin = BinOf(points[i], points[j]);
                bests[bin] = Math.Max(bests[bin], (track.Ways[j] - track.Ways[i]) / (points[j].Time - points[i].Time));
            }
        }

        double all = times.Sum();
        return
        [
            .. Enumerable.Range(0, Bins).Select(bin => new CourseSpeed(
                2 * Math.PI * bin / Bins, all > 0 ? times[bin] / all : 0, times[bin] > 0 ? ways[bin] / times[bin] : null, bests[bin] > 0 ? bests[bin] : null)),
        ];
    }

    private static int BinOf(in TrackPoint from, in TrackPoint to) =>
        (int)Math.Round(Geodesic.Course(from.Latitude, from.Longitude, to.Latitude, to.Longitude) * Bins / (2 * Math.PI)) % Bins;
}
