using Finwright.Assessment;
using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Workshop.Starting;

namespace Finwright.Workshop.Tests.Starting;

public sealed class NewFinTests
{
    public static TheoryData<OutlineFamily> Families => [OutlineFamily.Upright, OutlineFamily.Raked, OutlineFamily.SteepRake, OutlineFamily.WideDelta];

    [Theory]
    [MemberData(nameof(Families))]
    public void Starting_values_fail_no_verdict_on_water_and_strength_for_a_middling_rider(OutlineFamily family)
    {
        using Assessor assessor = new();
        AssessmentResult result = assessor.Assess(new NewFin { Name = "New", Family = family }.Draw(), AssessmentDepth.Strength, cancellation: TestContext.Current.CancellationToken);
        Assert.NotEmpty(result.Verdicts);
        Assert.NotEmpty(result.StrengthVerdicts);
        Assert.Empty(result.Verdicts.Concat(result.StrengthVerdicts).Where(verdict => verdict.State is VerdictState.Fails).Select(verdict => verdict.Checked));
    }

    [Fact]
    public void What_is_given_counts_and_what_is_not_is_usual()
    {
        FinDesign design = new NewFin { Name = "New", Family = OutlineFamily.Raked, SpanMm = 220, RootChordMm = 150, ThicknessPercent = 9, Brief = new() { RiderMassKg = 95 } }.Draw().Design!;
        Assert.Equal(220, design.Shape.Outline.SpanMm);
        Assert.Equal(150, design.Shape.Outline.RootChordMm);
        Assert.Null(design.Shape.Outline.AreaCm2);
        Assert.Equal(UsualFin.Of(OutlineFamily.Raked).RakeDegrees, design.Shape.Outline.RakeDegrees);
        Assert.Equal(95, design.Brief.RiderMassKg);
        // Thicker toward the tip than at the root is never started with.
        Assert.All(design.Shape.Sections, station => Assert.Equal(9, station.ThicknessPercent));
    }

    [Fact]
    public void Numbers_that_give_no_fin_are_told_and_nothing_is_thrown()
    {
        Assert.True(new NewFin { Name = "New", SpanMm = -5, AsPoints = true }.Draw().HasErrors);
        Assert.True(new NewFin { Name = "New", SpanMm = 300, AreaCm2 = 200, RootChordMm = 100 }.Draw().HasErrors);
        Assert.Throws<InvalidOperationException>(() => new NewFin { Name = "New", Family = OutlineFamily.Free }.Draw());
    }

    [Fact]
    public void An_outline_as_points_has_the_same_edges()
    {
        FinDesign design = new NewFin { Name = "New", AsPoints = true }.Draw().Design!;
        Assert.Equal(OutlineFamily.Free, design.Shape.Outline.Family);
        Assert.Equal(UsualFin.Of(OutlineFamily.Upright).SpanMm, design.Shape.Outline.LeadingEdge[^1].DepthMm, 3);
    }
}
