[assembly: AssemblyFixture(typeof(Finwright.Page.Tests.ReaderFolders))]

namespace Finwright.Page.Tests;

/// <summary>A folder for each reader's choices, all gone when the tests have run.</summary>
public sealed class ReaderFolders : IDisposable
{
    private static readonly Lazy<DirectoryInfo> All = new(() => Directory.CreateTempSubdirectory("finwright-readers-"));

    /// <summary>The place of a store nobody else has.</summary>
    internal static string NewStorePath() => Path.Combine(All.Value.FullName, Guid.NewGuid().ToString("N"), "store");

    public void Dispose()
    {
        if (All.IsValueCreated)
            All.Value.Delete(recursive: true);
    }
}
