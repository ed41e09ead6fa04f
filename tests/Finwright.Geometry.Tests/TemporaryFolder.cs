namespace Finwright.Geometry.Tests;

/// <summary>A folder of its own for one test, removed afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("finwright-test-");

    public string this[string name] => Path.Combine(_folder.FullName, name);

    public string FolderPath => _folder.FullName;

    public IReadOnlyList<string> Names => [.. _folder.EnumerateFileSystemInfos().Select(entry => entry.Name).Order(StringComparer.Ordinal)];

    public void Dispose() => _folder.Delete(recursive: true);
}
