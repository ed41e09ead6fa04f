using System.Xml;

namespace Finwright.Workshop.Tracks;

/// <summary>Names of tags, each held once, and not more than an honest file has: a file of nothing but new names would otherwise fill the memory.</summary>
internal sealed class BoundedNames : NameTable
{
    private const int MostNames = 20_000;
    private int _count;

    /// <summary>Whether the file was stopped for its names.</summary>
    public bool IsFull => _count > MostNames;

    /// <inheritdoc/>
    public override string Add(string key) => Get(key) ?? Counted(base.Add(key));

    /// <inheritdoc/>
    public override string Add(char[] key, int start, int len) => Get(key, start, len) ?? Counted(base.Add(key, start, len));

    private string Counted(string name) =>
        ++_count > MostNames ? throw new XmlException("Too many different names.") : name;
}
