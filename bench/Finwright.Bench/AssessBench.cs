using BenchmarkDotNet.Attributes;
using Finwright.Assessment;
using Finwright.Design;

namespace Finwright.Bench;

/// <summary>A demo design worked out from its file's content, nothing kept from before; WaterBench and StrengthBench have the rest.</summary>
[MemoryDiagnoser]
public class AssessBench
{
    private DesignReading _reading = null!;

    [GlobalSetup]
    public void Read() => _reading = Examples.Read(Examples.All[0]);

    [Benchmark(Description = "outline and sections")]
    public AssessmentResult Shape() => Assess(AssessmentDepth.Shape);

    [Benchmark(Description = "parts, print, pour and cure with its range, bill and schedule")]
    public AssessmentResult Made() => Assess(DryRun.IsOn ? AssessmentDepth.Print : AssessmentDepth.Cure);

    private AssessmentResult Assess(AssessmentDepth depth)
    {
        using Assessor assessor = new();
        return assessor.Assess(_reading, depth);
    }
}
