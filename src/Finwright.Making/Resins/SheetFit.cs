using System.Globalization;
using Finwright.Making.Cure;
using Finwright.Numerics;

namespace Finwright.Making.Resins;

/// <summary>A data sheet's gel time of a thin layer or a small sample that keeps its temperature.</summary>
/// <param name="Seconds">How long, s.</param>
/// <param name="Temperature">K.</param>
public sealed record GelStatement(double Seconds, double Temperature);

/// <summary>What a data sheet says.</summary>
public sealed record SheetStatements
{
    /// <summary>Working times of a cup.</summary>
    public IReadOnlyList<PotLifeStatement> PotLives { get; init; } = [];

    /// <summary>Gel times of thin layers.</summary>
    public IReadOnlyList<GelStatement> GelTimes { get; init; } = [];

    /// <summary>Highest temperature of the first working time's cup, K; null when it is not told.</summary>
    public double? CupPeak { get; init; }

    /// <summary>Diameter of the cups, metres; a usual one when the sheet does not say (judgement).</summary>
    public double CupDiameter { get; init; } = 0.07;
}

/// <summary>How a fit to a data sheet ended.</summary>
public enum SheetFitStatus
{
    /// <summary>Fitted.</summary>
    Fitted,

    /// <summary>The sheet says nothing that can be used.</summary>
    NothingTold,

    /// <summary>The statements contradict one another, or ask for a resin unlike any: rate beyond a factor of a thousand, activation changed by more than 30 kJ/mol, heat outside 200 to 650 kJ/kg.</summary>
    Implausible,
}

/// <summary>What a data sheet told.</summary>
/// <param name="Status">How the fit ended.</param>
/// <param name="RateFactor">Rates at <paramref name="AtTemperature"/> over those of the reference.</param>
/// <param name="AtTemperature">Mean temperature of the statements, K.</param>
/// <param name="ActivationChange">Added to both activation energies, J/mol; 0 when one temperature is told.</param>
/// <param name="HeatOfReaction">J/kg.</param>
/// <param name="Remarks">What rests on what.</param>
/// <param name="Resin">The resin with what was found; the reference itself when nothing was.</param>
public sealed record SheetFitResult(SheetFitStatus Status, Ranged RateFactor, double AtTemperature, double ActivationChange, double HeatOfReaction, IReadOnlyList<string> Remarks, ResinSystem Resin);

/// <summary>A reference resin's rate scaled so that it does what a data sheet says.</summary>
/// <remarks>
/// Each statement gives the factor on the rate with which the reference meets it; one temperature gives one factor, two that lie 5 K or more apart change the activation energies as well.
/// Pot life has no common definition: the sheet may mean twice the viscosity or the gelled cup, and the range of the factor spans both and 20 % beside. The shape of the reaction stays that of the
/// reference. A cup test of one's own says more.
/// </remarks>
public static class SheetFit
{
    private const double LeastApart = 5, MostActivation = 30e3, LeastHeat = 200e3, MostHeat = 650e3, Beside = 1.2;
    private const double MostFactor = 1e3;

    /// <summary>Fits a reference resin to a data sheet.</summary>
    /// <param name="reference">A resin of the same kind.</param>
    /// <param name="sheet">What the sheet says.</param>
    /// <param name="cancellation">Stops it.</param>
    public static SheetFitResult Solve(ResinSystem reference, SheetStatements sheet, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(reference);
        ArgumentNullException.ThrowIfNull(sheet);
        Require.Positive(sheet.CupDiameter);
        foreach (PotLifeStatement pot in sheet.PotLives)
        {
            Require.Positive(pot.Seconds, nameof(sheet));
            Require.Positive(pot.Mass, nameof(sheet));
            Require.Between(pot.Temperature, 250, 400, nameof(sheet));
        }

        foreach (GelStatement gel in sheet.GelTimes)
        {
            Require.Positive(gel.Seconds, nameof(sheet));
            Require.Between(gel.Temperature, 250, 450, nameof(sheet));
        }

        double[] temperatures = Temperatures(sheet);
        double heatBefore = reference.Kinetics.HeatOfReaction;
        if (temperatures.Length == 0)
            return new(SheetFitStatus.NothingTold, new(1, 0.5, 2), 298.15, 0, heatBefore, ["The sheet gives neither a pot life nor a gel time."], reference);
        double mean = temperatures.Average();
        bool isTwo = IsTwo(temperatures);
        double heat = heatBefore;
        RateFit? found = FitRate(reference, sheet, heat, cancellation);
        if (sheet.CupPeak is double peak && sheet.PotLives.Count > 0)
        {
            // More heat, a warmer cup: by halving, the rate found anew each time so that the working times stay as told. Seven halvings leave 4 kJ/kg, 1 to 2 K of the peak.
            double least = LeastHeat, most = MostHeat;
            for (int i = 0; i < 7; i++)
            {
                heat = (least + most) / 2;
                found = FitRate(reference, sheet, heat, cancellation);
                if (found is null)
                    break;
                if (Cup(found.Resin, sheet.PotLives[0], sheet.CupDiameter, CupMeaning.Usual, cancellation).Peak.Temperature < peak)
                    least = heat;
                else
                    most = heat;
            }

            if (found is not null && (heat < LeastHeat + 5e3 || heat > MostHeat - 5e3))
                return Implausible(reference, mean, string.Create(CultureInfo.InvariantCulture, $"The peak of the cup asks for a heat of reaction outside {LeastHeat / 1e3:F0} to {MostHeat / 1e3:F0} kJ/kg: look again at mass and temperature."));
        }

        if (found is null)
            return Implausible(reference, mean, "The statements ask for a resin unlike the reference: a rate beyond a thousand times, or one that changes with temperature quite otherwise. Look again at masses, temperatures and units.");
        (ResinSystem resin, double rate, double activation) = found;
        double low = rate, high = rate;
        foreach (CupMeaning meaning in new[] { CupMeaning.Thick, CupMeaning.Gelled })
        {
            double[] factors = Factors(resin, sheet, meaning, cancellation);
            foreach (double factor in factors.Where(double.IsFinite))
                (low, high) = (Math.Min(low, rate + factor), Math.Max(high, rate + factor));
        }

        List<string> remarks = [];
        if (sheet.PotLives.Count > 0)
            remarks.Add("Pot life has no common definition: the range spans a mix twice as thick and a gelled cup.");
        if (!isTwo)
            remarks.Add("One temperature is told: how the rate changes with temperature is that of the reference.");
        return new(SheetFitStatus.Fitted, new(Math.Exp(rate), Math.Exp(low) / Beside, Math.Exp(high) * Beside), mean, activation, heat, remarks, resin);
    }

    private sealed record RateFit(ResinSystem Resin, double Rate, double Activation);

    private static double[] Temperatures(SheetStatements sheet) => [.. sheet.PotLives.Select(pot => pot.Temperature), .. sheet.GelTimes.Select(gel => gel.Temperature)];

    private static bool IsTwo(double[] temperatures) => temperatures.Max() - temperatures.Min() >= LeastApart;

    /// <summary>Rate and activation with which a resin of a given heat meets the times; null when none does. A cup warms, so that its mean temperature is not the stated one: some rounds.</summary>
    private static RateFit? FitRate(ResinSystem reference, SheetStatements sheet, double heat, CancellationToken cancellation)
    {
        const int Rounds = 8;
        double[] temperatures = Temperatures(sheet);
        double mean = temperatures.Average(), rate = 0, activation = 0;
        bool isTwo = IsTwo(temperatures);
        ResinSystem resin = Changed(reference, 0, 0, mean, heat);
        for (int round = 0; round < Rounds; round++)
        {
            double[] factors = Factors(resin, sheet, CupMeaning.Usual, cancellation);
            if (Array.Exists(factors, factor => !double.IsFinite(factor)))
                return null;
            (double change, double slope) = Line(temperatures, factors, mean, isTwo);
            rate += change;
            activation += slope;
            if (Math.Abs(activation) > MostActivation || Math.Abs(rate) > Math.Log(MostFactor))
                return null;
            resin = Changed(reference, rate, activation, mean, heat);
            // A thousandth of the time, and of the change by temperature.
            if (Math.Abs(change) < 1e-3 && Math.Abs(slope) < 30)
                break;
        }

        return new(resin, rate, activation);
    }

    private enum CupMeaning
    {
        Usual,
        Thick,
        Gelled,
    }

    private static SheetFitResult Implausible(ResinSystem reference, double mean, string remark) =>
        new(SheetFitStatus.Implausible, new(1, 0.5, 2), mean, 0, reference.Kinetics.HeatOfReaction, [remark], reference);

    private static ResinSystem Changed(ResinSystem reference, double rate, double activation, double mean, double heat)
    {
        CureKinetics k = reference.Kinetics;
        double factor = Math.Exp(rate + activation / (CureRate.GasConstant * mean));
        return reference with { Kinetics = k with { Rate1 = factor * k.Rate1, Activation1 = k.Activation1 + activation, Rate2 = factor * k.Rate2, Activation2 = k.Activation2 + activation, HeatOfReaction = heat } };
    }

    /// <summary>Logarithms of the factors as a line over 1/T: value at the mean temperature, and change of activation energy.</summary>
    private static (double Value, double Activation) Line(double[] temperatures, double[] factors, double mean, bool isTwo)
    {
        double n = factors.Length, sx = 0, sy = 0, sxx = 0, sxy = 0;
        for (int i = 0; i < factors.Length; i++)
        {
            double x = 1 / temperatures[i] - 1 / mean;
            sx += x;
            sy += factors[i];
            sxx += x * x;
            sxy += x * factors[i];
        }

        if (!isTwo)
            return (sy / n, 0);
        double slope = (n * sxy - sx * sy) / (n * sxx - sx * sx);
        return ((sy - slope * sx) / n, -slope * CureRate.GasConstant);
    }

    private static double[] Factors(ResinSystem resin, SheetStatements sheet, CupMeaning meaning, CancellationToken cancellation)
    {
        double[] factors = new double[sheet.PotLives.Count + sheet.GelTimes.Count];
        for (int i = 0; i < sheet.PotLives.Count; i++)
        {
            PotLifeStatement pot = sheet.PotLives[i];
            factors[i] = Solve(factor => Life(Cup(Scaled(resin, factor), pot, sheet.CupDiameter, meaning, cancellation), meaning), pot.Seconds);
        }

        for (int i = 0; i < sheet.GelTimes.Count; i++)
        {
            // At one temperature time goes with the inverse of the rate.
            GelStatement gel = sheet.GelTimes[i];
            factors[sheet.PotLives.Count + i] = Math.Log(GelTime(resin, gel.Temperature) / gel.Seconds);
        }

        return factors;
    }

    /// <summary>Gel time of a sample that keeps its temperature, s; infinite when it turns to glass before.</summary>
    /// <param name="resin">The resin.</param>
    /// <param name="temperature">K.</param>
    public static double GelTime(ResinSystem resin, double temperature)
    {
        ArgumentNullException.ThrowIfNull(resin);
        Require.Between(temperature, 250, 450);
        CureRate rate = CureRate.Of(resin);
        double from = resin.Kinetics.InitialConversion, to = resin.Kinetics.GelConversion, time = 0;
        if (from >= to)
            return 0;
        // dt = dα / rate, Simpson's rule in √α: α^m has no slope at 0.
        const int Parts = 400;
        double a = Math.Sqrt(from), width = (Math.Sqrt(to) - a) / Parts;
        for (int i = 0; i <= Parts; i++)
        {
            double s = a + i * width, weight = i is 0 or Parts ? 1 : i % 2 == 1 ? 4 : 2, r = rate.At(temperature, s * s);
            if (!(r > 0))
                return double.PositiveInfinity;
            time += weight * width / 3 * 2 * s / r;
        }

        return time;
    }

    private static ResinSystem Scaled(ResinSystem resin, double factor) =>
        resin with { Kinetics = resin.Kinetics with { Rate1 = Math.Exp(factor) * resin.Kinetics.Rate1, Rate2 = Math.Exp(factor) * resin.Kinetics.Rate2 } };

    private static CupRun Cup(ResinSystem resin, PotLifeStatement pot, double diameter, CupMeaning meaning, CancellationToken cancellation) => CupModel.Solve(new()
    {
        Resin = resin,
        Mass = pot.Mass,
        Diameter = diameter,
        StartTemperature = pot.Temperature,
        RoomTemperature = pot.Temperature,
        Duration = Math.Max(24 * 3600, 4 * pot.Seconds),
        TemperatureRise = meaning == CupMeaning.Usual ? 30 : 1000,
    }, cancellation);

    private static double Life(CupRun cup, CupMeaning meaning) => meaning == CupMeaning.Gelled ? cup.Gel : cup.PotLife;

    /// <summary>Logarithm of the factor with which a time that falls with the rate equals a stated one; not a number when none does.</summary>
    private static double Solve(Func<double, double> time, double stated)
    {
        double most = Math.Log(MostFactor), low = -most, high = most;
        if (time(low) < stated || time(high) > stated)
            return double.NaN;
        while (high - low > 1e-5)
        {
            double middle = (low + high) / 2;
            if (time(middle) > stated)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }
}
