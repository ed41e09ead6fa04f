using Finwright.Workshop.Storing;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Tests;

/// <summary>A store in a folder of its own, gone after the test.</summary>
internal sealed class TemporaryStore : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("finwright-store-").FullName;

    /// <summary>The store's file; not there before it is opened.</summary>
    public string File => Path.Combine(_folder, "workshop.finstore");

    /// <summary>The folder.</summary>
    public string Folder => _folder;

    /// <summary>Opens the store, creating it the first time.</summary>
    public WorkshopStore Open(TimeProvider? time = null) => WorkshopStore.Open(File, time: time);

    /// <summary>Names of the files in the folder, in their order.</summary>
    public IReadOnlyList<string> Files => [.. Directory.EnumerateFiles(_folder).Select(file => System.IO.Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    /// <summary>The database itself, without the store; made when it is not there.</summary>
    public SqliteConnection Database()
    {
        SqliteConnection connection = new(new SqliteConnectionStringBuilder { DataSource = File, Pooling = false, ForeignKeys = true }.ToString());
        connection.Open();
        return connection;
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
