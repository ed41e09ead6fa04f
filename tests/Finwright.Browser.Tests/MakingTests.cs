using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

[Trait("Pace", "long")]
public sealed partial class MakingTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_motion_file_is_held_against_its_plate_and_a_run_sheet_remembers_over_a_reload()
    {
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        IPage page = await visit.Go("/design/Sandbar%20delta");
        ILocator begin = page.Locator("#print .runs button");
        await Assertions.Expect(begin).ToBeEnabledAsync(new() { Timeout = 180_000 });

        await page.Locator(".motion input[type=file]").SetInputFilesAsync(new FilePayload { Name = "stray.gcode", MimeType = "text/plain", Buffer = Encoding.ASCII.GetBytes(Box()) });
        ILocator answer = page.Locator(".motion .answer");
        await Assertions.Expect(answer).ToContainTextAsync("differs", new() { Timeout = 60_000 });
        await Assertions.Expect(answer).ToContainTextAsync("stray.gcode against plate");

        await begin.ClickAsync();
        await page.WaitForURLAsync(RunAddress());
        string address = page.Url;
        await page.SetViewportSizeAsync(390, 844);
        ILocator first = page.Locator(".step").First;
        await first.GetByRole(AriaRole.Checkbox).CheckAsync();
        ILocator clock = page.Locator(".timer .start").First;
        await clock.ClickAsync();
        await Assertions.Expect(page.Locator("#state")).ToHaveTextAsync("everything is kept", new() { Timeout = 15_000 });
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));

        // Finwright ends, a tick is made out of reach, Finwright comes back: nothing is lost.
        visit.MayLoseServer = true;
        await served.Kill();
        await page.Locator(".step").Nth(1).GetByRole(AriaRole.Checkbox).CheckAsync();
        await Assertions.Expect(page.Locator("#state")).ToContainTextAsync("out of reach", new() { Timeout = 15_000 });
        await served.Start();
        await Assertions.Expect(page.Locator("#state")).ToHaveTextAsync("everything is kept", new() { Timeout = 30_000 });
        await page.GotoAsync(address);
        await Assertions.Expect(page.Locator(".step").Nth(1).GetByRole(AriaRole.Checkbox)).ToBeCheckedAsync();
        await Assertions.Expect(page.Locator(".timer.runs output").First).Not.ToBeEmptyAsync();
        visit.NothingWentWrong();
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
}
