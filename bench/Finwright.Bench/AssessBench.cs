using BenchmarkDotNet.Attributes;
using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Design;

namespace Finwright.Bench;

/// <summary>A demo design worked out from its file's content, nothing but curves of sections kept from before.</summary>
[MemoryDiagnoser]
public class AssessBench
{
    private DesignReading _reading = null!;

    [GlobalSetup]
    public void Read()
    {
        _reading = Examples.Read(Examples.All[0]);
        Assess(AssessmentDepth.Water);
    }

    [Benchmark(Description = "outline and sections")]
    public AssessmentResult Shape() => Assess(AssessmentDepth.Shape);

    [Benchmark(Description = "parts, print, pour and cure with its range, bill and schedule")]
    public AssessmentResult Made() => Assess(AssessmentDepth.Cure);

    [Benchmark(Description = "everything")]
    public AssessmentResult Everything() => Assess(AssessmentDepth.Everything);

    private AssessmentResult Assess(AssessmentDepth depth)
    {
        using Assessor assessor = new(curves: CacheFolder.OpenCurves());
        return assessor.Assess(_reading, depth);
    }
}
