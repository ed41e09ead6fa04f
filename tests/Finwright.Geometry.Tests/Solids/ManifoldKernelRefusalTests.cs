using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.Solids;

/// <summary>What the library itself would swallow in silence is refused with a reason, and the kernel stays usable.</summary>
public sealed class ManifoldKernelRefusalTests : IDisposable
{
    private readonly ManifoldKernel _kernel = new();

    public static TheoryData<string, string> Cases { get; } = new()
    {
        { "inside out", "inside out" },
        { "open", "not a closed surface: the edge from vertex" },
        { "empty mesh", "without triangles" },
        { "two kilometres", "Check the units" },
        { "flattened", "flattens" },
        { "placement not a number", "flattens" },
        { "shift not a number", "reaches to NaN m" },
        { "long normal", "unit length; its length is 2" },
        { "normal not a number", "unit length" },
        { "offset not a number", "reaches to NaN m" },
        { "no ring", "at least one ring" },
        { "two points", "Ring 0 of a prism has 2 points" },
        { "clockwise ring", "counter-clockwise" },
        { "crossing ring", "cross or overlap" },
        { "hole turned the wrong way", "cross or overlap" },
        { "ring not a number", "reaches to NaN m" },
        { "flat prism", "height above zero; it is 0 m" },
        { "height not a number", "height above zero; it is NaN m" },
        { "union of nothing", "The union of no solids" },
        { "common part of nothing", "The intersection of no solids" },
        { "missing part", "A solid is missing" },
        { "unknown kind", "does not know the solid Unheard" },
    };

    public void Dispose() => _kernel.Dispose();

    [Theory]
    [MemberData(nameof(Cases))]
    public void Wrong_solid_is_refused_with_its_reason_and_the_next_call_works(string name, string reason)
    {
        SolidException refusal = Assert.Throws<SolidException>(() => _kernel.Evaluate([Wrong(name)], TestContext.Current.CancellationToken));
        Assert.Contains(reason, refusal.Message, StringComparison.Ordinal);
        SolidResult box = _kernel.Evaluate([Box()], TestContext.Current.CancellationToken)[0];
        Assert.Equal(1e-6, box.Volume, 1e-12);
        Assert.Equal(1, _kernel.EngineCount);
    }

    [Fact]
    public void More_triangles_than_allowed_are_refused_before_and_after_an_operation()
    {
        using ManifoldKernel small = new(new KernelLimits(Triangles: 100));
        SolidException given = Assert.Throws<SolidException>(() => small.Evaluate([new MeshSolid(SampleMeshes.Ball(0.01, default, 10))], TestContext.Current.CancellationToken));
        Assert.Contains("360 triangles", given.Message, StringComparison.Ordinal);
        SolidExpression row = new UnionSolid([.. Enumerable.Range(0, 9).Select(i => Box().Placed(Placement.Shift(new(0.02 * i, 0, 0))))]);
        SolidException made = Assert.Throws<SolidException>(() => small.Evaluate([row], TestContext.Current.CancellationToken));
        Assert.Contains("the union of 9 solids has 108 triangles", made.Message, StringComparison.Ordinal);
        Assert.Single(small.Evaluate([Box()], TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Missing_arguments_are_the_callers_mistake()
    {
        Assert.Throws<ArgumentNullException>(() => _kernel.Evaluate(null!, TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentNullException>(() => _kernel.Slice(null!, [0], TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentNullException>(() => _kernel.Slice(Box(), null!, TestContext.Current.CancellationToken));
    }

    private static SolidExpression Box() => Shapes.Block(default, new(0.01, 0.01, 0.01));

    private static PrismSolid Prism(double height, params IReadOnlyList<Point2>[] rings) => new(rings, height);

    private static Point2[] Ring(params double[] xy) => [.. xy.Chunk(2).Select(p => new Point2(p[0], p[1]))];

    private static SolidExpression Wrong(string name)
    {
        TriangleMesh box = Shapes.Box(default, new(0.01, 0.01, 0.01));
        Point2[] square = [.. Rings.Rectangle(0.02, 0.02)], inner = [.. Rings.Rectangle(0.01, 0.01)];
        return name switch
        {
            "inside out" => new MeshSolid(new(box.Coordinates.ToArray(), [.. box.Corners.ToArray().Reverse()])),
            "open" => new MeshSolid(new(box.Coordinates.ToArray(), box.Corners[3..].ToArray())),
            "empty mesh" => new MeshSolid(new([], [])),
            "two kilometres" => new MeshSolid(Shapes.Box(default, new(2000, 1, 1))),
            "flattened" => Box().Placed(Placement.Identity with { AxisZ = new(1, 1, 0) }),
            "placement not a number" => Box().Placed(Placement.Identity with { AxisZ = new(0, double.NaN, 1) }),
            "shift not a number" => Box().Placed(Placement.Shift(new(double.NaN, 0, 0))),
            "long normal" => Box().TrimmedBy(new(2, 0, 0), 0.005),
            "normal not a number" => Box().TrimmedBy(new(double.NaN, 0, 1), 0.005),
            "offset not a number" => Box().TrimmedBy(new(1, 0, 0), double.NaN),
            "no ring" => Prism(0.01),
            "two points" => Prism(0.01, Ring(0, 0, 1, 0)),
            "clockwise ring" => Prism(0.01, [.. square.Reverse()]),
            "crossing ring" => Prism(0.01, Ring(0, 0, 0.02, 0, 0.02, 0.01, 0.005, -0.005, 0, 0.02)),
            "hole turned the wrong way" => Prism(0.01, square, inner),
            "ring not a number" => Prism(0.01, Ring(0, 0, double.NaN, 0, 0, 1)),
            "flat prism" => Prism(0, square),
            "height not a number" => Prism(double.NaN, square),
            "union of nothing" => new UnionSolid([]),
            "common part of nothing" => new IntersectionSolid([]),
            "missing part" => new UnionSolid([Box(), null!]),
            "unknown kind" => new Unheard(),
            _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No such case."),
        };
    }

    private sealed record Unheard : SolidExpression;
}
