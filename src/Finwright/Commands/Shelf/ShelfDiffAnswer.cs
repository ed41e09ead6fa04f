using Finwright.Workshop.Comparing;

namespace Finwright.Commands.Shelf;

/// <summary>What differs between two revisions, as JSON.</summary>
/// <param name="MadeBy">Program and version.</param>
/// <param name="First">The first.</param>
/// <param name="Second">The second.</param>
/// <param name="Changes">The fields that differ, in the order of the design file.</param>
internal sealed record ShelfDiffAnswer(string MadeBy, RevisionAnswer First, RevisionAnswer Second, IReadOnlyList<DesignChange> Changes);
