using Finwright.Geometry.Blades;
using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Blades;

public sealed class BladeTests
{
    private static Blade Twisted() => new(
        TestBlades.Round(),
        [TestBlades.Station(0, "naca-0010", 0.1), TestBlades.Station(0.15, "naca-16-009", 0.09, 0.02, 0.05), TestBlades.Station(0.32, "naca-2412", 0.08, 0.03, -0.1)],
        0.001);

    [Fact]
    public void Skin_at_a_station_is_the_section_with_a_blunted_edge()
    {
        Blade blade = new(TestBlades.Trapezoid(0.1, 0.06, 0.3, 0.05), [TestBlades.Station(0, "naca-2412", 0.12, 0.02), TestBlades.Station(0.3, "naca-0010", 0.1)], 0.001);
        Section section = new BluntedSection(TestBlades.Station(0, "naca-2412", 0.12, 0.02).Section, 0.01);
        for (int i = 0; i <= 40; i++)
        {
            Point2 expected = SectionGeometry.PointAt(section, i / 40.0);
            Point3 skin = blade.Skin(0, i / 40.0);
            Assert.Equal(0.1 * (expected.X - 0.25), skin.X, 1e-9);
            Assert.Equal(0.1 * expected.Y, skin.Z, 1e-9);
        }
    }

    [Fact]
    public void Skin_keeps_the_trailing_edge_thickness_along_the_span()
    {
        Blade blade = Twisted();
        for (int i = 0; i <= 16; i++)
        {
            double y = 0.02 * i * 0.9;
            Assert.Equal(0.001, (blade.Skin(y, 0) - blade.Skin(y, 1)).Length, 1e-9);
        }
    }

    [Fact]
    public void HalfThickness_and_MidSurface_agree_with_the_skin()
    {
        Blade blade = Twisted();
        for (int i = 1; i < 30; i++)
            for (int j = 1; j < 20; j++)
            {
                // A point of one side must lie one half thickness off the middle surface.
                double y = 0.31 * i / 30, u = 0.47 * j / 20;
                Point3 starboard = blade.Skin(y, u), port = blade.Skin(y, 1 - u);
                Assert.Equal(starboard.Z, blade.MidSurface(starboard.X, y) + blade.HalfThickness(starboard.X, y), 1e-9);
                Assert.Equal(port.Z, blade.MidSurface(port.X, y) - blade.HalfThickness(port.X, y), 1e-9);
            }
    }

    [Fact]
    public void HalfThickness_is_zero_outside_the_outline()
    {
        Blade blade = Twisted();
        Assert.Equal(0, blade.HalfThickness(-0.05, 0.01));
        Assert.Equal(0, blade.HalfThickness(0.12, 0.01));
        Assert.Equal(0, blade.HalfThickness(0, -0.001));
        Assert.Equal(0, blade.HalfThickness(0.08, 0.33));
    }

    [Fact]
    public void Thickness_runs_out_as_a_half_ellipse_at_a_rounded_tip()
    {
        Blade blade = new(TestBlades.Trapezoid(0.1, 0.1, 0.3, 0), [TestBlades.Station(0, "naca-0010", 0.1)], 0.001, 0.01);
        double full = blade.HalfThickness(0.005, 0.2);
        Assert.Equal(full, blade.HalfThickness(0.005, 0.29), 1e-12);
        // Ellipse: at half the way the height is √3/2.
        Assert.Equal(full * Math.Sqrt(0.75), blade.HalfThickness(0.005, 0.295), 1e-9);
        Assert.Equal(0, blade.HalfThickness(0.005, 0.3), 1e-12);
    }

    [Fact]
    public void Tip_rounding_left_out_is_half_the_thickness_there()
    {
        Blade blade = new(TestBlades.Trapezoid(0.1, 0.06, 0.3, 0.05), [TestBlades.Station(0, "naca-0010", 0.1)], 0.001);
        double y = 0.3 - blade.TipRounding;
        Assert.Equal(0.1 * blade.Outline.Chord(y) / 2, blade.TipRounding, 1e-12);
    }

    [Fact]
    public void Twist_turns_the_nose_to_starboard_about_the_quarter_chord()
    {
        Blade blade = new(TestBlades.Trapezoid(0.1, 0.1, 0.3, 0), [TestBlades.Station(0, "naca-0010", 0.1, 0, 0.1)], 0.001);
        Point3 nose = blade.Skin(0.1, 0.5);
        Assert.Equal(0.025 * Math.Sin(0.1), nose.Z, 1e-12);
        Assert.Equal(-0.025 * Math.Cos(0.1), nose.X, 1e-12);
    }

    [Fact]
    public void Blend_of_unlike_sections_keeps_the_thickness_ratio()
    {
        Blade blade = new(TestBlades.Trapezoid(0.1, 0.1, 0.3, 0), [TestBlades.Station(0, "naca-0010", 0.1), TestBlades.Station(0.3, "naca-16-009", 0.1)], 0.001, 0);
        for (int i = 0; i <= 10; i++)
        {
            double greatest = 0;
            for (int k = 0; k <= 4000; k++)
                greatest = Math.Max(greatest, 2 * blade.HalfThickness(-0.025 + 0.1 * k / 4000, 0.03 * i));
            // The four-digit polynomial peaks 0.03 % above its name (NACA TR-460); the rest is interpolation between blends.
            Assert.Equal(0.01, greatest, 0.0005 * 0.01);
        }
    }
}
