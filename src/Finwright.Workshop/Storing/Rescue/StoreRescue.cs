using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Storing.Rescue;

/// <summary>Copies what can still be read of a damaged store into a new one.</summary>
/// <remarks>
/// The pages are read one by one, without the database: rows behind a damaged page are found too, and a row counts only when all of its
/// bytes make sense. Rows that hung on what is lost are kept, hung on a stand-in that says so; what can be made again is not.
/// </remarks>
public static class StoreRescue
{
    /// <summary>What stands before the note of a revision whose text is not the one that was kept.</summary>
    public const string ChangedText = "[damaged: this text is not what was kept] ";

    /// <summary>Rescues a store.</summary>
    /// <param name="damaged">The damaged store; it is only read. No part of this program may have it open.</param>
    /// <param name="target">The new store; must not exist.</param>
    /// <param name="time">The clock; the system's when null.</param>
    /// <returns>What was kept, and what is known to be lost.</returns>
    /// <exception cref="StoreException">It cannot be read, holds nothing of a store, or the new one cannot be written; nothing is left of it then.</exception>
    public static RescueReport Write(string damaged, string target, TimeProvider? time = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(damaged);
        ArgumentException.ThrowIfNullOrWhiteSpace(target);
        (damaged, target) = (Path.GetFullPath(damaged), Path.GetFullPath(target));
        DatabasePages pages = Read(damaged);
        string partial = string.Create(CultureInfo.InvariantCulture, $"{target}.{Environment.ProcessId}.partial");
        try
        {
            if (Path.Exists(target))
                throw new StoreException(StoreProblem.Wrong, $"{target} exists already.", "Choose another name.");
            File.Delete(partial);
            RescueReport report;
            using (SqliteConnection store = new(new SqliteConnectionStringBuilder { DataSource = partial, Pooling = false, ForeignKeys = false }.ToString()))
            {
                store.Open();
                report = new Rescuing(pages, store, (time ?? TimeProvider.System).GetUtcNow()).Run(damaged, target);
            }

            File.Move(partial, target);
            return report;
        }
        catch (SqliteException problem)
        {
            Remove(partial);
            throw StoreException.Of(problem, target);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Remove(partial);
            throw new StoreException(StoreProblem.Unreachable, $"{target} cannot be written: {problem.Message}", "Choose a folder that exists and may be written to.", problem);
        }
        catch
        {
            Remove(partial);
            throw;
        }
    }

    /// <summary>Rescues a store into memory, to be read.</summary>
    /// <exception cref="StoreException">It cannot be read, or holds nothing of a store.</exception>
    internal static (SqliteConnection Store, RescueReport Report) InMemory(string damaged, DateTimeOffset now)
    {
        DatabasePages pages = Read(damaged);
        SqliteConnection store = new(new SqliteConnectionStringBuilder { DataSource = ":memory:", Mode = SqliteOpenMode.Memory, Pooling = false, ForeignKeys = false }.ToString());
        try
        {
            store.Open();
            return (store, new Rescuing(pages, store, now).Run(damaged, ""));
        }
        catch
        {
            store.Dispose();
            throw;
        }
    }

    private static DatabasePages Read(string damaged)
    {
        try
        {
            return DatabasePages.Read(damaged);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(StoreProblem.Unreachable, $"{damaged} cannot be read: {problem.Message}", "Check the path; if the disk fails, copy the file to another one first.", problem);
        }
    }

    private static void Remove(string partial)
    {
        try
        {
            foreach (string beside in (string[])["", "-journal"])
                File.Delete(partial + beside);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The first failure is the one worth telling.
        }
    }

    /// <summary>One rescue.</summary>
    private sealed class Rescuing(DatabasePages pages, SqliteConnection store, DateTimeOffset now)
    {
        private const string Lost = "Its text was lost; it stands here for what hangs on it.";

        private readonly PageReader _reader = new(pages);
        private readonly SortedDictionary<string, int> _remarks = new(StringComparer.Ordinal);
        private IReadOnlyList<RescueTable> _tables = [];

        public RescueReport Run(string damaged, string target)
        {
            int version = pages.Version ?? StoreSchema.Current;
            using (SqliteTransaction transaction = store.BeginTransaction())
            {
                StoreSchema.Upgrade(store, transaction, 0, version);
                _tables = RescueTable.Of(store);
                (List<(RescueTable? Table, SalvagedRow Row)> found, int loose) = Find();
                if (found.Count == 0)
                    throw new StoreException(StoreProblem.Foreign, $"{damaged} holds nothing that could be of a workshop store.", "Name the store's file with --store.");
                foreach (RescueTable table in _tables)
                {
                    foreach ((RescueTable? owner, SalvagedRow row) in found)
                    {
                        // A row is its own table's when it fits there; else that of the only one whose columns it fits.
                        if (owner == table && table.Fit(row, isWhole: false) is { } own)
                            Keep(table, row.RowId, own);
                        else if (owner is null && table.Fit(row, isWhole: true) is { } likely)
                            Keep(table, row.RowId, likely);
                        else if (owner == table)
                            table.Refused++;
                    }
                }

                if (loose > 0)
                    Remark("Rows were found on pages that nothing leads to any more; they may be older than the latest change", loose);
                HangAnew();
                if (version < StoreSchema.Current)
                    StoreSchema.Upgrade(store, transaction, version, StoreSchema.Current);
                transaction.Commit();
            }

            if (RescueTable.Rows(store, "PRAGMA foreign_key_check").Count > 0 || RescueTable.Rows(store, "PRAGMA integrity_check") is not [["ok"]])
                throw new InvalidOperationException("The rescued store is not sound.");
            return new(
                damaged,
                target,
                [.. _tables.Select(table => new RescuedTable(table.Name, table.Kept.Count - table.Removed, Math.Max(table.Named.Count(id => !table.Kept.Contains(id)), table.Refused) + table.Removed)).Where(table => table.Kept > 0 || table.Lost > 0)],
                [.. _remarks.Select(remark => string.Create(CultureInfo.InvariantCulture, $"{remark.Key} ({remark.Value})."))]);
        }

        /// <summary>All rows that can be read, with the table that they belong to where the file says so; those that are led to first.</summary>
        private (List<(RescueTable?, SalvagedRow)> Found, int Loose) Find()
        {
            HashSet<int> seen = [];
            Dictionary<string, int> roots = new(StringComparer.Ordinal);
            foreach (int page in _reader.Tree(1, seen))
            {
                foreach (SalvagedRow row in _reader.Rows(page, out _))
                {
                    if (row.Values is [string, string name, string, long root, ..] && root is > 1 and <= int.MaxValue)
                        roots.TryAdd(name, (int)root);
                }
            }

            List<(RescueTable?, SalvagedRow)> found = [];
            foreach (RescueTable table in _tables)
            {
                foreach (string index in table.Indexes)
                {
                    if (roots.TryGetValue(index, out int indexRoot))
                        table.Named.UnionWith(_reader.Tree(indexRoot, seen).SelectMany(_reader.Named));
                }

                if (!roots.TryGetValue(table.Name, out int root))
                    continue;
                foreach (int page in _reader.Tree(root, seen))
                {
                    found.AddRange(_reader.Rows(page, out int broken).Select(row => ((RescueTable?)table, row)));
                    table.Refused += broken;
                }
            }

            int led = found.Count;
            IReadOnlySet<int> free = _reader.Free();
            for (int page = 2; page <= pages.Count; page++)
            {
                if (!seen.Contains(page) && !free.Contains(page) && _reader.IsTableLeaf(page))
                    found.AddRange(_reader.Rows(page, out _).Select(row => ((RescueTable?)null, row)));
            }

            return (found, found.Count - led);
        }

        private void Keep(RescueTable table, long rowId, object?[] values)
        {
            if (!table.Kept.Add(rowId))
                return;
            if (!Mend(table, values) || !(Insert(table, values) || (InsertNamedAnew(table, rowId, values))))
            {
                table.Kept.Remove(rowId);
                table.Refused++;
            }
        }

        /// <summary>Puts right what would keep the new store from being read.</summary>
        /// <returns>False when the row means nothing without what cannot be put right.</returns>
        private bool Mend(RescueTable table, object?[] values)
        {
            foreach (TextColumn column in TextColumn.All.Where(column => column.Table == table.Name))
            {
                int at = table.At(column.Column);
                if (values[at] is not string text || column.Makes(text))
                    continue;
                if (column.StandIn is null)
                    return false;
                values[at] = table.Columns[at].IsNeeded ? column.StandIn : null;
                Remark($"Texts that were not {column.What} were replaced or left out in {table.Name}.{column.Column}");
            }

            if (table.Name == "revision")
            {
                (int hash, int note) = (table.At("hash"), table.At("note"));
                string actual = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes((string)values[table.At("text")]!)));
                if (!string.Equals(actual, (string)values[hash]!, StringComparison.Ordinal))
                {
                    values[hash] = actual;
                    values[note] = ChangedText + values[note];
                    Remark("Revisions whose text does not match its hash were kept with a note that says so");
                }
            }

            return true;
        }

        private bool Insert(RescueTable table, object?[] values)
        {
            using SqliteCommand command = Command($"INSERT INTO {table.Name} VALUES ({string.Join(", ", values.Select((_, i) => $"$v{i}"))})");
            for (int i = 0; i < values.Length; i++)
                command.Parameters.AddWithValue($"$v{i}", values[i] ?? DBNull.Value);
            try
            {
                return command.ExecuteNonQuery() == 1;
            }
            catch (SqliteException problem) when (problem.SqliteErrorCode == 19)
            {
                return false;
            }
        }

        /// <summary>Two things that may not share a name may have come to share it by the damage.</summary>
        private bool InsertNamedAnew(RescueTable table, long rowId, object?[] values)
        {
            if (table.Name is not ("design" or "build" or "stock_item"))
                return false;
            object?[] named = [.. values];
            named[table.At("name")] = Named("Rescued", rowId);
            if (!Insert(table, named))
                return false;
            Remark($"A name that was unusable, or twice there, was replaced in {table.Name}");
            return true;
        }

        private static string Named(string what, long id) => string.Create(CultureInfo.InvariantCulture, $"{what} {id}");

        /// <summary>Hangs what lost what it hung on onto something that says so.</summary>
        private void HangAnew()
        {
            string moment = (string)StoredForm.Of(now), day = (string)StoredForm.Of(DateOnly.FromDateTime(now.UtcDateTime));
            string hash = Convert.ToHexStringLower(SHA256.HashData("{}"u8));
            foreach ((string kind, string table, string from) in ((string, string, string)[])[("Outing", "track", "outing_id"), ("Build", "bench_session", "build_id"), ("Build", "build_part", "build_id"), ("Build", "build_photo", "build_id")])
            {
                if (!Has(table))
                    continue;
                string parent = kind == "Outing" ? "outing" : "build";
                foreach (long id in Missing(table, from, parent))
                {
                    // The revision of a build that is lost is made below.
                    Do(
                        kind == "Outing"
                            ? "INSERT INTO outing (id, sailed_on, note) VALUES ($id, $day, 'Rescued: only its track was left; the day is that of the rescue.')"
                            : "INSERT INTO build (id, revision_id, name, note) VALUES ($id, -1, $name, 'Rescued: only what hangs on it was left.')",
                        ("id", id), ("day", day), ("name", Free("build", Named("Rescued build", id))));
                    Remark($"{kind}s that were lost have a stand-in, for what hung on them");
                }
            }

            foreach ((string table, string from) in ((string, string)[])[("stock_use", "item_id"), ("build", "filament_id"), ("build", "resin_id"), ("build_part", "filament_id"), ("calibration", "filament_id"), ("calibration", "resin_id")])
            {
                if (!Has(table))
                    continue;
                foreach (long id in Missing(table, from, "stock_item"))
                {
                    // What was built of the same batch is still known to have been.
                    Do(
                        "INSERT INTO stock_item (id, kind, name, quantity, unit, note) VALUES ($id, 'other', $name, 0, 'pieces', 'Rescued: what it was is lost.')",
                        ("id", id), ("name", Free("stock_item", Named("Rescued item", id))));
                    Remark("Items of the stock that were lost have a stand-in, for what was used of them");
                }
            }

            foreach (long id in Missing("revision", "design_id", "design"))
            {
                Do("INSERT INTO design (id, name, added_at) VALUES ($id, $name, $now)", ("id", id), ("name", Free("design", Named("Rescued design", id))), ("now", moment));
                Remark("Designs that were lost have a stand-in, for their revisions");
            }

            foreach (object?[] row in RescueTable.Rows(store, "SELECT id FROM design WHERE NOT EXISTS (SELECT 1 FROM revision WHERE design_id = design.id)"))
                StandIn((long)row[0]!, revision: null);
            if (Has("build") && Missing("build", "revision_id", "revision") is { Count: > 0 } lost)
            {
                Do("INSERT INTO design (name, added_at) VALUES ($name, $now)", ("name", Free("design", "Rescued builds")), ("now", moment));
                long design = Number("SELECT last_insert_rowid()");
                foreach (long id in lost)
                {
                    long revision = StandIn(design, id > 0 ? id : null);
                    Do("UPDATE build SET revision_id = $revision WHERE revision_id = $id", ("revision", revision), ("id", id));
                }
            }

            // The rest: a name that may be missing is left out; what means nothing alone goes.
            foreach (RescueTable table in _tables)
            {
                foreach (object?[] key in RescueTable.Rows(store, $"SELECT \"table\", \"from\" FROM pragma_foreign_key_list('{table.Name}')"))
                {
                    (string parent, string from) = ((string)key[0]!, (string)key[1]!);
                    string where = $"{from} IS NOT NULL AND {from} NOT IN (SELECT id FROM {parent})";
                    if (table.Columns[table.At(from)].IsNeeded)
                        table.Removed += Do($"DELETE FROM {table.Name} WHERE {where}");
                    else if (Do($"UPDATE {table.Name} SET {from} = NULL WHERE {where}") is > 0 and int count)
                        Remark($"What they named was lost: {table.Name}.{from}", count);
                }
            }

            long StandIn(long design, long? revision)
            {
                Do(
                    "INSERT INTO revision (id, design_id, number, hash, note, made_at, made_by, text) VALUES ($id, $design, (SELECT coalesce(max(number), 0) + 1 FROM revision WHERE design_id = $design), $hash, $note, $now, 'rescue', '{}')",
                    ("id", revision), ("design", design), ("hash", hash), ("note", ChangedText + Lost), ("now", moment));
                Remark("Revisions that were lost have an empty stand-in, for what hung on them");
                return Number("SELECT last_insert_rowid()");
            }
        }

        private bool Has(string table) => _tables.Any(other => other.Name == table);

        private IReadOnlyList<long> Missing(string table, string from, string parent) =>
            [.. RescueTable.Rows(store, $"SELECT DISTINCT {from} FROM {table} WHERE {from} IS NOT NULL AND {from} NOT IN (SELECT id FROM {parent}) ORDER BY 1").Select(row => (long)row[0]!)];

        /// <summary>A name that nothing of a table has.</summary>
        private string Free(string table, string name)
        {
            string free = name;
            for (int i = 2; ; i++)
            {
                using SqliteCommand command = Command($"SELECT count(*) FROM {table} WHERE name = $name COLLATE NOCASE");
                command.Parameters.AddWithValue("$name", free);
                if (command.ExecuteScalar() is 0L)
                    return free;
                free = string.Create(CultureInfo.InvariantCulture, $"{name} ({i})");
            }
        }

        private long Number(string sql)
        {
            using SqliteCommand command = Command(sql);
            return (long)command.ExecuteScalar()!;
        }

        private int Do(string sql, params ReadOnlySpan<(string Name, object? Value)> values)
        {
            using SqliteCommand command = Command(sql);
            foreach ((string name, object? value) in values)
                command.Parameters.AddWithValue("$" + name, value ?? DBNull.Value);
            return command.ExecuteNonQuery();
        }

        private SqliteCommand Command(string sql)
        {
            SqliteCommand command = store.CreateCommand();
#pragma warning disable CA2100 // Names of our own tables; values go in as values.
            command.CommandText = sql;
#pragma warning restore CA2100
            return command;
        }

        private void Remark(string what, int count = 1) => _remarks[what] = _remarks.GetValueOrDefault(what) + count;
    }
}
