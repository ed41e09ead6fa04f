using System.IO.Compression;
using System.Text;
using System.Text.Json.Nodes;
using Finwright.Workshop.Exchange.Archives;

namespace Finwright.Workshop.Tests.Exchange.Archives;

/// <summary>Takes archives apart and puts them together again with another reader and writer than the program's.</summary>
internal static class ZipFiles
{
    /// <summary>The entries of an archive.</summary>
    public static Dictionary<string, byte[]> Of(byte[] file)
    {
        using ZipArchive archive = new(new MemoryStream(file), ZipArchiveMode.Read);
        return archive.Entries.ToDictionary(entry => entry.FullName, Bytes, StringComparer.Ordinal);

        static byte[] Bytes(ZipArchiveEntry entry)
        {
            using MemoryStream copy = new();
            using Stream stream = entry.Open();
            stream.CopyTo(copy);
            return copy.ToArray();
        }
    }

    /// <summary>An archive of entries.</summary>
    public static byte[] Zip(Dictionary<string, byte[]> files)
    {
        using MemoryStream stream = new();
        using (ZipArchive archive = new(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string name, byte[] bytes) in files)
            {
                using Stream entry = archive.CreateEntry(name).Open();
                entry.Write(bytes);
            }
        }

        return stream.ToArray();
    }

    /// <summary>Changes an entry of JSON.</summary>
    public static void Change(Dictionary<string, byte[]> files, string name, params Action<JsonNode>[] changes)
    {
        JsonNode list = JsonNode.Parse(files[name])!;
        foreach (Action<JsonNode> change in changes)
            change(list);
        files[name] = Encoding.UTF8.GetBytes(list.ToJsonString());
    }

    /// <summary>Puts an entry in place with the list of contents made to agree, as someone would who knows the layout.</summary>
    public static void Reseal(Dictionary<string, byte[]> files, string list, string name, byte[] bytes)
    {
        files[name] = bytes;
        Change(files, list, contents =>
        {
            JsonArray listed = contents["files"]!.AsArray();
            foreach (JsonNode? own in listed.Where(own => (string?)own!["name"] == name).ToArray())
                listed.Remove(own);
            listed.Add(new JsonObject { ["name"] = name, ["bytes"] = bytes.Length, ["sha256"] = Sha256.Of(bytes) });
        });
    }
}
