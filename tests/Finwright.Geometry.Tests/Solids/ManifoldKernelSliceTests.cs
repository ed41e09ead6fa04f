using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.Solids;

public sealed class ManifoldKernelSliceTests : IDisposable
{
    private readonly ManifoldKernel _kernel = new();

    public void Dispose() => _kernel.Dispose();

    [Fact]
    public void Slices_of_a_cone_shrink_with_the_square_of_the_distance_to_its_tip()
    {
        Point2[] foot = [.. Rings.Circle(0.03)];
        Point2[] top = [.. foot.Select(p => 0.2 * p)];
        const double Height = 0.1;
        SolidExpression cone = new MeshSolid(Shapes.Loft([foot, top], [0, Height]));
        double[] heights = [.. Enumerable.Range(0, 50).Select(i => Height * (i + 0.5) / 50)];
        IReadOnlyList<SliceRings> slices = _kernel.Slice(cone, heights, TestContext.Current.CancellationToken);
        IReadOnlyList<SliceArea> areas = _kernel.SliceAreas(cone, heights, TestContext.Current.CancellationToken);
        Assert.Equal(heights, slices.Select(s => s.Height));
        for (int i = 0; i < heights.Length; i++)
        {
            // Straight sides between similar polygons: the slice is the foot scaled. 1e-6: the mesh's float coordinates.
            double expected = Shapes.Area(foot) * Math.Pow(1 - 0.8 * heights[i] / Height, 2);
            Assert.InRange(Shapes.Area(Assert.Single(slices[i].Rings)) / expected, 1 - 1e-6, 1 + 1e-6);
            Assert.InRange(areas[i].FilledArea / expected, 1 - 1e-6, 1 + 1e-6);
            Assert.InRange(areas[i].SignedArea / expected, 1 - 1e-6, 1 + 1e-6);
        }
    }

    [Fact]
    public void Outer_rings_run_counter_clockwise_and_holes_clockwise()
    {
        SolidExpression plate = Shapes.Block(default, new(0.04, 0.02, 0.01)).Without(
            Tools.Bore(0.004, new(0.01, 0.01, -0.01), new(0.01, 0.01, 0.02)),
            Tools.Bore(0.006, new(0.03, 0.01, -0.01), new(0.03, 0.01, 0.02)));
        double[] areas = [.. _kernel.Slice(plate, [0.005], TestContext.Current.CancellationToken)[0].Rings.Select(Shapes.Area).Order()];
        Assert.Equal(3, areas.Length);
        Assert.Equal(-Math.PI * 9e-6, areas[0], 10);
        Assert.Equal(-Math.PI * 4e-6, areas[1], 10);
        Assert.Equal(8e-4, areas[2], 10);
    }

    [Fact]
    public void Rings_lie_where_the_solid_lies()
    {
        SolidExpression box = Shapes.Block(new(0.25, -0.4, 0), new(0.01, 0.02, 0.01));
        IReadOnlyList<Point2> ring = Assert.Single(_kernel.Slice(box, [0.0033], TestContext.Current.CancellationToken)[0].Rings);
        // Float spacing at 400 mm is 3e-5 mm.
        Assert.Equal(0.25, ring.Min(p => p.X), 3e-8);
        Assert.Equal(0.26, ring.Max(p => p.X), 3e-8);
        Assert.Equal(-0.4, ring.Min(p => p.Y), 3e-8);
        Assert.Equal(-0.38, ring.Max(p => p.Y), 3e-8);
    }

    [Fact]
    public void Heights_outside_the_solid_give_no_rings()
    {
        SolidExpression box = Shapes.Block(default, new(0.01, 0.01, 0.01));
        Assert.All(_kernel.Slice(box, [-0.001, 0.0101, 5], TestContext.Current.CancellationToken), s => Assert.Empty(s.Rings));
        Assert.Empty(_kernel.Slice(box, [], TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Height_that_is_not_a_number_is_the_callers_mistake() =>
        Assert.Throws<ArgumentException>(() => _kernel.Slice(Shapes.Block(default, new(1, 1, 1)), [double.NaN], TestContext.Current.CancellationToken));

    [Fact]
    public void Volume_is_the_sum_of_thin_slices()
    {
        // Mid-layer rule on a solid whose area is quadratic in height: relative error h²/12 times the second derivative,
        // 7e-7 here with 1000 layers.
        TriangleMesh blade = Shapes.Blade(120, 2);
        const int Layers = 1000;
        double[] heights = [.. Enumerable.Range(0, Layers).Select(i => 0.3 * (i + 0.5) / Layers)];
        double sum = _kernel.SliceAreas(new MeshSolid(blade), heights, TestContext.Current.CancellationToken).Sum(a => a.FilledArea) * 0.3 / Layers;
        Assert.InRange(sum / blade.Volume(), 1 - 2e-6, 1 + 2e-6);
    }
}
