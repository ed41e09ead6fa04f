using Finwright.Numerics;

namespace Finwright.Water.Finishes;

/// <summary>How disturbed the stream is, and how much a laminar layer must amplify before it turns turbulent.</summary>
/// <remarks>
/// No measurement near a sailboard was found: intensities for the sea are judgement, and n is to be shown as a band. About n = 9 is a quiet
/// wind tunnel; 4 to 6 is expected in chop.
/// </remarks>
public static class FreeStreamTurbulence
{
    /// <summary>Lower end of the band expected in chop.</summary>
    public const double ChopLow = 4;

    /// <summary>Upper end of the band expected in chop.</summary>
    public const double ChopHigh = 6;

    /// <summary>Least intensity of the relation's data (from memory): below it other disturbances rule.</summary>
    public const double LeastIntensity = 0.0005;

    /// <summary>Greatest intensity: n falls to nothing a little above.</summary>
    public const double GreatestIntensity = 0.029;

    /// <summary>Critical amplification exponent n = -8.43 - 2.4 ln Tu.</summary>
    /// <param name="intensity">Turbulence intensity Tu as a fraction of the speed, 0.0005 to 0.029.</param>
    /// <remarks>Mack (1977), Transition prediction and linear stability theory, AGARD CP-224 (from memory).</remarks>
    public static double CriticalAmplification(double intensity) =>
        -8.43 - 2.4 * Math.Log(Require.Between(intensity, LeastIntensity, GreatestIntensity));
}
