using Finwright.Making.Layers;
using Finwright.Numerics;

namespace Finwright.Making.Printing;

/// <summary>What holds a part to the bed besides its own foot.</summary>
public enum BedGrip
{
    /// <summary>Nothing more is needed.</summary>
    None,

    /// <summary>A brim all round.</summary>
    Brim,

    /// <summary>Thin discs under the ends of a long foot.</summary>
    Discs,
}

/// <summary>Filament that a part takes.</summary>
/// <param name="Mass">Mass, kg.</param>
/// <param name="Length">Length of filament, metres.</param>
/// <param name="SpoolShare">Share of a full spool.</param>
/// <param name="Cost">Cost, in the currency of the price.</param>
public readonly record struct FilamentUse(double Mass, double Length, double SpoolShare, double Cost)
{
    /// <summary>Usual diameter of filament, metres.</summary>
    public const double UsualDiameter = 1.75e-3;

    /// <summary>What a print takes from a spool.</summary>
    /// <param name="plastic">Volume laid, m³.</param>
    /// <param name="density">Density of the plastic, kg/m³.</param>
    /// <param name="spool">Filament on a full spool, kg.</param>
    /// <param name="pricePerKilogram">Price per kg, any currency.</param>
    /// <param name="diameter">Diameter of the filament, metres.</param>
    public static FilamentUse Of(double plastic, double density, double spool, double pricePerKilogram, double diameter = UsualDiameter)
    {
        Require.NotNegative(plastic);
        Require.Positive(density);
        Require.Positive(spool);
        Require.NotNegative(pricePerKilogram);
        Require.Positive(diameter);
        double mass = plastic * density;
        return new(mass, plastic / (Math.PI * diameter * diameter / 4), mass / spool, mass * pricePerKilogram);
    }

    /// <summary>What is left on a spool afterwards, kg; negative when it runs out.</summary>
    /// <param name="onSpool">Filament on the spool before, kg.</param>
    public double Rest(double onSpool) => onSpool - Mass;
}

/// <summary>How to print a part, besides its settings: grip on the bed, cooling down, drying.</summary>
/// <param name="Slenderness">Height over the square root of the area on the bed.</param>
/// <param name="Contact">Area of the first layer, m².</param>
/// <param name="Grip">What holds it to the bed.</param>
/// <param name="GripWidth">Width of the brim or diameter of the discs, metres; 0 for none.</param>
/// <param name="Words">What to do and why, one sentence each.</param>
public sealed record PrintAdvice(double Slenderness, double Contact, BedGrip Grip, double GripWidth, IReadOnlyList<string> Words)
{
    // Judgement: a post six times as high as its foot is wide sways under the nozzle; a foot of 2 cm² is let go by a small knock.
    private const double SlenderFrom = 6, SmallFoot = 2e-4;

    // Judgement: feet longer than this lift at their ends as they shrink; PETG shrinks 0.2 to 0.4 % (from memory).
    private const double LongFrom = 0.15;

    // 5 to 10 mm for long thin parts (common practice, no source); discs as wide again.
    private const double BrimWidth = 8e-3, DiscDiameter = 15e-3;

    private const double SquareCentimetre = 1e-4;

    /// <summary>Looks at a part.</summary>
    /// <param name="part">The part in layers.</param>
    public static PrintAdvice Of(PartLayers part)
    {
        ArgumentNullException.ThrowIfNull(part);
        double contact = part.Layers[0].OutlineArea, height = part.Size.Z;
        double slenderness = contact > 0 ? height / Math.Sqrt(contact) : double.PositiveInfinity;
        bool isLong = part.Size.X >= LongFrom;
        List<string> words = [];
        BedGrip grip = BedGrip.None;
        if (slenderness >= SlenderFrom || contact < SmallFoot)
        {
            grip = BedGrip.Brim;
            words.Add($"A brim of {1000 * BrimWidth:0} mm all round: it is {slenderness:0.0} times as high as its foot of {contact / SquareCentimetre:0.0} cm² is wide, and a knock of the nozzle would loosen it.");
        }
        else if (isLong)
        {
            grip = BedGrip.Discs;
            words.Add($"Discs of {1000 * DiscDiameter:0} mm, one layer thick, under the ends: a foot of {1000 * part.Size.X:0} mm lifts there first as it shrinks.");
        }

        words.Add(isLong
            ? "Leave it on the bed until that is below 40 °C: a long part taken off warm bends (common practice, no source)."
            : "Let the bed cool below 40 °C before taking it off: PETG grips a warm bed hard (common practice, no source).");
        words.Add("Dry the filament 4 to 6 h at 65 °C first: damp PETG strings and its layers hold badly, and then resin leaks (from memory; the maker's sheet goes before it).");
        return new(slenderness, contact, grip, grip switch { BedGrip.Brim => BrimWidth, BedGrip.Discs => DiscDiameter, _ => 0 }, words);
    }
}
