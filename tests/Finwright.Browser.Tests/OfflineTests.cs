using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

[Trait("Pace", "long")]
public sealed class OfflineTests(BrowserFixture browser)
{
    // By how much, and what sticks out.
    private const string TooWide = """
        () => {
            const width = document.documentElement.clientWidth, over = document.documentElement.scrollWidth - width;
            const scrolls = node => node && node !== document.body && (getComputedStyle(node).overflowX !== 'visible' || scrolls(node.parentElement));
            const out = [...document.body.querySelectorAll('*')].filter(node => node.getBoundingClientRect().right > width + 1 && !scrolls(node.parentElement));
            return over > 0 ? `${over} pixels wider than a phone: ${out.slice(0, 3).map(node => node.outerHTML.slice(0, 120)).join(' | ')}` : '';
        }
        """;

    [Fact]
    public async Task Every_page_opens_without_a_complaint_and_asks_nobody_else()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        foreach (string name in EveryPage.Paths.Keys)
        {
            IPage page = await EveryPage.Open(visit, name);
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
        List<string> wide = [];
        foreach (string name in EveryPage.Paths.Keys)
        {
            IPage page = await EveryPage.Open(visit, name);
            // What is wide scrolls in a frame of its own; the page itself never moves sideways.
            string over = await page.EvaluateAsync<string>(TooWide);
            if (over.Length > 0)
                wide.Add($"{name}: {over}");
        }

        Assert.Empty(wide);
        visit.NothingWentWrong();
    }
}
