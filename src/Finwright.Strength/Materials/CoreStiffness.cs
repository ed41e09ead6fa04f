using Finwright.Numerics;

namespace Finwright.Strength.Materials;

/// <summary>Stiffness of the core as one material that is even in all directions. SI units.</summary>
public sealed record CoreStiffness
{
    /// <summary>Young's modulus, Pa.</summary>
    public required Ranged Modulus { get; init; }

    /// <summary>Shear modulus, Pa.</summary>
    public required Ranged ShearModulus { get; init; }

    /// <summary>Poisson's ratio.</summary>
    public required double Poisson { get; init; }

    /// <summary>Density, kg/m³.</summary>
    public required Ranged Density { get; init; }

    /// <summary>Young's modulus from the lower bounds, Pa, at the middle values of both phases.</summary>
    public required double LowerBound { get; init; }

    /// <summary>Young's modulus from the upper bounds, Pa, at the middle values of both phases.</summary>
    public required double UpperBound { get; init; }

    /// <summary>Whether the share of plastic is one at which the pattern exists: 5 to 50 %, or none or all (judgement).</summary>
    public required bool IsInRange { get; init; }

    /// <summary>How it yields in the plane of the blade, at the middle values.</summary>
    public Elasticity Elasticity => Materials.Elasticity.Isotropic(Modulus.Value, Poisson, Density.Value);
}
