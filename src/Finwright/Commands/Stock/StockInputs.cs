using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Stock;

namespace Finwright.Commands.Stock;

/// <summary>What can be said of an item in stock: options that adding and changing share.</summary>
internal sealed class StockInputs
{
    private readonly Option<string?> _batch = Inputs.Text("--batch", "text", "Batch or lot on the label; tells two purchases of the same thing apart.");
    private readonly Option<string?> _material = Inputs.Text("--material", "name", "The material or resin of the library that it is (finwright materials, finwright resins).");
    private readonly Option<double?> _quantity = Inputs.Number("--quantity", "number", "How much was bought.");
    private readonly Option<StockUnit?> _unit = Inputs.OneOf<StockUnit>("--unit", "In what it is counted; if left out, grams for filament, millilitres for resin, millimetres for rods, else pieces.");
    private readonly Option<double?> _price = Inputs.Number("--price", "amount", "What it cost.");
    private readonly Option<string?> _currency = Inputs.Text("--currency", "code", "Currency of the price, for example EUR.");
    private readonly Option<DateOnly?> _boughtOn = Inputs.Day("--bought-on", "When it was bought.");
    private readonly Option<DateOnly?> _openedOn = Inputs.Day("--opened-on", "When it was opened.");
    private readonly Option<DateOnly?> _useBefore = Inputs.Day("--use-before", "Until when it is good.");
    private readonly Option<string?> _note = Inputs.Text("--note", "text", "Anything else worth remembering.");

    /// <summary>The options.</summary>
    public Symbol[] All => [_batch, _material, _quantity, _unit, _price, _currency, _boughtOn, _openedOn, _useBefore, _note];

    /// <summary>An item with what was given put in; what was not given stays.</summary>
    public StockItem Into(StockItem item, ParseResult arguments) => item with
    {
        Batch = arguments.GetValue(_batch)?.Trim() ?? item.Batch,
        Material = arguments.GetValue(_material)?.Trim() ?? item.Material,
        Quantity = Inputs.Within(arguments, _quantity, 0, 1e7) ?? (item.Quantity > 0 ? item.Quantity : throw new WrongInputException("How much was bought is not said.", "Give it, for example --quantity 1000.")),
        Unit = arguments.GetValue(_unit) ?? item.Unit,
        Price = Inputs.Within(arguments, _price, 0, 1e6) ?? item.Price,
        Currency = arguments.GetValue(_currency)?.Trim() ?? item.Currency,
        BoughtOn = arguments.GetValue(_boughtOn) ?? item.BoughtOn,
        OpenedOn = arguments.GetValue(_openedOn) ?? item.OpenedOn,
        UseBefore = arguments.GetValue(_useBefore) ?? item.UseBefore,
        Note = arguments.GetValue(_note) ?? item.Note,
    };
}
