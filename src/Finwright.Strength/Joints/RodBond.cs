using Finwright.Numerics;

namespace Finwright.Strength.Joints;

/// <summary>The bond of a rod in its bore.</summary>
public static class RodBond
{
    /// <summary>Pull at which the bond lets go, N: π d L τ, shear even along the length.</summary>
    /// <param name="diameter">Of the rod, m.</param>
    /// <param name="length">Bonded, from the joint to the nearer end, m.</param>
    /// <param name="bondStrength">Shear strength, Pa.</param>
    /// <remarks>Beyond some ten diameters more length adds little, because the shear piles up at the joint; the value is then too high, and <see cref="IsLong"/> says so (judgement).</remarks>
    public static Ranged Pull(double diameter, double length, Ranged bondStrength) =>
        bondStrength.Times(Math.PI * Require.Positive(diameter) * Require.NotNegative(length));

    /// <summary>Whether the bond is too long for its shear to be even.</summary>
    /// <param name="diameter">Of the rod, m.</param>
    /// <param name="length">Bonded, m.</param>
    public static bool IsLong(double diameter, double length) => length > 10 * diameter;
}
