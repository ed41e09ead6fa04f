using Finwright.Numerics.Differentiation;

namespace Finwright.Water.Sections.Layers;

/// <summary>Which equations hold at a station.</summary>
internal enum LayerKind
{
    /// <summary>Laminar, on the surface.</summary>
    Laminar,

    /// <summary>Turbulent, on the surface.</summary>
    Turbulent,

    /// <summary>Both layers together behind the section.</summary>
    Wake,
}

/// <summary>What the layers of one side have in common.</summary>
/// <param name="Reynolds">Reynolds number on the chord; speeds are over the free stream, lengths over the chord.</param>
/// <param name="CriticalAmplification">n at transition.</param>
/// <param name="SandRoughness">k_s over the chord.</param>
internal readonly record struct LayerSettings(double Reynolds, double CriticalAmplification, double SandRoughness);

/// <summary>A layer at one station: four unknowns and everything that follows from them.</summary>
/// <typeparam name="T">Number type: plain, or with derivatives.</typeparam>
internal readonly struct LayerState<T>
    where T : struct, IJet<T>
{
    /// <summary>A layer with no displacement at all would have 1; far behind the section it comes near.</summary>
    private const double LeastShape = 1.0003;

    // The closure's thickness grows without bound as the shape factor nears 1; profiles do not (from memory of the method's published form).
    private const double MostThickness = 12;

    // Shear has to be left over for the stress to work in; far behind the section next to none is.
    private const double MostSlip = 0.98;
    private const double MostWakeSlip = 0.99995;

    private const double MostSand = 2;

    /// <summary>Follows everything from the unknowns.</summary>
    /// <param name="kind">Which closure.</param>
    /// <param name="momentum">θ.</param>
    /// <param name="displacement">δ*, with the dead water behind a blunt edge.</param>
    /// <param name="third">n while laminar, else √C_τ.</param>
    /// <param name="speed">Edge speed.</param>
    /// <param name="settings">What the side has in common.</param>
    /// <param name="gap">Thickness of the dead water inside δ*.</param>
    public LayerState(LayerKind kind, T momentum, T displacement, T third, T speed, in LayerSettings settings, double gap = 0)
    {
        (Momentum, Displacement, Third, Speed) = (momentum, displacement, third, speed);
        T reynolds = settings.Reynolds * speed * momentum;
        WholeShape = displacement / momentum;
        Shape = JetMath.Max(gap > 0 ? (displacement - gap) / momentum : WholeShape, LeastShape);
        if (kind == LayerKind.Laminar)
        {
            EnergyShape = LaminarClosure.EnergyShape(Shape);
            Friction = LaminarClosure.Friction(Shape, reynolds);
            Dissipation = LaminarClosure.Dissipation(Shape, reynolds);
            Growth = Amplification.Growth(Shape, reynolds) / momentum;
            return;
        }

        EnergyShape = TurbulentClosure.EnergyShape(Shape, reynolds);
        T slip = JetMath.Min(TurbulentClosure.Slip(Shape, EnergyShape), kind == LayerKind.Wake ? MostWakeSlip : MostSlip);
        EquilibriumStress = TurbulentClosure.EquilibriumStress(Shape, EnergyShape, slip);
        Thickness = JetMath.Min(TurbulentClosure.ThicknessOverMomentum(Shape) + Shape, MostThickness) * momentum;
        if (kind == LayerKind.Wake)
        {
            // No wall, and the stress works in both halves.
            Friction = T.Constant(0);
            Dissipation = 2 * TurbulentClosure.Dissipation(Friction, slip, third, EnergyShape);
            return;
        }

        Friction = settings.SandRoughness > 0
            ? TurbulentClosure.RoughFriction(Shape, reynolds, settings.Reynolds * speed * Covered(settings.SandRoughness, momentum))
            : TurbulentClosure.Friction(Shape, reynolds);
        Dissipation = TurbulentClosure.Dissipation(Friction, slip, third, EnergyShape);
    }

    /// <summary>
    /// Sand that the layer's law of the wall can feel. Where grains stand out of a young layer they no longer act as roughness of its wall, but the law would
    /// go on raising friction without bound: the height counts up to about twice the momentum thickness (a fifth of the layer; judgement).
    /// </summary>
    private static T Covered(double sand, T momentum)
    {
        T most = MostSand * momentum;
        return sand * most / (most + sand);
    }

    /// <summary>θ.</summary>
    public T Momentum { get; init; }

    /// <summary>δ*.</summary>
    public T Displacement { get; init; }

    /// <summary>n while laminar, else √C_τ.</summary>
    public T Third { get; init; }

    /// <summary>Edge speed over the free stream.</summary>
    public T Speed { get; init; }

    /// <summary>δ*/θ with the dead water: what the momentum balance sees.</summary>
    public T WholeShape { get; init; }

    /// <summary>Shape factor of the moving layer.</summary>
    public T Shape { get; init; }

    /// <summary>θ*/θ.</summary>
    public T EnergyShape { get; init; }

    /// <summary>C_f on the edge speed.</summary>
    public T Friction { get; init; }

    /// <summary>2 C_D / H*.</summary>
    public T Dissipation { get; init; }

    /// <summary>dn/ds; laminar only.</summary>
    public T Growth { get; init; }

    /// <summary>√C_τ in equilibrium; turbulent and wake only.</summary>
    public T EquilibriumStress { get; init; }

    /// <summary>δ; turbulent and wake only.</summary>
    public T Thickness { get; init; }
}

/// <summary>Puts a station's derivatives beside those of its neighbour.</summary>
internal static class LayerStateLifting
{
    /// <summary>The station as the upstream end of an interval.</summary>
    public static LayerState<Jet12> Upstream(this in LayerState<Jet4> state) => new()
    {
        Momentum = Jet12.FromFirst(state.Momentum),
        Displacement = Jet12.FromFirst(state.Displacement),
        Third = Jet12.FromFirst(state.Third),
        Speed = Jet12.FromFirst(state.Speed),
        WholeShape = Jet12.FromFirst(state.WholeShape),
        Shape = Jet12.FromFirst(state.Shape),
        EnergyShape = Jet12.FromFirst(state.EnergyShape),
        Friction = Jet12.FromFirst(state.Friction),
        Dissipation = Jet12.FromFirst(state.Dissipation),
        Growth = Jet12.FromFirst(state.Growth),
        EquilibriumStress = Jet12.FromFirst(state.EquilibriumStress),
        Thickness = Jet12.FromFirst(state.Thickness),
    };

    /// <summary>The station as the downstream end of an interval.</summary>
    public static LayerState<Jet12> Downstream(this in LayerState<Jet4> state) => new()
    {
        Momentum = Jet12.FromSecond(state.Momentum),
        Displacement = Jet12.FromSecond(state.Displacement),
        Third = Jet12.FromSecond(state.Third),
        Speed = Jet12.FromSecond(state.Speed),
        WholeShape = Jet12.FromSecond(state.WholeShape),
        Shape = Jet12.FromSecond(state.Shape),
        EnergyShape = Jet12.FromSecond(state.EnergyShape),
        Friction = Jet12.FromSecond(state.Friction),
        Dissipation = Jet12.FromSecond(state.Dissipation),
        Growth = Jet12.FromSecond(state.Growth),
        EquilibriumStress = Jet12.FromSecond(state.EquilibriumStress),
        Thickness = Jet12.FromSecond(state.Thickness),
    };
}
