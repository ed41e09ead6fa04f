namespace Finwright.Water.Lifting;

/// <summary>The same fin under the two extreme root conditions, as bounds beside the one that is used.</summary>
/// <param name="Bare">Under the bare water surface: least side force.</param>
/// <param name="Used">Under the root condition asked for.</param>
/// <param name="Mirror">Under an endless wall: most side force.</param>
public sealed record RootBounds(LiftingSurface Bare, LiftingSurface Used, LiftingSurface Mirror)
{
    /// <summary>Prepares the bounds of a fin.</summary>
    /// <param name="used">The fin under its own root condition; gap and options are kept.</param>
    public static RootBounds Of(LiftingSurface used)
    {
        ArgumentNullException.ThrowIfNull(used);
        return new(
            LiftingSurface.Create(used.Fin, RootCondition.BareSurface with { Gap = used.Root.Gap }, used.Options),
            used,
            LiftingSurface.Create(used.Fin, RootCondition.FullMirror with { Gap = used.Root.Gap }, used.Options));
    }

    /// <summary>Side force per leeway at small leeway, N/rad, of the three from least to most.</summary>
    /// <param name="flow">The water; its leeway is not read.</param>
    public (double Bare, double Used, double Mirror) Slopes(FlowState flow) => (Bare.Slope(flow), Used.Slope(flow), Mirror.Slope(flow));

    /// <summary>How far the root condition lies on the way from bare surface to mirror, 0 to 1, by lift slope.</summary>
    /// <param name="flow">The water; its leeway is not read.</param>
    public double Share(FlowState flow)
    {
        (double bare, double used, double mirror) = Slopes(flow);
        return (used - bare) / (mirror - bare);
    }
}
