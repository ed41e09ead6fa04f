namespace Finwright.Workshop.Tracks;

/// <summary>One position of a track.</summary>
/// <param name="Time">Seconds since the start of the track.</param>
/// <param name="Latitude">Radians, positive north, -π/2 to π/2.</param>
/// <param name="Longitude">Radians, positive east, -π to π.</param>
/// <param name="Speed">Speed over ground as the receiver measured it, m/s; not a number when it told none.</param>
public readonly record struct TrackPoint(double Time, double Latitude, double Longitude, double Speed)
{
    /// <summary>Horizontal dilution of precision as the receiver told it; 0 when it told none.</summary>
    public float Dilution { get; init; }

    /// <summary>Satellites the receiver used; 0 when it told none.</summary>
    public byte Satellites { get; init; }

    /// <summary>Whether the recorder was off, or lost its position, before this point: nothing is measured across.</summary>
    public bool StartsSegment { get; init; }
}

/// <summary>A track as it was recorded, nothing corrected: times may stand still or go back, positions may leap.</summary>
/// <param name="Start">When the first point was recorded.</param>
/// <param name="Points">The points in the order in which they were recorded, at least one.</param>
public sealed record Track(DateTimeOffset Start, IReadOnlyList<TrackPoint> Points)
{
    /// <summary>Most points that a track may have: 55 hours at ten a second.</summary>
    public const int MostPoints = 2_000_000;

    /// <summary>The first point that cannot be: a time outside the calendar, a place off the globe, a speed or dilution that is none; -1 when all can.</summary>
    public int FirstUnsound()
    {
        // A second to spare for what is rounded.
        double before = (Start - DateTimeOffset.MinValue).TotalSeconds - 1, after = (DateTimeOffset.MaxValue - Start).TotalSeconds - 1;
        for (int i = 0; i < Points.Count; i++)
        {
            TrackPoint point = Points[i];
            bool time = point.Time >= -before && point.Time <= after, place = Math.Abs(point.Latitude) <= Math.PI / 2 && Math.Abs(point.Longitude) <= Math.PI;
            bool speed = double.IsNaN(point.Speed) || (point.Speed >= 0 && double.IsFinite(point.Speed));
            if (!time || !place || !speed || !(point.Dilution >= 0 && float.IsFinite(point.Dilution)))
                return i;
        }

        return -1;
    }

    /// <summary>A day by the sun: the time zone is not in a track, so the clock is moved by an hour for each 15 degrees of longitude.</summary>
    /// <param name="time">The moment.</param>
    /// <param name="longitude">Where, radians, positive east.</param>
    public static DateOnly DayOf(DateTimeOffset time, double longitude)
    {
        DateTime universal = time.UtcDateTime;
        // The first and the last day of the calendar have no neighbour to move to.
        bool moves = universal > DateTime.MinValue.AddDays(1) && universal < DateTime.MaxValue.AddDays(-1);
        return DateOnly.FromDateTime(moves ? universal.AddHours(Math.Round(longitude * (12 / Math.PI))) : universal);
    }
}
