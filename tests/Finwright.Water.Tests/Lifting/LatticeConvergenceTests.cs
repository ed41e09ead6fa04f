using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

public class LatticeConvergenceTests
{
    // The rectangle's error falls faster than the square of the panel size with these spacings; halved panels must gain at least that.
    [Fact]
    public void Lattice_rectangle_converges_faster_than_second_order()
    {
        double[] slopes = [.. new[] { (6, 2), (12, 4), (24, 8) }.Select(g => new LatticeCase(LiftingFin.Trapezoid(3, 1, 1, 0), RootCondition.FullMirror, g.Item1, g.Item2).Slope)];
        double order = Math.Log2(Math.Abs(slopes[0] - slopes[1]) / Math.Abs(slopes[1] - slopes[2]));
        Assert.InRange(order, 2, 5);
    }

    // A kink at the mirror leaves an error of first order.
    [Fact]
    public void Lattice_swept_wing_converges_with_first_order()
    {
        double[] slopes = [.. new[] { (6, 2), (12, 4), (24, 8) }.Select(g => new LatticeCase(LiftingFin.Trapezoid(2.5, 1, 1, Math.PI / 4), RootCondition.FullMirror, g.Item1, g.Item2).Slope)];
        double order = Math.Log2(Math.Abs(slopes[0] - slopes[1]) / Math.Abs(slopes[1] - slopes[2]));
        Assert.InRange(order, 0.8, 2.5);
    }

    // Two ways to the same drag: the wake far downstream, and normal force less suction at the nose. Tolerance: what the grid of 20 × 8 leaves of the suction.
    [Theory]
    [InlineData(6, 1, 0, 0.002)]
    [InlineData(4, 0.4, 20, 0.01)]
    [InlineData(2, 0.45, 0, 0.005)]
    [InlineData(3, 0.3, 35, 0.02)]
    public void Drag_from_the_wake_agrees_with_the_suction_at_the_nose(double aspect, double taper, double sweep, double tolerance)
    {
        double root = 4 / (aspect * (1 + taper));
        LatticeCase wing = new(LiftingFin.Trapezoid(1, root, taper * root, Water.Radians(sweep)), RootCondition.FullMirror, 20, 8);
        Assert.Equal(wing.Slope - wing.Induced, wing.Suction, tolerance * wing.Suction);
    }

    [Fact]
    public void Drag_from_the_wake_agrees_with_the_suction_at_a_bare_surface_and_under_a_hull()
    {
        LiftingFin fin = LiftingFin.Trapezoid(0.4, 0.1, 0.1, 0);
        LatticeCase bare = new(fin, RootCondition.BareSurface, 20, 8), hull = new(fin, RootCondition.Hull(0.2, 0.4, 0.05), 20, 8, grid: new(12, 10, 6, 14));
        Assert.Equal(bare.Slope - bare.Induced, bare.Suction, 0.003 * bare.Suction);
        // The hull's own lattice leaves about one per cent.
        Assert.Equal(hull.Slope - hull.Induced, hull.Suction, 0.01 * hull.Suction);
    }
}
