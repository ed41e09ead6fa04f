using Finwright.Numerics.Differentiation;
using static Finwright.Numerics.Differentiation.JetMath;

namespace Finwright.Water.Sections.Layers;

/// <summary>What a turbulent layer's shape factor and momentum Reynolds number say of the rest of its profile.</summary>
/// <remarks>Drela and Giles, 1987, AIAA J. 25(10), for low speed; from memory, checked in the tests against flat-plate friction.</remarks>
internal static class TurbulentClosure
{
    /// <summary>Below this the friction law's logarithm has no meaning; layers that thin are never turbulent for long.</summary>
    private const double LeastReynolds = 100;

    private const double KarmanInverse = 2.44;

    // Roughness function ln(1 + 0.3 k+) / κ: smooth for k+ below 5, the logarithmic law of sand above 70 (Colebrook's form; from memory).
    private const double SandShare = 0.3;
    private const int RoughnessSteps = 10;

    /// <summary>Energy shape factor H* = θ*/θ.</summary>
    public static T EnergyShape<T>(T shape, T reynolds)
        where T : struct, IJet<T>
    {
        T r = Max(reynolds, 200);
        T inverse = T.Constant(1) / r;
        T peak = r.Value < 400 ? T.Constant(4) : 400 * inverse + 3;
        T floor = 4 * inverse + 1.5;
        T gap = shape - peak;
        if (gap.Value < 0)
            return floor + 1.5 * (2 - floor) * Square(gap / (peak - 1)) / (shape + 0.5);
        T log = Log(r);
        return floor + Square(gap) * (T.Constant(0.015) / shape + 0.007 * log / Square(gap + T.Constant(4) / log));
    }

    /// <summary>Skin friction coefficient of a smooth wall, on the local edge speed; negative where the flow at the wall runs backward.</summary>
    public static T Friction<T>(T shape, T reynolds)
        where T : struct, IJet<T>
    {
        T log = Log(Max(reynolds, LeastReynolds));
        T power = Exp((-1.74 - 0.31 * shape) * Log((1 / Math.Log(10)) * log));
        return 0.3 * Exp(-1.33 * shape) * power + 0.00011 * (Tanh(4 - (1 / 0.875) * shape) - 1);
    }

    /// <summary>Skin friction coefficient of a rough wall, on the local edge speed.</summary>
    /// <param name="shape">Shape factor.</param>
    /// <param name="reynolds">Momentum Reynolds number.</param>
    /// <param name="sand">Sand height times edge speed over viscosity.</param>
    /// <remarks>
    /// The roughness function of sand shifts the law of the wall; how much it slows the layer is taken from a plate of the same momentum Reynolds
    /// number (smooth friction of Karman and Schoenherr). Roughness also raises the shape factor without weakening the wake: Clauser's G = (H - 1)/H √(2/C_f),
    /// not H, is what a smooth layer of the same wake shares (Clauser, 1956, Adv. Appl. Mech. 4).
    /// </remarks>
    public static T RoughFriction<T>(T shape, T reynolds, T sand)
        where T : struct, IJet<T>
    {
        T log = (1 / Math.Log(10)) * Log(Max(reynolds, LeastReynolds));
        T smooth = Sqrt(2 * (17.08 * Square(log) + 25.11 * log + 6.012));
        T rough = smooth;
        for (int i = 0; i < RoughnessSteps; i++)
            rough = 0.5 * (rough + smooth - KarmanInverse * Log(SandShare * sand / rough + 1));
        T share = rough / smooth;
        T smoothShape = T.Constant(1) / (1 - share * (shape - 1) / shape);
        return Friction(smoothShape, reynolds) / Square(share);
    }

    /// <summary>Slip speed U_s of the outer layer, over the edge speed.</summary>
    public static T Slip<T>(T shape, T energyShape)
        where T : struct, IJet<T> => 0.5 * energyShape * (1 - (4.0 / 3) * (shape - 1) / shape);

    /// <summary>Square root of the shear stress coefficient of a layer in equilibrium.</summary>
    public static T EquilibriumStress<T>(T shape, T energyShape, T slip)
        where T : struct, IJet<T>
    {
        T wake = Max(shape - 1, 0.0003);
        return Sqrt(0.015 * energyShape * wake * Square(wake) / ((1 - slip) * shape * Square(shape)));
    }

    /// <summary>Dissipation coefficient 2 C_D / H*.</summary>
    public static T Dissipation<T>(T friction, T slip, T stress, T energyShape)
        where T : struct, IJet<T> => (friction * slip + 2 * Square(stress) * (1 - slip)) / energyShape;

    /// <summary>Thickness of the layer over its momentum thickness, without the displacement thickness.</summary>
    public static T ThicknessOverMomentum<T>(T shape)
        where T : struct, IJet<T> => T.Constant(1.72) / (shape - 1) + 3.15;
}
