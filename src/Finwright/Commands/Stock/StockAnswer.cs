using Finwright.Workshop.Stock;

namespace Finwright.Commands.Stock;

/// <summary>The stock as JSON.</summary>
/// <param name="MadeBy">Program and version.</param>
/// <param name="Items">The items, by kind and name.</param>
internal sealed record StockAnswer(string MadeBy, IReadOnlyList<StockItemAnswer> Items);

/// <summary>What was done, as JSON.</summary>
/// <param name="MadeBy">Program and version.</param>
/// <param name="Did">In a sentence.</param>
/// <param name="Item">The item that it was about.</param>
internal sealed record StockDoneAnswer(string MadeBy, string Did, StockItemAnswer Item);

/// <summary>An item in stock as JSON; quantities in its unit.</summary>
internal sealed record StockItemAnswer(
    long Number, StockKind Kind, string Name, string Batch, string Material, double Quantity, double Used, double Left, StockUnit Unit, double? Price, string Currency, DateOnly? BoughtOn, DateOnly? OpenedOn, DateOnly? UseBefore, string Note)
{
    public static StockItemAnswer Of(StockItem item) =>
        new(item.Id, item.Kind, item.Name, item.Batch, item.Material, item.Quantity, item.Used, item.Left, item.Unit, item.Price, item.Currency, item.BoughtOn, item.OpenedOn, item.UseBefore, item.Note);
}
