namespace Finwright.Geometry.Tests;

public sealed class MeshSummaryTests
{
    [Fact]
    public void Of_a_box_gives_its_measures()
    {
        MeshSummary box = MeshSummary.Of(SampleMeshes.Box(0.1, 0.05, 0.02));
        Assert.Equal(100, box.SizeMm.X, 1e-9);
        Assert.Equal(50, box.SizeMm.Y, 1e-9);
        Assert.Equal(20, box.SizeMm.Z, 1e-9);
        // Closed forms: 10 · 5 · 2 cm³; 2 (10 · 5 + 5 · 2 + 2 · 10) cm².
        Assert.Equal(100, box.VolumeCm3, 1e-9);
        Assert.Equal(160, box.AreaCm2, 1e-9);
        Assert.Equal(12, box.Triangles);
        Assert.True(box.IsClosed);
    }

    [Fact]
    public void A_mesh_with_a_hole_or_a_turned_triangle_is_not_closed()
    {
        TriangleMesh box = SampleMeshes.Box(1, 1, 1);
        Assert.False(MeshSummary.Of(new(box.Coordinates.ToArray(), box.Corners[3..].ToArray())).IsClosed);
        int[] turned = box.Corners.ToArray();
        (turned[0], turned[1]) = (turned[1], turned[0]);
        Assert.False(MeshSummary.Of(new(box.Coordinates.ToArray(), turned)).IsClosed);
    }
}
