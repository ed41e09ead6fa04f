using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Shelf;

/// <summary>Gives a design another name.</summary>
internal sealed class ShelfRenameCommand : ShelfChange
{
    private readonly Argument<string> _name = Inputs.Needed("NAME", "The design on the shelf.");
    private readonly Argument<string> _new = Inputs.Needed("NEWNAME", "Its new name.");

    public ShelfRenameCommand()
        : base("rename", "Give a design on the shelf another name. Its revisions and builds stay with it.", "finwright shelf rename \"Fairway upright\" \"Fairway 36\"") =>
        AddAll(_name, _new);

    protected override (string Did, Revision? About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Revision before = LatestOf(store, arguments.GetRequiredValue(_name));
        store.Shelf.Rename(before.DesignId, arguments.GetRequiredValue(_new));
        Revision after = store.Shelf.Find(before.Id)!;
        return ($"\"{before.DesignName}\" is called \"{after.DesignName}\" now.", after);
    }
}
