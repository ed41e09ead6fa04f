using Finwright.Numerics;

namespace Finwright.Making.Cure;

/// <summary>What lies on the part's surface.</summary>
public enum SurfaceMedium
{
    /// <summary>A coefficient that does not change.</summary>
    Fixed,

    /// <summary>Still air, and radiation to the walls of the room at the same temperature.</summary>
    Air,

    /// <summary>Still water.</summary>
    Water,
}

/// <summary>How heat leaves the part's surface.</summary>
/// <remarks>
/// Free convection on a vertical wall: S. W. Churchill and H. H. S. Chu, "Correlating equations for laminar and turbulent free convection from a vertical plate", International Journal of Heat and Mass
/// Transfer 18 (1975) 1323, the form for all Rayleigh numbers, with properties at the mean of wall and fluid. Limits: still fluid, one height for the whole part, walls that stand or lean a little
/// (lying ones differ by some tens of per cent); hence a range of ±30 %. Water above 100 °C counts as water at 100 °C: boiling is not modelled, and no fin should come near it.
/// </remarks>
/// <param name="Medium">What lies on it.</param>
/// <param name="Coefficient">Coefficient, W/(m² K), when it is fixed.</param>
/// <param name="Height">Height of the wall, metres, when it is air or water.</param>
/// <param name="Emissivity">Share of black radiation, 0 to 1, when it is air.</param>
public sealed record SurfaceCooling(SurfaceMedium Medium, double Coefficient, double Height, double Emissivity)
{
    /// <summary>Relative range of coefficients to each side. Judgement: attitude, draughts, what stands near.</summary>
    public const double RelativeRange = 0.3;

    // CODATA 2018.
    private const double StefanBoltzmann = 5.670374419e-8;
    private const double Gravity = 9.80665;

    /// <summary>A fixed coefficient, W/(m² K).</summary>
    public static SurfaceCooling Fixed(double coefficient) => new(SurfaceMedium.Fixed, Require.NotNegative(coefficient), 1, 0);

    /// <summary>Still air and radiation.</summary>
    /// <param name="height">Height of the wall, metres.</param>
    /// <param name="emissivity">Of the surface; plastics and paints about 0.9 (common practice, no source).</param>
    public static SurfaceCooling StillAir(double height, double emissivity = 0.9) => new(SurfaceMedium.Air, 0, Require.Positive(height), Require.Between(emissivity, 0, 1));

    /// <summary>Still water.</summary>
    /// <param name="height">Height of the wall, metres.</param>
    public static SurfaceCooling StillWater(double height) => new(SurfaceMedium.Water, 0, Require.Positive(height), 0);

    /// <summary>Coefficient, W/(m² K).</summary>
    /// <param name="surface">Temperature of the surface, K.</param>
    /// <param name="surroundings">Temperature of the fluid, K.</param>
    public double At(double surface, double surroundings)
    {
        Require.Positive(surface);
        Require.Positive(surroundings);
        if (Medium == SurfaceMedium.Fixed)
            return Coefficient;
        bool isAir = Medium == SurfaceMedium.Air;
        FluidHeat fluid = isAir ? FluidHeat.Air((surface + surroundings) / 2) : FluidHeat.Water((surface + surroundings) / 2);
        // Difference of density over density. Air expands as an ideal gas.
        double lift = isAir
            ? Math.Abs(surface - surroundings) / ((surface + surroundings) / 2)
            : Math.Abs(FluidHeat.WaterDensity(surface) - FluidHeat.WaterDensity(surroundings)) / fluid.Density;
        double rayleigh = Gravity * lift * Height * Height * Height / (fluid.KinematicViscosity * fluid.Diffusivity);
        double convection = fluid.Conductivity / Height * Nusselt(rayleigh, fluid.Prandtl);
        return isAir ? convection + Radiation(surface, surroundings, Emissivity) : convection;
    }

    /// <summary>Nusselt number of a vertical wall at any Rayleigh number (Churchill and Chu 1975, equation 9, from memory).</summary>
    /// <param name="rayleigh">Rayleigh number over the wall's height, 0 to 10¹².</param>
    /// <param name="prandtl">Prandtl number.</param>
    public static double Nusselt(double rayleigh, double prandtl)
    {
        double root = 0.825 + 0.387 * Math.Pow(rayleigh, 1.0 / 6) / Math.Pow(1 + Math.Pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
        return root * root;
    }

    /// <summary>Coefficient of radiation between a surface and a room at one temperature, W/(m² K).</summary>
    /// <param name="surface">K.</param>
    /// <param name="surroundings">K.</param>
    /// <param name="emissivity">0 to 1.</param>
    public static double Radiation(double surface, double surroundings, double emissivity) =>
        emissivity * StefanBoltzmann * (surface * surface + surroundings * surroundings) * (surface + surroundings);
}
