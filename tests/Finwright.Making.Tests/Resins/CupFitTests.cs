using Finwright.Making.Resins;
using Finwright.Making.Tests.Cure;
using Finwright.Numerics;

namespace Finwright.Making.Tests.Resins;

public sealed class CupFitTests
{
    private const double Ice = CureCases.IcePoint;

    // Numerical reference, scipy (solve_ivp, LSODA, rtol 1e-10), rounded to 0.01 K as a logger does: the infusion resin with both rates times 1.6 and 430 kJ/kg, 100 g in a cup of 70 mm,
    // 6.5 W/(m² K), from 25 °C in a room of 22 °C, every 300 s.
    private static readonly double[] Runaway =
        [25.0, 26.43, 28.39, 30.91, 34.16, 38.57, 45.12, 56.92, 97.46, 230.8, 202.76, 178.34, 157.21, 138.93, 123.12, 109.45, 97.62, 87.4, 78.56, 70.91, 64.29, 58.58, 53.63, 49.35, 45.65];

    // The same with rates times 0.7, 400 kJ/kg, 50 g in a cup of 60 mm, 9.5 W/(m² K), every 1800 s.
    private static readonly double[] Mild =
        [25.0, 25.26, 26.25, 27.1, 27.7, 28.01, 28.07, 27.92, 27.65, 27.3, 26.92, 26.55, 26.2, 25.88, 25.59, 25.32, 25.07, 24.85, 24.66, 24.47, 24.31];

    // Rates times 0.3, 460 kJ/kg, 100 g, 9 W/(m² K), every 600 s.
    private static readonly double[] Slow = [25.0, 24.551, 24.314, 24.203, 24.171, 24.188, 24.235, 24.301, 24.377, 24.458, 24.542, 24.625, 24.707];

    [Fact]
    public void Cup_that_ran_away_tells_rate_cooling_and_heat()
    {
        CupFitResult fit = Solve(Test(Runaway, 300, 0.1, 0.07));
        Assert.Equal(CupFitStatus.Fitted, fit.Status);
        // 3 %: half a minute of doubt on the clock while it warms by tens of kelvins a minute.
        Assert.Equal(1.6, fit.RateFactor.Value, 0.03 * 1.6);
        Assert.Equal(6.5, fit.Coefficient.Value, 0.03 * 6.5);
        Assert.Equal(430e3, fit.HeatOfReaction.Value, 0.03 * 430e3);
        Assert.InRange(fit.RootMeanSquare, 0, 2);
        Assert.Equal(Runaway.Length, fit.Residuals.Count);
        Holds(fit, 1.6, 6.5, 430e3);
        Assert.Equal(fit.RateFactor.Value * CureCases.Infusion.Kinetics.Rate1, fit.Resin.Kinetics.Rate1, 1e-6);
        Assert.Equal(fit.HeatOfReaction.Value, fit.Resin.Kinetics.HeatOfReaction, 1e-6);
    }

    [Fact]
    public void Cup_that_warmed_a_little_leaves_a_range_and_says_why()
    {
        CupFitResult fit = Solve(Test(Mild, 1800, 0.05, 0.06));
        Assert.Equal(CupFitStatus.Fitted, fit.Status);
        Holds(fit, 0.7, 9.5, 400e3);
        Assert.NotEmpty(fit.Remarks);
        Assert.True(fit.RateFactor.RelativeDeviation > 0.05);
        Assert.InRange(fit.RootMeanSquare, 0, 0.5);
    }

    [Fact]
    public void Cup_that_stayed_cold_says_so()
    {
        CupFitResult fit = Solve(Test(Slow, 600, 0.1, 0.07));
        Assert.Equal(CupFitStatus.HardlyWarm, fit.Status);
        Assert.Contains("hardly warmed", fit.Remarks[0], StringComparison.Ordinal);
        Assert.True(fit.RateFactor.High > 0.3 && fit.RateFactor.Value < 1);
    }

    [Fact]
    public void Few_readings_tell_nothing()
    {
        CupFitResult fit = Solve(Test([25, 26, 27], 300, 0.1, 0.07));
        Assert.Equal(CupFitStatus.TooFewReadings, fit.Status);
        Assert.Equal(CureCases.Infusion, fit.Resin);
    }

    [Fact]
    public void Readings_out_of_order_are_refused()
    {
        CupTest test = new(0.1, Ice + 22, 0.07, [new(0, 298), new(0, 299), new(600, 300), new(900, 301), new(1200, 302)]);
        Assert.Throws<ArgumentException>(() => Solve(test));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(Test(Mild, 1800, 0, 0.06)));
    }

    private static CupFitResult Solve(CupTest test) => CupFit.Solve(CureCases.Infusion, test, TestContext.Current.CancellationToken);

    private static CupTest Test(double[] celsius, double every, double mass, double diameter) =>
        new(mass, Ice + 22, diameter, [.. celsius.Select((c, i) => new CupReading(every * i, Ice + c))]);

    private static void Holds(CupFitResult fit, double rate, double coefficient, double heat)
    {
        static void In(double value, Ranged range) => Assert.InRange(value, range.Low, range.High);
        In(rate, fit.RateFactor);
        In(coefficient, fit.Coefficient);
        In(heat, fit.HeatOfReaction);
    }
}
