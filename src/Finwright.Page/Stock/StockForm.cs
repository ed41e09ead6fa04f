using Finwright.Page.Fields;
using Finwright.Page.Words;
using Finwright.Workshop.Stock;

namespace Finwright.Page.Stock;

/// <summary>What is said of an item in stock, as it is typed.</summary>
public sealed class StockForm
{
    /// <summary>Names of the fields.</summary>
    public const string Kind = "kind", Name = "name", Batch = "batch", Material = "material", Quantity = "quantity", Unit = "unit", Price = "price", Currency = "currency",
        BoughtOn = "bought-on", OpenedOn = "opened-on", UseBefore = "use-before", Note = "note";

    private readonly StockItem? _before;

    /// <summary>The form of an item.</summary>
    /// <param name="reader">The reader's words and units.</param>
    /// <param name="item">The item as it is kept; null for a further one.</param>
    /// <param name="today">The day.</param>
    public StockForm(Reader reader, StockItem? item, DateOnly today)
    {
        (_before, Form, Today) = (item, new(reader), today);
        Form[Kind] = (item?.Kind ?? StockKind.Filament).ToString();
        Form[Name] = item?.Name ?? "";
        Form[Batch] = item?.Batch ?? "";
        Form[Material] = item?.Material ?? "";
        Form.Put(Quantity, item?.Quantity);
        Form[Unit] = (item?.Unit ?? StockUnit.Grams).ToString();
        Form.Put(Price, item?.Price);
        Form[Currency] = item?.Currency ?? "";
        Form.Put(BoughtOn, item?.BoughtOn);
        Form.Put(OpenedOn, item?.OpenedOn);
        Form.Put(UseBefore, item?.UseBefore);
        Form[Note] = item?.Note ?? "";
    }

    /// <summary>What is typed.</summary>
    public TypedForm Form { get; }

    /// <summary>Number of the item; 0 for a further one.</summary>
    public long Id => _before?.Id ?? 0;

    private DateOnly Today { get; }

    /// <summary>After another kind was chosen: it is counted in its usual unit.</summary>
    public void FollowKind()
    {
        if (Enum.TryParse(Form[Kind], out StockKind kind))
            Form[Unit] = StockWords.UsualUnit(kind).ToString();
    }

    /// <summary>The item as typed; null when something is wrong, which is said at its field.</summary>
    public StockItem? ToKeep(Reader reader)
    {
        ArgumentNullException.ThrowIfNull(reader);
        Form.Judge();
        double quantity = Form.Number(Quantity, 0, 1e7, isNeeded: true) ?? 0;
        if (quantity == 0 && Form.WrongAt(Quantity) is null)
            Form.Refuse(Quantity, reader["Nothing is no purchase: say how much was bought."]);
        StockItem item = new()
        {
            Id = Id,
            Kind = Enum.TryParse(Form[Kind], out StockKind kind) ? kind : StockKind.Other,
            Name = Form.Text(Name, 80, isNeeded: true),
            Batch = Form.Text(Batch, 80),
            Material = Form.Text(Material, 80),
            Quantity = quantity,
            Unit = Enum.TryParse(Form[Unit], out StockUnit unit) ? unit : StockUnit.Pieces,
            Price = Form.Number(Price, 0, 1e6),
            Currency = Form.Text(Currency, 8),
            BoughtOn = Form.Day(BoughtOn, Today, kept: _before?.BoughtOn),
            OpenedOn = Form.Day(OpenedOn, Today, kept: _before?.OpenedOn),
            UseBefore = Form.Day(UseBefore),
            Note = Form.Text(Note, 2000),
        };
        return Form.IsSound ? item : null;
    }
}
