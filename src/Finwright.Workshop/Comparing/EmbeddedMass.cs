using Finwright.Assessment;
using Finwright.Geometry.Features;
using Finwright.Numerics;

namespace Finwright.Workshop.Comparing;

/// <summary>About how much weighs what is embedded in a fin: rods, nuts, dowels, the strip. Bolts and screws stay with the board.</summary>
/// <remarks>Taken from the room that each thing has in the fin, glue included, since that is what is known of every one; hence the wide range.</remarks>
internal static class EmbeddedMass
{
    /// <summary>Range of the mass, relative (judgement).</summary>
    public const double Spread = 0.2;

    // kg/m³ of the room: a carbon rod of 1550 and glue round it; a threaded rod fills seven tenths of its bore with steel; a nut, which has a hole, two thirds of its pocket (densities from memory).
    private const double CarbonRod = 1500, ThreadedRod = 5600, Nut = 5100, CrossNut = 6500, Sheet = 1270;

    /// <summary>The mass, kg; null when the solids were not reached.</summary>
    public static Ranged? Of(AssessmentResult result)
    {
        if (result is not { Solids: { } solids, Design: { } design })
            return null;
        double mass = solids.Features.Sum(Mass);
        mass += (result.Parts?.Dowels ?? []).Count * CarbonRod * Circle(design.Parts.DowelMm * 1e-3) * design.Parts.DowelLengthMm * 1e-3;
        if (solids.Slot is { } slot && design.Shape.Strip is { } strip)
            mass += Sheet * 1e-6 * strip.SheetMm * (strip.SlotDepthMm + strip.OverhangMm) * slot.EdgeLength;
        return new(mass, (1 - Spread) * mass, (1 + Spread) * mass);
    }

    private static double Mass(PlacedFeature feature)
    {
        FeatureVolume room = feature.Volume;
        double length = (room.To - room.From).Length;
        return feature.Kind switch
        {
            FeatureKind.CarbonRodBore => CarbonRod * Circle(room.Diameter) * length,
            FeatureKind.ClampRodBore => ThreadedRod * Circle(room.Diameter) * length,
            FeatureKind.NutPocket when room.Diameter > 0 => CrossNut * Circle(room.Diameter) * length,
            // A hexagon by the circle round it; a square one is a fifth smaller, which the range covers.
            FeatureKind.NutPocket => Nut * 1.5 * Math.Sqrt(3) * room.ReachFromAxis * room.ReachFromAxis * length,
            _ => 0,
        };
    }

    private static double Circle(double diameter) => Math.PI / 4 * diameter * diameter;
}
