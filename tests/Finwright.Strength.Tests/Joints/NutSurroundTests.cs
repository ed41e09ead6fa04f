using Finwright.Geometry.Features;
using Finwright.Numerics;
using Finwright.Strength.Files;
using Finwright.Strength.Joints;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Tests.Joints;

/// <summary>What a nut of each form and each surrounding bears, by hand.</summary>
public sealed class NutSurroundTests
{
    private static readonly NutSurround Print = new(new(48e6, 40e6, 55e6), new(25e6, 18e6, 30e6));
    private static readonly NutSeat Seat = new() { Thread = MetricThread.M6, Form = NutForm.Square, Bore = 6.6e-3, Cover = 12e-3, SideWall = 2.8e-3 };

    [Theory]
    [InlineData(NutForm.Square)]
    [InlineData(NutForm.ThinSquare)]
    public void WallBurst_of_a_square_nut_counts_four_flats(NutForm form)
    {
        NutSeat seat = Seat with { Form = form };
        double height = (form is NutForm.Square ? MetricThread.M6.SquareNut : MetricThread.M6.ThinSquareNut).HeightMinimum;
        // Wall of 2.8 mm clamped at both ends of a flat of 10 mm: force 8 σ m t²/(6 b), four of them on a third of a flat, half the torque reaches the nut.
        double perStrength = 4 * (8 * height * 2.8e-3 * 2.8e-3 / (6 * 10e-3)) * (10e-3 / 3) / 0.5;
        Ranged standing = seat.WallBurstTorque(Print, PrintDirection.Standing)!.Value, lying = seat.WallBurstTorque(Print, PrintDirection.Lying)!.Value;

        AssertRange(perStrength, Print.Along, standing);
        AssertRange(perStrength, Print.Across, lying);
    }

    [Fact]
    public void PullOut_ranges_over_the_share_of_the_cylinder_and_the_strength()
    {
        // Half of the strength across layers in shear; 0.6 of the cylinder, 0.5 to 0.7 (from memory).
        double cylinder = Math.PI * 10e-3 * 12e-3 * 0.5;
        Ranged pull = Seat.PullOut(Print);

        Assert.Equal(0.6 * cylinder * 25e6, pull.Value, 1e-6);
        Assert.Equal(0.5 * cylinder * 18e6, pull.Low, 1e-6);
        Assert.Equal(0.7 * cylinder * 30e6, pull.High, 1e-6);
    }

    [Fact]
    public void PullOut_of_a_cross_nut_is_that_of_a_round_of_equal_area()
    {
        // 10 mm × 12 mm of barrel: a round of √(4/π · 120) = 12.36 mm.
        Ranged pull = (Seat with { Form = NutForm.Cross }).PullOut(Print);

        Assert.Equal(0.6 * Math.PI * Math.Sqrt(4 / Math.PI * 120e-6) * 12e-3 * 0.5 * 25e6, pull.Value, 1e-6);
    }

    [Fact]
    public void Filled_is_the_resin_alone_without_lines_and_the_rule_of_mixtures_between()
    {
        PrintedPlastic plastic = MaterialLibrary.Get<PrintedPlastic>("petg-printed");
        CastResin resin = MaterialLibrary.Get<CastResin>("epoxy-ambient");
        NutSurround none = NutSurround.Filled(plastic, resin, 0);
        foreach (Ranged strength in (Ranged[])[none.Along, none.Across])
        {
            Assert.Equal(resin.Strength.Value, strength.Value, 1e-3);
            Assert.Equal(resin.Strength.Low, strength.Low, 1e-3);
            Assert.Equal(resin.Strength.High, strength.High, 1e-3);
        }

        // Both stretch alike until the one that breaks first: its strain times the mean modulus.
        NutSurround half = NutSurround.Filled(plastic, resin, 0.5);
        double along = (plastic.ModulusAlong.Value + resin.Modulus.Value) / 2, across = (plastic.ModulusAcross.Value + resin.Modulus.Value) / 2;
        Assert.Equal(along * Math.Min(plastic.StrengthAlong.Low / plastic.ModulusAlong.Value, resin.Strength.Low / resin.Modulus.Value), half.Along.Low, 1e-3);
        Assert.Equal(along * Math.Min(plastic.StrengthAlong.Value / plastic.ModulusAlong.Value, resin.Strength.Value / resin.Modulus.Value), half.Along.Value, 1e-3);
        Assert.Equal(across * Math.Min(plastic.StrengthAcross.High / plastic.ModulusAcross.Value, resin.Strength.High / resin.Modulus.Value), half.Across.High, 1e-3);
        Assert.Throws<ArgumentOutOfRangeException>(() => NutSurround.Filled(plastic, resin, 1.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => NutSurround.Filled(plastic, resin, -0.01));
    }

    [Fact]
    public void RodBond_is_long_above_ten_diameters()
    {
        // A diameter of 1/256 m, whose tenfold is exact.
        Assert.False(RodBond.IsLong(0.00390625, 0.0390625));
        Assert.True(RodBond.IsLong(0.00390625, 0.04));
    }

    [Fact]
    public void Torque_advice_at_one_torque_is_possible_and_greater_need_raises_the_least()
    {
        Metal steel = MaterialLibrary.Get<Metal>("stainless-a4-70");
        // The least torque 0.3 F d and the greatest 0.15 F' d meet where the pull that spreads is twice the pull that is needed.
        TorqueAdvice one = TighteningTorque.Of(Seat, steel, Print, PrintDirection.Standing, 100, 200);

        Assert.Equal(one.Least, one.Greatest, 1e-12);
        Assert.Equal(0.3 * 100 * 6e-3, one.Least, 1e-12);
        Assert.Equal(2 * one.Least, TighteningTorque.Of(Seat, steel, Print, PrintDirection.Standing, 200, 200).Least, 1e-12);
        Assert.False(TighteningTorque.Of(Seat, steel, Print, PrintDirection.Standing, 101, 200).IsPossible);
        Assert.True(TighteningTorque.Of(Seat, steel, Print, PrintDirection.Standing, 99, 200).IsPossible);
        Assert.StartsWith("Up to", TighteningTorque.Of(Seat, steel, Print, PrintDirection.Standing, 0, 200).Reason, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => TighteningTorque.Of(Seat, steel, Print, PrintDirection.Standing, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => TighteningTorque.Of(Seat, steel, Print, PrintDirection.Standing, 0, null, 0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => TighteningTorque.Of(Seat, steel, Print, PrintDirection.Standing, 0, -1));
    }

    private static void AssertRange(double perStrength, Ranged strength, Ranged actual)
    {
        Assert.Equal(perStrength * strength.Value, actual.Value, 1e-9);
        Assert.Equal(perStrength * strength.Low, actual.Low, 1e-9);
        Assert.Equal(perStrength * strength.High, actual.High, 1e-9);
    }
}
