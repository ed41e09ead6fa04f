using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Sections;

public sealed class SectionCatalogueTests
{
    [Theory]
    [InlineData("naca-0010", "naca-0010", 0.10, 0)]
    [InlineData("NACA 2412", "naca-2412", 0.12, 0.02)]
    [InlineData(" naca4415 ", "naca-4415", 0.15, 0.04)]
    [InlineData("naca-0010-35", "naca-0010-35", 0.10, 0)]
    [InlineData("naca-2410-64", "naca-2410-64", 0.10, 0.02)]
    [InlineData("naca-16-009", "naca-16-009", 0.09, 0)]
    [InlineData("NACA 16-212", "naca-16-212", 0.12, 0.2 * 0.6931471805599453 / (4 * Math.PI))]
    public void TryFind_reads_thickness_and_camber_from_the_digits(string name, string spelt, double thickness, double camber)
    {
        Assert.True(SectionCatalogue.TryFind(name, null, out Section? section, out string problem), problem);
        Assert.Equal("", problem);
        Assert.Equal(spelt, section.Name);
        Assert.Equal(thickness, section.ThicknessRatio, 15);
        Assert.Equal(camber, section.MaximumCamber, 15);
    }

    [Theory]
    [InlineData("naca-0000", "thickness is 0 %")]
    [InlineData("naca-0041", "between 1 and 40 %")]
    [InlineData("naca-2012", "second digit")]
    [InlineData("naca-0412", "no camber")]
    [InlineData("naca-0010-67", "between 2 and 6")]
    [InlineData("naca-0010-61", "between 2 and 6")]
    [InlineData("naca-16-000", "thickness is 0 %")]
    [InlineData("naca-23012", "Known are")]
    [InlineData("naca-００10", "Known are")]
    [InlineData("", "Known are")]
    [InlineData("my own", "No section was imported")]
    public void TryFind_says_why_a_name_makes_no_section(string name, string expected)
    {
        Assert.False(SectionCatalogue.TryFind(name, null, out Section? section, out string problem));
        Assert.Null(section);
        Assert.Contains(expected, problem, StringComparison.Ordinal);
        Assert.Contains($"\"{name}\"", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void TryFind_prefers_an_imported_section_of_exactly_that_name_and_lists_the_others()
    {
        FourDigitSection mine = new(0, 0, 9);
        Dictionary<string, Section> imported = new(StringComparer.Ordinal) { ["naca-0010"] = mine, ["Mudflat tip"] = mine };
        Assert.True(SectionCatalogue.TryFind("naca-0010", imported, out Section? section, out _));
        Assert.Same(mine, section);
        Assert.False(SectionCatalogue.TryFind("mudflat tip", imported, out _, out string problem));
        Assert.Contains("Imported: \"Mudflat tip\", \"naca-0010\".", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void TryFind_keeps_the_message_short_for_a_huge_name()
    {
        Assert.False(SectionCatalogue.TryFind(new string('\u0007', 1_000_000), null, out _, out string problem));
        Assert.InRange(problem.Length, 1, 400);
        Assert.DoesNotContain(problem, char.IsControl);
    }

    [Fact]
    public void TryFind_finds_every_four_digit_name_or_says_why_not()
    {
        for (int digits = 0; digits <= 9999; digits++)
        {
            bool found = SectionCatalogue.TryFind($"naca-{digits:0000}", null, out Section? section, out string problem);
            Assert.Equal(found, section is not null);
            Assert.Equal(found, problem.Length == 0);
            int camber = digits / 1000, place = digits / 100 % 10, thickness = digits % 100;
            Assert.Equal(thickness is >= 1 and <= 40 && camber > 0 == place > 0, found);
        }
    }
}
