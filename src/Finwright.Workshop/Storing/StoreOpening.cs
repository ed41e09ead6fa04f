using System.Formats.Tar;
using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Storing;

/// <summary>One opening of a store: for writing where that can be done, else for reading.</summary>
/// <param name="path">The file, its whole path.</param>
/// <param name="time">The clock.</param>
/// <param name="patience">For how long to wait for other programs.</param>
/// <remarks>
/// The file is only ever opened through the database: closing it by other means would drop the locks that this program holds on it
/// ("How To Corrupt An SQLite Database File", section 2.2).
/// </remarks>
internal sealed class StoreOpening(string path, TimeProvider time, TimeSpan patience)
{
    /// <summary>Bytes: one page of the least size (SQLite, "Database File Format", section 1.3.2).</summary>
    private const int SmallestDatabase = 512;

    /// <summary>Held while a file that is still empty is looked at and filled, see the remarks.</summary>
    private static readonly Lock Making = new();

    /// <summary>Opens the store.</summary>
    /// <param name="create">Whether a store that is not there is made; else an empty one is given that has no file and cannot be changed.</param>
    /// <exception cref="StoreException">It cannot be opened at all; it was not touched.</exception>
    public StoreConnection Run(bool create)
    {
        try
        {
            if (Directory.Exists(path) || Path.EndsInDirectorySeparator(path))
                throw new StoreException(StoreProblem.Unreachable, $"{path} is a folder.", "Name the store's file in it.");
            long length = LengthOf(path);
            // The database would take a file of a byte for one that is to be filled.
            if (length is > 0 and < SmallestDatabase)
                throw NotAStore();
            if (length > 0)
            {
                RefuseForeign();
                return Existing();
            }

            lock (Making)
            {
                RefuseDevice();
                if (!create)
                    return Empty();
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                return Existing();
            }
        }
        catch (SqliteException problem)
        {
            throw Named(problem);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(StoreProblem.Unreachable, $"{path} cannot be opened: {problem.Message}", "Check the path, or name another place with --store.", problem);
        }
    }

    /// <summary>An empty store without a file.</summary>
    public static StoreConnection InMemory(TimeProvider time) => new(EmptyDatabase(), "the store in memory", time, refusal: null);

    private StoreConnection Existing()
    {
        try
        {
            return ForWriting();
        }
        catch (Exception problem) when (Refusal(problem) is { Problem: StoreProblem.ReadOnly or StoreProblem.Unreachable or StoreProblem.Damaged or StoreProblem.Full } refusal)
        {
            if (!File.Exists(path))
                throw;
            return ForReading(refusal);
        }
    }

    private StoreConnection ForReading(StoreException refusal)
    {
        try
        {
            return AsItIs(refusal);
        }
        catch (Exception problem) when (Refusal(problem) is { Problem: StoreProblem.Damaged })
        {
            (SqliteConnection saved, Rescue.RescueReport report) = Rescue.StoreRescue.InMemory(path, time.GetUtcNow());
            // A step that failed says more than that something is wrong.
            return new(saved, path, time, problem as StoreException ?? StoreException.Saved(report));
        }
    }

    private StoreException? Refusal(Exception problem) => problem is SqliteException said ? Named(said) : problem as StoreException;

    private StoreConnection ForWriting()
    {
        SqliteConnection connection = Connect(path, SqliteOpenMode.ReadWriteCreate);
        try
        {
            // A file that is write-protected is opened for reading without a word, and would get companions that nobody may write to later.
            if (SQLitePCL.raw.sqlite3_db_readonly(connection.Handle, "main") == 1)
                throw ReadOnly();
            if (Version(connection) != StoreSchema.Current)
                Upgrade(connection);
            // A reader does not keep a writer waiting, nor the other way round; a change is on the disk before it is told done.
            Run(connection, "PRAGMA journal_mode = WAL");
            Run(connection, "PRAGMA synchronous = FULL");
            Run(connection, "PRAGMA fullfsync = ON");
            return new(connection, path, time, refusal: null);
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>Creates the tables, or brings them up to date after a copy of them was made.</summary>
    private void Upgrade(SqliteConnection connection)
    {
        using SqliteTransaction transaction = connection.BeginTransaction(deferred: false);
        // Another program may have done it while this one waited. From here on it waits for us, so that the copy holds everything.
        int version = Version(connection, transaction);
        if (version >= StoreSchema.Current)
            return;
        string copy = StoreBackup.NameBeforeUpgrade(path, version, time);
        if (version > 0)
        {
            using SqliteConnection reading = Connect(path, SqliteOpenMode.ReadOnly);
            StoreBackup.Copy(reading, path, copy);
        }

        try
        {
            StoreSchema.Upgrade(connection, transaction, version, StoreSchema.Current);
        }
        catch (SqliteException problem) when (version > 0)
        {
            // The store is as it was: a further copy at each further try would be of no use.
            File.Delete(copy);
            throw NotUpgraded(version, problem);
        }

        transaction.Commit();
    }

    /// <summary>A store that cannot be written to. One of an earlier program is brought up to date in memory.</summary>
    private StoreConnection AsItIs(StoreException refusal)
    {
        SqliteConnection connection = ConnectForReading();
        try
        {
            int version = Version(connection);
            if (version != StoreSchema.Current)
            {
                SqliteConnection copy = Connect(":memory:", SqliteOpenMode.Memory);
                try
                {
                    connection.BackupDatabase(copy);
                    using SqliteTransaction transaction = copy.BeginTransaction();
                    StoreSchema.Upgrade(copy, transaction, version, StoreSchema.Current);
                    transaction.Commit();
                }
                catch (SqliteException problem)
                {
                    copy.Dispose();
                    throw Named(problem) is { Problem: StoreProblem.Damaged } ? NotUpgraded(version, problem) : problem;
                }

                connection.Dispose();
                connection = copy;
            }

            // What can be read but not opened for writing lies in a folder where no file may be written beside it.
            return new(connection, path, time, refusal.InnerException is SqliteException { SqliteErrorCode: 14 } ? ReadOnly() : refusal);
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    private SqliteConnection ConnectForReading()
    {
        // Where nobody writes, and perhaps nothing may be written beside the file, it is read as one that nobody changes meanwhile.
        if (LengthOf(path + "-wal") == 0)
            return Connect(AsItLies, SqliteOpenMode.ReadOnly);
        if (!File.Exists(path + "-shm"))
            return CopyForReading();
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
            return CopyForReading();
        }
    }

    /// <summary>
    /// Changes that a killed program left beside the store belong to it: without them, it would be read as it was before. Where they
    /// cannot be joined to it, they are in a copy, in memory.
    /// </summary>
    private SqliteConnection CopyForReading()
    {
        string folder = Directory.CreateTempSubdirectory("finwright-").FullName;
        SqliteConnection memory = Connect(":memory:", SqliteOpenMode.Memory);
        try
        {
            string copy = Path.Combine(folder, StorePlace.FileName);
            foreach (string beside in (string[])["", "-wal"])
            {
                File.Copy(path + beside, copy + beside);
                File.SetAttributes(copy + beside, FileAttributes.Normal);
            }

            using SqliteConnection joined = Connect(copy, SqliteOpenMode.ReadWrite);
            joined.BackupDatabase(memory);
            return memory;
        }
        catch
        {
            memory.Dispose();
            throw;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private StoreConnection Empty() => new(EmptyDatabase(), path, time, new(StoreProblem.Wrong, $"There is no store at {path} yet.", "The first \"finwright shelf add\" makes it."));

    private static SqliteConnection EmptyDatabase()
    {
        SqliteConnection memory = new(new SqliteConnectionStringBuilder { DataSource = ":memory:", Mode = SqliteOpenMode.Memory, ForeignKeys = true, Pooling = false }.ToString());
        memory.Open();
        using SqliteTransaction transaction = memory.BeginTransaction();
        StoreSchema.Upgrade(memory, transaction, 0, StoreSchema.Current);
        transaction.Commit();
        return memory;
    }

    /// <summary>The file without what may lie beside it, and without a lock or a trace of being read.</summary>
    private string AsItLies => new Uri(path).AbsoluteUri + "?immutable=1";

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
        try
        {
            connection.Open();
            // Waits end soon after the other program does, not at the next of a few looks a second.
            Run(connection, string.Create(CultureInfo.InvariantCulture, $"PRAGMA busy_timeout = {(int)Math.Max(1, patience.TotalMilliseconds)}"));
            // Bytes that make no sense are found before they are followed.
            Run(connection, "PRAGMA cell_size_check = ON");
            Run(connection, "PRAGMA trusted_schema = OFF");
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>The version of the tables; 0 for a file without any.</summary>
    private int Version(SqliteConnection connection, SqliteTransaction? transaction = null)
    {
        int version = Number("PRAGMA user_version"), kind = Number("PRAGMA application_id");
        if (version == 0 && kind == 0 && Number("SELECT count(*) FROM sqlite_schema") == 0)
            return 0;
        if (kind != StoreSchema.ApplicationId || version < 1)
            throw NotAStore();
        if (version > StoreSchema.Current)
            throw new StoreException(StoreProblem.Foreign, $"{path} was written by a later Finwright: its tables are version {version}, this program knows {StoreSchema.Current}.", "Use the later program, or name another store with --store. It was not touched.");
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
#pragma warning disable CA2100 // Texts of this file.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }

    /// <summary>Refuses a file that is another program's or a later one's before anything could be written to it or beside it.</summary>
    private void RefuseForeign()
    {
        try
        {
            using SqliteConnection connection = Connect(AsItLies, SqliteOpenMode.ReadOnly);
            Version(connection);
        }
        catch (SqliteException)
        {
            // Perhaps it is being written at this moment: opened in earnest, it is waited for.
        }
    }

    /// <summary>Refuses pipes and devices, which look like empty files.</summary>
    private void RefuseDevice()
    {
        if (!File.Exists(Followed(path)))
            return;
        using MemoryStream described = new();
        // The writer of archives is what tells in the framework which kind of file a path names.
        using (TarWriter writer = new(described, leaveOpen: true))
            writer.WriteEntry(Followed(path), "store");
        described.Position = 0;
        using TarReader reader = new(described);
        if (reader.GetNextEntry() is not { EntryType: TarEntryType.RegularFile or TarEntryType.V7RegularFile })
            throw new StoreException(StoreProblem.Foreign, $"{path} is not a file but a device or a pipe.", "Name the store's file with --store. It was not touched.");
    }

    /// <summary>How long a file is; 0 when it is not there, and for pipes and devices.</summary>
    private static long LengthOf(string file) => new FileInfo(Followed(file)) is { Exists: true, Length: long length } ? length : 0;

    /// <summary>What a link leads to.</summary>
    private static string Followed(string file)
    {
        try
        {
            return File.ResolveLinkTarget(file, returnFinalTarget: true)?.FullName ?? file;
        }
        catch (Exception problem) when (problem is FileNotFoundException or DirectoryNotFoundException)
        {
            return file;
        }
    }

    private StoreException Named(SqliteException problem) =>
        // Not a database from its first byte on: somebody else's file rather than a store gone wrong.
        problem.SqliteErrorCode == 26 ? NotAStore() : StoreException.Of(problem, path);

    private StoreException ReadOnly() =>
        new(StoreProblem.ReadOnly, $"{path} may only be read: the file or its folder is write-protected.", "Allow writing there, or name another place with --store. Nothing was changed.");

    private StoreException NotAStore() =>
        new(StoreProblem.Foreign, $"{path} is not a workshop store, or its first bytes are damaged.", "Name the store's file with --store, or put back a copy made with \"finwright store backup\". It was not touched.");

    private StoreException NotUpgraded(int version, SqliteException problem) => new(
        StoreProblem.Damaged,
        $"{path} cannot be brought from version {version} of its tables to {StoreSchema.Current}: {problem.Message}",
        "It is as it was. Copy what can be read into a new store with \"finwright store rescue\", or use the program that wrote it.",
        problem);
}
