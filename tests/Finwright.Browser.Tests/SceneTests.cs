using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

public sealed class SceneTests(BrowserFixture browser)
{
    [Fact]
    public async Task The_fin_follows_the_hand_and_turns_with_the_keys()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/design/Sandbar%20delta");
        ILocator canvas = page.Locator(".fin-view .canvas");
        await Assertions.Expect(canvas).ToHaveAttributeAsync("data-version", "1");
        await page.Locator("input[type=range][aria-label^=Span], .row:has(#at---shape-outline-span_mm) input[type=range]").First.FillAsync("230");
        await Assertions.Expect(canvas).Not.ToHaveAttributeAsync("data-version", "1");
        // What is measured is there to be read: the hand moved, then the scene was asked for, came, and was drawn.
        Assert.True(await page.EvaluateAsync<bool>("() => { const t = finwright.scene.timings.at(-1); return t.input > 0 && t.input <= t.asked && t.asked <= t.fetched && t.fetched <= t.put && t.put <= t.drawn; }"));

        string frames = (await canvas.GetAttributeAsync("data-frames"))!;
        await canvas.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(canvas).Not.ToHaveAttributeAsync("data-frames", frames);
        await page.GetByRole(AriaRole.Button, new() { Name = "large", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".fin-view[data-large]")).ToHaveCountAsync(1);
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(page.Locator(".fin-view[data-large]")).ToHaveCountAsync(0);

        // On a phone the fin is a strip that is pulled down.
        await page.SetViewportSizeAsync(390, 844);
        await Assertions.Expect(page.Locator(".fin-view .surfaces")).ToBeHiddenAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "pull the fin down" }).ClickAsync();
        await Assertions.Expect(page.Locator(".fin-view .surfaces")).ToBeVisibleAsync();
        visit.NothingWentWrong();
    }
}
