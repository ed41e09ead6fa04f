using Finwright.Design;

namespace Finwright.Workshop.Tracks;

/// <summary>What came of reading a file of positions.</summary>
/// <param name="Track">The track; null when there is none that could be measured.</param>
/// <param name="Findings">Why it cannot be read (one error), or what to know about it.</param>
public sealed record TrackReading(Track? Track, IReadOnlyList<Finding> Findings);
