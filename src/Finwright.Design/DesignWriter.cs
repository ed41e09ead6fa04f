using System.Buffers;
using System.Collections;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Finwright.Design.Fields;

namespace Finwright.Design;

/// <summary>Writes design files: readable JSON in the order of the format, two spaces of indent, LF, the shortest digits that read back exactly.</summary>
public static class DesignWriter
{
    private static readonly JsonWriterOptions Readable = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        // Names keep their accents; the text never goes into a web page unescaped.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="compact">Whether fields that equal their defaults are left out; the format version is always written.</param>
    /// <returns>The text, ending with a line break. Reading it gives the same design.</returns>
    /// <exception cref="ArgumentException">The design, built in code, holds a number that is not finite, a null that the format does not allow, or an unknown enum value.</exception>
    public static string Write(FinDesign design, bool compact = false)
    {
        ArgumentNullException.ThrowIfNull(design);
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, Readable))
            new Run(writer, compact).Record(design, RecordForm.Of(typeof(FinDesign)));
        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    /// <summary>The bytes that stand for the design's content: two designs are equal exactly when these are.</summary>
    /// <param name="design">The design.</param>
    /// <exception cref="ArgumentException">As for <see cref="Write"/>.</exception>
    public static byte[] Canonical(FinDesign design) => Encoding.UTF8.GetBytes(Write(design));

    /// <summary>Writes the default of a field that has one.</summary>
    internal static void WriteDefault(Utf8JsonWriter writer, Field field) => new Run(writer, compact: true).Value(field.Default, field.Form, field);

    private sealed class Run(Utf8JsonWriter writer, bool compact)
    {
        public void Record(object record, RecordForm form)
        {
            writer.WriteStartObject();
            foreach (Field field in form.Fields)
            {
                object? value = field.Get(record);
                if (compact && !field.IsRequired && field.Key != "format" && IsDefault(value, field))
                    continue;
                writer.WritePropertyName(field.Key);
                if (value is null && field.MayBeNull)
                    writer.WriteNullValue();
                else
                    Value(value, field.Form, field);
            }

            writer.WriteEndObject();
        }

        public void Value(object? value, ValueForm form, Field field)
        {
            switch (form.Kind, value)
            {
                case (FieldKind.Number, double number) when double.IsFinite(number):
                    // Negative zero is zero: it would read back as another text.
                    writer.WriteNumberValue(number + 0.0);
                    break;
                case (FieldKind.WholeNumber, int number):
                    writer.WriteNumberValue(number);
                    break;
                case (FieldKind.Text, string text):
                    writer.WriteStringValue(text);
                    break;
                case (FieldKind.Switch, bool isOn):
                    writer.WriteBooleanValue(isOn);
                    break;
                case (FieldKind.Word, Enum word) when form.WordFor(word) is Word known:
                    writer.WriteStringValue(known.Text);
                    break;
                case (FieldKind.Point, IReadOnlyList<double> { Count: 2 } point) when double.IsFinite(point[0]) && double.IsFinite(point[1]):
                    // On one line, as columns: a section may have thousands of points. Raw values bring their own indent.
                    writer.WriteRawValue($"\n{new string(' ', writer.CurrentDepth * writer.Options.IndentSize)}[{Digits(point[0])}, {Digits(point[1])}]");
                    break;
                case (FieldKind.Record, object record):
                    Record(record, form.Record);
                    break;
                case (FieldKind.List, IEnumerable list):
                    writer.WriteStartArray();
                    foreach (object? item in list)
                        Value(item, form.Item!, field);
                    writer.WriteEndArray();
                    break;
                default:
                    throw new ArgumentException($"\"{field.Key}\" cannot be written: {value ?? "null"}.", nameof(value));
            }
        }

        private static string Digits(double number) => (number + 0.0).ToString("R", CultureInfo.InvariantCulture);

        private static bool IsDefault(object? value, Field field) => Equals(value, field.Default, field.Form);

        // Records compare their lists by reference, so values are compared through the format's own forms.
        private static bool Equals(object? a, object? b, ValueForm form)
        {
            if (a is null || b is null)
                return a is null && b is null;
            switch (form.Kind)
            {
                case FieldKind.Record:
                    return form.Record.Fields.All(field => Equals(field.Get(a), field.Get(b), field.Form));
                case FieldKind.Point:
                    return ((IReadOnlyList<double>)a).SequenceEqual((IReadOnlyList<double>)b);
                case FieldKind.List:
                    object?[] left = [.. ((IEnumerable)a).Cast<object?>()];
                    object?[] right = [.. ((IEnumerable)b).Cast<object?>()];
                    return left.Length == right.Length && left.Zip(right).All(pair => Equals(pair.First, pair.Second, form.Item!));
                default:
                    return a.Equals(b);
            }
        }
    }
}
