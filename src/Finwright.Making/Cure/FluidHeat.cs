namespace Finwright.Making.Cure;

/// <summary>Properties of air or water at one atmosphere that free convection depends on.</summary>
/// <param name="Density">kg/m³.</param>
/// <param name="KinematicViscosity">m²/s.</param>
/// <param name="Diffusivity">Of heat, m²/s.</param>
/// <param name="Conductivity">W/(m K).</param>
internal readonly record struct FluidHeat(double Density, double KinematicViscosity, double Diffusivity, double Conductivity)
{
    private const double IcePoint = 273.15, BoilingPoint = 373.15;

    /// <summary>Prandtl number.</summary>
    public double Prandtl => KinematicViscosity / Diffusivity;

    /// <summary>Dry air: ideal gas; viscosity and conductivity by Sutherland's law (constants from memory, F. M. White, Viscous Fluid Flow, tables 1-2 and 1-3).</summary>
    /// <param name="temperature">K.</param>
    public static FluidHeat Air(double temperature)
    {
        double t = Math.Clamp(temperature, 200, 700), ratio = t / 273;
        double density = 101325 / (287.05 * t), viscosity = 1.716e-5 * ratio * Math.Sqrt(ratio) * (273 + 111) / (t + 111);
        double conductivity = 0.0241 * ratio * Math.Sqrt(ratio) * (273 + 194) / (t + 194);
        return new(density, viscosity / density, conductivity / (density * 1006), conductivity);
    }

    /// <summary>
    /// Water, 0 to 100 °C: viscosity by a Vogel form (from memory, to 2.5 %); conductivity after Ramires et al., Journal of Physical and Chemical Reference Data 24 (1995) 1377 (from memory);
    /// heat capacity 4186 J/(kg K), to 1 %.
    /// </summary>
    /// <param name="temperature">K.</param>
    public static FluidHeat Water(double temperature)
    {
        double t = Math.Clamp(temperature, IcePoint, BoilingPoint), density = WaterDensity(t), ratio = t / 298.15;
        double viscosity = 2.414e-5 * Math.Pow(10, 247.8 / (t - 140)), conductivity = 0.6065 * (-1.48445 + ratio * (4.12292 - 1.63866 * ratio));
        return new(density, viscosity / density, conductivity / (density * 4186), conductivity);
    }

    /// <summary>Density of water, kg/m³, 0 to 100 °C (a rational form that follows Kell's table, from memory).</summary>
    /// <param name="temperature">K.</param>
    public static double WaterDensity(double temperature)
    {
        double c = Math.Clamp(temperature, IcePoint, BoilingPoint) - IcePoint;
        return 1000 * (1 - (c + 288.9414) / (508929.2 * (c + 68.12963)) * (c - 3.9863) * (c - 3.9863));
    }
}
