using Finwright.Water.Sailing;

namespace Finwright.Water.Tests.Sailing;

/// <summary>Every case against the balance of moments written out once more, and the numbers that are refused.</summary>
public sealed class LoadCaseSumsTests
{
    private const double Depth = 0.15, Degree = Math.PI / 180;

    private static readonly SailingBrief Usual = SailingBalanceTests.Usual;

    // Statics, moments about the mast foot: F (z/cos θ + s d + c tan θ) = g (m y + 9 kg h sin θ) + g (m + 9 + 8 kg) c, with h at 0.85 of z and c the offset of the hull's lift.
    private static double Force(double lean = 8 * Degree, double hangOut = 0.95, double effort = 1.85, double share = 1, double offset = 0) =>
        9.80665 * (80 * hangOut + 9 * 0.85 * 1.85 * Math.Sin(lean) + (80 + 9 + 8) * offset) / (effort / Math.Cos(lean) + share * Depth + offset * Math.Tan(lean));

    [Fact]
    public void Cruise_and_its_doubt_are_the_balance_and_the_root_of_three_squares()
    {
        SailingBalance balance = SailingBalance.Of(Usual, Depth);
        double force = Force();
        // A tenth of a metre of stance, a tenth of the height of effort, a twentieth of the board's width: the defaults, our judgement.
        double stance = Force(hangOut: 1.05) - force, height = Force(effort: 1.85 * 0.9) - force, offset = Force(offset: 0.05 * 0.7) - force;
        double doubt = Math.Sqrt(stance * stance + height * height + offset * offset);

        Assert.Equal(force, balance.DerivedSideForce, 1e-9);
        Assert.Equal(doubt, balance.DerivedUncertainty, 1e-9);
        LoadCase cruise = balance[LoadCaseKind.Cruise];
        Assert.Equal(force - doubt, cruise.SideForceLow, 1e-9);
        Assert.Equal(force + doubt, cruise.SideForceHigh, 1e-9);
        Assert.Equal(force * Math.Tan(8 * Degree), cruise.SailLift, 1e-9);
        Assert.Equal(8 * Degree, cruise.RigLean, 1e-12);
    }

    [Fact]
    public void Offset_of_the_hull_goes_no_farther_than_half_the_stance()
    {
        // A twentieth of 1.5 m is 75 mm, half the stance only 50 mm.
        SailingBrief close = Usual with { HangOut = 0.1, BoardWidth = 1.5 };
        double force = Force(hangOut: 0.1), stance = Force(hangOut: 0.2) - force, height = Force(hangOut: 0.1, effort: 1.85 * 0.9) - force, offset = Force(hangOut: 0.1, offset: 0.05) - force;

        Assert.Equal(Math.Sqrt(stance * stance + height * height + offset * offset), SailingBalance.Of(close, Depth).DerivedUncertainty, 1e-9);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(300.0)]
    public void Cases_follow_from_cruise_with_their_bands(double? given)
    {
        SailingBalance balance = SailingBalance.Of(Usual with { GivenSideForce = given }, Depth);
        double cruise = Force(), scale = given is double wanted ? wanted / cruise : 1, open = given is null ? balance.DerivedUncertainty / cruise : 0;
        // Three quarters of the hang-out, rig upright, 95 % on the fin, force turned from 20° to 30°; pumping 1.25 times, up to 1.5 times the mean.
        double mean = 0.95 * Force(lean: 0, hangOut: 0.75 * 0.95, share: 0.95) * Math.Cos(30 * Degree) / Math.Cos(20 * Degree);
        AssertCase(LoadCaseKind.GettingGoing, 1.25 * mean, 1 / 1.25, 1.5 / 1.25);
        Assert.Contains($"gives a mean of {mean * scale:0} N", balance[LoadCaseKind.GettingGoing].Derivation, StringComparison.Ordinal);
        // Turned to 35°, the rig leaning by 15°; down to 0.6 of cruise, up to cruise.
        double turned = Math.Cos(35 * Degree) / Math.Cos(20 * Degree), top = turned * Force(lean: 15 * Degree);
        AssertCase(LoadCaseKind.TopSpeed, top, Math.Min(0.6 * cruise / top, 1), Math.Max(cruise / top, 1));
        Assert.Equal(scale * top * Math.Tan(15 * Degree), balance[LoadCaseKind.TopSpeed].SailLift, 1e-9);
        Assert.Contains("from 20 to 35 degrees", balance[LoadCaseKind.TopSpeed].Derivation, StringComparison.Ordinal);
        // Twice cruise, 1.5 to 3 times.
        AssertCase(LoadCaseKind.Overload, 2 * cruise, 1.5 / 2, 3.0 / 2);
        Assert.Equal(scale * cruise * Math.Tan(8 * Degree), balance[LoadCaseKind.Overload].SailLift, 1e-9);
        Assert.Equal(given is null, balance[LoadCaseKind.Cruise].Derivation.StartsWith("Rider fully hung out", StringComparison.Ordinal));
        Assert.Equal(given is not null, balance[LoadCaseKind.Overload].Derivation.EndsWith("you gave for cruise.", StringComparison.Ordinal));

        void AssertCase(LoadCaseKind kind, double derived, double low, double high)
        {
            LoadCase load = balance[kind];
            Assert.Equal(derived, load.DerivedSideForce, 1e-9);
            Assert.Equal(scale * derived, load.SideForce, 1e-9);
            Assert.Equal(scale * derived * (1 - Math.Sqrt(open * open + (1 - low) * (1 - low))), load.SideForceLow, 1e-9);
            Assert.Equal(scale * derived * (1 + Math.Sqrt(open * open + (high - 1) * (high - 1))), load.SideForceHigh, 1e-9);
        }
    }

    [Fact]
    public void Of_refuses_numbers_that_describe_no_sailor()
    {
        SailingBrief[] briefs =
        [
            Usual with { RiderMass = 0 }, Usual with { HangOut = 0 }, Usual with { SailEffortHeight = double.NaN }, Usual with { SailArea = 0 }, Usual with { BoardWidth = 0 },
            Usual with { GettingGoingSpeed = 0 }, Usual with { CruiseSpeed = 4.9 }, Usual with { TopSpeed = 8.9 }, Usual with { RigMass = -1 }, Usual with { BoardMass = -1 },
            Usual with { RigCentreShare = 1.1 }, Usual with { GivenSideForce = 0 },
        ];
        Assert.All(briefs, brief => Assert.Throws<ArgumentOutOfRangeException>(() => SailingBalance.Of(brief, Depth)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SailingBalance.Of(Usual, 1.86));
        Assert.Throws<ArgumentOutOfRangeException>(() => SailingBalance.Of(Usual, -0.01));
        Assert.Throws<ArgumentNullException>(() => SailingBalance.Of(null!, Depth));
    }

    [Fact]
    public void Of_refuses_estimates_outside_their_ranges()
    {
        CaseEstimates[] estimates =
        [
            new() { GettingGoingHangOut = 0.05 }, new() { PumpingFactor = 1.6 }, new() { PumpingFactorHigh = 5.1 }, new() { GettingGoingFinShare = 1.1 }, new() { CruiseForceAngle = -0.1 },
            new() { GettingGoingForceAngle = 0.1 }, new() { TopForceAngle = 0.1 }, new() { TopShareLow = 1.1 }, new() { OverloadFactorLow = 2.1 }, new() { OverloadFactorHigh = 1.9 },
            new() { GroundingDeceleration = 0 }, new() { GroundingRiderShare = 1.1 }, new() { HangOutUncertainty = -0.1 }, new() { EffortHeightUncertainty = 0.6 }, new() { HullLiftOffsetShare = 0.3 },
        ];
        Assert.All(estimates, one => Assert.Throws<ArgumentOutOfRangeException>(() => SailingBalance.Of(Usual, Depth, one)));
    }
}
