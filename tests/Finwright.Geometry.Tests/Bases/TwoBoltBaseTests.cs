using Finwright.Geometry.Bases;
using Finwright.Geometry.Features;

namespace Finwright.Geometry.Tests.Bases;

public sealed class TwoBoltBaseTests
{
    private const double Degree = Math.PI / 180;

    private static readonly BasePlan Standard = TwoBoltBase.Standard(TwoBoltBase.HullLength / 2, MetricThread.M6);

    [Fact]
    public void Standard_has_the_drawing_s_outside()
    {
        // Common practice, no source: two descriptions of the original drawing. 155.85 to 155.96, 15.75 to 15.85, 50.8, 31.75 mm.
        Assert.InRange(Standard.HullLength, 155.85e-3, 155.96e-3);
        Assert.InRange(Standard.HullWidth, 15.75e-3, 15.85e-3);
        Assert.Equal(Standard.HullWidth, Standard.DeepWidth);
        Assert.Equal(50.8e-3, -Standard.FrontTop.Y, 9);
        Assert.Equal(31.75e-3, -Standard.RearTop.Y, 9);
        Assert.Equal(0, Standard.FrontX, 12);
    }

    [Fact]
    public void Standard_top_edge_is_142_6_mm_long_and_slopes_7_68_degrees()
    {
        // Arithmetic from the drawing's numbers, printed to 0.1 mm and 0.01 degree.
        Point2 edge = Standard.RearTop - Standard.FrontTop;
        Assert.Equal(142.6e-3, edge.Length, 0.05e-3);
        Assert.Equal(7.68 * Degree, Math.Atan2(edge.Y, edge.X), 0.005 * Degree);
    }

    [Fact]
    public void Standard_front_corner_is_92_3_degrees()
    {
        // Arithmetic from the drawing's numbers; quoted as 93 (common practice, no source).
        Point2 down = new Point2(Standard.FrontX, 0) - Standard.FrontTop, aft = Standard.RearTop - Standard.FrontTop;
        Assert.Equal(92.3 * Degree, Math.Acos(down.Dot(aft) / down.Length / aft.Length), 0.05 * Degree);
    }

    [Fact]
    public void Standard_bolts_meet_the_hull_21_0_and_127_1_mm_behind_the_front_corner()
    {
        // Arithmetic from the drawing's numbers, printed to 0.1 mm.
        Assert.Equal(21.0e-3, Standard.Bolts[0].AtHull.X, 0.05e-3);
        Assert.Equal(127.1e-3, Standard.Bolts[1].AtHull.X, 0.05e-3);
    }

    [Fact]
    public void Standard_bolts_stand_square_to_the_top_edge_105_1_mm_apart_on_it_and_lean_aft_going_up()
    {
        Point2 edge = Standard.RearTop - Standard.FrontTop;
        Point3[] holes = [.. Standard.Bolts.Select(b => Standard.OnTopEdge(b.AtHull, b.Up))];
        foreach (BoltAxis bolt in Standard.Bolts)
        {
            Assert.Equal(0, new Point2(bolt.Up.X, bolt.Up.Y).Dot(edge), 12);
            Assert.True(bolt.Up is { X: > 0, Y: < 0 });
        }

        // 105.03 to 105.16 mm (common practice, no source); 18.77 mm from hole to corner at each end is arithmetic.
        Assert.InRange((holes[1] - holes[0]).Length, 105.03e-3, 105.16e-3);
        Assert.Equal(18.77e-3, FromCorner(holes[0], Standard.FrontTop), 0.03e-3);
        Assert.Equal(18.77e-3, FromCorner(holes[1], Standard.RearTop), 0.03e-3);
    }

    // Arithmetic: the standard top edge pushed up along the bolts. Shift, front depth, rear depth, top edge, rear hole to corner; mm,
    // each printed to its last digit.
    [Theory]
    [InlineData(18.0, 68.5, 50.4, 136.2, 13.03)]
    [InlineData(19.05, 69.6, 51.4, 135.8, 12.70)]
    [InlineData(19.75, 70.3, 52.2, 135.5, 12.47)]
    public void Deep_follows_the_table_of_shifts(double shiftMm, double frontMm, double rearMm, double edgeMm, double holeMm)
    {
        Point2 edge = Standard.RearTop - Standard.FrontTop;
        double slope = Math.Atan2(edge.Y, edge.X);
        double frontDepth = TwoBoltBase.StandardFrontDepth + shiftMm * 1e-3 * Math.Cos(TwoBoltBase.EndAngle) / Math.Cos(TwoBoltBase.EndAngle - slope);
        Assert.Equal(frontMm * 1e-3, frontDepth, 0.06e-3);

        BasePlan deep = TwoBoltBase.Deep(TwoBoltBase.HullLength / 2, MetricThread.M6, frontDepth);

        Assert.Equal(rearMm * 1e-3, deep.RearDepth, 0.06e-3);
        Assert.Equal(edgeMm * 1e-3, (deep.RearTop - deep.FrontTop).Length, 0.06e-3);
        Point3 rearHole = deep.OnTopEdge(deep.Bolts[1].AtHull, deep.Bolts[1].Up);
        Assert.Equal(holeMm * 1e-3, FromCorner(rearHole, deep.RearTop), 0.03e-3);
        Assert.Equal(Standard.Bolts, deep.Bolts);
        Point2 deepEdge = deep.RearTop - deep.FrontTop;
        Assert.Equal(0, deepEdge.Cross(edge), 15);
        Point3 standardHole = Standard.OnTopEdge(Standard.Bolts[1].AtHull, Standard.Bolts[1].Up);
        Assert.Equal(shiftMm * 1e-3, (rearHole - standardHole).Length, 1e-9);
    }

    [Fact]
    public void Ring_turns_counter_clockwise_and_rounds_both_top_corners_by_their_radius()
    {
        IReadOnlyList<Point2> ring = Standard.Ring();
        double twice = 0;
        for (int i = 0; i < ring.Count; i++)
            twice += ring[i].Cross(ring[(i + 1) % ring.Count]);
        // A corner of inner angle a loses r² (cot(a/2) - (π - a)/2) when it is rounded.
        Point2[] sharp = [new(Standard.FrontX, 0), Standard.FrontTop, Standard.RearTop, new(Standard.RearX, 0)];
        double whole = 0, lost = 0, r = TwoBoltBase.CornerRadius;
        for (int i = 0; i < 4; i++)
            whole += sharp[i].Cross(sharp[(i + 1) % 4]) / 2;
        for (int i = 1; i < 3; i++)
        {
            Point2 back = sharp[i - 1] - sharp[i], ahead = sharp[i + 1] - sharp[i];
            double inner = Math.Acos(back.Dot(ahead) / back.Length / ahead.Length);
            lost += r * r * (1 / Math.Tan(inner / 2) - (Math.PI - inner) / 2);
        }

        Assert.Equal(whole - lost, twice / 2, 1e-7);
        Assert.True(whole - twice / 2 > 0.9 * lost);
    }

    private static double FromCorner(Point3 hole, Point2 corner) => (new Point2(hole.X, hole.Y) - corner).Length;

    /// <summary>A bolt's axis ends on the top edge, to rounding: that end must count as inside for every base, whatever the last bit.</summary>
    [Fact]
    public void Holds_every_point_of_the_top_edge()
    {
        for (int depth = 20; depth < 80; depth++)
        {
            BasePlan plan = Standard with { FrontDepth = depth * 1e-3, RearDepth = depth * 0.9e-3 };
            for (int i = 1; i < 20; i++)
            {
                Point3 below = new(plan.FrontTop.X + i / 20.0 * (plan.RearTop.X - plan.FrontTop.X), 0, 0);
                Point3 end = plan.OnTopEdge(below, new(0, 1, 0));
                Assert.True(plan.Holds(end), $"{depth} mm, {i}");
                Assert.False(plan.Holds(end with { Y = end.Y - 1e-6 }), $"{depth} mm, {i}");
            }
        }
    }
}
