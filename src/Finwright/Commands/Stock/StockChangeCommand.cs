using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Stock;

/// <summary>Changes what is kept of an item.</summary>
internal sealed class StockChangeCommand : StockChange
{
    private readonly Argument<string> _item = Inputs.Needed("ITEM", "The item, as NAME or NAME/BATCH.");
    private readonly Option<string?> _name = Inputs.Text("--name", "text", "Another name for it.");
    private readonly StockInputs _inputs = new();

    public StockChangeCommand()
        : base("change", "Put right what is kept of an item in stock. What is not given stays as it is.", "finwright stock change \"grey PETG\" --opened-on 2027-04-18") =>
        AddAll([_item, _name, .. _inputs.All]);

    protected override (string Did, StockItem About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        StockItem before = store.Stock.Get(arguments.GetRequiredValue(_item));
        StockItem after = _inputs.Into(before with { Name = arguments.GetValue(_name)?.Trim() ?? before.Name }, arguments);
        if (after == before)
            throw new WrongInputException("Nothing is to be changed.", "Say what, for example --price 22.");
        after = store.Stock.Change(after);
        return ($"Changed {ShelfText.Typed(after.Label)}. {LeftOf(after)}", after);
    }
}
