using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Finwright.Design.Fields;

namespace Finwright.Design;

/// <summary>
/// The JSON Schema (draft 2020-12) of the design file, for editors that complete and check as one types.
/// It says what single fields may be; the rules that tie fields together are in <see cref="DesignValidation"/>.
/// </summary>
public static class DesignSchema
{
    /// <summary>Name under which the schema is shipped, beside the program and inside this assembly.</summary>
    public const string FileName = "fin-design.schema.json";

    private static JsonWriterOptions Readable { get; } = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes the schema from the types.</summary>
    /// <returns>JSON, ending with a line break.</returns>
    public static string Generate()
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, Readable))
        {
            writer.WriteStartObject();
            writer.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            writer.WriteString("title", "Fin design");
            writer.WriteString("description", $"A windsurf fin to print, fill and prove. Format {FinDesign.CurrentFormat}.");
            WriteRecord(writer, RecordForm.Of(typeof(FinDesign)));
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void WriteRecord(Utf8JsonWriter writer, RecordForm form)
    {
        writer.WriteString("type", "object");
        writer.WriteBoolean("additionalProperties", false);
        WriteTexts(writer, "required", form.Fields.Where(field => field.IsRequired).Select(field => field.Key));
        writer.WriteStartObject("properties");
        foreach (Field field in form.Fields)
        {
            writer.WriteStartObject(field.Key);
            writer.WriteString("description", Description(field));
            WriteValue(writer, field.Form, field, field.MayBeNull);
            if (field is { IsRequired: false, Default: not null } && field.Form.Kind != FieldKind.Record)
            {
                writer.WritePropertyName("default");
                DesignWriter.WriteDefault(writer, field);
            }

            writer.WriteEndObject();
        }

        writer.WriteEndObject();
    }

    private static void WriteValue(Utf8JsonWriter writer, ValueForm form, Field field, bool mayBeNull)
    {
        if (form.Kind == FieldKind.Record)
        {
            WriteGroup(writer, form.Record, mayBeNull);
            return;
        }

        string type = form.Kind switch
        {
            FieldKind.Number => "number",
            FieldKind.WholeNumber => "integer",
            FieldKind.Switch => "boolean",
            FieldKind.Point or FieldKind.List => "array",
            _ => "string",
        };
        if (mayBeNull)
            WriteTexts(writer, "type", [type, "null"]);
        else
            writer.WriteString("type", type);

        switch (form.Kind)
        {
            case FieldKind.Number or FieldKind.WholeNumber:
                if (field.Minimum is double minimum)
                    writer.WriteNumber("minimum", minimum);
                if (field.Maximum is double maximum)
                    writer.WriteNumber("maximum", maximum);
                break;
            case FieldKind.Text:
                writer.WriteNumber("maxLength", field.MaximumLength!.Value);
                break;
            case FieldKind.Word:
                WriteTexts(writer, "enum", form.Words.Select(word => word.Text));
                break;
            case FieldKind.Point:
                writer.WriteNumber("minItems", 2);
                writer.WriteNumber("maxItems", 2);
                writer.WriteStartObject("items");
                WriteValue(writer, ValueForm.Of(typeof(double)), field, mayBeNull: false);
                writer.WriteEndObject();
                break;
            case FieldKind.List:
                writer.WriteNumber("maxItems", field.MaximumLength!.Value);
                writer.WriteStartObject("items");
                WriteValue(writer, form.Item!, field, mayBeNull: false);
                writer.WriteEndObject();
                break;
        }
    }

    private static void WriteGroup(Utf8JsonWriter writer, RecordForm form, bool mayBeNull)
    {
        if (!mayBeNull)
        {
            WriteRecord(writer, form);
            return;
        }

        writer.WriteStartArray("anyOf");
        writer.WriteStartObject();
        writer.WriteString("type", "null");
        writer.WriteEndObject();
        writer.WriteStartObject();
        WriteRecord(writer, form);
        writer.WriteEndObject();
        writer.WriteEndArray();
    }

    private static string Description(Field field)
    {
        var text = new StringBuilder(field.Meaning);
        if (field.Unit.Length > 0)
            text.Append(" Unit: ").Append(field.Unit).Append('.');
        if (field.Reason.Length > 0)
            text.Append(" Why the default: ").Append(field.Reason);
        return text.ToString();
    }

    private static void WriteTexts(Utf8JsonWriter writer, string name, IEnumerable<string> texts)
    {
        string[] all = [.. texts];
        if (all.Length == 0)
            return;
        writer.WriteStartArray(name);
        foreach (string text in all)
            writer.WriteStringValue(text);
        writer.WriteEndArray();
    }
}
