using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Tests.Storing;

/// <summary>Plain SQL for tests that look behind the store.</summary>
internal static class Sql
{
    /// <summary>Runs a text.</summary>
    public static void Run(this SqliteConnection database, string sql)
    {
        using SqliteCommand command = database.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    /// <summary>The first value of an answer; null when there is none.</summary>
    public static object? Scalar(this SqliteConnection database, string sql)
    {
        using SqliteCommand command = database.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }

    /// <summary>Holds that the database is sound.</summary>
    public static void IsSound(this SqliteConnection database)
    {
        Assert.Equal("ok", database.Scalar("PRAGMA integrity_check"));
        Assert.Null(database.Scalar("PRAGMA foreign_key_check"));
    }
}
