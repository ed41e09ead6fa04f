using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json.Nodes;

namespace Finwright.Fuzz.Tests;

/// <summary>An archive taken apart: any piece can be replaced, and the list of contents then vouches for the new one, as a hostile hand would see to it.</summary>
internal sealed class SealedPieces
{
    private readonly string _list;
    private readonly List<(string Name, byte[] Content)> _pieces = [];

    /// <summary>Takes an archive apart.</summary>
    /// <param name="archive">The archive.</param>
    /// <param name="list">Name of its list of contents.</param>
    public SealedPieces(byte[] archive, string list)
    {
        _list = list;
        using ZipArchive zip = new(new MemoryStream(archive));
        foreach (ZipArchiveEntry entry in zip.Entries)
        {
            using Stream stream = entry.Open();
            using MemoryStream content = new();
            stream.CopyTo(content);
            _pieces.Add((entry.FullName, content.ToArray()));
        }
    }

    /// <summary>What the pieces hold.</summary>
    public IReadOnlyList<byte[]> Contents => [.. _pieces.Select(piece => piece.Content)];

    /// <summary>The archive with another content of one piece, sealed anew.</summary>
    /// <param name="piece">Which piece.</param>
    /// <param name="content">What it holds then; a list of contents is taken as it is.</param>
    public byte[] With(int piece, byte[] content)
    {
        using MemoryStream stream = new();
        using (ZipArchive zip = new(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((int at, (string name, byte[] own)) in _pieces.Index())
            {
                using Stream entry = zip.CreateEntry(name, CompressionLevel.NoCompression).Open();
                entry.Write(at == piece ? content : name == _list ? ListOf(own, _pieces[piece].Name, content) : own);
            }
        }

        return stream.ToArray();
    }

    // Files are listed with size and hash; the text of a revision has its hash in the list of revisions too.
    private static byte[] ListOf(byte[] list, string name, byte[] content)
    {
        JsonNode root = JsonNode.Parse(list)!;
        string hash = Convert.ToHexStringLower(SHA256.HashData(content));
        JsonNode listed = root["files"]!.AsArray().Single(file => (string)file!["name"]! == name)!;
        (listed["bytes"], listed["sha256"]) = (content.Length, hash);
        foreach (JsonNode? revision in root["revisions"]?.AsArray() ?? [])
        {
            if (name == $"revisions/{(int)revision!["number"]!}.fin.json")
                revision["sha256"] = hash;
        }

        return System.Text.Encoding.UTF8.GetBytes(root.ToJsonString());
    }
}
