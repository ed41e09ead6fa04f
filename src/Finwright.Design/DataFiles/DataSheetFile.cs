using System.Text.Encodings.Web;
using System.Text.Json;
using Finwright.Numerics;

namespace Finwright.Design.DataFiles;

/// <summary>
/// Data sheets as JSON: format, name, title, kind, remark, and numbers with range, certainty and source, the unit in the field's name. The reader is
/// strict, so that a mistyped field cannot silently leave the old value standing. A number may also stand alone; then it has no range, and counts as judgement.
/// </summary>
public static class DataSheetFile
{
    /// <summary>Source of a number that stands alone.</summary>
    public const string NoSource = "given without a source";

    private const int CurrentFormat = 1;

    // A sheet needs some 4 kB; more is none.
    private const int LargestFile = 256 * 1024;

    private static readonly JsonWriterOptions Layout = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    /// <summary>The words for how sure a number is, in the order of <see cref="Certainty"/>.</summary>
    public static IReadOnlyList<string> Words { get; } = ["published", "derived", "common-practice", "from-memory", "judgement"];

    /// <summary>Reads a data sheet.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <param name="subject">What it is about.</param>
    /// <returns>The sheet, or everything that is wrong with the file.</returns>
    public static DataReading Read(ReadOnlySpan<byte> utf8, DataSubject subject)
    {
        ArgumentNullException.ThrowIfNull(subject);
        string what = subject.What;
        if (utf8.Length > LargestFile)
            return Refused(new("too-large", Severity.Error, "$", $"The {what} file has {utf8.Length / 1024} kB; a {what} needs a few.", $"Give a file of at most {LargestFile / 1024} kB."));
        if (utf8 is [0xEF, 0xBB, 0xBF, ..])
            utf8 = utf8[3..];
        try
        {
            Utf8JsonReader reader = new(utf8, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true, MaxDepth = 8 });
            using JsonDocument document = JsonDocument.ParseValue(ref reader);
            return reader.Read() ? Refused(new("not-json", Severity.Error, "$", $"After the {what} something else follows.", "End the file with the closing brace.")) : new DataSheetReader(subject).Read(document.RootElement);
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

    /// <summary>Writes a data sheet, for a maker to change and read back. Same sheet, same bytes.</summary>
    /// <param name="stream">Receives the file.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="form">Its fields, in the order of the file.</param>
    public static void Write(Stream stream, DataSheet sheet, DataForm form)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(form);
        using Utf8JsonWriter writer = new(stream, Layout);
        writer.WriteStartObject();
        writer.WriteNumber("format", CurrentFormat);
        writer.WriteString("name", sheet.Name);
        writer.WriteString("title", sheet.Title);
        if (sheet.Kind is not null)
            writer.WriteString("kind", sheet.Kind);
        writer.WriteString("remark", sheet.Remark);
        foreach (DataField field in form.Fields)
        {
            if (!sheet.Numbers.TryGetValue(field.Key, out DataNumber? number))
                continue;
            writer.WriteStartObject(field.Key);
            writer.WriteNumber("value", number.Range.Value);
            writer.WriteNumber("low", number.Range.Low);
            writer.WriteNumber("high", number.Range.High);
            writer.WriteString("certainty", Words[(int)number.Certainty]);
            writer.WriteString("source", number.Source);
            writer.WriteEndObject();
        }

        writer.WriteEndObject();
    }

    private static DataReading Refused(Finding finding) => new(null, [finding]);
}
