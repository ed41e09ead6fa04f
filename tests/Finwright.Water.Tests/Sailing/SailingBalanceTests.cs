using Finwright.Numerics;
using Finwright.Water.Sailing;

namespace Finwright.Water.Tests.Sailing;

public sealed class SailingBalanceTests
{
    internal static readonly SailingBrief Usual = new()
    {
        RiderMass = 80,
        HangOut = 0.95,
        SailEffortHeight = 1.85,
        SailArea = 6.2,
        BoardWidth = 0.7,
        GettingGoingSpeed = 5,
        CruiseSpeed = 9,
        TopSpeed = 14,
    };

    [Fact]
    public void Of_usual_sailor_lies_in_the_range_makers_quote()
    {
        // Common practice, no source: 380 to 490 N for 85 kg, with 0.9 to 1.0 m and 1.7 to 2.0 m.
        SailingBalance balance = SailingBalance.Of(Usual with { RiderMass = 85 }, 0.15);
        Assert.InRange(balance.SideForce, 380, 490);
    }

    [Fact]
    public void Cases_stand_in_their_order_with_rising_speeds_and_bands_round_their_force()
    {
        SailingBalance balance = SailingBalance.Of(Usual, 0.15);
        Assert.Equal(Enum.GetValues<LoadCaseKind>(), balance.Cases.Select(c => c.Kind));
        Assert.All(balance.Cases, c =>
        {
            Assert.InRange(c.SideForce, c.SideForceLow, c.SideForceHigh);
            Assert.NotEmpty(c.Purpose);
            Assert.NotEmpty(c.Derivation);
        });
        Assert.Equal(5, balance[LoadCaseKind.GettingGoing].Speed);
        Assert.Equal(9, balance[LoadCaseKind.Cruise].Speed);
        Assert.Equal(14, balance[LoadCaseKind.TopSpeed].Speed);
        Assert.True(balance[LoadCaseKind.TopSpeed].SideForce < balance[LoadCaseKind.Cruise].SideForce);
        Assert.True(balance[LoadCaseKind.TopSpeed].SailLift > balance[LoadCaseKind.Cruise].SailLift);
        Assert.Equal(2 * balance.SideForce, balance[LoadCaseKind.Overload].SideForce, 1e-9);
    }

    [Fact]
    public void Grounding_loads_the_structure_from_ahead_and_not_from_the_side()
    {
        LoadCase grounding = SailingBalance.Of(Usual, 0.15)[LoadCaseKind.Grounding];
        Assert.Equal(0, grounding.SideForce);
        // Board 8, rig 9 and a third of 80 kg at 50 m/s².
        Assert.Equal((8 + 9 + 80.0 / 3) * 50, grounding.ImpactForce, 1e-9);
        Assert.Equal(Certainty.Judgement, grounding.Certainty);
        Assert.Contains("judgement", grounding.Derivation, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Given_side_force_is_used_and_the_derived_one_shown_beside_it()
    {
        SailingBalance derived = SailingBalance.Of(Usual, 0.15), given = SailingBalance.Of(Usual with { GivenSideForce = 300 }, 0.15);
        Assert.Equal(300, given.SideForce);
        Assert.Equal(derived.SideForce, given.DerivedSideForce, 1e-9);
        LoadCase cruise = given[LoadCaseKind.Cruise];
        Assert.Equal((300, 300, 300), (cruise.SideForce, cruise.SideForceLow, cruise.SideForceHigh));
        Assert.Equal(derived.SideForce, cruise.DerivedSideForce, 1e-9);
        foreach (LoadCase one in given.Cases.Where(c => c.Kind is not LoadCaseKind.Grounding))
            Assert.Equal(300 / derived.SideForce, one.SideForce / derived[one.Kind].SideForce, 1e-12);
    }

    [Fact]
    public void Deeper_fin_or_higher_sail_leaves_less_side_force()
    {
        double force = SailingBalance.Of(Usual, 0.15).SideForce;
        Assert.True(SailingBalance.Of(Usual, 0.3).SideForce < force);
        Assert.True(SailingBalance.Of(Usual with { SailEffortHeight = 2.1 }, 0.15).SideForce < force);
    }

    [Fact]
    public void Uncertainty_is_that_of_stance_and_height_together()
    {
        // By hand: 0.1/0.95 of hang-out (10 %, less the rig's part), 10 % of height, 35 mm of lift offset on a weight of 97 kg (4 %): about 15 %.
        SailingBalance balance = SailingBalance.Of(Usual, 0.15);
        Assert.InRange(balance.DerivedUncertainty / balance.DerivedSideForce, 0.13, 0.17);
    }

    [Fact]
    public void Speeds_that_fall_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SailingBalance.Of(Usual with { TopSpeed = 8 }, 0.15));

    [Fact]
    public void Depth_of_load_above_the_hull_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SailingBalance.Of(Usual, -0.1));

    [Fact]
    public void Rules_of_thumb_give_their_bands_and_say_where_the_fin_stands()
    {
        IReadOnlyList<RuleOfThumb> rules = RulesOfThumb.For(Usual, 0.030, 0.42);
        // Common practice, no source: 41 to 55 cm²/m²; 0.55 of the width; 4.7 to 5.6 cm/m²; 1 cm per 10 kg from 80 kg (from memory).
        Assert.Equal((254.2e-4, 341e-4), (rules[0].Low, rules[0].High), Near);
        Assert.Equal((0.3465, 0.4235), (rules[1].Low, rules[1].High), Near);
        Assert.Equal((0.2914, 0.3472), (rules[2].Low, rules[2].High), Near);
        Assert.Equal((0.3465, 0.4235), (rules[3].Low, rules[3].High), Near);
        Assert.Equal([BandPosition.Within, BandPosition.Within, BandPosition.Above, BandPosition.Within], rules.Select(r => r.Position));
        Assert.All(rules, rule => Assert.True(rule.Certainty is Certainty.CommonPractice or Certainty.FromMemory));
        Assert.Equal(0.405, RulesOfThumb.For(Usual with { RiderMass = 100 }, 0.030, 0.42)[3] switch { var r => (r.Low + r.High) / 2 }, 1e-12);
    }

    private static bool Near((double Low, double High) a, (double Low, double High) b) => Math.Abs(a.Low - b.Low) < 1e-12 && Math.Abs(a.High - b.High) < 1e-12;
}
