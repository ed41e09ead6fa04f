using Finwright.Terminal;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Stock;

/// <summary>A command that changes the stock.</summary>
internal abstract class StockChange : StoreChange<StockItem>
{
    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected StockChange(string name, string description, string example)
        : base(name, description, example)
    {
    }

    /// <inheritdoc/>
    protected sealed override object Answer(WorkshopStore store, string madeBy, string did, StockItem about) => new StockDoneAnswer(madeBy, did, StockItemAnswer.Of(about));

    /// <summary>How much is left, in words.</summary>
    protected static string LeftOf(StockItem item) => $"{item.Left:0.##} {Choice.Of(item.Unit)} of {ShelfText.Typed(item.Label)} are left.";
}
