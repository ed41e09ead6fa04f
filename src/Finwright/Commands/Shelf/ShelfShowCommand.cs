using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Shelf;

/// <summary>Shows a design with its revisions.</summary>
internal sealed class ShelfShowCommand : StoreCommand
{
    private readonly Argument<string> _name = Inputs.Needed("NAME", "The design on the shelf, or one of its revisions as NAME@2.");

    public ShelfShowCommand()
        : base("show", "Show a design on the shelf: its revisions, what each was made from and why, and what was built of it.", "finwright shelf show \"Fairway upright\"", changes: false) =>
        AddAll(_name);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Revision shown = store.Shelf.Get(Reference.Parse(arguments.GetRequiredValue(_name)));
        ShelvedDesign design = store.Shelf.Find(shown.DesignName)!;
        IReadOnlyList<Revision> revisions = store.Shelf.Revisions(shown.DesignId);
        IReadOnlyList<Build> builds = store.Builds.List(shown.DesignId);
        if (WantsJson(arguments))
        {
            streams.Out.Write(AnswerJson.Write(new ShelvedInFullAnswer(
                $"Finwright {ProgramVersion.Text}", design.Name, design.Tags, design.AddedAt, RevisionAnswer.Of(shown), [.. revisions.Select(RevisionAnswer.Of)], [.. builds.Select(build => build.Name)])));
            return ExitCode.Good;
        }

        streams.Out.WriteLine(shown.Label);
        if (design.Tags.Count > 0)
            streams.Out.WriteLine($"  tags: {string.Join(", ", design.Tags)}");
        streams.Out.WriteLine($"  kept {ShelfText.Day(shown.MadeAt)} by {shown.MadeBy}; content {shown.Hash[..12]}");
        if (shown.Note.Length > 0)
            streams.Out.WriteLine("  " + Wrapping.Wrap(shown.Note, streams.Width, 2, 2));
        streams.Out.WriteLine();
        TextColumns columns = new(" revision", "kept", "made from", "built", "note");
        foreach (Revision revision in revisions)
        {
            string built = string.Join(", ", builds.Where(build => build.RevisionId == revision.Id).Select(build => build.Name));
            columns.Add($"{revision.Number}", ShelfText.Day(revision.MadeAt), revision.Parent, built, ShelfText.FirstLine(revision.Note));
        }

        columns.Write(streams);
        return ExitCode.Good;
    }
}
