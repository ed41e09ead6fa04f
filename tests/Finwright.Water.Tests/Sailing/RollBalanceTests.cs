using Finwright.Water.Sailing;

namespace Finwright.Water.Tests.Sailing;

public sealed class RollBalanceTests
{
    // Statics, worked out apart: F = m g y / (z + d) with z + d = 2.0 m, the fin carrying all and the rig upright and weightless.
    [Theory]
    [InlineData(60, 0.7, 206)]
    [InlineData(75, 0.7, 258)]
    [InlineData(85, 0.7, 292)]
    [InlineData(100, 0.7, 343)]
    [InlineData(60, 0.9, 265)]
    [InlineData(75, 0.9, 331)]
    [InlineData(85, 0.9, 375)]
    [InlineData(100, 0.9, 441)]
    [InlineData(60, 1.1, 324)]
    [InlineData(75, 1.1, 405)]
    [InlineData(85, 1.1, 459)]
    [InlineData(100, 1.1, 540)]
    public void SideForce_upright_rig_is_weight_times_arm_over_height(double mass, double hangOut, double force) =>
        Assert.Equal(force, Rider(mass, hangOut).FinSideForce, 0.7); // worked out to 1 N, with g of 9.81

    [Fact]
    public void SideForce_makes_moments_about_any_point_vanish()
    {
        RollBalance b = new()
        {
            RiderMass = 82,
            HangOut = 0.93,
            SailEffortHeight = 1.8,
            FinEffortDepth = 0.17,
            FinShare = 0.9,
            RigLean = 0.2,
            RigMass = 9,
            RigCentreHeight = 1.5,
            HullLiftOffset = 0.03,
            BoardMass = 7,
        };
        const double g = PhysicalConstants.Gravity;
        double side = b.SideForce, lift = b.SailLift, hullLift = g * (82 + 9 + 7) - lift;
        // Forces as (across to leeward, up) at (place to leeward, height), in a frame through the mast foot; the rig leans to windward.
        (double X, double Y, double Fx, double Fy)[] forces =
        [
            (-1.8 * Math.Sin(0.2), 1.8 * Math.Cos(0.2), side, lift),
            (0, -0.17, -0.9 * side, 0),
            (0, 0, -0.1 * side, 0),
            (-0.93, 0, 0, -82 * g),
            (-1.5 * Math.Sin(0.2), 0, 0, -9 * g),
            (0, 0, 0, -7 * g),
            (0.03, 0, 0, hullLift),
        ];
        Assert.Equal(0, forces.Sum(f => f.Fx), 1e-9);
        Assert.Equal(0, forces.Sum(f => f.Fy), 1e-9);
        foreach ((double x, double y) in new[] { (0.0, 0.0), (1.0, -2.0) })
            Assert.Equal(0, forces.Sum(f => (f.X - x) * f.Fy - (f.Y - y) * f.Fx), 1e-9);
    }

    [Fact]
    public void SideForce_scales_with_masses_and_not_with_all_lengths()
    {
        RollBalance one = Rider(80, 0.9) with { RigMass = 9, RigCentreHeight = 1.5, RigLean = 0.15 };
        RollBalance heavy = one with { RiderMass = 160, RigMass = 18 };
        RollBalance large = one with { HangOut = 1.8, SailEffortHeight = 2 * one.SailEffortHeight, FinEffortDepth = 2 * one.FinEffortDepth, RigCentreHeight = 3 };
        Assert.Equal(2 * one.SideForce, heavy.SideForce, 1e-9);
        Assert.Equal(one.SideForce, large.SideForce, 1e-9);
    }

    [Theory]
    [InlineData(-1, 0.9)]
    [InlineData(80, 0)]
    [InlineData(80, double.NaN)]
    public void SideForce_of_impossible_rider_refuses(double mass, double hangOut) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Rider(mass, hangOut).SideForce);

    [Fact]
    public void SideForce_refuses_what_no_board_has_and_takes_the_ends_of_each_range()
    {
        RollBalance good = Rider(80, 0.9);
        RollBalance[] wrong =
        [
            good with { SailEffortHeight = 0 }, good with { FinEffortDepth = -0.01 }, good with { FinShare = -0.01 }, good with { FinShare = 1.01 }, good with { RigLean = -0.01 },
            good with { RigLean = Math.PI / 3 + 0.01 }, good with { RigMass = -1 }, good with { RigCentreHeight = -1 }, good with { BoardMass = -1 }, good with { HullLiftOffset = 0.46 }, good with { HullLiftOffset = -0.46 },
        ];
        Assert.All(wrong, balance => Assert.Throws<ArgumentOutOfRangeException>(() => balance.SideForce));
        RollBalance[] ends =
        [
            good with { FinEffortDepth = 0 }, good with { FinShare = 0 }, good with { FinShare = 1 }, good with { RigLean = Math.PI / 3 }, good with { HullLiftOffset = 0.45 }, good with { HullLiftOffset = -0.45 },
        ];
        Assert.All(ends, balance => Assert.True(double.IsFinite(balance.SideForce)));
    }

    private static RollBalance Rider(double mass, double hangOut) =>
        new() { RiderMass = mass, HangOut = hangOut, SailEffortHeight = 1.85, FinEffortDepth = 0.15 };
}
