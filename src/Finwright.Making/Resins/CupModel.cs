using Finwright.Making.Cure;
using Finwright.Numerics;

namespace Finwright.Making.Resins;

/// <summary>Resin mixed in a cup. SI, K.</summary>
public sealed record CupCase
{
    /// <summary>The resin.</summary>
    public required ResinSystem Resin { get; init; }

    /// <summary>Mass of the mix, kg.</summary>
    public required double Mass { get; init; }

    /// <summary>Inner diameter of the cup, metres.</summary>
    public required double Diameter { get; init; }

    /// <summary>Temperature of the mix at the beginning, K.</summary>
    public required double StartTemperature { get; init; }

    /// <summary>Temperature of the room, K.</summary>
    public required double RoomTemperature { get; init; }

    /// <summary>Coefficient from the resin to the room over the whole surface, the cup's wall included; null for <see cref="CupModel.UsualCoefficient"/>.</summary>
    public SurfaceCooling? Cooling { get; init; }

    /// <summary>How long it is followed, s.</summary>
    public double Duration { get; init; } = 24 * 3600;

    /// <summary>Viscosity over that of the fresh mix at which the pot life ends.</summary>
    public double ViscosityMultiple { get; init; } = 2;

    /// <summary>Rise above the beginning at which the pot life ends at the latest, K.</summary>
    public double TemperatureRise { get; init; } = 30;
}

/// <summary>One moment of a cup.</summary>
/// <param name="Time">s.</param>
/// <param name="Temperature">K.</param>
/// <param name="Conversion">α.</param>
public readonly record struct CupMoment(double Time, double Temperature, double Conversion);

/// <summary>What a cup does.</summary>
/// <param name="Status">Whether it was followed to the end.</param>
/// <param name="Peak">Highest temperature.</param>
/// <param name="PotLife">End of the working time, s; infinite when it does not end in the time looked at. See <see cref="CupModel"/>.</param>
/// <param name="Gel">When it no longer flows, s; infinite when it still does.</param>
/// <param name="History">Moments from beginning to end.</param>
public sealed record CupRun(CureStatus Status, CurePeak Peak, double PotLife, double Gel, IReadOnlyList<CupMoment> History)
{
    /// <summary>Temperature at a time, K, between moments by a straight line.</summary>
    /// <param name="seconds">s, within the history.</param>
    public double TemperatureAt(double seconds)
    {
        Require.Between(seconds, History[0].Time, History[^1].Time);
        int low = 0, high = History.Count - 1;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            if (History[middle].Time <= seconds)
                low = middle;
            else
                high = middle;
        }

        CupMoment a = History[low], b = History[high];
        return b.Time > a.Time ? a.Temperature + (b.Temperature - a.Temperature) * (seconds - a.Time) / (b.Time - a.Time) : b.Temperature;
    }
}

/// <summary>Resin in a cup, or standing in a tube or funnel on a port: one temperature for all of it.</summary>
/// <remarks>
/// <para>m c dT/dt = m H dα/dt − h A (T − room). A: bottom, side and top of a cylinder of the resin's volume. Limits: resin conducts badly, so that the middle of a cup that runs away is
/// warmer than told and its rim cooler; a foamed or insulating cup sheds less.</para>
/// <para>Pot life has no common definition. Here it ends when the mix is twice as thick as when it was fresh (common practice, no source; the multiple is the caller's), when it has
/// warmed by a stated rise, or when it gels, whichever comes first. The fresh mix is first thinned by its own warmth.</para>
/// </remarks>
public static class CupModel
{
    /// <summary>Coefficient of a cup in still air, W/(m² K): film and radiation some 9, less the wall of the cup and the bench under it (judgement, range ±40 %).</summary>
    public const double UsualCoefficient = 8;

    /// <summary>Area through which resin in a cup sheds heat, m².</summary>
    /// <param name="mass">kg.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="diameter">Metres.</param>
    public static double Area(double mass, double density, double diameter)
    {
        Require.Positive(mass);
        Require.Positive(density);
        Require.Positive(diameter);
        double end = Math.PI * diameter * diameter / 4;
        return 2 * end + 4 * mass / (density * diameter);
    }

    /// <summary>Follows a cup.</summary>
    /// <param name="cup">The case.</param>
    /// <param name="cancellation">Stops it.</param>
    public static CupRun Solve(CupCase cup, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(cup);
        ResinSystem resin = cup.Resin;
        Require.Between(cup.StartTemperature, 200, 500);
        Require.Between(cup.RoomTemperature, 200, 500);
        Require.Positive(cup.Duration);
        Require.AtLeast(cup.ViscosityMultiple, 1);
        Require.Positive(cup.TemperatureRise);
        CureCells cells = new(1, 1);
        cells.Capacity[0] = cup.Mass * Require.Positive(resin.HeatCapacity);
        cells.ResinMass[0] = cup.Mass;
        double area = Area(cup.Mass, resin.Density, cup.Diameter);
        cells.SurfaceArea[0] = area;
        // The resin's own resistance is left out: a conductance a million times that of the film.
        cells.SurfaceConductance[0] = 1e7 * area;
        CureSolver solver = new(cells, CureRate.Of(resin), resin.Kinetics.HeatOfReaction, [new(cup.Cooling ?? SurfaceCooling.Fixed(UsualCoefficient), cup.RoomTemperature, 1)], cup.StartTemperature, resin.Kinetics.InitialConversion, new(0.01, 5e-5, 120));
        PeakTrack peak = new();
        PassTimes gel = new(1, resin.Kinetics.GelConversion, resin.Kinetics.InitialConversion);
        List<CupMoment> history = [];
        double fresh = Viscosity(resin, cup.StartTemperature, resin.Kinetics.InitialConversion), potLife = double.PositiveInfinity;
        CureStatus status = solver.Advance(cup.Duration, () =>
        {
            double time = solver.Time, t = solver.Temperature[0], a = solver.Conversion[0];
            peak.Take(time, t, solver.TemperatureRate[0]);
            gel.Take(time, solver.Conversion, solver.ConversionRate);
            bool isOver = IsOver(cup, fresh, t, a);
            if (double.IsPositiveInfinity(potLife) && isOver)
                potLife = history.Count > 0 ? Ending(cup, fresh, history[^1], new(time, t, a)) : 0;
            history.Add(new(time, t, a));
        }, cancellation);
        return new(status, new(peak.Value, peak.Time), Math.Min(potLife, gel.Times[0]), gel.Times[0], history);
    }

    /// <summary>Viscosity over the reference viscosity; 0 when the resin does not tell how it thickens, infinite past gel.</summary>
    private static double Viscosity(ResinSystem resin, double temperature, double conversion)
    {
        if (resin.Viscosity is not { } v)
            return 0;
        double gel = resin.Kinetics.GelConversion;
        if (conversion >= gel)
            return double.PositiveInfinity;
        double fresh = Math.Exp(v.Activation / CureRate.GasConstant * (1 / temperature - 1 / v.ReferenceTemperature));
        return fresh * Math.Pow(gel / (gel - conversion), v.ExponentA + v.ExponentB * conversion);
    }

    private static bool IsOver(CupCase cup, double fresh, double temperature, double conversion) =>
        temperature - cup.StartTemperature >= cup.TemperatureRise || fresh > 0 && Viscosity(cup.Resin, temperature, conversion) >= cup.ViscosityMultiple * fresh;

    private static double Ending(CupCase cup, double fresh, CupMoment from, CupMoment to)
    {
        double low = 0, high = 1;
        for (int i = 0; i < 40; i++)
        {
            double x = (low + high) / 2, t = from.Temperature + x * (to.Temperature - from.Temperature), a = from.Conversion + x * (to.Conversion - from.Conversion);
            if (IsOver(cup, fresh, t, a))
                high = x;
            else
                low = x;
        }

        return from.Time + high * (to.Time - from.Time);
    }
}
