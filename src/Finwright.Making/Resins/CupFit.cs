using Finwright.Making.Cure;
using Finwright.Numerics;

namespace Finwright.Making.Resins;

/// <summary>How a fit to a cup ended.</summary>
public enum CupFitStatus
{
    /// <summary>Fitted.</summary>
    Fitted,

    /// <summary>Fewer than five readings, or all within ten minutes: nothing can be told.</summary>
    TooFewReadings,

    /// <summary>The cup hardly warmed: the resin was slow or the cup small, and only an upper end of its rate is told.</summary>
    HardlyWarm,

    /// <summary>No rate and cooling were found that follow the readings.</summary>
    NotConverged,
}

/// <summary>A reading beside what the fitted cup does.</summary>
/// <param name="Seconds">s.</param>
/// <param name="Measured">K.</param>
/// <param name="Computed">K.</param>
/// <param name="Deviation">What the reading may err, K.</param>
public readonly record struct CupResidual(double Seconds, double Measured, double Computed, double Deviation);

/// <summary>What a cup of resin told.</summary>
/// <param name="Status">How the fit ended.</param>
/// <param name="RateFactor">Both rates over those of the resin before.</param>
/// <param name="Coefficient">Of the cup, W/(m² K).</param>
/// <param name="HeatOfReaction">J/kg.</param>
/// <param name="Remarks">What cannot be told, or told apart, by these readings; empty when all is well.</param>
/// <param name="Residuals">Readings beside the fit.</param>
/// <param name="RootMeanSquare">Of the residuals, K.</param>
/// <param name="Resin">The resin with what was found.</param>
public sealed record CupFitResult(
    CupFitStatus Status, Ranged RateFactor, Ranged Coefficient, Ranged HeatOfReaction, IReadOnlyList<string> Remarks,
    IReadOnlyList<CupResidual> Residuals, double RootMeanSquare, ResinSystem Resin);

/// <summary>Rate, cooling and, when the readings tell it, heat of reaction from a cup of mixed resin.</summary>
/// <remarks>
/// <para>Weighted least squares on the logarithms, damped Gauss-Newton (D. W. Marquardt, 1963, from memory) from the best point of a coarse search, with what was known before as one more reading of each
/// unknown: the rate to a factor of two, the coefficient to 40 %, the heat to 15 % (judgement; one standard deviation). A reading errs by 1 K, and by what half a minute on the clock
/// makes of its slope (judgement). Ranges are two standard deviations, widened where the residuals are larger than that.</para>
/// <para>Limits: one temperature in the whole cup; activation energies and orders as before: a cup shows them too little. A rate found in a cup that ran away rests on those energies when it is carried
/// to room temperature.</para>
/// </remarks>
public static class CupFit
{
    private const double ReadingError = 1, ClockError = 30;
    private const int Unknowns = 3, MostIterations = 60;
    private const double LeastWarmth = 2;

    // Deviations of the logarithms before the test: rate, coefficient, heat.
    private static readonly double[] Before = [0.7, 0.4, 0.15];

    // More than this share of the doubt of before left: the readings do not tell it (judgement). Correlation beyond which two are not told apart (judgement).
    private const double DoubtThatCounts = 0.7, CorrelationThatCounts = 0.9;

    /// <summary>Fits a resin to a cup.</summary>
    /// <param name="reference">The resin as it was known before.</param>
    /// <param name="test">The cup.</param>
    /// <param name="cancellation">Stops it.</param>
    public static CupFitResult Solve(ResinSystem reference, CupTest test, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(reference);
        ArgumentNullException.ThrowIfNull(test);
        Require.Positive(test.Mass);
        Require.Positive(test.CupDiameter);
        Require.Between(test.RoomTemperature, 250, 350);
        double last = -1;
        foreach (CupReading reading in test.Readings)
        {
            Require.Between(reading.Temperature, 250, 700, nameof(test));
            if (!(reading.Seconds > last))
                throw new ArgumentException($"The reading at {reading.Seconds} s does not come after the one before it.", nameof(test));
            last = Require.NotNegative(reading.Seconds, nameof(test));
        }

        if (test.Readings.Count < 5 || last - test.Readings[0].Seconds < 600)
            return Failed(CupFitStatus.TooFewReadings, reference, "Five readings over more than ten minutes are the least; read every five minutes until the warmth has peaked.");
        return new Run(reference, test, cancellation).Solve();
    }

    private static CupFitResult Failed(CupFitStatus status, ResinSystem reference, string remark)
    {
        Ranged rate = new(1, Math.Exp(-2 * Before[0]), Math.Exp(2 * Before[0])), film = new(CupModel.UsualCoefficient, CupModel.UsualCoefficient * Math.Exp(-2 * Before[1]), CupModel.UsualCoefficient * Math.Exp(2 * Before[1]));
        double heat = reference.Kinetics.HeatOfReaction;
        return new(status, rate, film, new(heat, heat * Math.Exp(-2 * Before[2]), heat * Math.Exp(2 * Before[2])), [remark], [], 0, reference);
    }

    private sealed class Run
    {
        private readonly ResinSystem _reference;
        private readonly CupTest _test;
        private readonly CancellationToken _cancellation;
        private readonly double[] _deviations;
        private readonly int _m;

        public Run(ResinSystem reference, CupTest test, CancellationToken cancellation)
        {
            (_reference, _test, _cancellation, _m) = (reference, test, cancellation, test.Readings.Count);
            _deviations = new double[_m];
            for (int i = 0; i < _m; i++)
            {
                CupReading a = test.Readings[Math.Max(0, i - 1)], b = test.Readings[Math.Min(_m - 1, i + 1)];
                double slope = (b.Temperature - a.Temperature) / (b.Seconds - a.Seconds);
                _deviations[i] = Math.Sqrt(ReadingError * ReadingError + slope * slope * ClockError * ClockError);
            }
        }

        public CupFitResult Solve()
        {
            double[] u = Search(), jacobian = new double[_m * Unknowns], step = new double[Unknowns], trial = new double[Unknowns], right = new double[Unknowns], normal = new double[Unknowns * Unknowns];
            double[] residuals = Residuals(u);
            double sum = Sum(u, residuals), damping = 1e-3;
            DenseLu solver = new(Unknowns);
            bool isAtRest = false;
            for (int iteration = 0; iteration < MostIterations && !isAtRest; iteration++)
            {
                Linearise(u, jacobian);
                Normal(jacobian, normal);
                for (int i = 0; i < Unknowns; i++)
                {
                    right[i] = -u[i] / (Before[i] * Before[i]);
                    for (int k = 0; k < _m; k++)
                        right[i] += jacobian[k * Unknowns + i] * residuals[k];
                }

                bool isLower = false;
                for (int attempt = 0; attempt < 12 && !isLower; attempt++)
                {
                    double[] damped = [.. normal];
                    for (int i = 0; i < Unknowns; i++)
                        damped[i * Unknowns + i] *= 1 + damping;
                    if (!solver.Factor(damped))
                        return Failed(CupFitStatus.NotConverged, _reference, "The fit found no way forward.");
                    solver.Solve(right, step);
                    double largest = 0;
                    for (int i = 0; i < Unknowns; i++)
                    {
                        trial[i] = u[i] + step[i];
                        largest = Math.Max(largest, Math.Abs(step[i]) / Before[i]);
                    }

                    double[] there = Residuals(trial);
                    double sumThere = Sum(trial, there);
                    isAtRest = largest < 1e-5;
                    isLower = sumThere <= sum;
                    damping = isLower ? damping / 5 : damping * 4;
                    if (!isLower)
                    {
                        if (isAtRest)
                            break;
                        continue;
                    }

                    // A ten-thousandth of a deviation squared: no reading shows it.
                    isAtRest |= sum - sumThere < 1e-6 * (1 + sum);
                    (sum, residuals) = (sumThere, there);
                    trial.CopyTo(u, 0);
                }

                isAtRest |= !isLower;
            }

            Linearise(u, jacobian);
            Normal(jacobian, normal);
            if (!isAtRest || !solver.Factor(normal))
                return Failed(CupFitStatus.NotConverged, _reference, "The fit did not come to rest.");
            return Result(u, residuals, Covariance(solver));
        }

        private static double[] Covariance(DenseLu solver)
        {
            double[] covariance = new double[Unknowns * Unknowns], one = new double[Unknowns], column = new double[Unknowns];
            for (int i = 0; i < Unknowns; i++)
            {
                Array.Clear(one);
                one[i] = 1;
                solver.Solve(one, column);
                for (int j = 0; j < Unknowns; j++)
                    covariance[j * Unknowns + i] = column[j];
            }

            return covariance;
        }

        private CupFitResult Result(double[] u, double[] residuals, double[] covariance)
        {
            double squares = 0, kelvins = 0;
            CupResidual[] pairs = new CupResidual[_m];
            for (int k = 0; k < _m; k++)
            {
                double miss = residuals[k] * _deviations[k];
                squares += residuals[k] * residuals[k];
                kelvins += miss * miss;
                pairs[k] = new(_test.Readings[k].Seconds, _test.Readings[k].Temperature, _test.Readings[k].Temperature - miss, _deviations[k]);
            }

            double widen = Math.Sqrt(Math.Max(1, squares / Math.Max(1, _m - Unknowns)));
            string[] names = ["rate", "cooling of the cup", "heat of reaction"];
            List<string> remarks = [];
            double[] deviation = new double[Unknowns];
            for (int i = 0; i < Unknowns; i++)
            {
                double own = Math.Sqrt(Math.Max(0, covariance[i * Unknowns + i]));
                if (own > DoubtThatCounts * Before[i])
                    remarks.Add($"These readings do not tell the {names[i]}; it stays about as uncertain as before.");
                deviation[i] = Math.Min(own * widen, Before[i] * Math.Max(1, widen));
                for (int j = 0; j < i; j++)
                {
                    double correlation = covariance[i * Unknowns + j] / Math.Sqrt(covariance[i * Unknowns + i] * covariance[j * Unknowns + j]);
                    if (Math.Abs(correlation) > CorrelationThatCounts)
                        remarks.Add($"The {names[j]} and the {names[i]} cannot be told apart well: more of one with {(correlation > 0 ? "more" : "less")} of the other fits nearly as well. A second cup of another mass would part them.");
                }
            }

            if (widen > 2)
                remarks.Add("The cup differs from the model by more than thermometer and clock explain: hot middle, draught, or another kind of resin. Ranges are widened.");
            Ranged Told(int i, double of) => new(of * Math.Exp(u[i]), of * Math.Exp(u[i] - 2 * deviation[i]), of * Math.Exp(u[i] + 2 * deviation[i]));
            Ranged rate = Told(0, 1), film = Told(1, CupModel.UsualCoefficient), heat = Told(2, _reference.Kinetics.HeatOfReaction);
            double warmest = _test.Readings.Max(reading => reading.Temperature), from = Math.Max(_test.Readings[0].Temperature, _test.RoomTemperature);
            CupFitStatus status = warmest - from < LeastWarmth ? CupFitStatus.HardlyWarm : CupFitStatus.Fitted;
            if (status == CupFitStatus.HardlyWarm)
                remarks.Insert(0, "The cup hardly warmed, so that only an upper end of the rate is told: test a larger mass, or wait longer.");
            return new(status, rate, film, heat, remarks, pairs, Math.Sqrt(kelvins / _m), Resin(u));
        }

        /// <summary>Best of a coarse grid of rates and coefficients: from far away a runaway curve gives no slope to follow.</summary>
        private double[] Search()
        {
            double[] best = new double[Unknowns], at = new double[Unknowns];
            double least = double.PositiveInfinity;
            for (int i = -12; i <= 12; i++)
            {
                for (int j = -2; j <= 2; j++)
                {
                    (at[0], at[1]) = (0.15 * i, 0.3 * j);
                    double sum = Sum(at, Residuals(at));
                    if (sum >= least)
                        continue;
                    least = sum;
                    at.CopyTo(best, 0);
                }
            }

            return best;
        }

        private void Linearise(double[] u, double[] jacobian)
        {
            // Central differences; the model itself errs by some thousandths of a kelvin, which over two hundredths of a logarithm is a tenth of a reading's error.
            const double Difference = 0.01;
            double[] at = [.. u];
            for (int i = 0; i < Unknowns; i++)
            {
                at[i] = u[i] + Difference;
                double[] above = Residuals(at);
                at[i] = u[i] - Difference;
                double[] below = Residuals(at);
                at[i] = u[i];
                for (int k = 0; k < _m; k++)
                    jacobian[k * Unknowns + i] = (below[k] - above[k]) / (2 * Difference);
            }
        }

        private void Normal(double[] jacobian, double[] normal)
        {
            for (int i = 0; i < Unknowns; i++)
            {
                for (int j = 0; j < Unknowns; j++)
                {
                    double sum = i == j ? 1 / (Before[i] * Before[i]) : 0;
                    for (int k = 0; k < _m; k++)
                        sum += jacobian[k * Unknowns + i] * jacobian[k * Unknowns + j];
                    normal[i * Unknowns + j] = sum;
                }
            }
        }

        private static double Sum(double[] u, double[] residuals)
        {
            double sum = 0;
            for (int i = 0; i < Unknowns; i++)
                sum += u[i] * u[i] / (Before[i] * Before[i]);
            foreach (double residual in residuals)
                sum += residual * residual;
            return double.IsFinite(sum) ? sum : double.PositiveInfinity;
        }

        /// <summary>Measured less computed, over the deviation.</summary>
        private double[] Residuals(double[] u)
        {
            _cancellation.ThrowIfCancellationRequested();
            CupReading first = _test.Readings[0];
            CupRun cup = CupModel.Solve(new()
            {
                Resin = Resin(u),
                Mass = _test.Mass,
                Diameter = _test.CupDiameter,
                StartTemperature = first.Temperature,
                RoomTemperature = _test.RoomTemperature,
                Cooling = SurfaceCooling.Fixed(CupModel.UsualCoefficient * Math.Exp(Math.Clamp(u[1], -5, 5))),
                Duration = _test.Readings[^1].Seconds,
            }, _cancellation);
            double[] residuals = new double[_m];
            for (int k = 0; k < _m; k++)
            {
                double t = _test.Readings[k].Seconds;
                residuals[k] = t <= cup.History[^1].Time ? (_test.Readings[k].Temperature - cup.TemperatureAt(t)) / _deviations[k] : 1e3;
            }

            return residuals;
        }

        private ResinSystem Resin(double[] u)
        {
            double rate = Math.Exp(Math.Clamp(u[0], -7, 7));
            CureKinetics k = _reference.Kinetics;
            return _reference with { Kinetics = k with { Rate1 = rate * k.Rate1, Rate2 = rate * k.Rate2, HeatOfReaction = k.HeatOfReaction * Math.Exp(Math.Clamp(u[2], -1, 1)) } };
        }
    }
}
