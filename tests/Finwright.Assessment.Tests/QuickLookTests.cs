using Finwright.Assessment.Afloat;
using Finwright.Design;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Tests;

/// <summary>What is shown while a hand moves, against the full answer.</summary>
public sealed class QuickLookTests
{
    private static readonly FinDesign Design = new()
    {
        Name = "test",
        Shape = new() { Outline = new() { Family = OutlineFamily.Raked, SpanMm = 240, RootChordMm = 110 } },
        Hardware = new() { CarbonRods = [new() { RootChordPercent = 30, IntoBaseMm = 25 }] },
    };

    [Fact]
    public void With_the_design_s_own_sections_it_is_the_full_answer()
    {
        using Assessor assessor = new();
        AssessmentResult full = assessor.Assess(Design, AssessmentDepth.Strength, cancellation: TestContext.Current.CancellationToken);
        AssessmentResult quick = QuickLook.Of(Design, full.Blade!, full, TestContext.Current.CancellationToken);
        foreach (CaseAfloat own in full.Afloat!.Cases)
            Assert.Equal(own.ShareOfStall, quick.Afloat![own.Load.Kind]!.ShareOfStall);
        Assert.Equal(full.Loaded!.Cases.Select(own => own.ToString()), quick.Loaded!.Cases.Select(own => own.ToString()), StringComparer.Ordinal);
        Assert.Equal(full.Verdicts, quick.Verdicts);
        AssessmentResult whole = QuickLook.WithCurves(quick with { Afloat = quick.Afloat! with { Sweep = [] } }, TestContext.Current.CancellationToken);
        Assert.Equal(full.Afloat.Sweep.Select(own => own.SideForce), whole.Afloat!.Sweep.Select(own => own.SideForce));
    }

    [Fact]
    public void For_a_deeper_fin_it_comes_close_to_the_full_answer()
    {
        using Assessor assessor = new();
        AssessmentResult before = assessor.Assess(Design, AssessmentDepth.Water, cancellation: TestContext.Current.CancellationToken);
        FinDesign deeper = Design with { Shape = Design.Shape with { Outline = Design.Shape.Outline with { SpanMm = 260 } } };
        AssessmentResult full = assessor.Assess(deeper, AssessmentDepth.Water, cancellation: TestContext.Current.CancellationToken);
        AssessmentResult quick = QuickLook.Of(deeper, full.Blade!, before, TestContext.Current.CancellationToken);
        foreach (LoadCaseKind kind in new[] { LoadCaseKind.GettingGoing, LoadCaseKind.Cruise, LoadCaseKind.TopSpeed })
        {
            CaseAfloat right = full.Afloat![kind]!, shown = quick.Afloat![kind]!;
            // Chords stay as they are, and the Reynolds numbers with them: what is left is where along the span the sections stand.
            Assert.Equal(right.UnderHull.Result!.Flow.Leeway, shown.UnderHull.Result!.Flow.Leeway, 0.01 * Math.Abs(right.UnderHull.Result!.Flow.Leeway));
            Assert.Equal(right.ShareOfStall!.Value, shown.ShareOfStall!.Value, 0.02);
        }
    }

    [Fact]
    public void Without_sections_there_is_no_water()
    {
        using Assessor assessor = new();
        AssessmentResult shape = assessor.Assess(Design, AssessmentDepth.Shape, cancellation: TestContext.Current.CancellationToken);
        AssessmentResult quick = QuickLook.Of(Design, shape.Blade!, before: null, TestContext.Current.CancellationToken);
        Assert.Null(quick.Afloat);
        Assert.Empty(quick.Verdicts);
        Assert.NotNull(quick.Bench);
    }
}
