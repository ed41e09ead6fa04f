using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

/// <summary>Every page, opened as its readers do: in the light, in the dark, on a phone.</summary>
public sealed class PagesTests(BrowserFixture browser)
{
    // By how much, and what sticks out. What is wide scrolls in a frame of its own; the page itself never moves sideways.
    private const string TooWide = """
        () => {
            const width = document.documentElement.clientWidth, over = document.documentElement.scrollWidth - width;
            const scrolls = node => node && node !== document.body && (getComputedStyle(node).overflowX !== 'visible' || scrolls(node.parentElement));
            const out = [...document.body.querySelectorAll('*')].filter(node => node.getBoundingClientRect().right > width + 1 && !scrolls(node.parentElement));
            return over > 0 ? `${over} pixels wider than the window: ${out.slice(0, 3).map(node => node.outerHTML.slice(0, 120)).join(' | ')}` : '';
        }
        """;

    // Rules of accessibility that a machine can check. No page has frames, so the page itself is all there is to look through.
    private const string Look = """
        async rules => {
            const found = await axe.run(document, rules ? { runOnly: { type: 'rule', values: rules.split(' ') } } : {});
            return found.violations
                .filter(own => own.impact === 'serious' || own.impact === 'critical')
                .map(own => `${own.id} (${own.impact}): ${own.help}: ${own.nodes.slice(0, 3).map(node => node.html).join(' | ')}`);
        }
        """;

    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    // All rules in the light; in the dark those of colour; on a phone those of what scrolls and is tapped; on a great screen only the width is another.
    [Theory]
    [InlineData(1440, 900, false, "")]
    [InlineData(1440, 900, true, "color-contrast", Traits = ["Pace", "long"])]
    [InlineData(360, 740, false, "scrollable-region-focusable target-size", Traits = ["Pace", "long"])]
    [InlineData(3840, 2160, false, null, Traits = ["Pace", "long"])]
    public async Task Each_opens_fits_shuts_nobody_out_and_asks_nobody_else(int width, int height, bool dark, string? rules)
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served, width, height, dark);
        List<string> wrong = [];
        foreach (string name in EveryPage.Paths.Keys)
        {
            IPage page = await EveryPage.Open(visit, name);
            await Assertions.Expect(page.Locator("h1").First).ToBeAttachedAsync();
            await Assertions.Expect(page).ToHaveTitleAsync(new Regex("Finwright", RegexOptions.None, TimeSpan.FromSeconds(1)));
            await Assertions.Expect(page.Locator("#blazor-error-ui")).ToBeHiddenAsync();
            await Assertions.Expect(page.Locator(".broken")).ToHaveCountAsync(0);
            string over = await page.EvaluateAsync<string>(TooWide);
            if (over.Length > 0)
                wrong.Add($"{name}: {over}");
            if (rules is null)
                continue;
            await page.EvaluateAsync(Axe);
            wrong.AddRange((await page.EvaluateAsync<string[]>(Look, rules)).Select(found => $"{name}: {found}"));
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        visit.NothingWentWrong();
    }
}
