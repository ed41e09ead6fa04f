using Finwright.Making.Resins;
using Finwright.Numerics;

namespace Finwright.Making.Pores;

/// <summary>What one cup takes.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Volume">Volume to pour from it, m³.</param>
/// <param name="Mass">Mass of the mix, with what will stay in the cup, kg.</param>
/// <param name="ResinMass">Resin, kg; null when the ratio is not known.</param>
/// <param name="HardenerMass">Hardener, kg; null when the ratio is not known.</param>
/// <param name="ResinVolume">Resin, m³; null when its ratio or density is not known.</param>
/// <param name="HardenerVolume">Hardener, m³; null when its ratio or density is not known.</param>
/// <param name="PouringTime">Time to pour it by hand, s.</param>
public sealed record Batch(int Number, Ranged Volume, Ranged Mass, Ranged? ResinMass, Ranged? HardenerMass, Ranged? ResinVolume, Ranged? HardenerVolume, double PouringTime);

/// <summary>What limits the size of a batch.</summary>
public enum BatchLimit
{
    /// <summary>The cup.</summary>
    Cup,

    /// <summary>The mass for which the data sheet states its working time; a larger cup heats itself faster.</summary>
    StatedMass,

    /// <summary>What a hand can pour within the working time.</summary>
    PotLife,
}

/// <summary>How the resin is mixed, cup by cup.</summary>
/// <param name="Batches">The cups, all alike.</param>
/// <param name="PotLife">Working time at the temperature of the pour, s; null when the data sheet says nothing, or says it for a temperature too far off.</param>
/// <param name="Limit">What limits a batch.</param>
public sealed record BatchPlan(IReadOnlyList<Batch> Batches, double? PotLife, BatchLimit Limit)
{
    /// <summary>Share of the working time in which a batch should be poured: it thickens well before it is over (judgement).</summary>
    public const double UsableShare = 0.5;

    /// <summary>Volume that stays on the wall of a cup, m³: 3 ml (judgement).</summary>
    public const double LeftInCup = 3e-6;

    /// <summary>Flow by a hand on a syringe, m³/s: 50 ml in two minutes (judgement).</summary>
    public const double HandFlow = 50e-6 / 120;

    // Farther from the stated temperature the rule of halves is no longer trusted (judgement).
    private const double FarthestKelvin = 15;

    /// <summary>Working time at another temperature, s: halves for every 10 K more.</summary>
    /// <param name="statement">What the data sheet says.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <returns>Null farther than 15 K from the stated temperature.</returns>
    /// <remarks>R. Barnard, "Controlling exotherm" (an article for builders; pot life halves for each 18 °F). For the stated mass in the stated shape of cup only.</remarks>
    public static double? PotLifeAt(PotLifeStatement statement, double temperature)
    {
        ArgumentNullException.ThrowIfNull(statement);
        double difference = Require.Positive(temperature) - Require.Positive(statement.Temperature);
        return Math.Abs(difference) > FarthestKelvin ? null : Require.Positive(statement.Seconds) * Math.Pow(2, -difference / 10);
    }

    /// <summary>Splits what is needed into cups.</summary>
    /// <param name="total">Volume to pour, m³.</param>
    /// <param name="resin">The resin.</param>
    /// <param name="cupMass">Most mix in a cup, kg.</param>
    /// <param name="temperature">Temperature of the resin when it is mixed, K.</param>
    /// <param name="flow">How fast it is poured, m³/s.</param>
    /// <param name="leftInCup">Volume that stays in each cup, m³.</param>
    /// <exception cref="ArgumentOutOfRangeException">A cup holds no more than what stays in it.</exception>
    public static BatchPlan Of(Ranged total, ResinSystem resin, double cupMass, double temperature, double flow = HandFlow, double leftInCup = LeftInCup)
    {
        ArgumentNullException.ThrowIfNull(resin);
        Require.Positive(total.Value);
        Require.AtLeast(total.High, total.Value);
        Require.Between(total.Low, 0, total.Value);
        Require.Positive(flow);
        double density = Require.Positive(resin.Density);
        double? potLife = resin.PotLife is null ? null : PotLifeAt(resin.PotLife, temperature);
        double most = Require.Positive(cupMass) / density - Require.NotNegative(leftInCup);
        BatchLimit limit = BatchLimit.Cup;
        if (resin.PotLife is { } statement && statement.Mass < cupMass)
            (most, limit) = (statement.Mass / density - leftInCup, BatchLimit.StatedMass);
        Require.Positive(most, nameof(cupMass));
        if (potLife is { } seconds && flow * UsableShare * seconds < most)
            (most, limit) = (flow * UsableShare * seconds, BatchLimit.PotLife);
        // The upper end must fit too: a part that takes more than expected is not left half filled.
        int count = Math.Max(1, (int)Math.Ceiling(total.High / most * (1 - 1e-12)));
        Ranged volume = total.Times(1.0 / count);
        Ranged mass = new(density * (volume.Value + leftInCup), density * (volume.Low + leftInCup), density * (volume.High + leftInCup));
        Ranged? hardener = resin.HardenerByMass is { } ratio ? mass.Times(ratio / (1 + ratio)) : null;
        Ranged? resinMass = resin.HardenerByMass is { } r ? mass.Times(1 / (1 + r)) : null;
        Ranged? resinVolume = resin.ResinPartDensity is { } a ? resinMass?.Times(1 / a) : null;
        Ranged? hardenerVolume = resin.HardenerPartDensity is { } b ? hardener?.Times(1 / b) : null;
        Batch[] batches = new Batch[count];
        for (int i = 0; i < count; i++)
            batches[i] = new(i + 1, volume, mass, resinMass, hardener, resinVolume, hardenerVolume, volume.Value / flow);
        return new(batches, potLife, limit);
    }
}
