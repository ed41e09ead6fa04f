namespace Finwright.Workshop.Tracks;

/// <summary>One run: sailed on one tack, on the plane, without a gap (<see cref="RunSplitting"/>).</summary>
/// <param name="Number">From 1, in the order sailed.</param>
/// <param name="Start">Seconds since the start of the track.</param>
/// <param name="Duration">Seconds.</param>
/// <param name="Distance">Way sailed, metres.</param>
/// <param name="MeanSpeed">Way over time, m/s.</param>
/// <param name="Course">Course over the ground from its first point to its last, radians from north by east, 0 to 2π.</param>
/// <param name="BestTenSeconds">Its fastest 10 s; null when it lasts less.</param>
public sealed record SailedRun(int Number, double Start, double Duration, double Distance, double MeanSpeed, double Course, BestSpeed? BestTenSeconds);
