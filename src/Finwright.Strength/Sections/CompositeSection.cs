using Finwright.Strength.Materials;

namespace Finwright.Strength.Sections;

/// <summary>A cross-section of the blade, across the span: wall around a core, with rods and hollows. Metres; x aft, z to starboard.</summary>
/// <remarks>Of the materials, the modulus along the span counts for stretching and bending, the shear moduli xy and yz for twisting and shearing.</remarks>
public sealed record CompositeSection
{
    /// <summary>Place of the nose, m.</summary>
    public required double LeadingX { get; init; }

    /// <summary>Place of the trailing edge, m, aft of the nose.</summary>
    public required double TrailingX { get; init; }

    /// <summary>Both sides at an x between nose and trailing edge: z to port (low) and to starboard (high), m. They may meet at the ends only.</summary>
    public required Func<double, (double Low, double High)> Surface { get; init; }

    /// <summary>How deep the wall of one side reaches at an x, measured along z, m. Where two walls meet there is no core.</summary>
    public required Func<double, double> WallDepth { get; init; }

    /// <summary>What the wall is made of.</summary>
    public required Elasticity Wall { get; init; }

    /// <summary>What the core is made of.</summary>
    public required Elasticity Core { get; init; }

    /// <summary>Rods along the span, in place of what would be there.</summary>
    public IReadOnlyList<SectionRod> Rods { get; init; } = [];

    /// <summary>Hollows, whole rectangles.</summary>
    public IReadOnlyList<SectionVoid> Voids { get; init; } = [];
}

/// <summary>A round rod along the span.</summary>
/// <param name="X">Centre, m aft.</param>
/// <param name="Z">Centre, m to starboard.</param>
/// <param name="Diameter">m.</param>
/// <param name="Modulus">Young's modulus along the rod, Pa.</param>
/// <param name="ShearModulus">Shear modulus along the rod, Pa.</param>
/// <param name="Density">kg/m³.</param>
public sealed record SectionRod(double X, double Z, double Diameter, double Modulus, double ShearModulus, double Density);

/// <summary>A hollow in the section, where it lies inside the surface.</summary>
/// <param name="FromX">Its fore end, m.</param>
/// <param name="ToX">Its aft end, m.</param>
/// <param name="FromZ">Its port side, m.</param>
/// <param name="ToZ">Its starboard side, m.</param>
public sealed record SectionVoid(double FromX, double ToX, double FromZ, double ToZ)
{
    /// <summary>Whether a point lies in it.</summary>
    public bool Contains(double x, double z) => x > FromX && x < ToX && z > FromZ && z < ToZ;
}

/// <summary>How finely a section is divided.</summary>
/// <param name="Columns">Elements along the chord, at least 4.</param>
/// <param name="WallLayers">Elements through each wall, at least 1.</param>
/// <param name="CoreLayers">Elements through the core, at least 1.</param>
public sealed record SectionMeshOptions(int Columns = 24, int WallLayers = 1, int CoreLayers = 2);
