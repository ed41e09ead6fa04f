using Finwright.Geometry.Parts;

namespace Finwright.Geometry.Tests.Parts;

public sealed class TextPlacerTests
{
    private const double Pen = 0.45e-3;

    [Fact]
    public void Find_on_an_open_face_takes_the_greatest_height_in_the_middle()
    {
        TextPlace place = TextPlacer.Find([Box(0, 0, 0.1, 0.02)], "A7", Pen, 1e-3, 8e-3)!.Value;
        Assert.Equal(8e-3, place.Height);
        Assert.Equal(0.05, place.Centre.X, 9);
        Assert.Equal(0.01, place.Centre.Y, 9);
    }

    [Fact]
    public void Find_beside_a_hole_keeps_the_margin_to_it()
    {
        // Hole in the middle, clockwise.
        Point2[] hole = [.. Box(0.045, 0.005, 0.055, 0.015).Reverse()];
        TextPlace place = TextPlacer.Find([Box(0, 0, 0.1, 0.02), hole], "A7", Pen, 1e-3, 8e-3)!.Value;
        double half = StrokeText.Width("A7", place.Height, Pen) / 2;
        Assert.True(place.Centre.X + half <= 0.044 + 1e-9 || place.Centre.X - half >= 0.056 - 1e-9);
    }

    [Fact]
    public void Find_narrow_face_makes_the_letters_smaller()
    {
        TextPlace place = TextPlacer.Find([Box(0, 0, 0.1, 0.007)], "FIN-12", Pen, 1e-3, 8e-3)!.Value;
        Assert.InRange(place.Height, 0.9 * 0.005, 0.005 + 1e-9);
    }

    [Fact]
    public void Find_face_too_narrow_for_legible_letters_has_no_place() =>
        Assert.Null(TextPlacer.Find([Box(0, 0, 0.1, 0.005)], "FIN-12", Pen, 1e-3, 8e-3));

    [Fact]
    public void Find_empty_face_has_no_place() => Assert.Null(TextPlacer.Find([], "A", Pen, 1e-3, 8e-3));

    private static Point2[] Box(double left, double low, double right, double high) => [new(left, low), new(right, low), new(right, high), new(left, high)];
}
