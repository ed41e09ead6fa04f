using Finwright.Geometry.Sections;
using Finwright.Water.Polars;
using Finwright.Water.Sections;

namespace Finwright.Water.Tests.Polars;

public sealed class PolarSweepTests
{
    private static PolarNode Node(double position, Section? section = null, SideFinish? upper = null) =>
        new(position, section ?? new FourDigitSection(0, 0, 10), 9, upper ?? SideFinish.Smooth, SideFinish.Smooth, PolarGrid.ReynoldsNumbers(3e5, 2e6));

    [Fact]
    public void Solve_of_symmetric_nodes_asks_for_half_the_angles()
    {
        PolarSweepResult symmetric = PolarSweep.Solve([Node(0)], Counting(out Func<int> half), cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(21, half());
        Assert.Equal(41, symmetric.Curves[0][0].Points.Count);
        PolarSweep.Solve([Node(0, new FourDigitSection(2, 4, 12))], Counting(out Func<int> cambered), cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(41, cambered());
        PolarSweep.Solve([Node(0, upper: new() { TripAt = 0.1 })], Counting(out Func<int> tripped), cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(41, tripped());

        static SectionCurveSolver Counting(out Func<int> count)
        {
            int angles = 0;
            count = () => angles;
            return (section, conditions, asked, stop) =>
            {
                angles = asked.Count;
                return new StalledThinSection().Solve(section, conditions, asked, stop);
            };
        }
    }

    [Fact]
    public void Solve_reports_rising_progress_up_to_the_whole()
    {
        Reports reports = new();
        PolarSweepResult result = PolarSweep.Solve([Node(0), Node(1)], new StalledThinSection().Solve, 1, reports, TestContext.Current.CancellationToken);
        Assert.Equal(result.Curves.Sum(own => own.Count), reports.Values.Count);
        Assert.Equal(reports.Values.Order(), reports.Values);
        Assert.Equal(1, reports.Values[^1]);
    }

    [Fact]
    public void Solve_puts_every_curve_in_its_place_whatever_the_order_of_the_work()
    {
        PolarNode[] nodes = [Node(0), Node(0.5), Node(1)];
        PolarSweepResult result = PolarSweep.Solve(
            nodes,
            (section, conditions, angles, stop) =>
            {
                // The first curves take longest.
                Thread.Sleep(conditions.ReynoldsNumber < 5e5 ? 20 : 0);
                return new StalledThinSection().Solve(section, conditions, angles, stop);
            },
            cancellation: TestContext.Current.CancellationToken);
        for (int n = 0; n < nodes.Length; n++)
            Assert.Equal(nodes[n].ReynoldsNumbers, result.Curves[n].Select(curve => curve.Conditions.ReynoldsNumber));
        Assert.Equal(result.Family!.PointCount, result.Family.SolvedCount);
    }

    [Fact]
    public void Solve_stops_when_told()
    {
        using CancellationTokenSource stop = new();
        Assert.ThrowsAny<OperationCanceledException>(() => PolarSweep.Solve(
            [Node(0)],
            (section, conditions, angles, token) =>
            {
                stop.Cancel();
                token.ThrowIfCancellationRequested();
                return new StalledThinSection().Solve(section, conditions, angles, token);
            },
            cancellation: stop.Token));
    }

    [Fact]
    public void Solve_hands_on_what_the_solver_throws() => Assert.Throws<ArgumentException>(() => PolarSweep.Solve(
        [Node(0)],
        (section, _, _, _) => throw new ArgumentException("no such section", nameof(section)),
        cancellation: TestContext.Current.CancellationToken));

    [Fact]
    public void Solve_names_a_node_that_has_too_few_points()
    {
        PolarSweepResult result = PolarSweep.Solve(
            [Node(0), Node(1, new FourDigitSection(0, 0, 20))],
            (section, conditions, angles, stop) => new StalledThinSection { Fails = (_, _) => section.ThicknessRatio > 0.15 }.Solve(section, conditions, angles, stop),
            cancellation: TestContext.Current.CancellationToken);
        Assert.Null(result.Family);
        Assert.Equal([1], result.EmptyNodes);
    }

    [Fact]
    public void A_family_mixes_linearly_between_its_nodes_and_keeps_the_ends_beyond()
    {
        SectionPolarTable plain = new([new StalledThinSection().Curve(1e6)]), turned = new([new StalledThinSection { ZeroLift = 0.02 }.Curve(1e6)]);
        SectionPolarFamily family = new([0, 1], [plain, turned]);
        SectionForces a = plain.At(0.1, 1e6), b = turned.At(0.1, 1e6);
        Assert.Equal(0.75 * a.Cl + 0.25 * b.Cl, family.At(0.25).At(0.1, 1e6).Cl, 1e-12);
        Assert.Equal(0.75 * plain.StallAt(1e6, true).Cl + 0.25 * turned.StallAt(1e6, true).Cl, family.At(0.25).StallAt(1e6, true).Cl, 1e-12);
        Assert.Same(plain, family.At(0));
        Assert.Same(plain, family.At(-1));
        Assert.Same(turned, family.At(2));
        Assert.Throws<ArgumentOutOfRangeException>(() => family.At(double.NaN));
        Assert.Throws<ArgumentException>(() => new SectionPolarFamily([0, 0], [plain, plain]));
        Assert.Throws<ArgumentException>(() => new SectionPolarFamily([], []));
    }

    [Theory]
    [InlineData(2.6e5, 2.2e6)]
    [InlineData(1e4, 2e4)]
    [InlineData(8e6, 9e6)]
    [InlineData(1e5, 1e5)]
    public void Reynolds_numbers_cover_the_range_within_the_method_s_own(double least, double greatest)
    {
        IReadOnlyList<double> row = PolarGrid.ReynoldsNumbers(least, greatest);
        Assert.True(row.Count >= 2);
        Assert.True(row[0] <= Math.Max(least, PolarGrid.LeastReynoldsNumber) || row[^1] >= PolarGrid.GreatestReynoldsNumber);
        Assert.True(row[^1] >= Math.Min(greatest, PolarGrid.GreatestReynoldsNumber));
        Assert.All(row, re => Assert.InRange(re, PolarGrid.LeastReynoldsNumber, PolarGrid.GreatestReynoldsNumber));
    }

    [Fact]
    public void Reynolds_numbers_reach_the_widest_root_at_the_highest_speed_in_warm_water_and_no_farther_than_the_method()
    {
        // 0.25 m at 20 m/s; fresh water of 30 °C has 0.80e-6 m²/s (from memory).
        Assert.InRange(PolarGrid.GreatestReynoldsNumber, 0.25 * 20 / 0.80e-6, SectionFlow.GreatestReynolds);
        Assert.InRange(PolarGrid.AllReynoldsNumbers[^1] / PolarGrid.AllReynoldsNumbers[^2], 1.4, 1.5);
    }

    [Fact]
    public void The_whole_row_runs_from_end_to_end_of_the_method()
    {
        Assert.Equal(PolarGrid.LeastReynoldsNumber, PolarGrid.AllReynoldsNumbers[0]);
        Assert.Equal(PolarGrid.GreatestReynoldsNumber, PolarGrid.AllReynoldsNumbers[^1], 1e-3);
        Assert.Throws<ArgumentOutOfRangeException>(() => PolarGrid.ReynoldsNumbers(0, 1e6));
        Assert.Throws<ArgumentOutOfRangeException>(() => PolarGrid.ReynoldsNumbers(1e6, 1e5));
    }

    private sealed class Reports : IProgress<double>
    {
        public List<double> Values { get; } = [];

        public void Report(double value) => Values.Add(value);
    }
}
