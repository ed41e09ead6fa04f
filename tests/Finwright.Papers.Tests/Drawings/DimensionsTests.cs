using Finwright.Geometry;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Drawings;

public sealed class DimensionsTests
{
    private static readonly Tongue Metric = new(new PaperSettings { Date = new(2026, 11, 27), ProgramVersion = "1" });

    [Fact]
    public void Across_and_down_tell_the_distance_along_their_own_direction_only()
    {
        Drawing drawing = new();
        Dimensions dimensions = new(drawing, Metric);
        dimensions.Across(new(0.01, 0.02), new(0.1323, 0.05), 0);
        dimensions.Down(new(0.01, 0.02), new(0.1323, 0.05), 0.2);
        dimensions.Along(new(0, 0), new(0.03, 0.04), 0.01);
        Assert.Equal(["122.3", "30.0", "50.0"], Texts(drawing));
    }

    [Fact]
    public void The_line_runs_from_end_to_end_at_the_place_asked_for()
    {
        Drawing drawing = new();
        new Dimensions(drawing, Metric).Across(new(0.01, 0.02), new(0.11, 0.05), -0.01);
        Assert.Contains(drawing.Items.OfType<DrawnStroke>(), stroke => stroke.Points.SequenceEqual([new(0.01, -0.01), new(0.11, -0.01)]));
        // Two arrow heads, their tips at the ends, pointing outward.
        DrawnArea[] arrows = [.. drawing.Items.OfType<DrawnArea>()];
        Assert.Equal([new Point2(0.01, -0.01), new Point2(0.11, -0.01)], arrows.Select(arrow => arrow.Rings[0][0]));
        Assert.True(arrows[0].Rings[0][1].X > 0.01);
        Assert.True(arrows[1].Rings[0][1].X < 0.11);
    }

    [Fact]
    public void A_length_too_short_for_its_arrows_gets_them_from_outside_and_its_number_beside()
    {
        Drawing drawing = new();
        new Dimensions(drawing, Metric).Across(new(0, 0), new(2e-3, 0), -0.01);
        DrawnArea[] arrows = [.. drawing.Items.OfType<DrawnArea>()];
        Assert.True(arrows[0].Rings[0][1].X < 0);
        Assert.True(arrows[1].Rings[0][1].X > 2e-3);
        Assert.True(Assert.Single(drawing.Items.OfType<DrawnText>()).At.X > 2e-3);
    }

    [Theory]
    [InlineData(0.1, 0, 0)]
    [InlineData(-0.1, 0, 0)]
    [InlineData(0, 0.1, 90)]
    [InlineData(0, -0.1, 90)]
    [InlineData(0.1, -0.1, 45)]
    [InlineData(-0.1, 0.1, 45)]
    [InlineData(0.1, 0.1, -45)]
    public void Numbers_read_from_below_or_from_the_right_and_stand_off_the_line(double x, double y, double degrees)
    {
        Drawing drawing = new();
        new Dimensions(drawing, Metric).Along(new(0, 0), new(x, y), 0);
        DrawnText text = Assert.Single(drawing.Items.OfType<DrawnText>());
        Assert.Equal(degrees, double.RadiansToDegrees(text.Look.UpwardTurn), 1e-9);
        Assert.True(FreeRoom.IsClear(drawing, text, 0));
    }

    [Fact]
    public void An_angle_tells_degrees_and_its_number_is_clear_of_its_lines()
    {
        foreach (double degrees in (double[])[4, 10, 30, 75, 120])
        {
            Drawing drawing = new();
            new Dimensions(drawing, Metric).Angle(new(0.1, 0.1), 0, double.DegreesToRadians(degrees), 0.02);
            DrawnText text = Assert.Single(drawing.Items.OfType<DrawnText>());
            Assert.Equal(Metric.Angle(double.DegreesToRadians(degrees)), text.Text);
            Assert.True(FreeRoom.IsClear(drawing, text, 0), $"{degrees}");
            // Up on the paper for a turn counter-clockwise.
            Assert.True(text.At.Y < 0.1 + 2e-3);
        }
    }

    [Fact]
    public void A_radius_and_a_leader_say_their_words_away_from_the_place()
    {
        Drawing drawing = new();
        Dimensions dimensions = new(drawing, Metric);
        dimensions.Radius(new(0, 0), 6.4e-3, Math.PI / 4, 8e-3);
        dimensions.Leader(new(0, 0.1), new(-0.02, 0.1), "front");
        DrawnText[] texts = [.. drawing.Items.OfType<DrawnText>()];
        Assert.Equal(["R 6.4", "front"], texts.Select(text => text.Text), StringComparer.Ordinal);
        Assert.Equal([TextAnchor.Start, TextAnchor.End], texts.Select(text => text.Look.Anchor));
        Assert.True(texts[0].At.X > 0.01 && texts[0].At.Y < 0);
        Assert.All(texts, text => Assert.True(FreeRoom.IsClear(drawing, text, 0)));
    }

    [Fact]
    public void The_check_line_is_100_mm_long()
    {
        Drawing drawing = new();
        Marks.CheckLine(drawing, Metric, new(0.01, 0.02));
        DrawnBox box = DrawnBox.Round(drawing.Items.OfType<DrawnStroke>().Where(stroke => stroke.Layer == "check-100-mm").SelectMany(stroke => stroke.Points));
        Assert.Equal(0.1, box.Width, 1e-12);
        Assert.All(drawing.Items.OfType<DrawnText>(), text => Assert.True(FreeRoom.IsClear(drawing, text, 0)));
    }

    private static string[] Texts(Drawing drawing) => [.. drawing.Items.OfType<DrawnText>().Select(text => text.Text)];
}
