namespace Finwright.Making.Cure;

/// <summary>Ends of the range that every cure is told with.</summary>
/// <remarks>
/// Rates are known to a factor of two (data sheets, age, mixing, kinetics carried down from warm tests), coefficients of still air and water to 30 %: judgement. A thin slab in still air can stand
/// so near to running away that one number would be a lie.
/// </remarks>
public static class CureBand
{
    /// <summary>Rate over the nominal one at the cool end.</summary>
    public const double SlowRate = 0.5;

    /// <summary>Rate over the nominal one at the warm end.</summary>
    public const double FastRate = 2;

    /// <summary>Coefficient over the nominal one at the cool end.</summary>
    public const double WellCooled = 1 + SurfaceCooling.RelativeRange;

    /// <summary>Coefficient over the nominal one at the warm end.</summary>
    public const double BadlyCooled = 1 - SurfaceCooling.RelativeRange;

    /// <summary>Change of the peak with the logarithm of cooling or rate above which a cure counts as near critical, K.</summary>
    /// <remarks>
    /// Without feedback a rise of ΔT changes by ΔT itself: a part that stays below softening rises by 20 to 40 K at most, so that 30 K marks a rise that feeds itself (judgement). In other words:
    /// 5 % more or less cooling moves the peak by more than 1.5 K each way.
    /// </remarks>
    public const double CriticalSensitivity = 30;

    /// <summary>Change of rate and cooling by which sensitivity is found.</summary>
    public const double SmallChange = 0.05;

    /// <summary>Follows a slab at both ends and in the middle of its range.</summary>
    /// <param name="slab">The nominal case.</param>
    /// <param name="cancellation">Stops it.</param>
    public static SlabBand Of(SlabCase slab, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(slab);
        slab.Check();
        (double Rate, double Cooling)[] factors = [(SlowRate, WellCooled), (1, 1), (FastRate, BadlyCooled), (1, 1 + SmallChange), (1, 1 - SmallChange), (1 + SmallChange, 1), (1 - SmallChange, 1)];
        SlabCure[] cures = new SlabCure[factors.Length];
        Parallel.For(0, factors.Length, new ParallelOptions { CancellationToken = cancellation }, i =>
            cures[i] = CureSlab.Solve(slab with { RateFactor = slab.RateFactor * factors[i].Rate, CoolingFactor = slab.CoolingFactor * factors[i].Cooling }, cancellation));
        double sensitivity = Math.Max(
            Math.Abs(cures[3].Centre.Temperature - cures[4].Centre.Temperature),
            Math.Abs(cures[5].Centre.Temperature - cures[6].Centre.Temperature)) / (2 * SmallChange);
        return new(cures[0], cures[1], cures[2], sensitivity, Ignition.OfSlab(slab));
    }
}

/// <summary>A slab's cure with its range.</summary>
/// <param name="Slow">Slow resin, well cooled.</param>
/// <param name="Nominal">As told.</param>
/// <param name="Fast">Fast resin, badly cooled.</param>
/// <param name="Sensitivity">Change of the nominal peak with the logarithm of rate or cooling, the greater of both, K.</param>
/// <param name="IgnitionShare">Heat that the nominal slab can make over the heat at which it would run away: see <see cref="Ignition"/>.</param>
public sealed record SlabBand(SlabCure Slow, SlabCure Nominal, SlabCure Fast, double Sensitivity, double IgnitionShare)
{
    /// <summary>True when a little less cooling or a little more rate changes the peak by much.</summary>
    public bool IsNearCritical => Sensitivity > CureBand.CriticalSensitivity || IgnitionShare is > Ignition.BandLow and < Ignition.BandHigh;
}
