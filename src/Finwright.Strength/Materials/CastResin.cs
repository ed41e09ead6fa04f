using Finwright.Numerics;

namespace Finwright.Strength.Materials;

/// <summary>Resin cast into the blade and cured. SI units.</summary>
public sealed record CastResin : Material
{
    /// <summary>Young's modulus, Pa.</summary>
    public required Ranged Modulus { get; init; }

    /// <summary>Poisson's ratio.</summary>
    public required Ranged Poisson { get; init; }

    /// <summary>Tensile strength, Pa.</summary>
    public required Ranged Strength { get; init; }

    /// <summary>Glass transition, K; well below it the resin is stiff.</summary>
    public required Ranged GlassTransition { get; init; }
}
