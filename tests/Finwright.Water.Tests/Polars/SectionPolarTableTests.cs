using CsCheck;
using Finwright.Water.Polars;
using Finwright.Water.Sections;

namespace Finwright.Water.Tests.Polars;

public sealed class SectionPolarTableTests
{
    private const double Degree = Math.PI / 180;
    private static readonly double[] Reynolds = [3.4e5, 5e5, 7.34e5, 1.08e6, 1.58e6];

    private static SectionPolarTable Table(StalledThinSection? section = null, double factor = 1) =>
        new([.. Reynolds.Select(re => (section ?? new()).Curve(re))], factor);

    [Fact]
    public void At_a_solved_point_gives_that_point()
    {
        SectionForces forces = Table().At(5 * Degree, 1.08e6);
        SectionPoint point = new StalledThinSection().Point(5 * Degree, 1.08e6);
        Assert.Equal(point.Cl, forces.Cl, 1e-12);
        Assert.Equal(point.Cd, forces.Cd, 1e-12);
        Assert.Equal(point.Cm, forces.Cm, 1e-12);
        Assert.Equal(point.MinimumCp, forces.MinimumCp, 1e-12);
        Assert.Equal(point.SeparationUpper, forces.Separation, 1e-12);
        Assert.Equal(PolarOrigin.Solved, forces.Origin);
    }

    [Fact]
    public void At_between_points_is_close_to_the_closed_form()
    {
        SectionPolarTable table = Table();
        foreach (double re in (double[])[4e5, 6e5, 9.1e5, 1.3e6])
        {
            for (double angle = -10.3; angle < 11; angle += 0.7)
            {
                SectionForces forces = table.At(angle * Degree, re);
                // Cubic pieces over 1° and a factor of 1.47 in Reynolds number; the monotone slopes cost accuracy at peaks only.
                Assert.Equal(StalledThinSection.Lift(angle * Degree, re), forces.Cl, 0.002);
                Assert.Equal(StalledThinSection.Drag(angle * Degree, re), forces.Cd, 1e-4);
            }
        }
    }

    [Fact]
    public void StallAt_finds_the_peak_of_the_closed_form()
    {
        SectionPolarTable table = Table();
        foreach (double re in Reynolds.Append(9e5))
        {
            double stall = StalledThinSection.Stall(re);
            SectionStall up = table.StallAt(re, positive: true), down = table.StallAt(re, positive: false);
            Assert.True(up.IsReached && down.IsReached);
            // A parabola through points 1° apart on a curve of fourth degree.
            Assert.Equal(stall, up.AngleOfAttack, 0.1 * Degree);
            Assert.Equal(0.75 * 2 * Math.PI * stall, up.Cl, 0.001);
            Assert.Equal(-up.AngleOfAttack, down.AngleOfAttack, 1e-12);
            Assert.Equal(-up.Cl, down.Cl, 1e-12);
        }
    }

    [Fact]
    public void At_the_angle_of_stall_gives_the_lift_of_stall_and_none_is_greater()
    {
        SectionPolarTable table = Table();
        SectionStall stall = table.StallAt(1.08e6, positive: true);
        Assert.Equal(stall.Cl, table.At(stall.AngleOfAttack, 1.08e6).Cl, 1e-12);
        for (double angle = 0; angle < 20; angle += 0.05)
            Assert.True(table.At(angle * Degree, 1.08e6).Cl <= stall.Cl + 1e-12);
    }

    [Fact]
    public void At_never_leaves_the_range_of_the_neighbouring_points()
    {
        SectionPolarTable table = Table();
        SectionCurve curve = table.Curves[3];
        double re = curve.Conditions.ReynoldsNumber, peak = table.StallAt(re, positive: true).Cl;
        Gen.Double[-20, 20].Sample(degrees =>
        {
            double angle = degrees * Degree, lift = table.At(angle, re).Cl;
            int i = 1;
            while (i + 1 < curve.Points.Count && curve.Points[i].AngleOfAttack < angle)
                i++;
            (double a, double b) = (curve.Points[i - 1].Cl, curve.Points[i].Cl);
            bool isPeak = Math.Max(Math.Abs(a), Math.Abs(b)) > 0.995 * peak;
            return lift >= (isPeak && lift < 0 ? -peak : Math.Min(a, b)) - 1e-12 && lift <= (isPeak && lift > 0 ? peak : Math.Max(a, b)) + 1e-12;
        });
    }

    [Fact]
    public void At_is_smooth_over_angle_and_Reynolds_number()
    {
        SectionPolarTable table = Table();
        const double step = 1e-7;
        foreach (double angle in (double[])[-8, -2, 0, 0.5, 3, 7])
        {
            double left = (table.At(angle * Degree, 9e5).Cl - table.At(angle * Degree - step, 9e5).Cl) / step;
            double right = (table.At(angle * Degree + step, 9e5).Cl - table.At(angle * Degree, 9e5).Cl) / step;
            Assert.Equal(left, right, 1e-4);
        }

        foreach (double re in Reynolds[1..^1])
        {
            double left = (table.At(0.1, re).Cd - table.At(0.1, re * (1 - step)).Cd) / step;
            double right = (table.At(0.1, re * (1 + step)).Cd - table.At(0.1, re).Cd) / step;
            Assert.Equal(left, right, 1e-7);
        }
    }

    [Fact]
    public void At_across_points_that_did_not_converge_is_bridged_and_says_so()
    {
        SectionPolarTable table = Table(new() { Fails = (angle, re) => re < 4e5 && angle > 5.5 * Degree && angle < 7.5 * Degree });
        SectionForces forces = table.At(6.5 * Degree, 3.4e5);
        Assert.Equal(PolarOrigin.Bridged, forces.Origin);
        Assert.Equal(StalledThinSection.Lift(6.5 * Degree, 3.4e5), forces.Cl, 0.01);
        Assert.Equal(PolarOrigin.Bridged, table.At(6.5 * Degree, 4e5).Origin);
        Assert.Equal(PolarOrigin.Solved, table.At(5 * Degree, 3.4e5).Origin);
        Assert.Equal(PolarOrigin.Solved, table.At(8 * Degree, 3.4e5).Origin);
        Assert.Equal(PolarOrigin.Solved, table.At(6.5 * Degree, 1e6).Origin);
    }

    [Fact]
    public void At_beyond_a_gap_too_wide_to_bridge_is_stalled_and_the_peak_not_reached()
    {
        SectionPolarTable table = Table(new() { Fails = (angle, _) => angle > 6.5 * Degree && angle < 10.5 * Degree });
        Assert.Equal(PolarOrigin.Solved, table.At(6 * Degree, 1e6).Origin);
        Assert.Equal(PolarOrigin.Stalled, table.At(6.1 * Degree, 1e6).Origin);
        SectionStall stall = table.StallAt(1.08e6, positive: true);
        Assert.False(stall.IsReached);
        Assert.Equal(6 * Degree, stall.AngleOfAttack, 1e-12);
        Assert.True(table.StallAt(1.08e6, positive: false).IsReached);
    }

    [Fact]
    public void At_beyond_the_last_point_goes_on_without_a_step_to_a_plate_across_the_stream()
    {
        SectionPolarTable table = Table(new() { Fails = (angle, _) => Math.Abs(angle) > 13.5 * Degree });
        SectionForces last = table.At(13 * Degree, 1.08e6), behind = table.At(13 * Degree + 1e-9, 1.08e6);
        Assert.Equal(last.Cl, behind.Cl, 1e-7);
        Assert.Equal(last.Cd, behind.Cd, 1e-7);
        Assert.Equal(last.Cm, behind.Cm, 1e-7);
        Assert.Equal(PolarOrigin.Stalled, behind.Origin);
        SectionForces across = table.At(Math.PI / 2, 1.08e6);
        // A plate square to the stream: no lift, load at mid-chord.
        Assert.Equal(0, across.Cl, 1e-12);
        Assert.Equal(2, across.Cd, 1e-12);
        Assert.Equal(-0.5, across.Cm, 1e-12);
    }

    // Sheldahl and Klimas, 1981, SAND80-2114, 0015 section, one post-stall set for all Reynolds numbers: angle, cl, cd.
    // Tolerance: 0.06 in lift, 0.21 in drag (12 %): a plate without thickness stands in for a section.
    [Theory]
    [InlineData(30, 0.855, 0.570)]
    [InlineData(45, 1.050, 1.075)]
    [InlineData(60, 0.875, 1.470)]
    [InlineData(90, 0.09, 1.80)]
    public void At_in_deep_stall_is_near_the_published_forces(double angle, double cl, double cd)
    {
        SectionForces forces = Table(new() { Fails = (a, _) => Math.Abs(a) > 13.5 * Degree }).At(angle * Degree, 7e5);
        Assert.Equal(cl, forces.Cl, angle > 89 ? 0.1 : 0.06);
        Assert.Equal(cd, forces.Cd, 0.21);
        Assert.Equal(PolarOrigin.Stalled, forces.Origin);
    }

    [Fact]
    public void At_outside_the_Reynolds_numbers_the_edge_stands_in_and_is_named()
    {
        SectionPolarTable table = Table();
        Assert.Equal(table.At(0.1, 3.4e5) with { Origin = PolarOrigin.BeyondTable }, table.At(0.1, 1e5));
        Assert.Equal(table.At(0.1, 1.58e6) with { Origin = PolarOrigin.BeyondTable }, table.At(0.1, 9e6));
        Assert.Equal(PolarOrigin.BeyondTable, table.At(1.2, 9e6).Origin);
    }

    [Fact]
    public void A_curve_without_points_is_bridged_by_its_neighbours()
    {
        SectionPolarTable table = Table(new() { Fails = (_, re) => re is 7.34e5 or 3.4e5 });
        SectionForces forces = table.At(5 * Degree, 7.34e5);
        Assert.Equal(PolarOrigin.Bridged, forces.Origin);
        Assert.Equal(StalledThinSection.Lift(5 * Degree, 7.34e5), forces.Cl, 0.002);
        Assert.Equal(PolarOrigin.BeyondTable, table.At(5 * Degree, 3.4e5).Origin);
        Assert.Equal(5e5, table.LeastReynoldsNumber, 1);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.035)]
    public void A_factor_of_maximum_lift_lowers_the_peak_and_leaves_the_slope(double zeroLift)
    {
        SectionPolarTable full = Table(new() { ZeroLift = zeroLift }), lowered = Table(new() { ZeroLift = zeroLift }, 0.92);
        SectionStall was = full.StallAt(1.08e6, positive: true), now = lowered.StallAt(1.08e6, positive: true);
        Assert.Equal(0.92 * was.Cl, now.Cl, 0.002);
        Assert.Equal(zeroLift + 0.92 * (was.AngleOfAttack - zeroLift), now.AngleOfAttack, 0.3 * Degree);
        foreach (double angle in (double[])[-0.05, 0, 0.02, 0.08])
            Assert.Equal(full.At(zeroLift + angle, 1.08e6).Cl, lowered.At(zeroLift + angle, 1.08e6).Cl, 5e-4);
        Assert.Equal(0.92, lowered.MaximumLiftFactor);
    }

    [Fact]
    public void A_mirrored_half_is_odd_in_lift_to_the_last_bit()
    {
        SectionPolarTable table = new([new StalledThinSection().Curve(1.08e6, half: true).Mirrored()]);
        for (double angle = 0; angle <= 90; angle += 0.37)
        {
            SectionForces up = table.At(angle * Degree, 1.08e6), down = table.At(-angle * Degree, 1.08e6);
            Assert.Equal(up.Cl, -down.Cl, 1e-14);
            Assert.Equal(up.Cd, down.Cd, 1e-14);
            Assert.Equal(up.Cm, -down.Cm, 1e-14);
            Assert.Equal(up.Separation, down.Separation, 1e-14);
        }
    }

    [Fact]
    public void A_dead_band_at_zero_is_not_taken_for_stall()
    {
        SectionCurve curve = new StalledThinSection().Curve(6e4);
        curve = curve with { Points = [.. curve.Points.Select(p => Math.Abs(p.AngleOfAttack) < 1.2 * Degree ? p with { Cl = -0.1 * p.Cl } : p)] };
        SectionStall stall = new SectionPolarTable([curve]).StallAt(6e4, positive: true);
        Assert.Equal(StalledThinSection.Stall(6e4), stall.AngleOfAttack, 0.1 * Degree);
    }

    [Theory]
    [InlineData(double.PositiveInfinity, 1e6)]
    [InlineData(double.NaN, 1e6)]
    [InlineData(0.1, 0)]
    [InlineData(0.1, double.NaN)]
    [InlineData(0.1, double.PositiveInfinity)]
    public void At_outside_its_domain_is_refused(double angle, double re) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Table().At(angle, re));

    [Fact]
    public void At_beyond_square_to_the_stream_is_as_square_to_it() => Assert.Equal(Table().At(Math.PI / 2, 1e6), Table().At(1.8, 1e6));

    [Fact]
    public void A_table_without_enough_points_or_in_disorder_is_refused()
    {
        SectionCurve nothing = new StalledThinSection { Fails = (_, _) => true }.Curve(1e6);
        Assert.False(SectionPolarTable.IsEnough([nothing]));
        Assert.Throws<ArgumentException>(() => new SectionPolarTable([nothing]));
        SectionCurve good = new StalledThinSection().Curve(1e6);
        Assert.Throws<ArgumentException>(() => new SectionPolarTable([good, good]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SectionPolarTable([good], 1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SectionPolarTable([good], double.NaN));
        Assert.Throws<InvalidOperationException>(() => good.Mirrored());
    }
}
