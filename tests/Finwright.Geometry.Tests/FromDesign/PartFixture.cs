using Finwright.Design;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Solids;
using Finwright.Geometry.Tests.Parts;

namespace Finwright.Geometry.Tests.FromDesign;

/// <summary>A straight blade on a standard two-bolt base, and a kernel shared by the tests of a class.</summary>
public sealed class PartFixture : IDisposable
{
    internal static StraightBlade Blade { get; } = new(0.12, 0.07, 0.3, 0.15, 0.11);

    internal static BasePlan Plan { get; } = TwoBoltBase.Standard(0.03, MetricThread.M6);

    internal ManifoldKernel Kernel { get; } = new();

    internal static FinDesign Design { get; } = new()
    {
        Name = "straight",
        Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 300, RootChordMm = 120 } },
        Print = new() { BedXMm = 400, BedYMm = 300, BedZMm = 350 },
    };

    internal static FinSolids Solids(params IReadOnlyList<PlacedFeature> features) => new()
    {
        Blade = new MeshSolid(Blade.Mesh()).Without([.. features.Select(f => f.Tool())]),
        Base = Plan.Solid(),
        Plan = Plan,
        Hardware = [],
        Features = features,
        Slot = null,
    };

    internal PartPlan Build(FinDesign design, out List<Finding> findings, FinSolids? solids = null)
    {
        findings = [];
        PartPlan? plan = PartPlan.Build(design, Blade, solids ?? Solids(), Kernel, findings, null, TestContext.Current.CancellationToken);
        Assert.True(plan is not null, string.Join('\n', findings));
        return plan;
    }

    internal List<Finding> Refuse(FinDesign design, FinSolids? solids = null)
    {
        List<Finding> findings = [];
        Assert.Null(PartPlan.Build(design, Blade, solids ?? Solids(), Kernel, findings, null, TestContext.Current.CancellationToken));
        Assert.Contains(findings, f => f.IsError);
        return findings;
    }

    /// <summary>Rings of a mesh on a plane: x and y along the frame's axes, the plane at a height along its z axis.</summary>
    internal IReadOnlyList<IReadOnlyList<Point2>> Rings(TriangleMesh mesh, Placement frame, double height) =>
        Kernel.Slice(new MeshSolid(mesh).Placed(frame.RigidInverse()), [height], TestContext.Current.CancellationToken)[0].Rings;

    internal static double Area(IReadOnlyList<Point2> ring) => ring.Zip([.. ring.Skip(1), ring[0]]).Sum(e => e.First.Cross(e.Second)) / 2;

    internal static Point2 Centroid(IReadOnlyList<Point2> ring)
    {
        Point2 sum = default;
        foreach ((Point2 a, Point2 b) in ring.Zip([.. ring.Skip(1), ring[0]]))
            sum += a.Cross(b) / 6 * (a + b);
        return 1 / Area(ring) * sum;
    }

    public void Dispose() => Kernel.Dispose();
}
