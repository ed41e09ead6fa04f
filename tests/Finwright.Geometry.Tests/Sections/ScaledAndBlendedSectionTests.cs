using CsCheck;
using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Sections;

public sealed class ScaledAndBlendedSectionTests
{
    [Fact]
    public void Scaled_four_digit_section_is_the_section_of_the_other_name()
    {
        // Four-digit ordinates are proportional to thickness and camber (NACA TR-460).
        ScaledSection scaled = new(new FourDigitSection(4, 4, 12), 0.09, 0.02);
        FourDigitSection named = new(2, 4, 9);
        for (int i = 0; i <= 100; i++)
            Assert.Equal(0, (SectionGeometry.PointAt(scaled, i / 100.0) - SectionGeometry.PointAt(named, i / 100.0)).Length, 1e-15);
    }

    [Fact]
    public void Scaled_symmetric_section_asked_for_camber_takes_the_four_digit_mean_line()
    {
        ScaledSection scaled = new(new FourDigitSection(0, 0, 12), null, -0.02);
        FourDigitSection named = new(2, 4, 12);
        for (int i = 0; i <= 100; i++)
        {
            Point2 expected = SectionGeometry.PointAt(named, 1 - i / 100.0);
            Assert.Equal(0, (SectionGeometry.PointAt(scaled, i / 100.0) - new Point2(expected.X, -expected.Y)).Length, 1e-15);
        }
    }

    [Fact]
    public void Scaled_without_wishes_is_the_section_itself() =>
        SectionGenerators.Formula.Hold(section =>
        {
            ScaledSection same = new(section, null, null);
            for (int i = 0; i <= 20; i++)
                Assert.Equal(SectionGeometry.PointAt(section, i / 20.0), SectionGeometry.PointAt(same, i / 20.0));
        });

    [Theory]
    [InlineData(0.0)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Scaled_refuses_a_thickness_that_is_none(double thickness) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ScaledSection(new FourDigitSection(0, 0, 10), thickness, null));

    [Fact]
    public void Blended_meets_each_end_exactly_and_moves_smoothly_between() =>
        Gen.Select(SectionGenerators.Formula, SectionGenerators.Formula, Gen.Double[0, 1]).Hold((a, b, u) =>
        {
            Assert.Equal(0, (SectionGeometry.PointAt(a, u) - SectionGeometry.PointAt(new BlendedSection(a, b, 0), u)).Length, 1e-15);
            Assert.Equal(0, (SectionGeometry.PointAt(b, u) - SectionGeometry.PointAt(new BlendedSection(a, b, 1), u)).Length, 1e-15);
            const double step = 1e-6;
            Point2 before = SectionGeometry.PointAt(new BlendedSection(a, b, 0.5), u), after = SectionGeometry.PointAt(new BlendedSection(a, b, 0.5 + step), u);
            Assert.InRange((after - before).Length, 0, step);
        });

    [Fact]
    public void Blended_halfway_between_two_thicknesses_is_the_thickness_between()
    {
        BlendedSection between = new(new FourDigitSection(0, 0, 8), new FourDigitSection(0, 0, 12), 0.5);
        FourDigitSection named = new(0, 0, 10);
        for (int i = 0; i <= 100; i++)
            Assert.Equal(named.HalfThickness(i / 100.0), between.HalfThickness(i / 100.0), 1e-16);
        Assert.Equal(0.10, between.ThicknessRatio, 3e-5);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void Blended_refuses_a_weight_outside_its_ends(double weight) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new BlendedSection(new FourDigitSection(0, 0, 8), new FourDigitSection(0, 0, 12), weight));
}
