using System.CommandLine;
using System.Globalization;
using Finwright.Terminal;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Stock;

/// <summary>Has a deleted item back.</summary>
internal sealed class StockRestoreCommand : StockChange
{
    private readonly Argument<string> _number = Inputs.Needed("NUMBER", "Its number, as \"finwright store bin\" lists it.");

    public StockRestoreCommand()
        : base("restore", "Have a deleted item of the stock back.", "finwright stock restore 3") =>
        AddAll(_number);

    protected override (string Did, StockItem About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        string text = arguments.GetRequiredValue(_number);
        if (!long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long number))
            throw new WrongInputException($"\"{Inputs.Shorten(text)}\" is no number of an item.", "\"finwright store bin\" lists what was deleted, with numbers.");
        store.Stock.Restore(number);
        StockItem item = store.Stock.Get(number);
        return ($"{ShelfText.Typed(item.Label)} is on the list again.", item);
    }
}
