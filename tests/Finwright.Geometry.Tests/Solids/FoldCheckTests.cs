using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.Solids;

public sealed class FoldCheckTests : IDisposable
{
    private readonly ManifoldKernel _kernel = new();

    public void Dispose() => _kernel.Dispose();

    [Fact]
    public void Sound_loft_has_no_fold() =>
        Assert.Null(FoldCheck.Worst(_kernel, Shapes.Blade(120, 40), cancellation: TestContext.Current.CancellationToken));

    [Fact]
    public void Loft_whose_edges_cross_near_the_tip_is_found_there()
    {
        TriangleMesh folded = Shapes.Blade(120, 60, -0.02);
        // Closed and of positive volume: nothing else would refuse it.
        Assert.True(MeshChecks.IsClosed(folded));
        Assert.True(folded.Volume() > 0);
        Fold? fold = FoldCheck.Worst(_kernel, folded, cancellation: TestContext.Current.CancellationToken);
        Assert.NotNull(fold);
        Assert.True(fold.SignedArea < fold.FilledArea);
        // Every slice along the span beyond the crossing, at 0.12 / 0.14 of it, is inside out.
        SliceArea beyond = _kernel.SliceAreas(new MeshSolid(folded), [0.95 * 0.3], TestContext.Current.CancellationToken)[0];
        Assert.True(beyond.SignedArea < 0);
    }

    [Fact]
    public void Two_shells_that_overlap_in_one_mesh_are_found()
    {
        TriangleMesh a = Shapes.Box(default, new(0.01, 0.01, 0.01)), b = Shapes.Box(new(0.009, 0.002, 0.003), new(0.01, 0.01, 0.01));
        TriangleMesh both = new([.. a.Coordinates, .. b.Coordinates], [.. a.Corners, .. b.Corners.ToArray().Select(c => c + a.VertexCount)]);
        Fold? fold = FoldCheck.Worst(_kernel, both, cancellation: TestContext.Current.CancellationToken);
        Assert.NotNull(fold);
        Assert.True(fold.SignedArea > fold.FilledArea);
    }
}
