using System.Diagnostics;
using System.Globalization;
using System.Text;
using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

/// <summary>How fast the page follows the hand, measured in the browser; written to <c>docs/bench/page-latency.md</c> when <c>FINWRIGHT_LATENCY</c> is 1.</summary>
public sealed class LatencyReport(BrowserFixture browser)
{
    // The first changes of a page that was just started are slower: the compiler still works at it.
    private const int Changes = 30, ToWarmUp = 6;
    private const string FirstPaint = "the address is opened → first paint";
    private static readonly string[] Stages = ["a slider is moved → the sentence of the chapter says so", "→ the fin is drawn anew in three dimensions", "→ quick verdicts"];

    // What a laptop with a graphics card should do, milliseconds.
    private static readonly Dictionary<string, int> Aims = new() { [FirstPaint] = 1500, [Stages[1]] = 50, [Stages[2]] = 200 };

    // Moves a slider and notes when each part of the page follows.
    private const string Measured = """
        async value => {
            const box = document.querySelector('#at---shape-outline-span_mm');
            const slider = box.parentElement.querySelector('input[type=range]');
            const say = document.querySelector('#shape .say'), scene = document.querySelector('.fin-view .canvas'), verdicts = document.querySelector('.verdicts');
            const until = (node, isThere) => new Promise(done => {
                const began = performance.now();
                const look = () => { if (isThere()) { watch.disconnect(); done(performance.now()); } };
                const watch = new MutationObserver(look);
                watch.observe(node, { subtree: true, childList: true, characterData: true, attributes: true });
                setTimeout(() => { watch.disconnect(); done(NaN); }, 20000);
                look();
            });
            const stamp = () => scene.dataset.version, before = stamp(), now = performance.now();
            const said = until(say, () => say.textContent.includes(value + ' mm'));
            const drawn = until(scene, () => stamp() !== before);
            slider.value = value;
            slider.dispatchEvent(new Event('input', { bubbles: true }));
            const judged = (async () => { await said; return until(verdicts, () => [...verdicts.querySelectorAll('li.verdict:not(.old) .numbers')].some(numbers => numbers.textContent.includes('≈'))); })();
            const times = await Promise.all([said, drawn, judged]);
            slider.dispatchEvent(new Event('change', { bubbles: true }));
            return times.map(time => time - now);
        }
        """;

    [Fact]
    [Trait("Pace", "long")]
    public async Task How_fast_the_page_follows_the_hand()
    {
        bool isWanted = Environment.GetEnvironmentVariable("FINWRIGHT_LATENCY") == "1";
        await using ServedPage served = await ServedPage.Season();
        await using Visit visit = await browser.Visit(served);
        List<double> paints = [];
        IPage page = visit.Page;
        for (int i = 0; i < (isWanted ? 5 : 1); i++)
        {
            page = await visit.Go("/design/Fairway%20upright");
            paints.Add(await page.EvaluateAsync<double>("() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN"));
        }

        Assert.All(paints, paint => Assert.True(paint > 0));
        if (!isWanted)
            return;
        await Assertions.Expect(page.Locator(".verdicts .work")).ToHaveCountAsync(0, new() { Timeout = 180_000 });
        await Assertions.Expect(page.Locator("#print [role=status] button")).ToHaveCountAsync(1, new() { Timeout = 180_000 });
        await Assertions.Expect(page.Locator(".fin-view .canvas[data-frames]")).ToHaveCountAsync(1);
        List<double>[] times = [[], [], []];
        for (int i = -ToWarmUp; i < Changes; i++)
        {
            double[] measured = await page.EvaluateAsync<double[]>(Measured, (380 + i).ToString(CultureInfo.InvariantCulture));
            for (int stage = 0; i >= 0 && stage < measured.Length; stage++)
                times[stage].Add(measured[stage]);
            await Task.Delay(500, TestContext.Current.CancellationToken);
        }

        await File.WriteAllTextAsync(Path.Combine(ServedPage.Sources(), "docs", "bench", "page-latency.md"), Report(paints, times), TestContext.Current.CancellationToken);
    }

    private static string Report(List<double> paints, List<double>[] times)
    {
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"# How fast the page follows the hand\n\nMeasured {DateTime.UtcNow:yyyy-MM-dd} on {Cpu()}, {Environment.ProcessorCount} processors, Chromium without a screen and without a graphics card, commit {Commit()}; one tab, the demo design \"Fairway upright\", {Changes} changes of its span by the slider after {ToWarmUp} to warm up. ");
        text.Append("Written by `FINWRIGHT_LATENCY=1 dotnet run --project tests/Finwright.Browser.Tests -- -class \"*LatencyReport\"`; compare only runs of one machine. Not held by a test.\n\n");
        text.Append(CultureInfo.InvariantCulture, $"Load of the machine over the last minute when this was written: {File.ReadAllText("/proc/loadavg").Split(' ')[0]}.\n\n");
        text.Append("The aims are those of a laptop with a graphics card. Here program, browser and the drawing of the fin in software share the processors, and what is worked out next begins before the fin is drawn: of the time to the drawn fin, about a third goes into reading, lofting and keeping the change, the rest into carrying and drawing it.\n\n");
        text.Append("| From → to | aim | median | 9 of 10 | worst | measured |\n| --- | --- | --- | --- | --- | --- |\n");
        Row(FirstPaint, paints);
        for (int stage = 0; stage < Stages.Length; stage++)
            Row(Stages[stage], times[stage]);
        return text.ToString();

        void Row(string name, List<double> all)
        {
            double[] sorted = [.. all.Where(double.IsFinite).Order()];
            string At(double share) => sorted.Length == 0 ? "not seen" : string.Create(CultureInfo.InvariantCulture, $"{sorted[(int)Math.Min(sorted.Length - 1, share * sorted.Length)]:F0} ms");
            text.Append(CultureInfo.InvariantCulture, $"| {name} | {(Aims.TryGetValue(name, out int aim) ? $"{aim} ms" : "none")} | {At(0.5)} | {At(0.9)} | {At(1)} | {sorted.Length} of {all.Count} |\n");
        }
    }

    private static string Cpu() => File.ReadLines("/proc/cpuinfo").FirstOrDefault(line => line.StartsWith("model name", StringComparison.Ordinal))?.Split(':')[1].Trim() ?? "an unnamed processor";

    private static string Commit()
    {
        using Process git = Process.Start(new ProcessStartInfo("git", ["rev-parse", "--short", "HEAD"]) { UseShellExecute = false, RedirectStandardOutput = true, WorkingDirectory = ServedPage.Sources() })!;
        return git.StandardOutput.ReadToEnd().Trim();
    }
}
