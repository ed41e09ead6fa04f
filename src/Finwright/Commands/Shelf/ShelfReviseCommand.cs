using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Shelf;

/// <summary>Keeps a design as a further revision.</summary>
internal sealed class ShelfReviseCommand : ShelfChange
{
    private readonly Argument<string> _name = Inputs.Needed("NAME", "The design on the shelf; NAME@2 when the new revision was made from an older one.");
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file as it is now.");
    private readonly Option<string?> _note = Inputs.Text("--note", "text", "What was changed, and why.");

    public ShelfReviseCommand()
        : base("revise", "Keep a design file as the next revision of a design on the shelf. Earlier revisions stay as they are.", "finwright shelf revise \"Fairway upright\" my-fin.fin.json --note \"a thinner tip\"") =>
        AddAll(_name, _file, _note);

    protected override (string Did, Revision? About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Revision parent = store.Shelf.Get(Reference.Parse(arguments.GetRequiredValue(_name)));
        ShelfEntry entry = ShelvedInput.Read(arguments.GetRequiredValue(_file), arguments.GetValue(_note) ?? "", streams, cancellation);
        Revision revised = store.Shelf.Revise(parent.DesignId, entry, parent.Id);
        return ($"Kept {revised.Label}, made from {revised.Parent}.", revised);
    }
}
