using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Stock;

/// <summary>Takes an item off the list.</summary>
internal sealed class StockDeleteCommand : StockChange
{
    private readonly Argument<string> _item = Inputs.Needed("ITEM", "The item, as NAME or NAME/BATCH.");

    public StockDeleteCommand()
        : base("delete", $"Take an item off the list. Builds keep saying that they were made of it; for {StoreBin.Days} days \"stock restore\" has it back.", "finwright stock delete \"carbon rod 6 mm\"") =>
        AddAll(_item);

    protected override (string Did, StockItem About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        StockItem item = store.Stock.Get(arguments.GetRequiredValue(_item));
        store.Stock.Delete(item.Id);
        return ($"Deleted {ShelfText.Typed(item.Label)}. For {StoreBin.Days} days you can have it back: finwright stock restore {item.Id}", item);
    }
}
