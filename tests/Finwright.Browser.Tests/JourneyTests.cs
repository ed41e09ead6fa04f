using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Finwright.Browser.Tests;

/// <summary>The whole job by hand: from an empty shelf to a fin that was built, proved and sailed, and to the next one.</summary>
public sealed partial class JourneyTests(BrowserFixture browser)
{
    // Sections never solved before, print, pour and cure, on a machine that does other things as well.
    private const float Patience = 420_000;

    private const string Sheet = "/design/Estuary%20rake", Span = "#at---shape-outline-span_mm";

    // Number of colours on the picture: one when it is blank.
    private const string Colours = """
        () => {
            const from = document.querySelector(".fin-view canvas"), small = document.createElement("canvas");
            [small.width, small.height] = [160, 100];
            const paper = small.getContext("2d");
            paper.drawImage(from, 0, 0, 160, 100);
            const data = paper.getImageData(0, 0, 160, 100).data, seen = new Set();
            for (let i = 0; i < data.length; i += 4)
                seen.add(data[i] << 24 | data[i + 1] << 16 | data[i + 2] << 8 | data[i + 3]);
            return seen.size;
        }
        """;

    [Fact]
    public async Task From_an_empty_shelf_to_the_next_fin()
    {
        await using ServedPage served = await ServedPage.Empty(worksAhead: true);
        await using Visit visit = await browser.Visit(served);
        IPage page = visit.Page;
        await Start(visit);
        await Shape(page);
        await See(page);
        await Fetch(page, served.Folder);
        await HoldMotion(page);
        await PrintDay(visit, served);
        await Build(visit);
        await Prove(page);
        await Sail(visit, served.Folder);
        await MakeTheNextOne(visit);
        visit.NothingWentWrong();
    }

    private static async Task Start(Visit visit)
    {
        IPage page = await visit.Go("/");
        await page.GetByRole(AriaRole.Link, new() { Name = "Start a fin" }).ClickAsync();
        await page.GetByRole(AriaRole.Radio, new() { Name = "raked" }).First.CheckAsync();
        await page.Locator("#new-name").FillAsync("Estuary rake");
        await page.Locator("#new-span").FillAsync("250");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start", Exact = true }).ClickAsync();
        await Expect(page).ToHaveURLAsync(new Regex("/design/Estuary%20rake", RegexOptions.None, TimeSpan.FromSeconds(1)));
        await Browser.Tests.Visit.IsLive(page);
    }

    private static async Task Shape(IPage page)
    {
        ILocator span = page.Locator(Span);
        await Expect(span).ToHaveValueAsync("250");
        await span.FillAsync("256");
        await span.PressAsync("Tab");
        await Expect(page.Locator("#shape .say")).ToContainTextAsync("256 mm");
        await page.GetByRole(AriaRole.Button, new() { Name = "undo", Exact = true }).ClickAsync();
        await Expect(span).ToHaveValueAsync("250");
        await page.GetByRole(AriaRole.Button, new() { Name = "redo", Exact = true }).ClickAsync();
        await Expect(span).ToHaveValueAsync("256");
        await page.GetByRole(AriaRole.Button, new() { Name = "keep as revision" }).ClickAsync();
        await page.GetByLabel("What was tried").FillAsync("a little deeper");
        await page.GetByRole(AriaRole.Button, new() { Name = "keep it" }).ClickAsync();
        await Expect(page.Locator(".kept")).ToContainTextAsync("revision 2");
    }

    /// <summary>The fin with everything that is known of it, one surface after the other.</summary>
    private static async Task See(IPage page)
    {
        foreach ((string surface, string name, bool hasScale) in new[] { ("plain", "plain", false), ("pressure", "pressure", true), ("stress", "skin stress", true), ("bent", "bent", true), ("parts", "parts on the bed", false), ("air", "trapped air", false), ("warmth", "warmth of the cure", true) })
        {
            await page.GetByRole(AriaRole.Radio, new() { Name = name, Exact = true }).CheckAsync();
            await Expect(page.Locator("#fin-says")).Not.ToContainTextAsync("still being worked out", new() { Timeout = Patience });
            await Expect(page.Locator(".fin-view .canvas")).ToHaveAttributeAsync("data-surface", surface, new() { Timeout = Patience });
            await Expect(page.Locator(".fin-view .scale")).ToHaveCountAsync(hasScale ? 1 : 0, new() { Timeout = Patience });
            Assert.True(await page.EvaluateAsync<int>(Colours) > 20, $"The picture of {surface} is blank.");
            if (hasScale)
                await Expect(page.Locator("#fin-says table tr").First).ToBeAttachedAsync();
        }

        // Every verdict has words, and what it says of print, pour and cure is there as well.
        await Expect(page.Locator("aside .verdicts .work")).ToHaveCountAsync(0, new() { Timeout = Patience });
        Assert.True(await page.Locator("aside .verdict").CountAsync() > 15);
    }

    private static async Task Fetch(IPage page, string folder)
    {
        ILocator files = page.Locator("#files");
        await files.GetByRole(AriaRole.Button, new() { Name = "Make the files" }).ClickAsync();
        ILocator fetch = files.GetByRole(AriaRole.Link, new() { Name = "Fetch it" });
        await Expect(fetch).ToBeVisibleAsync(new() { Timeout = Patience });
        IDownload pack = await page.RunAndWaitForDownloadAsync(() => fetch.ClickAsync());
        string file = Path.Combine(folder, "pack.zip");
        await pack.SaveAsAsync(file);
        using System.IO.Compression.ZipArchive zip = await System.IO.Compression.ZipFile.OpenReadAsync(file, TestContext.Current.CancellationToken);
        Assert.Contains(zip.Entries, entry => entry.Name == "build-sheet.pdf" && entry.Length > 20_000);
        Assert.Contains(zip.Entries, entry => entry.Name.EndsWith(".3mf", StringComparison.Ordinal) && entry.Length > 10_000);
    }

    private static async Task HoldMotion(IPage page)
    {
        await page.Locator(".motion input[type=file]").SetInputFilesAsync(new FilePayload { Name = "stray.gcode", MimeType = "text/plain", Buffer = Encoding.ASCII.GetBytes(Box()) });
        ILocator answer = page.Locator(".motion .answer");
        await Expect(answer).ToContainTextAsync("differs", new() { Timeout = Patience });
        await Expect(answer).ToContainTextAsync("stray.gcode against plate");
    }

    /// <summary>A run sheet on the screen of a phone; the program ends in the middle, and nothing is lost.</summary>
    private static async Task PrintDay(Visit visit, ServedPage served)
    {
        IPage page = visit.Page;
        ILocator begin = page.Locator("#print .runs button");
        await Expect(begin).ToBeEnabledAsync(new() { Timeout = Patience });
        await begin.ClickAsync();
        await page.WaitForURLAsync(RunAddress());
        string address = page.Url;
        await page.SetViewportSizeAsync(390, 844);
        await page.Locator(".step").First.GetByRole(AriaRole.Checkbox).CheckAsync();
        await page.Locator(".timer .start").First.ClickAsync();
        await Expect(page.Locator("#state")).ToHaveTextAsync("everything is kept");
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"));

        visit.MayLoseServer = true;
        await served.Kill();
        await page.Locator(".step").Nth(1).GetByRole(AriaRole.Checkbox).CheckAsync();
        await Expect(page.Locator("#state")).ToContainTextAsync("out of reach");
        await served.Start();
        await Expect(page.Locator("#state")).ToHaveTextAsync("everything is kept");
        await page.GotoAsync(address);
        await Expect(page.Locator(".step").Nth(1).GetByRole(AriaRole.Checkbox)).ToBeCheckedAsync();
        await Expect(page.Locator(".timer.runs output").First).Not.ToBeEmptyAsync();
        visit.MayLoseServer = false;
        await page.SetViewportSizeAsync(1440, 900);
    }

    private static async Task Build(Visit visit)
    {
        IPage page = await visit.Go(Sheet);
        await page.Locator("#built > summary").ClickAsync();
        ILocator built = page.GetByRole(AriaRole.Form, new() { Name = "I built this" });
        await built.GetByLabel("Name, as it stands on the fin").FillAsync("Estuary one");
        await built.GetByLabel("Mass of the finished fin").FillAsync("heavy");
        await built.GetByRole(AriaRole.Button, new() { Name = "Keep this build" }).ClickAsync();
        await Expect(built.GetByText("is not a number")).ToBeVisibleAsync();
        await built.GetByLabel("Mass of the finished fin").FillAsync("498");
        // What was wrong goes, and the button moves up: first that, then the button.
        await built.GetByLabel("Mass of the finished fin").PressAsync("Tab");
        await Expect(built.GetByText("is not a number")).ToHaveCountAsync(0);
        await built.GetByRole(AriaRole.Button, new() { Name = "Keep this build" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Estuary one", Exact = true })).ToBeVisibleAsync();
    }

    private static async Task Prove(IPage page)
    {
        await page.GetByText("Type readings").ClickAsync();
        ILocator row = page.Locator(".readings tbody tr").Nth(2);
        await Expect(row.GetByText("at most")).ToBeVisibleAsync(new() { Timeout = Patience });
        await row.GetByLabel("Row 3: loaded").FillAsync("200");
        await row.GetByLabel("Row 3: loaded").PressAsync("Tab");
        await Expect(row.GetByText("do not sail it")).ToBeVisibleAsync();
        await row.GetByLabel("Row 3: loaded").FillAsync("12");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep these readings" }).ClickAsync();
        await Expect(page.GetByText("Kept: 1 readings")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "What does this build teach?" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Put walls and core into the design" }).ClickAsync(new() { Timeout = Patience });
        await Expect(page.GetByText("Undo takes it back")).ToBeVisibleAsync();
    }

    private static async Task Sail(Visit visit, string folder)
    {
        string track = Path.Combine(folder, "afternoon.gpx");
        await File.WriteAllTextAsync(track, Gpx(), TestContext.Current.CancellationToken);
        IPage page = await visit.Go("/outings");
        await page.GetByText("A further outing").First.ClickAsync();
        await page.Locator("input[type=file]").SetInputFilesAsync(track);
        await Expect(page.GetByRole(AriaRole.Img, new() { Name = "The track from above" })).ToBeVisibleAsync();
        ILocator form = page.GetByRole(AriaRole.Form, new() { Name = "A further outing" });
        await Expect(form.GetByLabel("Day", new() { Exact = true })).ToHaveValueAsync("2025-06-01");
        await form.GetByLabel("Which fin").SelectOptionAsync("Estuary one");
        await form.GetByLabel("Wind in the lulls").FillAsync("17");
        // What is typed survives a reload; the track is dropped again.
        await form.GetByLabel("Where", new() { Exact = true }).FillAsync("the north bank");
        await form.GetByLabel("Where", new() { Exact = true }).PressAsync("Tab");
        await visit.Go("/outings");
        await page.GetByText("A further outing").First.ClickAsync();
        await Expect(form.GetByLabel("Where", new() { Exact = true })).ToHaveValueAsync("the north bank");
        await page.Locator("input[type=file]").SetInputFilesAsync(track);
        await Expect(page.GetByText("it is kept with the outing")).ToBeVisibleAsync();
        await form.GetByRole(AriaRole.Button, new() { Name = "Keep this outing" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "the north bank" })).ToBeVisibleAsync();
        await Expect(page.Locator("tr", new() { HasText = "10 s" }).First).ToContainTextAsync("23.");
        await Wait.Until(async () =>
        {
            // It listens a moment after it is seen.
            await page.GetByLabel("Along the track").PressAsync("ArrowRight");
            return (await page.Locator("output").InnerTextAsync()).Contains("kn", StringComparison.Ordinal);
        });
    }

    /// <summary>What the bench taught stands in the draft: it is kept, and held against the first.</summary>
    private static async Task MakeTheNextOne(Visit visit)
    {
        IPage page = await visit.Go(Sheet);
        await Expect(page.Locator(".kept")).ToContainTextAsync("changed");
        await page.GetByRole(AriaRole.Button, new() { Name = "keep as revision" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "keep it" }).ClickAsync();
        await Expect(page.Locator(".kept")).ToContainTextAsync("revision 3");
        await visit.Go("/compare?a=Estuary%20rake%401&b=Estuary%20rake%403");
        await Expect(page.Locator("main .say")).ToContainTextAsync("fields of the design differ");
        await Expect(page.Locator("main table").First).ToBeVisibleAsync();
    }

    [GeneratedRegex("/run/[0-9]+$")]
    private static partial Regex RunAddress();

    /// <summary>A box of a few layers that is no part of any fin.</summary>
    private static string Box()
    {
        StringBuilder text = new("G21\nG90\nM83\n");
        for (int layer = 1; layer <= 20; layer++)
            text.Append(CultureInfo.InvariantCulture, $"G1 Z{0.2 * layer:0.0} F600\nG0 X50 Y50 F6000\nG1 X90 E1.5 F1200\nG1 Y90 E1.5\nG1 X50 E1.5\nG1 Y50 E1.5\n");
        return text.ToString();
    }

    /// <summary>Six runs to and fro at 12 m/s (23.3 knots), a point a second, in the open sea.</summary>
    private static string Gpx()
    {
        StringBuilder text = new("<?xml version=\"1.0\"?><gpx version=\"1.1\" creator=\"test\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>");
        DateTime start = new(2025, 6, 1, 12, 0, 0, DateTimeKind.Utc);
        double longitude = 3;
        for (int second = 0; second < 6 * 60; second++)
        {
            // It slows down towards each gybe and gathers speed after it, over 8 s.
            double speed = 1.5 + 10.5 * Math.Clamp(Math.Min(second % 60, 60 - second % 60) / 8.0, 0, 1);
            longitude += (second / 60 % 2 == 0 ? 1 : -1) * speed / (111_320 * Math.Cos(double.DegreesToRadians(56)));
            text.Append(CultureInfo.InvariantCulture, $"<trkpt lat=\"56\" lon=\"{longitude:0.0000000}\"><time>{start.AddSeconds(second):yyyy-MM-ddTHH:mm:ssZ}</time></trkpt>");
        }

        return text.Append("</trkseg></trk></gpx>").ToString();
    }
}
