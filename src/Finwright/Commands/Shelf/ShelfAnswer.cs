using Finwright.Workshop.Shelf;

namespace Finwright.Commands.Shelf;

/// <summary>The shelf as JSON.</summary>
/// <param name="MadeBy">Program and version.</param>
/// <param name="Store">The store's file.</param>
/// <param name="Designs">The designs, by name.</param>
internal sealed record ShelfAnswer(string MadeBy, string Store, IReadOnlyList<ShelvedAnswer> Designs);

/// <summary>A design on the shelf as JSON.</summary>
internal sealed record ShelvedAnswer(string Name, IReadOnlyList<string> Tags, DateTimeOffset AddedAt, int Revisions, int Builds, RevisionAnswer Latest)
{
    public static ShelvedAnswer Of(ShelvedDesign design) => new(design.Name, design.Tags, design.AddedAt, design.Revisions, design.Builds, RevisionAnswer.Of(design.Latest));
}

/// <summary>A revision as JSON.</summary>
internal sealed record RevisionAnswer(string Design, int Number, string? Parent, string Note, DateTimeOffset MadeAt, string MadeBy, string Sha256)
{
    public static RevisionAnswer Of(Revision revision) =>
        new(revision.DesignName, revision.Number, revision.Parent.Length == 0 ? null : revision.Parent, revision.Note, revision.MadeAt, revision.MadeBy, revision.Hash);
}

/// <summary>A design with all its revisions as JSON.</summary>
internal sealed record ShelvedInFullAnswer(string MadeBy, string Name, IReadOnlyList<string> Tags, DateTimeOffset AddedAt, RevisionAnswer Shown, IReadOnlyList<RevisionAnswer> Revisions, IReadOnlyList<string> Builds);

/// <summary>What was done, as JSON.</summary>
/// <param name="MadeBy">Program and version.</param>
/// <param name="Did">In a sentence.</param>
/// <param name="Revision">The revision that it was about; null for a whole design.</param>
internal sealed record ShelfDoneAnswer(string MadeBy, string Did, RevisionAnswer? Revision);
