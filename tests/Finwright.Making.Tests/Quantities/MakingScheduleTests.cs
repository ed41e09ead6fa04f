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
    public void Of_a_small_fin_takes_the_time_summed_by_hand()
    {
        MakingSchedule schedule = MakingSchedule.Of(new() { Plates = [Hour], BladeCure = Hour });
        // Print 1 h, cool 0.75, try 1, seal 8, pour 0.5 with a cup of 0.2: the last resin after 11.45 h. Sanding a day later, 3.75 h with the fitting; the bench six days after the resin, 1 h.
        Assert.Equal(11.45 * Hour, Start("let the blade cure"), 1e-6);
        Assert.Equal((11.45 + 24) * Hour, Start("sand"), 1e-6);
        Assert.Equal(11.45 * Hour + 6 * Day, Start("hang the weight"), 1e-6);
        Assert.Equal(12.45 * Hour + 6 * Day, schedule.Elapsed, 1e-6);
        // In minutes: 10 + 5 + 30 + 45 + 42 + 10 + 180 + 45 + 60.
        Assert.Equal(427 * 60, schedule.HandsOn, 1e-6);

        double Start(string name) => schedule.Steps.Single(step => step.Name.StartsWith(name, StringComparison.Ordinal)).Start;
    }

    [Fact]
    public void Of_more_work_takes_the_hands_that_it_needs()
    {
        MakingSchedule schedule = MakingSchedule.Of(Work with { BladePours = 2, BladePourSpan = 6 * Hour });
        // Ten minutes a plate and five a pause, which are on the first; five a bond beside half an hour; twelve a cup beside half an hour.
        Assert.Equal((10 * Hour, 15 * 60.0), Of("print plate 1 of 2"));
        Assert.Equal((4 * Hour, 10 * 60.0), Of("print plate 2 of 2"));
        Assert.Equal((Hour + 10 * 60, 40 * 60.0), Of("try nuts"));
        Assert.Equal((6.5 * Hour + 36 * 60, 66 * 60.0), Of("pour the blade, 2 pours"));
        Assert.Equal((0.5 * Hour, 5 * 60.0), Of("print the gauge"));
        Assert.Equal((15 * 60.0, 15 * 60.0), Of("try the gauge"));
        Assert.Equal((25 * 60.0, 25 * 60.0), Of("turn to the base"));
        Assert.Equal((12 * Hour, 40 * 60.0), Of("bond the strip"));
        Assert.Equal((20 * Hour, 10 * 60.0), Of("let the blade cure"));
        Assert.Equal((30 * Hour, 10 * 60.0), Of("let the base cure"));
        Assert.Equal(24 * Hour, MakingSchedule.Of(Work with { BladeCure = null }).Steps.Single(step => step.Name == "let the blade cure").Elapsed);
        Assert.StartsWith("Until it can be handled", Step("let the blade cure").Reason, StringComparison.Ordinal);
        Assert.Contains(MakingSchedule.Of(Work with { Plates = [Hour] }).Steps, step => step.Name == "print");
        Assert.Contains(MakingSchedule.Of(Work).Steps, step => step.Name == "pour the blade");
        Assert.StartsWith("With 1 pause:", Step("print plate 1").Reason, StringComparison.Ordinal);
        Assert.StartsWith("Look at", Step("print plate 2").Reason, StringComparison.Ordinal);
        // After 30 h in the bath the base is hard for sanding already, after the strip even more.
        Assert.DoesNotContain(schedule.Steps, step => step.Name.StartsWith("let the resin harden", StringComparison.Ordinal));
        Assert.Contains(Cautions.Bath, Step("pour the blade").Cautions);
        Assert.DoesNotContain(Cautions.Bath, MakingSchedule.Of(Work with { IsBathed = false }).Steps.SelectMany(step => step.Cautions));

        ScheduleStep Step(string name) => schedule.Steps.Single(step => step.Name.StartsWith(name, StringComparison.Ordinal));
        (double, double) Of(string name) => (Math.Round(Step(name).Elapsed, 6), Math.Round(Step(name).HandsOn, 6));
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
