using Finwright.Workshop.Tracks;
using MathNet.Numerics.Distributions;

namespace Finwright.Workshop.Tests.Tracks;

public sealed class FairComparisonTests
{
    private static readonly DateOnly Day = new(2026, 7, 14);

    // "Student" (W. S. Gosset), 1908, The probable error of a mean, Biometrika 6, 1-25: hours of sleep gained by ten patients on two drugs, here taken as two groups, after B. L. Welch. Means 0.75 and 2.33, standard
    // deviations 1.789010 and 2.002249, degrees of freedom 17.776, 95 % interval of the difference -3.365483 to 0.205483 (the standard worked example of statistics packages; from memory).
    [Fact]
    public void Students_sleep_data_give_welchs_interval()
    {
        double[] one = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0], two = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];
        FairComparison found = FairComparison.Of([.. one.Select(v => Run(10 + v))], [.. two.Select(v => Run(10 + v))]);
        Assert.Equal(-1.58, found.Difference!.Value, 1e-9);
        Assert.Equal(17.776, found.Freedom!.Value, 5e-4);
        Assert.Equal(-3.365483, found.Low!.Value, 5e-7);
        Assert.Equal(0.205483, found.High!.Value, 5e-7);
        Assert.Equal(10.75, found.First.Mean, 1e-9);
        Assert.Equal(1.789010, found.First.Deviation, 5e-7);
        Assert.Equal(2.002249, found.Second.Deviation, 5e-7);
        Assert.Equal(FairVerdict.CannotTell, found.Verdict);
        Assert.Equal(DayHandling.WithinDays, found.Days);
        Assert.Equal("comparison-few-days", Assert.Single(found.Findings).Code);
    }

    [Fact]
    public void A_difference_beyond_spread_and_floor_is_told_either_way()
    {
        ComparedRun[] slow = [.. Runs(0, 12, 13, 0.3)], fast = [.. Runs(1, 12, 14.5, 0.3)];
        FairComparison found = FairComparison.Of(fast, slow), turned = FairComparison.Of(slow, fast);
        Assert.Equal(FairVerdict.FirstFaster, found.Verdict);
        Assert.Equal(FairVerdict.SecondFaster, turned.Verdict);
        Assert.InRange(1.5, found.Low!.Value, found.High!.Value);
        Assert.Equal(found.Low.Value, -turned.High!.Value, 1e-12);
    }

    [Fact]
    public void A_difference_below_half_a_knot_is_not_proven_however_many_runs()
    {
        FairComparison found = FairComparison.Of([.. Runs(0, 300, 13.2, 0.1)], [.. Runs(1, 300, 13.0, 0.1)]);
        Assert.True(found.Low > 0);
        Assert.Equal(FairVerdict.CannotTell, found.Verdict);
        Assert.Equal(0.257, found.Floor, 1e-3);
        // A receiver that is worse raises the floor.
        FairComparison worse = FairComparison.Of([.. Runs(0, 30, 13.4, 0.1)], [.. Runs(1, 30, 13.0, 0.1).Select(run => run with { Error = 0.6 })]);
        Assert.Equal((0.6, FairVerdict.CannotTell), (worse.Floor, worse.Verdict));
    }

    [Fact]
    public void Other_sails_and_other_winds_are_not_compared()
    {
        ComparedRun[] one = [.. Runs(0, 12, 13, 0.3)];
        foreach (ComparedRun[] other in (ComparedRun[][])[
            [.. Runs(1, 12, 15, 0.3).Select(run => run with { SailArea = 7.0 })],
            [.. Runs(1, 12, 15, 0.3).Select(run => run with { WindLow = 14, WindHigh = 16 })],
            [.. Runs(1, 12, 15, 0.3).Select(run => run with { SailArea = null })],
            [.. Runs(1, 12, 15, 0.3).Select(run => run with { WindLow = null, WindHigh = null })]])
        {
            FairComparison found = FairComparison.Of(one, other);
            Assert.Equal(FairVerdict.NotComparable, found.Verdict);
            Assert.Null(found.Difference);
            Assert.Equal("comparison-nothing-alike", Assert.Single(found.Findings).Code);
            Assert.Equal((0, 12), (found.First.Runs, found.First.LeftOut));
        }
    }

    [Theory]
    [InlineData(8, 10, 9, 11, true)]
    [InlineData(8, 10, 9.1, 11.1, false)]
    [InlineData(8, 12, 9, 10, true)]
    [InlineData(8, 10, 9, 9, true)]
    [InlineData(9, 9, 9, 9, true)]
    [InlineData(8, 10, 10.5, 12, false)]
    public void Wind_bands_overlap_when_they_share_half_of_the_narrower(double lowA, double highA, double lowB, double highB, bool expected)
    {
        ComparedRun a = Run(12) with { WindLow = lowA, WindHigh = highA }, b = Run(12) with { WindLow = lowB, WindHigh = highB };
        Assert.Equal(expected, FairComparison.IsAlike(a, b));
        Assert.Equal(expected, FairComparison.IsAlike(b, a));
    }

    [Fact]
    public void Too_few_runs_are_not_compared_and_few_are_cautioned()
    {
        Assert.Equal("comparison-too-few-runs", Assert.Single(FairComparison.Of([.. Runs(0, 2, 13, 0.3)], [.. Runs(1, 20, 13, 0.3)]).Findings).Code);
        Assert.Equal(FairVerdict.NotComparable, FairComparison.Of([], []).Verdict);
        FairComparison few = FairComparison.Of([.. Runs(0, 3, 13, 0.1)], [.. Runs(1, 20, 15, 0.1)]);
        Assert.Equal(FairVerdict.SecondFaster, few.Verdict);
        Assert.Contains(few.Findings, finding => finding.Code == "comparison-few-runs");
    }

    [Fact]
    public void What_a_day_adds_to_both_fins_falls_out()
    {
        // 4 m/s more wind-made speed on the second day, on which the slower fin sailed more: means alone would turn the verdict round.
        List<ComparedRun> a = [.. Runs(0, 12, 12, 0.2), .. Runs(2, 4, 16, 0.2, 1)], b = [.. Runs(1, 4, 11, 0.2), .. Runs(3, 12, 15, 0.2, 1)];
        FairComparison found = FairComparison.Of(a, b);
        Assert.True(found.First.Mean < found.Second.Mean);
        Assert.Equal(FairVerdict.FirstFaster, found.Verdict);
        Assert.Equal(1, found.Difference!.Value, 0.2);
        Assert.Equal((2, 2), (found.First.Days, found.Second.Days));
    }

    [Fact]
    public void Days_that_disagree_widen_the_interval()
    {
        List<ComparedRun> a = [.. Runs(0, 10, 13.5, 0.2), .. Runs(2, 10, 12.5, 0.2, 1), .. Runs(4, 10, 14.5, 0.2, 2)], b = [.. Runs(1, 10, 12, 0.2), .. Runs(3, 10, 12.5, 0.2, 1), .. Runs(5, 10, 12, 0.2, 2)];
        FairComparison found = FairComparison.Of(a, b);
        // Differences of the days 1.5, 0 and 2.5 m/s: standard deviation 1.258, t of 2 degrees of freedom 4.303, so about 1.33 +- 3.13.
        Assert.Equal(4.0 / 3, found.Difference!.Value, 0.15);
        Assert.Equal(FairVerdict.CannotTell, found.Verdict);
        Assert.InRange(found.High!.Value - found.Low!.Value, 5.5, 7);
        Assert.Contains(found.Findings, finding => finding.Code == "comparison-uneven-days");
    }

    [Fact]
    public void On_other_days_the_spread_of_days_is_in_the_interval()
    {
        // Days of the first fin 12, 14, 13, of the second 15, 13.5, 15: means 13 and 14.5, pooled variance (2 + 1.5) / 4, t of 4 degrees of freedom 2.7764 (any table).
        double[] first = [12, 14, 13], second = [15, 13.5, 15];
        List<ComparedRun> a = [.. first.SelectMany((mean, i) => Exact(mean, i))], b = [.. second.SelectMany((mean, i) => Exact(mean, 10 + i))];
        FairComparison found = FairComparison.Of(a, b);
        Assert.Equal(DayHandling.BetweenDays, found.Days);
        Assert.Equal(-1.5, found.Difference!.Value, 1e-9);
        Assert.Equal(4, found.Freedom!.Value, 1e-9);
        double half = 2.7764 * Math.Sqrt(3.5 / 4 * 2 / 3);
        Assert.Equal(-1.5 - half, found.Low!.Value, 1e-4);
        Assert.Equal(-1.5 + half, found.High!.Value, 1e-4);
        Assert.Equal(FairVerdict.CannotTell, found.Verdict);
        Assert.Contains(found.Findings, finding => finding.Code == "comparison-other-days");
    }

    [Fact]
    public void One_day_each_cannot_tell_the_fin_from_the_day()
    {
        FairComparison found = FairComparison.Of([.. Runs(0, 15, 13, 0.3)], [.. Runs(1, 15, 16, 0.3, 3)]);
        Assert.Equal(FairVerdict.NotComparable, found.Verdict);
        Assert.Equal("comparison-fin-or-day", Assert.Single(found.Findings).Code);
    }

    [Fact]
    public void Runs_without_any_spread_are_compared_by_the_floor_alone()
    {
        Assert.Equal(FairVerdict.CannotTell, FairComparison.Of([.. Exact(13, 0)], [.. Exact(13.2, 0)]).Verdict);
        Assert.Equal(FairVerdict.FirstFaster, FairComparison.Of([.. Exact(13, 0)], [.. Exact(12, 0)]).Verdict);
    }

    [Fact]
    public void A_speed_that_is_no_number_is_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => FairComparison.Of([Run(double.NaN)], [Run(12)]));

    /// <summary>Two fins that are the same, told apart by chance alone: one time in twenty at most, in every way in which days can fall.</summary>
    [Theory]
    [InlineData(1, true, 12)]
    [InlineData(3, true, 6)]
    [InlineData(2, true, 3)]
    [InlineData(3, false, 6)]
    [InlineData(2, false, 20)]
    public void Equal_fins_cannot_be_told_apart(int days, bool together, int runsOfADay)
    {
        const int Rounds = 1000;
        Random random = new(20 + days + runsOfADay);
        int told = 0, outside = 0;
        for (int round = 0; round < Rounds; round++)
        {
            List<ComparedRun> a = [], b = [];
            for (int day = 0; day < days; day++)
            {
                double windA = 1.2 * Normal.Sample(random, 0, 1), windB = together ? windA : 1.2 * Normal.Sample(random, 0, 1);
                for (int run = 0; run < runsOfADay; run++)
                {
                    a.Add(Run(Normal.Sample(random, 14 + windA, 0.8), day));
                    b.Add(Run(Normal.Sample(random, 14 + windB, 1.1), together ? day : day + 100));
                }
            }

            FairComparison found = FairComparison.Of(a, b);
            told += found.Verdict is FairVerdict.FirstFaster or FairVerdict.SecondFaster ? 1 : 0;
            outside += found.Low > 0 || found.High < 0 ? 1 : 0;
        }

        // Three standard deviations of the count above one in twenty.
        double most = 0.05 * Rounds + 3 * Math.Sqrt(Rounds * 0.05 * 0.95);
        Assert.True(told <= most && outside <= most, $"told apart {told} of {Rounds} times, interval beside zero {outside} times");
    }

    [Fact]
    public void Fins_a_metre_a_second_apart_are_told_apart_with_enough_runs()
    {
        Random random = new(4);
        int told = 0;
        for (int round = 0; round < 200; round++)
            told += FairComparison.Of([.. Enumerable.Range(0, 20).Select(_ => Run(Normal.Sample(random, 14, 0.7)))], [.. Enumerable.Range(0, 20).Select(_ => Run(Normal.Sample(random, 13, 0.7)))]).Verdict == FairVerdict.FirstFaster ? 1 : 0;
        Assert.True(told > 190, $"{told} of 200");
    }

    private static ComparedRun Run(double speed, int day = 0) => new("outing", Day.AddDays(day), 5.8, 9, 11, speed, 0.1);

    private static IEnumerable<ComparedRun> Runs(int seed, int count, double mean, double deviation, int day = 0)
    {
        Random random = new(seed);
        return Enumerable.Range(0, count).Select(_ => Run(Normal.Sample(random, mean, deviation), day));
    }

    /// <summary>Four runs of one mean without spread.</summary>
    private static IEnumerable<ComparedRun> Exact(double mean, int day) => Enumerable.Range(0, 4).Select(_ => Run(mean, day));
}
