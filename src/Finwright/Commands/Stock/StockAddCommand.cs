using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Stock;

/// <summary>Adds an item to the stock.</summary>
internal sealed class StockAddCommand : StockChange
{
    private readonly Argument<string> _kind = Inputs.Needed("KIND", $"What kind of thing: {string.Join(", ", Choice.All<StockKind>())}.");
    private readonly Argument<string> _name = Inputs.Needed("NAME", "What it is called.");
    private readonly StockInputs _inputs = new();

    public StockAddCommand()
        : base("add", "Add a purchase to the stock: a spool, a can, a rod, a bag of nuts.", "finwright stock add filament \"white PETG\" --batch W3 --quantity 1000 --price 22 --currency EUR") =>
        AddAll([_kind, _name, .. _inputs.All]);

    protected override (string Did, StockItem About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        string word = arguments.GetRequiredValue(_kind);
        StockKind kind = Choice.Find<StockKind>(word) ?? throw new WrongInputException($"There is no kind \"{Inputs.Shorten(word)}\".", $"Give one of {string.Join(", ", Choice.All<StockKind>())}.");
        StockUnit usual = kind switch { StockKind.Filament => StockUnit.Grams, StockKind.Resin => StockUnit.Millilitres, StockKind.Rod => StockUnit.Millimetres, _ => StockUnit.Pieces };
        StockItem item = store.Stock.Add(_inputs.Into(new() { Kind = kind, Name = arguments.GetRequiredValue(_name).Trim(), Quantity = 0, Unit = usual }, arguments));
        return ($"Put {ShelfText.Typed(item.Label)} into stock.", item);
    }
}
