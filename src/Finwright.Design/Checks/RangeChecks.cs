using System.Collections;
using Finwright.Design.Fields;
using Finwright.Design.Reading;

namespace Finwright.Design.Checks;

/// <summary>Holds each value of a design against what its own field allows: range, length, words, presence.</summary>
internal static class RangeChecks
{
    /// <summary>Every finding in a design or in settings, in the order of the format.</summary>
    public static IEnumerable<Finding> Of(object whole) => OfRecord(whole, RecordForm.Of(whole.GetType()), JsonPath.Root);

    private static IEnumerable<Finding> OfRecord(object record, RecordForm form, string path)
    {
        foreach (Field field in form.Fields)
        {
            string fieldPath = JsonPath.Field(path, field.Key);
            object? value = field.Get(record);
            if (value is null)
            {
                if (!field.MayBeNull)
                    yield return new Finding("null-not-allowed", Severity.Error, fieldPath, $"\"{field.Key}\" is empty; it needs a value.", "Give a value.");
                continue;
            }

            foreach (Finding finding in OfValue(value, field.Form, field, fieldPath))
                yield return finding;
        }
    }

    private static IEnumerable<Finding> OfValue(object value, ValueForm form, Field field, string path) => form.Kind switch
    {
        FieldKind.Number => OfNumber((double)value, field, path),
        FieldKind.WholeNumber => OfNumber((int)value, field, path),
        FieldKind.Text => OfText((string)value, field, path),
        FieldKind.Word => form.WordFor(value) is null
            ? [new Finding("unknown-word", Severity.Error, path, $"{value} is not one of the words known here.", $"Choose one of: {string.Join(", ", form.Words.Select(word => word.Text))}.")]
            : [],
        FieldKind.Point => OfPoint((IReadOnlyList<double>)value, field, path),
        FieldKind.Record => OfRecord(value, form.Record, path),
        FieldKind.List => OfList((IEnumerable)value, form, field, path),
        _ => [],
    };

    private static IEnumerable<Finding> OfNumber(double value, Field field, string path)
    {
        if (!double.IsFinite(value))
        {
            yield return new Finding("not-finite", Severity.Error, path, $"\"{field.Key}\" is not a finite number.", $"Give a number{In(field.Unit)}.");
        }
        else if (value < field.Minimum || value > field.Maximum)
        {
            bool isLow = value < field.Minimum;
            double limit = (isLow ? field.Minimum : field.Maximum)!.Value;
            yield return new Finding(
                "out-of-range",
                Severity.Error,
                path,
                $"\"{field.Key}\" is {Quantity.Text(value, field.Unit)}; {(isLow ? "the least" : "the most")} accepted is {Quantity.Text(limit, field.Unit)}. {field.Meaning}",
                $"Choose a number from {Quantity.Text(field.Minimum ?? double.NegativeInfinity)} to {Quantity.Text(field.Maximum ?? double.PositiveInfinity, field.Unit)}.")
            {
                Value = Quantity.Text(value, field.Unit),
                Limit = Quantity.Text(limit, field.Unit),
            };
        }
    }

    private static IEnumerable<Finding> OfText(string value, Field field, string path)
    {
        int length = PrintableText.Length(value);
        if (length > field.MaximumLength)
        {
            yield return new Finding("text-too-long", Severity.Error, path, $"\"{field.Key}\" has {length} characters; at most {field.MaximumLength} are accepted.", "Shorten the text.")
            {
                Value = $"{length} characters",
                Limit = $"{field.MaximumLength} characters",
            };
        }

        if (PrintableText.IsUnprintable(value, field.MayHaveLines))
            yield return new Finding("unprintable-text", Severity.Error, path, $"\"{field.Key}\" holds characters that cannot be printed{(field.MayHaveLines ? "" : ", or a line break")}.", "Take them out.");
    }

    private static IEnumerable<Finding> OfPoint(IReadOnlyList<double> value, Field field, string path)
    {
        if (value.Count != 2)
            return [new Finding("wrong-type", Severity.Error, path, $"A point has two numbers, x and y; this one has {value.Count}.", "Give [x, y].")];
        return OfNumber(value[0], field, JsonPath.Item(path, 0)).Concat(OfNumber(value[1], field, JsonPath.Item(path, 1)));
    }

    private static IEnumerable<Finding> OfList(IEnumerable value, ValueForm form, Field field, string path)
    {
        int count = 0;
        foreach (object? item in value)
        {
            string itemPath = JsonPath.Item(path, count++);
            if (item is null)
            {
                yield return new Finding("null-not-allowed", Severity.Error, itemPath, $"An item of \"{field.Key}\" is empty.", "Give the item, or take it out.");
                continue;
            }

            foreach (Finding finding in OfValue(item, form.Item!, field, itemPath))
                yield return finding;
        }

        if (count > field.MaximumLength)
        {
            yield return new Finding("too-many-items", Severity.Error, path, $"The list has {count} items; at most {field.MaximumLength} are accepted.", "Shorten the list.")
            {
                Value = $"{count} items",
                Limit = $"{field.MaximumLength} items",
            };
        }
    }

    private static string In(string unit) => unit.Length > 0 ? $" in {unit}" : "";
}
