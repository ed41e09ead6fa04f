using System.IO.Compression;
using System.Xml;

namespace Finwright.Geometry.Files;

/// <summary>The package round a 3MF model: entries, content types, relationships. Strict, and safe against packages made to do harm.</summary>
/// <remarks>Open Packaging Conventions (ECMA-376 part 2, ISO/IEC 29500-2); 3MF Core Specification 1.4.0, section 2.</remarks>
internal sealed class ThreeMfPackage
{
    private const int MostEntries = 1000;
    private readonly Dictionary<string, ZipArchiveEntry> _entries = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, string> _typeByExtension = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, string> _typeByPath = new(StringComparer.OrdinalIgnoreCase);
    private long _unpacked;

    private ThreeMfPackage(ZipArchive archive)
    {
        if (archive.Entries.Count > MostEntries)
            throw new FileFormatException($"The 3MF file has {archive.Entries.Count} entries, more than {MostEntries}. It is not a plain model.");
        foreach (ZipArchiveEntry entry in archive.Entries)
        {
            string path = entry.FullName;
            if (path.EndsWith('/'))
                continue;
            if (path.Length is 0 or > 255 || path[0] == '/' || path.Contains('\\') || path.Contains(':') || path.Any(char.IsControl)
                || path.Split('/').Any(step => step is "" or "." or ".."))
                throw new FileFormatException($"The 3MF file has an entry with the unsafe path {Shown(path)}. Nothing was unpacked.");
            if (!_entries.TryAdd(path, entry))
                throw new FileFormatException($"The 3MF file has two entries {Shown(path)}.");
        }
    }

    /// <summary>Reads a whole file.</summary>
    public static ThreeMfDocument Read(Stream stream)
    {
        byte[] bytes = MeshLimits.ReadAll(stream, "The 3MF file");
        try
        {
            using ZipArchive archive = new(new MemoryStream(bytes, writable: false), ZipArchiveMode.Read);
            return new ThreeMfPackage(archive).Document();
        }
        catch (Exception problem) when (problem is InvalidDataException or IOException or NotSupportedException or ArgumentException or OverflowException)
        {
            // All of it is in memory by now, so every complaint is about the bytes: offsets beyond the end, unknown packing, lengths that do not add up.
            throw new FileFormatException($"The 3MF file is not a sound zip package: {problem.Message} It is cut short or of another kind.", problem);
        }
    }

    private ThreeMfDocument Document()
    {
        ReadXml(ThreeMfNames.ContentTypesPath, ReadContentTypes);
        string? model = null, thumbnail = null;
        ReadXml(ThreeMfNames.RelationshipsPath, xml => (model, thumbnail) = ReadRelationships(xml));
        if (model == null)
            throw new FileFormatException($"{ThreeMfNames.RelationshipsPath}: no relationship names the model.");
        RequireType(model, ThreeMfNames.ModelType);
        ThreeMfDocument? document = null;
        ReadXml(model, xml => document = new ThreeMfModelReader(xml, model).Read());
        if (thumbnail != null)
        {
            if (Type(thumbnail) is not (ThreeMfNames.PngType or ThreeMfNames.JpegType))
                throw new FileFormatException($"The thumbnail {Shown(thumbnail)} is neither a PNG nor a JPEG picture.");
            byte[] picture = MeshLimits.ReadAll(Open(thumbnail), "The thumbnail");
            if (Type(thumbnail) is ThreeMfNames.PngType)
                document = document! with { Thumbnail = picture };
        }

        return document!;
    }

    private void ReadContentTypes(XmlReader xml)
    {
        StrictXml.Root(xml, ThreeMfNames.ContentTypesPath, "Types", ThreeMfNames.ContentTypes);
        foreach (string element in StrictXml.Children(xml, ThreeMfNames.ContentTypesPath, ThreeMfNames.ContentTypes))
        {
            string place = StrictXml.Place(xml, ThreeMfNames.ContentTypesPath);
            bool added = element switch
            {
                "Default" => _typeByExtension.TryAdd(StrictXml.Required(xml, place, "Extension"), StrictXml.Required(xml, place, "ContentType")),
                "Override" => _typeByPath.TryAdd(StrictXml.Required(xml, place, "PartName").TrimStart('/'), StrictXml.Required(xml, place, "ContentType")),
                _ => throw new FileFormatException($"{place}: <{element}> does not belong here."),
            };
            if (!added)
                throw new FileFormatException($"{place}: this content type is stated twice.");
            StrictXml.SkipContent(xml);
        }

        RequireType(ThreeMfNames.RelationshipsPath, ThreeMfNames.RelationshipsType);
    }

    private (string? Model, string? Thumbnail) ReadRelationships(XmlReader xml)
    {
        string? model = null, thumbnail = null;
        HashSet<string> ids = new(StringComparer.Ordinal);
        StrictXml.Root(xml, ThreeMfNames.RelationshipsPath, "Relationships", ThreeMfNames.Relationships);
        foreach (string element in StrictXml.Children(xml, ThreeMfNames.RelationshipsPath, ThreeMfNames.Relationships))
        {
            string place = StrictXml.Place(xml, ThreeMfNames.RelationshipsPath);
            if (element is not "Relationship")
                throw new FileFormatException($"{place}: <{element}> does not belong here.");
            string id = StrictXml.Required(xml, place, "Id"), type = StrictXml.Required(xml, place, "Type"), target = StrictXml.Required(xml, place, "Target");
            if (!ids.Add(id))
                throw new FileFormatException($"{place}: the relationship id \"{id}\" is used twice.");
            if (xml.GetAttribute("TargetMode") is not (null or "Internal"))
                throw new FileFormatException($"{place}: the relationship points outside the file. That is not followed.");
            string path = target.StartsWith('/') ? target[1..] : target;
            if (!_entries.ContainsKey(path))
                throw new FileFormatException($"{place}: the relationship points to {Shown(target)}, which the file does not have.");
            if (type is ThreeMfNames.ModelRelationship)
                model = model == null ? path : throw new FileFormatException($"{place}: a second relationship names a model.");
            else if (type is ThreeMfNames.ThumbnailRelationship)
                thumbnail = thumbnail == null ? path : throw new FileFormatException($"{place}: a second relationship names a thumbnail.");
            StrictXml.SkipContent(xml);
        }

        return (model, thumbnail);
    }

    private string? Type(string path) =>
        _typeByPath.TryGetValue(path, out string? type) || _typeByExtension.TryGetValue(Path.GetExtension(path).TrimStart('.'), out type) ? type : null;

    private void RequireType(string path, string type)
    {
        if (Type(path) != type)
            throw new FileFormatException($"{ThreeMfNames.ContentTypesPath}: {Shown(path)} has the content type \"{Type(path) ?? "none"}\"; it must be \"{type}\".");
    }

    private CountedStream Open(string path)
    {
        if (!_entries.TryGetValue(path, out ZipArchiveEntry? entry))
            throw new FileFormatException($"The 3MF file has no entry {Shown(path)}. It is not a 3MF file, or broken.");
        return new CountedStream(entry.Open(), count =>
        {
            if ((_unpacked += count) > MeshLimits.Bytes)
                throw new FileFormatException($"The 3MF file unpacks to more than {MeshLimits.Bytes / (1024 * 1024)} MB. Reduce its number of triangles.");
        });
    }

    private void ReadXml(string path, Action<XmlReader> read)
    {
        using Stream stream = Open(path);
        // No document type: that is how XML reaches outside its file or grows without end.
        XmlReaderSettings settings = new()
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreWhitespace = true,
            IgnoreProcessingInstructions = true,
        };
        using XmlReader xml = XmlReader.Create(stream, settings);
        try
        {
            read(xml);
        }
        catch (XmlException problem)
        {
            throw new FileFormatException($"{path}, line {problem.LineNumber}: {problem.Message}", problem);
        }
    }

    private static string Shown(string path)
    {
        const int Longest = 80;
        string shown = string.Concat(path.Select(c => char.IsControl(c) ? '?' : c));
        return $"\"{(shown.Length > Longest ? shown[..Longest] + "…" : shown)}\"";
    }
}
