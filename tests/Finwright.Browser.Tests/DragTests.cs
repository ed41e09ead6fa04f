using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

public sealed class DragTests(BrowserFixture browser)
{
    [Fact]
    public async Task The_hand_moves_the_fin_in_all_tabs_and_everything_is_there_after_a_reload()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/design/Sandbar%20delta");
        IPage other = await visit.OtherTab("/design/Sandbar%20delta");
        ILocator rake = page.Locator("#at---shape-outline-rake_degrees"), area = page.Locator("#at---shape-outline-area_cm2");
        string before = await rake.InputValueAsync(), areaBefore = await area.InputValueAsync();

        // The mouse takes the tip forward.
        await Drag(page, "rake-0", -40, 0);
        await Assertions.Expect(rake).Not.ToHaveValueAsync(before);
        ILocator rakeThere = other.Locator("#at---shape-outline-rake_degrees");
        await Wait.Until(async () => await rake.InputValueAsync() is string now && Number(now) < Number(before) - 1 && await rakeThere.InputValueAsync() == now);
        Assert.Equal(areaBefore, await area.InputValueAsync());

        // One drag is one step.
        await page.GetByRole(AriaRole.Button, new() { Name = "undo", Exact = true }).ClickAsync();
        await Assertions.Expect(rake).ToHaveValueAsync(before);

        // Keys move the depth of the tip by a millimetre.
        ILocator span = page.Locator("#at---shape-outline-span_mm");
        double depth = Number(await span.InputValueAsync());
        await page.Locator("[data-handle=span-0]").FocusAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(span).ToHaveValueAsync((depth + 2).ToString(System.Globalization.CultureInfo.InvariantCulture));

        // Another fin stands beside; after a reload it still does, and what was changed is kept.
        await page.GetByLabel("A design or revision beside this one").SelectOptionAsync("Fairway upright@1");
        await Assertions.Expect(page.Locator(".planform .ghost")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".changes h3")).ToContainTextAsync("Fairway upright@1");
        await page.ReloadAsync();
        await Visit.IsLive(page);
        await Assertions.Expect(page.Locator(".planform .ghost")).ToHaveCountAsync(1);
        await Assertions.Expect(span).ToHaveValueAsync((depth + 2).ToString(System.Globalization.CultureInfo.InvariantCulture));

        // Free points: Escape in the middle of a drag puts the point back.
        await page.GetByRole(AriaRole.Button, new() { Name = "move points freely" }).ClickAsync();
        ILocator point = page.Locator("[data-handle=leadingpoint-2]"), aft = page.Locator("#at---shape-outline-leading_edge-2--aft_mm");
        await Assertions.Expect(point).ToBeVisibleAsync();
        string place = await aft.InputValueAsync();
        (float x, float y) = await Middle(page, "leadingpoint-2");
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x - 15, y, new() { Steps = 4 });
        await Assertions.Expect(aft).Not.ToHaveValueAsync(place);
        await page.Keyboard.PressAsync("Escape");
        await page.Mouse.UpAsync();
        await Assertions.Expect(aft).ToHaveValueAsync(place);
        visit.NothingWentWrong();
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static async Task<(float X, float Y)> Middle(IPage page, string handle)
    {
        ILocator grip = page.Locator($"[data-handle={handle}] .hit");
        await grip.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await grip.BoundingBoxAsync())!;
        return (box.X + box.Width / 2, box.Y + box.Height / 2);
    }

    private static async Task Drag(IPage page, string handle, float dx, float dy)
    {
        (float x, float y) = await Middle(page, handle);
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + dx, y + dy, new() { Steps = 8 });
        await page.Mouse.UpAsync();
    }
}
