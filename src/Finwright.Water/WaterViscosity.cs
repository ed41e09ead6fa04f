namespace Finwright.Water;

/// <summary>Dynamic viscosity of fresh and salt water at one atmosphere.</summary>
/// <remarks>
/// Sharqawy, Lienhard and Zubair (2010), Thermophysical properties of seawater: a review of existing correlations and data,
/// Desalination and Water Treatment 16, 354-380. 0 to 180 °C, 0 to 150 g/kg, stated to 1.5 %. Coefficients from memory, held by ITTC 7.5-02-01-03.
/// </remarks>
internal static class WaterViscosity
{
    /// <summary>Dynamic viscosity, Pa·s.</summary>
    /// <param name="temperatureCelsius">°C.</param>
    /// <param name="salinity">g/kg.</param>
    public static double Of(double temperatureCelsius, double salinity)
    {
        double t = temperatureCelsius, s = salinity / 1000;
        double pure = 4.2844e-5 + 1 / (0.157 * (t + 64.993) * (t + 64.993) - 91.296);
        double a = 1.541 + t * (1.998e-2 - t * 9.52e-5);
        double b = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
        return pure * (1 + s * (a + b * s));
    }
}
