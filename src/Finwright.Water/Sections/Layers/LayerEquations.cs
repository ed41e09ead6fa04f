using Finwright.Numerics.Differentiation;
using static Finwright.Numerics.Differentiation.JetMath;

namespace Finwright.Water.Sections.Layers;

/// <summary>
/// The integral equations of a layer between two stations: momentum, shape (energy over momentum), and amplification while laminar or stress
/// lag while turbulent. Zero when they hold.
/// </summary>
/// <remarks>
/// Drela and Giles, 1987, AIAA J. 25(10). Momentum: d ln θ + (2 + H) d ln u = C_f/2 ds/θ. Shape: d ln H* + (1 - H) d ln u = (2 C_D/H* - C_f/2) ds/θ.
/// Lag: δ/C_τ dC_τ/ds = 4.2 (√C_τ,eq - √C_τ) (from memory). Differences are taken in logarithms of length and speed, so the power laws near the nose are
/// met exactly on any spacing. Means lean toward the downstream end where the shape factor moves fast, which keeps short bubbles free of wiggles.
/// </remarks>
internal static class LayerEquations
{
    /// <summary>Number of equations, and of unknowns beside the edge speed.</summary>
    public const int Count = 3;

    private const double LagRate = 4.2;

    /// <summary>The first station behind the stagnation point, where the speed rises in proportion to the length.</summary>
    public static void Stagnation<T>(in LayerState<T> state, T length, Span<T> residual)
        where T : struct, IJet<T>
    {
        T friction = 0.5 * length * state.Friction / state.Momentum;
        T dissipation = length * state.Dissipation / state.Momentum;
        residual[0] = state.WholeShape + 2 - friction;
        residual[1] = 1 - state.WholeShape + friction - dissipation;
        residual[2] = state.Third;
    }

    /// <summary>Between two laminar stations.</summary>
    /// <param name="a">Upstream.</param>
    /// <param name="b">Downstream.</param>
    /// <param name="from">Length at the upstream end.</param>
    /// <param name="to">Length at the downstream end.</param>
    /// <param name="growthSlope">Rise of the growth dn/ds along the surface, from the stations before.</param>
    /// <param name="residual">Takes the residuals.</param>
    /// <remarks>
    /// The growth of the waves is carried on from upstream. The place where n becomes critical then does not depend on the station behind it, whose
    /// profile is turbulent, and moves smoothly from one interval to the next.
    /// </remarks>
    public static void Laminar<T>(in LayerState<T> a, in LayerState<T> b, T from, T to, T growthSlope, Span<T> residual)
        where T : struct, IJet<T>
    {
        MomentumAndShape(a, b, from, to, residual);
        T run = to - from;
        residual[2] = b.Third - a.Third - run * (a.Growth + 0.5 * growthSlope * run);
    }

    /// <summary>Between two turbulent stations, on the surface or in the wake.</summary>
    public static void Turbulent<T>(in LayerState<T> a, in LayerState<T> b, T from, T to, Span<T> residual)
        where T : struct, IJet<T>
    {
        T lean = MomentumAndShape(a, b, from, to, residual);
        T pull = Between(a.EquilibriumStress - a.Third, b.EquilibriumStress - b.Third, lean);
        residual[2] = 2 * Log(b.Third / a.Third) - LagRate * pull * (to - from) / (0.5 * (a.Thickness + b.Thickness));
    }

    private static T MomentumAndShape<T>(in LayerState<T> a, in LayerState<T> b, T from, T to, Span<T> residual)
        where T : struct, IJet<T>
    {
        T lean = Lean(a.Shape, b.Shape);
        T speed = Log(b.Speed / a.Speed), length = Log(to / from);
        T shape = Between(a.WholeShape, b.WholeShape, lean);
        T friction = 0.5 * Between(from * a.Friction / a.Momentum, to * b.Friction / b.Momentum, lean);
        T dissipation = Between(from * a.Dissipation / a.Momentum, to * b.Dissipation / b.Momentum, lean);
        residual[0] = Log(b.Momentum / a.Momentum) + (shape + 2) * speed - friction * length;
        residual[1] = Log(b.EnergyShape / a.EnergyShape) + (1 - shape) * speed + (friction - dissipation) * length;
        return lean;
    }

    /// <summary>Weight of the downstream end: half while the shape factor is steady, toward one where it jumps.</summary>
    private static T Lean<T>(T a, T b)
        where T : struct, IJet<T> => 1 - 0.5 * Exp(0 - Square(Log((b - 1) / (a - 1))));

    private static T Between<T>(T a, T b, T lean)
        where T : struct, IJet<T> => a + lean * (b - a);
}
