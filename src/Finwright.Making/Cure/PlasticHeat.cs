using Finwright.Numerics;

namespace Finwright.Making.Cure;

/// <summary>What the printed plastic does with heat.</summary>
/// <param name="Density">kg/m³.</param>
/// <param name="HeatCapacity">J/(kg K).</param>
/// <param name="Conductivity">W/(m K).</param>
public sealed record PlasticHeat(double Density, double HeatCapacity, double Conductivity)
{
    /// <summary>PETG: heat capacity and conductivity from the data page "PETG" of makeitfrom.com, density of filaments (common practice, no source).</summary>
    public static PlasticHeat Petg { get; } = new(1270, 1200, 0.29);

    /// <summary>Conductivity of two phases in each other, W/(m K): the mean of both Hashin-Shtrikman bounds.</summary>
    /// <param name="first">Conductivity of the first, W/(m K).</param>
    /// <param name="second">Conductivity of the second, W/(m K).</param>
    /// <param name="share">Share of the first, 0 to 1.</param>
    /// <remarks>
    /// Z. Hashin and S. Shtrikman, "A variational approach to the theory of the effective magnetic permeability of multiphase materials", Journal of Applied Physics 33 (1962) 3125 (form from memory).
    /// For plastic in resin both bounds lie within a hundredth; for plastic in air they are far apart and the mean is a guess.
    /// </remarks>
    public static double Mixed(double first, double second, double share)
    {
        Require.Positive(first);
        Require.Positive(second);
        Require.Between(share, 0, 1);
        if (first == second || share is 0 or 1)
            return share is 0 ? second : first;
        double one = first + (1 - share) / (1 / (second - first) + share / (3 * first));
        double other = second + share / (1 / (first - second) + (1 - share) / (3 * second));
        return (one + other) / 2;
    }
}
