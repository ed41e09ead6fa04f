namespace Finwright.Making.Quantities;

/// <summary>What to take care of, in the words that stand at each step.</summary>
/// <remarks>General cautions; the safety data sheets of the products and the law of the place go before them.</remarks>
public static class Cautions
{
    /// <summary>Resin on skin.</summary>
    // HSE Research Report 079 (summary) and OSHwiki, "Occupational exposure to epoxy resins": resins, hardeners and thinners sensitise;
    // thin latex protects poorly. That an allergy stays for life: from memory.
    public static string Skin { get; } =
        "Uncured resin and hardener can make you allergic, and an allergy stays: nitrile gloves (change them when wetted; thin latex does not hold), eye cover, long sleeves, moving air. Wash with soap and water, never with solvent.";

    /// <summary>A cup that heats itself.</summary>
    // R. Barnard, "Controlling Exotherm": a large mixed mass runs away, smokes, cracks and can burn. Tray and lid: from memory.
    public static string Runaway { get; } =
        "Mixed resin heats itself: mix no more than a cup at a time and pour it at once. A cup that gets hot or smokes goes outdoors on a metal tray, spread thin, away from people; do not breathe the fumes.";

    /// <summary>Closed vessels.</summary>
    public static string SealedCup { get; } =
        "Never close a cup, a syringe or a part that still cures: it heats, and pressure can burst it. Keep the vents open and above the water.";

    /// <summary>Leftovers.</summary>
    public static string Waste { get; } =
        "Leftovers: spread thin outdoors until hard, then household waste; nothing liquid goes down a drain or into a bin.";

    /// <summary>Dust.</summary>
    // HSE general dust limits, 10 mg/m³ inhalable and 4 mg/m³ respirable; half-cured resin must not be sanded (common practice).
    public static string Dust { get; } =
        "Dust of resin and carbon: P2 or P3 mask, wet sanding, extraction; only after the full cure. Carbon dust conducts: keep it off electric things.";

    /// <summary>Edges and blades.</summary>
    public static string Edges { get; } =
        "Cut away from the hand. Leave trailing and strip edges about a millimetre square, or blunt: a sharp fin cuts swimmers.";

    /// <summary>Hot nozzle.</summary>
    public static string Nozzle { get; } =
        "At a pause the nozzle is hot and the machine may move: use tweezers, keep fingers out of its way.";

    /// <summary>Bonding the strip.</summary>
    // Dichloromethane: OSHA/NIOSH hazard alert 2013 (deaths in unventilated rooms); Reg. (EU) 276/2010; US 89 FR 39254, 8 May 2024.
    public static string Solvents { get; } =
        "Bond the strip with adhesive (toughened epoxy on roughened, wiped faces). Joining it with a strong solvent is not advised: those that dissolve PETG are poisonous, and some are banned for the public; the law of your place and the data sheet decide.";

    /// <summary>Water and electricity.</summary>
    public static string Bath { get; } =
        "Water and mains do not mix: nothing electric at the bath. Keep water out of the ports; wet resin does not cure well.";

    /// <summary>A fin that fails at sea.</summary>
    public static string Proof { get; } =
        "Prove it ashore first, then close to the beach; do not sail farther on an unproven fin than you can swim back.";

    /// <summary>What to take care of at a pour.</summary>
    public static IReadOnlyList<string> Pour => [Skin, Runaway, SealedCup, Waste];

    /// <summary>What to take care of while it cures.</summary>
    public static IReadOnlyList<string> Cure => [Runaway, SealedCup, Bath];
}
