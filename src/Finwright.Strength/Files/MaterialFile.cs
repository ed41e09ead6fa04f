using System.Text.Encodings.Web;
using System.Text.Json;
using Finwright.Design;
using Finwright.Numerics;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Files;

/// <summary>
/// Material files, <c>*.material.json</c>: one material a file, each number with its range and source, the unit in the field's name.
/// The reader is strict, so that a mistyped field cannot silently leave the old value standing.
/// </summary>
public static class MaterialFile
{
    /// <summary>Ending of the file names.</summary>
    public const string Ending = ".material.json";

    private const int CurrentFormat = 1;

    // A material needs some 4 kB; more is not a material.
    private const int LargestFile = 256 * 1024;

    private static readonly JsonWriterOptions Layout = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    /// <summary>Reads a material.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <returns>The material, or everything that is wrong with the file.</returns>
    public static MaterialReading Read(ReadOnlySpan<byte> utf8)
    {
        if (utf8.Length > LargestFile)
            return Refused(new("too-large", Severity.Error, "$", $"The material file has {utf8.Length / 1024} kB; a material needs a few.", $"Give a file of at most {LargestFile / 1024} kB."));
        if (utf8 is [0xEF, 0xBB, 0xBF, ..])
            utf8 = utf8[3..];
        try
        {
            Utf8JsonReader reader = new(utf8, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true, MaxDepth = 8 });
            using JsonDocument document = JsonDocument.ParseValue(ref reader);
            return reader.Read() ? Refused(new("not-json", Severity.Error, "$", "After the material something else follows.", "End the file with the closing brace.")) : new MaterialReader().Read(document.RootElement);
        }
        catch (JsonException refusal)
        {
            long line = (refusal.LineNumber ?? 0) + 1;
            return Refused(new("not-json", Severity.Error, "$", $"The text stops being JSON on line {line}.", "Check commas, quotes and braces there.") { Line = (int)line });
        }
        catch (InvalidOperationException)
        {
            // Thrown for texts that are not UTF-8.
            return Refused(new("not-json", Severity.Error, "$", "A text in the file is not in UTF-8.", "Save the file as UTF-8."));
        }
    }

    /// <summary>Writes a material, for a maker to change and read back. Same material, same bytes.</summary>
    /// <param name="stream">Receives the file.</param>
    /// <param name="material">The material.</param>
    public static void Write(Stream stream, Material material)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(material);
        MaterialForm form = MaterialForm.Of(material);
        using Utf8JsonWriter writer = new(stream, Layout);
        writer.WriteStartObject();
        writer.WriteNumber("format", CurrentFormat);
        writer.WriteString("name", material.Name);
        writer.WriteString("title", material.Title);
        writer.WriteString("kind", form.Kind);
        writer.WriteString("remark", material.Remark);
        foreach (MaterialField field in form.Fields)
        {
            Ranged number = field.Get(material);
            MaterialSource source = material.Sources[field.Key];
            writer.WriteStartObject(field.Key);
            writer.WriteNumber("value", field.FromSi(number.Value));
            writer.WriteNumber("low", field.FromSi(number.Low));
            writer.WriteNumber("high", field.FromSi(number.High));
            writer.WriteString("certainty", MaterialReader.Words[(int)source.Certainty]);
            writer.WriteString("source", source.Text);
            writer.WriteEndObject();
        }

        writer.WriteEndObject();
    }

    private static MaterialReading Refused(Finding finding) => new(null, [finding]);
}
