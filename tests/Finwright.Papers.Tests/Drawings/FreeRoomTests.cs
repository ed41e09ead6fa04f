using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Tests.Drawings;

public sealed class FreeRoomTests
{
    private static readonly Pen Line = new(Palette.Line, 0.3e-3);
    private static readonly DrawnText Word = new("notes", "A", new(0, 0), new(3e-3, Palette.Line, TextAnchor.Middle));

    [Fact]
    public void Words_on_a_line_are_not_clear_and_words_inside_a_ring_are()
    {
        Drawing drawing = new();
        drawing.Add(new DrawnStroke("a", Line, Rounds.Circle(new(0, 0), 0.02), Closed: true));
        Assert.True(FreeRoom.IsClear(drawing, Word, 0));
        drawing.Add(new DrawnStroke("a", Line, [new(-0.05, -1e-3), new(0.05, -1e-3)], Closed: false));
        Assert.False(FreeRoom.IsClear(drawing, Word, 0));
    }

    [Fact]
    public void A_line_that_passes_beside_turned_words_leaves_them_clear()
    {
        Drawing drawing = new();
        drawing.Add(new DrawnStroke("a", Line, [new(-0.05, 4e-3), new(0.05, 4e-3)], Closed: false));
        DrawnText flat = Word with { Text = "leading edge" };
        Assert.True(FreeRoom.IsClear(drawing, flat, 0));
        // Turned, it reaches 10 mm up and down from its middle.
        Assert.False(FreeRoom.IsClear(drawing, flat with { Look = flat.Look with { UpwardTurn = Math.PI / 2 } }, 0));
    }

    [Fact]
    public void Put_goes_round_what_is_in_the_way()
    {
        Drawing drawing = new();
        drawing.Add(new DrawnStroke("a", Line, [new(-0.05, 0), new(0.05, 0)], Closed: false));
        drawing.Add(new DrawnStroke("a", Line, [new(0, -0.05), new(0, 0.05)], Closed: false));
        DrawnText first = FreeRoom.Put(drawing, Word, 3e-3), second = FreeRoom.Put(drawing, Word, 3e-3);
        Assert.Equal(2, drawing.Items.OfType<DrawnText>().Count());
        foreach (DrawnText put in (DrawnText[])[first, second])
        {
            Assert.True(FreeRoom.IsClear(drawing, put, 0));
            Assert.InRange(put.At.Length, 2e-3, 9e-3);
        }

        Assert.NotEqual(first.At, second.At);
    }

    [Fact]
    public void A_circle_has_the_radius_asked_for_everywhere()
    {
        IReadOnlyList<Point2> circle = Rounds.Circle(new(0.1, 0.2), 0.05);
        Assert.All(circle, p => Assert.Equal(0.05, (p - new Point2(0.1, 0.2)).Length, 1e-12));
        // The middle of each piece lies within 5 µm of the round.
        Assert.All(circle.Zip(circle.Skip(1)), pair => Assert.Equal(0.05, (0.5 * (pair.First + pair.Second) - new Point2(0.1, 0.2)).Length, 6e-6));
    }
}
