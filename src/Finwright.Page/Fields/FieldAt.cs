using System.Collections;
using System.Globalization;
using Finwright.Design;
using Finwright.Design.Fields;

namespace Finwright.Page.Fields;

/// <summary>A field of the design file at its place in a design.</summary>
/// <param name="Path">The place, such as <c>$.shape.sections[1].at_percent</c>.</param>
/// <param name="Field">What the format says of it.</param>
/// <param name="Value">Its value; null when it is left out, or the group around it is.</param>
public sealed record FieldAt(string Path, Field Field, object? Value)
{
    // What the unit says need not be said again.
    private static readonly string[] Units = ["g_per_cm3", "kg_per_m3", "j_per_kg_k", "w_per_mk", "w_per_m_k", "mm_per_s2", "mm3_per_s", "mm_per_s", "per_kwh", "per_kg", "per_m", "each", "mm", "degrees", "percent", "celsius", "kg", "m_per_s", "cm2", "m2", "ml", "grams", "hours", "minutes", "seconds", "gpa", "mpa", "n", "watts"];

    /// <summary>Finds a field.</summary>
    /// <param name="design">The design.</param>
    /// <param name="path">The place.</param>
    /// <exception cref="ArgumentException">The format has no such field.</exception>
    public static FieldAt Of(FinDesign design, string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        RecordForm form = RecordForm.Of(typeof(FinDesign));
        object? group = design;
        string[] words = path.Split('.');
        for (int i = 1; i < words.Length; i++)
        {
            int bracket = words[i].IndexOf('[', StringComparison.Ordinal);
            string key = bracket < 0 ? words[i] : words[i][..bracket];
            Field field = form.Find(key) ?? throw new ArgumentException($"The design file has no field {path}.", nameof(path));
            object? value = group is null ? null : field.Get(group);
            if (bracket >= 0)
            {
                int index = int.Parse(words[i].AsSpan(bracket + 1, words[i].Length - bracket - 2), NumberStyles.None, CultureInfo.InvariantCulture);
                value = (value as IEnumerable)?.Cast<object?>().ElementAtOrDefault(index);
                if (i == words.Length - 1)
                    return new(path, field, value);
                (group, form) = (value, field.Form.Item!.Record);
                continue;
            }

            if (i == words.Length - 1)
                return new(path, field, value);
            (group, form) = (value, field.Form.Record);
        }

        throw new ArgumentException($"{path} names no field.", nameof(path));
    }

    /// <summary>Name of a key for the reader, in English: "Rider mass" for <c>rider_mass_kg</c>.</summary>
    public static string LabelOf(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        string bare = key;
        foreach (string unit in Units)
        {
            if (bare.EndsWith("_" + unit, StringComparison.Ordinal))
            {
                bare = bare[..^(unit.Length + 1)];
                break;
            }
        }

        bare = bare.Replace('_', ' ');
        return string.Concat(char.ToUpperInvariant(bare[0]).ToString(), bare.AsSpan(1));
    }

    /// <summary>Name of the field for the reader, in English.</summary>
    public string Label => LabelOf(Field.Key);

    /// <summary>The element on the page that holds the field's input: a place of a verdict or finding leads there.</summary>
    public string ElementId => IdOf(Path);

    /// <summary>The element on the page for a place.</summary>
    public static string IdOf(string path) => "at-" + string.Concat((path ?? "").Select(letter => char.IsAsciiLetterOrDigit(letter) || letter == '_' ? letter : '-'));
}
