using Finwright.Workshop.Comparing;

namespace Finwright.Workshop.Tests.Comparing;

public sealed class ResultDifferenceTests
{
    private static readonly ResultLine Area = new("shape.area", ResultGroup.Shape, "area", 285.04, null, "cm²", null, null, 1);
    private static readonly ResultLine Plastic = new("print.plastic", ResultGroup.Print, "plastic", 200, null, "g", 190, 210, 0);
    private static readonly ResultLine Stall = new("verdict.stall-reserve", ResultGroup.Verdicts, "stall", 0.62, "holds", "", null, null, 2);
    private static readonly ResultLine Tip = new("verdict.tip", ResultGroup.Verdicts, "tip", 0.30, "holds", "", null, null, 2);

    [Fact]
    public void Of_passes_over_what_the_shown_decimals_do_not_tell_apart()
    {
        Assert.Empty(ResultDifference.Of(Results(Area), Results(Area with { Value = 285.01 })));
        ResultChange change = Assert.Single(ResultDifference.Of(Results(Area), Results(Area with { Value = 285.06 })));
        Assert.Equal(0.1, change.Change!.Value, 1e-9);
    }

    [Fact]
    public void Of_puts_verdicts_that_turned_first_then_the_order_of_the_job()
    {
        IReadOnlyList<ResultChange> changes = ResultDifference.Of(
            Results(Area, Plastic, Stall, Tip), Results(Area with { Value = 262.2 }, Plastic with { Value = 180 }, Stall with { Value = 0.85, Word = "fails" }, Tip with { Value = 0.35 }));
        Assert.Equal(["verdict.stall-reserve", "shape.area", "print.plastic", "verdict.tip"], changes.Select(change => change.Key), StringComparer.Ordinal);
        Assert.Equal([true, false, false, false], changes.Select(change => change.TurnsVerdict));
        Assert.Equal(-8, changes[1].Percent!.Value, 0.01);
        Assert.Equal(("holds, 0.62", "fails, 0.85"), (changes[0].Old!.Shown, changes[0].New!.Shown));
    }

    [Fact]
    public void Of_compares_only_groups_that_both_have()
    {
        Assert.Empty(ResultDifference.Of(Results(Area, Plastic), Results(Area)));
        ResultLine overhang = Plastic with { Key = "print.overhang", Name = "overhang" };
        ResultChange gone = Assert.Single(ResultDifference.Of(Results(Plastic, overhang), Results(Plastic))), come = Assert.Single(ResultDifference.Of(Results(Plastic), Results(Plastic, overhang)));
        Assert.Equal((overhang, null), (gone.Old, gone.New));
        Assert.Equal((null, overhang), (come.Old, come.New));
        Assert.Null(gone.Change);
    }

    [Theory]
    [InlineData("g", 10.0)]
    [InlineData("%", null)]
    [InlineData("% of the pores", null)]
    [InlineData("°C", null)]
    public void Of_shares_and_temperatures_gives_no_per_cent(string unit, double? percent)
    {
        ResultLine line = Plastic with { Unit = unit };
        Assert.Equal(percent, Assert.Single(ResultDifference.Of(Results(line), Results(line with { Value = 220 }))).Percent);
    }

    [Theory]
    [InlineData("left", "right", true)]
    [InlineData("left", "left", false)]
    public void Of_words_differ_by_their_letters(string one, string other, bool differs)
    {
        ResultLine held = new("pour.blade.held", ResultGroup.Pour, "held", null, one, "", null, null, 0);
        Assert.Equal(differs ? 1 : 0, ResultDifference.Of(Results(held), Results(held with { Word = other })).Count);
    }

    internal static FinResults Results(params ResultLine[] lines) => new() { Name = "Sample", DesignSha256 = "", Groups = [.. lines.Select(line => line.Group).Distinct()], Lines = lines };
}
