using Finwright.Design;
using Finwright.Water.Finishes;

namespace Finwright.Water.FromDesign;

/// <summary>The water a design is meant for, in SI units.</summary>
public static class WaterFromDesign
{
    /// <summary>Density, viscosity and vapour pressure.</summary>
    /// <param name="brief">Every value within the range of its field.</param>
    public static WaterProperties Properties(Brief brief)
    {
        ArgumentNullException.ThrowIfNull(brief);
        double salinity = brief.Water switch
        {
            WaterKind.Sea => WaterProperties.SeaSalinity,
            WaterKind.Brackish => WaterProperties.BrackishSalinity,
            WaterKind.Fresh => 0,
            _ => throw new ArgumentOutOfRangeException(nameof(brief), brief.Water, "Not a kind of water."),
        };
        return WaterProperties.At(brief.WaterTemperatureCelsius, salinity);
    }

    /// <summary>Turbulence intensity that a water state stands for, as a fraction of the speed.</summary>
    /// <param name="state">In plain words.</param>
    /// <remarks>Judgement: chosen so that n runs from 7 in glassy water through 5 in chop to 4 in rough water; nobody has measured it.</remarks>
    public static double TurbulenceIntensity(WaterState state) => state switch
    {
        WaterState.Glassy => 0.0016,
        WaterState.Ripples => 0.0025,
        WaterState.Chop => 0.0037,
        WaterState.Rough => 0.0056,
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Not a water state."),
    };

    /// <summary>Critical amplification exponent n for a water state: about 7 glassy, 6 ripples, 5 chop, 4 rough.</summary>
    /// <param name="state">In plain words.</param>
    public static double CriticalAmplification(WaterState state) => FreeStreamTurbulence.CriticalAmplification(TurbulenceIntensity(state));
}
