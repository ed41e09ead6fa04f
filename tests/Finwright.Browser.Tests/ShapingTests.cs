using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

public sealed class ShapingTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_number_typed_changes_the_fin_and_can_be_taken_back()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/design/Sandbar%20delta");
        ILocator span = page.Locator("#at---shape-outline-span_mm");
        string before = await span.InputValueAsync();
        await span.FillAsync("220");
        await span.PressAsync("Tab");
        await Assertions.Expect(page.Locator("#shape .say")).ToContainTextAsync("220 mm");
        await page.GetByRole(AriaRole.Button, new() { Name = "undo" }).ClickAsync();
        await Assertions.Expect(span).ToHaveValueAsync(before);
        visit.NothingWentWrong();
    }
}
