namespace Finwright.Water;

/// <summary>Density of fresh and salt water at one atmosphere.</summary>
/// <remarks>
/// The international one-atmosphere equation of state of sea water, EOS-80 (UNESCO, 1981, Technical Papers in Marine Science 36;
/// Millero and Poisson, 1981, Deep-Sea Research 28A, 625-629). Coefficients from memory, held by the check values of UNESCO (1983,
/// Technical Papers in Marine Science 44). Practical salinity 0 to 42, -2 to 40 °C.
/// </remarks>
internal static class WaterDensity
{
    // Reference-composition salinity (g/kg) of water with practical salinity 35 (Millero et al., 2008, Deep-Sea Research I 55, 50-72).
    private const double SalinityScale = 35.16504 / 35;

    // The equation is written in the temperature scale of 1968; today's degrees are larger by this factor (UNESCO convention, from memory).
    private const double TemperatureScale = 1.00024;

    /// <summary>Density, kg/m³.</summary>
    /// <param name="temperatureCelsius">°C.</param>
    /// <param name="salinity">g/kg.</param>
    public static double Of(double temperatureCelsius, double salinity) => Eos80(temperatureCelsius * TemperatureScale, salinity / SalinityScale);

    /// <summary>The equation in its own variables: °C of 1968 and practical salinity.</summary>
    internal static double Eos80(double t, double s)
    {
        double pure = 999.842594 + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
        double a = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
        double b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
        return pure + s * (a + b * Math.Sqrt(s) + 4.8314e-4 * s);
    }
}
