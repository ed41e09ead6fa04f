namespace Finwright.Workshop.Exchange.Archives;

/// <summary>Reads an archive whose list of contents names every entry: nothing more, nothing less, each with its hash.</summary>
internal sealed class SealedReader
{
    private readonly ArchiveReader _archive;
    private readonly Dictionary<string, SealedFile> _files = new(StringComparer.Ordinal);

    /// <summary>Holds an archive against its list.</summary>
    /// <param name="archive">The archive.</param>
    /// <param name="list">Name of the list itself.</param>
    /// <param name="files">What the list names.</param>
    /// <exception cref="ExchangeException">They disagree.</exception>
    public SealedReader(ArchiveReader archive, string list, IReadOnlyList<SealedFile> files)
    {
        _archive = archive;
        HashSet<string> there = [.. archive.Names];
        there.Remove(list);
        foreach (SealedFile file in files)
        {
            if (!_files.TryAdd(file.Name, file))
                throw Refused($"\"{list}\" names \"{file.Name}\" twice.");
            if (!there.Remove(file.Name))
                throw Refused($"\"{file.Name}\" is missing.");
        }

        if (there.Count > 0)
            throw Refused($"The file holds \"{there.First()}\", which \"{list}\" does not name.");
    }

    /// <summary>Names of the entries, as the list has them.</summary>
    public IReadOnlyCollection<string> Names => _files.Keys;

    /// <summary>Whether there is an entry of that name.</summary>
    public bool Has(string name) => _files.ContainsKey(name);

    /// <summary>What an entry holds, its hash checked.</summary>
    /// <exception cref="ExchangeException">It is not there, damaged, or not what the list says.</exception>
    public byte[] Read(string name)
    {
        if (!_files.TryGetValue(name, out SealedFile? file))
            throw Refused($"\"{name}\" is missing.");
        byte[] bytes = _archive.Read(name);
        return bytes.Length == file.Bytes && string.Equals(Sha256.Of(bytes), file.Sha256, StringComparison.Ordinal)
            ? bytes
            : throw Refused($"\"{name}\" is not what was exported: its hash differs.");
    }

    private static ExchangeException Refused(string why) => new(why, "Have it exported again. Nothing was taken in.");
}
