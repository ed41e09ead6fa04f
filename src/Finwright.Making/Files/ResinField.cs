using Finwright.Design.DataFiles;
using Finwright.Making.Resins;

namespace Finwright.Making.Files;

/// <summary>One number of a resin in its file, what it means, and where the resin has it.</summary>
/// <param name="Data">Name, unit, and what can be meant at all.</param>
/// <param name="Meaning">What it is, for the document.</param>
/// <param name="Get">The number in a resin, SI; null when the resin has none.</param>
internal sealed record ResinField(DataField Data, string Meaning, Func<ResinSystem, double?> Get)
{
    public const double UsualInitialConversion = 0.001, UsualGelConversion = 0.6;

    private const double Zero = 273.15;

    /// <summary>All fields in the order of the file.</summary>
    public static IReadOnlyList<ResinField> All { get; } =
    [
        Needed("rate_1_per_s", 1, 0, 0, 1e15, "Rate A₁ of the reaction that starts by itself.", r => r.Kinetics.Rate1),
        Needed("activation_1_j_per_mol", 1, 0, 0, 3e5, "Its activation energy E₁.", r => r.Kinetics.Activation1),
        Needed("rate_2_per_s", 1, 0, 0, 1e15, "Rate A₂ of the reaction that its own product speeds up.", r => r.Kinetics.Rate2),
        Needed("activation_2_j_per_mol", 1, 0, 0, 3e5, "Its activation energy E₂.", r => r.Kinetics.Activation2),
        Needed("order_m", 1, 0, 0, 3, "Exponent m of the conversion.", r => r.Kinetics.OrderM),
        Needed("order_n", 1, 0, 0, 5, "Exponent n of what is left.", r => r.Kinetics.OrderN),
        Needed("heat_of_reaction_j_per_g", 1e3, 0, 0, 1000, "Heat set free by a gram of mix from liquid to wholly cured.", r => r.Kinetics.HeatOfReaction),
        Free("initial_conversion", 1, 0, 0, 0.9, "Conversion when it is poured; 0.001 when left out.", r => r.Kinetics.InitialConversion),
        Free("gel_conversion", 1, 0, 0.3, 0.95, "Conversion at which it no longer flows; 0.6 when left out.", r => r.Kinetics.GelConversion),
        Needed("density_kg_per_m3", 1, 0, 500, 3000, "Density of the mix.", r => r.Density),
        Needed("heat_capacity_j_per_kg_k", 1, 0, 500, 5000, "Heat capacity of the mix.", r => r.HeatCapacity),
        Needed("conductivity_w_per_m_k", 1, 0, 0.02, 2, "Heat conductivity of the mix.", r => r.Conductivity),
        Free("glass_uncured_celsius", 1, Zero, -120, 40, "Glass transition of the liquid mix.", r => r.GlassTransition?.Uncured),
        Free("glass_cured_celsius", 1, Zero, 0, 250, "Glass transition when wholly cured.", r => r.GlassTransition?.Cured),
        Free("glass_shape", 1, 0, 0.01, 1, "λ of DiBenedetto's equation between both.", r => r.GlassTransition?.Shape),
        Free("viscosity_pa_s", 1, 0, 0.005, 200, "Viscosity of the fresh mix.", r => r.Viscosity?.Reference),
        Free("viscosity_at_celsius", 1, Zero, -10, 90, "Temperature at which it was measured.", r => r.Viscosity?.ReferenceTemperature),
        Free("viscosity_activation_j_per_mol", 1, 0, 0, 2e5, "How strongly warmth thins it.", r => r.Viscosity?.Activation),
        Free("viscosity_exponent_a", 1, 0, 0, 10, "A of its thickening with conversion.", r => r.Viscosity?.ExponentA),
        Free("viscosity_exponent_b", 1, 0, -5, 10, "B of its thickening with conversion.", r => r.Viscosity?.ExponentB),
        Free("hardener_parts_per_100", 0.01, 0, 1, 300, "Hardener for 100 parts of resin, by mass.", r => r.HardenerByMass),
        Free("resin_part_density_kg_per_m3", 1, 0, 700, 2500, "Density of the resin before mixing.", r => r.ResinPartDensity),
        Free("hardener_part_density_kg_per_m3", 1, 0, 700, 2500, "Density of the hardener before mixing.", r => r.HardenerPartDensity),
        Free("shrinkage_percent", 0.01, 0, 0, 15, "Share of its volume that it loses from liquid to solid; 0 when left out.", r => r.Shrinkage),
        Free("pot_life_minutes", 60, 0, 1, 3000, "Working time that the maker's data sheet states.", r => r.PotLife?.Seconds),
        Free("pot_life_mass_g", 1e-3, 0, 1, 20_000, "For a cup of this mass.", r => r.PotLife?.Mass),
        Free("pot_life_celsius", 1, Zero, -5, 60, "Started at this temperature.", r => r.PotLife?.Temperature),
    ];

    /// <summary>Where a number is as resins have it, in the unit of its field; outside it is read with a caution (judgement).</summary>
    public static IReadOnlyList<(string Key, double Least, double Greatest)> UsualRanges { get; } =
    [
        ("activation_1_j_per_mol", 2e4, 1.5e5),
        ("activation_2_j_per_mol", 2e4, 1.5e5),
        ("order_n", 0.5, 4),
        ("heat_of_reaction_j_per_g", 50, 700),
        ("initial_conversion", 0, 0.3),
        ("density_kg_per_m3", 800, 2500),
        ("heat_capacity_j_per_kg_k", 800, 3500),
        ("conductivity_w_per_m_k", 0.05, 1.5),
        ("glass_shape", 0.05, 1),
    ];

    /// <summary>Fields of which all are given or none.</summary>
    public static IReadOnlyList<(string What, IReadOnlyList<string> Keys)> Groups { get; } =
    [
        ("glass transition", ["glass_uncured_celsius", "glass_cured_celsius", "glass_shape"]),
        ("viscosity", ["viscosity_pa_s", "viscosity_at_celsius", "viscosity_activation_j_per_mol", "viscosity_exponent_a", "viscosity_exponent_b"]),
        ("pot life", ["pot_life_minutes", "pot_life_mass_g", "pot_life_celsius"]),
    ];

    public static DataForm Form { get; } = new(null, [.. All.Select(f => f.Data)]);

    public static DataSubject Subject { get; } = new("resin", [Form]);

    private static ResinField Needed(string key, double factor, double offset, double least, double greatest, string meaning, Func<ResinSystem, double?> get) =>
        new(new(key, factor, offset, least, greatest), meaning, get);

    private static ResinField Free(string key, double factor, double offset, double least, double greatest, string meaning, Func<ResinSystem, double?> get) =>
        new(new(key, factor, offset, least, greatest, Optional: true), meaning, get);
}
