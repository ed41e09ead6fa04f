using Finwright.Making.Cure;
using Finwright.Making.Resins;

namespace Finwright.Making.Tests.Cure;

/// <summary>Resins and slabs that several tests ask about.</summary>
internal static class CureCases
{
    public const double IcePoint = 273.15;

    /// <summary>
    /// An infusion resin (DGEBA with amine). Constants as given in a public model file that cites Thermochimica Acta, doi 10.1016/j.tca.2015.11.014, table 5; the paper itself was not seen.
    /// Density, heat capacity, conductivity: as in the numerical reference.
    /// </summary>
    public static ResinSystem Infusion { get; } = new()
    {
        Name = "infusion",
        Title = "Infusion resin",
        Remark = "For tests.",
        Kinetics = new(35982, 54960, 3574.1, 44289, 0.39845, 1.5361, 460e3, 0.001, 0.6),
        Density = 1150,
        HeatCapacity = 1700,
        Conductivity = 0.20,
    };

    /// <summary>The same with both rates times a factor.</summary>
    public static ResinSystem Scaled(double factor) =>
        Infusion with { Kinetics = Infusion.Kinetics with { Rate1 = factor * Infusion.Kinetics.Rate1, Rate2 = factor * Infusion.Kinetics.Rate2 } };

    /// <summary>Glass curve of the same model file.</summary>
    public static GlassTransitionCurve Glass { get; } = new(IcePoint - 57, IcePoint + 91, 0.36903);

    /// <summary>A slab of the numerical reference: no infill, walls of 1.2 mm, 22 °C.</summary>
    public static SlabCase Slab(ResinSystem resin, double thickness, double coefficient) => new()
    {
        Resin = resin,
        Thickness = thickness,
        StartTemperature = IcePoint + 22,
        Surroundings = IcePoint + 22,
        Cooling = SurfaceCooling.Fixed(coefficient),
        Duration = 24 * 3600,
    };
}
