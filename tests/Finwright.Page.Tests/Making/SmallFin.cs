using Finwright.Assessment;
using Finwright.Assessment.Stages;
using Finwright.Design;

namespace Finwright.Page.Tests.Making;

/// <summary>A small fin with two box bolts, printed, poured and cured once a test run.</summary>
internal static class SmallFin
{
    private static readonly Lazy<AssessmentResult> Cured = new(Work);

    public static FinDesign Design { get; } = new()
    {
        Name = "Small fin",
        Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 150, RootChordMm = 90 } },
    };

    /// <summary>Parts, print, pour and cure; nothing of water and strength.</summary>
    public static AssessmentResult Made => Cured.Value;

    private static AssessmentResult Work()
    {
        using Assessor assessor = new(new MemoryStageCache());
        return assessor.Assess(Design, AssessmentDepth.Cure);
    }
}
