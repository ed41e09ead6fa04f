using Finwright.Assessment.Verdicts;
using Finwright.Design;

namespace Finwright.Page.Parts;

/// <summary>Chapter of the sheet that a verdict belongs to.</summary>
public enum VerdictArea
{
    /// <summary>What the fin does when it sails.</summary>
    Water,

    /// <summary>Whether it bends, twists, opens or breaks.</summary>
    Strength,

    /// <summary>Whether it prints.</summary>
    Print,

    /// <summary>Whether it fills and cures.</summary>
    Pour,
}

/// <summary>Where in the design a verdict leads: the field that is changed first when it fails; and its chapter.</summary>
public static class VerdictPlace
{
    private const string Outline = "$.shape.outline", Span = Outline + ".span_mm", Rake = Outline + ".rake_degrees", Sections = "$.shape.sections";

    private static readonly Dictionary<string, VerdictArea> Areas = new(StringComparer.Ordinal)
    {
        ["stall-reserve"] = VerdictArea.Water,
        ["stall-overload"] = VerdictArea.Water,
        ["ventilation"] = VerdictArea.Water,
        ["cavitation"] = VerdictArea.Water,
        ["leeway"] = VerdictArea.Water,
        ["drag-share"] = VerdictArea.Water,
        ["centre-of-effort"] = VerdictArea.Water,
        ["lift-opinion"] = VerdictArea.Water,
        ["weed"] = VerdictArea.Water,
        ["draught"] = VerdictArea.Water,
        ["walls-across-layers"] = VerdictArea.Strength,
        ["walls-along-layers"] = VerdictArea.Strength,
        ["root-corner"] = VerdictArea.Strength,
        ["cut-bond"] = VerdictArea.Strength,
        ["core"] = VerdictArea.Strength,
        ["rods"] = VerdictArea.Strength,
        ["rod-bond"] = VerdictArea.Strength,
        ["breaking"] = VerdictArea.Strength,
        ["tiring"] = VerdictArea.Strength,
        ["joint-opening"] = VerdictArea.Strength,
        ["joint-hold"] = VerdictArea.Strength,
        ["base"] = VerdictArea.Strength,
        ["tightening"] = VerdictArea.Strength,
        ["deflection"] = VerdictArea.Strength,
        ["twist"] = VerdictArea.Strength,
        ["second-opinion"] = VerdictArea.Strength,
        ["divergence"] = VerdictArea.Strength,
        ["large-deflection"] = VerdictArea.Strength,
        ["grounding"] = VerdictArea.Strength,
        ["hum"] = VerdictArea.Strength,
        ["stops"] = VerdictArea.Print,
        ["overhang"] = VerdictArea.Print,
        ["layers-to-load"] = VerdictArea.Print,
        ["trapped-air"] = VerdictArea.Pour,
        ["ports-open-both"] = VerdictArea.Pour,
        ["fill-time"] = VerdictArea.Pour,
        ["thin-core"] = VerdictArea.Pour,
        ["pore-opinion"] = VerdictArea.Pour,
        ["softening"] = VerdictArea.Pour,
        ["near-critical"] = VerdictArea.Pour,
        ["water-time"] = VerdictArea.Pour,
        ["handling"] = VerdictArea.Pour,
        ["cup"] = VerdictArea.Pour,
        ["reservoir"] = VerdictArea.Pour,
    };

    /// <summary>Every code of a verdict that has a place.</summary>
    public static IEnumerable<string> Codes => Areas.Keys;

    /// <summary>The chapter of a verdict.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <exception cref="ArgumentException">Its code is not known.</exception>
    public static VerdictArea AreaOf(Verdict verdict)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        return Areas.TryGetValue(verdict.Code, out VerdictArea area) ? area : throw new ArgumentException($"The verdict \"{verdict.Code}\" has no chapter.", nameof(verdict));
    }

    /// <summary>The place, such as <c>$.shape.outline.span_mm</c>; a field or group that every design has.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <param name="design">The design, which decides whether area or chord is given, and whether there is a flange.</param>
    /// <exception cref="ArgumentException">Its code is not known.</exception>
    public static string Of(Verdict verdict, FinDesign design)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        ArgumentNullException.ThrowIfNull(design);
        return verdict.Code switch
        {
            "stall-reserve" or "stall-overload" or "leeway" => Size(design),
            "ventilation" => verdict.Ground switch { "seal" => "$.base.depth_allowance_mm", "hull-cover" => "$.brief.fin_to_tail_mm", _ => Size(design) },
            "cavitation" => Sections,
            "drag-share" => verdict.Ground == "friction" ? "$.shape.starboard_finish" : Named(design, Span),
            "centre-of-effort" or "weed" or "twist" or "divergence" => Named(design, Rake),
            "draught" or "grounding" => Named(design, Span),
            "walls-across-layers" => "$.parts.blade_attitude",
            "lift-opinion" or "walls-along-layers" or "breaking" or "tiring" or "deflection" or "large-deflection" => Sections,
            "root-corner" => Flange(design, "fillet_mm"),
            "cut-bond" => "$.parts.cuts",
            "core" => "$.print.walls",
            "rods" or "rod-bond" => "$.hardware.carbon_rods",
            "joint-opening" => "$.hardware.clamp_rods",
            "joint-hold" => verdict.Ground == "bond" ? Flange(design, "overhang_mm") : "$.hardware.box_bolts.thread",
            "base" => "$.parts.base_attitude",
            "tightening" => "$.base.nut_depth_mm",
            "second-opinion" => "$.prove.mass_kg",
            "hum" => "$.shape.trailing_edge_mm",
            "stops" => "$.print.pocket_allowance_mm",
            "overhang" or "layers-to-load" => verdict.Part == "base" ? "$.parts.base_attitude" : "$.parts.blade_attitude",
            "trapped-air" => "$.pour.attitude",
            "ports-open-both" => "$.pour.ports.depth_mm",
            "fill-time" => verdict.Ground switch { "cup" => "$.pour.cup_grams", "head" => "$.pour.head_mm", _ => "$.pour.system" },
            "thin-core" or "pore-opinion" => "$.print.infill_percent",
            "softening" => verdict.Ground == "bath" ? "$.pour.bath_celsius" : "$.pour.cooling",
            "near-critical" => design.Pour.Cooling is Cooling.WaterBath ? "$.pour.bath_celsius" : "$.pour.stages",
            "water-time" => "$.pour.bath_hours",
            "handling" => "$.pour.room_celsius",
            "cup" => "$.pour.cup_grams",
            "reservoir" => "$.pour.reservoir_ml",
            _ => throw new ArgumentException($"The verdict \"{verdict.Code}\" has no place.", nameof(verdict)),
        };
    }

    // Area, or the chord that stands for it; an outline by points has only those.
    private static string Size(FinDesign design) => Named(design, design.Shape.Outline.AreaCm2 is null ? Outline + ".root_chord_mm" : Outline + ".area_cm2");

    private static string Named(FinDesign design, string path) => design.Shape.Outline.Family is OutlineFamily.Free ? Outline + ".family" : path;

    private static string Flange(FinDesign design, string key) => design.Shape.Flange is null ? "$.shape.flange" : "$.shape.flange." + key;
}
