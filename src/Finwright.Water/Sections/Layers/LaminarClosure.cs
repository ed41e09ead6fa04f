using Finwright.Numerics.Differentiation;
using static Finwright.Numerics.Differentiation.JetMath;

namespace Finwright.Water.Sections.Layers;

/// <summary>What a laminar layer's shape factor and momentum Reynolds number say of the rest of its profile.</summary>
/// <remarks>
/// Fits to the Falkner-Skan profiles (Drela and Giles, 1987, "Viscous-inviscid analysis of transonic and low Reynolds number airfoils",
/// AIAA J. 25(10), from memory; checked in the tests against the profiles themselves). Shape factors from about 2.2 at the nose to 10 or so in a bubble.
/// </remarks>
internal static class LaminarClosure
{
    /// <summary>Energy shape factor H* = θ*/θ.</summary>
    public static T EnergyShape<T>(T shape)
        where T : struct, IJet<T>
    {
        T gap = shape - 4;
        return (shape.Value < 4 ? 0.076 : 0.060) * Square(gap) / shape + 1.515;
    }

    /// <summary>Skin friction coefficient, on the local edge speed.</summary>
    public static T Friction<T>(T shape, T reynolds)
        where T : struct, IJet<T>
    {
        T half = shape.Value < 7.4
            ? 0.01977 * Square(7.4 - shape) / (shape - 1) - 0.067
            : 0.022 * Square(1 - T.Constant(1.4) / (shape - 6)) - 0.067;
        return 2 * half / reynolds;
    }

    /// <summary>Dissipation 2 C_D / H*.</summary>
    public static T Dissipation<T>(T shape, T reynolds)
        where T : struct, IJet<T>
    {
        T gap = shape - 4;
        T scaled = shape.Value < 4
            ? 0.00205 * Pow(4 - shape, 5.5) + 0.207
            : 0.207 - 0.003 * Square(gap) / (0.02 * Square(gap) + 1);
        return scaled / reynolds;
    }
}
