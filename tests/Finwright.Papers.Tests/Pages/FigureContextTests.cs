using Finwright.Geometry;
using Finwright.Papers.Pages;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace Finwright.Papers.Tests.Pages;

public sealed class FigureContextTests
{
    private const double HeightMm = 90;

    private static readonly byte[] File = Press.Flow(flow => flow.Figure(PlotSample.Figure(), 1e-3 * HeightMm, ""));

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
}
