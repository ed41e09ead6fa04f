using Finwright.Geometry.Outlines;

namespace Finwright.Geometry.Tests.Outlines;

public sealed class SplineOutlineTests
{
    private static readonly Point2[] Leading = [new(0, 0), new(0.01, 0.1), new(0.02, 0.2), new(0.05, 0.3)];
    private static readonly Point2[] Trailing = [new(0.1, 0), new(0.1, 0.1), new(0.1, 0.2), new(0.09, 0.3)];

    [Fact]
    public void TryCreate_puts_the_root_quarter_chord_at_the_origin()
    {
        Assert.True(SplineOutline.TryCreate(Leading, Trailing, out SplineOutline? outline, []));
        Assert.Equal(-0.025, outline.LeadingEdge(0), 15);
        Assert.Equal(0.075, outline.TrailingEdge(0), 15);
        Assert.Equal(0.3, outline.Span);
    }

    [Fact]
    public void TryCreate_says_where_edges_cross()
    {
        List<OutlineFault> faults = [];
        Point2[] crossing = [new(0.1, 0), new(0.1, 0.1), new(-0.1, 0.2), new(0.09, 0.3)];
        Assert.False(SplineOutline.TryCreate(Leading, crossing, out _, faults));
        OutlineFault fault = Assert.Single(faults);
        Assert.Equal(OutlineFaultKind.EdgesCross, fault.Kind);
        Assert.True(fault.Amount < 0);
        Assert.InRange(fault.Depth, 0.1, 0.3);
    }

    [Fact]
    public void TryCreate_refuses_edges_that_end_at_different_depths()
    {
        List<OutlineFault> faults = [];
        Assert.False(SplineOutline.TryCreate(Leading, [.. Trailing[..3], new(0.09, 0.31)], out _, faults));
        OutlineFault fault = Assert.Single(faults);
        Assert.Equal(OutlineFaultKind.TipsDiffer, fault.Kind);
        Assert.Equal(0.01, fault.Amount, 12);
        Assert.Equal(OutlineEdge.Leading, fault.Edge);
    }

    [Fact]
    public void TryCreate_tells_every_fault_of_both_edges()
    {
        List<OutlineFault> faults = [];
        Assert.False(SplineOutline.TryCreate(
            [new(0, 0.01), new(0, 0.2), new(0, 0.1), new(0, 0.3)],
            [new(0.1, 0), new(0.1, 0.1), new(0.1, 0.1), new(0.1, 0.1), new(0.1, 0.1), new(0.1, 0.3)],
            out _, faults));
        Assert.Equal([OutlineFaultKind.RootOffHull, OutlineFaultKind.DepthFalls, OutlineFaultKind.DepthStands], faults.Select(f => f.Kind));
    }

    [Fact]
    public void TryCreate_refuses_an_edge_of_one_point_or_of_no_number()
    {
        List<OutlineFault> faults = [];
        Assert.False(SplineOutline.TryCreate([new(0, 0)], [new(0.1, 0), new(double.NaN, 0.3)], out _, faults));
        Assert.Equal([OutlineFaultKind.TooFewPoints, OutlineFaultKind.NotFinite], faults.Select(f => f.Kind));
    }
}
