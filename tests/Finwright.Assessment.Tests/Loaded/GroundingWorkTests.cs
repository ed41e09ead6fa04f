using Finwright.Assessment.Loaded;
using Finwright.Assessment.Tests.Afloat;
using Finwright.Design;
using Finwright.Strength.FromDesign;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Tests.Loaded;

public sealed class GroundingWorkTests
{
    private static readonly LoadCase Case = LoadedFin.Upright.Afloat.Balance[LoadCaseKind.Grounding];

    [Fact]
    public void Of_a_faster_strike_is_harder_in_proportion_and_bears_the_same()
    {
        GroundStrike slow = GroundingWork.Of(LoadedFin.Upright.Structure, Case with { Speed = 2 }), fast = GroundingWork.Of(LoadedFin.Upright.Structure, Case with { Speed = 6 });
        // V √(k m).
        Assert.Equal(3 * slow.ForceAtSpeed, fast.ForceAtSpeed, 1e-6 * fast.ForceAtSpeed);
        Assert.Equal(slow.BearableSpeed, fast.BearableSpeed, 1e-6 * slow.BearableSpeed);
        Assert.Equal(slow.BearableForce, slow.ForceAtSpeed * slow.BearableSpeed / 2, 1e-6 * slow.BearableForce);
    }

    [Fact]
    public void Of_more_mass_bears_less_speed_by_its_root()
    {
        GroundStrike light = GroundingWork.Of(LoadedFin.Upright.Structure, Case), heavy = GroundingWork.Of(LoadedFin.Upright.Structure, Case with { ImpactForce = 4 * Case.ImpactForce });
        Assert.Equal(4 * light.Mass, heavy.Mass, 1e-9 * heavy.Mass);
        Assert.Equal(light.BearableSpeed / 2, heavy.BearableSpeed, 1e-6 * light.BearableSpeed);
    }

    [Fact]
    public void Of_a_stronger_print_bears_more_and_of_a_raked_edge_rides_up()
    {
        FinStructure With(double strength)
        {
            FinDesign design = LoadedFin.Upright.Design with { Materials = new() { Printed = new() { StrengthMpa = strength } } };
            return FinBuilt.Of(design, SailedFin.Blade(design)).Structure!;
        }

        GroundStrike weak = GroundingWork.Of(With(20), Case), strong = GroundingWork.Of(With(40), Case);
        Assert.Equal(2 * weak.BearableForce, strong.BearableForce, 1e-6 * strong.BearableForce);
        Assert.False(weak.RidesUp);
        // Beyond the angle of friction, 24° for 0.45, and its counterpart at the edge.
        Assert.True(GroundingWork.Of(LoadedFin.Raked.Structure, Case).RidesUp);
    }

    [Fact]
    public void Of_a_joint_that_opens_gives_more_than_a_block()
    {
        FinDesign bolted = LoadedFin.Upright.Design with { Base = new(), Materials = new() { RootBonded = false }, Hardware = new() { CarbonRods = [new() { RootChordPercent = 35, IntoBaseMm = 20 }] } };
        FinBuilt built = FinBuilt.Of(bolted with { Base = new() { Fixing = Fixing.BaseOnly } }, SailedFin.Blade(bolted));
        Assert.Null(built.Problem);
        GroundStrike joint = GroundingWork.Of(built.Structure!, Case), block = GroundingWork.Of(LoadedFin.Upright.Structure, Case);
        Assert.True(joint.Compliance > block.Compliance);
        Assert.True(joint.BearableForce < block.BearableForce);
        Assert.Contains("joint", joint.GivesFirst, StringComparison.Ordinal);
    }
}
