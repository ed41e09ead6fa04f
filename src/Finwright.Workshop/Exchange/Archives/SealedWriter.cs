using System.Security.Cryptography;

namespace Finwright.Workshop.Exchange.Archives;

/// <summary>Writes an archive with a list of its contents, each with its hash.</summary>
internal sealed class SealedWriter
{
    private readonly ArchiveWriter _archive;
    private readonly List<SealedFile> _files = [];

    /// <summary>Begins an archive.</summary>
    /// <inheritdoc cref="ArchiveWriter(Stream, ArchiveLimits, string)"/>
    public SealedWriter(Stream stream, ArchiveLimits limits, string remedy) => _archive = new(stream, limits, remedy);

    /// <summary>Adds an entry.</summary>
    /// <inheritdoc cref="ArchiveWriter.Add"/>
    public void Add(string name, ReadOnlySpan<byte> bytes)
    {
        _archive.Add(name, bytes);
        _files.Add(new(name, bytes.Length, Sha256.Of(bytes)));
    }

    /// <summary>Ends the archive with its list of contents.</summary>
    /// <param name="name">Name of the list.</param>
    /// <param name="list">Makes the list from the entries.</param>
    public void Complete<T>(string name, Func<IReadOnlyList<SealedFile>, T> list)
    {
        _archive.Add(name, ExchangeJson.Write(list(_files)));
        _archive.Complete();
    }
}

/// <summary>SHA-256 as text.</summary>
internal static class Sha256
{
    private const int Length = 64;

    /// <summary>The hash of bytes, lower-case hexadecimal.</summary>
    public static string Of(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Whether a text looks like a hash.</summary>
    public static bool IsOne(string text) => text.Length == Length && text.All(char.IsAsciiHexDigitLower);
}
