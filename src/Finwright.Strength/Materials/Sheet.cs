using Finwright.Numerics;

namespace Finwright.Strength.Materials;

/// <summary>Plastic sheet, as let into the trailing edge. SI units.</summary>
public sealed record Sheet : Material
{
    /// <summary>Young's modulus, Pa.</summary>
    public required Ranged Modulus { get; init; }

    /// <summary>Poisson's ratio.</summary>
    public required Ranged Poisson { get; init; }

    /// <summary>Tensile strength, Pa.</summary>
    public required Ranged Strength { get; init; }

    /// <summary>Temperature above which it bends under load, K.</summary>
    public required Ranged SofteningTemperature { get; init; }
}
