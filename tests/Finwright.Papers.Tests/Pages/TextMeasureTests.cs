using System.Text;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pages;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Finwright.Papers.Tests.Pages;

public sealed class TextMeasureTests
{
    [Theory]
    [InlineData("The rear nut comes 0.6 mm out of the wall at 42 mm depth.", false)]
    [InlineData("Anschlüsse bohren: Ø 6,2 mm → größer", true)]
    public void Width_is_that_which_another_reader_finds_on_the_page(string text, bool bold)
    {
        const double size = 5e-3;
        byte[] file = Press.Drawn(new DrawnText("word", text, new(0, 0), new(size, Palette.Line, Bold: bold)));
        using PdfDocument read = PdfDocument.Open(file);
        Letter[] letters = [.. read.GetPage(1).Letters.Where(letter => Math.Abs(letter.PointSize * Press.PointMm - 5) < 0.01)];
        Assert.Equal(text, string.Concat(letters.Select(letter => letter.Value)));
        double width = (letters[^1].EndBaseLine.X - letters[0].StartBaseLine.X) * Press.PointMm;
        // The file holds widths cut to whole thousandths of the size.
        Assert.InRange(1e3 * TextMeasure.Width(text, size, bold), width, width + 1e-3 * 5 * text.Length);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void All_figures_are_equally_wide(bool bold)
    {
        // The bold face itself is off by three of 2816 units at one figure: a hundredth of a point at the size of a chapter's head.
        double[] widths = [.. "0123456789".Select(figure => TextMeasure.Width(figure.ToString(), 1, bold))];
        Assert.True(widths.Max() - widths.Min() < 4.0 / 2816);
    }

    [Fact]
    public void Lines_lose_no_word_and_fit_their_room()
    {
        const string text = "Die hintere Mutter liegt 0,6 mm außerhalb der Wand, in 42 mm Tiefe: 1 mm nach vorn setzen oder die Wurzel auf 14,6 mm verdicken.";
        IReadOnlyList<string> lines = TextMeasure.Lines(text, 0.06, 3e-3);
        Assert.Equal(text, string.Join(' ', lines));
        Assert.All(lines, line => Assert.True(TextMeasure.Width(line, 3e-3) <= 0.06));
        Assert.True(lines.Count > 2);
    }

    [Fact]
    public void A_number_and_its_unit_stay_on_one_line()
    {
        double room = TextMeasure.Width("about 12.3", 1) + 0.2;
        Assert.Equal(["about", "12.3\u00a0mm"], TextMeasure.Lines("about 12.3\u00a0mm", room, 1));
        Assert.Equal(["about", "12.3 mm"], TextMeasure.Lines("about 12.3 mm", room, 1));
        // A longer word is no unit.
        Assert.Equal(["about 12.3", "quarters"], TextMeasure.Lines("about 12.3 quarters", room, 1));
    }

    [Fact]
    public void A_number_and_its_unit_part_when_no_line_holds_both()
    {
        double room = TextMeasure.Width("12345.6", 1) + 0.2;
        Assert.Equal(["12345.6", "lbf·in"], TextMeasure.Lines("12345.6 lbf·in", room, 1));
        Assert.Equal(["12345.6", "mm"], TextMeasure.Lines("12345.6 mm", room, 1));
    }

    [Fact]
    public void A_word_longer_than_its_line_is_broken_without_loss()
    {
        string word = "making/plates/" + new string('w', 60) + "-fairway_upright.json";
        IReadOnlyList<string> lines = TextMeasure.Lines($"See {word}", 0.04, 3e-3);
        Assert.Equal("See" + word, string.Concat(lines));
        Assert.All(lines, line => Assert.True(TextMeasure.Width(line, 3e-3) <= 0.04));
        Assert.Contains(lines, line => line.EndsWith('/'));
    }

    [Fact]
    public void Signs_that_the_type_lacks_become_question_marks()
    {
        Assert.Equal("Finne ?? ? é", InterFont.Printable("Finne 海鳍 🏄‍♂️ é"));
        Assert.Equal("a b c", InterFont.Printable("a\u00a0b\tc"));
        Assert.False(InterFont.Regular.Covers(new Rune('海')));
    }

    // Everything that papers say is covered: figures, units, Greek, quotes, and the letters of both languages.
    [Fact]
    public void The_type_covers_what_papers_say()
    {
        const string signs = "ABCXYZabcxyz0123456789ÄÖÜäöüßéèñøåçÆœ .,:;!?'\"()[]/\\+-*=<>%&@#°²³½±·–—−×→≤≥≈∞√µμΔαβρνσφ′″…“”„‚‘’€£$●";
        Assert.All(signs.EnumerateRunes(), rune => Assert.True(InterFont.Regular.Covers(rune) && InterFont.Bold.Covers(rune), $"{rune} is missing."));
    }

    [Fact]
    public void A_fitted_text_is_as_long_as_its_room_allows()
    {
        string fitted = TextMeasure.Fitted("Mudflat  21 for shallow water", 10, 1);
        Assert.True(TextMeasure.Width(fitted, 1) <= 10);
        Assert.StartsWith("Mudflat  21", fitted, StringComparison.Ordinal);
        Assert.Equal(1, fitted.Count(letter => letter == '…'));
        Assert.Equal("Mudflat", TextMeasure.Fitted("Mudflat", 10, 1));
    }
}
