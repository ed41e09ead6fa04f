using Finwright.Design;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Drafts;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Shelf;

/// <summary>A design as the shelf shows it.</summary>
/// <param name="Design">The design.</param>
/// <param name="ChangedAt">When it was last changed: kept, or its draft.</param>
/// <param name="HasUnkept">Whether its draft holds changes that are no revision yet.</param>
/// <param name="Verdicts">Verdicts on its latest revision; null when they were not worked out.</param>
public sealed record ShelfItem(ShelvedDesign Design, DateTimeOffset ChangedAt, bool HasUnkept, VerdictCount? Verdicts)
{
    internal static ShelfItem Of(WorkshopStore store, ShelvedDesign design, string programVersion)
    {
        Draft? draft = store.Drafts.Find(design.Id);
        bool hasUnkept = draft is not null && Differs(store.Drafts.Step(design.Id, draft.Position).Text, store.Shelf.Text(draft.BaseId));
        DateTimeOffset kept = design.Latest.MadeAt;
        return new(
            design,
            hasUnkept && draft!.KeptAt > kept ? draft.KeptAt : kept,
            hasUnkept,
            Predictions.Kept(store, design.Latest, programVersion) is { } results ? VerdictCount.Of(results) : null);
    }

    // The text of an older format differs though the design does not.
    private static bool Differs(string draft, string kept) => draft != kept
        && !(DesignReader.Read(draft).Design is { } one && DesignReader.Read(kept).Design is { } other && DesignWriter.Canonical(one).AsSpan().SequenceEqual(DesignWriter.Canonical(other)));
}
