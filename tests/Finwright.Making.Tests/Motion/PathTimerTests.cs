using Finwright.Making.Motion;

namespace Finwright.Making.Tests.Motion;

public sealed class PathTimerTests
{
    [Fact]
    public void Long_move_is_a_trapezoid_and_a_short_one_a_triangle()
    {
        // 0.1 m at 0.1 m/s, 1 m/s²: L/v + v/a. 1 mm cannot reach 0.1 m/s: 2 √(L/a).
        Assert.Equal(1.1, One(0.1, 0.1), 1e-12);
        Assert.Equal(2 * Math.Sqrt(1e-3), One(1e-3, 0.1), 1e-12);
    }

    [Fact]
    public void Straight_way_cut_into_pieces_takes_as_long_as_the_whole()
    {
        foreach (int pieces in new[] { 2, 100, 5000 })
        {
            PathTimer timer = new(1, 0.008);
            for (int i = 0; i < pieces; i++)
                timer.Move(1.0 / pieces, 0.2, 1, 0, 0, 1, 0, 0);
            timer.Stand(0);
            // L/v + v/a = 5.2 s; the look-ahead of 128 pieces covers the 20 mm it takes to stop (5000 pieces: 25.6 mm).
            Assert.Equal(5.2, timer.Seconds, 1e-9);
        }
    }

    [Fact]
    public void Right_angle_is_passed_at_the_corner_speed_over_the_root_of_two()
    {
        PathTimer timer = new(1, 0.008);
        timer.Move(0.1, 0.1, 1, 0, 0, 1, 0, 0);
        timer.Move(0.1, 0.1, 0, 1, 0, 0, 1, 0);
        timer.Stand(0);
        // Each move: from rest to 0.1 and down to c = 0.008/√2: t = (2v − c)/a + (L − (2v² − c²)/(2a))/v.
        double c = 0.008 / Math.Sqrt(2), each = 0.2 - c + (0.1 - (0.02 - c * c) / 2) / 0.1;
        Assert.Equal(2 * each, timer.Seconds, 1e-12);
    }

    [Fact]
    public void No_acceleration_limit_gives_the_feed_rates_alone()
    {
        MotionSummary s = MotionText.Summary("M83\n" + MotionText.Square(0.2), new() { Acceleration = 1e9, CornerSpeed = 1e3 });
        Assert.Equal(s.LeastTime, s.Time, 1e-6);
        Assert.True(MotionText.Summary("M83\n" + MotionText.Square(0.2)).Time > s.Time);
    }

    [Fact]
    public void Arc_keeps_its_sideways_acceleration_within_the_limit()
    {
        // A full circle of 1 mm radius at 1 m/s²: no faster than √(a r) = 31.6 mm/s, plus one start and one stop.
        MotionSummary s = MotionText.Summary("M83\nG1 Z0.2 F60000\nG2 I1 E1 F12000\n", new() { Acceleration = 1, CornerSpeed = 0.008 });
        double v = Math.Sqrt(1e-3), lift = 2 * Math.Sqrt(0.2e-3), circle = 2e-3 * Math.PI / v + v;
        Assert.InRange(s.Time, lift + circle - 0.01, lift + circle + 1e-9);
    }

    private static double One(double length, double speed)
    {
        PathTimer timer = new(1, 0.008);
        timer.Move(length, speed, 1, 0, 0, 1, 0, 0);
        timer.Stand(0);
        return timer.Seconds;
    }
}
