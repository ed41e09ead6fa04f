using BenchmarkDotNet.Attributes;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Solids;

namespace Finwright.Bench;

/// <summary>Joining, cutting and slicing a demo fin on a kernel that is already running.</summary>
[MemoryDiagnoser]
public class SolidBench
{
    private const double LayerHeight = 0.2e-3;

    private readonly ManifoldKernel _kernel = new();
    private SolidExpression[] _solids = [];
    private MeshSolid _standing = null!;
    private double[] _heights = [];

    [ParamsSource(nameof(Demos))]
    public string Demo { get; set; } = "";

    public static IEnumerable<string> Demos => Examples.All;

    [GlobalSetup]
    public void Prepare()
    {
        FinSolids solids = Examples.Solids(Demo).Solids;
        _solids = solids.Base is null ? [solids.Blade] : [solids.Blade, solids.Base];
        // Standing: the span becomes the height.
        var mesh = _kernel.Evaluate([solids.Blade])[0].Mesh.Placed(new(new(1, 0, 0), new(0, 0, 1), new(0, -1, 0), default));
        _standing = new(mesh);
        Geometry.Bounds bounds = mesh.Bounds();
        _heights = [.. Enumerable.Range(0, (int)(bounds.Size.Z / LayerHeight)).Select(i => bounds.Minimum.Z + (i + 0.5) * LayerHeight)];
    }

    [GlobalCleanup]
    public void Close() => _kernel.Dispose();

    [Benchmark(Description = "blade and base with every bore, pocket and slot")]
    public IReadOnlyList<SolidResult> Booleans() => _kernel.Evaluate(_solids);

    [Benchmark(Description = "slices of the blade at 0.2 mm layers")]
    public IReadOnlyList<SliceRings> Slices() => _kernel.Slice(_standing, _heights);
}
