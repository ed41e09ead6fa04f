using Finwright.Workshop.Tracks;
using MathNet.Numerics.Distributions;

namespace Finwright.Workshop.Tests.Tracks;

public sealed class TrackMeasuresTests
{
    // Positions of the made tracks are exact to a few parts in a million, speeds told to the last bit.
    private const double FromPositions = 1e-4, FromSpeeds = 1e-9;

    public static TheoryData<double, bool> Recorders => new() { { 1, true }, { 1, false }, { 10, true }, { 10, false }, { 5, true } };

    [Theory]
    [MemberData(nameof(Recorders))]
    public void A_straight_line_at_one_speed_has_that_speed_in_every_measure(double rate, bool tellsSpeed)
    {
        TrackMaker maker = new(rate, tellsSpeed);
        if (tellsSpeed)
            maker[0] = maker[0] with { Speed = 12 };
        TrackMeasures measures = TrackMeasures.Of(maker.Sail(12, 4000).Track);
        double within = tellsSpeed ? FromSpeeds : FromPositions;
        Assert.Equal(tellsSpeed ? SpeedSource.Measured : SpeedSource.Positions, measures.Source);
        SailedRun run = Assert.Single(measures.Runs);
        Assert.Equal(12, run.MeanSpeed, within);
        Assert.Equal(Math.PI / 2, run.Course, 0.01);
        foreach (BestSpeed? best in (BestSpeed?[])[measures.TwoSeconds, measures.TenSeconds, measures.HundredMetres, measures.QuarterKilometre, measures.HalfKilometre, measures.NauticalMile, measures.Hour])
            Assert.Equal(12, best!.Speed, within);
        Assert.Equal(48_000, measures.Distance, 48_000 * within);
        Assert.Equal(4000, measures.TimeSailed, 1e-6);
        Assert.Null(measures.FiveTimesTen);
        Assert.DoesNotContain(measures.Rejections, rejection => rejection.Reason != RejectionReason.TooClose);
        Assert.Contains(measures.Findings, finding => finding.Code == "track-few-runs");
    }

    [Theory]
    [MemberData(nameof(Recorders))]
    public void Out_and_back_five_times_counts_each_run_once(double rate, bool tellsSpeed)
    {
        // Speeds of a run rise and fall by 1 m/s each second; the gybe turns by 180 degrees in 6 s at half the speed, as good riders keep.
        TrackMaker maker = new(rate, tellsSpeed);
        double[] tops = [14, 16, 13, 15, 12, 11];
        for (int i = 0; i < tops.Length; i++)
        {
            double course = i % 2 == 0 ? 80 : 260;
            for (int speed = 6; speed < tops[i]; speed++)
                maker.Sail(speed, 1, course);
            maker.Sail(tops[i], 30, course);
            for (int speed = (int)tops[i] - 1; speed >= 6; speed--)
                maker.Sail(speed, 1, course);
            maker.Sail(6, 6, course, 30);
        }

        TrackMeasures measures = TrackMeasures.Of(maker.Track);
        Assert.Equal(6, measures.Runs.Count);
        Assert.Equal([16.0, 15, 14, 13, 12], measures.BestOfRuns.Select(best => Math.Round(best.Speed, 3)));
        Assert.Equal(14, measures.FiveTimesTen!.Value, tellsSpeed ? FromSpeeds : FromPositions);
        Assert.Equal(2, measures.TenSeconds!.Run);
        Assert.Equal(16, measures.TwoSeconds!.Speed, 1e-3);
        // 250 m at 16 m/s lie within the 30 s at full speed, 500 m do not: 480 m there, and 2 × 10 m beside it at 15 m/s.
        Assert.Equal(16, measures.QuarterKilometre!.Speed, 1e-3);
        Assert.InRange(measures.HalfKilometre!.Speed, 15.85, 15.97);
        // The mile spans turns: slower than any run's 10 s, faster than the slowest second.
        Assert.InRange(measures.NauticalMile!.Speed, 9, 14);
        Assert.Null(measures.NauticalMile.Run);
        Assert.All(measures.Runs, run => Assert.InRange(run.Course * 180 / Math.PI, run.Number % 2 == 1 ? 70 : 250, run.Number % 2 == 1 ? 90 : 270));
    }

    [Fact]
    public void A_step_of_speed_is_found_where_it_is_and_nothing_is_interpolated()
    {
        // 8 m/s, then 10.5 m/s for 12 s, then 8 m/s again; a step of 2.5 m/s in a second is within what a board can.
        TrackMaker maker = new();
        maker[0] = maker[0] with { Speed = 8 };
        TrackMeasures measures = TrackMeasures.Of(maker.Sail(8, 60).Sail(10.5, 12).Sail(8, 60).Track);
        Assert.Equal(10.5, measures.TenSeconds!.Speed, FromSpeeds);
        Assert.Equal(61, measures.TenSeconds.Start, FromSpeeds);
        Assert.Equal(10, measures.TenSeconds.Duration, FromSpeeds);
        // 100 m at 10.5 m/s are reached after 10 s with 105 m: told as they are.
        Assert.Equal(105, measures.HundredMetres!.Distance, 1e-6);
        // Steps of a second: 11 at 10.5 m/s between 12 points, one at 9.25 to either side, the rest at 8. 250 m take 28 s: 115.5 + 18.5 + 15 × 8 = 254.
        Assert.Equal(254.0 / 28, measures.QuarterKilometre!.Speed, FromSpeeds);
    }

    [Fact]
    public void Best_mean_speeds_never_rise_with_the_time_at_one_point_a_second()
    {
        TrackMaker maker = new();
        for (int i = 0; i < 700; i++)
            maker.Sail(10 + 3 * Math.Sin(i * 0.37) * Math.Sin(i * 0.011), 1, 90);
        TrackMeasures measures = TrackMeasures.Of(maker.Track);
        Assert.True(measures.TwoSeconds!.Speed >= measures.TenSeconds!.Speed);
        Assert.True(measures.TenSeconds.Speed >= measures.NauticalMile!.Speed);
    }

    // Rank page of a public session, rounded there to 0.01 knots: five runs' best 10 s of 40.12, 38.67, 38.61, 38.56 and 38.12 knots are told as 38.81 for 5 x 10 s; the mean of the printed values is 38.816.
    [Fact]
    public void Five_times_ten_is_the_mean_of_the_five_bests_as_a_public_page_tells_it()
    {
        double[] knots = [38.12, 40.12, 38.56, 38.67, 38.61, 30.0];
        TrackMaker maker = new();
        for (int i = 0; i < knots.Length; i++)
        {
            double course = i % 2 == 0 ? 100 : 280, top = knots[i] * SpeedUnits.Knot;
            for (double speed = 6; speed < top - 1; speed += 2)
                maker.Sail(speed, 1, course);
            maker.Sail(top, 12, course);
            for (double speed = top - 2; speed > 4; speed -= 2)
                maker.Sail(speed, 1, course);
            maker.Sail(3, 10, course, 18);
        }

        TrackMeasures measures = TrackMeasures.Of(maker.Track);
        Assert.Equal(38.816, measures.FiveTimesTen!.Value / SpeedUnits.Knot, 1e-6);
        Assert.Equal([40.12, 38.67, 38.61, 38.56, 38.12], measures.BestOfRuns.Select(best => Math.Round(best.Speed / SpeedUnits.Knot, 6)));
        Assert.Empty(measures.Rejections);
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(1, false)]
    [InlineData(10, false)]
    public void A_circle_has_its_way_and_many_short_runs(double rate, bool tellsSpeed)
    {
        // Radius 100 m at 10 m/s: 5.7296 degrees a second, round in 62.83 s.
        TrackMaker maker = new(rate, tellsSpeed);
        maker[0] = maker[0] with { Speed = tellsSpeed ? 10 : double.NaN };
        TrackMeasures measures = TrackMeasures.Of(maker.Sail(10, 630, 0, 180 / Math.PI / 10).Track);
        // Chords of a second are 0.042 % shorter than their arcs.
        Assert.Equal(6300, measures.Distance, rate > 1 ? 2.7 : 0.01);
        Assert.Equal(10, measures.NauticalMile!.Speed, 0.01);
        Assert.True(measures.Runs.Count > 20, $"{measures.Runs.Count} runs");
        Assert.All(measures.Runs, run => Assert.True(run.Duration <= 2 * RunSplitting.TurnSeconds + 1, $"{run.Duration} s"));
        // All courses are sailed alike.
        Assert.All(measures.ByCourse, course => Assert.InRange(course.TimeShare * SpeedByCourse.Bins, 0.85, 1.15));
        Assert.All(measures.ByCourse, course => Assert.Equal(10, course.MeanSpeed!.Value, 0.01));
    }

    [Theory]
    [InlineData(-17, 179.99)]
    [InlineData(70.5, 25)]
    [InlineData(-54, -68)]
    [InlineData(0, 0)]
    public void Everywhere_on_the_globe_is_measured_alike(double latitude, double longitude)
    {
        foreach (double course in (double[])[90, 45, 270, 190])
        {
            TrackMeasures measures = TrackMeasures.Of(new TrackMaker(1, tellsSpeed: false, latitude, longitude).Sail(15, 300, course).Track);
            Assert.Equal(15, measures.TenSeconds!.Speed, 15e-5);
            Assert.Equal(4500, measures.Distance, 0.05);
            SailedRun run = Assert.Single(measures.Runs);
            // On a globe a line of one course by compass is no straight line; over 4.5 km at 70 degrees they part by 0.1 degrees.
            Assert.Equal(course, run.Course * 180 / Math.PI, 0.2);
        }
    }

    [Fact]
    public void Course_bins_tell_where_the_time_went()
    {
        TrackMaker maker = new();
        maker.Sail(10, 300, 90).Sail(8, 1, 90).Sail(6, 3, 90, 30).Sail(8, 1, 180).Sail(10, 1, 180).Sail(12, 100, 180);
        TrackMeasures measures = TrackMeasures.Of(maker.Track);
        CourseSpeed east = measures.ByCourse[6], south = measures.ByCourse[12];
        Assert.Equal(Math.PI / 2, east.Course, 1e-12);
        Assert.Equal(301.0 / 406, east.TimeShare, 0.006);
        Assert.Equal(102.0 / 406, south.TimeShare, 0.006);
        Assert.Equal(12, south.BestTenSeconds!.Value, FromSpeeds);
        Assert.Equal(1, measures.ByCourse.Sum(course => course.TimeShare), 1e-12);
        Assert.Null(measures.ByCourse[0].MeanSpeed);
    }

    [Fact]
    public void A_board_that_never_planes_has_way_but_no_runs()
    {
        TrackMeasures measures = TrackMeasures.Of(new TrackMaker().Sail(3, 600).Track);
        Assert.Empty(measures.Runs);
        Assert.Null(measures.TwoSeconds);
        Assert.Null(measures.TenSeconds);
        Assert.Equal(1800, measures.Distance, 1.51);
        Assert.Contains(measures.Findings, finding => finding.Code == "track-no-runs");
    }

    [Fact]
    public void Standing_still_adds_neither_way_nor_time()
    {
        TrackMaker maker = new(1, tellsSpeed: false);
        Random random = new(5);
        maker.Sail(8, 100);
        TrackPoint place = maker[maker.Count - 1];
        for (int i = 0; i < 600; i++)
        {
            // A receiver at rest wanders by some decimetres.
            maker.Sail(0, 1);
            maker[maker.Count - 1] = maker[maker.Count - 1] with { Latitude = place.Latitude + 3e-8 * (random.NextDouble() - 0.5) };
        }

        TrackMeasures measures = TrackMeasures.Of(maker.Track);
        Assert.Equal(800, measures.Distance, 1.0);
        Assert.Equal(100, measures.TimeSailed, 1.0);
        Assert.Equal(700, measures.Duration, 1e-9);
    }

    [Fact]
    public void The_kind_of_speed_and_its_usual_error_go_with_every_result()
    {
        TrackMaker maker = new();
        maker.Sail(12, 100);
        TrackMeasures told = TrackMeasures.Of(maker.Track), positions = TrackMeasures.Of(maker.Track, positionsOnly: true);
        Assert.Equal(SpeedSource.Measured, told.Source);
        Assert.Equal(SpeedSource.Positions, positions.Source);
        // 1 to 2 knots over 2 s and 0.3 to 0.5 knots over 10 s, from positions at a point a second (from memory).
        Assert.InRange(positions.TwoSeconds!.Error / SpeedUnits.Knot, 1, 2);
        Assert.InRange(positions.TenSeconds!.Error / SpeedUnits.Knot, 0.3, 0.5);
        Assert.True(told.TwoSeconds!.Error < positions.TwoSeconds.Error);
        Assert.True(told.TenSeconds!.Error < positions.TenSeconds.Error);
    }

    [Fact]
    public void Noise_at_the_edge_of_planing_and_on_the_course_does_not_cut_runs()
    {
        Random random = new(11);
        TrackMaker maker = new();
        for (int i = 0; i < 400; i++)
            maker.Sail(5.2 + 1.2 * (random.NextDouble() - 0.5), 1, 90 + 30 * (random.NextDouble() - 0.5));
        Assert.Single(TrackMeasures.Of(maker.Track).Runs);
    }

    /// <summary>Receivers as they are: speeds with noise of their own, positions that wander by metres over some seconds.</summary>
    [Theory]
    [InlineData(1, true, 0.15, 0)]
    [InlineData(5, true, 0.15, 0)]
    [InlineData(10, true, 0.1, 0)]
    [InlineData(1, false, 0, 0)]
    [InlineData(10, false, 0, 0)]
    [InlineData(10, false, 0, 0.3)]
    public void Noise_as_receivers_have_it_costs_few_points_and_no_runs(double rate, bool tellsSpeed, double speedNoise, double positionNoise)
    {
        double[] tops = [14, 15, 13.5, 16, 14.5, 15.5];
        Random random = new(17);
        TrackMaker maker = new(rate, tellsSpeed);
        for (int i = 0; i < tops.Length; i++)
        {
            // Up by 1.5 m/s each second, down by 2.
            double course = i % 2 == 0 ? 80 : 260;
            for (double speed = 3.5; speed < tops[i]; speed += 1.5 / rate)
                maker.Sail(speed, 1 / rate, course);
            maker.Sail(tops[i], 30, course);
            for (double speed = tops[i]; speed > 3.5; speed -= 2 / rate)
                maker.Sail(speed, 1 / rate, course);
            maker.Sail(3.5, 8, course, 22.5);
        }

        // Wandering: 1 m, forgotten within 10 s; the speed of it is 0.14 m/s √(2 × 1 m / 10 s) over a second, as positions of a point a second are off.
        double keep = Math.Exp(-0.1 / rate), drift = Math.Sqrt(1 - keep * keep), north = 0, east = 0;
        for (int i = 0; i < maker.Count; i++)
        {
            north = keep * north + drift * Normal.Sample(random, 0, 1);
            east = keep * east + drift * Normal.Sample(random, 0, 1);
            TrackPoint point = maker[i];
            maker[i] = point with
            {
                Latitude = point.Latitude + (north + Normal.Sample(random, 0, positionNoise + 1e-9)) / 6.37e6,
                Longitude = point.Longitude + (east + Normal.Sample(random, 0, positionNoise + 1e-9)) / 6.37e6 / Math.Cos(point.Latitude),
                Speed = Math.Max(0, point.Speed + Normal.Sample(random, 0, speedNoise + 1e-9)),
            };
        }

        TrackMeasures measures = TrackMeasures.Of(maker.Track);
        Assert.Equal(tops.Length, measures.Runs.Count);
        int rejected = measures.Rejections.Where(rejection => rejection.Reason != RejectionReason.TooClose).Sum(rejection => rejection.Count);
        Assert.True(rejected <= 0.005 * maker.Count, $"{rejected} of {maker.Count}: {string.Join("; ", measures.Rejections)}");
        // The best of many pieces is also the luckiest of them: twice the usual error.
        double error = SpeedError.Usual(measures.Source, 10);
        foreach (SailedRun run in measures.Runs)
            Assert.Equal(tops[run.Number - 1], run.BestTenSeconds!.Speed, 2 * error);
        Assert.Equal(16, measures.TwoSeconds!.Speed, 2 * measures.TwoSeconds.Error);
    }

    [Fact]
    public void Bearing_away_slowly_by_forty_degrees_is_one_run_and_a_gybe_kept_on_the_plane_makes_two()
    {
        Assert.Single(TrackMeasures.Of(new TrackMaker().Sail(12, 30, 90).Sail(12, 8, 90, 5).Sail(12, 30, 130).Track).Runs);
        TrackMeasures gybe = TrackMeasures.Of(new TrackMaker().Sail(12, 30, 100).Sail(9, 8, 100, 12.5).Sail(12, 30, 200).Track);
        Assert.Equal(2, gybe.Runs.Count);
        // The middle of the gybe, to a second or two.
        Assert.Equal(34, gybe.Runs[1].Start, 2.0);
    }

    [Fact]
    public void Best_pieces_of_runs_lie_within_their_runs_and_bests_of_longer_tracks_are_no_smaller()
    {
        TrackMaker maker = new();
        Random random = new(7);
        double two = 0, ten = 0, hundred = 0;
        for (int leg = 0; leg < 12; leg++)
        {
            double speed = 7 + 6 * random.NextDouble();
            maker.Wait(20).Sail(speed, 10 + 40 * random.NextDouble(), leg % 2 == 0 ? 90 : 270);
            TrackMeasures measures = TrackMeasures.Of(maker.Track);
            Assert.True((measures.TwoSeconds?.Speed ?? 0) >= two && (measures.TenSeconds?.Speed ?? 0) >= ten && (measures.HundredMetres?.Speed ?? 0) >= hundred);
            (two, ten, hundred) = (measures.TwoSeconds?.Speed ?? 0, measures.TenSeconds?.Speed ?? 0, measures.HundredMetres?.Speed ?? 0);
            foreach (BestSpeed? best in (BestSpeed?[])[measures.TwoSeconds, measures.TenSeconds, measures.HundredMetres])
            {
                if (best is null)
                    continue;
                SailedRun run = measures.Runs[best.Run!.Value - 1];
                Assert.InRange(best.Start, run.Start, run.Start + run.Duration - best.Duration);
            }
        }

        Assert.True(two > 0 && ten > 0 && hundred > 0);
    }
}
