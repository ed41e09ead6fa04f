using Finwright.Workshop.Storing;

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

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
