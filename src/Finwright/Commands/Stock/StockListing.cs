using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Stock;

/// <summary>A listing of the stock.</summary>
internal abstract class StockListing : StoreCommand
{
    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected StockListing(string name, string description, string example)
        : base(name, description, example, changes: false) => AddAll();

    /// <inheritdoc/>
    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        IReadOnlyList<StockItem> items = store.Stock.List();
        if (WantsJson(arguments))
        {
            streams.Out.Write(AnswerJson.Write(new StockAnswer($"Finwright {ProgramVersion.Text}", [.. items.Select(StockItemAnswer.Of)])));
        }
        else if (items.Count == 0)
        {
            streams.Out.WriteLine(Wrapping.Wrap("Nothing is in stock. Next: finwright stock add filament \"grey PETG\" --quantity 1000 --price 22 --currency EUR", streams.Width));
        }
        else
        {
            TextColumns columns = new("item", "kind", " left", " of", "unit", " price", "remarks");
            foreach (StockItem item in items)
                columns.Add(item.Label, Choice.Of(item.Kind), $"{item.Left:0.##}", $"{item.Quantity:0.##}", Choice.Of(item.Unit), ShelfText.Number(item.Price, "0.00", item.Currency), Remarks(item, DateOnly.FromDateTime(DateTime.Now)));
            columns.Write(streams);
        }

        return ExitCode.Good;
    }

    private static string Remarks(StockItem item, DateOnly today) => ShelfText.Joined(
        item.Left < 0 ? "more was used than bought" : "",
        item.UseBefore is DateOnly last ? $"{(last < today ? "past its date" : "good until")} {ShelfText.Day(last)}" : "",
        ShelfText.FirstLine(item.Note));
}
