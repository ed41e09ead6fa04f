using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

[Trait("Pace", "long")]
public sealed class SceneTests(BrowserFixture browser)
{
    // Sections never seen before, print, pour and cure, on a machine that does other things as well.
    private const float Patient = 240_000;

    // Number of colours on the picture: one when it is blank.
    private const string Colours = """
        () => {
            const from = document.querySelector(".fin-view canvas"), small = document.createElement("canvas");
            [small.width, small.height] = [160, 100];
            const paper = small.getContext("2d");
            paper.drawImage(from, 0, 0, 160, 100);
            const data = paper.getImageData(0, 0, 160, 100).data, seen = new Set();
            for (let i = 0; i < data.length; i += 4)
                seen.add(data[i] << 24 | data[i + 1] << 16 | data[i + 2] << 8 | data[i + 3]);
            return seen.size;
        }
        """;

    [Fact]
    public async Task Every_surface_shows_the_fin_with_its_scale()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/design/Sandbar%20delta");
        foreach ((string surface, string name, bool hasScale) in new[] { ("plain", "plain", false), ("pressure", "pressure", true), ("stress", "skin stress", true), ("bent", "bent", true), ("parts", "parts on the bed", false), ("air", "trapped air", false), ("warmth", "warmth of the cure", true) })
        {
            await page.GetByRole(AriaRole.Radio, new() { Name = name, Exact = true }).CheckAsync();
            await Assertions.Expect(page.Locator("#fin-says")).Not.ToContainTextAsync("still being worked out", new() { Timeout = Patient });
            await Assertions.Expect(page.Locator(".fin-view .canvas")).ToHaveAttributeAsync("data-surface", surface, new() { Timeout = Patient });
            await Assertions.Expect(page.Locator(".fin-view .scale")).ToHaveCountAsync(hasScale ? 1 : 0, new() { Timeout = Patient });
            Assert.True(await page.EvaluateAsync<int>(Colours) > 20, $"The picture of {surface} is blank.");
            if (hasScale)
                await Assertions.Expect(page.Locator("#fin-says table tr").First).ToBeAttachedAsync();
        }

        visit.NothingWentWrong();
    }

    [Fact]
    public async Task The_fin_follows_the_hand_and_turns_with_the_keys()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/design/Sandbar%20delta");
        ILocator canvas = page.Locator(".fin-view .canvas");
        await Assertions.Expect(canvas).ToHaveAttributeAsync("data-version", "1", new() { Timeout = 60_000 });
        await page.Locator("input[type=range][aria-label^=Span], .row:has(#at---shape-outline-span_mm) input[type=range]").First.FillAsync("230");
        await Assertions.Expect(canvas).Not.ToHaveAttributeAsync("data-version", "1", new() { Timeout = 60_000 });
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
