namespace Finwright.Workshop.Tracks;

/// <summary>Divides a track into runs: pieces on one tack, on the plane, without a gap.</summary>
/// <remarks>
/// A run begins when the speed reaches <see cref="PlaningSpeed"/> and ends before the speed has been below <see cref="SlowSpeed"/> for <see cref="Lull"/>, before a gap, and at a turn.
/// A turn is where the course over the ground of the <see cref="TurnSeconds"/> before and that of the <see cref="TurnSeconds"/> after differ by more than <see cref="TurnAngle"/>; the run is divided
/// at the point where they differ most. The two speeds apart and the long chords keep noise from dividing a run. A run shorter than <see cref="ShortestRun"/> is none.
/// </remarks>
public static class RunSplitting
{
    /// <summary>A run begins at this speed, m/s: 10 knots, within the 8 to 12 knots at which boards start to plane (from memory).</summary>
    public const double PlaningSpeed = 10 * SpeedUnits.Knot;

    /// <summary>A run ends below this speed, m/s: 8 knots, the lower end of the same (from memory).</summary>
    public const double SlowSpeed = 8 * SpeedUnits.Knot;

    /// <summary>For how long the speed must be low to end a run, s. Judgement.</summary>
    public const double Lull = 2;

    /// <summary>Time over which courses before and after a turn are taken, s. Judgement: a gybe takes 5 to 10 s.</summary>
    public const double TurnSeconds = 10;

    /// <summary>Change of course that ends a run, radians: 50 degrees. Judgement: a gybe turns by 80 degrees or more, following gusts by less than 40.</summary>
    public const double TurnAngle = 50 * Math.PI / 180;

    /// <summary>Shortest run, s. Judgement.</summary>
    public const double ShortestRun = 5;

    // A turn is sharper only when it is so by more than courses are off: on a circle, noise alone would carry the place on and on.
    private const double AngleNoise = 5 * Math.PI / 180;

    // From a shorter chord no course is told: it would be noise.
    private const double ShortestChordSeconds = 3;

    /// <summary>First and last point of each run, in the order in which they were sailed; a run that ends at a turn shares that point with the next.</summary>
    /// <param name="track">The trusted points.</param>
    internal static List<(int From, int To)> Split(CleanTrack track)
    {
        ArgumentNullException.ThrowIfNull(track);
        List<(int From, int To)> runs = [];
        int from = -1, slow = -1;
        for (int i = 0; i < track.Count; i++)
        {
            if (from >= 0 && track.Stretches[i] != track.Stretches[i - 1])
                End(slow >= 0 ? slow - 1 : i - 1);
            double speed = track.Speeds[i];
            if (from < 0)
            {
                if (speed >= PlaningSpeed)
                    from = i;
                continue;
            }

            slow = speed >= SlowSpeed ? -1 : slow < 0 ? i : slow;
            if (slow >= 0 && track.Points[i].Time - track.Points[slow].Time >= Lull)
                End(slow - 1);
        }

        if (from >= 0)
            End(slow >= 0 ? slow - 1 : track.Count - 1);
        return runs;

        void End(int to)
        {
            int first = from;
            foreach (int turn in Turns(track, from, to))
            {
                Add(first, turn);
                first = turn;
            }

            Add(first, to);
            from = slow = -1;
        }

        void Add(int first, int last)
        {
            if (track.Points[last].Time - track.Points[first].Time >= ShortestRun)
                runs.Add((first, last));
        }
    }

    private static List<int> Turns(CleanTrack track, int from, int to)
    {
        List<int> turns = [];
        ReadOnlySpan<TrackPoint> points = track.Points;
        int back = from, ahead = from, sharpest = -1;
        double most = 0;
        for (int i = from; i <= to; i++)
        {
            while (points[i].Time - points[back].Time > TurnSeconds)
                back++;
            ahead = Math.Max(ahead, i);
            while (ahead < to && points[ahead].Time - points[i].Time < TurnSeconds)
                ahead++;
            double angle = 0;
            if (points[i].Time - points[back].Time >= ShortestChordSeconds && points[ahead].Time - points[i].Time >= ShortestChordSeconds)
                angle = Math.Abs(Geodesic.Turn(Course(points[i], points[ahead]) - Course(points[back], points[i])));
            if (angle > TurnAngle && (sharpest < 0 || angle > most + AngleNoise))
                (sharpest, most) = (i, angle);
            // Nothing sharper for as long as the chords are: that was the turn.
            if (sharpest >= 0 && points[i].Time - points[sharpest].Time >= TurnSeconds)
            {
                turns.Add(sharpest);
                sharpest = -1;
            }
        }

        if (sharpest >= 0)
            turns.Add(sharpest);
        return turns;
    }

    private static double Course(in TrackPoint from, in TrackPoint to) => Geodesic.Course(from.Latitude, from.Longitude, to.Latitude, to.Longitude);
}
