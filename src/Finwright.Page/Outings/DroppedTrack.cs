using Finwright.Design;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Tracks;

namespace Finwright.Page.Outings;

/// <summary>A track that was read and is not kept yet.</summary>
/// <param name="Track">The track.</param>
/// <param name="Kept">As it is to be kept.</param>
/// <param name="Findings">What was found while it was read.</param>
public sealed record DroppedTrack(Track Track, KeptTrack Kept, IReadOnlyList<Finding> Findings);
