using AngleSharp.Dom;
using Bunit;
using Finwright.Assessment.Verdicts;
using Finwright.Page.Parts;
using Finwright.Papers;

namespace Finwright.Page.Tests.Parts;

public sealed class VerdictListTests
{
    [Fact]
    public void Verdicts_stand_worst_first_and_all_are_there()
    {
        using ShownFin shown = new();
        MadeFin.Publish(shown.Session);
        IRenderedComponent<VerdictList> list = shown.Show<VerdictList>();
        VerdictState[] states = [.. list.FindAll(".verdict .mark").Select(StateOf)];
        Assert.Equal(states.Order(), states);
        Assert.Equal(MadeFin.Sailing.Verdicts.Count + MadeFin.Sailing.StrengthVerdicts.Count, states.Length);
        // What holds is folded behind its count.
        Assert.All(list.FindAll(".verdict .mark-holds"), mark => Assert.NotNull(mark.Closest("details.holding")));
    }

    [Fact]
    public void A_chapter_shows_its_own_verdicts_and_no_others()
    {
        using ShownFin shown = new();
        MadeFin.Publish(shown.Session);
        IRenderedComponent<ChapterVerdicts> chapter = shown.Show<ChapterVerdicts>(p => p.Add(own => own.Area, VerdictArea.Strength));
        Assert.Equal(
            MadeFin.Sailing.StrengthVerdicts.Select(verdict => verdict.Code).Order(StringComparer.Ordinal),
            chapter.FindAll(".verdict").Select(line => line.GetAttribute("data-code")!).Order(StringComparer.Ordinal));
        Assert.Empty(shown.Show<ChapterVerdicts>(p => p.Add(own => own.Area, VerdictArea.Pour)).FindAll(".verdict"));
    }

    [Fact]
    public void A_verdict_of_before_the_change_and_a_quick_one_say_so()
    {
        using ShownFin shown = new();
        MadeFin.Publish(shown.Session, now => now with { SailingVersion = now.Version - 1 });
        IRenderedComponent<VerdictList> list = shown.Show<VerdictList>();
        Assert.All(list.FindAll(".verdict"), line => Assert.Contains("old", line.ClassList));
        Assert.Contains("before the last change", list.Markup, StringComparison.Ordinal);
        MadeFin.Publish(shown.Session, now => now with { SailingIsQuick = true });
        list.WaitForAssertion(() => Assert.All(list.FindAll(".verdict .numbers"), numbers => Assert.StartsWith("≈ ", numbers.TextContent, StringComparison.Ordinal)));
        Assert.DoesNotContain("before the last change", list.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_click_leads_to_the_field_that_is_changed_first()
    {
        using ShownFin shown = new();
        MadeFin.Publish(shown.Session);
        IRenderedComponent<VerdictList> list = shown.Show<VerdictList>();
        list.Find("[data-code=draught] button").Click();
        Assert.Equal("$.shape.outline.span_mm", shown.View.Place);
        JSRuntimeInvocation call = Assert.Single(shown.Browser.Invocations, invocation => invocation.Identifier == "finwright.focus");
        Assert.Equal("at---shape-outline-span_mm", call.Arguments[0]);
    }

    [Fact]
    public void A_German_reader_finds_no_English_sentence_in_a_verdict()
    {
        using ShownFin shown = new(PaperLanguage.German);
        MadeFin.Publish(shown.Session);
        IRenderedComponent<VerdictList> list = shown.Show<VerdictList>();
        foreach (Verdict verdict in MadeFin.Sailing.Verdicts.Concat(MadeFin.Sailing.StrengthVerdicts))
        {
            Assert.DoesNotContain(verdict.Found, list.Find("section").TextContent, StringComparison.Ordinal);
            Assert.DoesNotContain(verdict.Why, list.Find("section").TextContent, StringComparison.Ordinal);
        }

        Assert.Contains("Befunde", list.Find("h3").TextContent, StringComparison.Ordinal);
    }

    private static VerdictState StateOf(IElement mark) =>
        Enum.GetValues<VerdictState>().Single(state => mark.ClassList.Contains("mark-" + state.ToString().ToLowerInvariant()));
}
