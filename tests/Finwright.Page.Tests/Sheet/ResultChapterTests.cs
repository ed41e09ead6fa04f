using Bunit;
using Finwright.Assessment.Afloat;
using Finwright.Assessment.Loaded;
using Finwright.Page.Sheet;
using Finwright.Papers;
using Finwright.Water.Sailing;

namespace Finwright.Page.Tests.Sheet;

public sealed class ResultChapterTests
{
    private static readonly CaseAfloat Cruise = MadeFin.Sailing.Afloat![LoadCaseKind.Cruise]!;

    [Fact]
    public void Water_says_its_sentence_with_the_numbers_of_the_answer()
    {
        using ShownFin shown = new();
        MadeFin.Publish(shown.Session);
        IRenderedComponent<WaterChapter> chapter = shown.Show<WaterChapter>();
        string[] numbers = [.. chapter.FindAll(".say .told").Select(told => told.FirstChild!.TextContent)];
        Assert.Contains(FormattableString.Invariant($"{Cruise.Load.SideForce:0} N"), numbers);
        Assert.Contains(FormattableString.Invariant($"{double.RadiansToDegrees(Cruise.UnderHull.Result.Flow.Leeway):0.0}°"), numbers);
        Assert.Contains(FormattableString.Invariant($"{Cruise.UnderHull.Result.Drag.Total:0} N"), numbers);
        Assert.Equal(7, chapter.FindAll(".plot").Count);
        Assert.Equal(2 * MadeFin.Sailing.Afloat!.Cases.Count, chapter.FindAll("table.cases tbody tr").Count);
    }

    [Fact]
    public void Strength_says_its_sentence_and_shows_its_cases_and_torques()
    {
        using ShownFin shown = new();
        MadeFin.Publish(shown.Session);
        IRenderedComponent<StrengthChapter> chapter = shown.Show<StrengthChapter>();
        CaseLoaded cruise = MadeFin.Sailing.Loaded![LoadCaseKind.Cruise]!;
        string[] numbers = [.. chapter.FindAll(".say .told").Select(told => told.FirstChild!.TextContent)];
        Assert.Contains(FormattableString.Invariant($"{1e3 * Math.Abs(cruise.Tip.MidChord):0.0} mm"), numbers);
        Assert.Equal(4, chapter.FindAll(".plot").Count);
        Assert.Equal(MadeFin.Sailing.Loaded.Cases.Count, chapter.FindAll("table.cases tbody tr").Count);
        Assert.NotEmpty(MadeFin.Sailing.Loaded.Torques);
        Assert.Contains("burst cannot be mended", chapter.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_German_reader_in_inches_reads_German_and_inches()
    {
        using ShownFin shown = new(PaperLanguage.German, PaperUnits.Inch);
        MadeFin.Publish(shown.Session);
        IRenderedComponent<WaterChapter> water = shown.Show<WaterChapter>();
        Assert.Contains("Abdrift", water.Find(".say").TextContent, StringComparison.Ordinal);
        Assert.Contains("lbf", water.Find(".say").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", water.Find(".say").TextContent + water.Find("table.cases").TextContent, StringComparison.Ordinal);
        IRenderedComponent<StrengthChapter> strength = shown.Show<StrengthChapter>();
        Assert.Contains(" in", strength.Find(".say").TextContent, StringComparison.Ordinal);
        Assert.Contains("lbf·in", strength.Find("table.cases").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_of_before_the_change_are_pale_and_quick_ones_say_about()
    {
        using ShownFin shown = new();
        MadeFin.Publish(shown.Session, now => now with { SailingVersion = now.Version - 1 });
        IRenderedComponent<WaterChapter> chapter = shown.Show<WaterChapter>();
        Assert.Contains("Before the last change", chapter.Find("[role=status]").TextContent, StringComparison.Ordinal);
        Assert.All(chapter.FindAll(".plot"), plot => Assert.Contains("old", plot.ClassList));
        MadeFin.Publish(shown.Session, now => now with { SailingIsQuick = true });
        chapter.WaitForAssertion(() => Assert.All(chapter.FindAll(".say .told"), told => Assert.StartsWith("≈ ", told.TextContent, StringComparison.Ordinal)));
    }

    [Fact]
    public void Nothing_is_claimed_before_anything_was_worked_out()
    {
        using ShownFin shown = new();
        shown.Session.Stop();
        IRenderedComponent<WaterChapter> chapter = shown.Show<WaterChapter>();
        Assert.Empty(chapter.FindAll(".plot, .told, table"));
        Assert.NotEmpty(chapter.Find("[role=status]").TextContent.Trim());
    }
}
