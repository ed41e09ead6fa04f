using System.Globalization;
using System.Text;
using Finwright.Design.Checks;
using Finwright.Design.Fields;
using Finwright.Design.Reading;

namespace Finwright.Design;

/// <summary>The reference part of <c>docs/design-file.md</c>: every field with unit, range, default, meaning and reason, written from the types.</summary>
public static class DesignDocument
{
    /// <summary>Line of the document below which everything is written by <see cref="Generate"/>; what stands above is written by hand.</summary>
    public const string Marker = "<!-- Below: written from the types. -->";

    /// <summary>Writes the reference in Markdown.</summary>
    /// <returns>Text that begins with <see cref="Marker"/> and ends with a line break.</returns>
    public static string Generate()
    {
        var text = new StringBuilder();
        text.Append(Marker).Append("\n\n## Every field\n");
        WriteGroup(text, RecordForm.Of(typeof(FinDesign)), JsonPath.Root, "The whole file.");
        return text.ToString();
    }

    private static void WriteGroup(StringBuilder text, RecordForm form, string path, string meaning)
    {
        string title = path == JsonPath.Root ? "The file" : $"`{path[2..]}`";
        text.Append(CultureInfo.InvariantCulture, $"\n### {title}\n{meaning}\n\n| Field | Unit | Range | Default | Meaning | Why the default |\n| --- | --- | --- | --- | --- | --- |\n");
        foreach (Field field in form.Fields)
            text.Append(CultureInfo.InvariantCulture, $"| `{field.Key}` | {field.Unit} | {Range(field)} | {Default(field)} | {field.Meaning} | {field.Reason} |\n");

        foreach (Field field in form.Fields.Where(field => field.Form.Kind == FieldKind.Word))
        {
            text.Append(CultureInfo.InvariantCulture, $"\nWords of `{field.Key}`:\n");
            foreach (Word word in field.Form.Words)
                text.Append(CultureInfo.InvariantCulture, $"- `{word.Text}`{(word.Meaning.Length > 0 ? $": {word.Meaning}" : "")}\n");
        }

        foreach (Field field in form.Fields)
        {
            string fieldPath = JsonPath.Field(path, field.Key);
            if (field.Form.Kind == FieldKind.Record)
                WriteGroup(text, field.Form.Record, fieldPath, field.Meaning);
            else if (field.Form.Item is { Kind: FieldKind.Record } item)
                WriteGroup(text, item.Record, fieldPath + "[]", $"Each item: {field.Meaning}");
        }
    }

    private static string Range(Field field) => field.Form.Kind switch
    {
        FieldKind.Number or FieldKind.WholeNumber when field.Minimum is double only && field.Maximum is double same && only.Equals(same) => Quantity.Text(only),
        FieldKind.Number or FieldKind.WholeNumber => Numbers(field),
        FieldKind.Text => $"to {field.MaximumLength} characters",
        FieldKind.Switch => "true, false",
        FieldKind.Word => "a word",
        FieldKind.Record => "a group",
        _ when field.Form.Item!.Kind == FieldKind.Point => $"to {field.MaximumLength} pairs, {Numbers(field)}",
        _ => $"to {field.MaximumLength} items",
    };

    private static string Numbers(Field field) =>
        $"{Quantity.Text(field.Minimum ?? double.NegativeInfinity)} to {Quantity.Text(field.Maximum ?? double.PositiveInfinity)}";

    private static string Default(Field field) => (field.Form.Kind, field.Default) switch
    {
        _ when field.IsRequired => "must be given",
        (_, null) => "left out",
        (FieldKind.Number, double number) => Quantity.Text(number),
        (FieldKind.WholeNumber, int number) => number.ToString(CultureInfo.InvariantCulture),
        (FieldKind.Text, "") => "empty",
        (FieldKind.Text, string text) => $"\"{text}\"",
        (FieldKind.Switch, true) => "true",
        (FieldKind.Switch, _) => "false",
        (FieldKind.Word, Enum word) => $"`{field.Form.WordFor(word)!.Text}`",
        (FieldKind.Record, _) => "as below",
        (_, System.Collections.ICollection { Count: > 0 } list) => $"{list.Count} items",
        _ => "none",
    };
}
