using System.Globalization;
using System.Text.Json;
using Finwright.Workshop.Exchange.Archives;
using Finwright.Workshop.Storing;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Exchange.Stores;

/// <summary>Takes a whole store in, into one that holds nothing yet: everything or nothing.</summary>
public static class StoreImport
{
    // SQLITE_CONSTRAINT: one of the rules that the tables themselves have.
    private const int Constraint = 19;

    /// <summary>Takes a whole store in. One exported by an earlier program is brought up to date on the way.</summary>
    /// <param name="stream">The file; must be able to seek. Left open.</param>
    /// <param name="store">The store; must be empty.</param>
    /// <returns>How much came in.</returns>
    /// <exception cref="ExchangeException">The file cannot be taken in, or the store is not empty; nothing was changed.</exception>
    /// <exception cref="StoreException">The store cannot be changed; nothing was.</exception>
    public static StoreRows Read(Stream stream, WorkshopStore store)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(store);
        IReadOnlyList<StoredTable> own = StoredTable.All(store.Connection.Database, null);
        RefuseFilled(store, own);
        ArchiveReader archive = new(stream, StoreForm.Limits);
        if (!archive.Has(StoreForm.List))
            throw new ExchangeException($"The file holds no {StoreForm.List}: it is no whole workshop.", "Choose a file that \"finwright export --everything\" made.");
        byte[] listed = archive.Read(StoreForm.List);
        ArchiveHead.Check(listed, StoreForm.List, StoreForm.Kind, StoreForm.Layout);
        StoreForm.Contents list = ExchangeJson.Read<StoreForm.Contents>(listed, StoreForm.List);
        if (list.Version < 1 || list.Version > StoreSchema.Current)
            throw new ExchangeException($"The tables in the file have version {list.Version}; this program knows 1 to {StoreSchema.Current}.", "Use the later program that made it.");
        SealedReader files = new(archive, StoreForm.List, list.Files);
        // A database of its own that nobody else sees and that goes with its connection: rows are tried there before any comes into the store.
        try
        {
            using SqliteConnection trial = new(new SqliteConnectionStringBuilder { DataSource = "", ForeignKeys = false, Pooling = false }.ToString());
            trial.Open();
            Fill(trial, list, files);
            StoredRules.Check(trial);
            return Copy(trial, store, own);
        }
        catch (SqliteException problem)
        {
            // No room for the trial, most likely.
            throw StoreException.Of(problem, "The database in which rows are tried");
        }
    }

    /// <summary>Refuses a store that holds anything, in the bin too.</summary>
    private static void RefuseFilled(WorkshopStore store, IReadOnlyList<StoredTable> tables)
    {
        if (tables.Any(table => store.Connection.Count($"SELECT EXISTS (SELECT 1 FROM {table.Name})") > 0))
            throw new ExchangeException($"{store.Path} holds something already; a whole workshop comes only into an empty one.", "Name a new file with --store, or export single designs from the other workshop. Nothing was taken in.");
    }

    private static void Fill(SqliteConnection trial, StoreForm.Contents list, SealedReader files)
    {
        using SqliteTransaction transaction = trial.BeginTransaction();
        StoreSchema.Upgrade(trial, transaction, 0, list.Version);
        IReadOnlyList<StoredTable> tables = StoredTable.All(trial, transaction);
        if (!tables.Select(table => table.Name).SequenceEqual(list.Tables.Select(table => table.Name), StringComparer.Ordinal))
            throw Refused($"\"{StoreForm.List}\" does not name the tables of version {list.Version}.");
        HashSet<string> unused = [.. files.Names];
        foreach ((StoredTable table, StoreForm.ListedTable listed) in tables.Zip(list.Tables))
        {
            if (!table.Columns.Select(column => column.Name).SequenceEqual(listed.Columns, StringComparer.Ordinal))
                throw Refused($"The table \"{table.Name}\" has other columns than version {list.Version} has.");
            using SqliteCommand insert = Insert(trial, transaction, table);
            long rows = 0;
            foreach (string entry in listed.Entries)
            {
                if (!unused.Remove(entry))
                    throw Refused($"\"{entry}\" is named twice, or missing.");
                rows += Lines(files.Read(entry), entry, table, insert);
            }

            if (rows != listed.Rows)
                throw Refused($"The table \"{table.Name}\" has {rows} rows, but {listed.Rows} were exported.");
        }

        if (unused.Count > 0)
            throw Refused($"The file holds \"{unused.First()}\", which belongs to no table.");
        StoreSchema.Upgrade(trial, transaction, list.Version, StoreSchema.Current);
        transaction.Commit();
    }

    private static SqliteCommand Insert(SqliteConnection connection, SqliteTransaction? transaction, StoredTable table)
    {
        SqliteCommand insert = connection.CreateCommand();
        insert.Transaction = transaction;
#pragma warning disable CA2100 // Names that the database itself tells.
        insert.CommandText = table.Insert;
#pragma warning restore CA2100
        for (int i = 0; i < table.Columns.Count; i++)
            insert.Parameters.AddWithValue(string.Create(CultureInfo.InvariantCulture, $"${i}"), DBNull.Value);
        return insert;
    }

    private static long Lines(ReadOnlyMemory<byte> bytes, string entry, StoredTable table, SqliteCommand insert)
    {
        long line = 0;
        while (bytes.Length > 0)
        {
            line++;
            int end = bytes.Span.IndexOf((byte)'\n');
            if (end < 0)
                throw Refused($"\"{entry}\" ends within line {line}.");
            try
            {
                using JsonDocument row = JsonDocument.Parse(bytes[..end], new() { MaxDepth = 2 });
                Values(row.RootElement, table, insert);
                insert.ExecuteNonQuery();
            }
            catch (Exception problem) when (problem is JsonException or InvalidOperationException or FormatException)
            {
                throw Refused($"Line {line} of \"{entry}\" is no row of \"{table.Name}\".", problem);
            }
            catch (SqliteException problem) when (problem.SqliteErrorCode == Constraint)
            {
                throw Refused($"Line {line} of \"{entry}\" breaks a rule of the store ({problem.Message}).", problem);
            }

            bytes = bytes[(end + 1)..];
        }

        return line;
    }

    private static void Values(JsonElement row, StoredTable table, SqliteCommand insert)
    {
        int at = 0;
        foreach (JsonProperty own in row.EnumerateObject())
        {
            if (at >= table.Columns.Count || !own.NameEquals(table.Columns[at].Name))
                throw new FormatException("Another column.");
            insert.Parameters[at].Value = Value(own.Value, table.Columns[at].Kind);
            at++;
        }

        if (at < table.Columns.Count)
            throw new FormatException("A column is missing.");
    }

    private static object Value(JsonElement value, StoredKind kind) => value.ValueKind == JsonValueKind.Null
        ? DBNull.Value
        : kind switch
        {
            StoredKind.Integer => value.GetInt64(),
            StoredKind.Real when double.IsFinite(value.GetDouble()) => value.GetDouble(),
            StoredKind.Text when value.GetString() is { } text && !text.Contains('\0', StringComparison.Ordinal) => text,
            StoredKind.Blob => value.GetBytesFromBase64(),
            _ => throw new FormatException("No such value."),
        };

    private static StoreRows Copy(SqliteConnection trial, WorkshopStore store, IReadOnlyList<StoredTable> tables)
    {
        StoreConnection target = store.Connection;
        return target.Change(() =>
        {
            // Asked again, now that nobody else can write.
            RefuseFilled(store, tables);
            // Rows name rows of tables that come later; all is checked when the change ends.
            target.Execute("PRAGMA defer_foreign_keys = ON");
            long rows = 0;
            foreach (StoredTable table in tables)
            {
                using SqliteCommand command = trial.CreateCommand();
#pragma warning disable CA2100 // Names that the database itself tells.
                command.CommandText = table.Select;
#pragma warning restore CA2100
                using SqliteDataReader reader = command.ExecuteReader();
                while (reader.Read())
                {
                    rows++;
                    target.Execute(table.Insert, [.. Enumerable.Range(0, table.Columns.Count).Select(i => (i.ToString(CultureInfo.InvariantCulture), (object?)(reader.IsDBNull(i) ? null : reader.GetValue(i))))]);
                }
            }

            return new StoreRows(tables.Count, rows);
        });
    }

    private static ExchangeException Refused(string why, Exception? inner = null) => new(why, "Have it exported again. Nothing was taken in.", inner);
}
