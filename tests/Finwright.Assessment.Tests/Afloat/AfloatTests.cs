using Finwright.Assessment.Afloat;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Water.Lifting;
using Finwright.Water.Polars;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Tests.Afloat;

public sealed class AfloatTests
{
    private static readonly FinAfloat Sailed = SailedFin.Sail(SailedFin.Design);

    [Fact]
    public void Every_case_in_which_the_water_matters_is_sailed_and_carried()
    {
        Assert.Equal([LoadCaseKind.GettingGoing, LoadCaseKind.Cruise, LoadCaseKind.TopSpeed, LoadCaseKind.Overload], Sailed.Cases.Select(own => own.Load.Kind));
        foreach (CaseAfloat own in Sailed.Cases.Where(own => own.IsCarried))
            Assert.Equal(own.Load.SideForce, own.UnderHull.Result.SideForce, 1e-3 * own.Load.SideForce);
        Assert.True(Sailed[LoadCaseKind.Cruise]!.IsCarried);
        Assert.Null(Sailed[LoadCaseKind.Grounding]);
    }

    [Fact]
    public void The_hull_lies_between_its_bounds()
    {
        CaseAfloat cruise = Sailed[LoadCaseKind.Cruise]!;
        double hull = cruise.UnderHull.Result.Flow.Leeway;
        Assert.InRange(hull, cruise.UnderMirror.Result.Flow.Leeway, cruise.UnderBareSurface.Result.Flow.Leeway);
        for (int i = 2; i < Sailed.Sweep.Count && Sailed.Sweep[i].Status == LiftingStatus.Attached && Sailed.SweepUnderMirror[i].Status == LiftingStatus.Attached; i++)
            Assert.InRange(Sailed.Sweep[i].SideForce, Sailed.SweepUnderBareSurface[i].SideForce, Sailed.SweepUnderMirror[i].SideForce);
    }

    [Fact]
    public void The_balance_is_struck_at_the_depth_where_the_load_acts()
    {
        double acts = Sailed[LoadCaseKind.Cruise]!.UnderHull.Result.CentreOfEffort!.Value.Y;
        // The depth moves with the load by far less than a tenth of the span.
        Assert.Equal(acts, Sailed.Balance.FinEffortDepth, 0.005);
    }

    [Fact]
    public void The_pressure_at_cruise_is_lowest_on_the_upper_side()
    {
        PressureAlong pressure = Sailed.Pressure!;
        Assert.Equal(pressure.X.Count, pressure.Cp.Count);
        int lowest = pressure.Cp.Index().MinBy(pair => pair.Item).Index;
        Assert.True(lowest < pressure.X.Count / 2);
        Assert.True(pressure.BoilingCp < -1);
    }

    [Fact]
    public void Polars_cover_the_span_and_the_speeds()
    {
        FinPolars polars = SailedFin.Polars(SailedFin.Design);
        Assert.Null(polars.Problem);
        SectionPolarFamily family = polars.Family!;
        Assert.Equal(0, family.Positions[0]);
        Assert.InRange(family.Positions[^1], 0.9, 1);
        foreach (CaseAfloat own in Sailed.Cases.Where(own => own.IsCarried))
            foreach (StripResult strip in own.UnderHull.Result.Strips.Where(strip => strip.Depth < 0.95 * 0.36))
                Assert.NotEqual(PolarOrigin.BeyondTable, strip.Section!.Value.Origin);
    }

    [Fact]
    public void A_finish_that_differs_from_side_to_side_is_solved_for_both_signs()
    {
        FinDesign uneven = SailedFin.Design with { Shape = SailedFin.Design.Shape with { PortFinish = Finish.BarePrint } };
        FinPolars polars = SailedFin.Polars(uneven);
        Assert.NotEqual(polars.StarboardFinish, polars.PortFinish, StringComparer.Ordinal);
        Assert.True(polars.Family!.Tables[0].Curves[0].Conditions.Lower.RoughnessHeight > polars.Family.Tables[0].Curves[0].Conditions.Upper.RoughnessHeight);
        // Roughness counts in chords: more of them near the tip.
        Assert.True(polars.Family.Tables[^1].Curves[0].Conditions.Lower.RoughnessHeight > polars.Family.Tables[0].Curves[0].Conditions.Lower.RoughnessHeight);
    }

    [Fact]
    public void A_section_out_of_the_method_s_range_is_said_not_guessed()
    {
        FinDesign thick = SailedFin.Design with { Shape = SailedFin.Design.Shape with { Sections = [new() { AtPercent = 0, ThicknessPercent = 24 }] } };
        FinAfloat afloat = SailedFin.Sail(thick);
        Assert.Contains("24 % thick", afloat.Problem, StringComparison.Ordinal);
        Assert.Empty(afloat.Cases);
        Assert.Null(afloat.Surface);
    }

    [Fact]
    public void Sections_that_never_converge_are_said_not_guessed()
    {
        FinAfloat afloat = SailedFin.Sail(SailedFin.Design, (section, conditions, angles, _) => new() { Conditions = conditions, Points = [.. angles.Select(angle => new Finwright.Water.Sections.SectionPoint { AngleOfAttack = angle, Converged = false })] });
        Assert.Contains("did not converge", afloat.Problem, StringComparison.Ordinal);
        Assert.Empty(afloat.Cases);
    }

    [Fact]
    public void Sections_that_the_flow_refuses_are_said_not_guessed()
    {
        FinAfloat afloat = SailedFin.Sail(SailedFin.Design, (section, _, _, _) => throw new ArgumentException("The sides cross.", nameof(section)));
        Assert.Contains("The sides cross. Look", afloat.Problem, StringComparison.Ordinal);
        Assert.Empty(afloat.Cases);
    }

    [Fact]
    public void A_strip_at_the_trailing_edge_adds_area()
    {
        FinAfloat with = SailedFin.Sail(SailedFin.Design with { Shape = SailedFin.Design.Shape with { Strip = new() { OverhangMm = 10 } } });
        double added = with[LoadCaseKind.Cruise]!.UnderHull.Result.Area - Sailed[LoadCaseKind.Cruise]!.UnderHull.Result.Area;
        // 10 mm over 80 % of 360 mm, a little less where it runs out.
        Assert.Equal(0.010 * 0.8 * 0.36, added, 2e-4);
    }

    [Fact]
    public void The_key_of_the_polars_holds_what_they_read_and_nothing_else()
    {
        StageKey Key(FinDesign design) => new StageRun(design, new MemoryStageCache(), () => throw new InvalidOperationException(), null, CancellationToken.None).KeyOf(FinStages.Polars);
        FinDesign design = SailedFin.Design;
        StageKey own = Key(design);
        Assert.Equal(own, Key(design with { Brief = design.Brief with { RiderMassKg = 60, SailAreaM2 = 5, Weed = Weed.Thick, CruiseSpeedMPerS = 10 }, Prove = new() { MassKg = 22 }, Print = design.Print with { LayerMm = 0.1 } }));
        Assert.NotEqual(own, Key(design with { Brief = design.Brief with { TopSpeedMPerS = 16 } }));
        Assert.NotEqual(own, Key(design with { Brief = design.Brief with { Water = WaterKind.Fresh } }));
        Assert.NotEqual(own, Key(design with { Brief = design.Brief with { WaterState = WaterState.Glassy } }));
        Assert.NotEqual(own, Key(design with { Shape = design.Shape with { PortFinish = Finish.Polished } }));
        FinDesign bare = design with { Shape = design.Shape with { PortFinish = Finish.BarePrint } };
        Assert.NotEqual(Key(bare), Key(bare with { Print = design.Print with { LayerMm = 0.1 } }));
        Assert.NotEqual(Key(bare), Key(bare with { Parts = design.Parts with { BladeAttitude = PrintAttitude.Lying } }));
    }
}
