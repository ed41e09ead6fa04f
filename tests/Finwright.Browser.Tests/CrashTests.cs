using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

public sealed class CrashTests(BrowserFixture browser)
{
    private const string Sheet = "/design/Fairway%20upright", Span = "#at---shape-outline-span_mm", Chord = "#at---shape-outline-root_chord_mm";

    [Fact]
    public async Task Killed_in_the_middle_of_work_it_comes_back_where_it_was_with_nothing_lost()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go(Sheet);
        string[] kept = await Change(page, "410", "125");
        await page.Locator("#print").ScrollIntoViewIfNeededAsync();
        visit.MayLoseServer = true;
        await served.Kill();
        await Assertions.Expect(page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await served.Start();
        await Assertions.Expect(page.Locator("#components-reconnect-modal")).ToBeHiddenAsync();
        await Visit.IsLive(page);
        await Assertions.Expect(page.Locator(Span)).ToHaveValueAsync("410");
        await Assertions.Expect(page.Locator(Chord)).ToHaveValueAsync("125");
        // What was done before the crash can still be taken back, step by step.
        foreach ((string box, string before) in new[] { (Chord, kept[1]), (Span, kept[0]) })
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "undo", Exact = true }).ClickAsync();
            await Assertions.Expect(page.Locator(box)).ToHaveValueAsync(before);
        }

        visit.MayLoseServer = false;
        visit.NothingWentWrong();
    }

    [Fact]
    public async Task A_browser_that_is_closed_loses_nothing()
    {
        await using ServedPage served = await ServedPage.Season();
        await using (Visit visit = await browser.Visit(served))
            await Change(await visit.Go(Sheet), "405", "122");
        // Another browser of the same person, let in by a second start on the same port.
        await using Visit again = await browser.Visit(served, entry: await served.SecondEntry());
        IPage page = await again.Go(Sheet);
        await Assertions.Expect(page.Locator(Span)).ToHaveValueAsync("405");
        await Assertions.Expect(page.Locator(Chord)).ToHaveValueAsync("122");
        again.NothingWentWrong();
    }

    [Fact]
    public async Task Two_tabs_show_the_same_design_and_neither_overwrites_the_other()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage first = await visit.Go(Sheet), second = await visit.OtherTab(Sheet);
        await first.Locator(Span).FillAsync("402");
        await first.Locator(Span).PressAsync("Tab");
        await Assertions.Expect(second.Locator(Span)).ToHaveValueAsync("402");
        await second.Locator(Chord).FillAsync("123");
        await second.Locator(Chord).PressAsync("Tab");
        await Assertions.Expect(first.Locator(Chord)).ToHaveValueAsync("123");
        await Assertions.Expect(first.Locator(Span)).ToHaveValueAsync("402");
        visit.NothingWentWrong();
    }

    [Fact]
    public async Task The_sheet_is_used_with_the_keyboard_alone()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go(Sheet);
        string before = await page.Locator(Span).InputValueAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "To the content" }).PressAsync("Enter");
        // From the content on, every stop can be seen; the field is among them.
        bool found = false;
        for (int stop = 0; stop < 100 && !found; stop++)
        {
            await page.Keyboard.PressAsync("Tab");
            string where = await page.EvaluateAsync<string>("() => { const at = document.activeElement; const seen = at.getBoundingClientRect(); return seen.width * seen.height > 0 || at === document.body ? '#' + at.id : 'unseen ' + at.outerHTML; }");
            Assert.DoesNotContain("unseen", where, StringComparison.Ordinal);
            found = where == Span;
        }

        Assert.True(found, "The span is not reached by the keyboard.");
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.TypeAsync("407");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(page.Locator("#shape .say")).ToContainTextAsync("407 mm");
        await page.Keyboard.PressAsync("Control+Z");
        await Assertions.Expect(page.Locator(Span)).ToHaveValueAsync(before);
        visit.NothingWentWrong();
    }

    /// <summary>Types a span and a root chord; gives what stood there before.</summary>
    private static async Task<string[]> Change(IPage page, string span, string chord)
    {
        string[] before = [await page.Locator(Span).InputValueAsync(), await page.Locator(Chord).InputValueAsync()];
        ILocator undo = page.GetByRole(AriaRole.Button, new() { Name = "undo", Exact = true });
        foreach ((string box, string value) in new[] { (Span, span), (Chord, chord) })
        {
            string last = await undo.GetAttributeAsync("title") ?? "";
            await page.Locator(box).FillAsync(value);
            await page.Locator(box).PressAsync("Tab");
            // The step is there to be taken back: so it is kept.
            await Assertions.Expect(undo).ToBeEnabledAsync();
            await Assertions.Expect(undo).Not.ToHaveAttributeAsync("title", last);
        }

        await Assertions.Expect(page.Locator(Chord)).ToHaveValueAsync(chord);
        await Assertions.Expect(page.Locator("header [role=status]").First).ToContainTextAsync("changed");
        return before;
    }
}
