using Finwright.Strength.Calibration;

namespace Finwright.Strength.Tests.Calibration;

public sealed class BenchFitTests
{
    private static readonly BenchFactor[] WallsAndCore = [new("walls", 0.12), new("core", 0.2)];

    [Fact]
    public void Solve_synthetic_readings_are_recovered_within_the_stated_range_in_95_of_100_seeds()
    {
        // The range is ± 2 deviations: 95.4 of 100 when the deviations are right. Truth drawn from what is known before, noise from the readings' deviations.
        int walls = 0, core = 0;
        for (int seed = 0; seed < 100; seed++)
        {
            (double[] truth, BenchFitResult fit) = Trial(seed, 0.5e-4);
            walls += Holds(fit, truth, 0);
            core += Holds(fit, truth, 1);
        }

        Assert.InRange(walls, 95, 100);
        Assert.InRange(core, 95, 100);
    }

    [Fact]
    public void Stated_ranges_hold_the_truth_as_often_as_they_say()
    {
        // 1500 trials, two factors: 95.45 % ± 3 standard deviations of such a count (0.54 %), and as much again for what is not linear.
        const int Trials = 1500;
        int walls = 0, core = 0;
        for (int seed = 1000; seed < 1000 + Trials; seed++)
        {
            (double[] truth, BenchFitResult fit) = Trial(seed, 1e-4);
            walls += Holds(fit, truth, 0);
            core += Holds(fit, truth, 1);
        }

        Assert.InRange(walls, 0.938 * Trials, 0.971 * Trials);
        Assert.InRange(core, 0.938 * Trials, 0.971 * Trials);
    }

    [Fact]
    public void Solve_one_linear_factor_is_the_weighted_mean_of_reading_and_what_was_known()
    {
        // Closed form of two estimates of ln f: 0 ± s and ln(reading) ± r, where the prediction is f itself and r is the reading's relative deviation there.
        const double Before = 0.1, Reading = 1.05, Relative = 0.02;
        BenchFitResult fit = BenchFit.Solve([new("walls", Before)], [new(Reading, Relative * 1.05)], f => [f[0]]);
        double weight = 1 / (Relative * Relative), mean = weight * Math.Log(Reading) / (weight + 1 / (Before * Before));
        // The prediction is exp(u), not linear: off by half the square of the remaining shift of 0.2 %, and its slope by as much.
        Assert.Equal(mean, Math.Log(fit.Factors[0]), 1e-4);
        Assert.Equal(1 / Math.Sqrt(weight + 1 / (Before * Before)), fit.LogDeviations[0], 1e-4);
        Assert.Equal(BenchFitStatus.Converged, fit.Status);
    }

    [Fact]
    public void Solve_exact_readings_give_the_factors_back()
    {
        double[] truth = [0.85, 1.3];
        BenchReading[] readings = [.. Bench.Predict(truth).Select(y => new BenchReading(y, 1e-9))];
        BenchFitResult fit = BenchFit.Solve(WallsAndCore, readings, Bench.Predict);
        // Deviations of 1e-9 m beside deflections of millimetres: what was known before weighs nothing.
        Assert.Equal(truth[0], fit.Factors[0], 1e-4);
        Assert.Equal(truth[1], fit.Factors[1], 1e-4);
        Assert.Empty(fit.Remarks);
    }

    [Fact]
    public void Solve_one_deflection_cannot_tell_walls_from_core_and_says_so()
    {
        BenchReading[] readings = [new(1.1 * Bench.Predict([1, 1])[0], 1e-4)];
        BenchFitResult fit = BenchFit.Solve(WallsAndCore, readings, f => [Bench.Predict(f)[0]]);
        Assert.Contains(fit.Remarks, r => r.Contains("cannot tell walls from core", StringComparison.Ordinal));
        // One reading tells one direction; what is square to it keeps all of its doubt.
        Assert.Equal(1, fit.WeakestDoubtKept, 1e-9);
        Assert.True(fit.Factors[0] < 1 && fit.Factors[1] < 1);
        Assert.True(fit.WeakestDirection[0] * fit.WeakestDirection[1] < 0);
    }

    [Fact]
    public void Solve_repeated_readings_tell_what_one_cannot_only_in_their_own_direction()
    {
        BenchReading reading = new(Bench.Predict([1, 1])[0], 2e-4);
        BenchFitResult one = BenchFit.Solve(WallsAndCore, [reading], f => [Bench.Predict(f)[0]]);
        BenchFitResult four = BenchFit.Solve(WallsAndCore, [reading, reading, reading, reading], f => [.. Enumerable.Repeat(Bench.Predict(f)[0], 4)]);
        Assert.True(four.LogDeviations[1] < one.LogDeviations[1]);
        Assert.Equal(1, four.WeakestDoubtKept, 1e-9);
    }

    [Fact]
    public void Solve_readings_that_say_nothing_leave_what_was_known()
    {
        BenchFitResult fit = BenchFit.Solve(WallsAndCore, [new(0, 1)], _ => [0.5]);
        Assert.Equal([1.0, 1.0], fit.Factors);
        Assert.Equal(0.12, fit.LogDeviations[0], 1e-12);
        Assert.Equal(0.2, fit.LogDeviations[1], 1e-12);
        Assert.All(fit.Directions, d => Assert.False(d.IsTold));
    }

    [Fact]
    public void Solve_flags_a_misread_gauge()
    {
        double[] good = Bench.Predict([0.95, 1.1]);
        BenchReading[] readings = [.. good.Select(y => new BenchReading(y, 1e-4))];
        readings[2] = new(readings[2].Value + 2e-3, 1e-4);
        BenchFitResult fit = BenchFit.Solve(WallsAndCore, readings, Bench.Predict);
        Assert.Contains(2, fit.Outliers);
        Assert.Contains(fit.Remarks, r => r.Contains("Reading 3", StringComparison.Ordinal));
        Assert.True(fit.ChiSquare > 9);
        Assert.Contains(fit.Remarks, r => r.Contains("too narrow", StringComparison.Ordinal));
    }

    [Fact]
    public void Residuals_are_reading_less_prediction_in_deviations()
    {
        BenchReading[] readings = [.. Bench.Predict([1.1, 0.9]).Select((y, i) => new BenchReading(y + 1e-4 * (i - 2), 2e-4))];
        BenchFitResult fit = BenchFit.Solve(WallsAndCore, readings, Bench.Predict);
        double[] again = Bench.Predict([.. fit.Factors]);
        for (int i = 0; i < readings.Length; i++)
        {
            Assert.Equal(again[i], fit.Predictions[i], 1e-12);
            Assert.Equal((readings[i].Value - again[i]) / 2e-4, fit.Residuals[i], 1e-8);
        }

        Assert.Equal(fit.Residuals.Sum(r => r * r), fit.ChiSquare, 1e-9);
    }

    [Fact]
    public void Solve_says_when_the_prediction_is_no_number_or_does_not_come_to_rest()
    {
        BenchFitResult none = BenchFit.Solve(WallsAndCore, [new(1, 1)], _ => [double.NaN]);
        Assert.Equal(BenchFitStatus.PredictionFailed, none.Status);
        Assert.Equal([1.0, 1.0], none.Factors);
        // A prediction that ends just where the reading pulls to.
        BenchFitResult restless = BenchFit.Solve(WallsAndCore, [new(2, 0.01)], f => [f[0] < 1.002 ? f[0] : double.NaN]);
        Assert.NotEqual(BenchFitStatus.Converged, restless.Status);
        Assert.Equal([1.0, 1.0], restless.Factors);
    }

    [Fact]
    public void Solve_refuses_deviations_that_are_none()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BenchFit.Solve([new("walls", 0)], [new(1, 1)], f => f));
        Assert.Throws<ArgumentOutOfRangeException>(() => BenchFit.Solve(WallsAndCore, [new(1, 0)], f => f));
        Assert.Throws<ArgumentException>(() => BenchFit.Solve(WallsAndCore, [], f => f));
    }

    private static int Holds(BenchFitResult fit, double[] truth, int factor) => truth[factor] >= fit.Low(factor) && truth[factor] <= fit.High(factor) ? 1 : 0;

    internal static (double[] Truth, BenchFitResult Fit) Trial(int seed, double deviation)
    {
        Random random = new(seed);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        double[] truth = [.. WallsAndCore.Select(f => Math.Exp(f.RelativeDeviation * Normal()))];
        BenchReading[] readings = [.. Bench.Predict(truth).Select(y => new BenchReading(y + deviation * Normal(), deviation))];
        BenchFitResult fit = BenchFit.Solve(WallsAndCore, readings, Bench.Predict);
        Assert.Equal(BenchFitStatus.Converged, fit.Status);
        return (truth, fit);
    }

    /// <summary>A tapering blade of walls and core as a beam, hung with 150 N at 40 % and 60 N at 85 % of its span: deflections in metres at three places each.</summary>
    private static class Bench
    {
        private const int Steps = 40;
        private const double Span = 0.3, WallModulus = 1.9e9, CoreModulus = 2.6e9, Wall = 1.2e-3;

        public static double[] Predict(double[] factors) => [.. new[] { (150.0, 0.4), (60.0, 0.85) }.SelectMany(l => Deflections(factors, l.Item1, l.Item2 * Span))];

        private static double[] Deflections(double[] factors, double force, double at)
        {
            double slope = 0, deflection = 0, h = Span / Steps;
            double[] found = new double[3];
            for (int i = 0; i < Steps; i++)
            {
                double y = (i + 0.5) * h, chord = 0.11 - 0.05 * y / Span, thick = 0.013 - 0.008 * y / Span;
                double outer = chord * Math.Pow(thick, 3) / 24, inner = chord * Math.Pow(Math.Max(thick - 2 * Wall, 0), 3) / 24;
                double curvature = force * Math.Max(at - y, 0) / (factors[0] * WallModulus * (outer - inner) + factors[1] * CoreModulus * inner);
                deflection += h * (slope + curvature * h / 2);
                slope += curvature * h;
                if (i == Steps * 2 / 5 - 1)
                    found[0] = deflection;
                else if (i == Steps * 7 / 10 - 1)
                    found[1] = deflection;
                else if (i == Steps - 1)
                    found[2] = deflection;
            }

            return found;
        }
    }
}
