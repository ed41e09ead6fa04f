namespace Finwright.Workshop.Tracks;

/// <summary>How fast the board went on courses within one bin.</summary>
/// <param name="Course">Middle of the bin, radians from north by east, 0 to 2π.</param>
/// <param name="TimeShare">Share of the time sailed that was sailed on these courses, 0 to 1.</param>
/// <param name="MeanSpeed">Way over time on these courses, m/s; null when none was sailed.</param>
/// <param name="BestTenSeconds">Fastest 10 s of a run whose course lies here, m/s; null when there is none.</param>
public sealed record CourseSpeed(double Course, double TimeShare, double? MeanSpeed, double? BestTenSeconds);
