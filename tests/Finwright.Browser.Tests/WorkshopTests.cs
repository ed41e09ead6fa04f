using System.Globalization;
using System.Text;
using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

[Trait("Pace", "long")]
public sealed class WorkshopTests(BrowserFixture browser)
{
    // The bench and tracks are worked out meanwhile, on a machine that may be busy.
    private static readonly LocatorAssertionsToBeVisibleOptions Patiently = new() { Timeout = 60_000 };

    [Fact]
    public async Task A_fin_is_built_proved_and_sailed()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/design/Eelgrass%20rake");

        // Built.
        await page.Locator("#built > summary").ClickAsync();
        ILocator built = page.GetByRole(AriaRole.Form, new() { Name = "I built this" });
        await built.GetByLabel("Name, as it stands on the fin").FillAsync("Eelgrass three");
        await built.GetByLabel("Mass of the finished fin").FillAsync("heavy");
        await built.GetByRole(AriaRole.Button, new() { Name = "Keep this build" }).ClickAsync();
        await Assertions.Expect(built.GetByText("is not a number")).ToBeVisibleAsync(Patiently);
        await built.GetByLabel("Mass of the finished fin").FillAsync("498");
        await built.GetByRole(AriaRole.Button, new() { Name = "Keep this build" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Eelgrass three", Exact = true })).ToBeVisibleAsync(Patiently);

        // Proved.
        await page.GetByText("Type readings").ClickAsync();
        ILocator row = page.Locator(".readings tbody tr").Nth(2);
        await Assertions.Expect(row.GetByText("at most")).ToBeVisibleAsync(Patiently);
        await row.GetByLabel("Row 3: loaded").FillAsync("200");
        await row.GetByLabel("Row 3: loaded").PressAsync("Tab");
        await Assertions.Expect(row.GetByText("do not sail it")).ToBeVisibleAsync(Patiently);
        await row.GetByLabel("Row 3: loaded").FillAsync("25");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep these readings" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Kept: 1 readings")).ToBeVisibleAsync(Patiently);
        await page.GetByRole(AriaRole.Button, new() { Name = "What does this build teach?" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Put walls and core into the design" }).ClickAsync(new() { Timeout = 60_000 });
        await Assertions.Expect(page.GetByText("Undo takes it back")).ToBeVisibleAsync(Patiently);

        // Sailed.
        string track = Path.Combine(served.Folder, "afternoon.gpx");
        await File.WriteAllTextAsync(track, Gpx(), TestContext.Current.CancellationToken);
        await visit.Go("/outings");
        await page.GetByText("A further outing").First.ClickAsync();
        await page.Locator("input[type=file]").SetInputFilesAsync(track);
        await Assertions.Expect(page.GetByRole(AriaRole.Img, new() { Name = "The track from above" })).ToBeVisibleAsync(Patiently);
        ILocator form = page.GetByRole(AriaRole.Form, new() { Name = "A further outing" });
        await Assertions.Expect(form.GetByLabel("Day", new() { Exact = true })).ToHaveValueAsync("2025-06-01");
        await form.GetByLabel("Which fin").SelectOptionAsync("Eelgrass three");
        await form.GetByLabel("Wind in the lulls").FillAsync("17");
        // What is typed survives a reload; the track is dropped again.
        await form.GetByLabel("Where", new() { Exact = true }).FillAsync("the north bank");
        await form.GetByLabel("Where", new() { Exact = true }).PressAsync("Tab");
        await visit.Go("/outings");
        await page.GetByText("A further outing").First.ClickAsync();
        await Assertions.Expect(form.GetByLabel("Where", new() { Exact = true })).ToHaveValueAsync("the north bank");
        await page.Locator("input[type=file]").SetInputFilesAsync(track);
        await Assertions.Expect(page.GetByText("it is kept with the outing")).ToBeVisibleAsync(Patiently);
        await form.GetByRole(AriaRole.Button, new() { Name = "Keep this outing" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "the north bank" })).ToBeVisibleAsync(Patiently);
        await Assertions.Expect(page.Locator("tr", new() { HasText = "10 s" }).First).ToContainTextAsync("23.");
        await page.GetByLabel("Along the track").PressAsync("ArrowRight");
        await Assertions.Expect(page.Locator("output")).ToContainTextAsync("kn");

        // Compared.
        await visit.Go("/outings/compare");
        await page.GetByLabel("This fin").SelectOptionAsync("Fairway black");
        await page.GetByLabel("against this one").SelectOptionAsync("Fairway grey");
        await Assertions.Expect(page.GetByText("Fairway black is faster than Fairway grey")).ToBeVisibleAsync(Patiently);
        visit.NothingWentWrong();
    }

    /// <summary>Six runs to and fro at 12 m/s (23.3 knots), a point a second, in the open sea.</summary>
    private static string Gpx()
    {
        StringBuilder text = new("<?xml version=\"1.0\"?><gpx version=\"1.1\" creator=\"test\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>");
        DateTime start = new(2025, 6, 1, 12, 0, 0, DateTimeKind.Utc);
        double longitude = 3;
        for (int second = 0; second < 6 * 60; second++)
        {
            // A gybe is slow: the last seconds of each run.
            double speed = second % 60 is > 52 or < 4 ? 4 : 12;
            longitude += (second / 60 % 2 == 0 ? 1 : -1) * speed / (111_320 * Math.Cos(double.DegreesToRadians(56)));
            text.Append(CultureInfo.InvariantCulture, $"<trkpt lat=\"56\" lon=\"{longitude:0.0000000}\"><time>{start.AddSeconds(second):yyyy-MM-ddTHH:mm:ssZ}</time></trkpt>");
        }

        return text.Append("</trkseg></trk></gpx>").ToString();
    }
}
