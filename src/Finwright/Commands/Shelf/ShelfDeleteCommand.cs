using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Shelf;

/// <summary>Takes a design off the shelf.</summary>
internal sealed class ShelfDeleteCommand : ShelfChange
{
    private readonly Argument<string> _name = Inputs.Needed("NAME", "The design on the shelf, with all its revisions.");

    public ShelfDeleteCommand()
        : base("delete", $"Take a design off the shelf, with all its revisions. For {StoreBin.Days} days \"shelf restore\" has it back. A design that was built stays until its builds are deleted.", "finwright shelf delete Spare") =>
        AddAll(_name);

    protected override (string Did, Revision? About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Revision latest = LatestOf(store, arguments.GetRequiredValue(_name));
        store.Shelf.Delete(latest.DesignId);
        return ($"Took \"{latest.DesignName}\" off the shelf. For {StoreBin.Days} days you can have it back: finwright shelf restore {ShelfText.Typed(latest.DesignName)}", null);
    }
}
