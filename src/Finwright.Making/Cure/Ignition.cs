using Finwright.Numerics;

namespace Finwright.Making.Cure;

/// <summary>Whether a body that heats itself can shed the heat at all, from one number.</summary>
/// <remarks>
/// N. N. Semenov's criterion (1928, from memory) for a body of one temperature that uses up none of its fuel: it runs away when ψ = q V E / (U A R T²) exceeds 1/e; q is the greatest heat
/// the reaction makes at the surroundings' temperature, U joins film, wall and the body's own mean resistance. What is told is e ψ: 1 at the edge. Resin is used up while it warms, so that
/// the real edge lies above 1, by half for usual resins (an expansion for the first order in D. A. Frank-Kamenetskii, Diffusion and Heat Transfer in Chemical Kinetics, from memory); hence the
/// band that counts as near.
/// </remarks>
public static class Ignition
{
    /// <summary>From here on a body counts as near the edge (judgement).</summary>
    public const double BandLow = 0.8;

    /// <summary>Up to here: beyond, it has run away for certain and stands at a peak that cooling changes little (judgement).</summary>
    public const double BandHigh = 2;

    /// <summary>Share of the edge, from q V / (U A) and the resin's temperature.</summary>
    /// <param name="rate">The resin's rate.</param>
    /// <param name="heatOverLoss">Heat of reaction times resin mass over U A, K s.</param>
    /// <param name="temperature">Of the surroundings, K.</param>
    public static double Share(CureRate rate, double heatOverLoss, double temperature)
    {
        ArgumentNullException.ThrowIfNull(rate);
        Require.NotNegative(heatOverLoss);
        Require.Positive(temperature);
        (double greatest, double where) = rate.Greatest(temperature);
        // E/(R T²): the logarithmic slope of the rate there.
        _ = rate.At(temperature, where, out double slope, out _);
        return greatest > 0 ? Math.E * greatest * heatOverLoss * (slope / greatest) : 0;
    }

    /// <summary>Share of the edge for a slab.</summary>
    /// <param name="slab">The case.</param>
    public static double OfSlab(SlabCase slab)
    {
        ArgumentNullException.ThrowIfNull(slab);
        slab.Check();
        double half = slab.Thickness / 2, conductivity = PlasticHeat.Mixed(slab.Plastic.Conductivity, slab.Resin.Conductivity, slab.InfillShare);
        // At the edge a body stands R T²/E above its surroundings, some 15 K.
        double film = slab.CoolingFactor * slab.Cooling.At(slab.Surroundings + 15, slab.Surroundings);
        double resistance = 1 / film + slab.WallThickness / slab.Plastic.Conductivity + half / (3 * conductivity);
        double mass = half * (1 - slab.InfillShare) * slab.Resin.Density;
        return Share(CureRate.Of(slab.Resin with { GlassTransition = null }, slab.RateFactor), slab.Resin.Kinetics.HeatOfReaction * mass * resistance, slab.Surroundings);
    }
}
