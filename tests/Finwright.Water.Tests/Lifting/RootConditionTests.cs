using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

public class RootConditionTests
{
    // Numerical reference: panel of height h and chord c under a surface of zero potential, slope on the panel's area, coarse mesh. Tolerance 2 %: the reference's finer mesh lowers its
    // value at h/c 4 by 1 %.
    [Theory]
    [InlineData(1, 1.25)]
    [InlineData(1.5, 1.76)]
    [InlineData(2, 2.19)]
    [InlineData(4, 3.32)]
    [InlineData(5, 3.68)]
    public void Bare_surface_lifts_as_the_numerical_reference(double height, double slope) =>
        Assert.Equal(slope, Bare(height).Slope, 0.02 * slope);

    // The same, fine mesh: 3.290 at h/c 4. Load centre at 0.52 h. Tolerance: last digit of each.
    [Fact]
    public void Bare_surface_at_height_four_chords_is_converged()
    {
        Assert.Equal(3.290, Bare(4).Slope, 0.002);
        Assert.Equal(0.52, Bare(4).CentreY / 4, 0.005);
    }

    // Numerical reference: panels, as in the evidence table: a fin flush with the transom loses 0.04 to 0.08 of the gap.
    [Fact]
    public void Hull_that_ends_at_the_fin_holds_less() =>
        Assert.InRange(Fraction(0.5, 0.05) - Fraction(0.5, 0), 0.04, 0.08);

    [Fact]
    public void Hull_tends_to_the_mirror_when_wide_and_long_and_to_the_bare_surface_when_narrow()
    {
        LiftingFin fin = Fin(0.4, 0.1);
        double bare = Slope(fin, RootCondition.BareSurface), mirror = Slope(fin, RootCondition.FullMirror);
        double wide = new LatticeCase(fin, RootCondition.Hull(1.5, 1.5, 1.5), 20, 6, grid: new(8, 8, 12, 16)).Slope;
        Assert.InRange((wide - bare) / (mirror - bare), 0.95, 1.01);
        Assert.InRange((Slope(fin, RootCondition.Hull(0.004, 0.4, 0.05)) - bare) / (mirror - bare), 0, 0.03);
    }

    // Twice as many rings each way must change the fraction by less than a third of the 5 % that the evidence table allows.
    [Fact]
    public void Hull_usual_rings_are_enough()
    {
        LiftingFin fin = Fin(0.4, 0.1);
        RootCondition hull = RootCondition.Hull(0.2, 0.4, 0.05);
        double usual = new LatticeCase(fin, hull, 20, 6).Slope, fine = new LatticeCase(fin, hull, 20, 6, grid: new(14, 12, 8, 18)).Slope;
        double gap = Slope(fin, RootCondition.FullMirror) - Slope(fin, RootCondition.BareSurface);
        Assert.Equal(fine, usual, 0.015 * gap);
    }

    [Fact]
    public void Gap_that_closes_tends_to_no_gap_and_an_open_gap_costs_lift()
    {
        LiftingFin fin = Fin(0.4, 0.1);
        double closed = Slope(fin, RootCondition.FullMirror);
        double hair = Slope(fin, RootCondition.FullMirror with { Gap = 1e-9 }), open = Slope(fin, RootCondition.FullMirror with { Gap = 0.01 }), far = Slope(fin, RootCondition.FullMirror with { Gap = 0.4 });
        Assert.True(hair > open && open > far, $"{hair}, {open}, {far}");
        Assert.True(closed > open, $"{closed}, {open}");
    }

    // Far from any surface, image or not, the fin is a free wing of its own span: aspect ratio 4, slope 3.612 (numerical reference of the rectangles).
    [Fact]
    public void Bounds_enclose_a_hull_and_give_the_same_share_as_the_slopes()
    {
        LiftingSurface hull = LiftingSurface.Create(Fin(0.4, 0.1), RootCondition.Hull(0.2, 0.4, 0.05), new() { Tip = TipForm.None });
        RootBounds bounds = RootBounds.Of(hull);
        (double bare, double used, double mirror) = bounds.Slopes(Water.At(8, 0));
        Assert.True(bare < used && used < mirror, $"{bare} {used} {mirror} N/rad");
        Assert.Equal(Fraction(0.5, 0.05), bounds.Share(Water.At(8, 0)), 0.003);
    }

    [Fact]
    public void Gap_that_is_wide_leaves_a_free_wing()
    {
        LiftingFin fin = Fin(0.4, 0.1);
        Assert.Equal(3.612, Slope(fin, RootCondition.BareSurface with { Gap = 0.4 }), 0.03 * 3.612);
        Assert.Equal(3.612, Slope(fin, RootCondition.FullMirror with { Gap = 0.4 }), 0.03 * 3.612);
    }

    private static LatticeCase Bare(double height) => new(Fin(height, 1), RootCondition.BareSurface, 20, 6);

    private static LiftingFin Fin(double span, double chord) => LiftingFin.Trapezoid(span, chord, chord, 0);

    private static double Slope(LiftingFin fin, RootCondition root) => new LatticeCase(fin, root, 20, 6).Slope;

    internal static double Fraction(double width, double behind)
    {
        LiftingFin fin = Fin(0.4, 0.1);
        double bare = Slope(fin, RootCondition.BareSurface), mirror = Slope(fin, RootCondition.FullMirror);
        return (Slope(fin, RootCondition.Hull(0.4 * width, 0.4, behind)) - bare) / (mirror - bare);
    }
}
