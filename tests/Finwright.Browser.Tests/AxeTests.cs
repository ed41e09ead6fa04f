using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

/// <summary>Every page held against the rules of accessibility that a machine can check.</summary>
[Trait("Pace", "long")]
public sealed class AxeTests(BrowserFixture browser)
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task No_page_shuts_anybody_out(bool dark)
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served, dark: dark);
        List<string> found = [];
        foreach (string name in EveryPage.Paths.Keys)
        {
            IPage page = await EveryPage.Open(visit, name);
            AxeResult result = await page.RunAxe();
            found.AddRange(result.Violations
                .Where(own => own.Impact is "serious" or "critical")
                .Select(own => $"{name}: {own.Id} ({own.Impact}): {own.Help}: {string.Join(" | ", own.Nodes.Take(3).Select(node => node.Html))}"));
        }

        Assert.Empty(found);
        visit.NothingWentWrong();
    }
}
