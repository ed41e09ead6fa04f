using BenchmarkDotNet.Attributes;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Design;

namespace Finwright.Bench;

/// <summary>A demo design from its file's content to every file of the pack, in memory.</summary>
[MemoryDiagnoser]
public class PackBench
{
    private DesignReading _reading = null!;

    [ParamsSource(nameof(Demos))]
    public string Demo { get; set; } = "";

    public static IEnumerable<string> Demos => Examples.All;

    [GlobalSetup]
    public void Read() => _reading = Examples.Read(Demo);

    [Benchmark(Description = "pack, nothing kept from before")]
    public int Pack()
    {
        using Assessor assessor = new();
        AssessmentResult result = assessor.Assess(_reading, AssessmentDepth.Parts);
        return PackContents.Of(result, FinSummary.Of(result, "bench"), [], "bench", CancellationToken.None).Files.Count;
    }
}
