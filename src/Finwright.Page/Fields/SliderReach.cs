using Finwright.Design.Fields;

namespace Finwright.Page.Fields;

/// <summary>How far a slider goes: what fins usually have, and never past what the design file accepts.</summary>
/// <param name="Low">Left end, in the design file's unit.</param>
/// <param name="High">Right end.</param>
/// <param name="Step">One step.</param>
public readonly record struct SliderReach(double Low, double High, double Step)
{
    // Common practice, no source: what home-made fins lie between. Numbers beyond can be typed.
    private static readonly Dictionary<string, SliderReach> Usual = new(StringComparer.Ordinal)
    {
        ["span_mm"] = new(120, 480, 1),
        ["root_chord_mm"] = new(60, 260, 1),
        ["area_cm2"] = new(80, 600, 1),
        ["rake_degrees"] = new(-5, 60, 0.5),
        ["tip_chord_percent"] = new(10, 90, 1),
        ["thickness_percent"] = new(5, 16, 0.1),
        ["camber_percent"] = new(-4, 4, 0.1),
        ["twist_degrees"] = new(-6, 6, 0.1),
        ["at_percent"] = new(0, 100, 1),
        ["trailing_edge_mm"] = new(0.4, 3, 0.1),
        ["sheet_mm"] = new(0.2, 0.6, 0.05),
        ["slot_depth_mm"] = new(4, 15, 0.5),
        ["overhang_mm"] = new(1, 30, 0.5),
        ["fillet_mm"] = new(0, 20, 0.5),
        ["from_percent"] = new(0, 90, 1),
        ["to_percent"] = new(10, 100, 1),
        ["rider_mass_kg"] = new(45, 120, 1),
        ["board_width_mm"] = new(500, 1000, 5),
        ["tail_width_mm"] = new(300, 700, 5),
        ["sail_area_m2"] = new(3, 12, 0.1),
        ["top_speed_m_per_s"] = new(8, 22, 0.5),
        ["cruise_speed_m_per_s"] = new(5, 18, 0.5),
        ["getting_going_speed_m_per_s"] = new(3, 10, 0.5),
        ["draught_limit_mm"] = new(120, 600, 5),
        ["water_temperature_celsius"] = new(2, 32, 1),
        ["infill_percent"] = new(8, 40, 1),
        ["walls"] = new(1, 8, 1),
        ["blade_offset_mm"] = new(-40, 40, 1),
    };

    /// <summary>The reach for a field; null when typing serves better.</summary>
    public static SliderReach? Of(Field field)
    {
        ArgumentNullException.ThrowIfNull(field);
        if (field.Form.Kind is not (FieldKind.Number or FieldKind.WholeNumber) || !Usual.TryGetValue(field.Key, out SliderReach reach))
            return null;
        return reach with { Low = Math.Max(reach.Low, field.Minimum ?? reach.Low), High = Math.Min(reach.High, field.Maximum ?? reach.High) };
    }

    /// <summary>The reach widened so that a value lies on it.</summary>
    public SliderReach Holding(double? value) => value is double own ? this with { Low = Math.Min(Low, own), High = Math.Max(High, own) } : this;
}
