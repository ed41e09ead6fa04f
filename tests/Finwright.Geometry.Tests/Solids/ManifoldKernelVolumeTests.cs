using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.Solids;

/// <summary>Volumes and pieces against closed forms. Relative tolerance 1e-6 where meshes enter: coordinates have 24 significant bits (6e-8).</summary>
public sealed class ManifoldKernelVolumeTests : IDisposable
{
    private const double MeshTolerance = 1e-6;

    private readonly ManifoldKernel _kernel = new();

    public void Dispose() => _kernel.Dispose();

    [Fact]
    public void Box_has_the_product_of_its_edges()
    {
        SolidResult box = One(Shapes.Block(new(0.1, -0.2, 0.05), new(0.12, 0.03, 0.2)));
        Near(0.12 * 0.03 * 0.2, box.Volume, MeshTolerance);
        Near(box.Volume, box.Mesh.Volume(), MeshTolerance);
        Assert.Equal(12, box.Mesh.TriangleCount);
        Assert.Equal(8, box.Mesh.VertexCount);
        Assert.Equal(1, box.PieceCount);
    }

    [Fact]
    public void Prism_on_an_equal_area_circle_has_the_volume_of_the_cylinder()
    {
        // The polygon has the circle's area by construction, and prisms are built in double precision: π r² h to 1e-9.
        SolidResult cylinder = One(new PrismSolid([Rings.Circle(0.004)], 0.05));
        Near(Math.PI * 0.004 * 0.004 * 0.05, cylinder.Volume, 1e-9);
    }

    [Fact]
    public void Prism_with_a_hole_has_the_area_between_the_rings()
    {
        Point2[] hole = [.. Rings.Rectangle(0.01, 0.02).Reverse()];
        SolidResult tube = One(new PrismSolid([Rings.Rectangle(0.04, 0.03), hole], 0.1));
        Near((0.04 * 0.03 - 0.01 * 0.02) * 0.1, tube.Volume, 1e-9);
    }

    [Fact]
    public void Ball_with_a_bore_through_its_centre_keeps_the_volume_of_the_napkin_ring()
    {
        // A bore of radius a leaves 4/3 π (r² - a²)^(3/2) (the napkin ring theorem). The mesh is inscribed: with 360 by
        // 180 facets its chord error is r (1 - cos(π/360)) = 4e-5 r, some 2e-4 of the volume.
        const double Radius = 0.03, Bore = 0.01;
        SolidExpression ball = new MeshSolid(SampleMeshes.Ball(Radius, default, 180));
        SolidResult ring = One(ball.Without(Tools.Bore(2 * Bore, new(0, 0, -0.04), new(0, 0, 0.04))));
        Near(4.0 / 3 * Math.PI * Math.Pow(Radius * Radius - Bore * Bore, 1.5), ring.Volume, 3e-4);
        Assert.Equal(1, ring.PieceCount);
    }

    [Fact]
    public void Bore_through_a_block_takes_away_polygon_area_times_length()
    {
        SolidExpression block = Shapes.Block(new(-0.02, -0.015, 0), new(0.04, 0.03, 0.025));
        SolidResult bored = One(block.Without(Tools.Bore(0.0065, new(0, 0, -0.01), new(0, 0, 0.035))));
        Near(0.04 * 0.03 * 0.025 - Shapes.Area(Rings.Circle(0.00325)) * 0.025, bored.Volume, MeshTolerance);
    }

    [Fact]
    public void Boxes_that_share_a_face_become_one_piece()
    {
        SolidResult joined = One(Shapes.Block(default, new(0.01, 0.01, 0.01)).And(Shapes.Block(new(0.01, 0, 0), new(0.02, 0.01, 0.01))));
        Near(3e-6, joined.Volume, MeshTolerance);
        Assert.Equal(1, joined.PieceCount);
        Assert.Equal(0.03 * 0.01 * 4 + 0.0002, joined.Mesh.Area(), 8);
    }

    [Fact]
    public void Boxes_apart_are_two_pieces_largest_first()
    {
        SolidResult two = One(Shapes.Block(default, new(0.01, 0.01, 0.01)).And(Shapes.Block(new(0.05, 0, 0), new(0.02, 0.01, 0.01))));
        Assert.Equal(2, two.PieceCount);
        Near(2e-6, two.PieceVolumes[0], MeshTolerance);
        Near(1e-6, two.PieceVolumes[1], MeshTolerance);
    }

    [Fact]
    public void Hollow_without_a_way_out_is_a_sealed_void()
    {
        SolidResult hollow = One(Hollow());
        Assert.Equal(1, hollow.PieceCount);
        Assert.Equal(1, hollow.SealedVoidCount);
        Near(-1e-6, hollow.PieceVolumes[^1], MeshTolerance);
        Near(7e-6, hollow.Volume, MeshTolerance);
    }

    [Fact]
    public void Hollow_with_a_drilled_way_out_has_no_sealed_void()
    {
        SolidResult drilled = One(Hollow().Without(Tools.Bore(0.002, new(0.01, 0.01, 0.01), new(0.01, 0.01, 0.03))));
        Assert.Equal(1, drilled.PieceCount);
        Assert.Equal(0, drilled.SealedVoidCount);
    }

    [Fact]
    public void Intersection_of_boxes_is_the_common_box()
    {
        SolidResult common = One(Shapes.Block(default, new(0.03, 0.03, 0.03)).Within(Shapes.Block(new(0.02, 0.01, -0.01), new(0.03, 0.01, 0.02))));
        Near(0.01 * 0.01 * 0.01, common.Volume, MeshTolerance);
    }

    [Fact]
    public void Nothing_left_gives_an_empty_mesh()
    {
        SolidResult nothing = One(Shapes.Block(default, new(0.01, 0.01, 0.01)).Without(Shapes.Block(new(-1, -1, -1), new(2, 2, 2))));
        Assert.Equal(0, nothing.Mesh.TriangleCount);
        Assert.Equal(0, nothing.Volume);
        Assert.Empty(nothing.PieceVolumes);
    }

    [Fact]
    public void Trim_keeps_the_side_that_the_normal_points_to()
    {
        SolidExpression box = Shapes.Block(default, new(0.03, 0.01, 0.01));
        Near(0.02 * 1e-4, One(box.TrimmedBy(new(1, 0, 0), 0.01)).Volume, MeshTolerance);
        Near(0.01 * 1e-4, One(box.TrimmedBy(new(-1, 0, 0), -0.01)).Volume, MeshTolerance);
    }

    [Fact]
    public void Mirror_keeps_volume_and_outside_and_swaps_sides()
    {
        SolidExpression wedge = new PrismSolid([[new(0, 0), new(0.03, 0), new(0.03, 0.01)]], 0.02);
        Placement mirror = new(new(-1, 0, 0), new(0, 1, 0), new(0, 0, 1), new(0.05, 0, 0));
        SolidResult mirrored = One(wedge.Placed(mirror));
        Near(0.03 * 0.01 / 2 * 0.02, mirrored.Volume, 1e-9);
        Assert.True(mirrored.Mesh.Volume() > 0);
        Assert.Equal(0.02, mirrored.Mesh.Bounds().Minimum.X, 8);
        Assert.Equal(0.05, mirrored.Mesh.Bounds().Maximum.X, 8);
    }

    [Fact]
    public void Turned_bore_meets_the_block_where_its_axis_says()
    {
        SolidExpression block = Shapes.Block(new(-0.05, 0, -0.01), new(0.1, 0.04, 0.02));
        SolidResult bored = One(block.Without(Tools.Bore(0.006, new(-0.06, 0.02, 0), new(0.06, 0.02, 0))));
        Near(0.1 * 0.04 * 0.02 - Math.PI * 9e-6 * 0.1, bored.Volume, MeshTolerance);
    }

    [Fact]
    public void Results_of_one_call_come_in_the_order_of_the_expressions()
    {
        SolidExpression shared = Shapes.Block(default, new(0.01, 0.01, 0.01));
        SolidExpression pair = shared.And(shared.Placed(Placement.Shift(new(0.02, 0, 0))));
        IReadOnlyList<SolidResult> results = _kernel.Evaluate([pair, shared, pair.TrimmedBy(new(1, 0, 0), 0.005)], TestContext.Current.CancellationToken);
        Near(2e-6, results[0].Volume, MeshTolerance);
        Near(1e-6, results[1].Volume, MeshTolerance);
        Near(1.5e-6, results[2].Volume, MeshTolerance);
    }

    [Fact]
    public void Nested_cuts_and_unions_equal_the_level_ones()
    {
        SolidExpression block = Shapes.Block(default, new(0.1, 0.02, 0.02));
        SolidExpression[] bores = [.. Enumerable.Range(1, 9).Select(i => Tools.Bore(0.004, new(0.01 * i, 0.01, -0.01), new(0.01 * i, 0.01, 0.03)))];
        SolidExpression nested = block;
        foreach (SolidExpression bore in bores)
            nested = nested.Without(bore);
        SolidExpression joined = bores[0];
        foreach (SolidExpression bore in bores.Skip(1))
            joined = joined.And(bore);
        double expected = 0.1 * 0.02 * 0.02 - 9 * Shapes.Area(Rings.Circle(0.002)) * 0.02;
        Near(expected, One(nested).Volume, MeshTolerance);
        Near(expected, One(block.Without(joined)).Volume, MeshTolerance);
    }

    [Fact]
    public void Expression_nested_twenty_thousand_deep_is_built()
    {
        SolidExpression deep = Shapes.Block(default, new(0.01, 0.01, 0.01));
        for (int i = 0; i < 20_000; i++)
            deep = new UnionSolid([deep]);
        Near(1e-6, One(deep).Volume, MeshTolerance);
    }

    private static SolidExpression Hollow() =>
        Shapes.Block(default, new(0.02, 0.02, 0.02)).Without(Shapes.Block(new(0.005, 0.005, 0.005), new(0.01, 0.01, 0.01)));

    private SolidResult One(SolidExpression solid)
    {
        SolidResult result = Assert.Single(_kernel.Evaluate([solid], TestContext.Current.CancellationToken));
        if (result.Mesh.TriangleCount > 0)
            Assert.Empty(MeshChecks.Defects(result.Mesh));
        return result;
    }

    private static void Near(double expected, double actual, double relative) =>
        Assert.True(Math.Abs(actual - expected) <= relative * Math.Abs(expected), $"{actual:r} is not within {relative:g2} of {expected:r}.");
}
