using System.Text;
using Finwright.Workshop.Exchange.Archives;
using Finwright.Workshop.Storing;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Exchange.Stores;

/// <summary>What rows must keep to beyond what the database demands of them, so that a store taken in from elsewhere can be read like one's own.</summary>
internal static class StoredRules
{
    /// <summary>Checks every row.</summary>
    /// <param name="trial">A database with the tables of this program.</param>
    /// <exception cref="ExchangeException">A row breaks a rule.</exception>
    public static void Check(SqliteConnection trial)
    {
        foreach (TextColumn column in TextColumn.All)
            CheckTexts(trial, column.Table, column.Column, column.Makes);
        CheckTexts(trial, "design", "name", IsName);
        CheckTexts(trial, "build", "name", IsName);
        CheckTexts(trial, "picture", "svg", text => PlainPicture.Problem(text) is null);
        CheckHashes(trial);
        using SqliteDataReader broken = Ask(trial, "PRAGMA foreign_key_check");
        if (broken.Read())
            throw Refused($"A row of \"{broken.GetString(0)}\" names a row of \"{broken.GetString(2)}\" that is not there.");
        RefuseCycles(trial);
    }

    private static void CheckTexts(SqliteConnection trial, string table, string column, Func<string, bool> makes)
    {
        using SqliteDataReader reader = Ask(trial, $"SELECT rowid, {column} FROM {table} WHERE {column} IS NOT NULL");
        while (reader.Read())
        {
            if (!makes(reader.GetString(1)))
                throw Refused($"Row {reader.GetInt64(0)} of \"{table}\" has a \"{column}\" that cannot be.");
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

    private static bool IsName(string text) => !string.IsNullOrWhiteSpace(text) && !text.Any(char.IsControl);

    private static ExchangeException Refused(string why) => new(why, "Have it exported again. Nothing was taken in.");
}
