namespace Finwright.Workshop.Tracks;

/// <summary>The points of a track that can be trusted, with the way sailed up to each.</summary>
public sealed class CleanTrack
{
    private readonly TrackPoint[] _points;
    private readonly int[] _stretches;
    private readonly double[] _ways;
    private readonly double[] _speeds;

    private CleanTrack(TrackPoint[] points, int[] stretches, SpeedSource source, double[]? speeds)
    {
        _points = points;
        _stretches = stretches;
        Source = source;
        _ways = new double[points.Length];
        for (int i = 1; i < points.Length; i++)
            _ways[i] = _ways[i - 1] + (stretches[i] == stretches[i - 1] ? Step(points[i - 1], points[i], source) : 0);
        _speeds = speeds ?? PointSpeeds();
    }

    /// <summary>Where speeds and ways come from.</summary>
    public SpeedSource Source { get; }

    /// <summary>How many points there are.</summary>
    public int Count => _points.Length;

    /// <summary>The points; times rise.</summary>
    public ReadOnlySpan<TrackPoint> Points => _points;

    /// <summary>Number of the stretch each point belongs to, from 0; between stretches lies a gap that nothing spans.</summary>
    public ReadOnlySpan<int> Stretches => _stretches;

    /// <summary>Way from the first point to each, metres; gaps add nothing.</summary>
    public ReadOnlySpan<double> Ways => _ways;

    /// <summary>Speed at each point, m/s: as measured, or from positions over 2 s or more round it.</summary>
    public ReadOnlySpan<double> Speeds => _speeds;

    /// <summary>Makes one of points whose times rise.</summary>
    /// <param name="points">The points.</param>
    /// <param name="breaks">Whether a gap lies before each point; steps over <see cref="TrackLimits.LongestStep"/> are gaps anyway.</param>
    /// <param name="source">Where speeds come from.</param>
    internal static CleanTrack Of(TrackPoint[] points, ReadOnlySpan<bool> breaks, SpeedSource source)
    {
        int[] stretches = new int[points.Length];
        for (int i = 1; i < points.Length; i++)
            stretches[i] = stretches[i - 1] + (breaks[i] || points[i].Time - points[i - 1].Time > TrackLimits.LongestStep ? 1 : 0);
        return new(points, stretches, source, null);
    }

    /// <summary>The same without some points.</summary>
    /// <param name="rejected">Whether each point goes.</param>
    internal CleanTrack Without(ReadOnlySpan<bool> rejected)
    {
        int kept = Count - rejected.Count(true);
        TrackPoint[] points = new TrackPoint[kept];
        double[] speeds = new double[kept];
        bool[] breaks = new bool[kept];
        for (int i = 0, k = 0, stretch = 0; i < Count; i++)
        {
            if (rejected[i])
                continue;
            points[k] = _points[i];
            speeds[k] = _speeds[i];
            breaks[k] = _stretches[i] != stretch;
            stretch = _stretches[i];
            k++;
        }

        CleanTrack fresh = Of(points, breaks, Source);
        // Speeds at points stay what they were: beside a point that went, there is less to work them out from.
        return new(points, fresh._stretches, Source, speeds);
    }

    /// <summary>Way from one point to the next, metres.</summary>
    private static double Step(in TrackPoint from, in TrackPoint to, SpeedSource source) => source == SpeedSource.Measured
        ? (from.Speed + to.Speed) / 2 * (to.Time - from.Time)
        : Geodesic.Distance(from.Latitude, from.Longitude, to.Latitude, to.Longitude);

    private double[] PointSpeeds()
    {
        const double Half = 1;
        double[] speeds = new double[Count];
        if (Source == SpeedSource.Measured)
        {
            for (int i = 0; i < Count; i++)
                speeds[i] = _points[i].Speed;
            return speeds;
        }

        for (int i = 0, back = 0, ahead = 0; i < Count; i++)
        {
            // The nearest points a second or more away to either side, or the ends of the stretch.
            ahead = Math.Max(ahead, i);
            while (ahead + 1 < Count && _stretches[ahead + 1] == _stretches[i] && _points[ahead].Time - _points[i].Time < Half)
                ahead++;
            while (_stretches[back] != _stretches[i] || (back < i && _points[i].Time - _points[back + 1].Time >= Half))
                back++;
            if (ahead > back)
                speeds[i] = Geodesic.Distance(_points[back].Latitude, _points[back].Longitude, _points[ahead].Latitude, _points[ahead].Longitude) / (_points[ahead].Time - _points[back].Time);
        }

        return speeds;
    }
}
