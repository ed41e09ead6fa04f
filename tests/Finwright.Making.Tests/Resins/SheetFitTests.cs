using Finwright.Making.Resins;
using Finwright.Making.Tests.Cure;

namespace Finwright.Making.Tests.Resins;

public sealed class SheetFitTests
{
    private const double Ice = CureCases.IcePoint;

    [Theory]
    // Numerical reference, scipy: quad of da over the rate from 0.001 to 0.6.
    [InlineData(298.15, 25758.596)]
    [InlineData(313.15, 10463.437)]
    public void Gel_time_at_one_temperature_is_the_integral_of_the_inverse_rate(double temperature, double seconds) =>
        Assert.Equal(seconds, SheetFit.GelTime(CureCases.Infusion, temperature), 1e-4 * seconds);

    [Fact]
    public void Two_gel_times_tell_rate_and_activation()
    {
        // 1.5 times faster at 25 °C, 1.2 times at 40 °C (reference times above): ΔE = R ln(1.2/1.5) / (1/298.15 - 1/313.15) = -11548 J/mol.
        SheetFitResult fit = Solve(new() { GelTimes = [new(25758.596 / 1.5, 298.15), new(10463.437 / 1.2, 313.15)] });
        Assert.Equal(SheetFitStatus.Fitted, fit.Status);
        Assert.Equal(-11548, fit.ActivationChange, 20.0);
        Assert.Equal(25758.596 / 1.5, SheetFit.GelTime(fit.Resin, 298.15), 5.0);
        Assert.Equal(10463.437 / 1.2, SheetFit.GelTime(fit.Resin, 313.15), 5.0);
    }

    [Fact]
    public void Pot_life_of_a_known_resin_gives_its_factor_back()
    {
        ResinSystem known = CureCases.Scaled(1.6);
        CupCase cup = new() { Resin = known, Mass = 0.1, Diameter = 0.07, StartTemperature = Ice + 25, RoomTemperature = Ice + 25 };
        CupRun run = CupModel.Solve(cup, TestContext.Current.CancellationToken);
        SheetFitResult fit = Solve(new() { PotLives = [new(run.PotLife, 0.1, Ice + 25)] });
        Assert.Equal(SheetFitStatus.Fitted, fit.Status);
        Assert.Equal(1.6, fit.RateFactor.Value, 0.01);
        Assert.True(fit.RateFactor.Low < 1.4 && fit.RateFactor.High > 1.8);
        Assert.Equal(0, fit.ActivationChange, 1e-9);
        Assert.Contains(fit.Remarks, remark => remark.Contains("no common definition", StringComparison.Ordinal));
    }

    [Fact]
    public void Pot_lives_at_two_temperatures_and_the_peak_give_a_known_resin_back()
    {
        // The reference with rates times 1.3 at 294.65 K, both activations 4 kJ/mol higher, 420 kJ/kg: what its cups do is what the sheet says.
        CureKinetics k = CureCases.Infusion.Kinetics;
        double factor = 1.3 * Math.Exp(4000 / (8.314462618 * 294.65));
        ResinSystem known = CureCases.Infusion with
        {
            Kinetics = k with { Rate1 = factor * k.Rate1, Activation1 = k.Activation1 + 4000, Rate2 = factor * k.Rate2, Activation2 = k.Activation2 + 4000, HeatOfReaction = 420e3 },
        };
        CupRun warm = Cup(known, 298.15), cool = Cup(known, 291.15);
        SheetFitResult fit = Solve(new() { PotLives = [new(warm.PotLife, 0.1, 298.15), new(cool.PotLife, 0.1, 291.15)], CupPeak = warm.Peak.Temperature });
        Assert.True(fit.Status == SheetFitStatus.Fitted, string.Join(' ', fit.Remarks));
        Assert.Equal(294.65, fit.AtTemperature, 1e-9);
        // 2 %, 1 kJ/mol, 2 %: heat by seven halvings, and what it takes along.
        Assert.Equal(1.3, fit.RateFactor.Value, 0.02 * 1.3);
        Assert.Equal(4000, fit.ActivationChange, 1000.0);
        Assert.Equal(420e3, fit.HeatOfReaction, 0.02 * 420e3);
        Assert.Equal(warm.PotLife, Cup(fit.Resin, 298.15).PotLife, 0.01 * warm.PotLife);
        Assert.Equal(warm.Peak.Temperature, Cup(fit.Resin, 298.15).Peak.Temperature, 3.0);
    }

    [Fact]
    public void Nonsense_is_said_and_nothing_is_changed()
    {
        Assert.Equal(SheetFitStatus.NothingTold, Solve(new()).Status);
        SheetFitResult backwards = Solve(new() { GelTimes = [new(3600, 293.15), new(36000, 313.15)] });
        Assert.Equal(SheetFitStatus.Implausible, backwards.Status);
        Assert.Equal(CureCases.Infusion, backwards.Resin);
        Assert.Equal(SheetFitStatus.Implausible, Solve(new() { PotLives = [new(0.1, 0.1, 298.15)] }).Status);
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(new() { PotLives = [new(3600, 0.1, 25)] }));
    }

    private static CupRun Cup(ResinSystem resin, double temperature) =>
        CupModel.Solve(new() { Resin = resin, Mass = 0.1, Diameter = 0.07, StartTemperature = temperature, RoomTemperature = temperature }, TestContext.Current.CancellationToken);

    private static SheetFitResult Solve(SheetStatements sheet) => SheetFit.Solve(CureCases.Infusion, sheet, TestContext.Current.CancellationToken);
}
