using Finwright.Numerics;

namespace Finwright.Strength.Materials;

/// <summary>Metal of bolts, threaded rods and nuts. SI units.</summary>
public sealed record Metal : Material
{
    /// <summary>Young's modulus, Pa.</summary>
    public required Ranged Modulus { get; init; }

    /// <summary>Poisson's ratio.</summary>
    public required Ranged Poisson { get; init; }

    /// <summary>Stress at 0.2 % lasting strain, Pa.</summary>
    public required Ranged Yield { get; init; }

    /// <summary>Tensile strength, Pa.</summary>
    public required Ranged Ultimate { get; init; }
}
