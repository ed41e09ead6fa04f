using Finwright.Making.Quantities;
using Finwright.Page.RunSheets;
using Finwright.Page.Tests.Making;
using Finwright.Page.Words;
using Finwright.Papers;
using Finwright.Workshop.RunSheets;

namespace Finwright.Page.Tests.RunSheets;

public sealed class RunLayoutTests
{
    private static readonly RunPlan Print = RunLayout.Of(RunKind.Print, SmallFin.Made, "test", MadeFin.Reader())!, Pour = RunLayout.Of(RunKind.Pour, SmallFin.Made, "test", MadeFin.Reader())!;

    [Fact]
    public void Every_stop_is_a_step_that_is_due_in_the_order_of_its_height()
    {
        int stops = SmallFin.Made.Printed!.Plates.Sum(plate => plate.Stops.Count);
        Assert.True(stops > 0);
        RunStep[] due = [.. Print.Steps().Where(step => step.Due is not null)];
        Assert.Equal(stops, due.Length);
        foreach (IGrouping<string, RunStep> plate in due.GroupBy(step => step.Due!.Step, StringComparer.Ordinal))
        {
            RunStep print = Print.Steps().Single(step => step.Id == plate.Key);
            double last = 0;
            foreach (RunDue own in plate.Select(step => step.Due!))
            {
                Assert.True(own.Seconds > last && own.Early < own.Seconds && own.Seconds < own.Late && own.Seconds < print.Timer!.Seconds);
                last = own.Seconds;
            }
        }
    }

    [Fact]
    public void Every_cup_of_the_plan_is_weighed_and_timed()
    {
        RunStep[] cups = [.. Pour.Steps().Where(step => step.Timer is { Warn: not null })];
        Assert.Equal(SmallFin.Made.Poured!.Parts.Sum(part => part.Batches.Batches.Count), cups.Length);
        Assert.All(cups, cup =>
        {
            Assert.Equal(3, cup.Facts.Count);
            Assert.Equal(0.5 * cup.Timer!.Seconds!.Value, cup.Timer.Warn!.Value, 9);
        });
    }

    [Fact]
    public void Every_part_that_cures_has_a_thermometer_with_its_curve_and_limit()
    {
        RunThermometer[] all = [.. Pour.Steps().Select(step => step.Thermometer).OfType<RunThermometer>()];
        Assert.Equal(SmallFin.Made.Cured!.Parts.Count, all.Length);
        Assert.All(all, own =>
        {
            Assert.Equal(SmallFin.Made.Cured.Softening, own.Limit);
            Assert.True(own.Curve.Count > 50);
            Assert.All(own.Curve, point => Assert.True(point.Low <= point.Expected && point.Expected <= point.High));
            Assert.Contains(Pour.Steps(), step => step.Id == own.Step && step.Timer is not null);
        });
    }

    [Fact]
    public void Cautions_stand_where_they_are_needed()
    {
        Reader reader = MadeFin.Reader();
        foreach (string caution in Cautions.Pour)
            Assert.Contains(Pour.Steps(), step => step.Cautions.Contains(reader.Tongue.Words.Verdicts.Caution(caution), StringComparer.Ordinal));
        Assert.All(Print.Steps().Where(step => step.Due is not null), step => Assert.NotEmpty(step.Cautions));
        Assert.NotEmpty(Pour.Danger!.Lines);
    }

    [Fact]
    public void Steps_have_names_of_their_own_that_entries_may_use()
    {
        foreach (RunPlan plan in (RunPlan[])[Print, Pour])
        {
            string[] ids = [.. plan.Steps().Select(step => step.Id)];
            Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
            Assert.All(ids, id => Assert.True(RunEntries.Allows(plan, $"{id}:tick", RunEntries.Ticked)));
        }
    }

    [Fact]
    public void A_plan_comes_back_as_it_was_kept() => Assert.Equal(Pour.ToJson(), RunPlan.Of(Pour.ToJson()).ToJson());

    [Fact]
    public void The_same_steps_are_told_in_german()
    {
        RunPlan german = RunLayout.Of(RunKind.Pour, SmallFin.Made, "test", MadeFin.Reader(PaperLanguage.German))!;
        Assert.Equal("de", german.Language);
        Assert.Equal(Pour.Steps().Select(step => step.Id), german.Steps().Select(step => step.Id));
        Assert.Empty(Pour.Steps().Select(step => step.Text).Intersect(german.Steps().Select(step => step.Text), StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("s1:tick", "yes", true)]
    [InlineData("s1:tick", "", true)]
    [InlineData("s1:tick", "<script>", false)]
    [InlineData("s999:tick", "yes", false)]
    [InlineData("../s1:tick", "yes", false)]
    [InlineData("s1:timer", "2027-03-01T09:00:00.000Z", false)]
    [InlineData("s1:note", "any text, even <b>this</b>", true)]
    [InlineData("reading:0123abcd", """{"part":"nobody","kelvin":300,"at":"2027-03-01T09:00:00Z"}""", false)]
    [InlineData("reading:zz", "", false)]
    [InlineData("reading:0123abcd", "", true)]
    [InlineData("other", "x", false)]
    public void Only_what_belongs_to_a_step_is_entered(string key, string value, bool isAllowed) => Assert.Equal(isAllowed, RunEntries.Allows(Pour, key, value));
}
