namespace Finwright.Workshop.Storing;

/// <summary>What kind of thing lies in the bin.</summary>
public enum BinKind
{
    /// <summary>A design with its revisions.</summary>
    Design,

    /// <summary>A build with its parts and photos.</summary>
    Build,

    /// <summary>Readings taken on one day.</summary>
    Bench,

    /// <summary>An outing with its track.</summary>
    Outing,

    /// <summary>An item of the stock.</summary>
    Stock,

    /// <summary>A calibration.</summary>
    Calibration,
}

/// <summary>Something deleted that can be had back.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Id">Its number among things of its kind.</param>
/// <param name="Name">What it is called.</param>
/// <param name="DeletedAt">When it was deleted.</param>
/// <param name="GoneAfter">Until when it can be had back.</param>
public sealed record BinItem(BinKind Kind, long Id, string Name, DateTimeOffset DeletedAt, DateTimeOffset GoneAfter);

/// <summary>What was deleted in the last <see cref="Days"/> days. Older things are thrown away when something is deleted, never when a store is opened.</summary>
public sealed class StoreBin
{
    /// <summary>For how many days a deleted thing can be had back.</summary>
    public const int Days = 30;

    private static readonly Dictionary<BinKind, (string Table, string Name)> Tables = new()
    {
        [BinKind.Design] = ("design", "name"),
        [BinKind.Build] = ("build", "name"),
        [BinKind.Bench] = ("bench_session", "(SELECT name FROM build WHERE build.id = build_id) || ', ' || taken_on"),
        [BinKind.Outing] = ("outing", "sailed_on || ' ' || place"),
        [BinKind.Stock] = ("stock_item", "name || ' ' || batch"),
        [BinKind.Calibration] = ("calibration", "quantity"),
    };

    private readonly StoreConnection _store;

    internal StoreBin(StoreConnection store) => _store = store;

    /// <summary>Everything in the bin, the latest first.</summary>
    public IReadOnlyList<BinItem> List() =>
    [
        .. Tables.SelectMany(kind => _store.All(
            $"SELECT id, {kind.Value.Name} AS name, deleted_at FROM {kind.Value.Table} WHERE deleted_at IS NOT NULL",
            row => new BinItem(kind.Key, row.Whole("id"), row.Text("name").Trim(), row.Moment("deleted_at"), row.Moment("deleted_at").AddDays(Days))))
            .OrderByDescending(item => item.DeletedAt).ThenBy(item => item.Kind).ThenBy(item => item.Id),
    ];

    /// <summary>Puts a thing into the bin, and throws away for good what has lain there too long.</summary>
    internal void Put(BinKind kind, long id) => _store.Change(() =>
    {
        Empty(_store.Time.GetUtcNow().AddDays(-Days));
        if (_store.Execute($"UPDATE {Tables[kind].Table} SET deleted_at = $now WHERE id = $id AND deleted_at IS NULL", ("now", _store.Time.GetUtcNow()), ("id", id)) == 0)
            throw new StoreException(StoreProblem.Wrong, "It is not there, or was deleted already.", "List what there is.");
    });

    /// <summary>Takes a thing out of the bin.</summary>
    internal void TakeBack(BinKind kind, long id) => _store.Change(() =>
    {
        if (_store.Execute($"UPDATE {Tables[kind].Table} SET deleted_at = NULL WHERE id = $id AND deleted_at IS NOT NULL", ("id", id)) == 0)
            throw new StoreException(StoreProblem.Wrong, "It does not lie among the deleted things.", "\"finwright store bin\" lists them.");
    });

    /// <summary>Throws away for good what was deleted before a moment; what something that is kept still needs, stays.</summary>
    private void Empty(DateTimeOffset before)
    {
        // From what hangs on others to what others hang on.
        foreach (string table in (string[])["calibration", "bench_session", "outing"])
            _store.Execute($"DELETE FROM {table} WHERE deleted_at < $before", ("before", before));
        _store.Execute("DELETE FROM build WHERE deleted_at < $before", ("before", before));
        _store.Execute(
            "DELETE FROM design WHERE deleted_at < $before AND NOT EXISTS (SELECT 1 FROM build JOIN revision ON revision.id = build.revision_id WHERE revision.design_id = design.id)",
            ("before", before));
        _store.Execute("DELETE FROM stock_item WHERE deleted_at < $before", ("before", before));
    }
}
