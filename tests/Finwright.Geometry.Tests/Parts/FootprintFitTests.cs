using CsCheck;
using Finwright.Geometry.Parts;

namespace Finwright.Geometry.Tests.Parts;

public sealed class FootprintFitTests
{
    [Fact]
    public void Find_shape_that_fits_as_it_is_is_not_turned()
    {
        FootprintFit fit = FootprintFit.Find(Rectangle(0.2, 0.1), 0.2, 0.1);
        Assert.True(fit.Fits);
        Assert.Equal(0, fit.Angle);
    }

    [Fact]
    public void Find_long_shape_on_a_deep_bed_gets_a_quarter_turn()
    {
        FootprintFit fit = FootprintFit.Find(Rectangle(0.3, 0.05), 0.1, 0.31);
        Assert.True(fit.Fits);
        Assert.Equal(Math.PI / 2, fit.Angle);
        Assert.Equal(0.05, fit.SizeX, 15);
        Assert.Equal(0.3, fit.SizeY, 15);
    }

    [Fact]
    public void Find_stick_longer_than_the_bed_lies_across_the_diagonal()
    {
        // A line of no width on a unit square lies best on the diagonal: its size is L/√2 both ways.
        FootprintFit fit = FootprintFit.Find([new(0, 0), new(1.4, 0)], 1, 1);
        Assert.True(fit.Fits);
        Assert.Equal(1.4 / Math.Sqrt(2), fit.SizeX, 12);
        Assert.Equal(1.4 / Math.Sqrt(2), fit.SizeY, 12);
    }

    [Theory]
    // A rectangle p by q fits a square of side a < p at 45 degrees when p + q <= a√2 (Wetzel, 2000, "Rectangles in rectangles", Mathematics Magazine 73, from memory).
    [InlineData(1.2, 0.21, true)]
    [InlineData(1.2, 0.22, false)]
    public void Find_rectangle_in_a_unit_square_follows_the_diagonal_rule(double length, double width, bool fits) =>
        Assert.Equal(fits, FootprintFit.Find(Rectangle(length, width), 1, 1).Fits);

    [Fact]
    public void Find_is_never_worse_than_a_dense_search_over_angles() =>
        (from points in Gen.Select(Gen.Double[-1, 1], Gen.Double[-0.4, 0.4]).Array[1, 12]
         from roomX in Gen.Double[0.2, 2]
         from roomY in Gen.Double[0.2, 2]
         select (points, roomX, roomY)).Hold(
            c =>
            {
                Point2[] points = [.. c.points.Select(p => new Point2(p.Item1, p.Item2))];
                FootprintFit fit = FootprintFit.Find(points, c.roomX, c.roomY);
                double dense = Enumerable.Range(0, 2000).Min(i => Fill(points, Math.PI * i / 2000, c.roomX, c.roomY));
                Assert.True(fit.Fits || fit.Fill <= dense + 1e-12, $"{fit.Fill} against {dense}");
                Assert.Equal(Fill(points, fit.Angle, c.roomX, c.roomY), fit.Fill, 12);
            },
            iter: 400);

    [Fact]
    public void Find_no_point_at_all_is_refused() => Assert.Throws<ArgumentException>(() => FootprintFit.Find([], 1, 1));

    private static double Fill(Point2[] points, double angle, double roomX, double roomY)
    {
        Point2[] turned = [.. points.Select(p => new Point2(p.X * Math.Cos(angle) - p.Y * Math.Sin(angle), p.X * Math.Sin(angle) + p.Y * Math.Cos(angle)))];
        return Math.Max((turned.Max(p => p.X) - turned.Min(p => p.X)) / roomX, (turned.Max(p => p.Y) - turned.Min(p => p.Y)) / roomY);
    }

    private static Point2[] Rectangle(double x, double y) => [new(0, 0), new(x, 0), new(x, y), new(0, y)];
}
