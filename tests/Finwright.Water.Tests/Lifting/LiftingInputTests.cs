using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

public class LiftingInputTests
{
    private static readonly LiftingFin Fin = LiftingFin.Trapezoid(0.4, 0.1, 0.08, 0);

    [Fact]
    public void Create_edges_that_cross_are_refused_with_the_depth()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Create(Fin with { TrailingEdge = y => 0.075 - 0.5 * y }));
        Assert.Contains("behind the leading edge", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.4)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Create_span_that_is_none_is_refused(double span) => Assert.Throws<ArgumentException>(() => Create(Fin with { Span = span }));

    [Fact]
    public void Create_surface_that_is_no_surface_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Create(Fin with { MeanSurface = (x, y) => double.NaN }));
        Assert.Throws<ArgumentException>(() => Create(Fin with { MeanSurface = (x, y) => 3 * x }));
        Assert.Throws<ArgumentException>(() => Create(Fin with { LeadingEdge = y => double.NaN }));
        Assert.Throws<ArgumentException>(() => Create(Fin with { ThicknessRatio = y => -0.1 }));
    }

    [Fact]
    public void Create_hull_strip_or_grid_that_cannot_be_is_refused()
    {
        Assert.Throws<ArgumentException>(() => LiftingSurface.Create(Fin, RootCondition.Hull(0, 0.5, 0.1)));
        Assert.Throws<ArgumentException>(() => LiftingSurface.Create(Fin, RootCondition.Hull(0.2, -0.5, 0.1)));
        Assert.Throws<ArgumentException>(() => LiftingSurface.Create(Fin, RootCondition.FullMirror with { Gap = -0.01 }));
        Assert.Throws<ArgumentException>(() => Create(Fin with { Strip = new(0.02, 0, 0, 0.4) }));
        Assert.Throws<ArgumentException>(() => Create(Fin with { Strip = new(0.02, 1, 0.3, 0.2) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => LiftingSurface.Create(Fin, RootCondition.FullMirror, new() { Strips = 3 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => LiftingSurface.Create(Fin, RootCondition.FullMirror, new() { Rows = 100 }));
    }

    [Fact]
    public void Solve_no_speed_or_too_much_leeway_is_refused()
    {
        LiftingSurface fin = Create(Fin);
        Assert.Throws<ArgumentOutOfRangeException>(() => fin.Solve(Water.At(0, 5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => fin.Solve(Water.At(double.NaN, 5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => fin.Solve(Water.At(8, 31)));
        Assert.Throws<ArgumentOutOfRangeException>(() => fin.Solve(Water.At(8, 5) with { Density = -1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => fin.Solve(Water.At(8, 5) with { KinematicViscosity = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => fin.LeewayFor(Water.At(8, 0), double.NaN));
    }

    // A fin whose edges meet at the tip, and one that is a hair wide there, are the same fin.
    [Fact]
    public void Solve_pointed_and_round_tips_give_finite_answers()
    {
        foreach (LiftingFin fin in new[] { LiftingFin.Trapezoid(0.4, 0.1, 0, 0.5), LatticeCase.Elliptic(0.4, 0.1) })
        {
            AnalyticPolar section = new(6, 0.25, cd: 0.007);
            LiftingResult result = LiftingSurface.Create(fin with { Polar = _ => section }, RootCondition.Hull(0.2, 0.5, 0.05)).Solve(Water.At(8, 5));
            Assert.Equal(LiftingStatus.Attached, result.Status);
            Assert.True(double.IsFinite(result.SideForce + result.Drag.Total + result.YawMoment + result.RollMoment));
            Assert.All(result.Strips, s => Assert.True(double.IsFinite(s.Cl + s.Load + s.SectionAngle)));
        }
    }

    private static LiftingSurface Create(LiftingFin fin) => LiftingSurface.Create(fin, RootCondition.FullMirror);
}
