using CsCheck;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Blades;

public sealed class SectionOfBladeTests
{
    [Fact]
    public void SectionAt_gives_the_points_of_the_skin_for_a_chord_of_one()
    {
        Blade blade = new(
            TestBlades.Trapezoid(0.16, 0.08, 0.3, 0.05),
            [TestBlades.Station(0, "naca-2412", 0.12, camber: 0.02), TestBlades.Station(0.12, "naca-16-009", 0.10), TestBlades.Station(0.3, "naca-0010", 0.08)],
            trailingEdgeThickness: 1e-3);
        Gen.Select(Gen.Double[0, 0.299], Gen.Double[0, 1]).Sample((y, u) =>
        {
            double chord = blade.Outline.Chord(y);
            Point2 point = SectionGeometry.PointAt(blade.SectionAt(y), u);
            Point3 skin = blade.Skin(y, u);
            // Without twist both are the same formula in another order of arithmetic.
            return Math.Abs(blade.Outline.LeadingEdge(y) + chord * point.X - skin.X) < 1e-12 && Math.Abs(chord * point.Y - skin.Z) < 1e-12;
        });
    }

    [Fact]
    public void SectionAt_keeps_the_trailing_edge_and_leaves_out_the_twist()
    {
        Blade blade = new(TestBlades.Trapezoid(0.16, 0.08, 0.3, 0), [TestBlades.Station(0, "naca-0010", 0.10, twist: 0.1)], trailingEdgeThickness: 1e-3);
        Section section = blade.SectionAt(0.1);
        Assert.Equal(blade.EdgeThickness(0.1) / blade.Outline.Chord(0.1), 2 * section.HalfThickness(1), 1e-12);
        Assert.Equal(0.10, section.ThicknessRatio, 1e-4);
        Assert.Equal(0, section.MaximumCamber);
        Assert.NotEmpty(section.Joins);
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(0.31)]
    [InlineData(double.NaN)]
    public void SectionAt_outside_the_blade_is_refused(double y) => Assert.Throws<ArgumentOutOfRangeException>(() =>
        new Blade(TestBlades.Trapezoid(0.16, 0.08, 0.3, 0), [TestBlades.Station(0, "naca-0010", 0.10)], 1e-3).SectionAt(y));

    [Fact]
    public void SectionAt_a_tip_that_has_closed_is_refused()
    {
        Blade blade = new(TestBlades.Round(), [TestBlades.Station(0, "naca-0010", 0.10)], 1e-3);
        Assert.Throws<ArgumentOutOfRangeException>(() => blade.SectionAt(blade.Span));
    }
}
