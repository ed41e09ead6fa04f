using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Tests.Drawings;

public sealed class DrawingTests
{
    private static readonly Pen Line = new(Palette.Line, 0.3e-3);
    private static readonly TextLook Look = new(3e-3, Palette.Line);

    [Fact]
    public void Add_refuses_what_no_file_could_show()
    {
        Drawing drawing = new();
        Assert.Throws<ArgumentException>(() => drawing.Add(new DrawnStroke("a", Line, [new(0, 0)], Closed: false)));
        Assert.Throws<ArgumentException>(() => drawing.Add(new DrawnStroke("a", Line, [new(0, 0), new(double.NaN, 0)], Closed: false)));
        Assert.Throws<ArgumentException>(() => drawing.Add(new DrawnStroke("A b", Line, [new(0, 0), new(1, 0)], Closed: false)));
        Assert.Throws<ArgumentException>(() => drawing.Add(new DrawnStroke("", Line, [new(0, 0), new(1, 0)], Closed: false)));
        Assert.Throws<ArgumentException>(() => drawing.Add(new DrawnStroke("a", Line with { Width = 0 }, [new(0, 0), new(1, 0)], Closed: false)));
        Assert.Throws<ArgumentException>(() => drawing.Add(new DrawnStroke("a", Line with { Dashes = [1e-3, 0] }, [new(0, 0), new(1, 0)], Closed: false)));
        Assert.Throws<ArgumentException>(() => drawing.Add(new DrawnArea("a", Palette.Line, [[new(0, 0), new(1, 0)]])));
        Assert.Throws<ArgumentException>(() => drawing.Add(new DrawnText("a", "x", new(0, double.PositiveInfinity), Look)));
        Assert.Throws<ArgumentException>(() => drawing.Add(new DrawnText("a", "x", new(0, 0), Look with { Size = -1 })));
        Assert.Empty(drawing.Items);
    }

    [Fact]
    public void Bounds_hold_lines_and_words_and_geometry_bounds_lines_alone()
    {
        Drawing drawing = new();
        Assert.Equal(default, drawing.Bounds);
        drawing.Add(new DrawnStroke("a", Line, [new(0.1, 0.2), new(0.3, 0.25)], Closed: false));
        drawing.Add(new DrawnText("notes", "leading edge", new(0.3, 0.2), Look));
        Assert.Equal(new DrawnBox(new(0.1, 0.2), new(0.3, 0.25)), drawing.GeometryBounds);
        Assert.Equal(0.1, drawing.Bounds.From.X);
        Assert.InRange(drawing.Bounds.To.X, 0.31, 0.33);
        Assert.InRange(drawing.Bounds.From.Y, 0.197, 0.199);
    }

    [Fact]
    public void Words_turned_a_quarter_reach_up_from_their_place()
    {
        Drawing drawing = new();
        drawing.Add(new DrawnText("notes", "leading edge", new(0.1, 0.2), Look with { UpwardTurn = Math.PI / 2 }));
        DrawnBox box = drawing.Bounds;
        Assert.Equal(0.2, box.To.Y, 1e-9);
        Assert.Equal(Extent.Length("leading edge", 3e-3), box.Height, 1e-9);
        // Their letters stand to the left of the base line.
        Assert.True(0.1 - box.From.X > box.To.X - 0.1);
    }

    [Fact]
    public void A_moved_drawing_keeps_its_size_and_the_first_stays_where_it_was()
    {
        Drawing drawing = new();
        drawing.Add(new DrawnStroke("b", Line, [new(0, 0), new(0.3, 0.25)], Closed: true));
        drawing.Add(new DrawnArea("a", Palette.Water, [[new(0, 0), new(0.1, 0), new(0, 0.1)]]));
        drawing.Add(new DrawnText("notes", "x", new(0, 0), Look));
        DrawnBox before = drawing.Bounds;
        Drawing moved = drawing.Moved(new(1, 2));
        Assert.Equal(before, drawing.Bounds);
        Assert.Equal(before.From + new Point2(1, 2), moved.Bounds.From);
        Assert.Equal(before.Width, moved.Bounds.Width, 1e-12);
        Assert.Equal(["b", "a", "notes"], moved.Layers, StringComparer.Ordinal);
    }

    [Fact]
    public void Wrapped_lines_fit_their_room_and_lose_no_word()
    {
        const string Words = "Lay the printed parts on it to check their outline, and carry depths and lines over to the blade.";
        IReadOnlyList<string> lines = Extent.Wrap(Words, 3e-3, 0.06);
        Assert.Equal(Words, string.Join(' ', lines));
        Assert.True(lines.Count > 1);
        Assert.All(lines, line => Assert.True(Extent.Length(line, 3e-3) <= 0.06));
    }
}
