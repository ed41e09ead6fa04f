using BenchmarkDotNet.Attributes;
using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Design;
using Finwright.Geometry.FromDesign;

namespace Finwright.Bench;

/// <summary>What the page works out while the hand is still moving a slider: a demo fin that becomes a little longer each time.</summary>
[MemoryDiagnoser]
public class QuickLookBench
{
    private const double StepMm = 1e-3;

    private AssessmentResult _before = null!;
    private AssessmentResult _quick = null!;
    private FinDesign _design = null!;

    [GlobalSetup]
    public void Assess()
    {
        using Assessor assessor = new(curves: CacheFolder.OpenCurves());
        _before = assessor.Assess(Examples.Read(Examples.All[0]), AssessmentDepth.Strength);
        _design = _before.Design!;
        _quick = Look();
    }

    [Benchmark(Description = "another span: shape, water, strength and bench, with sections solved before")]
    public AssessmentResult Look()
    {
        Outline outline = _design.Shape.Outline;
        _design = _design with { Shape = _design.Shape with { Outline = outline with { SpanMm = outline.SpanMm + StepMm } } };
        return QuickLook.Of(_design, BladeFromDesign.Create(_design, [])!, _before, CancellationToken.None);
    }

    [Benchmark(Description = "its curves over leeway, once the hand rests")]
    public AssessmentResult Curves() => QuickLook.WithCurves(_quick, CancellationToken.None);
}
