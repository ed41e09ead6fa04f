using Finwright.Geometry.Parts;

namespace Finwright.Geometry.Tests.Parts;

public sealed class StrokeTextTests
{
    private const double Pen = 0.45e-3;

    [Fact]
    public void Font_has_every_character_a_part_number_may_use()
    {
        foreach (char c in "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-. ")
            Assert.True(StrokeFont.TryGet(c, out _), $"no letter for '{c}'");
        Assert.False(StrokeFont.TryGet('a', out _));
    }

    [Fact]
    public void Font_letters_keep_to_their_box_and_no_two_are_drawn_alike()
    {
        List<string> drawings = [];
        foreach (char c in StrokeFont.Characters)
        {
            Assert.True(StrokeFont.TryGet(c, out StrokeGlyph? glyph));
            Assert.All(glyph.Strokes.SelectMany(s => s), p => Assert.True(p.X >= 0 && p.X <= glyph.Width && p.Y >= 0 && p.Y <= StrokeFont.CapHeight));
            drawings.Add(string.Join('|', glyph.Strokes.Select(s => string.Join(' ', s))));
        }

        Assert.Equal(drawings.Count, drawings.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Outline_box_is_centred_and_as_wide_and_high_as_stated()
    {
        const double height = 5e-3;
        Point2[] all = [.. StrokeText.Outline("EH-8", height, Pen).SelectMany(r => r)];
        double width = StrokeText.Width("EH-8", height, Pen);
        // Round pen ends are drawn with 4 segments a quarter: exact on the axes.
        Assert.Equal(width / 2, all.Max(p => p.X), 9);
        Assert.Equal(-width / 2, all.Min(p => p.X), 9);
        Assert.Equal(height / 2, all.Max(p => p.Y), 9);
        Assert.Equal(-height / 2, all.Min(p => p.Y), 9);
    }

    [Fact]
    public void Outline_of_one_upright_stroke_has_the_area_of_a_round_ended_bar()
    {
        // "I" less its feet cannot be had; a dash is a plain bar of 3 units with round ends: length × pen + π pen² / 4.
        const double height = 6.45e-3; // one unit = 1 mm
        IReadOnlyList<IReadOnlyList<Point2>> dash = StrokeText.Outline("-", height, Pen);
        double area = Assert.Single(dash).Zip([.. dash[0].Skip(1), dash[0][0]]).Sum(e => e.First.Cross(e.Second)) / 2;
        double expected = 3e-3 * Pen + Math.PI * Pen * Pen / 4;
        // The 16-sided round end is up to 2.6 % of the end's own area short.
        Assert.InRange(area, expected - 0.026 * Math.PI * Pen * Pen / 4, expected);
    }

    [Fact]
    public void Outline_gives_holes_the_other_way_round()
    {
        IReadOnlyList<IReadOnlyList<Point2>> letter = StrokeText.Outline("D", 5e-3, Pen);
        double[] areas = [.. letter.Select(r => r.Zip([.. r.Skip(1), r[0]]).Sum(e => e.First.Cross(e.Second)) / 2)];
        Assert.Equal(2, areas.Length);
        Assert.True(areas[0] > 0 && areas[1] < 0);
    }

    [Fact]
    public void Outline_at_the_least_height_keeps_a_pen_width_between_the_bars_of_an_E()
    {
        double height = StrokeText.LeastHeightInPens * Pen;
        double unit = (height - Pen) / StrokeFont.CapHeight;
        Assert.True(3 * unit - Pen >= Pen);
        Assert.Single(StrokeText.Outline("E", height, Pen));
    }

    [Fact]
    public void Outline_unknown_character_is_refused() => Assert.Throws<ArgumentException>(() => StrokeText.Outline("é", 5e-3, Pen));
}
