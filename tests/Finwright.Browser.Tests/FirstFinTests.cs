using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Finwright.Browser.Tests;

/// <summary>What <c>docs/first-fin.md</c> tells a newcomer to do, step by step; its pictures are written anew when <c>FINWRIGHT_SCREENS</c> is 1.</summary>
public sealed class FirstFinTests(BrowserFixture browser)
{
    private const float Patience = 420_000;

    private static bool IsWanted => Environment.GetEnvironmentVariable("FINWRIGHT_SCREENS") == "1";

    [Fact]
    [Trait("Pace", "long")]
    public async Task The_first_fin_is_made_as_the_guide_says()
    {
        await using ServedPage served = await ServedPage.Empty(worksAhead: true);
        await using Visit visit = await browser.Visit(served, 1280, 820);
        IPage page = await visit.Go("/");
        await page.GetByRole(AriaRole.Link, new() { Name = "Start a fin" }).ClickAsync();
        await page.GetByRole(AriaRole.Radio, new() { Name = "raked" }).First.CheckAsync();
        foreach ((string box, string value) in new[] { ("#new-name", "First rake"), ("#new-span", "240"), ("#new-area", "230"), ("#new-rider", "84"), ("#new-sail", "6.2") })
        {
            await page.Locator(box).FillAsync(value);
            await page.Locator(box).PressAsync("Tab");
        }

        await Expect(page.Locator(".start form")).ToContainTextAsync("240 mm deep");
        await Picture(page, "start");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start", Exact = true }).ClickAsync();
        await Expect(page).ToHaveURLAsync(new Regex("/design/First%20rake", RegexOptions.None, TimeSpan.FromSeconds(1)));
        await Visit.IsLive(page);

        // The fin is too small to get going with.
        ILocator stall = page.Locator("aside .verdict[data-code=stall-reserve]").First;
        await Expect(stall).ToContainTextAsync("fails", new() { Timeout = Patience });
        await Expect(page.Locator("aside .verdicts .work")).ToHaveCountAsync(0, new() { Timeout = Patience });
        await Chapter(page, "water");
        await Picture(page, "fails");

        foreach ((string box, string value) in new[] { ("#at---shape-outline-span_mm", "250"), ("#at---shape-outline-area_cm2", "345") })
        {
            await page.Locator(box).FillAsync(value);
            await page.Locator(box).PressAsync("Tab");
        }

        await Expect(stall).Not.ToContainTextAsync("fails", new() { Timeout = Patience });
        await Expect(page.Locator("aside .verdicts .work")).ToHaveCountAsync(0, new() { Timeout = Patience });
        await Expect(page.Locator("aside .verdict").Filter(new() { HasText = "✕" })).ToHaveCountAsync(0);
        await Chapter(page, "shape");
        await Picture(page, "holds");
        await Chapter(page, "pour");
        await Expect(page.Locator("#pour .runs button.main")).ToBeEnabledAsync(new() { Timeout = Patience });
        await Picture(page, "pour");

        await page.GetByRole(AriaRole.Button, new() { Name = "keep as revision" }).ClickAsync();
        await page.GetByLabel("What was tried").FillAsync("large enough to get going");
        await page.GetByRole(AriaRole.Button, new() { Name = "keep it" }).ClickAsync();
        ILocator files = page.Locator("#files");
        await files.GetByRole(AriaRole.Button, new() { Name = "Make the files" }).ClickAsync();
        await Expect(files.GetByRole(AriaRole.Link, new() { Name = "Fetch it" })).ToBeVisibleAsync(new() { Timeout = Patience });
        visit.NothingWentWrong();
    }

    private static async Task Chapter(IPage page, string chapter)
    {
        await page.EvaluateAsync("chapter => document.querySelector(`.chapters [data-chapter=${chapter}]`).click()", chapter);
        // The fin beside the text turns to what the chapter is about.
        await Task.Delay(TimeSpan.FromSeconds(2), TestContext.Current.CancellationToken);
    }

    private static async Task Picture(IPage page, string step)
    {
        if (IsWanted)
            await page.ScreenshotAsync(new() { Path = Path.Combine(ServedPage.Sources(), "docs", "pictures", $"first-fin-{step}.png") });
    }
}
