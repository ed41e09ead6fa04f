using System.Text;
using System.Text.Json;
using Finwright.Design;
using Finwright.Workshop.Exchange.Archives;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Exchange.Stores;

/// <summary>What rows must keep to beyond what the database demands of them, so that a store taken in from elsewhere can be read like one's own.</summary>
internal static class StoredRules
{
    private static readonly Dictionary<string, Action<string>> Columns = new(StringComparer.Ordinal)
    {
        ["design.name"] = Name,
        ["build.name"] = Name,
        ["design.tags"] = text => _ = JsonSerializer.Deserialize<string[]>(text) ?? throw new FormatException(),
        ["picture.svg"] = Picture,
        ["prediction.results"] = text => ExchangeJson.Check(Encoding.UTF8.GetBytes(text), "results"),
        ["stock_item.kind"] = Word<StockKind>,
        ["stock_item.unit"] = Word<StockUnit>,
        ["bench_session.root_hold"] = Word<RootHold>,
        ["bench_reading.at_chord"] = Word<ChordPlace>,
        ["bench_reading.read_chord"] = Word<ChordPlace>,
        ["calibration.quantity"] = Word<LearnedQuantity>,
    };

    /// <summary>Checks every row.</summary>
    /// <param name="trial">A database with the tables of this program.</param>
    /// <exception cref="ExchangeException">A row breaks a rule.</exception>
    public static void Check(SqliteConnection trial)
    {
        foreach (StoredTable table in StoredTable.All(trial, null))
        {
            foreach (StoredColumn column in table.Columns.Where(column => column.Kind == StoredKind.Text))
            {
                if (RuleOf(table.Name, column.Name) is { } rule)
                    CheckTexts(trial, table.Name, column.Name, rule);
            }
        }

        CheckHashes(trial);
        using SqliteDataReader broken = Ask(trial, "PRAGMA foreign_key_check");
        if (broken.Read())
            throw Refused($"A row of \"{broken.GetString(0)}\" names a row of \"{broken.GetString(2)}\" that is not there.");
        RefuseCycles(trial);
    }

    /// <summary>What a column's texts must keep to; null for any text. Moments end in <c>_at</c>, days in <c>_on</c>.</summary>
    internal static Action<string>? RuleOf(string table, string column) =>
        Columns.TryGetValue($"{table}.{column}", out Action<string>? rule) ? rule
        : column.EndsWith("_at", StringComparison.Ordinal) ? text => StoredForm.Moment(text)
        : column.EndsWith("_on", StringComparison.Ordinal) || column is "use_before" ? text => StoredForm.Day(text)
        : null;

    private static void CheckTexts(SqliteConnection trial, string table, string column, Action<string> rule)
    {
        using SqliteDataReader reader = Ask(trial, $"SELECT rowid, {column} FROM {table} WHERE {column} IS NOT NULL");
        while (reader.Read())
        {
            try
            {
                rule(reader.GetString(1));
            }
            catch (Exception problem) when (problem is FormatException or InvalidDataException or JsonException or ExchangeException)
            {
                throw Refused($"Row {reader.GetInt64(0)} of \"{table}\" has a \"{column}\" that cannot be.", problem);
            }
        }
    }

    private static void CheckHashes(SqliteConnection trial)
    {
        using SqliteDataReader reader = Ask(trial, "SELECT design.name, number, hash, text FROM revision JOIN design ON design.id = design_id");
        while (reader.Read())
        {
            if (!string.Equals(Sha256.Of(Encoding.UTF8.GetBytes(reader.GetString(3))), reader.GetString(2), StringComparison.Ordinal))
                throw Refused($"Revision {reader.GetInt64(1)} of \"{reader.GetString(0)}\" is not what was kept: its hash differs.");
        }
    }

    // From a revision without a parent, every other is reached by going from parent to child; what is not reached goes in a circle.
    private static void RefuseCycles(SqliteConnection trial)
    {
        using SqliteDataReader reader = Ask(
            trial,
            """
            WITH RECURSIVE reached (id) AS (SELECT id FROM revision WHERE parent_id IS NULL UNION SELECT revision.id FROM revision JOIN reached ON revision.parent_id = reached.id)
            SELECT id FROM revision WHERE id NOT IN (SELECT id FROM reached) LIMIT 1
            """);
        if (reader.Read())
            throw Refused($"Revision number {reader.GetInt64(0)} is said to be made from itself, by way of others.");
    }

    private static SqliteDataReader Ask(SqliteConnection trial, string sql)
    {
#pragma warning disable CA2000 // Goes with its reader.
        SqliteCommand command = trial.CreateCommand();
#pragma warning restore CA2000
#pragma warning disable CA2100 // Texts of ours, and names that the database itself tells.
        command.CommandText = sql;
#pragma warning restore CA2100
        return command.ExecuteReader();
    }

    private static void Name(string text)
    {
        if (string.IsNullOrWhiteSpace(text) || text.Any(char.IsControl))
            throw new FormatException();
    }

    private static void Picture(string text)
    {
        if (PlainPicture.Problem(text) is string problem)
            throw new FormatException(problem);
    }

    private static void Word<T>(string text)
        where T : struct, Enum => StoredForm.Word<T>(text);

    private static ExchangeException Refused(string why, Exception? inner = null) => new(why, "Have it exported again. Nothing was taken in.", inner);
}
