using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Drafts;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Library;
using Finwright.Workshop.Outings;
using Finwright.Workshop.RunSheets;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Stock;

namespace Finwright.Workshop.Storing;

/// <summary>
/// The workshop's memory: designs and revisions, builds, bench readings, outings, stock and calibrations, in one file (a SQLite
/// database). What a call that changes it returns is on the disk. Several programs may have the same store open; one of them changes
/// it at a time, and the others wait.
/// </summary>
/// <remarks>One thread at a time for each opened store.</remarks>
public sealed class WorkshopStore : IDisposable
{
    /// <summary>For how long a change waits for another program's.</summary>
    public static readonly TimeSpan UsualPatience = TimeSpan.FromSeconds(10);

    private readonly StoreConnection _connection;

    private WorkshopStore(StoreConnection connection)
    {
        _connection = connection;
        Shelf = new(connection);
        Stock = new(connection);
        Builds = new(connection);
        Bench = new(connection);
        Outings = new(connection);
        Calibrations = new(connection);
        Drafts = new(connection);
        RunSheets = new(connection);
        Library = new(connection);
        Bin = new(connection);
    }

    /// <summary>The store's file, its whole path.</summary>
    public string Path => _connection.Path;

    /// <summary>Why nothing can be changed, with what to do; null when everything can.</summary>
    public StoreException? Refusal => _connection.Refusal;

    /// <summary>Designs and revisions.</summary>
    public ShelfTable Shelf { get; }

    /// <summary>What is there to build with.</summary>
    public StockTable Stock { get; }

    /// <summary>What was built.</summary>
    public BuildTable Builds { get; }

    /// <summary>Readings of the bench.</summary>
    public BenchTable Bench { get; }

    /// <summary>What was sailed.</summary>
    public OutingTable Outings { get; }

    /// <summary>What builds and bench have taught.</summary>
    public CalibrationTable Calibrations { get; }

    /// <summary>What is being changed in designs and is not yet a revision.</summary>
    public DraftTable Drafts { get; }

    /// <summary>The steps of a print or pour day, and what was done at each.</summary>
    public RunSheetTable RunSheets { get; }
    /// <summary>What is kept for more than one design.</summary>
    public LibraryTable Library { get; }

    /// <summary>What was deleted and can be had back.</summary>
    public StoreBin Bin { get; }

    /// <summary>The connection, for this module.</summary>
    internal StoreConnection Connection => _connection;

    /// <summary>Opens a store. One of an earlier program is brought up to date, with a copy of it kept first.</summary>
    /// <param name="path">The file.</param>
    /// <param name="create">Whether a store that is not there is made; else an empty one is given that has no file and cannot be changed.</param>
    /// <param name="time">The clock; the system's when null.</param>
    /// <param name="patience">For how long changes wait for another program; <see cref="UsualPatience"/> when null.</param>
    /// <returns>The store; only to be read when it cannot be written to, see <see cref="Refusal"/>.</returns>
    /// <exception cref="StoreException">It cannot be opened at all; it was not touched.</exception>
    public static WorkshopStore Open(string path, bool create = true, TimeProvider? time = null, TimeSpan? patience = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        return new(new StoreOpening(FullPath(path), time ?? TimeProvider.System, patience ?? UsualPatience).Run(create));
    }

    /// <summary>An empty store without a file, gone when it is closed: for trying what is to leave no trace when it fails.</summary>
    /// <param name="time">The clock; the system's when null.</param>
    public static WorkshopStore InMemory(TimeProvider? time = null) => new(StoreOpening.InMemory(time ?? TimeProvider.System));

    /// <summary>Makes several changes as one: all of them or none.</summary>
    /// <param name="work">The changes.</param>
    public void Together(Action work) => _connection.Change(work);

    /// <inheritdoc cref="Together(Action)"/>
    /// <returns>What the work gave.</returns>
    public T Together<T>(Func<T> work) => _connection.Change(work);

    /// <summary>Has a deleted thing back.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="id">Its number among things of its kind.</param>
    /// <exception cref="StoreException">It was not deleted, its name was given to another meanwhile, or what it hangs on is not there.</exception>
    public void Restore(BinKind kind, long id)
    {
        switch (kind)
        {
            case BinKind.Design:
                Shelf.Restore(id);
                break;
            case BinKind.Build:
                Builds.Restore(id);
                break;
            case BinKind.Bench:
                Bench.Restore(id);
                break;
            case BinKind.Outing:
                Outings.Restore(id);
                break;
            case BinKind.Stock:
                Stock.Restore(id);
                break;
            case BinKind.Calibration:
                Calibrations.Restore(id);
                break;
            case BinKind.Library:
                Library.Restore(id);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of thing that can be deleted.");
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _connection.Dispose();

    private static string FullPath(string path)
    {
        try
        {
            return System.IO.Path.GetFullPath(path);
        }
        catch (Exception problem) when (problem is ArgumentException or NotSupportedException or PathTooLongException)
        {
            throw new StoreException(StoreProblem.Unreachable, $"\"{path}\" is no path: {problem.Message}", "Name the store's file.", problem);
        }
    }
}
