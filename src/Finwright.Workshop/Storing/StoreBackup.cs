using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Storing;

/// <summary>Copies of a store.</summary>
public static class StoreBackup
{
    /// <summary>Copies a store into a new file, whole, while other programs may use it.</summary>
    /// <param name="store">The store.</param>
    /// <param name="target">The copy; must not exist.</param>
    /// <exception cref="StoreException">It cannot be written; nothing is left of it.</exception>
    public static void Write(WorkshopStore store, string target)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentException.ThrowIfNullOrWhiteSpace(target);
        Copy(store.Connection.Database, Path.GetFullPath(target));
    }

    /// <summary>Copies a store of an earlier program before it is brought up to date, beside it.</summary>
    internal static void BeforeUpgrade(SqliteConnection connection, string path, int version, TimeProvider time) =>
        Copy(connection, string.Create(CultureInfo.InvariantCulture, $"{path}.version-{version}-{time.GetUtcNow().UtcDateTime:yyyyMMdd'T'HHmmssfff}"));

    private static void Copy(SqliteConnection connection, string target)
    {
        string partial = target + ".partial";
        try
        {
            if (File.Exists(target))
                throw new StoreException(StoreProblem.Wrong, $"{target} exists already.", "Choose another name.");
            File.Delete(partial);
            using (SqliteCommand command = connection.CreateCommand())
            {
                command.CommandText = "VACUUM INTO $target";
                command.Parameters.AddWithValue("$target", partial);
                command.ExecuteNonQuery();
            }

            File.Move(partial, target);
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
    }

    private static void Remove(string partial)
    {
        try
        {
            File.Delete(partial);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The first failure is the one worth telling.
        }
    }
}
