using Finwright.Geometry;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace Finwright.Papers.Tests.Pages;

public sealed class FigureContextTests
{
    // Drawn in the width of the column: 186 mm of 760 points.
    private const double HeightMm = 186.0 * 380 / 760;

    private static readonly byte[] File = Press.Flow(flow => flow.Figure(PlotSample.Figure(), 0.15, ""));

    [Fact]
    public void Words_of_a_plot_stand_within_its_room()
    {
        (Point2 from, Point2 to) = Press.Room(Press.Settings);
        using PdfDocument read = PdfDocument.Open(File);
        Letter[] letters = [.. read.GetPage(1).Letters.Where(letter => letter.StartBaseLine.Y * Press.PointMm is > 25 and < 276)];
        string text = string.Concat(letters.Select(letter => letter.Value));
        Assert.Contains("Side force over leeway", text, StringComparison.Ordinal);
        Assert.Contains("Leeway α, °", text, StringComparison.Ordinal);
        Assert.Contains("Side force, N", text, StringComparison.Ordinal);
        Assert.All(letters, letter =>
        {
            Assert.InRange(letter.BoundingBox.Left * Press.PointMm, 1e3 * from.X, 1e3 * to.X);
            Assert.InRange(letter.BoundingBox.Right * Press.PointMm, 1e3 * from.X, 1e3 * to.X);
            Assert.InRange(letter.BoundingBox.Bottom * Press.PointMm, 297 - 1e3 * from.Y - HeightMm, 297 - 1e3 * from.Y);
        });
    }

    [Fact]
    public void The_title_of_the_upright_axis_runs_upward()
    {
        using PdfDocument read = PdfDocument.Open(File);
        Letter[] turned = [.. read.GetPage(1).Letters.Where(letter => letter.TextOrientation != TextOrientation.Horizontal)];
        Assert.Equal("Side force, N", string.Concat(turned.Select(letter => letter.Value)));
        Assert.True(turned[^1].StartBaseLine.Y > turned[0].StartBaseLine.Y);
    }

    [Fact]
    public void What_has_the_colour_of_the_sheet_is_white_on_paper()
    {
        PdfPath area = Assert.Single(Press.Paths(File), path => path.IsFilled);
        Assert.Equal((1.0, 1.0, 1.0), area.FillColor!.ToRGBValues());
    }

    [Fact]
    public void Lines_end_at_the_edge_of_the_plot_and_dashes_stay_dashes()
    {
        using PdfDocument read = PdfDocument.Open(File, new ParsingOptions { ClipPaths = true });
        PdfPath line = Assert.Single(read.GetPage(1).Paths, path => path.IsStroked && path.StrokeColor?.ToRGBValues() == (1.0, 0.0, 0.0));
        PdfRectangle beyond = line.GetBoundingRectangle()!.Value;
        // Its end lies ten times as high as the axis reaches.
        Assert.InRange(beyond.Top * Press.PointMm, 297 - 20.5 - 0.3 * HeightMm, 297 - 20.4);
        Assert.InRange(beyond.Height * Press.PointMm, 0.5 * HeightMm, HeightMm);
        Assert.NotEmpty(line.LineDashPattern!.Value.Array);
    }

    [Theory]
    [InlineData(0.15, 186.0)]
    [InlineData(0.05, 100.0)]
    public void A_figure_keeps_its_proportions_within_the_height_it_may_have(double height, double width)
    {
        // 760 x 380 points: half as high as wide. Notes stand in the middle.
        using PdfDocument read = PdfDocument.Open(Press.Flow(flow => flow.Figure(PlotSample.Figure(), height, "")));
        Letter[] letters = [.. read.GetPage(1).Letters.Where(letter => letter.StartBaseLine.Y * Press.PointMm is > 25 and < 276)];
        Letter[] note = [.. letters.Where(letter => letter.TextOrientation == TextOrientation.Horizontal && Math.Abs(letter.PointSize - 12 * width / (760 * Press.PointMm)) < 0.05)];
        Assert.Contains("measured in a tank", string.Concat(note.Select(letter => letter.Value)), StringComparison.Ordinal);
        Assert.Equal(105, (note[0].StartBaseLine.X + note[^1].EndBaseLine.X) / 2 * Press.PointMm, 0.5);
        Assert.All(letters, letter => Assert.InRange(letter.BoundingBox.Bottom * Press.PointMm, 297 - 20.5 - width / 2, 297 - 20.4));
    }
}
