using System.Text.Json.Nodes;
using Finwright.Design;

namespace Finwright.Workshop.Library;

/// <summary>Which fields of the design file each kind of thing in the library holds.</summary>
public static class PartFields
{
    private static readonly Dictionary<LibraryKind, string[]> Fields = new()
    {
        [LibraryKind.Box] =
        [
            "base.box", "base.deep_front_mm", "base.nut_depth_mm", "base.slot", "base.measured",
            "base.length_allowance_mm", "base.thickness_allowance_mm", "base.depth_allowance_mm",
        ],
        [LibraryKind.Printer] =
        [
            "print.printer", "print.bed_x_mm", "print.bed_y_mm", "print.bed_z_mm", "print.edge_margin_mm", "print.part_gap_mm", "print.layer_mm", "print.line_width_mm",
            "print.bore_allowance_mm", "print.pocket_allowance_mm", "print.overhang_limit_degrees", "print.machine", "prices.printer_watts",
        ],
        [LibraryKind.Hardware] = ["hardware.box_bolts", "hardware.clamp_rods", "hardware.carbon_rods"],
        [LibraryKind.Board] = ["brief.board_width_mm", "brief.tail_width_mm", "brief.fin_to_tail_mm"],
        [LibraryKind.Sail] = ["brief.sail_area_m2", "brief.sail_effort_height_mm"],
        [LibraryKind.Rider] = ["brief.rider_mass_kg", "brief.hang_out_mm"],
        [LibraryKind.Spot] = ["brief.draught_limit_mm", "brief.weed", "brief.water", "brief.water_temperature_celsius", "brief.water_state"],
    };

    /// <summary>Places in a design, such as <c>$.base.box</c>; empty for kinds that have files of their own.</summary>
    /// <param name="kind">The kind.</param>
    public static IReadOnlyList<string> Of(LibraryKind kind) => Fields.TryGetValue(kind, out string[]? fields) ? [.. fields.Select(field => "$." + field)] : [];

    /// <summary>A design in which every field of every part has its default.</summary>
    public static FinDesign Blank() => new() { Name = "library", Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 300, RootChordMm = 120 } } };

    /// <summary>Puts the fields of a kind from one design into another.</summary>
    /// <param name="from">Where they are taken from.</param>
    /// <param name="into">Where they go; not changed.</param>
    /// <param name="kind">Which fields.</param>
    /// <returns>The design as it reads then.</returns>
    public static DesignReading Put(FinDesign from, FinDesign into, LibraryKind kind)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(into);
        JsonNode source = Tree(from), target = Tree(into);
        foreach (string field in Fields[kind])
        {
            (string group, string key) = Split(field);
            target[group]![key] = source[group]![key]?.DeepClone();
        }

        return DesignReader.Read(target.ToJsonString());
    }

    /// <summary>The fields of a kind as a design file that has nothing else.</summary>
    internal static JsonObject Picked(FinDesign design, LibraryKind kind)
    {
        JsonNode source = Tree(design);
        JsonObject picked = new() { ["format"] = FinDesign.CurrentFormat };
        foreach (string field in Fields[kind])
        {
            (string group, string key) = Split(field);
            if (picked[group] is null)
                picked[group] = new JsonObject();
            picked[group]![key] = source[group]![key]?.DeepClone();
        }

        return picked;
    }

    internal static JsonNode Tree(FinDesign design) => JsonNode.Parse(DesignWriter.Write(design))!;

    private static (string Group, string Key) Split(string field)
    {
        int dot = field.IndexOf('.', StringComparison.Ordinal);
        return (field[..dot], field[(dot + 1)..]);
    }
}
