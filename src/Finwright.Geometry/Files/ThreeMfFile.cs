using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;

namespace Finwright.Geometry.Files;

/// <summary>
/// 3MF files: parts with names and units, laid out for printing. Core specification only, which every program that
/// prepares files for a printer must understand.
/// </summary>
/// <remarks>3MF Consortium, "3D Manufacturing Format Core Specification", version 1.4.0.</remarks>
public static class ThreeMfFile
{
    /// <summary>Earliest date that the package form can express; a fixed one keeps the bytes the same.</summary>
    private static readonly DateTimeOffset EntryDate = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Writes the parts of a document. Same document, same bytes on one kind of system.</summary>
    /// <param name="stream">Receives the file.</param>
    /// <param name="document">What to write; letters that XML cannot carry are replaced by a blank.</param>
    /// <exception cref="ArgumentException">There is no part, a mesh vanishes in single precision, a placement mirrors or is not finite, or a note's name is malformed or used twice.</exception>
    public static void Write(Stream stream, ThreeMfDocument document)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(document);
        Check(document);
        RoundedMesh[] meshes = [.. document.Parts.Select(part => RoundedMesh.From(part.Mesh))];

        // Built in memory: the archive writes other bytes to a stream that cannot seek.
        using MemoryStream package = new();
        using (ZipArchive archive = new(package, ZipArchiveMode.Create, leaveOpen: true))
        {
            WriteEntry(archive, ThreeMfNames.ContentTypesPath, xml => WriteContentTypes(xml, document.Thumbnail != null));
            WriteEntry(archive, ThreeMfNames.RelationshipsPath, xml => WriteRelationships(xml, document.Thumbnail != null));
            WriteEntry(archive, ThreeMfNames.ModelPath, xml => WriteModel(xml, document, meshes));
            if (document.Thumbnail != null)
            {
                using Stream picture = NewEntry(archive, ThreeMfNames.ThumbnailPath);
                picture.Write(document.Thumbnail);
            }
        }

        package.WriteTo(stream);
    }

    /// <summary>Reads the parts of a file with the strictness of the specification.</summary>
    /// <param name="stream">Read to its end; at most 256 MB, also after unpacking, and four million triangles.</param>
    /// <returns>One part for each build item, in order; meshes in metres.</returns>
    /// <exception cref="FileFormatException">The file is broken, unsafe or of another kind; the message says where.</exception>
    public static ThreeMfDocument Read(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return ThreeMfPackage.Read(stream);
    }

    private static void Check(ThreeMfDocument document)
    {
        if (document.Parts.Count == 0)
            throw new ArgumentException("A 3MF file needs at least one part.", nameof(document));
        foreach (ThreeMfPart part in document.Parts)
            if (!(part.Placement.Determinant > 0) || !double.IsFinite(part.Placement.Determinant + part.Placement.Origin.Length))
                throw new ArgumentException($"The placement of \"{part.Name}\" mirrors, flattens or is not finite.", nameof(document));
        HashSet<string> names = new(StringComparer.Ordinal);
        foreach ((string name, _) in document.Notes)
            if (name.Length == 0 || !char.IsAsciiLetter(name[0]) || !name.All(c => char.IsAsciiLetterOrDigit(c) || c is '_' or '-') || !names.Add(name))
                throw new ArgumentException($"The note name \"{name}\" is malformed or used twice.", nameof(document));
    }

    private static Stream NewEntry(ZipArchive archive, string path)
    {
        ZipArchiveEntry entry = archive.CreateEntry(path, CompressionLevel.Optimal);
        entry.LastWriteTime = EntryDate;
        return entry.Open();
    }

    private static void WriteEntry(ZipArchive archive, string path, Action<XmlWriter> write)
    {
        using Stream stream = NewEntry(archive, path);
        XmlWriterSettings settings = new() { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), Indent = true, IndentChars = " ", NewLineChars = "\n" };
        using XmlWriter xml = XmlWriter.Create(stream, settings);
        write(xml);
    }

    private static void WriteContentTypes(XmlWriter xml, bool withThumbnail)
    {
        void Default(string extension, string type)
        {
            xml.WriteStartElement("Default", ThreeMfNames.ContentTypes);
            xml.WriteAttributeString("Extension", extension);
            xml.WriteAttributeString("ContentType", type);
            xml.WriteEndElement();
        }

        xml.WriteStartElement("Types", ThreeMfNames.ContentTypes);
        Default("rels", ThreeMfNames.RelationshipsType);
        Default("model", ThreeMfNames.ModelType);
        if (withThumbnail)
            Default("png", ThreeMfNames.PngType);
        xml.WriteEndElement();
    }

    private static void WriteRelationships(XmlWriter xml, bool withThumbnail)
    {
        void Relationship(string id, string type, string target)
        {
            xml.WriteStartElement("Relationship", ThreeMfNames.Relationships);
            xml.WriteAttributeString("Id", id);
            xml.WriteAttributeString("Type", type);
            xml.WriteAttributeString("Target", "/" + target);
            xml.WriteEndElement();
        }

        xml.WriteStartElement("Relationships", ThreeMfNames.Relationships);
        Relationship("model", ThreeMfNames.ModelRelationship, ThreeMfNames.ModelPath);
        if (withThumbnail)
            Relationship("thumbnail", ThreeMfNames.ThumbnailRelationship, ThreeMfNames.ThumbnailPath);
        xml.WriteEndElement();
    }

    private static void WriteModel(XmlWriter xml, ThreeMfDocument document, RoundedMesh[] meshes)
    {
        void Metadata(string name, string value)
        {
            xml.WriteStartElement("metadata", ThreeMfNames.Core);
            xml.WriteAttributeString("name", name);
            xml.WriteString(Printable(value));
            xml.WriteEndElement();
        }

        xml.WriteStartElement("model", ThreeMfNames.Core);
        xml.WriteAttributeString("unit", "millimeter");
        xml.WriteAttributeString("xml", "lang", ThreeMfNames.Xml, "en");
        if (document.Notes.Count > 0)
            xml.WriteAttributeString("xmlns", "fw", ThreeMfNames.XmlNamespaces, ThreeMfNames.Own);
        Metadata("Title", document.Title);
        Metadata("Application", "Finwright");
        foreach ((string name, string value) in document.Notes)
            Metadata("fw:" + name, value);

        xml.WriteStartElement("resources", ThreeMfNames.Core);
        for (int i = 0; i < meshes.Length; i++)
            WriteObject(xml, i + 1, document.Parts[i].Name, meshes[i]);
        xml.WriteEndElement();

        xml.WriteStartElement("build", ThreeMfNames.Core);
        for (int i = 0; i < meshes.Length; i++)
        {
            xml.WriteStartElement("item", ThreeMfNames.Core);
            xml.WriteAttributeString("objectid", (i + 1).ToString(CultureInfo.InvariantCulture));
            xml.WriteAttributeString("transform", Transform(document.Parts[i].Placement));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static void WriteObject(XmlWriter xml, int id, string name, RoundedMesh mesh)
    {
        xml.WriteStartElement("object", ThreeMfNames.Core);
        xml.WriteAttributeString("id", id.ToString(CultureInfo.InvariantCulture));
        xml.WriteAttributeString("type", "model");
        xml.WriteAttributeString("name", Printable(name));
        xml.WriteStartElement("mesh", ThreeMfNames.Core);
        xml.WriteStartElement("vertices", ThreeMfNames.Core);
        for (int i = 0; i < mesh.Vertices.Length; i += 3)
        {
            xml.WriteStartElement("vertex", ThreeMfNames.Core);
            xml.WriteAttributeString("x", Number(mesh.Vertices[i]));
            xml.WriteAttributeString("y", Number(mesh.Vertices[i + 1]));
            xml.WriteAttributeString("z", Number(mesh.Vertices[i + 2]));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
        xml.WriteStartElement("triangles", ThreeMfNames.Core);
        for (int i = 0; i < mesh.Triangles.Length; i += 3)
        {
            xml.WriteStartElement("triangle", ThreeMfNames.Core);
            xml.WriteAttributeString("v1", mesh.Triangles[i].ToString(CultureInfo.InvariantCulture));
            xml.WriteAttributeString("v2", mesh.Triangles[i + 1].ToString(CultureInfo.InvariantCulture));
            xml.WriteAttributeString("v3", mesh.Triangles[i + 2].ToString(CultureInfo.InvariantCulture));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    /// <summary>Rows are the images of the axes, then of the origin in millimetres (core specification, 3.3: row vectors times the matrix).</summary>
    private static string Transform(Placement placement)
    {
        Point3 origin = 1000 * placement.Origin;
        Point3[] rows = [placement.AxisX, placement.AxisY, placement.AxisZ, origin];
        return string.Join(' ', rows.SelectMany(row => new[] { Number((float)row.X), Number((float)row.Y), Number((float)row.Z) }));
    }

    /// <summary>Shortest text that reads back as the same number.</summary>
    private static string Number(float value) => (value + 0f).ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A text in which everything that XML cannot carry is a blank.</summary>
    private static string Printable(string text)
    {
        StringBuilder clean = new(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
            clean.Append(rune == Rune.ReplacementChar || (rune.IsBmp && !XmlConvert.IsXmlChar((char)rune.Value)) ? " " : rune.ToString());
        return clean.ToString();
    }
}
