using System.Xml.Linq;
using Finwright.Assessment;
using Finwright.Papers.Drawings;
using Finwright.Papers.Templates;
using Finwright.Papers.Tests.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Templates;

public sealed class FinTemplatesTests
{
    private static readonly AssessmentResult[] Fins = [PouredFins.Fairway, PouredFins.Sandbar, PouredFins.Eelgrass];
    private static readonly Tongue[] Tongues = [PouredFins.English, PouredFins.German];

    [Fact]
    public void A_fin_has_one_template_for_each_job_and_a_jig_for_each_part_that_is_poured()
    {
        string[] names = [.. FinTemplates.Of(PouredFins.Sandbar, PouredFins.English).Select(template => template.Name)];
        Assert.Equal(["planform", "strip", "sections", "drill-places", "base-gauge"], names.Take(5), StringComparer.Ordinal);
        Assert.Equal(PouredFins.Sandbar.Poured!.Parts.Count, names.Length - 5);
        Assert.All(names.Skip(5), name => Assert.StartsWith("pour-jig-", name, StringComparison.Ordinal));
        Assert.Equal(names.Length, names.Distinct(StringComparer.Ordinal).Count());
        Assert.All(names, name => Assert.All(name, c => Assert.True(char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-')));
        Assert.DoesNotContain("strip", FinTemplates.Of(PouredFins.Fairway, PouredFins.English).Select(template => template.Name), StringComparer.Ordinal);
    }

    [Fact]
    public void No_words_cross_a_line_or_other_words()
    {
        List<string> faults = [];
        foreach (AssessmentResult fin in Fins)
            foreach (Tongue tongue in Tongues)
                foreach (Template template in FinTemplates.Of(fin, tongue))
                    foreach (DrawnText text in template.Drawing.Items.OfType<DrawnText>())
                        if (!FreeRoom.IsClear(template.Drawing, text, 0))
                            faults.Add($"{fin.Design!.Name}, {template.Name}: \"{text.Text}\"");
        Assert.Empty(faults);
    }

    [Fact]
    public void Every_template_has_its_title_its_check_line_and_begins_at_the_origin()
    {
        foreach (AssessmentResult fin in Fins)
        {
            foreach (Template template in FinTemplates.Of(fin, PouredFins.English))
            {
                Assert.Equal(0, template.Drawing.Bounds.From.X, 1e-12);
                Assert.Equal(0, template.Drawing.Bounds.From.Y, 1e-12);
                Assert.Equal(100, SvgReading.Extents(SvgReading.Of(template.Drawing), "check-100-mm").Width, 2e-4);
                Assert.Contains(template.Drawing.Items.OfType<DrawnText>(), text => text.Text == template.Title);
                Assert.NotEmpty(template.What);
            }
        }
    }

    [Fact]
    public void The_same_fin_gives_the_same_bytes()
    {
        foreach ((Template first, Template second) in FinTemplates.Of(PouredFins.Eelgrass, PouredFins.English).Zip(FinTemplates.Of(PouredFins.Eelgrass, PouredFins.English)))
            Assert.Equal(SvgReading.Bytes(first.Drawing), SvgReading.Bytes(second.Drawing));
    }

    [Fact]
    public void A_fin_may_have_any_name()
    {
        const string Name = "<&\"> Föhr";
        AssessmentResult fin = PouredFins.Sandbar with { Design = PouredFins.Sandbar.Design! with { Name = Name } };
        foreach (Template template in FinTemplates.Of(fin, PouredFins.German))
        {
            XElement svg = SvgReading.Of(template.Drawing, Name);
            Assert.Contains(svg.Descendants().Where(e => e.Name.LocalName is "text"), e => e.Value.StartsWith(Name, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Words_are_the_language_s_and_lines_are_not()
    {
        foreach ((Template english, Template german) in FinTemplates.Of(PouredFins.Sandbar, PouredFins.English).Zip(FinTemplates.Of(PouredFins.Sandbar, PouredFins.German)))
        {
            Assert.NotEqual(english.Title, german.Title, StringComparer.Ordinal);
            Assert.NotEqual(english.What, german.What, StringComparer.Ordinal);
            string layer = english.Name switch { "planform" => "blade", "sections" or "strip" => english.Name, "drill-places" => "inside", "base-gauge" => "base", _ => "part" };
            DrawnBox a = Layer(english.Drawing, layer), b = Layer(german.Drawing, layer);
            Assert.Equal(a.Width, b.Width, 1e-9);
            Assert.Equal(a.Height, b.Height, 1e-9);
        }
    }

    [Fact]
    public void A_fin_that_cannot_be_made_has_no_templates()
    {
        Assert.Throws<ArgumentException>(() => FinTemplates.Of(MadeFins.Worked("fairway-upright", AssessmentDepth.Shape), PouredFins.English));
    }

    private static DrawnBox Layer(Drawing drawing, string layer) => DrawnBox.Round(drawing.Items.Where(item => item.Layer == layer).SelectMany(Extent.Of));
}
