using Finwright.Assessment.Figures;
using OxyPlot;

namespace Finwright.Assessment.Tests.Figures;

public sealed class RingThinningTests
{
    [Fact]
    public void Of_a_square_with_points_along_its_sides_keeps_the_corners()
    {
        DataPoint[] ring = [.. Enumerable.Range(0, 40).Select(i => (i / 10) switch { 0 => new DataPoint(i, 0), 1 => new(10, i - 10), 2 => new(30 - i, 10), _ => new(0, 40 - i) })];
        Assert.Equal([new(0, 0), new(10, 0), new(10, 10), new(0, 10)], RingThinning.Of(ring, 0.1));
    }

    [Fact]
    public void Of_a_circle_leaves_no_point_farther_off_than_the_limit()
    {
        DataPoint[] ring = [.. Enumerable.Range(0, 2000).Select(i => new DataPoint(100 * Math.Cos(i * Math.PI / 1000), 100 * Math.Sin(i * Math.PI / 1000)))];
        IReadOnlyList<DataPoint> thin = RingThinning.Of(ring, 0.12);
        // A chord with an arrow of 0.12 on a radius of 100 spans 2 acos(1 − 0.0012): at least 64 sides; the way may leave up to twice as many, and a few.
        Assert.InRange(thin.Count, 64, 140);
        for (int i = 0; i < thin.Count; i++)
        {
            (DataPoint a, DataPoint b) = (thin[i], thin[(i + 1) % thin.Count]);
            double middle = Math.Sqrt((a.X + b.X) * (a.X + b.X) + (a.Y + b.Y) * (a.Y + b.Y)) / 2;
            Assert.InRange(100 - middle, 0, 0.12 + 1e-9);
        }
    }
}
