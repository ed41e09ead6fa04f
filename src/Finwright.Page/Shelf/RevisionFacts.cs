using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Outlines;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Shelf;

/// <summary>What became of a revision.</summary>
/// <param name="Planform">Its planform; null when this program cannot draw it.</param>
/// <param name="Built">Builds of it, each with how often it was sailed.</param>
/// <param name="Verdicts">Verdicts as they are kept; null when none are.</param>
/// <param name="IsFromOtherVersion">Whether results are kept that another version of the program worked out.</param>
public sealed record RevisionFacts(Planform? Planform, IReadOnlyList<(string Build, int Outings)> Built, VerdictCount? Verdicts, bool IsFromOtherVersion)
{
    /// <summary>Looks it up.</summary>
    /// <param name="store">The store.</param>
    /// <param name="revision">The revision.</param>
    /// <param name="builds">Builds of the design.</param>
    /// <param name="programVersion">Version of the program.</param>
    public static RevisionFacts Of(WorkshopStore store, Revision revision, IReadOnlyList<Build> builds, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(revision);
        FinResults? results = Predictions.Kept(store, revision, programVersion);
        return new(
            PlanformOf(store.Shelf.Read(revision.Id)),
            [.. builds.Where(build => build.RevisionId == revision.Id).Select(build => (build.Name, store.Outings.List(build.Id).Count))],
            results is null ? null : VerdictCount.Of(results),
            results is null && store.Shelf.Prediction(revision.Id) is not null);
    }

    private static Planform? PlanformOf(DesignReading reading) =>
        reading is { HasErrors: false, Design: { } design } && OutlineFromDesign.Create(design.Shape.Outline, []) is { } outline ? Planform.Of(outline) : null;
}
