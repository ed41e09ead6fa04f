using Finwright.Strength.Materials;
using Finwright.Strength.Sections;

namespace Finwright.Strength.Tests.Sections;

/// <summary>Sections whose answers are known.</summary>
internal static class SectionCases
{
    /// <summary>Young's modulus 2.9 GPa, Poisson 0.35.</summary>
    public static readonly Elasticity Plain = Elasticity.Isotropic(2.9e9, 0.35, 1200);
    public static readonly Elasticity Skin = Elasticity.Isotropic(2.0e9, 0.35, 1200);
    public static readonly Elasticity Core = Elasticity.Isotropic(2.6e9, 0.35, 1200);

    /// <summary>One material within two sides that mirror each other.</summary>
    public static CompositeSection Solid(double width, Func<double, double> halfThickness) => new()
    {
        LeadingX = 0,
        TrailingX = width,
        Surface = x => (-halfThickness(x), halfThickness(x)),
        WallDepth = _ => 0,
        Wall = Plain,
        Core = Plain,
    };

    public static CompositeSection Rectangle(double width, double height) => Solid(width, _ => height / 2);

    public static CompositeSection Ellipse(double width, double height) => Solid(width, x => height / width * Math.Sqrt(Math.Max(x * (width - x), 0)));

    /// <summary>Symmetric four-digit section, open at the trailing edge.</summary>
    public static CompositeSection FourDigit(double chord, double ratio) => Solid(chord, x => chord * FourDigitHalf(x / chord, ratio));

    public static double FourDigitHalf(double x, double ratio) =>
        5 * ratio * (0.2969 * Math.Sqrt(x) + x * (-0.1260 + x * (-0.3516 + x * (0.2843 - 0.1015 * x))));

    /// <summary>NACA 0012, chord 110 mm, wall 1.2 mm.</summary>
    public static CompositeSection Layered { get; } = FourDigit(0.11, 0.12) with { WallDepth = _ => 0.0012, Wall = Skin, Core = Core };

    /// <summary>30 × 10 mm with 1.2 mm skins and two rods of 4 mm.</summary>
    public static CompositeSection WithRods { get; } = Rectangle(0.030, 0.010) with
    {
        WallDepth = _ => 0.0012,
        Wall = Skin,
        Core = Core,
        Rods = [new(0.010, 0, 0.004, 125e9, 4.2e9, 1500), new(0.020, 0, 0.004, 125e9, 4.2e9, 1500)],
    };

    /// <summary>Torsion constant of a rectangle, long side a.</summary>
    /// <remarks>Timoshenko and Goodier, Theory of Elasticity, torsion of a rectangular bar, series (from memory).</remarks>
    public static double RectangleTorsion(double a, double b)
    {
        double sum = 0;
        for (int n = 1; n < 200; n += 2)
            sum += Math.Tanh(n * Math.PI * a / (2 * b)) / Math.Pow(n, 5);
        return a * b * b * b / 3 * (1 - 192 * b / (Math.Pow(Math.PI, 5) * a) * sum);
    }
}
