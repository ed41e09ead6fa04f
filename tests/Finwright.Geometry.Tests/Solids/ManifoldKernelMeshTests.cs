using CsCheck;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.Solids;

/// <summary>What comes out is closed by its own vertex numbers and watertight to an independent checker.</summary>
public sealed class ManifoldKernelMeshTests : IDisposable
{
    private readonly ManifoldKernel _kernel = new();

    public static TheoryData<string> Cases => [.. Solids.Keys];

    private static Dictionary<string, SolidExpression> Solids { get; } = new(StringComparer.Ordinal)
    {
        ["blade with base, bores, pockets and slot"] = Fin(),
        ["tip half of the fin"] = Fin().TrimmedBy(new(0, 0, 1), 0.1123),
        ["mirrored fin"] = Fin().Placed(new(new(1, 0, 0), new(0, -1, 0), new(0, 0, 1), default)),
        ["ball with three bores"] = new MeshSolid(SampleMeshes.Ball(0.02, default, 45)).Without(
            Tools.Bore(0.01, new(-0.03, 0, 0), new(0.03, 0, 0)), Tools.Bore(0.01, new(0, -0.03, 0), new(0, 0.03, 0)), Tools.Bore(0.01, new(0, 0, -0.03), new(0, 0, 0.03))),
        ["boxes that share a face"] = Shapes.Block(default, new(0.01, 0.01, 0.01)).And(Shapes.Block(new(0.01, 0.002, 0.002), new(0.02, 0.003, 0.003))),
    };

    public void Dispose() => _kernel.Dispose();

    [Theory]
    [MemberData(nameof(Cases))]
    public void Result_is_watertight_to_an_independent_checker_with_the_same_volume(string name)
    {
        SolidResult solid = _kernel.Evaluate([Solids[name]], TestContext.Current.CancellationToken)[0];
        Assert.Empty(MeshChecks.Defects(solid.Mesh));
        Assert.All(Enumerable.Range(0, solid.Mesh.TriangleCount), t => Assert.True(ShortestEdge(solid.Mesh, t) > 0, $"Triangle {t} has an edge without length."));
        // The checker sums in single precision.
        Assert.Equal(1, Admesh.AssertWatertight(solid.Mesh) / solid.Volume, 1e-4);
        Assert.InRange(solid.Mesh.Volume() / solid.Volume, 1 - 1e-7, 1 + 1e-7);
        Assert.Equal(1, solid.PieceCount);
    }

    [Fact]
    public void Fin_is_the_same_to_the_last_bit_again_and_on_another_kernel()
    {
        TriangleMesh first = _kernel.Evaluate([Fin()], TestContext.Current.CancellationToken)[0].Mesh;
        _kernel.Evaluate([Shapes.Block(default, new(1, 1, 1))], TestContext.Current.CancellationToken);
        using ManifoldKernel other = new();
        foreach (TriangleMesh again in (TriangleMesh[])[_kernel.Evaluate([Fin()], TestContext.Current.CancellationToken)[0].Mesh, other.Evaluate([Fin()], TestContext.Current.CancellationToken)[0].Mesh])
        {
            Assert.True(first.Coordinates.SequenceEqual(again.Coordinates));
            Assert.True(first.Corners.SequenceEqual(again.Corners));
        }
    }

    [Fact]
    public void Slices_are_the_same_to_the_last_bit_on_another_kernel()
    {
        double[] heights = [.. Enumerable.Range(0, 40).Select(i => 0.0061 * i + 0.0013)];
        using ManifoldKernel other = new();
        IReadOnlyList<SliceRings> first = _kernel.Slice(Fin(), heights, TestContext.Current.CancellationToken), again = other.Slice(Fin(), heights, TestContext.Current.CancellationToken);
        for (int i = 0; i < heights.Length; i++)
            Assert.Equal(first[i].Rings, again[i].Rings);
    }

    [Fact]
    public void Volume_of_union_and_common_part_is_the_sum_of_the_volumes()
    {
        // Inclusion and exclusion, for a box and a turned cylinder anywhere near it.
        Gen.Select(Gen.Double[-0.03, 0.03], Gen.Double[-0.03, 0.03], Gen.Double[-0.03, 0.03], Gen.Double[0, 3], Gen.Double[0.001, 0.02], Gen.Double[0.002, 0.06]).Hold(
            (x, y, z, angle, diameter, length) =>
            {
                SolidExpression box = Shapes.Block(new(-0.02, -0.01, -0.015), new(0.04, 0.02, 0.03));
                Point3 from = new(x, y, z);
                SolidExpression rod = Tools.Bore(diameter, from, from + length * new Point3(Math.Cos(angle), Math.Sin(angle) * 0.6, Math.Sin(angle) * 0.8));
                IReadOnlyList<SolidResult> all = _kernel.Evaluate([box, rod, box.And(rod), box.Within(rod), box.Without(rod)], TestContext.Current.CancellationToken);
                double total = all[0].Volume + all[1].Volume;
                Assert.Equal(total, all[2].Volume + all[3].Volume, 1e-6 * total);
                Assert.Equal(all[0].Volume, all[4].Volume + all[3].Volume, 1e-6 * total);
                Assert.All(all, r => Assert.Empty(MeshChecks.Defects(r.Mesh)));
            },
            iter: 200,
            threads: 1);
    }

    [Fact]
    public void Union_is_as_large_whatever_the_order()
    {
        SolidExpression[] parts = [.. Enumerable.Range(0, 6).Select(i => Shapes.Block(new(0.004 * i, 0.003 * (i % 2), 0.002 * (i % 3)), new(0.01, 0.01, 0.01)))];
        double forward = _kernel.Evaluate([new UnionSolid(parts)], TestContext.Current.CancellationToken)[0].Volume;
        double backward = _kernel.Evaluate([new UnionSolid([.. parts.Reverse()])], TestContext.Current.CancellationToken)[0].Volume;
        Assert.Equal(forward, backward, 1e-7 * forward);
    }

    private static double ShortestEdge(TriangleMesh mesh, int triangle)
    {
        Point3 a = mesh.Vertex(mesh.Corners[3 * triangle]), b = mesh.Vertex(mesh.Corners[3 * triangle + 1]), c = mesh.Vertex(mesh.Corners[3 * triangle + 2]);
        return Math.Min((b - a).Length, Math.Min((c - b).Length, (a - c).Length));
    }

    private static SolidExpression Fin()
    {
        SolidExpression body = new MeshSolid(Shapes.Blade(120, 40)).And(Shapes.Block(new(-0.06, -0.008, -0.03), new(0.12, 0.016, 0.032)));
        return body.Without(
            Tools.Bore(0.003, new(-0.03, 0, -0.04), new(-0.02, 0, 0.1)),
            Tools.Bore(0.003, new(0.01, 0, -0.04), new(0.02, 0, 0.1)),
            Tools.Along(Rings.Hexagon(0.008), new(-0.02, -0.02, -0.01), new(-0.02, 0.02, -0.01)),
            Shapes.Block(new(0.05, -0.0002, 0.02), new(0.2, 0.0004, 0.2)));
    }
}
