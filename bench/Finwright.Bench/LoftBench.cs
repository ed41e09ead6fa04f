using BenchmarkDotNet.Attributes;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;

namespace Finwright.Bench;

/// <summary>The skin of a demo blade.</summary>
[MemoryDiagnoser]
public class LoftBench
{
    private FinDesign _design = null!;
    private Blade _blade = null!;

    [ParamsSource(nameof(Demos))]
    public string Demo { get; set; } = "";

    [Params(0.02, 0.002)]
    public double ToleranceMm { get; set; }

    public static IEnumerable<string> Demos => Examples.All;

    [GlobalSetup]
    public void Prepare()
    {
        _design = Examples.Read(Demo).Design!;
        _design = _design with { Shape = _design.Shape with { SkinToleranceMm = ToleranceMm } };
        _blade = BladeFromDesign.Create(_design, [])!;
    }

    [Benchmark(Description = "loft of a blade that is already shaped")]
    public TriangleMesh Loft() => BladeLoft.Build(_blade, BladeFromDesign.Loft(_design.Shape)).Mesh;

    [Benchmark(Description = "new size: shape and loft, as while dragging a slider")]
    public TriangleMesh ShapeAndLoft()
    {
        Blade blade = BladeFromDesign.Create(_design, [])!;
        return BladeLoft.Build(blade, BladeFromDesign.Loft(_design.Shape)).Mesh;
    }
}
