using CsCheck;
using Finwright.Numerics;
using Finwright.Strength.Files;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Tests.Materials;

public sealed class CoreMixtureTests
{
    private static readonly PrintedPlastic Plastic = MaterialLibrary.Get<PrintedPlastic>("petg-printed");
    private static readonly CastResin Resin = MaterialLibrary.Get<CastResin>("epoxy-ambient");

    private static readonly Gen<(double, double, double, double, double)> Mixtures =
        Gen.Select(Gen.Double[0.5, 200], Gen.Double[0.05, 0.45], Gen.Double[0.5, 200], Gen.Double[0.05, 0.45], Gen.Double[0, 1]);

    [Fact]
    public void Filled_petg_and_epoxy_bounds_lie_within_two_percent()
    {
        for (int percent = 0; percent <= 100; percent += 5)
        {
            CoreStiffness core = CoreMixture.Filled(Plastic, Resin, Ranged.Exact(percent / 100.0));
            // The moduli differ by less than 1.6 times; bounds of such phases are known to be this close.
            Assert.InRange(core.UpperBound / core.LowerBound, 1, 1.02);
            Assert.InRange(core.Modulus.Value, core.LowerBound * (1 - 1e-12), core.UpperBound * (1 + 1e-12));
        }
    }

    [Fact]
    public void Filled_without_plastic_is_the_resin_and_without_resin_the_plastic()
    {
        CoreStiffness none = CoreMixture.Filled(Plastic, Resin, Ranged.Exact(0)), all = CoreMixture.Filled(Plastic, Resin, Ranged.Exact(1));
        // Closed form: a mixture of one phase. Tolerance: rounding.
        Assert.Equal(Resin.Modulus.Value, none.Modulus.Value, 1e-12 * Resin.Modulus.Value);
        Assert.Equal(Resin.Modulus.Low, none.Modulus.Low, 1e-12 * Resin.Modulus.Value);
        Assert.Equal(Resin.Modulus.High, none.Modulus.High, 1e-12 * Resin.Modulus.High);
        Assert.Equal(Resin.Poisson.Value, none.Poisson, 1e-12);
        Assert.Equal(Resin.Density, none.Density);
        Assert.Equal((2 * 2.0e9 + 1.8e9) / 3, all.Modulus.Value, 1e-3);
        Assert.Equal(Plastic.Density, all.Density);
    }

    [Fact]
    public void Bounds_of_any_two_phases_are_ordered_and_lie_between_reuss_and_voigt() => Mixtures.Hold(c =>
    {
        (double e1, double nu1, double e2, double nu2, double f) = c;
        CoreMixture.Phase one = CoreMixture.Phase.Of(e1, nu1), two = CoreMixture.Phase.Of(e2, nu2);
        (CoreMixture.Phase lower, CoreMixture.Phase upper) = CoreMixture.Bounds(one, two, f);
        Between(one.Bulk, two.Bulk, f, lower.Bulk, upper.Bulk);
        Between(one.Shear, two.Shear, f, lower.Shear, upper.Shear);
    });

    [Fact]
    public void Bounds_of_ordered_phases_agree_with_the_formulas_of_hashin_and_shtrikman() => Mixtures.Hold(c =>
    {
        (double e1, double nu, double ratio, double _, double f) = c;
        // Second form: Hashin and Shtrikman, 1963, J. Mech. Phys. Solids 11, 127 (from memory): the softer phase is the host of the lower bound.
        CoreMixture.Phase one = CoreMixture.Phase.Of(e1, nu), two = CoreMixture.Phase.Of(e1 * (1 + ratio), nu);
        double f2 = 1 - f, k1 = one.Bulk, g1 = one.Shear;
        double bulk = k1 + f2 / (1 / (two.Bulk - k1) + 3 * f / (3 * k1 + 4 * g1));
        double shear = g1 + f2 / (1 / (two.Shear - g1) + 6 * f * (k1 + 2 * g1) / (5 * g1 * (3 * k1 + 4 * g1)));
        (CoreMixture.Phase lower, _) = CoreMixture.Bounds(one, two, f);
        Assert.Equal(bulk, lower.Bulk, 1e-10 * bulk);
        Assert.Equal(shear, lower.Shear, 1e-10 * shear);
    });

    [Fact]
    public void Empty_core_is_a_share_of_the_upper_bound_with_a_range_up_to_it()
    {
        CoreStiffness core = CoreMixture.Empty(Plastic, Ranged.Exact(0.15));
        // Hashin and Shtrikman, 1963 (from memory), second phase void: K = f K₁/(1 + (1 - f) K₁/(4/3 G₁)), G = f G₁ ζ/(ζ + (1 - f) G₁), ζ = G₁ (9 K₁ + 8 G₁)/(6 (K₁ + 2 G₁)).
        CoreMixture.Phase line = CoreMixture.Phase.Of(5.8e9 / 3, 0.38);
        double bulk = 0.15 * line.Bulk / (1 + 0.85 * line.Bulk / (4.0 / 3 * line.Shear));
        double zeta = line.Shear / 6 * (9 * line.Bulk + 8 * line.Shear) / (line.Bulk + 2 * line.Shear);
        double shear = 0.15 * line.Shear * zeta / (zeta + 0.85 * line.Shear);
        double bound = 9 * bulk * shear / (3 * bulk + shear);
        Assert.Equal(bound, core.UpperBound, 1e-10 * bound);
        Assert.Equal(0.85 * bound, core.Modulus.Value, 1e-10 * bound);
        Assert.True(core.Modulus.Low < core.Modulus.Value && core.Modulus.High > bound);
        Assert.Equal(0.15 * 1270, core.Density.Value, 1e-9);
    }

    [Fact]
    public void Empty_core_is_far_softer_than_a_filled_one() =>
        Assert.True(CoreMixture.Empty(Plastic, Ranged.Exact(0.15)).Modulus.High < 0.15 * CoreMixture.Filled(Plastic, Resin, Ranged.Exact(0.15)).Modulus.Value);

    [Fact]
    public void Filled_range_holds_the_value_and_widens_with_the_range_of_the_share()
    {
        CoreStiffness exact = CoreMixture.Filled(Plastic, Resin, Ranged.Exact(0.2)), loose = CoreMixture.Filled(Plastic, Resin, new(0.2, 0.1, 0.3));
        Assert.True(exact.Modulus.Low < exact.Modulus.Value && exact.Modulus.Value < exact.Modulus.High);
        Assert.True(loose.Modulus.Low < exact.Modulus.Low && loose.Modulus.High > exact.Modulus.High);
    }

    [Theory]
    [InlineData(0.01, false)]
    [InlineData(0.05, true)]
    [InlineData(0.5, true)]
    [InlineData(0.7, false)]
    public void Filled_says_when_the_pattern_does_not_exist(double share, bool expected) =>
        Assert.Equal(expected, CoreMixture.Filled(Plastic, Resin, Ranged.Exact(share)).IsInRange);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void Filled_refuses_shares_that_are_none(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CoreMixture.Filled(Plastic, Resin, Ranged.Exact(share)));

    private static void Between(double one, double two, double f, double lower, double upper)
    {
        double reuss = 1 / (f / one + (1 - f) / two), voigt = f * one + (1 - f) * two, rounding = 1e-12 * voigt;
        Assert.True(reuss - rounding <= lower && lower <= upper + rounding && upper <= voigt + rounding, $"{reuss} {lower} {upper} {voigt}");
    }
}
