using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Finwright.Design;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Storing;

/// <summary>What a look at every row of a store found.</summary>
/// <param name="Contents">How much the store holds; null when it could not be counted.</param>
/// <param name="Findings">What is wrong; nothing when the store is sound.</param>
public sealed record StoreCheck(StoreContents? Contents, IReadOnlyList<Finding> Findings)
{
    private const int MostOfAKind = 20;

    private const string Rescue = "Copy what can be read into a new store with \"finwright store rescue\", or put back a copy made with \"finwright store backup\".";

    /// <summary>Checks a store from its first page to its last: what the database finds, what names something that is not there, texts that are not what was kept.</summary>
    /// <param name="store">The store.</param>
    /// <param name="cancellation">Stops the check.</param>
    public static StoreCheck Of(WorkshopStore store, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        SqliteConnection database = store.Connection.Database;
        List<Finding> findings = [];
        if (store.Refusal is { Problem: StoreProblem.Damaged } refusal)
            findings.Add(new("store-damaged", Severity.Error, "the file", refusal.Message, refusal.Remedy));
        List<string> faults = [];
        Look("store-page-damaged", "pages", "PRAGMA integrity_check", row =>
        {
            // Many faults of pages and indexes are mostly one of the disk: told together.
            faults.AddRange(row.GetString(0).Split('\n').Where(line => line != "ok" && !line.StartsWith("***", StringComparison.Ordinal)));
            return null;
        });
        if (faults.Count > 0)
        {
            findings.RemoveAll(finding => finding.Code == "store-page-damaged");
            findings.Add(new("store-page-damaged", Severity.Error, "pages", $"The database's own check finds {(faults.Count == 1 ? "a fault" : $"{faults.Count} faults, the first of them")}: {faults[0]}.", Rescue));
        }

        Look("store-reference-missing", "references", "PRAGMA foreign_key_check", row =>
            new("store-reference-missing", Severity.Error, $"{row.GetString(0)} {(row.IsDBNull(1) ? "" : row.GetInt64(1).ToString(CultureInfo.InvariantCulture))}".Trim(), $"It hangs on something of {row.GetString(2)} that is not there.", Rescue));
        Look("store-revision-changed", "revisions", "SELECT revision.id, design.name || '@' || number, hash, text FROM revision LEFT JOIN design ON design.id = design_id", row =>
            string.Equals(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(row.GetString(3)))), row.GetString(2), StringComparison.Ordinal)
                ? null
                : new("store-revision-changed", Severity.Error, $"revision {row.GetInt64(0)}", $"The text of {(row.IsDBNull(1) ? "a revision" : row.GetString(1))} is not what was kept: it does not match its hash.", Rescue));
        foreach (TextColumn column in TextColumn.All)
        {
            Look("store-text-nonsense", $"{column.Table}.{column.Column}", $"SELECT rowid, {column.Column} FROM {column.Table} WHERE {column.Column} IS NOT NULL", row =>
                column.Makes(row.GetString(1))
                    ? null
                    : new("store-text-nonsense", Severity.Error, $"{column.Table} {row.GetInt64(0)}", $"{column.Column} is not {column.What}.", Rescue));
        }

        return new(Counted(store), findings);

        void Look(string code, string place, string sql, Func<SqliteDataReader, Finding?> judge)
        {
            int first = findings.Count;
            try
            {
                using SqliteCommand command = database.CreateCommand();
#pragma warning disable CA2100 // The texts above.
                command.CommandText = sql;
#pragma warning restore CA2100
                using SqliteDataReader reader = command.ExecuteReader();
                while (findings.Count - first < MostOfAKind && reader.Read())
                {
                    cancellation.ThrowIfCancellationRequested();
                    if (judge(reader) is { } finding)
                        findings.Add(finding);
                }
            }
            catch (Exception problem) when (problem is SqliteException or InvalidCastException or InvalidOperationException)
            {
                findings.Add(new(code, Severity.Error, place, "It cannot be read to its end.", Rescue));
            }
        }
    }

    private static StoreContents? Counted(WorkshopStore store)
    {
        try
        {
            return StoreContents.Of(store);
        }
        catch (StoreException)
        {
            // What keeps it from being counted is among the findings.
            return null;
        }
    }
}
