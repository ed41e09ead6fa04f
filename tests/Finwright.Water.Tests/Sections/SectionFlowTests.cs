using Finwright.Geometry.Sections;
using Finwright.Water.Sections;
using Finwright.Water.Sections.Potential;

namespace Finwright.Water.Tests.Sections;

public sealed class SectionFlowTests
{
    private const double Degree = Math.PI / 180;

    [Theory]
    [InlineData("naca-0012", 6e6, 9, 4)]
    [InlineData("naca-0009", 1e6, 5, 6)]
    [InlineData("naca-2412", 1e6, 5, 3)]
    [InlineData("naca-0009", 3e5, 5, 7)]
    public void Lift_of_the_pressures_is_the_lift_of_the_circulation(string name, double reynolds, double n, double degrees)
    {
        // Kutta and Joukowski: lift is twice the circulation, which the speeds round the section give without any pressure. 1 %.
        SectionPoint point = new SectionFlow(Named(name)).Solve(degrees * Degree, new() { ReynoldsNumber = reynolds, CriticalAmplification = n }, withSurface: true);
        SectionSurface surface = point.Surface!;
        int nose = Enumerable.Range(0, surface.X.Count).MaxBy(i => surface.Cp[i]);
        double circulation = 0;
        for (int i = 0; i + 1 < surface.X.Count; i++)
        {
            double length = Math.Sqrt(Math.Pow(surface.X[i + 1] - surface.X[i], 2) + Math.Pow(surface.Y[i + 1] - surface.Y[i], 2));
            circulation += 0.5 * (Signed(i) + Signed(i + 1)) * length;
        }

        Assert.Equal(2 * circulation, point.Cl, 0.01 * Math.Abs(point.Cl));

        // The stream runs against the order of the points up to where it parts.
        double Signed(int i) => (i <= nose ? 1 : -1) * Math.Sqrt(1 - surface.Cp[i]);
    }

    [Theory]
    [InlineData("naca-0012", 6e6, 0)]
    [InlineData("naca-0012", 6e6, 6)]
    [InlineData("naca-0010", 1e6, 4)]
    [InlineData("naca-2412", 2e6, 2)]
    public void Drag_of_pressure_and_friction_is_the_drag_of_the_wake(string name, double reynolds, double degrees)
    {
        // Balance of momentum. The pressures' part is a small difference of large forces: 1 % of lift and drag together.
        SectionFlow flow = new(Named(name), new(2));
        SectionPoint point = flow.Solve(degrees * Degree, new() { ReynoldsNumber = reynolds }, withSurface: true);
        SectionPanels panels = SectionPanels.Of(Named(name), 2);
        double pressure = PressureForces.Of(panels, [.. point.Surface!.Cp], degrees * Degree).Cd;
        Assert.Equal(point.Cd, pressure + point.CdFriction, 0.01 * (Math.Abs(point.Cl) + point.Cd) + 0.1 * point.Cd);
    }

    [Theory]
    [InlineData("naca-0010", 1e6, 5, 4)]
    [InlineData("naca-0012", 6e6, 9, 8)]
    [InlineData("naca-2412", 1e6, 5, 3)]
    public void Finer_panels_change_little(string name, double reynolds, double n, double degrees)
    {
        // Half and quarter panels: lift and drag move by less than 0.6 %, and less again.
        SectionConditions conditions = new() { ReynoldsNumber = reynolds, CriticalAmplification = n };
        SectionPoint[] points = [.. Enumerable.Range(0, 3).Select(k => new SectionFlow(Named(name), new(1 << k)).Solve(degrees * Degree, conditions))];
        Assert.Equal(points[2].Cl, points[0].Cl, 0.006 * Math.Abs(points[2].Cl));
        Assert.Equal(points[2].Cd, points[0].Cd, 0.006 * points[2].Cd);
        Assert.Equal(points[2].Cl, points[1].Cl, 0.003 * Math.Abs(points[2].Cl));
        Assert.Equal(points[2].Cd, points[1].Cd, 0.004 * points[2].Cd);
    }

    [Fact]
    public void Lift_rises_without_a_jump_as_transition_reaches_the_trailing_edge()
    {
        // A layer that turns just ahead of the edge and one that turns at it are nearly the same flow. The slope changes there, by less than half; lift must not jump.
        SectionFlow flow = new(Named("naca-0009"));
        SectionPoint[] points = [.. Enumerable.Range(0, 9).Select(i => flow.Solve((2.6 + 0.1 * i) * Degree, new() { ReynoldsNumber = 3e5 }))];
        Assert.All(points, point => Assert.True(point.Converged));
        Assert.InRange(points[0].TransitionLower, 0.9, 0.999);
        Assert.Equal(1, points[^1].TransitionLower);
        for (int i = 1; i < points.Length; i++)
            Assert.InRange(points[i].Cl - points[i - 1].Cl, 0.004, 0.016);
    }

    [Fact]
    public void Symmetric_section_answers_opposite_angles_exactly_opposite()
    {
        SectionFlow flow = new(Named("naca-0010"));
        SectionConditions conditions = new() { ReynoldsNumber = 8e5, CriticalAmplification = 5 };
        SectionPoint none = flow.Solve(0, conditions), up = flow.Solve(5 * Degree, conditions), down = flow.Solve(-5 * Degree, conditions);
        Assert.Equal(0, none.Cl);
        Assert.Equal(0, none.Cm);
        Assert.Equal(up.Cl, -down.Cl);
        Assert.Equal(up.Cd, down.Cd);
        Assert.Equal(up.TransitionUpper, down.TransitionLower);
    }

    [Fact]
    public void Sides_finished_differently_change_places_with_the_angle()
    {
        SectionFlow flow = new(Named("naca-0010"));
        SideFinish tripped = new() { TripAt = 0.1 };
        SectionPoint up = flow.Solve(3 * Degree, new() { ReynoldsNumber = 1e6, Upper = tripped });
        SectionPoint down = flow.Solve(-3 * Degree, new() { ReynoldsNumber = 1e6, Lower = tripped });
        Assert.Equal(up.Cl, -down.Cl);
        Assert.InRange(up.TransitionUpper, 0, 0.1001);
        Assert.InRange(up.TransitionLower, 0.3, 1);
    }

    [Fact]
    public void Sweep_gives_what_single_angles_give()
    {
        SectionFlow flow = new(Named("naca-2412"));
        SectionConditions conditions = new() { ReynoldsNumber = 1e6, CriticalAmplification = 6 };
        double[] angles = [-4 * Degree, 0, 2 * Degree, 6 * Degree];
        IReadOnlyList<SectionPoint> swept = flow.Sweep(angles, conditions, cancellation: TestContext.Current.CancellationToken);
        for (int i = 0; i < angles.Length; i++)
            Assert.Equal(flow.Solve(angles[i], conditions).Cl, swept[i].Cl, 1e-5);
    }

    [Fact]
    public void Rougher_sides_trip_earlier_and_drag_more()
    {
        SectionFlow flow = new(Named("naca-0010"));
        double drag = 0, place = 2;
        foreach (double height in new[] { 0, 3e-4, 6e-4, 1.2e-3 })
        {
            SideFinish finish = new() { RoughnessHeight = height, CriticalRoughnessReynoldsNumber = 200, SandRoughness = height / 2 };
            SectionPoint point = flow.Solve(2 * Degree, new() { ReynoldsNumber = 1e6, Upper = finish, Lower = finish });
            Assert.True(point.Converged);
            Assert.True(point.Cd > drag && point.TransitionUpper < place + 0.02);
            (drag, place) = (point.Cd, point.TransitionUpper);
        }

        Assert.InRange(place, 0, 0.1);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(1e-3)]
    [InlineData(2e-3)]
    public void Rough_walls_are_solved_at_every_angle_of_use(double sand)
    {
        SideFinish finish = new() { TripAt = 0.05, SandRoughness = sand };
        IReadOnlyList<SectionPoint> points = new SectionFlow(Named("naca-0010")).Sweep(
            [.. Enumerable.Range(0, 6).Select(i => i * Degree)], new() { ReynoldsNumber = 1e6, CriticalAmplification = 5, Upper = finish, Lower = finish }, cancellation: TestContext.Current.CancellationToken);
        Assert.All(points, point => Assert.True(point.IsUsable));
    }

    [Fact]
    public void Camber_lifts_at_no_angle_and_turns_the_nose_down()
    {
        SectionPoint point = new SectionFlow(Named("naca-2412")).Solve(0, new() { ReynoldsNumber = 3e6 });
        // Abbott, von Doenhoff and Stivers, 1945, NACA TR-824: zero lift at -2.1 degrees, moment -0.047 (from memory).
        Assert.Equal(0.225, point.Cl, 0.025);
        Assert.Equal(-0.047, point.Cm, 0.01);
    }

    [Fact]
    public void What_is_out_of_range_is_refused()
    {
        SectionFlow flow = new(Named("naca-0010"));
        Assert.Throws<ArgumentOutOfRangeException>(() => flow.Solve(21 * Degree, new() { ReynoldsNumber = 1e6 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => flow.Solve(double.NaN, new() { ReynoldsNumber = 1e6 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => flow.Solve(0, new() { ReynoldsNumber = 1e4 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => flow.Solve(0, new() { ReynoldsNumber = 1e6, CriticalAmplification = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SectionFlow(new ScaledSection(Named("naca-0010"), 0.40, null)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SectionFlow(new ScaledSection(Named("naca-0010"), 0.02, null)));
    }

    [Fact]
    public void Nose_bears_a_higher_peak_at_a_higher_reynolds_number()
    {
        Assert.True(NoseStall.LowestPressure(1e6) < NoseStall.LowestPressure(1e5));
        Assert.True(NoseStall.IsPast(-20, 0.001, 1e7));
        Assert.False(NoseStall.IsPast(-20, 0.5, 1e7));
        SectionPoint past = new SectionFlow(Named("naca-0009")).Solve(13 * Degree, new() { ReynoldsNumber = 1e6, CriticalAmplification = 5 });
        Assert.True(past.IsPastNoseStall && !past.IsUsable);
    }

    private static Section Named(string name) => SectionCatalogue.TryFind(name, null, out Section? section, out string problem) ? section : throw new ArgumentException(problem, nameof(name));
}
