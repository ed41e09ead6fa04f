using Finwright.Numerics;

namespace Finwright.Water.Ventilation;

/// <summary>Suction against the pressure that lets water boil.</summary>
/// <remarks>
/// Inception is taken where the lowest pressure reaches the vapour pressure: conservative for a smooth blade in clean water, optimistic for a
/// nicked one. Fresh bubbles need time and nuclei; nicks and roughness make suction peaks of their own.
/// </remarks>
public static class Cavitation
{
    /// <summary>Cavitation number σ = (p_atm + ρ g z - p_v) / ½ρV².</summary>
    /// <param name="water">The water.</param>
    /// <param name="depth">Depth z below the surface, m.</param>
    /// <param name="speed">m/s.</param>
    public static double Number(WaterProperties water, double depth, double speed) =>
        Head(water, depth) / water.DynamicPressure(Require.Positive(speed));

    /// <summary>Speed at which the lowest pressure reaches the vapour pressure, m/s; null when there is no suction.</summary>
    /// <param name="water">The water.</param>
    /// <param name="depth">Depth z below the surface, m.</param>
    /// <param name="minimumCp">Lowest pressure coefficient, on the speed of sailing; taken to stay as it is when the speed changes.</param>
    public static double? InceptionSpeed(WaterProperties water, double depth, double minimumCp)
    {
        double head = Head(water, depth);
        return Require.Finite(minimumCp) < 0 ? Math.Sqrt(head / (0.5 * water.Density * -minimumCp)) : null;
    }

    private static double Head(WaterProperties water, double depth)
    {
        ArgumentNullException.ThrowIfNull(water);
        return PhysicalConstants.Atmosphere + water.Density * PhysicalConstants.Gravity * Require.NotNegative(depth) - water.VapourPressure;
    }
}
