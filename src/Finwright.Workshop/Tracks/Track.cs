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

    /// <summary>The day on which it was sailed, by the sun: the time zone is not in a track, so its clock is moved by an hour for each 15 degrees of longitude.</summary>
    public DateOnly Day
    {
        get
        {
            double hours = Points.Count == 0 ? 0 : Math.Round(Points[0].Longitude * (12 / Math.PI));
            DateTime start = Start.UtcDateTime;
            // The first and the last day of the calendar have no neighbour to move to.
            bool moves = start > DateTime.MinValue.AddDays(1) && start < DateTime.MaxValue.AddDays(-1);
            return DateOnly.FromDateTime(moves ? start.AddHours(hours) : start);
        }
    }
}
