using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

public sealed class OfflineTests(BrowserFixture browser)
{
    [Fact]
    public async Task Every_page_opens_without_a_complaint_and_asks_nobody_else()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        foreach ((string name, string path) in EveryPage.Paths)
        {
            // The browser notes a page that is not there as an error of its own.
            visit.MayLoseServer = name == "not-there";
            IPage page = await visit.Go(path);
            await Assertions.Expect(page.Locator("h1").First).ToBeAttachedAsync();
            await Assertions.Expect(page.Locator("#blazor-error-ui")).ToBeHiddenAsync();
            await Assertions.Expect(page.Locator(".broken")).ToHaveCountAsync(0);
            await Assertions.Expect(page).ToHaveTitleAsync(new Regex("Finwright", RegexOptions.None, TimeSpan.FromSeconds(1)));
        }

        visit.NothingWentWrong();
    }

    [Fact]
    public async Task On_a_phone_nothing_is_wider_than_the_screen()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served, 360, 740);
        foreach ((string name, string path) in EveryPage.Paths)
        {
            visit.MayLoseServer = name == "not-there";
            IPage page = await visit.Go(path);
            // What is wide scrolls in a frame of its own; the page itself never moves sideways.
            int over = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
            Assert.True(over <= 0, $"{name} is {over} pixels wider than a phone.");
        }

        visit.NothingWentWrong();
    }
}
