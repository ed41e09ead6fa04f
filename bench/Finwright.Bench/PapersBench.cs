using BenchmarkDotNet.Attributes;
using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Papers;

namespace Finwright.Bench;

/// <summary>The papers of a fin that was worked out before: build sheet, templates, drawing.</summary>
[MemoryDiagnoser]
public class PapersBench
{
    private AssessmentResult _result = null!;

    [ParamsAllValues]
    public PaperLanguage Language { get; set; }

    [GlobalSetup]
    public void Assess()
    {
        using Assessor assessor = new(curves: CacheFolder.OpenCurves());
        _result = assessor.Assess(Examples.Read("sandbar-delta"), AssessmentDepth.Parts);
    }

    [Benchmark(Description = "papers of a fin whose pour and cure were not worked out")]
    public int Papers() => FinPapers.Of(_result, new() { Language = Language, Date = new(2027, 4, 18), ProgramVersion = "bench" }).Sum(paper => paper.Content.Length);
}
