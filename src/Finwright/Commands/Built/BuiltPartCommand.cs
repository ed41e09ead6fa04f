using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Built;

/// <summary>Keeps when and of what a part of a build was printed.</summary>
internal sealed class BuiltPartCommand : BuiltChange
{
    private readonly Argument<string> _build = Inputs.Needed("BUILD", "The build.");
    private readonly Argument<string> _part = Inputs.Needed("PART", "The part, as the build sheet names it.");
    private readonly Option<DateOnly?> _printedOn = Inputs.Day("--printed-on", "The day on which it was printed.");
    private readonly Option<string?> _filament = Inputs.Text("--filament", "item", "The filament in stock, where it is another than the build's.");
    private readonly Option<double?> _plastic = Inputs.Number("--plastic-g", "g", "Plastic used.");
    private readonly Option<double?> _hours = Inputs.Number("--print-hours", "h", "Time on the printer.");
    private readonly Option<string?> _note = Inputs.Text("--note", "text", "Anything worth remembering.");

    public BuiltPartCommand()
        : base("part", "Keep when a part of a build was printed, of which filament, and what it took. What is not given stays as it is.", "finwright built part \"Fairway grey\" blade --printed-on 2027-04-02 --plastic-g 150") =>
        AddAll(_build, _part, _printedOn, _filament, _plastic, _hours, _note);

    protected override (string Did, Build About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Build build = store.Builds.Get(arguments.GetRequiredValue(_build));
        string name = arguments.GetRequiredValue(_part).Trim();
        BuildPart before = store.Builds.Parts(build.Id).FirstOrDefault(part => string.Equals(part.Part, name, StringComparison.OrdinalIgnoreCase)) ?? new(name, null, null, null, null, "");
        BuildPart after = before with
        {
            PrintedOn = arguments.GetValue(_printedOn) ?? before.PrintedOn,
            FilamentId = arguments.GetValue(_filament) is string filament ? BuildInputs.Item(store, filament, StockKind.Filament, _filament) : before.FilamentId,
            PlasticGrams = Inputs.Within(arguments, _plastic, 0, 5000) ?? before.PlasticGrams,
            PrintHours = Inputs.Within(arguments, _hours, 0, 500) ?? before.PrintHours,
            Note = arguments.GetValue(_note) ?? before.Note,
        };
        store.Together(() =>
        {
            store.Builds.Keep(build.Id, after);
            BuildStock.Take(store, build);
        });
        return ($"Kept the part {ShelfText.Typed(before.Part)} of {ShelfText.Typed(build.Name)}.", build);
    }
}
