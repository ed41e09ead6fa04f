using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Built;

/// <summary>What can be said of a build: options that adding and changing share.</summary>
internal sealed class BuildInputs
{
    private readonly Option<DateOnly?> _madeOn = Inputs.Day("--made-on", "The day on which it was finished.");
    private readonly Option<string?> _filament = Inputs.Text("--filament", "item", "The filament in stock, as NAME or NAME/BATCH.");
    private readonly Option<string?> _resin = Inputs.Text("--resin", "item", "The resin in stock, as NAME or NAME/BATCH.");
    private readonly Option<double?> _plastic = Inputs.Number("--plastic-g", "g", "Plastic used.");
    private readonly Option<double?> _resinMl = Inputs.Number("--resin-ml", "ml", "Resin poured in.");
    private readonly Option<double?> _mass = Inputs.Number("--mass-g", "g", "Mass of the finished fin.");
    private readonly Option<double?> _hours = Inputs.Number("--print-hours", "h", "Time on the printer.");
    private readonly Option<double?> _room = Inputs.Number("--room-celsius", "°C", "Air while it cured.");
    private readonly Option<double?> _bath = Inputs.Number("--bath-celsius", "°C", "Water bath while it cured.");
    private readonly Option<double?> _peak = Inputs.Number("--peak-celsius", "°C", "Hottest reading while it cured.");
    private readonly Option<double?> _cost = Inputs.Number("--cost", "amount", "What it cost, all told: material, hardware, electricity. What was taken from the stock, \"built show\" counts by itself.");
    private readonly Option<string?> _currency = Inputs.Text("--currency", "code", "Currency of the cost, for example EUR.");
    private readonly Option<string?> _problems = Inputs.Text("--problems", "text", "What went wrong.");
    private readonly Option<string?> _note = Inputs.Text("--note", "text", "Anything else worth remembering.");

    /// <summary>The options.</summary>
    public Symbol[] All => [_madeOn, _filament, _resin, _plastic, _resinMl, _mass, _hours, _room, _bath, _peak, _cost, _currency, _problems, _note];

    /// <summary>A build with what was given put in; what was not given stays.</summary>
    public Build Into(Build build, ParseResult arguments, WorkshopStore store) => build with
    {
        MadeOn = arguments.GetValue(_madeOn) ?? build.MadeOn,
        FilamentId = arguments.GetValue(_filament) is string filament ? Item(store, filament, StockKind.Filament, _filament) : build.FilamentId,
        ResinId = arguments.GetValue(_resin) is string resin ? Item(store, resin, StockKind.Resin, _resin) : build.ResinId,
        PlasticGrams = Inputs.Within(arguments, _plastic, 0, 5000) ?? build.PlasticGrams,
        ResinMl = Inputs.Within(arguments, _resinMl, 0, 5000) ?? build.ResinMl,
        MassGrams = Inputs.Within(arguments, _mass, 0, 10000) ?? build.MassGrams,
        PrintHours = Inputs.Within(arguments, _hours, 0, 500) ?? build.PrintHours,
        RoomCelsius = Inputs.Within(arguments, _room, -20, 60) ?? build.RoomCelsius,
        BathCelsius = Inputs.Within(arguments, _bath, 0, 60) ?? build.BathCelsius,
        PeakCelsius = Inputs.Within(arguments, _peak, 0, 300) ?? build.PeakCelsius,
        Cost = Inputs.Within(arguments, _cost, 0, 1e6) ?? build.Cost,
        Currency = arguments.GetValue(_currency) ?? build.Currency,
        Problems = arguments.GetValue(_problems) ?? build.Problems,
        Note = arguments.GetValue(_note) ?? build.Note,
    };

    /// <summary>An item of the stock that is of the right kind.</summary>
    public static long Item(WorkshopStore store, string label, StockKind kind, Option option)
    {
        StockItem item = store.Stock.Get(label);
        return item.Kind == kind ? item.Id : throw new WrongInputException($"{option.Name}: \"{item.Label}\" is no {Choice.Of(kind)}; it is kept as {Choice.Of(item.Kind)}.", "\"finwright stock list\" shows what there is.");
    }
}
