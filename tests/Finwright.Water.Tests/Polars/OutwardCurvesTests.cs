using Finwright.Geometry.Sections;
using Finwright.Water.Polars;

namespace Finwright.Water.Tests.Polars;

public sealed class OutwardCurvesTests
{
    private const double Degree = Math.PI / 180;

    private static SectionCurve Solve(Func<double, bool> fails, IReadOnlyList<double> angles, out List<double> asked)
    {
        List<double> seen = [];
        asked = seen;
        StalledThinSection section = new() { Fails = (angle, _) => fails(angle) };
        return OutwardCurves.By((shape, conditions, some, stop) =>
        {
            seen.AddRange(some);
            return section.Solve(shape, conditions, some, stop);
        })(new FourDigitSection(0, 0, 10), new() { ReynoldsNumber = 1e6 }, angles, TestContext.Current.CancellationToken);
    }

    [Fact]
    public void By_gives_every_angle_when_all_converge()
    {
        IReadOnlyList<double> angles = PolarGrid.Angles(half: false);
        SectionCurve curve = Solve(_ => false, angles, out _);
        Assert.Equal(angles, curve.Points.Select(point => point.AngleOfAttack));
    }

    [Fact]
    public void By_leaves_a_side_after_three_angles_without_an_answer()
    {
        SectionCurve curve = Solve(angle => angle > 11.2 * Degree, PolarGrid.Angles(half: false), out List<double> asked);
        Assert.True(asked.Max() < 14.5 * Degree);
        Assert.Equal(-20 * Degree, curve.Points[0].AngleOfAttack, 1e-9);
        Assert.Equal(curve.Points.Select(point => point.AngleOfAttack).Order(), curve.Points.Select(point => point.AngleOfAttack));
        Assert.Equal(curve.Points.Count, curve.Points.Select(point => point.AngleOfAttack).Distinct().Count());
    }

    [Fact]
    public void By_looks_closer_where_lift_still_rises_at_the_last_answer()
    {
        // The peak of the closed form is at 11.46°; nothing converges beyond 11.6°.
        SectionCurve curve = Solve(angle => angle > 11.6 * Degree, PolarGrid.Angles(half: true), out _);
        Assert.Contains(curve.Points, point => point.Converged && Math.Abs(point.AngleOfAttack - 11.5 * Degree) < 1e-9);
        SectionCurve further = Solve(angle => angle > 12.1 * Degree, PolarGrid.Angles(half: true), out _);
        Assert.DoesNotContain(further.Points, point => Math.Abs(point.AngleOfAttack - 12.25 * Degree) < 1e-9);
        Assert.True(new SectionPolarTable([further]).StallAt(1e6, positive: true).IsReached);
    }

    [Fact]
    public void By_of_a_flow_without_any_answer_ends()
    {
        SectionCurve curve = Solve(_ => true, PolarGrid.Angles(half: false), out _);
        Assert.Equal(0, curve.SolvedCount);
    }

    [Fact]
    public void Points_that_jump_back_up_past_the_peak_are_left_out()
    {
        SectionCurve curve = new StalledThinSection().Curve(1e6);
        SectionCurve jumping = curve with
        {
            Points = [.. curve.Points.Select(point => point.AngleOfAttack > 13.5 * Degree && point.AngleOfAttack < 14.5 * Degree ? point with { Cl = 0.5 } : point)],
        };
        SectionPolarTable table = new([jumping]);
        Assert.Equal(PolarOrigin.Solved, table.At(14 * Degree, 1e6).Origin);
        Assert.Equal(PolarOrigin.Stalled, table.At(14.2 * Degree, 1e6).Origin);
        Assert.Equal(PolarOrigin.Solved, table.At(-15 * Degree, 1e6).Origin);
        Assert.Equal(new SectionPolarTable([curve]).StallAt(1e6, true), table.StallAt(1e6, true));
    }
}
