using Finwright.Papers.Drawings;
using Finwright.Papers.Views;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Views;

public sealed class CoverTests
{
    private static readonly Tongue Tongue = new(DrawnFins.Settings);

    public static TheoryData<string> Demos => DrawnFins.Demos;

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_fin_fits_its_room_in_a_round_scale_and_no_larger_one_does(string demo)
    {
        Drawing cover = FinViews.Cover(DrawnFins.Of(demo), Tongue, 0.158, 0.13);
        Assert.InRange(cover.Bounds.Width, 0.05, 0.158);
        Assert.InRange(cover.Bounds.Height, 0.05, 0.13);
        Assert.Equal(0, cover.Bounds.From.Length, 1e-12);
        double scale = Scale(cover);
        Assert.Contains(1 / scale, new[] { 1, 2, 2.5, 3, 4, 5 });
        Drawing roomier = FinViews.Cover(DrawnFins.Of(demo), Tongue, 1, 1);
        Assert.Equal(1, Scale(roomier), 1e-12);
        // What is beside the fin keeps its size on paper, so a drawing shrinks by less than its scale.
        Assert.True(cover.Bounds.Height >= roomier.Bounds.Height * scale);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Span_and_root_chord_are_drawn_as_long_as_they_are_told(string demo)
    {
        Drawing cover = FinViews.Cover(DrawnFins.Of(demo), Tongue, 0.158, 0.13);
        double scale = Scale(cover), span = 1e3 * DrawnFins.Of(demo).Blade!.Span, chord = 1e3 * DrawnFins.Of(demo).Blade!.Outline.Chord(0);
        IReadOnlyList<(double Told, double OnPaper, string Text)> lengths = DimensionReading.Lengths(cover);
        Assert.Equal(2, lengths.Count);
        Assert.Equal([span, chord], lengths.Select(length => length.OnPaper / scale), (a, b) => Math.Abs(a - b) < 1e-6);
        Assert.Equal([span, chord], lengths.Select(length => length.Told), (a, b) => Math.Abs(a - b) < 0.05 + 1e-9);
    }

    [Fact]
    public void Words_touch_nothing()
    {
        Drawing cover = FinViews.Cover(DrawnFins.Of("eelgrass-rake"), Tongue, 0.158, 0.13);
        Assert.Empty(cover.Items.OfType<DrawnText>().Where(text => !FreeRoom.IsClear(cover, text, 0)).Select(text => text.Text));
    }

    [Fact]
    public void A_room_too_small_for_any_scale_is_refused() =>
        Assert.Throws<ArgumentException>(() => FinViews.Cover(DrawnFins.Of("eelgrass-rake"), Tongue, 0.01, 0.01));

    private static double Scale(Drawing cover)
    {
        string text = cover.Items.OfType<DrawnText>().Select(item => item.Text).Single(words => words.StartsWith("1:", StringComparison.Ordinal));
        return 1 / double.Parse(text[2..], System.Globalization.CultureInfo.InvariantCulture);
    }
}
