using Finwright.Page.Drawings;
using Finwright.Page.Making;
using Finwright.Papers;

namespace Finwright.Page.Tests.Making;

public sealed class NamesTests
{
    [Theory]
    [InlineData("Sandbar delta", "Sandbar-delta.zip")]
    [InlineData("../../etc/passwd", "etc-passwd.zip")]
    [InlineData("a\\b:c*d?\"<>|", "a-b-c-d.zip")]
    [InlineData("...", "fin.zip")]
    [InlineData("Küstenläufer 21", "Küstenläufer-21.zip")]
    public void Names_of_files_lead_nowhere(string name, string safe) => Assert.Equal(safe, DownloadName.Of(name, ".zip"));

    [Fact]
    public void Long_names_are_cut() => Assert.Equal(64, DownloadName.Of(new string('x', 500), ".zip").Length);

    [Theory]
    [InlineData("plate%201.gcode", "plate 1.gcode")]
    [InlineData("..%2F..%2Fsecret", "secret")]
    [InlineData("C%3A%5Cprints%5Cblade.gcode", "blade.gcode")]
    [InlineData("a%0Ab", "ab")]
    [InlineData("", "motion file")]
    public void Names_that_are_sent_are_bare(string sent, string shown) => Assert.Equal(shown, MotionInbox.NameOf(sent));

    [Theory]
    [InlineData("A4", "100", "100", true)]
    [InlineData("210x297", "99,6", "100.2", true)]
    [InlineData("A9", "100", "100", false)]
    [InlineData("50x50", "100", "100", false)]
    [InlineData("A4", "80", "100", false)]
    [InlineData("A4", "a", "100", false)]
    [InlineData("A4", "-100", "100", false)]
    public void Paper_and_rulers_are_taken_or_refused_with_a_word(string paper, string across, string down, bool isGood)
    {
        PaperInput input = PaperInput.Of(paper, across, down, MadeFin.Reader());
        Assert.Equal(isGood, input is { Paper: not null, Rulers: not null });
        Assert.Equal(isGood, input.Problem.Length == 0);
    }

    [Fact]
    public void A_ruler_is_kept_in_metres() => Assert.Equal(new RulerReading(0.0996, 0.1002), PaperInput.Of("A4", "99,6", "100.2", MadeFin.Reader()).Rulers);

    [Fact]
    public void Sentences_with_numbers_are_found_in_german()
    {
        Words.Reader german = MadeFin.Reader(PaperLanguage.German);
        Assert.Equal("Platte 2 von 3 drucken", german.Say("print plate 2 of 3"));
        Assert.Equal("das Blatt füllen", german.Say("pour the blade"));
        Assert.Equal("print plate 2 of 3", MadeFin.Reader().Say("print plate 2 of 3"));
    }

    [Fact]
    public void Dark_paper_has_light_ink_and_scales_keep_their_colours()
    {
        byte[] dark = DarkPaper.Of("<a fill=\"#fbfaf6\" stroke=\"#14273A\"/><b fill=\"#ffffff\"/><c fill=\"#fee838\"/>"u8.ToArray());
        Assert.Equal("<a fill=\"#10181f\" stroke=\"#e8e6de\"/><b fill=\"#10181f\"/><c fill=\"#fee838\"/>", System.Text.Encoding.UTF8.GetString(dark));
    }
}
