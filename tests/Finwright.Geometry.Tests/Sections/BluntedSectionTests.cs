using CsCheck;
using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Sections;

public sealed class BluntedSectionTests
{
    private static Gen<(Section Section, double Share)> Cases { get; } =
        Gen.Select(SectionGenerators.Formula, Gen.Double[0, 1], (section, share) => (section, share));

    [Fact]
    public void HalfThickness_ends_at_the_wanted_edge_and_keeps_nose_and_peak() =>
        Cases.Hold(c =>
        {
            double edge = c.Share * BluntedSection.Thickest(c.Section);
            BluntedSection blunt = new(c.Section, edge);
            Assert.Equal(edge / 2, blunt.HalfThickness(1), 1e-15);
            for (double x = 0; x <= blunt.PlaceOfChange; x += 0.01)
                Assert.Equal(c.Section.HalfThickness(x), blunt.HalfThickness(x));
            Assert.Equal(BluntedSection.Thickest(c.Section), BluntedSection.Thickest(blunt), 1e-12);
        });

    [Fact]
    public void HalfThickness_never_rises_behind_the_peak_nor_falls_below_nothing() =>
        Cases.Hold(c =>
        {
            BluntedSection blunt = new(c.Section, c.Share * BluntedSection.Thickest(c.Section));
            double before = blunt.HalfThickness(blunt.PlaceOfChange);
            for (int i = 1; i <= 200; i++)
            {
                double here = blunt.HalfThickness(blunt.PlaceOfChange + (1 - blunt.PlaceOfChange) * i / 200);
                Assert.InRange(here, 0, before + 1e-14);
                before = here;
            }
        });

    [Fact]
    public void HalfThickness_joins_with_equal_slope_and_curvature()
    {
        FourDigitSection section = new(0, 0, 10);
        BluntedSection blunt = new(section, 0.01);
        double x = blunt.PlaceOfChange, h = 1e-4;
        double Added(double at) => blunt.HalfThickness(at) - section.HalfThickness(at);

        // A cubic start: doubling the distance multiplies the change by eight, so value, slope and curvature begin at zero.
        Assert.Equal(8, Added(x + 2 * h) / Added(x + h), 0.02);
        Assert.Equal(0, Added(x - h));
    }

    [Fact]
    public void Constructor_at_the_sections_own_edge_changes_nothing()
    {
        FourDigitSection section = new(2, 4, 12);
        BluntedSection same = new(section, 2 * section.HalfThickness(1));
        for (int i = 0; i <= 100; i++)
            Assert.Equal(section.HalfThickness(i / 100.0), same.HalfThickness(i / 100.0), 1e-16);
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(0.1001)]
    [InlineData(double.NaN)]
    public void Constructor_refuses_an_edge_the_section_cannot_have(double edge) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new BluntedSection(new FourDigitSection(0, 0, 10), edge));
}
