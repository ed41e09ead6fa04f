using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

/// <summary>The plain lattice with a full mirror, so half a symmetric wing, against closed forms and published and numerical wings.</summary>
public class LatticeReferenceTests
{
    private static readonly RootCondition Mirror = RootCondition.FullMirror;

    // Prandtl's lifting line, slope 2π/(1 + 2/A), is the limit for slender wings; what is left falls with 1/A² ln A. Tolerance 1 % at A 40.
    [Fact]
    public void Lattice_slender_elliptic_wing_tends_to_the_lifting_line()
    {
        LatticeCase wing = new(LatticeCase.Elliptic(1, 8 / (Math.PI * 40)), Mirror, 30, 6);
        Assert.Equal(2 * Math.PI / (1 + 2.0 / 40), wing.Slope, 0.06);
    }

    // Jones (1946), NACA TR-835: slope π A/2 as A goes to 0. Tolerance 1 % at A 0.05.
    [Fact]
    public void Lattice_very_short_wing_tends_to_half_pi_times_aspect_ratio() =>
        Assert.Equal(Math.PI * 0.05 / 2, new LatticeCase(LiftingFin.Trapezoid(0.025, 1, 1, 0), Mirror, 12, 12).Slope, 0.01 * Math.PI * 0.05 / 2);

    // Numerical reference: vortex lattice, flat rectangles: slope, centre behind the leading edge over chord, induced drag over elliptic. Tolerances: last printed digit and the grid used here; the
    // centres, 0.002, were printed from a coarser grid for short wings (a finer one of the same source gives 0.1668 at aspect ratio 1).
    [Theory]
    [InlineData(0.5, 0.773, 0.112, 1.000)]
    [InlineData(1, 1.460, 0.168, 1.000)]
    [InlineData(2, 2.474, 0.210, 1.001)]
    [InlineData(3, 3.145, 0.225, 1.003)]
    [InlineData(4, 3.612, 0.232, 1.006)]
    [InlineData(6, 4.214, 0.239, 1.016)]
    [InlineData(8, 4.586, 0.242, 1.029)]
    [InlineData(10, 4.838, 0.244, 1.042)]
    public void Lattice_rectangle_matches_slope_centre_and_induced_drag(double aspect, double slope, double centre, double induced)
    {
        LatticeCase wing = new(LiftingFin.Trapezoid(aspect / 2, 1, 1, 0), Mirror, 14, 9);
        Assert.Equal(slope, wing.Slope, 0.0015);
        Assert.Equal(centre, wing.CentreX + 0.25, 0.002);
        Assert.Equal(induced, wing.InducedOverElliptic, 0.0015);
    }

    // Numerical reference: vortex lattice, Lan spacing along the chord and cosine along the span, converged over four grids to 72 × 20; tolerance: last digits here with 24 × 8.
    [Fact]
    public void Lattice_rectangle_of_aspect_ratio_6_is_converged_to_four_digits()
    {
        LatticeCase wing = new(LiftingFin.Trapezoid(3, 1, 1, 0), Mirror, 24, 8);
        Assert.Equal(4.2146, wing.Slope, 0.0002);
        Assert.Equal(0.23881, wing.CentreX + 0.25, 0.0001);
        Assert.Equal(0.4428, wing.CentreY / 3, 0.0005);
        Assert.Equal(1 / 0.9839, wing.InducedOverElliptic, 0.0005);
    }

    // Numerical reference, as above: aspect ratio 2, taper 0.45, unswept quarter chord, root chord 1.37931, semispan 1.
    [Fact]
    public void Lattice_tapered_wing_of_aspect_ratio_2_is_converged_to_four_digits()
    {
        LatticeCase wing = new(LiftingFin.Trapezoid(1, 1.37931, 0.45 * 1.37931, 0), Mirror, 24, 8);
        Assert.Equal(2.5042, wing.Slope, 0.001);
        Assert.Equal(0.2990, wing.CentreX + 0.25 * 1.37931, 0.0002);
        Assert.Equal(0.4208, wing.CentreY, 0.0005);
        Assert.Equal(1 / 0.9994, wing.InducedOverElliptic, 0.0003);
    }

    // Bertin and Smith, Aerodynamics for Engineers, example wing A 5, 45 degrees, untapered: 4 × 1 even panels, circulation over 4π b V α (from memory).
    [Fact]
    public void Lattice_four_even_panels_repeat_the_textbook_circulations()
    {
        LatticeCase wing = new(LiftingFin.Trapezoid(2.5, 1, 1, Math.PI / 4), Mirror, 4, 1, even: true);
        double[] expected = [0.0273, 0.0287, 0.0286, 0.0250];
        for (int j = 0; j < 4; j++)
            Assert.Equal(expected[j], wing.Circulation[j] / (4 * Math.PI * 5), 0.00006);
    }

    // Numerical reference: the same wing converged over three grids, 3.1855 ± 0.003. The kink at the mirror converges with the first power of the strip width: 0.4 % at 24 × 8.
    [Fact]
    public void Lattice_swept_wing_tends_to_the_converged_slope()
    {
        LatticeCase coarse = Swept(12, 4), fine = Swept(24, 8);
        Assert.InRange(2 * fine.Slope - coarse.Slope, 3.1825 - 0.004, 3.1885 + 0.004);
        Assert.Equal(0.473, fine.CentreY / 2.5, 0.003);
        Assert.Equal(1.4255, fine.CentreX + 0.25, 0.01);
        Assert.Equal(1 / 0.903, fine.InducedOverElliptic, 0.01);

        static LatticeCase Swept(int strips, int rows) => new(LiftingFin.Trapezoid(2.5, 1, 1, Math.PI / 4), Mirror, strips, rows);
    }

    // Numerical reference: vortex lattice, taper 0.4, sweep of the quarter chord in degrees, converged. Tolerance 0.4 %: kink at the mirror.
    [Theory]
    [InlineData(4, 10, 3.717)]
    [InlineData(4, 20, 3.672)]
    [InlineData(8, 10, 4.726)]
    [InlineData(8, 20, 4.603)]
    public void Lattice_trapezoid_with_sweep_matches(double aspect, double sweep, double slope)
    {
        double root = 1 / (aspect * 0.7);
        LatticeCase wing = new(LiftingFin.Trapezoid(0.5, root, 0.4 * root, Water.Radians(sweep)), Mirror, 20, 6);
        Assert.Equal(slope, wing.Slope, 0.004 * slope);
    }

    // Rectangle of aspect ratio 3, measurements quoted by Lamar (1974), curve read off. Tolerance 5 %: scatter of the readings.
    [Theory]
    [InlineData(2.51, 0.137)]
    [InlineData(5.02, 0.280)]
    [InlineData(7.35, 0.422)]
    [InlineData(8.67, 0.484)]
    [InlineData(10.80, 0.596)]
    public void Solve_rectangle_of_aspect_ratio_3_lifts_as_measured(double leeway, double lift)
    {
        LiftingSurface wing = LiftingSurface.Create(LiftingFin.Trapezoid(1.5, 1, 1, 0), Mirror, new() { Tip = TipForm.Square });
        Assert.Equal(lift, wing.Solve(Water.At(5, leeway)).CL, 0.05 * lift);
    }
}
