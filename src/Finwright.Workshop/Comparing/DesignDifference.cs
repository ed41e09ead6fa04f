using System.Collections;
using System.Globalization;
using Finwright.Design;
using Finwright.Design.Fields;

namespace Finwright.Workshop.Comparing;

/// <summary>What became of a place in a design file.</summary>
public enum DesignChangeKind
{
    /// <summary>Another value.</summary>
    Changed,

    /// <summary>Only the second design has it.</summary>
    Added,

    /// <summary>Only the first design has it.</summary>
    Removed,
}

/// <summary>One place in which two designs differ.</summary>
/// <param name="Path">Its JSON path, for example <c>$.shape.outline.span_mm</c>.</param>
/// <param name="Kind">What became of it.</param>
/// <param name="Meaning">What the field means.</param>
/// <param name="Unit">Unit as a person reads it; empty for none.</param>
/// <param name="Old">Value in the first design, in words; empty when it was added.</param>
/// <param name="New">Value in the second; empty when it was removed.</param>
/// <param name="OldValue">The first as a number; null when it is none.</param>
/// <param name="NewValue">The second.</param>
public sealed record DesignChange(string Path, DesignChangeKind Kind, string Meaning, string Unit, string Old, string New, double? OldValue, double? NewValue)
{
    /// <summary>Change in per cent of the first; null where that says nothing.</summary>
    public double? Percent => OldValue is double old && NewValue is double now && old is not 0 && Unit is not ("%" or "°C") ? 100 * (now - old) / Math.Abs(old) : null;
}

/// <summary>In what two designs differ, field by field.</summary>
public static class DesignDifference
{
    private const int LongestText = 60;

    /// <summary>Every field whose values differ, in the order of the design file; items of lists are matched by their place. A default counts as the value that it is.</summary>
    /// <param name="first">The first design; files that it names taken in.</param>
    /// <param name="second">The second.</param>
    public static IReadOnlyList<DesignChange> Of(FinDesign first, FinDesign second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        List<DesignChange> changes = [];
        Records(RecordForm.Of(typeof(FinDesign)), "$", first, second, changes);
        return changes;
    }

    private static void Records(RecordForm form, string path, object first, object second, List<DesignChange> changes)
    {
        foreach (Field field in form.Fields)
            Values(field, field.Form, $"{path}.{field.Key}", field.Get(first), field.Get(second), changes);
    }

    private static void Values(Field field, ValueForm form, string path, object? first, object? second, List<DesignChange> changes)
    {
        if (first is null && second is null)
            return;
        // A number that is left out is a value of its own: "by itself".
        if (first is null || second is null)
            changes.Add(new(path, first is null ? DesignChangeKind.Added : DesignChangeKind.Removed, field.Meaning, field.Unit, first is null ? "" : Words(form, first), second is null ? "" : Words(form, second), Number(first), Number(second)));
        else if (form.Kind is FieldKind.Record)
            Records(form.Record, path, first, second, changes);
        else if (form.Kind is FieldKind.List)
            Lists(field, form.Item!, path, [.. ((IEnumerable)first).Cast<object>()], [.. ((IEnumerable)second).Cast<object>()], changes);
        else if (!Same(form, first, second))
            changes.Add(new(path, DesignChangeKind.Changed, field.Meaning, field.Unit, Words(form, first), Words(form, second), Number(first), Number(second)));
    }

    private static void Lists(Field field, ValueForm item, string path, object[] first, object[] second, List<DesignChange> changes)
    {
        for (int i = 0; i < Math.Max(first.Length, second.Length); i++)
            Values(field, item, $"{path}[{i}]", i < first.Length ? first[i] : null, i < second.Length ? second[i] : null, changes);
    }

    private static bool Same(ValueForm form, object first, object second) =>
        form.Kind is FieldKind.Point ? ((IReadOnlyList<double>)first).SequenceEqual((IReadOnlyList<double>)second) : first.Equals(second);

    private static double? Number(object? value) => value switch
    {
        double number => number,
        int number => number,
        _ => null,
    };

    private static string Words(ValueForm form, object value) => form.Kind switch
    {
        FieldKind.Number => ((double)value).ToString("0.######", CultureInfo.InvariantCulture),
        FieldKind.WholeNumber => ((int)value).ToString(CultureInfo.InvariantCulture),
        FieldKind.Switch => (bool)value ? "yes" : "no",
        FieldKind.Word => form.WordFor(value)?.Text ?? value.ToString() ?? "",
        FieldKind.Point => $"[{string.Join(", ", ((IReadOnlyList<double>)value).Select(each => each.ToString("0.######", CultureInfo.InvariantCulture)))}]",
        FieldKind.Text => Text((string)value),
        FieldKind.List => $"{((IEnumerable)value).Cast<object>().Count()} in the list",
        _ => string.Join(", ", form.Record.Fields.Select(field => (Field: field, Value: field.Get(value))).Where(own => own.Value is not null && !(own.Field.Form.Kind is FieldKind.List && !((IEnumerable)own.Value).Cast<object>().Any()))
            .Select(own => $"{own.Field.Key} {Words(own.Field.Form, own.Value!)}")),
    };

    private static string Text(string text)
    {
        string line = text.ReplaceLineEndings(" ");
        return line.Length == 0 ? "nothing" : line.Length <= LongestText ? $"\"{line}\"" : $"\"{line[..LongestText]}...\" ({text.Length} characters)";
    }
}
