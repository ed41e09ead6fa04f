using System.Text.Json.Nodes;
using Finwright.Design;
using Finwright.Design.Fields;

namespace Finwright.Page.Fields;

/// <summary>What a group or an item begins with when it is put into a design: what must be given is given a start, the rest has its defaults.</summary>
public static class NewItem
{
    // Starting values from the middle of what is usual: they are there to be changed.
    private static readonly Dictionary<string, double> Starts = new(StringComparer.Ordinal)
    {
        ["from_front_mm"] = 60,
        ["root_chord_percent"] = 40,
        ["at_depth_mm"] = 80,
        ["at_chord_percent"] = 40,
        ["length_mm"] = 20,
        ["room_mm"] = 8,
        ["hull_length_mm"] = 140,
        ["hull_width_mm"] = 17,
        ["front_depth_mm"] = 38,
        ["at_percent"] = 50,
        ["to_percent"] = 50,
        ["after_hours"] = 6,
        ["modulus_gpa"] = 2,
        ["depth_mm"] = 100,
        ["aft_mm"] = 50,
    };

    /// <summary>Makes one.</summary>
    /// <param name="path">Place of the group, or of the list with [] behind it.</param>
    public static JsonNode Of(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        RecordForm form = RecordForm.Of(typeof(FinDesign));
        foreach (string word in path.Split('.').Skip(1))
        {
            int bracket = word.IndexOf('[', StringComparison.Ordinal);
            Field field = form.Find(bracket < 0 ? word : word[..bracket]) ?? throw new ArgumentException($"The design file has no group {path}.", nameof(path));
            form = (field.Form.Item ?? field.Form).Record;
        }

        JsonObject item = [];
        foreach (Field field in form.Fields.Where(field => field.IsRequired))
            item[field.Key] = Start(field);
        return item;
    }

    private static JsonNode? Start(Field field) => field.Form.Kind switch
    {
        FieldKind.Number => Starts.TryGetValue(field.Key, out double start) ? start : Middle(field),
        FieldKind.WholeNumber => (int)Middle(field),
        FieldKind.Text => "new",
        FieldKind.Switch => false,
        FieldKind.Word => field.Form.Words[0].Text,
        FieldKind.List => new JsonArray(),
        _ => new JsonObject(),
    };

    private static double Middle(Field field) => 0.5 * ((field.Minimum ?? 0) + (field.Maximum ?? 0));
}
