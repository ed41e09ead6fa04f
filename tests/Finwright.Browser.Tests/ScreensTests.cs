using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

/// <summary>Pictures of every page, to be looked at: written to <c>artifacts/screens</c> when <c>FINWRIGHT_SCREENS</c> is 1.</summary>
public sealed class ScreensTests(BrowserFixture browser)
{
    private static bool IsWanted => Environment.GetEnvironmentVariable("FINWRIGHT_SCREENS") == "1";

    [Theory]
    [Trait("Pace", "long")]
    [InlineData(1440, 900, false)]
    [InlineData(1440, 900, true)]
    [InlineData(390, 844, false)]
    [InlineData(390, 844, true)]
    public async Task Every_page_is_pictured(int width, int height, bool dark)
    {
        // Without the wish one page in one size shows that it still works.
        if (!IsWanted && (dark || width < 1000))
            return;
        await using ServedPage served = await ServedPage.Season(worksAhead: true);
        await using Visit visit = await browser.Visit(served, width, height, dark);
        string folder = Path.Combine(ServedPage.Sources(), "artifacts", "screens");
        Directory.CreateDirectory(folder);
        foreach (string name in IsWanted ? EveryPage.Paths.Keys : EveryPage.Paths.Keys.Take(1))
        {
            IPage page = await EveryPage.Open(visit, name);
            if (IsWanted)
                await Settled(page, name);
            string file = Path.Combine(folder, $"{name}-{(width < 1000 ? "phone" : "wide")}-{(dark ? "dark" : "light")}.png");
            await page.ScreenshotAsync(new() { Path = file, FullPage = name != "sheet" });
            Assert.True(new FileInfo(file).Length > 5000, file);
            if (name == "sheet" && IsWanted)
                await Chapters(page, file);
        }

        visit.NothingWentWrong();
    }

    // Everything is to be seen with all that is known of it.
    private static async Task Settled(IPage page, string name)
    {
        if (name == "sheet")
            await Assertions.Expect(page.Locator("#pour .runs button.main")).ToBeEnabledAsync(new() { Timeout = 300_000 });
        await Assertions.Expect(page.Locator("main progress")).ToHaveCountAsync(0, new() { Timeout = 300_000 });
    }

    private static async Task Chapters(IPage page, string file)
    {
        foreach (string chapter in new[] { "brief", "shape", "water", "strength", "print", "pour", "prove", "sailed" })
        {
            await page.EvaluateAsync("chapter => document.querySelector(`.chapters [data-chapter=${chapter}]`).click()", chapter);
            await Task.Delay(TimeSpan.FromSeconds(1), TestContext.Current.CancellationToken);
            await page.ScreenshotAsync(new() { Path = file.Replace("sheet-", $"sheet-{chapter}-", StringComparison.Ordinal) });
        }
    }
}
