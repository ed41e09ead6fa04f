using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Stock;

/// <summary>What is there to build with, and what was taken of it.</summary>
public sealed class StockTable
{
    private const string Columns = "stock_item.*, (SELECT coalesce(sum(quantity), 0.0) FROM stock_use WHERE item_id = stock_item.id) AS used";

    private readonly StoreConnection _store;

    internal StockTable(StoreConnection store) => _store = store;

    /// <summary>Adds an item.</summary>
    /// <returns>The item with its number.</returns>
    /// <exception cref="StoreException">There is one of that name and batch.</exception>
    public StockItem Add(StockItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return _store.Change(() =>
        {
            RefuseTaken(item);
            return Get(_store.Insert("stock_item", Values(item)));
        });
    }

    /// <summary>Keeps an item as it is now.</summary>
    public StockItem Change(StockItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return _store.Change(() =>
        {
            RefuseTaken(item);
            _store.Update("stock_item", Get(item.Id).Id, Values(item));
            return Get(item.Id);
        });
    }

    /// <summary>Takes something from an item, or puts it back.</summary>
    /// <returns>The use with its number.</returns>
    public StockUse Use(StockUse use)
    {
        ArgumentNullException.ThrowIfNull(use);
        return _store.Change(() => use with
        {
            Id = _store.Insert("stock_use", ("item_id", Get(use.ItemId).Id), ("build_id", use.BuildId), ("quantity", use.Quantity), ("used_on", use.UsedOn), ("note", use.Note)),
        });
    }

    /// <summary>Forgets what was taken for a build under one note.</summary>
    internal void Forget(long build, string note) =>
        _store.Change(() => _store.Execute("DELETE FROM stock_use WHERE build_id = $build AND note = $note", ("build", build), ("note", note)));

    /// <summary>Everything in stock, by kind and name.</summary>
    public IReadOnlyList<StockItem> List() =>
        _store.All($"SELECT {Columns} FROM stock_item WHERE deleted_at IS NULL ORDER BY kind, name COLLATE NOCASE, batch COLLATE NOCASE, id", ReadItem);

    /// <summary>What was taken for a build, or from an item; the first first.</summary>
    /// <param name="item">From which item; null for all.</param>
    /// <param name="build">For which build; null for all.</param>
    public IReadOnlyList<StockUse> Uses(long? item = null, long? build = null) => _store.All(
        "SELECT * FROM stock_use WHERE ($item IS NULL OR item_id = $item) AND ($build IS NULL OR build_id = $build) ORDER BY id",
        row => new StockUse(row.Whole("id"), row.Whole("item_id"), row.WholeOrNull("build_id"), row.Number("quantity"), row.DayOrNull("used_on"), row.Text("note")),
        ("item", item), ("build", build));

    /// <summary>An item by its number, deleted ones too, so that old builds keep their batches.</summary>
    /// <exception cref="StoreException">There is none.</exception>
    public StockItem Get(long id) =>
        _store.First($"SELECT {Columns} FROM stock_item WHERE id = $id", ReadItem, ("id", id)) ?? throw Missing($"number {id}");

    /// <summary>An item as a person names it: its name where only one has it, else name/batch.</summary>
    /// <exception cref="StoreException">There is none, or more than one.</exception>
    public StockItem Get(string label)
    {
        ArgumentNullException.ThrowIfNull(label);
        StockItem[] items = [.. List().Where(item => Same(item.Label, label) || Same(item.Name, label))];
        return Array.Find(items, item => Same(item.Label, label)) is { } exact ? exact
            : items.Length == 1 ? items[0]
            : items.Length == 0 ? throw Missing($"\"{label}\"")
            : throw new StoreException(StoreProblem.Wrong, $"There are {items.Length} batches of \"{label}\": {string.Join(", ", items.Select(item => item.Label))}.", "Name the batch too.");
    }

    /// <summary>Takes an item off the list; for 30 days it can be had back.</summary>
    public void Delete(long id) => new StoreBin(_store).Put(BinKind.Stock, id);

    /// <summary>Has a deleted item back.</summary>
    public void Restore(long id) => _store.Change(() =>
    {
        RefuseTaken(Get(id));
        new StoreBin(_store).TakeBack(BinKind.Stock, id);
    });

    private void RefuseTaken(StockItem item)
    {
        if (string.IsNullOrWhiteSpace(item.Name))
            throw new StoreException(StoreProblem.Wrong, "The item has no name.", "Give it one.");
        if (_store.Count("SELECT count(*) FROM stock_item WHERE name = $name COLLATE NOCASE AND batch = $batch COLLATE NOCASE AND deleted_at IS NULL AND id <> $id", ("name", item.Name), ("batch", item.Batch), ("id", item.Id)) > 0)
            throw new StoreException(StoreProblem.Wrong, $"\"{item.Label}\" is in stock already.", "Give the batch of the new one, or change the one that is there.");
    }

    private static (string Name, object? Value)[] Values(StockItem item) =>
    [
        ("kind", item.Kind), ("name", item.Name), ("batch", item.Batch), ("material", item.Material), ("quantity", item.Quantity), ("unit", item.Unit), ("price", item.Price),
        ("currency", item.Currency), ("bought_on", item.BoughtOn), ("opened_on", item.OpenedOn), ("use_before", item.UseBefore), ("note", item.Note),
    ];

    private static StockItem ReadItem(Row row) => new()
    {
        Id = row.Whole("id"),
        Kind = row.Word<StockKind>("kind"),
        Name = row.Text("name"),
        Batch = row.Text("batch"),
        Material = row.Text("material"),
        Quantity = row.Number("quantity"),
        Unit = row.Word<StockUnit>("unit"),
        Price = row.NumberOrNull("price"),
        Currency = row.Text("currency"),
        BoughtOn = row.DayOrNull("bought_on"),
        OpenedOn = row.DayOrNull("opened_on"),
        UseBefore = row.DayOrNull("use_before"),
        Note = row.Text("note"),
        Used = row.Number("used"),
    };

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static StoreException Missing(string what) => new(StoreProblem.Wrong, $"There is no item {what} in stock.", "\"finwright stock list\" shows what there is.");
}
