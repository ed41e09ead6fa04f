using Finwright.Numerics;

namespace Finwright.Strength.Materials;

/// <summary>A rod of straight fibres in resin, pultruded. SI units.</summary>
public sealed record Rod : Material
{
    /// <summary>Young's modulus along the rod, Pa.</summary>
    public required Ranged Modulus { get; init; }

    /// <summary>Young's modulus across the rod, Pa.</summary>
    public required Ranged ModulusAcross { get; init; }

    /// <summary>Shear modulus along the rod, Pa.</summary>
    public required Ranged ShearModulus { get; init; }

    /// <summary>Tensile strength along the rod, Pa.</summary>
    public required Ranged TensileStrength { get; init; }

    /// <summary>Compressive strength along the rod, Pa.</summary>
    public required Ranged CompressiveStrength { get; init; }

    /// <summary>Shear strength of resin on the abraded rod, Pa.</summary>
    public required Ranged BondStrength { get; init; }
}
