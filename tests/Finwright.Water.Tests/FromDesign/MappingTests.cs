using Finwright.Design;
using Finwright.Geometry.Outlines;
using Finwright.Water.Finishes;
using Finwright.Water.FromDesign;
using Finwright.Water.Sailing;
using Finwright.Water.Ventilation;
using DesignOutline = Finwright.Design.Outline;

namespace Finwright.Water.Tests.FromDesign;

public sealed class MappingTests
{
    private static readonly FinDesign Small = new()
    {
        Name = "Reed 30",
        Shape = new() { Outline = new DesignOutline { Family = OutlineFamily.SteepRake, SpanMm = 300, RootChordMm = 130 } },
    };

    [Theory]
    [InlineData(WaterKind.Sea, 35.16504)]
    [InlineData(WaterKind.Brackish, 15)]
    [InlineData(WaterKind.Fresh, 0)]
    public void Properties_take_kind_and_temperature_of_the_brief(WaterKind kind, double salinity)
    {
        WaterProperties water = WaterFromDesign.Properties(new() { Water = kind, WaterTemperatureCelsius = 18 });
        Assert.Equal(WaterProperties.At(18, salinity), water);
    }

    [Fact]
    public void Brief_becomes_metres_and_keeps_a_given_side_force()
    {
        SailingBrief brief = SailingFromDesign.Brief(new() { HangOutMm = 900, SailEffortHeightMm = 1800, BoardWidthMm = 650, SideForceN = 310 });
        Assert.Equal((0.9, 1.8, 0.65, 310.0), (brief.HangOut, brief.SailEffortHeight, brief.BoardWidth, brief.GivenSideForce));
        Assert.Null(SailingFromDesign.Brief(new()).GivenSideForce);
    }

    [Fact]
    public void Default_brief_gives_a_load_for_every_case() =>
        Assert.All(SailingBalance.Of(SailingFromDesign.Brief(new()), 0.16).Cases, c => Assert.True(c.SideForce + c.ImpactForce > 100));

    [Theory]
    [InlineData(WaterState.Glassy, 7)]
    [InlineData(WaterState.Ripples, 6)]
    [InlineData(WaterState.Chop, 5)]
    [InlineData(WaterState.Rough, 4)]
    public void Water_state_in_plain_words_gives_a_whole_amplification(WaterState state, double n) =>
        // Judgement, no source: the intensities are chosen for these.
        Assert.Equal(n, WaterFromDesign.CriticalAmplification(state), 0.06);

    [Fact]
    public void Default_water_state_lies_in_the_band_for_chop() =>
        Assert.InRange(WaterFromDesign.CriticalAmplification(new Brief().WaterState), FreeStreamTurbulence.ChopLow, FreeStreamTurbulence.ChopHigh);

    [Fact]
    public void Sides_have_their_own_finish()
    {
        FinDesign design = Small with { Shape = Small.Shape with { StarboardFinish = Finish.Polished, PortFinish = Finish.Grit400 } };
        Assert.Equal(SurfaceFinish.Polished, FinishFromDesign.Starboard(design));
        Assert.Equal(SurfaceFinish.Grit400, FinishFromDesign.Port(design));
    }

    [Fact]
    public void Bare_print_depends_on_how_the_blade_was_printed()
    {
        FinDesign bare = Small with { Shape = Small.Shape with { StarboardFinish = Finish.BarePrint } };
        SurfaceFinish standing = FinishFromDesign.Starboard(bare), lying = FinishFromDesign.Starboard(bare with { Parts = new() { BladeAttitude = PrintAttitude.Lying } });
        Assert.True(lying.ElementHeight > 4 * standing.ElementHeight);
        Assert.True(lying.CriticalRoughnessReynoldsNumber < standing.CriticalRoughnessReynoldsNumber);
        Assert.Equal(lying, FinishFromDesign.Starboard(bare, standing: false));
        Assert.Equal(standing, FinishFromDesign.Starboard(bare, standing: true));
        Assert.Equal(lying.ElementHeight / 2, FinishFromDesign.Starboard(bare with { Print = new() { LayerMm = 0.1 } }, standing: false).ElementHeight, 1e-12);
    }

    [Fact]
    public void Hull_over_the_root_is_the_nearer_of_tail_end_and_rail()
    {
        // 180 mm to the tail end less half of 130 mm; half of 430 mm to the rail.
        Assert.Equal(0.115, SailingFromDesign.AirPath(new(), 0.13).HullCover, 1e-12);
        Assert.Equal(0.1, SailingFromDesign.AirPath(new() { TailWidthMm = 200 }, 0.13).HullCover, 1e-12);
        AirPath path = SailingFromDesign.AirPath(new(), 0.13, 0.001, false);
        Assert.Equal((0.001, false), (path.RootGap, path.BoltHolesSealed));
    }

    [Fact]
    public void Weed_and_draught_are_judged_for_the_spot()
    {
        Planform planform = Planform.Of(Geometry.FromDesign.OutlineFromDesign.Create(Small.Shape.Outline, [])!);
        Assert.Equal(MarginState.Holds, SpotFromDesign.Weed(new() { Weed = Weed.None }, planform).State);
        Assert.True(SpotFromDesign.Weed(new() { Weed = Weed.Thick }, planform).Value < SpotFromDesign.Weed(new() { Weed = Weed.Some }, planform).Value);
        Assert.Equal(MarginState.Fails, SpotFromDesign.Draught(new() { DraughtLimitMm = 290 }, planform).State);
        Assert.Equal(MarginState.Holds, SpotFromDesign.Draught(new() { DraughtLimitMm = 310 }, planform).State);
        Assert.Null(SpotFromDesign.Draught(new(), planform).Limit);
    }

    [Fact]
    public void Steep_rake_sheds_weed_and_an_upright_fin_does_not()
    {
        Assert.NotEqual(MarginState.Fails, Judged(OutlineFamily.SteepRake));
        Assert.Equal(MarginState.Fails, Judged(OutlineFamily.Upright));

        static MarginState Judged(OutlineFamily family)
        {
            DesignOutline outline = Small.Shape.Outline with { Family = family };
            return SpotFromDesign.Weed(new() { Weed = Weed.Thick }, Planform.Of(Geometry.FromDesign.OutlineFromDesign.Create(outline, [])!)).State;
        }
    }
}
