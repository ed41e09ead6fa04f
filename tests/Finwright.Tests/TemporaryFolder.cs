namespace Finwright.Tests;

/// <summary>A folder that goes away with the test.</summary>
public sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("finwright-").FullName;

    public string this[string name] => System.IO.Path.Combine(Path, name);

    /// <summary>Writes a text file and gives its path.</summary>
    public string Write(string name, string text)
    {
        File.WriteAllText(this[name], text);
        return this[name];
    }

    /// <summary>All files below, relative, sorted; hidden ones too.</summary>
    public IReadOnlyList<string> Files(string below = "") =>
        [.. Directory.EnumerateFiles(this[below], "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None })
            .Select(file => System.IO.Path.GetRelativePath(this[below], file).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
