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

    /// <summary>A thing of the library.</summary>
    Library,
}

/// <summary>Something deleted that can be had back.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Id">Its number among things of its kind.</param>
/// <param name="Name">What it is called.</param>
/// <param name="DeletedAt">When it was deleted.</param>
/// <param name="GoneAfter">Until when it can be had back at least.</param>
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
        [BinKind.Library] = ("library_item", "name"),
    };

    /// <summary>A condition on rows that hang on a build: it is not deleted. In SQL, for tables with a column <c>build_id</c>.</summary>
    internal const string BuildIsThere = "NOT EXISTS (SELECT 1 FROM build WHERE build.id = build_id AND build.deleted_at IS NOT NULL)";

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

    /// <summary>Refuses what hangs on a build that is not there, or deleted.</summary>
    internal void RefuseWithoutBuild(long build)
    {
        string? name = _store.First("SELECT name, deleted_at FROM build WHERE id = $id", row => row.TextOrNull("deleted_at") is null ? "" : row.Text("name"), ("id", build));
        if (name is null)
            throw new StoreException(StoreProblem.Wrong, $"There is no build number {build}.", "\"finwright built list\" shows what there is.");
        if (name.Length > 0)
            throw new StoreException(StoreProblem.Wrong, $"The build \"{name}\" is deleted.", $"Have it back first: \"finwright store restore build {build}\".");
    }

    /// <summary>Takes a thing out of the bin.</summary>
    internal void TakeBack(BinKind kind, long id) => _store.Change(() =>
    {
        if (_store.Execute($"UPDATE {Tables[kind].Table} SET deleted_at = NULL WHERE id = $id AND deleted_at IS NOT NULL", ("id", id)) == 0)
            throw new StoreException(StoreProblem.Wrong, "It does not lie among the deleted things.", "\"finwright store bin\" lists them.");
    });

    /// <summary>Throws away for good what was deleted before a moment; what something that is kept still names, stays, so that it does not forget.</summary>
    private void Empty(DateTimeOffset before)
    {
        // From what hangs on others to what others hang on.
        Throw("calibration");
        Throw("bench_session", "calibration_session WHERE calibration_session.session_id = bench_session.id");
        Throw("outing");
        Throw("library_item");
        Throw("build", "outing WHERE outing.build_id = build.id");
        Throw("design", "build JOIN revision ON revision.id = build.revision_id WHERE revision.design_id = design.id");
        Throw(
            "stock_item",
            "build WHERE stock_item.id IN (build.filament_id, build.resin_id)",
            "build_part WHERE build_part.filament_id = stock_item.id",
            "stock_use WHERE stock_use.item_id = stock_item.id AND stock_use.build_id IS NOT NULL",
            "calibration WHERE stock_item.id IN (calibration.filament_id, calibration.resin_id)");

        void Throw(string table, params ReadOnlySpan<string> needs)
        {
            string sql = $"DELETE FROM {table} WHERE deleted_at < $before";
            foreach (string need in needs)
                sql += $" AND NOT EXISTS (SELECT 1 FROM {need})";
            _store.Execute(sql, ("before", before));
        }
    }
}
