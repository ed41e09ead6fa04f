using Finwright.Making.Quantities;

namespace Finwright.Making.Tests.Quantities;

public sealed class MakingScheduleTests
{
    private const double Hour = 3600, Day = 24 * Hour;

    private static readonly MakingWork Work = new() { Plates = [10 * Hour, 4 * Hour], Gauge = 0.5 * Hour, Stops = 1, BladeCure = 20 * Hour, HasBase = true, BaseCure = 30 * Hour, Cups = 3, IsBathed = true, HasStrip = true, Bonds = 2 };

    [Fact]
    public void Of_steps_follow_one_another_without_gap_or_overlap()
    {
        MakingSchedule schedule = MakingSchedule.Of(Work);
        double now = 0;
        foreach (ScheduleStep step in schedule.Steps)
        {
            Assert.Equal(now, step.Start, 6);
            Assert.True(step.HandsOn <= step.Elapsed, step.Name);
            now += step.Elapsed;
        }

        Assert.Equal(now, schedule.Elapsed, 6);
        Assert.Equal(schedule.Steps.Sum(step => step.HandsOn), schedule.HandsOn, 6);
    }

    [Fact]
    public void Of_a_fin_is_not_loaded_before_the_resin_has_its_strength()
    {
        MakingSchedule schedule = MakingSchedule.Of(Work);
        ScheduleStep lastPour = schedule.Steps.Last(step => step.Name.Contains("pour", StringComparison.Ordinal));
        ScheduleStep bench = schedule.Steps.Single(step => step.Name.Contains("bench", StringComparison.Ordinal));
        // Five to seven days for the full cure (common practice, no source).
        Assert.InRange(bench.Start - (lastPour.Start + lastPour.Elapsed), 5 * Day, 7 * Day);
    }

    [Fact]
    public void Of_every_step_with_resin_dust_or_solvent_carries_its_caution()
    {
        foreach (ScheduleStep step in MakingSchedule.Of(Work).Steps)
        {
            if (step.Name.Contains("pour", StringComparison.Ordinal))
                AssertCarries(step, Cautions.Skin, Cautions.Runaway, Cautions.SealedCup);
            if (step.Name.StartsWith("sand", StringComparison.Ordinal))
                AssertCarries(step, Cautions.Dust);
            if (step.Name.Contains("strip", StringComparison.Ordinal))
                AssertCarries(step, Cautions.Solvents);
        }
    }

    [Fact]
    public void Of_a_cure_that_is_not_known_says_so()
    {
        MakingSchedule schedule = MakingSchedule.Of(Work with { BladeCure = null });
        Assert.Contains("not known", schedule.Steps.Single(step => step.Name == "let the blade cure").Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_a_fin_without_base_strip_and_gauge_has_no_steps_for_them()
    {
        MakingSchedule schedule = MakingSchedule.Of(new() { Plates = [Hour], BladeCure = Hour });
        Assert.DoesNotContain(schedule.Steps, step => step.Name.Contains("strip", StringComparison.Ordinal) || step.Name.Contains("gauge", StringComparison.Ordinal) || step.Name.Contains("base and pour", StringComparison.Ordinal));
    }

    private static void AssertCarries(ScheduleStep step, params string[] cautions)
    {
        foreach (string caution in cautions)
            Assert.True(step.Cautions.Contains(caution, StringComparer.Ordinal), $"{step.Name} lacks: {caution}");
    }
}
