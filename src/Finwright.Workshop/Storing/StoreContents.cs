namespace Finwright.Workshop.Storing;

/// <summary>How much a store holds; what lies in the bin counts only there.</summary>
/// <param name="Path">The store's file.</param>
/// <param name="Exists">Whether it is there already.</param>
/// <param name="Version">Version of its tables.</param>
/// <param name="Bytes">How long its file is, with the changes that still lie beside it.</param>
/// <param name="Designs">Designs on the shelf.</param>
/// <param name="Revisions">Revisions of them.</param>
/// <param name="Builds">Builds.</param>
/// <param name="BenchSessions">Sessions on the bench.</param>
/// <param name="Outings">Outings.</param>
/// <param name="Tracks">Outings with a track.</param>
/// <param name="StockItems">Items in stock.</param>
/// <param name="Calibrations">Calibrations.</param>
/// <param name="Deleted">Things in the bin.</param>
public sealed record StoreContents(
    string Path, bool Exists, int Version, long Bytes, int Designs, int Revisions, int Builds, int BenchSessions, int Outings, int Tracks, int StockItems, int Calibrations, int Deleted)
{
    /// <summary>Counts what a store holds.</summary>
    /// <exception cref="StoreException">It cannot be read.</exception>
    public static StoreContents Of(WorkshopStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        StoreConnection connection = store.Connection;
        return new(
            store.Path,
            File.Exists(store.Path),
            StoreSchema.Current,
            BytesOf(store.Path) + BytesOf(store.Path + "-wal"),
            Count("design WHERE deleted_at IS NULL"),
            Count("revision JOIN design ON design.id = revision.design_id WHERE design.deleted_at IS NULL"),
            Count("build WHERE deleted_at IS NULL"),
            Count($"bench_session WHERE deleted_at IS NULL AND {StoreBin.BuildIsThere}"),
            Count("outing WHERE deleted_at IS NULL"),
            Count("track JOIN outing ON outing.id = track.outing_id WHERE outing.deleted_at IS NULL"),
            Count("stock_item WHERE deleted_at IS NULL"),
            Count($"calibration WHERE deleted_at IS NULL AND {StoreBin.BuildIsThere}"),
            store.Bin.List().Count);

        int Count(string what) => (int)connection.Count($"SELECT count(*) FROM {what}");

        static long BytesOf(string file) => File.Exists(file) ? new FileInfo(file).Length : 0;
    }
}
