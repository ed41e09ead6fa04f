using Finwright.Assessment.Afloat;
using Finwright.Assessment.Tests.Afloat;
using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Numerics;

namespace Finwright.Assessment.Tests.Verdicts;

public sealed class WaterVerdictsTests
{
    private static readonly string[] Codes = ["stall-reserve", "stall-overload", "ventilation", "cavitation", "leeway", "drag-share", "centre-of-effort", "lift-opinion", "weed", "draught"];
    private static readonly FinAfloat Sailed = SailedFin.Sail(SailedFin.Design);
    private static readonly IReadOnlyList<Verdict> Verdicts = WaterVerdicts.Of(SailedFin.Design, Sailed);

    private static Verdict Get(string code, FinDesign? design = null, FinAfloat? reference = null) =>
        (design is null && reference is null ? Verdicts : WaterVerdicts.Of(design ?? SailedFin.Design, design is null ? Sailed : SailedFin.Sail(design), reference, "the known fin")).Single(verdict => verdict.Code == code);

    [Fact]
    public void Of_judges_everything_once_and_puts_the_worst_first()
    {
        Assert.Equal(Codes.Order(StringComparer.Ordinal), Verdicts.Select(verdict => verdict.Code).Order(StringComparer.Ordinal));
        Assert.Equal(Verdicts.Select(verdict => verdict.State).Order(), Verdicts.Select(verdict => verdict.State));
    }

    [Theory]
    [InlineData(1.05, VerdictState.Holds)]
    [InlineData(0.85, VerdictState.Tight)]
    [InlineData(1.30, VerdictState.Fails)]
    public void Lifting_surface_and_formula_that_differ_are_told(double ratio, VerdictState state)
    {
        double formula = Sailed.Slope!.Formula!.Value;
        FinAfloat differing = Sailed with { Slope = Sailed.Slope with { Surface = ratio * formula } };
        Verdict verdict = WaterVerdicts.Of(SailedFin.Design, differing).Single(own => own.Code == "lift-opinion");
        Assert.Equal(state, verdict.State);
        Assert.Equal(100 * Math.Abs(ratio - 1), verdict.Value!.Value, 1e-9);
        Assert.Equal(24, verdict.Limit!.Value, 1e-9);
        // Where the formula does not reach nothing is said.
        Assert.DoesNotContain(WaterVerdicts.Of(SailedFin.Design, Sailed with { Slope = Sailed.Slope with { Formula = null } }), own => own.Code == "lift-opinion");
    }

    [Fact]
    public void Every_verdict_says_what_why_and_how_sure_and_the_bad_ones_what_to_change()
    {
        foreach (FinDesign design in (FinDesign[])[SailedFin.Design, Small(), Weedy()])
        {
            foreach (Verdict verdict in WaterVerdicts.Of(design, SailedFin.Sail(design)))
            {
                Assert.NotEmpty(verdict.Checked);
                Assert.EndsWith(".", verdict.Found, StringComparison.Ordinal);
                Assert.EndsWith(".", verdict.Why, StringComparison.Ordinal);
                Assert.EndsWith(".", verdict.HowSure, StringComparison.Ordinal);
                Assert.True(verdict.State is VerdictState.Holds || verdict.Change.EndsWith('.'), verdict.Code);
                Assert.DoesNotContain("NaN", verdict.Found + verdict.Numbers, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void The_state_agrees_with_value_and_limit()
    {
        foreach (Verdict verdict in Verdicts.Concat(WaterVerdicts.Of(Small(), SailedFin.Sail(Small()))))
            if (verdict.Margin is { } margin)
                Assert.Equal(margin.Value < 0, verdict.State == VerdictState.Fails);
    }

    [Fact]
    public void A_fin_much_too_small_fails_for_stall()
    {
        Verdict verdict = Get("stall-reserve", Small());
        Assert.Equal(VerdictState.Fails, verdict.State);
        Assert.True(verdict.Value!.Value > 1);
        Assert.Contains("getting going", verdict.Checked, StringComparison.Ordinal);
    }

    [Fact]
    public void More_side_force_leaves_less_reserve_and_more_leeway()
    {
        FinDesign heavy = SailedFin.Design with { Brief = SailedFin.Design.Brief with { SideForceN = 450 } }, light = SailedFin.Design with { Brief = SailedFin.Design.Brief with { SideForceN = 200 } };
        Assert.True(Get("stall-reserve", heavy).Value!.Value > Get("stall-reserve", light).Value!.Value);
        Assert.True(Get("leeway", heavy).Value!.Value > Get("leeway", light).Value!.Value);
    }

    [Fact]
    public void The_centre_of_effort_is_compared_only_with_a_fin_that_is_given()
    {
        Assert.Equal(VerdictState.NotKnown, Get("centre-of-effort").State);
        Assert.Equal(0, Get("centre-of-effort", reference: Sailed).Value!.Value);
        // The same blade 30 mm farther aft on its base.
        FinDesign aft = SailedFin.Design with { Base = SailedFin.Design.Base with { BladeOffsetMm = 30 } };
        Verdict moved = Get("centre-of-effort", aft, Sailed);
        Assert.Equal(30, moved.Value!.Value, 0.1);
        Assert.Equal(VerdictState.Fails, moved.State);
        Assert.Contains("farther aft", moved.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Weed_and_draught_follow_the_spot()
    {
        Assert.Equal(VerdictState.Holds, Get("weed").State);
        Assert.Equal(VerdictState.Holds, Get("draught").State);
        Assert.Equal(VerdictState.Fails, Get("weed", Weedy()).State);
        Verdict deep = Get("draught", Weedy());
        Assert.Equal(VerdictState.Fails, deep.State);
        Assert.Equal(360, deep.Value!.Value, 1e-6);
        Assert.Equal(300, deep.Limit!.Value, 1e-6);
        Assert.Equal("360 mm, limit 300 mm", deep.Numbers);
    }

    [Fact]
    public void Without_the_flow_nothing_of_it_is_judged()
    {
        FinDesign thick = SailedFin.Design with { Shape = SailedFin.Design.Shape with { Sections = [new() { AtPercent = 0, ThicknessPercent = 24 }] } };
        IReadOnlyList<Verdict> verdicts = WaterVerdicts.Of(thick, SailedFin.Sail(thick));
        Assert.Equal(Codes.Where(code => code != "lift-opinion").Order(StringComparer.Ordinal), verdicts.Select(verdict => verdict.Code).Order(StringComparer.Ordinal));
        Assert.All(verdicts.Where(verdict => verdict.Code is not ("weed" or "draught")), verdict => Assert.Equal(VerdictState.NotKnown, verdict.State));
    }

    [Fact]
    public void Numbers_are_said_with_their_unit_once_and_no_idle_spread()
    {
        Verdict verdict = new() { Code = "x", Checked = "x", State = VerdictState.Holds, Certainty = Certainty.Judgement, HowSure = "", Found = "", Why = "", Value = new(3.14159, "°", 1), Limit = new(7, "°", 0), Uncertainty = new(0.5, "°", 1) };
        Assert.Equal("3.1 ± 0.5°, limit 7°", verdict.Numbers);
        Assert.Equal("3.1°, limit at least 7°", (verdict with { Uncertainty = new(0.01, "°", 1), MustStayAbove = true }).Numbers);
        Assert.Equal("0 mm", (verdict with { Value = new(-0.2, "mm", 0), Limit = null, Uncertainty = null }).Numbers);
        Assert.Equal("", (verdict with { Value = null }).Numbers);
        Assert.Equal(-3.86, (verdict with { Value = new(10.86, "°", 1) }).Margin!.Value, 1e-9);
    }

    [Fact]
    public void Every_state_has_a_mark_and_a_word()
    {
        foreach (VerdictState state in Enum.GetValues<VerdictState>())
            Assert.True(StateWords.Mark(state).Length == 1 && StateWords.Word(state).Length > 3);
    }

    private static FinDesign Small() => SailedFin.Design with { Shape = SailedFin.Design.Shape with { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 160, RootChordMm = 90 } } };

    private static FinDesign Weedy() => SailedFin.Design with { Brief = SailedFin.Design.Brief with { Weed = Weed.Thick, DraughtLimitMm = 300 } };
}
