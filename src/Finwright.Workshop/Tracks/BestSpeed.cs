namespace Finwright.Workshop.Tracks;

/// <summary>A mean speed over a piece of the track, from one recorded point to another; nothing is interpolated.</summary>
/// <param name="Speed">Way over time, m/s.</param>
/// <param name="Start">When the piece begins, seconds since the start of the track.</param>
/// <param name="Duration">How long it lasts, s.</param>
/// <param name="Distance">Way sailed in it, metres.</param>
/// <param name="Run">Number of the run it lies in, from 1; null when it may span turns.</param>
/// <param name="Error">Usual error, m/s to either side: see <see cref="SpeedError"/>.</param>
public sealed record BestSpeed(double Speed, double Start, double Duration, double Distance, int? Run, double Error);
