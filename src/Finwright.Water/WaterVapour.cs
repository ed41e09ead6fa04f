namespace Finwright.Water;

/// <summary>Vapour pressure of fresh and salt water.</summary>
/// <remarks>
/// Fresh: Wagner and Pruss (1993), International equations for the saturation properties of ordinary water substance, J. Phys. Chem. Ref.
/// Data 22, 783-787 (also IAPWS SR1-86). Salt lowers it by Raoult's law in the form of Sharqawy et al. (2010). Coefficients from memory,
/// held by ITTC 7.5-02-01-03.
/// </remarks>
internal static class WaterVapour
{
    private const double CriticalTemperature = 647.096; // K
    private const double CriticalPressure = 22.064e6; // Pa

    // Moles of water displaced by a mole of salt's ions, weighted by their masses (Sharqawy et al., 2010).
    private const double MolarRatio = 0.57357;

    /// <summary>Vapour pressure, Pa.</summary>
    /// <param name="temperatureCelsius">°C.</param>
    /// <param name="salinity">g/kg.</param>
    public static double Pressure(double temperatureCelsius, double salinity)
    {
        double t = temperatureCelsius + PhysicalConstants.IcePoint, tau = 1 - t / CriticalTemperature;
        double root = Math.Sqrt(tau), cube = tau * tau * tau;
        double sum = -7.85951783 * tau + 1.84408259 * tau * root - 11.7866497 * cube
            + 22.6807411 * cube * root - 15.9618719 * cube * tau + 1.80122502 * cube * cube * tau * root;
        double fresh = CriticalPressure * Math.Exp(CriticalTemperature / t * sum);
        return fresh / (1 + MolarRatio * salinity / (1000 - salinity));
    }
}
