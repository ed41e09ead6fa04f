using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

public sealed class LibraryTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_box_is_measured_kept_and_taken_into_a_design_and_a_cup_of_resin_becomes_a_resin()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/libraries/box/measure");
        await Next(page);
        await Fill(page, "hull_length_mm", "150");
        await Next(page);
        await Fill(page, "front_depth_mm", "40");
        await Next(page);
        await Fill(page, "deep_length_mm", "138");
        await Next(page);
        // A slip of the hand is said at once, and holds the next step back.
        await Fill(page, "hull_width_mm", "60");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("60 mm");
        await Fill(page, "hull_width_mm", "16");
        await Next(page);
        await Next(page);
        await Fill(page, "box-name", "Blue board");
        IDownload gauge = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "gauge as STL, in mm" }).ClickAsync());
        Assert.Equal("gauge.stl", gauge.SuggestedFilename);
        Assert.True(new FileInfo(await gauge.PathAsync()).Length > 1000);
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep as a box of my own" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Blue board" })).ToBeVisibleAsync();

        page = await visit.Go("/design/Sandbar%20delta");
        await page.Locator("#strength").GetByRole(AriaRole.Button, new() { Name = "take from a library" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Blue board" }).ClickAsync();
        await Assertions.Expect(page.Locator("#at---base-box")).ToHaveValueAsync("measured");
        await Assertions.Expect(page.Locator("#at---base-measured-hull_length_mm")).ToHaveValueAsync("150");

        page = await visit.Go("/libraries/resin/cup");
        await page.Locator("#cup-rows").FillAsync("0; 21\n10; 21.6\n20; 22.4\n30; 23.5\n40; 25\n50; 27.2\n60; 30.6\n70; 36.5\n80; 50\n85; 66\n90; 95\n95; 110\n105; 101\n120; 84\n150; 58\n180; 43");
        await page.GetByRole(AriaRole.Button, new() { Name = "Fit", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".cup-plot .read")).ToHaveCountAsync(16);
        await page.Locator("#cup-name").FillAsync("My slow epoxy");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep as a resin of my own" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "My slow epoxy" })).ToBeVisibleAsync();
        visit.NothingWentWrong();
    }

    [Fact]
    public async Task The_tour_walks_through_a_fin_and_another_language_is_shown_everywhere()
    {
        await using ServedPage served = await ServedPage.Empty();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/tour");
        ILocator tour = page.Locator(".tour");
        await Assertions.Expect(tour).ToContainTextAsync("Who sails it");
        await Assertions.Expect(page.Locator(".tour-here")).ToHaveCountAsync(1);
        await tour.GetByRole(AriaRole.Button, new() { Name = "next" }).ClickAsync();
        await Assertions.Expect(tour).ToContainTextAsync("Shape it with the hand");
        // A reload keeps the place.
        await page.ReloadAsync();
        await Visit.IsLive(page);
        await Assertions.Expect(tour).ToContainTextAsync("Shape it with the hand");
        while (await tour.GetByRole(AriaRole.Button, new() { Name = "next" }).CountAsync() > 0)
        {
            string before = await tour.Locator("h2").InnerTextAsync();
            await tour.GetByRole(AriaRole.Button, new() { Name = "next" }).ClickAsync();
            await Assertions.Expect(tour.Locator("h2")).Not.ToHaveTextAsync(before);
        }

        await tour.GetByRole(AriaRole.Button, new() { Name = "done" }).ClickAsync();
        await Assertions.Expect(tour).ToHaveCountAsync(0);
        string sheet = page.Url;

        page = await visit.Go("/settings");
        await page.GetByLabel("Language").SelectOptionAsync("German");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Einstellungen" })).ToBeVisibleAsync();
        page = await visit.Go(new Uri(sheet).PathAndQuery);
        await Assertions.Expect(page.Locator("html")).ToHaveAttributeAsync("lang", "de");
        await Assertions.Expect(page.GetByLabel("Spannweite").First).ToBeVisibleAsync();
        string[] labels = [.. (await page.Locator(".row .name label").AllInnerTextsAsync()).Distinct()];
        Assert.Contains("Gewicht des Fahrers", labels);
        Assert.DoesNotContain("Rider mass", labels);
        visit.NothingWentWrong();
    }

    [Fact]
    public async Task Two_fins_that_were_sailed_on_the_same_days_are_told_apart()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/outings/compare");
        await page.GetByLabel("This fin").SelectOptionAsync("Fairway black");
        await page.GetByLabel("against this one").SelectOptionAsync("Fairway grey");
        await Assertions.Expect(page.GetByText("Fairway black is faster than Fairway grey")).ToBeVisibleAsync();
        visit.NothingWentWrong();
    }

    private static Task Next(IPage page) => page.GetByRole(AriaRole.Button, new() { Name = "next" }).ClickAsync();

    private static async Task Fill(IPage page, string id, string text)
    {
        ILocator box = page.Locator("#" + id);
        await box.FillAsync(text);
        await box.PressAsync("Tab");
    }
}
