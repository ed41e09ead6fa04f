using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Workshop.Comparing;

namespace Finwright.Workshop.Tests.Comparing;

public sealed class FinResultsTests
{
    private static readonly AssessmentResult OnBench = Assessed(AssessmentDepth.Bench);

    [Fact]
    public void Of_gives_every_group_that_was_worked_out_and_no_other()
    {
        Assert.Equal([ResultGroup.Shape, ResultGroup.Bench], FinResults.Of(OnBench).Groups);
        Assert.Equal([ResultGroup.Shape], FinResults.Of(Assessed(AssessmentDepth.Shape)).Groups);
        FinResults all = FinResults.Of(OnBench);
        Assert.Equal(all.Lines.Count, all.Lines.Select(line => line.Key).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(all.Lines.OrderBy(line => line.Group), all.Lines);
        Assert.All(all.Lines, line => Assert.NotEmpty(line.Name));
        Assert.All(all.Lines.Where(line => line.Low is not null), line => Assert.True(line.Low <= line.Value && line.Value <= line.High, line.Key));
    }

    [Fact]
    public void Of_gives_the_numbers_that_the_design_asks_for_and_the_bench_answers()
    {
        FinResults results = FinResults.Of(OnBench);
        // The design's own words.
        Assert.Equal(OnBench.Design!.Shape.Outline.SpanMm!.Value, results["shape.span"]!.Value!.Value, 1e-6);
        Assert.Equal(OnBench.Design.Prove.MassKg, results["bench.mass"]!.Value!.Value, 1e-9);
        BenchSummary bench = BenchSummary.Of(OnBench, "");
        ResultLine tip = results["bench.tip.mid_chord"]!;
        Assert.Equal((bench.DeflectionMm!.Tip.MidChord, bench.DeflectionLowMm!.Tip.MidChord, bench.DeflectionHighMm!.Tip.MidChord), (tip.Value, tip.Low, tip.High));
        Assert.Equal("mm", tip.Unit);
    }

    [Fact]
    public void Of_a_part_that_is_poured_adds_up_to_the_weight_of_the_fin()
    {
        FinResults results = new()
        {
            Name = "Sample",
            DesignSha256 = "",
            Groups = [ResultGroup.Plan],
            Lines = [],
        };
        Assert.Null(results[ResultKeys.FinMass]);
        // Independent parts: their ranges join as the root of the sum of squares, with a hundredth for sanding and lacquer.
        Numerics.Ranged mass = FinMass.Of(new(200, 192, 208), new(250, 240, 260), new(50, 40, 60));
        Assert.Equal(500, mass.Value, 1e-9);
        Assert.Equal(Math.Sqrt(8 * 8 + 10 * 10 + 10 * 10 + 5 * 5), mass.High - mass.Value, 1e-9);
    }

    [Fact]
    public void Write_and_Read_give_the_same_results()
    {
        FinResults results = FinResults.Of(OnBench);
        FinResults read = FinResults.Read(results.Write())!;
        Assert.Equal(results.Lines, read.Lines);
        Assert.Equal(results.Groups, read.Groups);
        Assert.Equal((results.Name, results.DesignSha256, results.Layout), (read.Name, read.DesignSha256, read.Layout));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{}")]
    [InlineData("{\"layout\":1,\"name\":\"a\",\"design_sha256\":\"\",\"groups\":[\"songs\"],\"lines\":[]}")]
    [InlineData("{\"layout\":1,\"name\":\"a\",\"design_sha256\":\"\",\"groups\":null,\"lines\":[]}")]
    [InlineData("{\"layout\":1,\"name\":\"a\",\"design_sha256\":\"\",\"groups\":[],\"lines\":[null]}")]
    [InlineData("{\"layout\":1,\"name\":\"a\",\"design_sha256\":\"\",\"groups\":[],\"lines\":[{\"key\":\"x\"}]}")]
    public void Read_of_what_is_no_result_is_null(string json) => Assert.Null(FinResults.Read(json));

    [Fact]
    public void Read_of_another_layout_is_null() =>
        Assert.Null(FinResults.Read((FinResults.Of(OnBench) with { Layout = FinResults.CurrentLayout + 1 }).Write()));

    [Fact]
    public void With_takes_groups_from_others_and_keeps_the_order_of_the_job()
    {
        ResultLine area = new("shape.area", ResultGroup.Shape, "area", 285, null, "cm²", null, null, 1), bent = new("bench.tip", ResultGroup.Bench, "tip", 9, null, "mm", null, null, 1), cost = new("plan.cost", ResultGroup.Plan, "cost", 30, null, "EUR", null, null, 2);
        FinResults joined = ResultDifferenceTests.Results(area, cost, bent).With(ResultDifferenceTests.Results(area with { Value = 1 }, bent with { Value = 8 }), ResultGroup.Bench);
        Assert.Equal([area, cost, bent with { Value = 8 }], joined.Lines);
        Assert.Equal([ResultGroup.Shape], joined.Only(ResultGroup.Shape).Groups);
        Assert.Equal([area], joined.Only(ResultGroup.Shape).Lines);
    }

    private static AssessmentResult Assessed(AssessmentDepth depth)
    {
        using Assessor assessor = new();
        return assessor.Assess(SampleFins.Design(), depth);
    }
}
