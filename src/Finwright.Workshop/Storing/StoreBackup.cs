using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Storing;

/// <summary>Copies of a store.</summary>
public static class StoreBackup
{
    /// <summary>Copies a store into a new file, whole, while other programs may use it.</summary>
    /// <param name="store">The store.</param>
    /// <param name="target">The copy; must not exist.</param>
    /// <exception cref="StoreException">The store is damaged, or the copy cannot be written; nothing is left of it.</exception>
    public static void Write(WorkshopStore store, string target)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentException.ThrowIfNullOrWhiteSpace(target);
        // What can be saved of a damaged store is no copy of it.
        if (store.Refusal is { Problem: StoreProblem.Damaged } refusal)
            throw refusal;
        Copy(store.Connection.Database, store.Path, Path.GetFullPath(target));
    }

    /// <summary>Name of the copy that is kept beside a store of an earlier program when it is brought up to date.</summary>
    internal static string NameBeforeUpgrade(string path, int version, TimeProvider time) =>
        string.Create(CultureInfo.InvariantCulture, $"{path}.version-{version}-{time.GetUtcNow().UtcDateTime:yyyyMMdd'T'HHmmssfff}");

    /// <summary>Copies what a connection sees into a new file.</summary>
    /// <param name="connection">The connection.</param>
    /// <param name="path">Its file, for messages.</param>
    /// <param name="target">The copy; must not exist.</param>
    /// <exception cref="StoreException">It cannot be written; nothing is left of it.</exception>
    internal static void Copy(SqliteConnection connection, string path, string target)
    {
        // Two programs that copy to the same name at once do not write into one another's file.
        string partial = string.Create(CultureInfo.InvariantCulture, $"{target}.{Environment.ProcessId}.partial");
        try
        {
            if (Path.Exists(target))
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
            // Damage is the store's, anything else that of the place where the copy is to go.
            throw StoreException.Of(problem, problem.SqliteErrorCode is 11 or 26 ? path : target);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Remove(partial);
            throw new StoreException(StoreProblem.Unreachable, $"{target} cannot be written: {problem.Message.Replace(partial, target, StringComparison.Ordinal)}", "Choose a folder that exists and may be written to.", problem);
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
