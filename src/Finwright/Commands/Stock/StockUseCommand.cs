using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Stock;

/// <summary>Takes something from the stock.</summary>
internal sealed class StockUseCommand : StockChange
{
    private readonly Argument<string> _item = Inputs.Needed("ITEM", "The item, as NAME or NAME/BATCH.");
    private readonly Option<double?> _quantity = Inputs.Number("--quantity", "number", "How much, in the item's unit; below 0 puts it back.");
    private readonly Option<string?> _build = Inputs.Text("--build", "name", "For which build.");
    private readonly Option<DateOnly?> _usedOn = Inputs.Day("--used-on", "When; today if left out.");
    private readonly Option<string?> _note = Inputs.Text("--note", "text", "What for.");

    public StockUseCommand()
        : base("use", "Take something from the stock by hand: rods, nuts, waste. What \"built add\" says of plastic and resin is taken by itself.", "finwright stock use \"carbon rod 6 mm\" --quantity 220 --build \"Fairway grey\"") =>
        AddAll(_item, _quantity, _build, _usedOn, _note);

    protected override (string Did, StockItem About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        StockItem item = store.Stock.Get(arguments.GetRequiredValue(_item));
        double quantity = Inputs.Within(arguments, _quantity, -1e6, 1e6) ?? throw new WrongInputException("How much was used is not said.", "Give it, for example --quantity 120.");
        long? build = arguments.GetValue(_build) is string name ? store.Builds.Get(name).Id : null;
        store.Stock.Use(new(0, item.Id, build, quantity, arguments.GetValue(_usedOn) ?? DateOnly.FromDateTime(DateTime.Now), arguments.GetValue(_note) ?? ""));
        item = store.Stock.Get(item.Id);
        return (LeftOf(item), item);
    }
}
