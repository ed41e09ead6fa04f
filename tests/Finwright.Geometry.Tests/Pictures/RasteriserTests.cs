using BigGustave;
using Finwright.Geometry.Pictures;

namespace Finwright.Geometry.Tests.Pictures;

public sealed class RasteriserTests
{
    private static readonly View FromAbove = new(new(0, 0, -1), new(0, 1, 0));

    [Fact]
    public void A_box_from_above_fills_the_sheet_less_the_margin_with_a_line_round_it()
    {
        Picture picture = Rasteriser.Draw([SampleMeshes.Box(0.2, 0.1, 0.01)], FromAbove, 400, 200);
        Assert.Equal(Palette.Paper, picture[0, 0]);
        // Margin 6 % of each side: the box spans x 24 to 376.
        (int left, int right) = (FirstOther(picture, 100, 0, 1), FirstOther(picture, 100, 399, -1));
        Assert.InRange(left, 22, 24);
        Assert.InRange(right, 375, 377);
        // The line is ink, the face a light tone between paper and ink.
        Assert.True(Darkest(picture, left, left + 3, 100) > 120);
        Assert.InRange(Darkness(picture[200, 100]), 5, 120);
    }

    [Fact]
    public void What_lies_behind_is_not_seen()
    {
        TriangleMesh front = SampleMeshes.Box(0.1, 0.1, 0.01).Placed(Placement.Shift(new(0, 0, 0.1))), behind = SampleMeshes.Ball(0.04, new(0.05, 0.05, 0));
        Picture alone = Rasteriser.Draw([front], FromAbove, 100, 100);
        Assert.Equal(alone.ToPng(), Rasteriser.Draw([front, behind], FromAbove, 100, 100).ToPng());
        Assert.Equal(alone.ToPng(), Rasteriser.Draw([behind, front], FromAbove, 100, 100).ToPng());
    }

    [Fact]
    public void A_fold_is_drawn_and_a_smooth_skin_is_not_crossed_by_lines()
    {
        // Seen along its diagonal, a cube shows three edges that meet in the middle of the sheet.
        Picture cube = Rasteriser.Draw([SampleMeshes.Box(0.1, 0.1, 0.1)], new(new(-1, -1, -1), new(0, 0, 1)), 600, 600);
        Assert.True(Darkest(cube, 297, 303, 400) > 40 + Math.Max(Darkest(cube, 260, 290, 400), Darkest(cube, 310, 340, 400)));
        Picture ball = Rasteriser.Draw([SampleMeshes.Ball(0.1, default, 40)], FromAbove, 200, 200);
        for (int x = 30; x < 170; x++)
            Assert.True(Math.Abs(Darkness(ball[x, 100]) - Darkness(ball[x - 1, 100])) < 12, $"a line at {x}");
    }

    [Fact]
    public void Sections_are_as_many_as_the_planes_that_cut_the_shape()
    {
        SectionLines lines = new(new(1, 0, 0), 0.02);
        TriangleMesh ball = SampleMeshes.Ball(0.1, new(0.11, 0, 0), 60);
        Picture with = Rasteriser.Draw([ball], FromAbove, 300, 300, lines), without = Rasteriser.Draw([ball], FromAbove, 300, 300);
        // Planes at 20, 40 … 200 mm cut the ball from 10 to 210 mm.
        int count = 0;
        for (int x = 1; x < 300; x++)
            if (with[x, 150] != without[x, 150] && with[x - 1, 150] == without[x - 1, 150])
                count++;
        Assert.Equal(10, count);
    }

    [Fact]
    public void The_fin_hangs_with_its_nose_left_and_its_tip_down()
    {
        // A large ball at the root quarter chord and a small one aft and below it: most of what is drawn lies left and high.
        (double x, double y) = Centre(Rasteriser.Draw([SampleMeshes.Ball(0.03, default), SampleMeshes.Ball(0.01, new(0.1, 0.1, 0))], View.Fin, 200, 200));
        Assert.InRange(x, 20, 80);
        Assert.InRange(y, 20, 80);
    }

    [Fact]
    public void The_same_meshes_give_the_same_bytes_and_the_file_stays_small()
    {
        TriangleMesh blade = new PlainBlade().Mesh();
        byte[] png = Rasteriser.Draw([blade], View.Fin, 800, 600, new(new(0, 1, 0), 0.01)).ToPng();
        byte[] small = Rasteriser.Draw([blade], View.Fin, 160, 120).ToPng();
        Assert.Equal(small, Rasteriser.Draw([blade], View.Fin, 160, 120).ToPng());
        Assert.InRange(png.Length, 5_000, 200_000);
        Png read = Png.Open(png);
        Assert.Equal((800, 600), (read.Width, read.Height));
        Assert.Equal((Palette.Paper.Red, Palette.Paper.Green, Palette.Paper.Blue), (read.GetPixel(0, 0).R, read.GetPixel(0, 0).G, read.GetPixel(0, 0).B));
    }

    [Fact]
    public void Nothing_to_draw_or_a_useless_size_is_refused()
    {
        TriangleMesh box = SampleMeshes.Box(1, 1, 1);
        Assert.Throws<ArgumentException>(() => Rasteriser.Draw([], FromAbove, 100, 100));
        Assert.Throws<ArgumentException>(() => Rasteriser.Draw([new TriangleMesh([0, 0, 0, 0, 0, 0, 0, 0, 0], [0, 1, 2])], FromAbove, 100, 100));
        Assert.Throws<ArgumentOutOfRangeException>(() => Rasteriser.Draw([box], FromAbove, 100_000, 100));
        Assert.Throws<InvalidOperationException>(() => Rasteriser.Draw([box], new View(new(0, 0, 1), new(0, 0, 1)), 100, 100));
    }

    private static double Darkness(Ink ink) => 255 - (ink.Red + ink.Green + ink.Blue) / 3.0;

    private static double Darkest(Picture picture, int from, int to, int y) => Enumerable.Range(from, to - from).Max(x => Darkness(picture[x, y]));

    private static int FirstOther(Picture picture, int y, int from, int step)
    {
        int x = from;
        while (picture[x, y] == Palette.Paper)
            x += step;
        return x;
    }

    /// <summary>Middle of what stands out from the paper, in pixels from top left.</summary>
    private static (double X, double Y) Centre(Picture picture)
    {
        double sum = 0, sumX = 0, sumY = 0;
        for (int y = 0; y < picture.Height; y++)
            for (int x = 0; x < picture.Width; x++)
                if (picture[x, y] != Palette.Paper)
                    (sum, sumX, sumY) = (sum + 1, sumX + x, sumY + y);
        return (sumX / sum, sumY / sum);
    }
}
