using Finwright.Geometry.Sections;
using Finwright.Water.Sections.Potential;

namespace Finwright.Water.Tests.Sections.Potential;

public sealed class PotentialFlowTests
{
    private const double Degree = Math.PI / 180;

    [Theory]
    [InlineData(-0.1, 0.0, 0.0, 0)]
    [InlineData(-0.1, 0.0, 0.0, 5)]
    [InlineData(-0.1, 0.1, 0.0, 5)]
    [InlineData(-0.08, 0.0, 10, 4)]
    [InlineData(-0.1, 0.0, 15, 5)]
    [InlineData(-0.06, 0.0, 10, 8)]
    public void Pressures_past_a_conformal_section_are_exact_within_half_a_percent_of_dynamic_pressure(double x, double y, double edge, double degrees)
    {
        // Exact solution by conformal mapping (Milne-Thomson, 1973, Theoretical Aerodynamics). The cusp of the Joukowski section
        // is the hardest place; 0.5 % of the dynamic pressure is asked everywhere but on the last panel of each side.
        ConformalSection section = new(x, y, edge * Degree);
        int panels = degrees > 6 ? 320 : 200;
        PotentialFlow flow = new(SectionPanels.Through(section.Nodes(panels)));
        (double[] cp, double cl, _) = flow.Pressures(degrees * Degree);
        double worst = 0;
        for (int i = 1; i < panels; i++)
            worst = Math.Max(worst, Math.Abs(cp[i] - section.Cp(ConformalSection.Theta(i, panels), degrees * Degree)));
        Assert.InRange(worst, 0, 0.005);
        Assert.Equal(section.Cl(degrees * Degree), cl, 2e-3);
    }

    [Fact]
    public void Lift_converges_with_second_order_to_the_closed_form()
    {
        // Exact: cl = 8 π R/c sin α (Milne-Thomson, 1973).
        ConformalSection section = new(-0.1, 0, 15 * Degree);
        double[] errors = [.. Enumerable.Range(0, 4).Select(k => 40 << k).Select(n =>
            Math.Abs(new PotentialFlow(SectionPanels.Through(section.Nodes(n))).Pressures(5 * Degree).Cl - section.Cl(5 * Degree)))];
        for (int i = 1; i < errors.Length; i++)
            Assert.InRange(Math.Log2(errors[i - 1] / errors[i]), 1.7, 3.5);
    }

    [Theory]
    [InlineData("naca-0006", 0.11518, -0.208)]
    [InlineData("naca-0009", 0.11796, -0.3105)]
    [InlineData("naca-0012", 0.12075, -0.4140)]
    [InlineData("naca-0015", 0.12355, -0.5193)]
    public void Lift_and_least_pressure_of_four_digit_sections_agree_with_a_finer_panel_code(string name, double lift, double least)
    {
        // Numerical reference: an independent code with 640 linear-vorticity panels; lift at 1 degree, least pressure at 0. Tolerances: 0.5 % and 0.004.
        Assert.True(SectionCatalogue.TryFind(name, null, out Section? section, out _));
        PotentialFlow flow = new(SectionPanels.Of(section));
        Assert.Equal(lift, flow.Pressures(Degree).Cl, 0.005 * lift);
        Assert.Equal(least, flow.Pressures(0).Cp.Min(), 0.004);
    }

    [Fact]
    public void Closed_0012_agrees_with_a_finer_panel_code()
    {
        // Numerical reference: an independent linear-vorticity code, converged; last coefficient 0.1036: cl(5) 0.603014, cl(10) 1.201439,
        // cm(5) -0.00678, least pressure at 10 degrees -6.250.
        PotentialFlow flow = new(SectionPanels.Of(new ClosedFourDigit(0.12)));
        (_, double cl, double cm) = flow.Pressures(5 * Degree);
        Assert.Equal(0.603014, cl, 0.002 * 0.603);
        Assert.Equal(-0.00678, cm, 0.0005);
        (double[] cp, double cl10, _) = flow.Pressures(10 * Degree);
        Assert.Equal(1.201439, cl10, 0.002 * 1.2);
        Assert.Equal(-6.250, cp.Min(), 0.02 * 6.25);
    }

    [Fact]
    public void Symmetric_section_at_no_angle_carries_nothing_and_at_opposite_angles_the_opposite()
    {
        Assert.True(SectionCatalogue.TryFind("naca-0010", null, out Section? section, out _));
        PotentialFlow flow = new(SectionPanels.Of(section));
        Assert.Equal(0, flow.Pressures(0).Cl, 1e-10);
        Assert.Equal(flow.Pressures(6 * Degree).Cl, -flow.Pressures(-6 * Degree).Cl, 1e-10);
    }

    [Fact]
    public void Section_without_thickness_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new PotentialFlow(SectionPanels.Through([.. Enumerable.Range(0, 41).Select(i => new Finwright.Geometry.Point2(Math.Abs(1 - i / 20.0), 0))])));
    }

    private sealed class ClosedFourDigit(double thickness) : Section
    {
        public override string Name => "closed";

        public override double ThicknessRatio => thickness;

        public override double HalfThickness(double x) =>
            5 * thickness * (0.2969 * Math.Sqrt(x) - 0.1260 * x - 0.3516 * x * x + 0.2843 * x * x * x - 0.1036 * x * x * x * x);
    }
}
