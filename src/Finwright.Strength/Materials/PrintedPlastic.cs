using Finwright.Numerics;

namespace Finwright.Strength.Materials;

/// <summary>How the blade lay on the printer, and with it which way its layers run.</summary>
public enum PrintDirection
{
    /// <summary>Standing on the root: layers level with the hull, so bending pulls them apart.</summary>
    Standing,

    /// <summary>Lying on its side: layers in the plane of the blade.</summary>
    Lying,
}

/// <summary>Plastic as a printer lays it: stiffer and stronger along its layers than across them. SI units.</summary>
public sealed record PrintedPlastic : Material
{
    /// <summary>Young's modulus along the layers, Pa.</summary>
    public required Ranged ModulusAlong { get; init; }

    /// <summary>Young's modulus across the layers, Pa.</summary>
    public required Ranged ModulusAcross { get; init; }

    /// <summary>Poisson's ratio within the layers.</summary>
    public required Ranged Poisson { get; init; }

    /// <summary>Shear modulus, taken the same in all planes, Pa.</summary>
    public required Ranged ShearModulus { get; init; }

    /// <summary>Tensile strength along the layers, Pa.</summary>
    public required Ranged StrengthAlong { get; init; }

    /// <summary>Tensile strength across the layers, Pa.</summary>
    public required Ranged StrengthAcross { get; init; }

    /// <summary>Temperature above which it bends under its own load, K.</summary>
    public required Ranged SofteningTemperature { get; init; }

    /// <summary>How it yields in the plane of the blade, at the middle values.</summary>
    /// <param name="direction">How it was printed.</param>
    /// <remarks>Poisson's ratio between span and layers is taken from within the layers; measurements across layers were not found.</remarks>
    public Elasticity Elasticity(PrintDirection direction)
    {
        double span = direction is PrintDirection.Standing ? ModulusAcross.Value : ModulusAlong.Value, shear = ShearModulus.Value;
        return new(ModulusAlong.Value, span, Poisson.Value, shear, shear, shear, Density.Value);
    }

    /// <summary>Tensile strength along the span, which is what bending asks for, Pa.</summary>
    /// <param name="direction">How it was printed.</param>
    public Ranged StrengthAlongSpan(PrintDirection direction) => direction is PrintDirection.Standing ? StrengthAcross : StrengthAlong;
}
