using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Finwright.Browser.Tests;

public sealed class ShelfTests(BrowserFixture browser)
{
    [Fact]
    public async Task From_an_empty_shelf_to_a_season_that_is_searched_tagged_renamed_copied_deleted_and_had_back()
    {
        await using ServedPage served = await ServedPage.Empty();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Load an invented season" }).ClickAsync();
        ILocator tiles = page.Locator(".tile");
        await Expect(tiles).ToHaveCountAsync(3);

        await page.GetByRole(AriaRole.Searchbox).FillAsync("sandbar");
        await Expect(tiles).ToHaveCountAsync(1);
        ILocator sandbar = tiles.First;
        await sandbar.Locator("summary").ClickAsync();
        await sandbar.GetByRole(AriaRole.Button, new() { Name = "tags", Exact = true }).ClickAsync();
        await sandbar.GetByLabel("Tags, separated by commas").FillAsync("low water, mine");
        await sandbar.GetByRole(AriaRole.Button, new() { Name = "keep" }).ClickAsync();
        await Expect(sandbar.Locator(".tags")).ToContainTextAsync("mine");
        await sandbar.GetByRole(AriaRole.Button, new() { Name = "rename" }).ClickAsync();
        await sandbar.GetByLabel("New name").FillAsync("Fairway upright");
        await sandbar.Locator(".ask").GetByRole(AriaRole.Button, new() { Name = "rename" }).ClickAsync();
        await Expect(sandbar.GetByRole(AriaRole.Alert)).ToContainTextAsync("already");
        await sandbar.GetByLabel("New name").FillAsync("Sandbar mine");
        await sandbar.Locator(".ask").GetByRole(AriaRole.Button, new() { Name = "rename" }).ClickAsync();
        await Expect(sandbar.GetByRole(AriaRole.Heading)).ToHaveTextAsync("Sandbar mine");
        await sandbar.GetByRole(AriaRole.Button, new() { Name = "copy" }).ClickAsync();
        await sandbar.Locator(".ask").GetByRole(AriaRole.Button, new() { Name = "copy" }).ClickAsync();
        await Expect(tiles).ToHaveCountAsync(2);

        ILocator copy = tiles.Filter(new() { HasText = "Sandbar mine 2" });
        await copy.Locator("summary").ClickAsync();
        await copy.GetByRole(AriaRole.Button, new() { Name = "delete" }).ClickAsync();
        await Expect(tiles).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new() { Name = "undo" }).ClickAsync();
        await Expect(tiles).ToHaveCountAsync(2);
        // What was built hangs on its design.
        await sandbar.GetByRole(AriaRole.Button, new() { Name = "delete" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Delete the builds first");

        IDownload bundle = await page.RunAndWaitForDownloadAsync(() => sandbar.GetByRole(AriaRole.Link, new() { Name = "bundle", Exact = true }).ClickAsync());
        Assert.Equal("Sandbar mine.fin-bundle.zip", bundle.SuggestedFilename);
        visit.NothingWentWrong();
    }

    [Fact]
    public async Task A_fin_is_started_from_a_family_and_a_design_from_elsewhere_is_only_text()
    {
        await using ServedPage served = await ServedPage.Empty();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/start");
        await page.GetByRole(AriaRole.Radio, new() { Name = "raked" }).First.CheckAsync();
        await page.Locator("#new-name").FillAsync("First of mine");
        await page.Locator("#new-span").FillAsync("9999");
        await page.Locator("#new-area").FocusAsync();
        await Expect(page.Locator("#family").GetByRole(AriaRole.Alert).First).ToBeVisibleAsync();
        await page.Locator("#new-span").FillAsync("245");
        await page.Locator("#new-area").FocusAsync();
        await Expect(page.Locator("#family").GetByRole(AriaRole.Alert)).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start", Exact = true }).ClickAsync();
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/design/First%20of%20mine"));

        string file = Path.Combine(served.Folder, "hostile.fin.json");
        const string name = "<script>document.title='broken in'</script>";
        await File.WriteAllTextAsync(file, $$"""{ "format": 2, "name": "{{name}}", "shape": { "outline": { "family": "upright", "span_mm": 250, "area_cm2": 260 } } }""", TestContext.Current.CancellationToken);
        page = await visit.Go("/start");
        await page.Locator("#bring").SetInputFilesAsync(file);
        await Expect(page.Locator("#file")).ToContainTextAsync(name);
        await page.GetByRole(AriaRole.Button, new() { Name = "Put onto the shelf and open" }).ClickAsync();
        await Expect(page).ToHaveTitleAsync(name + " · Finwright");
        page = await visit.Go("/");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = name })).ToBeVisibleAsync();
        visit.NothingWentWrong();
    }
}
