using CsCheck;
using Finwright.Making.Cure;
using Finwright.Making.Resins;

namespace Finwright.Making.Tests.Cure;

public sealed class CureRateTests
{
    [Fact]
    public void At_follows_the_equation_worked_by_hand()
    {
        // 25 °C, α = 0.3: k1 = 35982 exp(-54960/(8.314462618 × 298.15)) = 8.46272e-06, k2 = 3574.1 exp(-44289/(8.314462618 × 298.15)) = 6.22400e-05,
        // (k1 + k2 0.3^0.39845) 0.7^1.5361 (numerical reference, python). Tolerance: digits shown.
        Assert.Equal(2.716614e-05, CureRate.Of(CureCases.Infusion).At(298.15, 0.3), 1e-11);
    }

    [Fact]
    public void Derivatives_agree_with_differences()
    {
        foreach (GlassTransitionCurve? glass in new[] { null, CureCases.Glass })
        {
            CureRate rate = new(CureCases.Infusion.Kinetics, glass);
            Gen.Select(Gen.Double[270, 450], Gen.Double[0.01, 0.97]).Hold((t, a) =>
            {
                const double Dt = 0.01, Da = 1e-5;
                double r = rate.At(t, a, out double byT, out double byA);
                Assert.Equal(rate.At(t, a), r, 1e-12 * r);
                // Central differences: error of second order, a millionth, beside rounding over the difference.
                Assert.Equal((rate.At(t + Dt, a) - rate.At(t - Dt, a)) / (2 * Dt), byT, 1e-5 * Math.Abs(byT) + 1e-9 * r);
                Assert.Equal((rate.At(t, a + Da) - rate.At(t, a - Da)) / (2 * Da), byA, 1e-5 * Math.Abs(byA) + 1e-6 * r);
            });
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(8)]
    [InlineData(13)]
    public void Rates_of_many_places_are_those_of_each(int places)
    {
        CureRate rate = CureRate.Of(CureCases.Infusion with { GlassTransition = CureCases.Glass });
        double[] t = [.. Enumerable.Range(0, places).Select(i => 290.0 + 7 * i)], a = [.. Enumerable.Range(0, places).Select(i => 0.05 * (i + 1))], alone = new double[places], all = new double[places], byT = new double[places], byA = new double[places];
        rate.At(t, a, alone);
        rate.At(t, a, all, byT, byA);
        for (int i = 0; i < places; i++)
        {
            Assert.Equal(rate.At(t[i], a[i], out double slope, out double bend), alone[i], 1e-12 * alone[i]);
            Assert.Equal(alone[i], all[i], 1e-12 * alone[i]);
            Assert.Equal(slope, byT[i], 1e-12 * Math.Abs(slope));
            Assert.Equal(bend, byA[i], 1e-12 * Math.Abs(bend));
        }

        // The greatest is at no fresh and no cured resin, and no other conversion does better.
        (double best, double where) = rate.Greatest(330);
        Assert.InRange(where, 0.01, 0.9);
        Assert.All(Enumerable.Range(0, 100), i => Assert.True(rate.At(330, 0.01 * i) <= best));
        Assert.Equal(best, rate.At(330, where), 1e-15);
    }

    [Fact]
    public void Glass_curve_and_its_inverse_agree()
    {
        Gen.Double[0.001, 1].Hold(a => Assert.Equal(a, CureRate.ConversionAtGlass(CureCases.Glass, CureRate.GlassTransition(CureCases.Glass, a)), 1e-12));
        Assert.Equal(CureCases.Glass.Uncured, CureRate.GlassTransition(CureCases.Glass, 0), 1e-12);
        Assert.Equal(CureCases.Glass.Cured, CureRate.GlassTransition(CureCases.Glass, 1), 1e-9);
        Assert.Equal(0, CureRate.ConversionAtGlass(CureCases.Glass, 100));
    }

    [Fact]
    public void Rate_is_halved_where_the_glass_transition_stands_above_the_resin()
    {
        const double T = 295;
        double a = CureRate.ConversionAtGlass(CureCases.Glass, T + CureRate.GlassOffset);
        Assert.Equal(0.5 * new CureRate(CureCases.Infusion.Kinetics).At(T, a), new CureRate(CureCases.Infusion.Kinetics, CureCases.Glass).At(T, a), 1e-12);
    }

    [Fact]
    public void Adiabatic_rise_of_the_reference_resin() =>
        // 460 kJ/kg over 1.7 kJ/(kg K).
        Assert.Equal(270.588, CureRate.AdiabaticRise(CureCases.Infusion), 0.001);

    [Fact]
    public void Rate_is_never_negative_and_always_a_number() =>
        Gen.Select(Gen.Double[-100, 2000], Gen.Double[-1, 2]).Hold((t, a) =>
        {
            double rate = new CureRate(CureCases.Infusion.Kinetics, CureCases.Glass).At(t, a, out double byT, out double byA);
            Assert.True(rate >= 0 && double.IsFinite(rate + byT + byA));
        });

    [Fact]
    public void Kinetics_that_are_none_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new CureRate(CureCases.Infusion.Kinetics with { Rate1 = -1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CureRate(CureCases.Infusion.Kinetics with { OrderN = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CureRate(CureCases.Infusion.Kinetics, new(364, 216, 0.37)));
    }
}
