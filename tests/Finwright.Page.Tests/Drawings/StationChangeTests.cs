using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Page.Drawings;

namespace Finwright.Page.Tests.Drawings;

public sealed class StationChangeTests
{
    private static readonly FinDesign Plain = new()
    {
        Name = "Plain",
        Shape = new()
        {
            Outline = new() { Family = OutlineFamily.Upright, SpanMm = 300, RootChordMm = 120 },
            Sections = [new() { AtPercent = 0, ThicknessPercent = 12 }, new() { AtPercent = 100, ThicknessPercent = 8 }],
        },
    };

    [Fact]
    public void A_further_section_changes_nothing_until_it_is_changed()
    {
        Blade before = BladeOf(Plain);
        FinDesign added = StationChange.Add(Plain, before, 0.4);
        Blade after = BladeOf(added);
        Assert.Equal(3, added.Shape.Sections.Count);
        for (double share = 0; share <= 1; share += 0.1)
            Assert.Equal(before.ThicknessRatio(share * before.Span), after.ThicknessRatio(share * before.Span), 4);
    }

    [Fact]
    public void Where_a_section_stands_none_is_added() => Assert.Same(Plain, StationChange.Add(Plain, BladeOf(Plain), 0.995));

    [Fact]
    public void A_file_of_a_known_name_gets_a_name_of_its_own()
    {
        FinDesign design = Plain with { Shape = Plain.Shape with { ImportedSections = [new() { Name = "mine", Points = [[1, 0]] }] } };
        Assert.Equal("mine 2", SectionNames.Free(design, "mine.dat"));
        Assert.Equal("other", SectionNames.Free(design, "other.txt"));
        Assert.Equal((12, 0), SectionNames.Own(design, "naca-0012") is { } own ? (Math.Round(own.Thickness, 1), Math.Round(own.Camber, 3)) : (0, 0));
    }

    private static Blade BladeOf(FinDesign design) => BladeFromDesign.Create(design, [])!;
}
