using Finwright.Numerics;

namespace Finwright.Making.Pores;

/// <summary>How the filling of a part ended.</summary>
public enum FillStatus
{
    /// <summary>The resin reached the top.</summary>
    Filled,

    /// <summary>It grew too thick before it reached the top.</summary>
    Stalled,

    /// <summary>The pressure cannot lift it to the top, however long one waits.</summary>
    TooLittlePressure,
}

/// <summary>A round bore that the resin passes before it enters the part: a tube, a nozzle, the hole through the wall.</summary>
/// <param name="Diameter">Diameter, metres.</param>
/// <param name="Length">Length, metres.</param>
public sealed record FeedBore(double Diameter, double Length)
{
    /// <summary>Resistance over viscosity, 1/m³: 128 L / (π d⁴) (Poiseuille).</summary>
    public double Resistance => 128 * Require.NotNegative(Length) / (Math.PI * Math.Pow(Require.Positive(Diameter), 4));
}

/// <summary>What drives and what resists the filling of a part from its lowest point.</summary>
public sealed record FillConditions
{
    /// <summary>The core as a column in the attitude of the pour.</summary>
    public required PoreColumn Column { get; init; }

    /// <summary>Share of the core that is open, 0 to 1.</summary>
    public required double OpenShare { get; init; }

    /// <summary>Permeability of the core, m².</summary>
    public required double Permeability { get; init; }

    /// <summary>Density of the resin, kg/m³.</summary>
    public required double Density { get; init; }

    /// <summary>Pressure at the column's bottom before the bores and with no resin above it, Pa: of a hand on the syringe, or of a reservoir's head (ρ g h).</summary>
    public required double Pressure { get; init; }

    /// <summary>Viscosity over the seconds since the pour began, Pa s; infinity once it no longer flows.</summary>
    public required Func<double, double> Viscosity { get; init; }

    /// <summary>When to give up, s: as a rule the time of gelling.</summary>
    public required double TimeLimit { get; init; }

    /// <summary>The bores in the resin's way, one behind the other; none when empty.</summary>
    public IReadOnlyList<FeedBore> Bores { get; init; } = [];
}

/// <summary>How a part fills.</summary>
/// <param name="Status">How it ended.</param>
/// <param name="Time">When the resin reached the top, s; null unless it did.</param>
/// <param name="Level">Highest level reached above the bottom, metres.</param>
/// <param name="FilledVolume">Pore volume filled, m³.</param>
/// <param name="Times">Times of the slabs' tops that were reached, s; rising.</param>
/// <param name="Levels">Levels at these times, metres above the bottom.</param>
/// <param name="GreatestFlow">Greatest flow, m³/s; that at the start without bores is not counted, being unbounded.</param>
/// <param name="ReynoldsNumber">Greatest Reynolds number in the bores; Poiseuille's law holds below about 2000. 0 without bores.</param>
public sealed record FillResult(
    FillStatus Status, double? Time, double Level, double FilledVolume, IReadOnlyList<double> Times, IReadOnlyList<double> Levels, double GreatestFlow, double ReynoldsNumber);

/// <summary>Filling of the pores from below, as slow flow through a porous body (Darcy): a level that rises as fast as the pores let it.</summary>
/// <remarks>
/// The level is taken as flat and the flow as straight up. Both labyrinths are fed. It is how long the pores need at least; a person's hand and the bores
/// are often slower. Without bores the first moment is unbounded, as in the closed forms.
/// </remarks>
public static class DarcyFill
{
    /// <summary>Standard gravity, m/s².</summary>
    public const double Gravity = 9.80665;

    // Steps of the integral of 1/μ over time, close together at the start where filling happens: with Simpson's rule a fill in a thousandth of the limit still has 200 of them.
    private const int TimeSteps = 2000;

    // Gauss points in a slab: the integrand is smooth in it but for the slab in which the head is used up, where no more points would help.
    private static readonly double[] Places = [0.5 - Math.Sqrt(0.15), 0.5, 0.5 + Math.Sqrt(0.15)];
    private static readonly double[] Weights = [5.0 / 18, 8.0 / 18, 5.0 / 18];

    /// <summary>Pressure of a reservoir, Pa.</summary>
    /// <param name="density">Density of the resin, kg/m³.</param>
    /// <param name="head">Height of its surface above the inlet, metres.</param>
    public static double HeadPressure(double density, double head) => Require.Positive(density) * Gravity * Require.NotNegative(head);

    /// <summary>Fills a column of changing area with resin that thickens.</summary>
    /// <remarks>
    /// All resin has the same age, so the flow is (p − ρ g z) / (μ(t) r(z)) with r the resistance over viscosity of bores and filled core, and time and
    /// level part: ∫ dt/μ = ∫ φ A r dz / (p − ρ g z). Both sides are summed once; the level stalls where the left side ends.
    /// </remarks>
    public static FillResult Solve(FillConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        PoreColumn column = conditions.Column;
        double open = Require.Between(conditions.OpenShare, 0, 1), permeability = Require.Positive(conditions.Permeability);
        double weight = Require.Positive(conditions.Density) * Gravity, pressure = Require.Positive(conditions.Pressure);
        Require.Positive(column.SlabHeight);
        (double[] time, double[] fluidity) = Fluidity(conditions);
        double bores = conditions.Bores.Sum(bore => bore.Resistance), resistance = bores;
        List<double> times = [], levels = [];
        double used = 0, volume = 0, level = 0, greatest = bores > 0 ? pressure / (bores * conditions.Viscosity(0)) : 0, last = 0;
        FillStatus status = FillStatus.Filled;
        int step = 0;
        for (int slab = 0; slab < column.CoreArea.Count; slab++)
        {
            double area = Require.Positive(column.CoreArea[slab]), bottom = slab * column.SlabHeight, top = bottom + column.SlabHeight;
            bool reaches = pressure > weight * top;
            // Where the pressure gives out within the slab, the level nears that height without end: it is not counted as reached.
            double need = reaches ? Need(bottom, column.SlabHeight, area, resistance) : double.PositiveInfinity;
            double available = fluidity[^1] - used;
            if (!(need <= available))
            {
                status = reaches ? FillStatus.Stalled : FillStatus.TooLittlePressure;
                double part = Within(bottom, Math.Min(column.SlabHeight, Math.Max(0, pressure / weight - bottom)), area, resistance, available);
                level = bottom + part;
                volume += open * area * part;
                break;
            }

            used += need;
            resistance += column.SlabHeight / (permeability * area);
            volume += open * area * column.SlabHeight;
            level = top;
            double now = TimeOf(used, time, fluidity, ref step);
            times.Add(now);
            levels.Add(top);
            if (now > last)
                greatest = Math.Max(greatest, open * area * column.SlabHeight / (now - last));
            last = now;
        }

        double reynolds = 0, fresh = conditions.Viscosity(0);
        foreach (FeedBore bore in conditions.Bores)
            reynolds = Math.Max(reynolds, 4 * conditions.Density * pressure / (bores * fresh) / (Math.PI * bore.Diameter * fresh));
        return new(status, status is FillStatus.Filled ? last : null, level, volume, times, levels, greatest, reynolds);

        double Need(double bottom, double height, double area, double before)
        {
            double sum = 0;
            for (int i = 0; i < Places.Length; i++)
            {
                double z = Places[i] * height;
                sum += Weights[i] * (before + z / (permeability * area)) / (pressure - weight * (bottom + z));
            }

            return sum * open * area * height;
        }

        double Within(double bottom, double height, double area, double before, double available)
        {
            double low = 0, high = height;
            for (int i = 0; i < 60; i++)
            {
                double middle = (low + high) / 2;
                if (Need(bottom, middle, area, before) <= available)
                    low = middle;
                else
                    high = middle;
            }

            return low;
        }
    }

    /// <summary>∫ dt/μ from the start, at times that lie close at the start.</summary>
    private static (double[] Time, double[] Fluidity) Fluidity(FillConditions conditions)
    {
        double limit = Require.Positive(conditions.TimeLimit);
        double[] time = new double[TimeSteps + 1], sum = new double[TimeSteps + 1];
        double before = Inverse(0);
        for (int i = 1; i <= TimeSteps; i++)
        {
            time[i] = limit * Math.Pow((double)i / TimeSteps, 3);
            double step = time[i] - time[i - 1], here = Inverse(time[i]);
            sum[i] = sum[i - 1] + step / 6 * (before + 4 * Inverse(time[i] - step / 2) + here);
            before = here;
        }

        return (time, sum);

        double Inverse(double t)
        {
            double viscosity = conditions.Viscosity(t);
            return double.IsPositiveInfinity(viscosity) ? 0
                : viscosity > 0 ? 1 / viscosity
                : throw new ArgumentException($"The viscosity at {t} s is {viscosity}; it must be above zero.", nameof(conditions));
        }
    }

    private static double TimeOf(double fluidity, double[] time, double[] sum, ref int step)
    {
        while (step < TimeSteps - 1 && sum[step + 1] < fluidity)
            step++;
        double range = sum[step + 1] - sum[step];
        return range > 0 ? time[step] + (time[step + 1] - time[step]) * Math.Clamp((fluidity - sum[step]) / range, 0, 1) : time[step];
    }
}
