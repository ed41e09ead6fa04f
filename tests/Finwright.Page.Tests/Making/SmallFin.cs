using Finwright.Assessment;
using Finwright.Assessment.Stages;
using Finwright.Design;

namespace Finwright.Page.Tests.Making;

/// <summary>A small fin with two box bolts, printed, poured and cured once a test run.</summary>
internal static class SmallFin
{
    private static readonly Lazy<AssessmentResult> Cured = new(Work);

    public static FinDesign Design { get; } = DesignReader.Read(
        """
        {
          "format": 2,
          "name": "Small fin",
          "shape": {
            "outline": { "family": "upright", "span_mm": 150, "root_chord_mm": 190 },
            "sections": [
              { "at_percent": 0, "section": "naca-0010-34", "thickness_percent": 14 },
              { "at_percent": 100, "section": "naca-0010-34", "thickness_percent": 12 }
            ]
          }
        }
        """).Design!;

    /// <summary>Parts, print, pour and cure; nothing of water and strength.</summary>
    public static AssessmentResult Made => Cured.Value;

    private static AssessmentResult Work()
    {
        using Assessor assessor = new(new MemoryStageCache());
        return assessor.Assess(Design, AssessmentDepth.Cure);
    }
}
