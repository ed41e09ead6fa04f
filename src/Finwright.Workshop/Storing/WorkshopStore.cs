using System.Buffers.Binary;
using System.Globalization;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Stock;
using Microsoft.Data.Sqlite;

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

    private static readonly byte[] Magic = "SQLite format 3\0"u8.ToArray();

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
        Opening opening = new(FullPath(path), time ?? TimeProvider.System, patience ?? UsualPatience);
        try
        {
            return new(opening.Run(create));
        }
        catch (SqliteException problem)
        {
            throw StoreException.Of(problem, opening.Path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(StoreProblem.Unreachable, $"{opening.Path} cannot be opened: {problem.Message}", "Check the path, or name another place with --store.", problem);
        }
    }

    /// <summary>Makes several changes as one: all of them or none.</summary>
    /// <param name="work">The changes.</param>
    public void Together(Action work) => _connection.Change(work);

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

    /// <summary>One opening of a store.</summary>
    private sealed class Opening(string path, TimeProvider time, TimeSpan patience)
    {
        public string Path => path;

        public StoreConnection Run(bool create)
        {
            if (Directory.Exists(path))
                throw new StoreException(StoreProblem.Unreachable, $"{path} is a folder.", "Name the store's file in it.");
            if (!File.Exists(path))
            {
                if (!create)
                    return Empty();
                Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
            }
            else
            {
                RefuseForeign(ReadHeader());
            }

            try
            {
                return ForWriting();
            }
            catch (SqliteException problem) when (StoreException.Of(problem, path) is { Problem: StoreProblem.ReadOnly or StoreProblem.Unreachable or StoreProblem.Damaged or StoreProblem.Full } refusal)
            {
                if (!File.Exists(path))
                    throw;
                return ForReading(refusal);
            }
        }

        private StoreConnection ForWriting()
        {
            SqliteConnection connection = Connect(path, SqliteOpenMode.ReadWriteCreate);
            try
            {
                int version = Version(connection);
                if (version != StoreSchema.Current)
                    Upgrade(connection);
                // A reader does not keep a writer waiting, nor the other way round; a change is on the disk before it is told done.
                Run(connection, "PRAGMA journal_mode = WAL");
                Run(connection, "PRAGMA synchronous = FULL");
                return new(connection, path, time, refusal: null);
            }
            catch
            {
                connection.Dispose();
                throw;
            }
        }

        /// <summary>Creates the tables, or brings them up to date.</summary>
        private void Upgrade(SqliteConnection connection)
        {
            int found = Version(connection);
            if (found > 0)
                StoreBackup.BeforeUpgrade(connection, path, found, time);
            using SqliteTransaction transaction = connection.BeginTransaction(deferred: false);
            // Another program may have done it while this one waited.
            int version = Version(connection, transaction);
            if (version < StoreSchema.Current)
            {
                StoreSchema.Upgrade(connection, transaction, version, StoreSchema.Current);
                transaction.Commit();
            }
        }

        /// <summary>A store that cannot be written to. One of an earlier program is brought up to date in memory.</summary>
        private StoreConnection ForReading(StoreException refusal)
        {
            SqliteConnection connection = ConnectForReading();
            try
            {
                int version = Version(connection);
                if (version != StoreSchema.Current)
                {
                    SqliteConnection copy = Connect(":memory:", SqliteOpenMode.Memory);
                    connection.BackupDatabase(copy);
                    connection.Dispose();
                    connection = copy;
                    using SqliteTransaction transaction = copy.BeginTransaction();
                    StoreSchema.Upgrade(copy, transaction, version, StoreSchema.Current);
                    transaction.Commit();
                }

                return new(connection, path, time, refusal);
            }
            catch
            {
                connection.Dispose();
                throw;
            }
        }

        private SqliteConnection ConnectForReading()
        {
            SqliteConnection? plain = null;
            try
            {
                plain = Connect(path, SqliteOpenMode.ReadOnly);
                Version(plain);
                return plain;
            }
            catch (SqliteException)
            {
                plain?.Dispose();
                // Where nothing may be written beside the file, it is read as one that nobody changes meanwhile.
                return Connect(new Uri(path).AbsoluteUri + "?immutable=1", SqliteOpenMode.ReadOnly);
            }
        }

        private StoreConnection Empty()
        {
            SqliteConnection memory = Connect(":memory:", SqliteOpenMode.Memory);
            using (SqliteTransaction transaction = memory.BeginTransaction())
            {
                StoreSchema.Upgrade(memory, transaction, 0, StoreSchema.Current);
                transaction.Commit();
            }

            return new(memory, path, time, new(StoreProblem.Wrong, $"There is no store at {path} yet.", "The first \"finwright shelf add\" makes it."));
        }

        private SqliteConnection Connect(string source, SqliteOpenMode mode)
        {
            SqliteConnection connection = new(new SqliteConnectionStringBuilder
            {
                DataSource = source,
                Mode = mode,
                ForeignKeys = true,
                // A store that is closed is closed, so that its file can be moved.
                Pooling = false,
                DefaultTimeout = Math.Max(1, (int)Math.Ceiling(patience.TotalSeconds)),
            }.ToString());
            connection.Open();
            return connection;
        }

        /// <summary>The version of the tables; 0 for a file without any.</summary>
        private int Version(SqliteConnection connection, SqliteTransaction? transaction = null)
        {
            int version = Number("PRAGMA user_version"), kind = Number("PRAGMA application_id");
            if (version == 0 && kind == 0 && Number("SELECT count(*) FROM sqlite_master") == 0)
                return 0;
            RefuseForeign((kind, version));
            return version;

            int Number(string sql)
            {
                using SqliteCommand command = connection.CreateCommand();
                command.Transaction = transaction;
#pragma warning disable CA2100 // The three texts above.
                command.CommandText = sql;
#pragma warning restore CA2100
                return Convert.ToInt32(command.ExecuteScalar(), CultureInfo.InvariantCulture);
            }
        }

        private static void Run(SqliteConnection connection, string sql)
        {
            using SqliteCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // The two texts above.
            command.CommandText = sql;
#pragma warning restore CA2100
            command.ExecuteNonQuery();
        }

        /// <summary>What the file says it is, read without the database, which might write to it; null when it says nothing yet.</summary>
        private (int Kind, int Version)? ReadHeader()
        {
            Span<byte> header = stackalloc byte[100];
            using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            int length = stream.ReadAtLeast(header, header.Length, throwOnEndOfStream: false);
            if (length == 0)
                return null;
            if (length < header.Length || !header.StartsWith(Magic))
                throw NotAStore();
            // Places in the header of a database: SQLite, "Database File Format", section 1.3.
            (int kind, int version) = (BinaryPrimitives.ReadInt32BigEndian(header[68..]), BinaryPrimitives.ReadInt32BigEndian(header[60..]));
            return kind == 0 && version == 0 ? null : (kind, version);
        }

        private void RefuseForeign((int Kind, int Version)? header)
        {
            if (header is not (int kind, int version))
                return;
            if (kind != StoreSchema.ApplicationId)
                throw NotAStore();
            if (version > StoreSchema.Current)
                throw new StoreException(StoreProblem.Foreign, $"{path} was written by a later Finwright: its tables are version {version}, this program knows {StoreSchema.Current}.", "Use the later program, or name another store with --store. It was not touched.");
        }

        private StoreException NotAStore() =>
            new(StoreProblem.Foreign, $"{path} is not a workshop store.", "Name the store's file with --store. It was not touched.");
    }
}
