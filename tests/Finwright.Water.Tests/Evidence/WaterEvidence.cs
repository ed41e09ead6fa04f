using Finwright.Water.Finishes;
using Finwright.Water.Ventilation;

namespace Finwright.Water.Tests.Evidence;

/// <summary>Water itself, cavitation, the washing out of a cavity, and heights that trip.</summary>
internal static class WaterEvidence
{
    private static readonly WaterProperties Sea = WaterProperties.Sea(15);

    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Properties(), .. Inception(), .. Washout(), .. Heights()];

    private static IEnumerable<EvidenceRow> Properties()
    {
        const string Topic = "Water at 15 °C";
        const string Source = "ITTC, 2011, Recommended Procedure 7.5-02-01-03, tables";
        foreach ((string name, WaterProperties water, double density, double kinematic, double vapour, double tolerance, string reason) in new[]
        {
            ("Fresh", WaterProperties.Fresh(15), 999.1026, 1.1386, 1705.8, 5e-6, "two equations of state for the same water"),
            ("Sea", Sea, 1026.0210, 1.1892, 1670.9, 6e-5, "the table stands on a newer equation"),
        })
        {
            yield return new(Topic, name + ", density, kg/m³", Source, density, water.Density, tolerance * density, reason);
            yield return new(Topic, name + ", kinematic viscosity, 10⁻⁶ m²/s", Source, kinematic, water.KinematicViscosity * 1e6, 3e-4 * kinematic, "the correlation is good to 0.02 %");
            yield return new(Topic, name + ", vapour pressure, Pa", Source, vapour, water.VapourPressure, 4e-4 * vapour, "0.04 %");
        }
    }

    private static IEnumerable<EvidenceRow> Inception()
    {
        foreach ((double cp, double speed, double tolerance) in new[] { (-0.414, 21.99, 0.006), (-0.5, 20.0, 0.01), (-1, 14.15, 0.006), (-2, 10.0, 0.01), (-3, 8.17, 0.006) })
            yield return new("Cavitation, sea at 15 °C, 0.3 m deep", $"Least pressure coefficient {cp}, speed of inception, m/s", "Numerical reference: definition of the cavitation number, worked out apart",
                speed, Cavitation.InceptionSpeed(Sea, 0.3, cp)!.Value, tolerance, "last digit");
    }

    private static IEnumerable<EvidenceRow> Washout()
    {
        foreach ((double aspect, double lift, double froude) in new[] { (1, 0.2, 1.75), (1, 0.5, 1.11), (2, 0.2, 2.18), (2, 0.5, 1.38) })
            yield return new("Ventilation: depth Froude number below which a cavity washes out", $"Span over chord {aspect}, lift coefficient {lift}",
                "Numerical reference: bound of Harwood, Young and Ceccio, 2016, J. Fluid Mech. 800, worked out apart", froude, DepthFroude.Washout(aspect, lift), 0.0051, "last digit");
    }

    private static IEnumerable<EvidenceRow> Heights()
    {
        foreach ((double critical, double micrometres) in new[] { (25, 15.0), (120, 33), (200, 43), (600, 80) })
            yield return new("Smallest height that trips: plate, sea at 15 °C, 10 m/s, 5 mm from the nose", $"Roughness Reynolds number {critical}, height, µm",
                "Numerical reference: laminar layer of a plate, integrated apart", micrometres, RoughnessHeights.Tripping(Sea, 10, 0.005, critical) * 1e6, 0.55, "last digit");
    }
}
