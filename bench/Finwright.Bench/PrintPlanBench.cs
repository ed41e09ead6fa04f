using BenchmarkDotNet.Attributes;
using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Parts;
using Finwright.Geometry.Solids;
using Finwright.Making.FromDesign;
using Finwright.Making.Layers;
using Finwright.Making.Printing;
using Finwright.Making.Voxels;

namespace Finwright.Bench;

/// <summary>The first part of a demo fin: into layers, onto a grid, and how long it prints. The kernel is already running.</summary>
[MemoryDiagnoser]
public class PrintPlanBench
{
    private readonly ManifoldKernel _kernel = new();
    private PrintPart _part = null!;
    private PrintSettings _settings = null!;
    private PrinterModel _printer = null!;
    private PartLayers _layers = null!;

    [ParamsSource(nameof(Demos))]
    public string Demo { get; set; } = "";

    public static IEnumerable<string> Demos => Examples.All;

    [GlobalSetup]
    public void Prepare()
    {
        (FinDesign design, Blade blade, FinSolids solids) = Examples.Solids(Demo);
        _part = PartPlan.Build(design, blade, solids, _kernel, [])!.Parts[0];
        _settings = PrintFromDesign.Settings(design.Print);
        _printer = PrinterFromDesign.Of(design.Print.Machine);
        _layers = Slice();
    }

    [GlobalCleanup]
    public void Close() => _kernel.Dispose();

    [Benchmark(Description = "slices, walls, solid layers, core")]
    public PartLayers Slice() => LayerSlicer.Slice(_part.Name, _part.Mesh, _part.PrintPlacement, _settings, _kernel);

    [Benchmark(Description = "exact shares on a grid of 150,000 cells, cooled surface")]
    public PartVoxels Voxels() => Voxeliser.Of(_layers, Voxeliser.CellFor(_layers, 0.6e-3, 150_000));

    [Benchmark(Description = "time and plastic")]
    public double Time() => PrintTime.Of(_layers, _printer).Seconds.Value;
}
