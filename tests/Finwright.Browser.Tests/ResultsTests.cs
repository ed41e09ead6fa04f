using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

public sealed class ResultsTests(BrowserFixture browser)
{
    // The sections of a fin that was never solved before take half a minute on a busy machine.
    private const float Worked = 180_000;

    [Fact]
    public async Task A_plot_is_read_off_with_keys_and_a_verdict_leads_to_its_field()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/design/Fairway%20upright");
        ILocator plot = page.Locator("#water .plot").First;
        await Assertions.Expect(plot.Locator("canvas")).ToBeVisibleAsync(new() { Timeout = Worked });

        // Keys: the last place of the plot reads as the last row of its table.
        await plot.Locator(".canvas").FocusAsync();
        await page.Keyboard.PressAsync("End");
        ILocator readout = plot.Locator(".readout");
        await Assertions.Expect(readout).ToContainTextAsync("under this board");
        await plot.Locator("summary").ClickAsync();
        await plot.GetByRole(AriaRole.Button, new() { Name = "show the values" }).ClickAsync();
        ILocator last = plot.Locator("tbody tr").Last;
        await Assertions.Expect(last).ToBeVisibleAsync();
        int column = await plot.Locator("thead th").EvaluateAllAsync<int>("heads => heads.findIndex(head => head.textContent === 'under this board')");
        string leeway = (await last.Locator("th").TextContentAsync())!, force = (await last.Locator("td").Nth(column - 1).TextContentAsync())!;
        await Assertions.Expect(readout).ToContainTextAsync($"leeway {leeway}°");
        await Assertions.Expect(readout).ToContainTextAsync($"under this board {force} N");

        // The pointer: something is read off in the middle.
        await plot.Locator(".canvas").FocusAsync();
        await page.Keyboard.PressAsync("Home");
        await Assertions.Expect(readout).ToContainTextAsync("leeway 0");
        await plot.Locator(".u-over").HoverAsync();
        await Assertions.Expect(readout).Not.ToContainTextAsync("leeway 0.0");
        await Assertions.Expect(readout).ToContainTextAsync("N");

        // A verdict leads to the field that is changed first, wherever it is folded away.
        ILocator list = page.Locator("aside .verdicts");
        await list.Locator("details.holding > summary").ClickAsync();
        await list.Locator("[data-code=cavitation] > button").ClickAsync();
        await Assertions.Expect(page.Locator("#at---shape-sections")).ToBeFocusedAsync();

        // A number explains itself.
        await page.Locator("#water .say .told").First.ClickAsync();
        await Assertions.Expect(page.Locator("#water .say .explained:popover-open")).ToContainTextAsync("How sure:");
        visit.NothingWentWrong();
    }
}
