using Finwright.Geometry.Features;
using Finwright.Numerics;
using Finwright.Strength.Files;
using Finwright.Strength.Joints;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Tests.Joints;

public sealed class BoltInFinTests
{
    private static readonly PrintedPlastic Plastic = MaterialLibrary.Get<PrintedPlastic>("petg-printed");
    private static readonly NutSurround Print = NutSurround.Bare(Plastic);
    private static readonly Metal Steel = MaterialLibrary.Get<Metal>("stainless-a4-70");
    private static readonly NutSeat Seat = new() { Thread = MetricThread.M6, Form = NutForm.Hexagon, Bore = 6.6e-3, Cover = 12e-3, SideWall = 2.8e-3 };

    [Theory]
    [InlineData("M4", 8.78)]
    [InlineData("M5", 14.2)]
    [InlineData("M6", 20.1)]
    [InlineData("M8", 36.6)]
    public void StressArea_is_that_of_the_standard(string name, double squareMillimetres) =>
        // ISO 898-1, table of stress areas, from memory. Tolerance: last printed digit.
        Assert.Equal(squareMillimetres, 1e6 * ThreadStrength.StressArea(MetricThread.All.Single(t => t.Name == name)), 0.05);

    [Fact]
    public void Preload_of_three_newton_metres_on_M6()
    {
        // T = K F d by hand: 3/(0.2 · 0.006) = 2500 N; 1667 N at 0.3, 3333 N at 0.15.
        Ranged pull = ThreadStrength.Preload(MetricThread.M6, 3);
        Assert.Equal(2500, pull.Value, 1e-9);
        Assert.Equal(3 / (0.3 * 0.006), pull.Low, 1e-9);
        Assert.Equal(3 / (0.15 * 0.006), pull.High, 1e-9);
        Assert.Equal(3, ThreadStrength.Torque(MetricThread.M6, 2500).Value, 1e-12);
        Assert.Equal(20.12e-6 * 450e6, ThreadStrength.YieldPull(MetricThread.M6, Steel).Value, 5.0);
        // 2500 N on 20.1 mm².
        Assert.Equal(124.3e6, ThreadStrength.Stress(MetricThread.M6, 2500), 0.1e6);
    }

    [Theory]
    // ISO 4032: across flats at least 9.78 mm: √3/2 · 9.78² - π/4 · 6.6² = 82.83 - 34.21; squares DIN 557 and 562, from memory: 10² - 34.21; cross nut 10 × 12 - 34.21.
    [InlineData(NutForm.Hexagon, 48.62)]
    [InlineData(NutForm.Square, 65.79)]
    [InlineData(NutForm.ThinSquare, 65.79)]
    [InlineData(NutForm.Cross, 85.79)]
    public void BearingArea_of_M6_nuts(NutForm form, double squareMillimetres)
    {
        NutSeat seat = Seat with { Form = form };
        Assert.Equal(squareMillimetres, 1e6 * seat.BearingArea, 0.01);
        Assert.Equal(48e6 * seat.BearingArea, seat.BearingPull(Print).Value, 1e-6);
    }

    [Fact]
    public void PullOut_is_the_shear_cylinder()
    {
        // π · 10 mm · 12 mm · 25/2 MPa · 0.6 by hand.
        Ranged pull = Seat.PullOut(Print);
        Assert.Equal(Math.PI * 10 * 12 * 12.5 * 0.6, pull.Value, 1e-6);
        Assert.True(pull.Low < pull.Value && pull.Value < pull.High);
        Assert.Equal(2 * pull.Value, (Seat with { Cover = 24e-3 }).PullOut(Print).Value, 1e-6);
    }

    [Theory]
    [InlineData(3410)]
    [InlineData(3830)]
    [InlineData(4780)]
    public void ShearCylinder_of_M8_pulls_out_of_printed_polyamide_at_a_plausible_length(double pull)
    {
        // Sliwka and Wojcik, 2025, Polymers 18(1):112, abstract: printed thread, heat-set and wire insert of M8, all by pull-out. The engaged length is not in the
        // abstract and the strength of the print, 45 to 50 MPa, is from memory: so only whether 1 to 2 diameters would do it.
        double perLength = NutSeat.ShearCylinder(8e-3, 1, new(48e6, 45e6, 50e6)).Value;
        Assert.InRange(pull / perLength, 8e-3, 16e-3);
    }

    [Fact]
    public void WallBurst_of_a_hexagon_by_hand()
    {
        // s 10, m 4.9, t 2.8 mm: flat s/√3 = 5.774; force that bends the wall to 48 MPa: 8 σ m t²/(6 b) = 425.9 N; six of them on a third of a flat, twice for the half that reaches the nut.
        double flat = 10 / Math.Sqrt(3), force = 8 * 48 * 4.9 * 2.8 * 2.8 / (6 * flat), torque = 6 * force * flat / 3 / 0.5;
        Ranged standing = Seat.WallBurstTorque(Print, PrintDirection.Standing)!.Value;
        Assert.Equal(1e-3 * torque, standing.Value, 1e-9);
        // Twice the wall, four times the torque; weaker when the layers lie in the wall; none for a cross nut.
        Assert.Equal(4 * standing.Value, (Seat with { SideWall = 5.6e-3 }).WallBurstTorque(Print, PrintDirection.Standing)!.Value.Value, 1e-9);
        Assert.True(Seat.WallBurstTorque(Print, PrintDirection.Lying)!.Value.Value < standing.Value);
        Assert.Null((Seat with { Form = NutForm.Cross }).WallBurstTorque(Print, PrintDirection.Standing));
    }

    [Fact]
    public void RodBond_carries_shear_over_its_surface()
    {
        Rod rod = MaterialLibrary.Get<Rod>("carbon-rod");
        // π · 4 · 40 mm² · 10 MPa.
        Assert.Equal(Math.PI * 4 * 40 * 10, RodBond.Pull(4e-3, 40e-3, rod.BondStrength).Value, 1e-6);
        Assert.False(RodBond.IsLong(4e-3, 40e-3));
        Assert.True(RodBond.IsLong(4e-3, 41e-3));
    }

    [Fact]
    public void Torque_advice_is_a_band_with_its_reason()
    {
        TorqueAdvice advice = TighteningTorque.Of(Seat, Steel, Print, PrintDirection.Standing, 300);
        // Least: hard thread, 0.3 · 300 N · 6 mm. Greatest: easy thread, 0.15 · d · (π · 10 · 12 · 25/2 MPa · 0.6)/3.
        Assert.Equal(0.3 * 300 * 6e-3, advice.Least, 1e-9);
        Assert.Equal(0.15 * 6e-3 * Math.PI * 10 * 12 * 12.5 * 0.6 / 3, advice.Greatest, 1e-9);
        Assert.Equal(TorqueLimit.PullOut, advice.LimitedBy);
        Assert.True(advice.IsPossible);
        Assert.Contains("Estimate", advice.Reason, StringComparison.Ordinal);
        Assert.Contains("makers' data", advice.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Torque_advice_names_whatever_gives_first()
    {
        TorqueAdvice Of(NutSeat seat, double needed, double? spreading) => TighteningTorque.Of(seat, Steel, Print, PrintDirection.Standing, needed, spreading);
        NutSeat deep = Seat with { Cover = 60e-3 };
        Assert.Equal(TorqueLimit.NutBearing, Of(deep, 0, null).LimitedBy);
        NutSeat thin = deep with { SideWall = 0.3e-3 };
        Assert.Equal(TorqueLimit.WallBurst, Of(thin, 0, null).LimitedBy);
        Assert.Equal(thin.WallBurstTorque(Print, PrintDirection.Standing)!.Value.Value / 3, Of(thin, 0, null).Greatest, 1e-12);
        Assert.Equal(TorqueLimit.Spreading, Of(Seat, 0, 200).LimitedBy);
        Assert.Contains("wedge", Of(Seat, 0, 200).Reason, StringComparison.Ordinal);
        TorqueAdvice never = Of(Seat, 5000, null);
        Assert.False(never.IsPossible);
        Assert.StartsWith("No torque does both", never.Reason, StringComparison.Ordinal);
        Assert.StartsWith($"Up to {Of(Seat, 0, null).Greatest:0.0} N·m", Of(Seat, 0, null).Reason, StringComparison.Ordinal);
        Assert.StartsWith($"{Of(Seat, 300, null).Least:0.0} to {Of(Seat, 300, null).Greatest:0.0} N·m: less lets the joint open", Of(Seat, 300, null).Reason, StringComparison.Ordinal);
        Assert.True(new TorqueAdvice(2, 2, TorqueLimit.Bolt, "").IsPossible);
    }

    [Fact]
    public void Torque_and_thread_refuse_what_is_no_number()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TighteningTorque.Of(Seat, Steel, Print, PrintDirection.Standing, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => TighteningTorque.Of(Seat, Steel, Print, PrintDirection.Standing, 0, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => TighteningTorque.Of(Seat, Steel, Print, PrintDirection.Standing, 0, null, 0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadStrength.Preload(MetricThread.M6, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadStrength.Torque(MetricThread.M6, double.NaN));
    }

    [Fact]
    public void Torque_advice_rises_with_resin_around_the_nut_and_after_a_test()
    {
        NutSurround filled = NutSurround.Filled(Plastic, MaterialLibrary.Get<CastResin>("epoxy-ambient"), 0.15);
        // What cracks first: lines across layers at 25/1800 of strain, times 0.15 · 1.8 + 0.85 · 2.8 GPa.
        Assert.Equal(25e6 / 1.8e9 * (0.15 * 1.8e9 + 0.85 * 2.8e9), filled.Across.Value, 1.0);
        Assert.Equal(Print, NutSurround.Filled(Plastic, MaterialLibrary.Get<CastResin>("epoxy-ambient"), 1));
        double bare = TighteningTorque.Of(Seat, Steel, Print, PrintDirection.Standing, 0).Greatest;
        Assert.True(TighteningTorque.Of(Seat, Steel, filled, PrintDirection.Standing, 0).Greatest > bare);
        // A test on a spare piece doubles what pull-out allows; then the nut's bearing limits, with 1.5 in hand: 0.15 · 6 mm · 48 MPa · 48.62 mm²/1.5.
        TorqueAdvice tested = TighteningTorque.Of(Seat, Steel, Print, PrintDirection.Standing, 0, null, TighteningTorque.TestedFactor);
        Assert.Equal(TorqueLimit.NutBearing, tested.LimitedBy);
        Assert.Equal(0.15 * 6e-3 * 48e6 * Seat.BearingArea / 1.5, tested.Greatest, 1e-9);
    }

    [Fact]
    public void Torque_advice_can_be_limited_by_a_soft_bolt()
    {
        // A soft bolt in a print as strong as metal.
        NutSurround strong = new(Ranged.Exact(2e9), Ranged.Exact(2e9));
        Metal soft = MaterialLibrary.Get<Metal>("stainless-a2-50");
        TorqueAdvice advice = TighteningTorque.Of(Seat, soft, strong, PrintDirection.Standing, 0);
        Assert.Equal(TorqueLimit.Bolt, advice.LimitedBy);
        Assert.Equal(0.15 * 6e-3 * 0.7 * 210e6 * ThreadStrength.StressArea(MetricThread.M6), advice.Greatest, 1e-9);
    }
}
