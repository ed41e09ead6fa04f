using System.Globalization;
using System.Reflection;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Storing;

/// <summary>The store's tables: numbered steps, each of which brings a store one version on. A new store takes all of them.</summary>
/// <remarks>The steps are the files in <c>Storing/Steps</c>. A step that has been released is never changed; what changes later is a further step.</remarks>
internal static class StoreSchema
{
    /// <summary>What the header of the file says it is: "FinW".</summary>
    public const int ApplicationId = 0x46696E57;

    private static readonly string[] Steps = ReadSteps();

    /// <summary>The version that this program writes.</summary>
    public static int Current => Steps.Length;

    /// <summary>Brings a store up to a version, inside a transaction of the caller's.</summary>
    /// <param name="connection">The store.</param>
    /// <param name="transaction">The caller's transaction.</param>
    /// <param name="from">The version it has; 0 for an empty file.</param>
    /// <param name="to">The version it is to have.</param>
    public static void Upgrade(SqliteConnection connection, SqliteTransaction transaction, int from, int to)
    {
        for (int step = from; step < to; step++)
            Run(Steps[step]);
        Run(string.Create(CultureInfo.InvariantCulture, $"PRAGMA application_id = {ApplicationId}; PRAGMA user_version = {to};"));

        void Run(string sql)
        {
            using SqliteCommand command = connection.CreateCommand();
            command.Transaction = transaction;
#pragma warning disable CA2100 // Our own files and numbers; nothing a person typed.
            command.CommandText = sql;
#pragma warning restore CA2100
            command.ExecuteNonQuery();
        }
    }

    private static string[] ReadSteps()
    {
        Assembly assembly = typeof(StoreSchema).Assembly;
        return [.. assembly.GetManifestResourceNames().Where(name => name.EndsWith(".sql", StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(Text)];

        string Text(string name)
        {
            using StreamReader reader = new(assembly.GetManifestResourceStream(name)!);
            return reader.ReadToEnd();
        }
    }
}
