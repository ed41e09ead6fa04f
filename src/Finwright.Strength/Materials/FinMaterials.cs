using Finwright.Numerics;
using Finwright.Strength.Joints;

namespace Finwright.Strength.Materials;

/// <summary>What a fin is made of, part by part, with what the bench has shown of it.</summary>
public sealed record FinMaterials
{
    /// <summary>The print.</summary>
    public required PrintedPlastic Printed { get; init; }

    /// <summary>The resin.</summary>
    public required CastResin Resin { get; init; }

    /// <summary>Print and resin together inside the walls.</summary>
    public required CoreStiffness Core { get; init; }

    /// <summary>Tensile strength of the core, Pa.</summary>
    public required Ranged CoreStrength { get; init; }

    /// <summary>Print and resin round a nut.</summary>
    public required NutSurround Around { get; init; }

    /// <summary>Carbon rods.</summary>
    public required Rod Rod { get; init; }

    /// <summary>Strength of resin between two printed faces that are pulled apart, Pa: half of that of resin on an abraded rod in shear, as prints have little grip (judgement).</summary>
    public Ranged FaceBond => Rod.BondStrength.Times(0.5);

    /// <summary>Bolts and threaded rods.</summary>
    public required Metal Bolt { get; init; }

    /// <summary>Sheet of the strip.</summary>
    public required Sheet Sheet { get; init; }

    /// <summary>Factor on the stiffness of the walls: 1 with the range of the material, or what the bench showed.</summary>
    public required Ranged WallFactor { get; init; }

    /// <summary>Factor on the stiffness of the core: 1 with the range of the materials, or what the bench showed.</summary>
    public required Ranged CoreFactor { get; init; }

    /// <summary>Factor on the stiffness of the rods: 1 with the range of the material.</summary>
    public Ranged RodFactor => new(1, Rod.Modulus.Low / Rod.Modulus.Value, Rod.Modulus.High / Rod.Modulus.Value);
}
