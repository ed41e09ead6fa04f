using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Tests.Drawings;

public sealed class HatchingTests
{
    // A frame 40 x 30 mm round a hole of 20 x 10 mm.
    private static readonly IReadOnlyList<Point2>[] Frame =
    [
        [new(0, 0), new(0.04, 0), new(0.04, 0.03), new(0, 0.03)],
        [new(0.01, 0.01), new(0.03, 0.01), new(0.03, 0.02), new(0.01, 0.02)],
    ];

    [Theory]
    [InlineData(0)]
    [InlineData(45)]
    [InlineData(-30)]
    [InlineData(90)]
    public void Length_of_all_lines_times_their_distance_is_the_area(double degrees)
    {
        const double Spacing = 0.5e-3, Area = 0.04 * 0.03 - 0.02 * 0.01, Edge = 2 * (0.04 + 0.03 + 0.02 + 0.01);
        double hatched = Spacing * Hatching.Lines(Frame, double.DegreesToRadians(degrees), Spacing).Sum(line => (line.To - line.From).Length);
        // A line stands for half a distance to either side: at most that is wrong along the edges.
        Assert.Equal(Area, hatched, Edge * Spacing / 2);
        // Sampling at middles is far better than that on straight edges: a hundredth of the area.
        Assert.Equal(Area, hatched, Area / 100);
    }

    [Fact]
    public void Lines_end_on_the_edges_and_have_the_direction_asked_for()
    {
        foreach ((Point2 from, Point2 to) in Hatching.Lines(Frame, Math.PI / 4, 1e-3))
        {
            Assert.Equal(Math.PI / 4, Math.Atan2(from.Y - to.Y, to.X - from.X), 1e-9);
            Assert.All((Point2[])[from, to], p => Assert.True(OnEdge(p, 0, 0, 0.04, 0.03) || OnEdge(p, 0.01, 0.01, 0.03, 0.02), $"{p}"));
        }
    }

    [Fact]
    public void Areas_that_touch_are_hatched_on_the_same_lines()
    {
        IReadOnlyList<Point2>[] left = [[new(0, 0), new(0.02, 0), new(0.02, 0.03), new(0, 0.03)]], right = [[new(0.02, 0), new(0.04, 0), new(0.04, 0.03), new(0.02, 0.03)]];
        double[] ends = [.. Hatching.Lines(left, 0.3, 1e-3).Select(line => line.To).Where(p => p.X > 0.02 - 1e-9).Select(p => p.Y).Order()];
        double[] starts = [.. Hatching.Lines(right, 0.3, 1e-3).Select(line => line.From).Where(p => p.X < 0.02 + 1e-9).Select(p => p.Y).Order()];
        Assert.True(ends.Length > 20);
        Assert.Equal(ends.Length, starts.Length);
        Assert.All(ends.Zip(starts), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
    }

    [Fact]
    public void Nothing_has_no_lines_and_no_distance_is_refused()
    {
        Assert.Empty(Hatching.Lines([], 0, 1e-3));
        Assert.Throws<ArgumentOutOfRangeException>(() => Hatching.Lines(Frame, 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Hatching.Lines(Frame, 0, double.NaN));
    }

    private static bool OnEdge(Point2 p, double left, double top, double right, double bottom)
    {
        const double Hair = 1e-9;
        bool within = p.X > left - Hair && p.X < right + Hair && p.Y > top - Hair && p.Y < bottom + Hair;
        return within && (Math.Abs(p.X - left) < Hair || Math.Abs(p.X - right) < Hair || Math.Abs(p.Y - top) < Hair || Math.Abs(p.Y - bottom) < Hair);
    }
}
