using Finwright.Page.RunSheets;

namespace Finwright.Page.Tests.RunSheets;

public sealed class ReadingJudgementTests
{
    // By hand: from 293 to 313 K in an hour, 10 K either way at its end.
    private static readonly RunThermometer Blade = new("blade", "s5", 338, [new(0, 293, 293, 293), new(3600, 303, 313, 323)]);

    [Theory]
    [InlineData(303, 1800.0, ReadingState.Expected)]
    [InlineData(309.9, 1800.0, ReadingState.Expected)]
    [InlineData(310.1, 1800.0, ReadingState.Warm)]
    [InlineData(295.9, 1800.0, ReadingState.Cool)]
    [InlineData(333.1, 1800.0, ReadingState.Danger)]
    [InlineData(350, null, ReadingState.Danger)]
    [InlineData(303, null, ReadingState.NotKnown)]
    [InlineData(303, -5.0, ReadingState.NotKnown)]
    [InlineData(303, 7200.0, ReadingState.NotKnown)]
    public void A_reading_is_held_against_the_range_and_the_limit(double kelvin, double? seconds, ReadingState state) => Assert.Equal(state, ReadingJudgement.Of(Blade, kelvin, seconds));

    [Fact]
    public void Between_points_the_curve_is_straight() => Assert.Equal(new RunWarmth(900, 295.5, 298, 300.5), ReadingJudgement.At(Blade, 900));

    [Fact]
    public void The_script_of_the_page_judges_by_the_same_numbers()
    {
        string script = File.ReadAllText(Path.Combine(MadeFin.Root, "src", "Finwright.Page", "wwwroot", "js", "run.js"));
        Assert.Contains(FormattableString.Invariant($"const slack = {ReadingJudgement.Slack}, near = {ReadingJudgement.Near};"), script, StringComparison.Ordinal);
    }
}
