namespace Finwright.Strength.Materials;

/// <summary>How one material of the blade yields in the plane of the blade: x along the chord, y along the span. Pa, kg/m³.</summary>
/// <param name="ModulusX">Young's modulus along the chord.</param>
/// <param name="ModulusY">Young's modulus along the span.</param>
/// <param name="PoissonXY">Shrinking along y for stretching along x; the other follows from symmetry, ν_yx = ν_xy E_y / E_x.</param>
/// <param name="ShearXY">Shear modulus in the plane.</param>
/// <param name="ShearXZ">Shear modulus across the thickness, along the chord.</param>
/// <param name="ShearYZ">Shear modulus across the thickness, along the span.</param>
/// <param name="Density">Density.</param>
public sealed record Elasticity(double ModulusX, double ModulusY, double PoissonXY, double ShearXY, double ShearXZ, double ShearYZ, double Density)
{
    /// <summary>Poisson's ratio the other way round.</summary>
    public double PoissonYX => PoissonXY * ModulusY / ModulusX;

    /// <summary>The same in all directions.</summary>
    /// <param name="modulus">Young's modulus, Pa.</param>
    /// <param name="poisson">Poisson's ratio, above −1 and below 0.5.</param>
    /// <param name="density">kg/m³.</param>
    public static Elasticity Isotropic(double modulus, double poisson, double density)
    {
        double shear = modulus / (2 * (1 + poisson));
        return new(modulus, modulus, poisson, shear, shear, shear, density);
    }

    /// <summary>The same material, stiffer or softer by a factor in all its moduli.</summary>
    public Elasticity Times(double factor) => this with
    {
        ModulusX = factor * ModulusX,
        ModulusY = factor * ModulusY,
        ShearXY = factor * ShearXY,
        ShearXZ = factor * ShearXZ,
        ShearYZ = factor * ShearYZ,
    };
}
