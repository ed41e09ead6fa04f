using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Design;

namespace Finwright.Papers.Tests;

/// <summary>Demo designs, worked out in full once a test run.</summary>
internal static class MadeFins
{
    private static readonly Lazy<AssessmentResult> FairwayMade = new(() => Worked("fairway-upright", AssessmentDepth.Everything));
    private static readonly Lazy<AssessmentResult> SandbarMade = new(() => Worked("sandbar-delta", AssessmentDepth.Everything));

    /// <summary>An upright fin with box bolts, carbon rods, and a blade in two pieces.</summary>
    public static AssessmentResult Fairway => FairwayMade.Value;

    /// <summary>A short wide fin.</summary>
    public static AssessmentResult Sandbar => SandbarMade.Value;

    /// <summary>Works out a demo, or a change of it, as far as asked.</summary>
    public static AssessmentResult Worked(string demo, AssessmentDepth depth, Func<FinDesign, FinDesign>? change = null)
    {
        DesignReading reading = DesignReader.ReadFile(Path.Combine(Root, "examples", demo + ".fin.json"));
        using Assessor assessor = new(curves: CacheFolder.OpenCurves());
        return change is null ? assessor.Assess(reading, depth) : assessor.Assess(change(reading.Design!), depth);
    }

    /// <summary>The top folder of the repository.</summary>
    public static string Root { get; } = Top();

    private static string Top()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "finwright.slnx")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests do not run from within the repository.");
        return folder;
    }
}
