namespace Finwright.Workshop.Tracks;

/// <summary>One position of a track.</summary>
/// <param name="Time">Seconds since the start of the track.</param>
/// <param name="Latitude">Radians, positive north.</param>
/// <param name="Longitude">Radians, positive east.</param>
/// <param name="Speed">Speed over ground as the receiver measured it, m/s; not a number when it told none.</param>
public readonly record struct TrackPoint(double Time, double Latitude, double Longitude, double Speed);

/// <summary>A track as it was recorded, in the order of time.</summary>
/// <param name="Start">When the first point was recorded.</param>
/// <param name="Points">The points; times rise.</param>
public sealed record Track(DateTimeOffset Start, IReadOnlyList<TrackPoint> Points);
