using Finwright.Browser.Tests;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(BrowserFixture))]
[assembly: Xunit.v3.Parallelization(MaxThreads = 2)]

namespace Finwright.Browser.Tests;

/// <summary>One Chromium for all tests: that of the system.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    // No request of the browser's own may be mistaken for one of the page.
    private static readonly string[] Quiet = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    // A machine that is busy with other tests answers late; what is awaited comes all the same. Milliseconds.
    private const float Patience = 60_000;

    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public async ValueTask InitializeAsync()
    {
        _playwright = await Playwright.CreateAsync();
        Assertions.SetDefaultExpectTimeout(Patience);
        _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = Quiet });
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
    }

    /// <summary>A browser that was let in.</summary>
    /// <param name="served">The page.</param>
    /// <param name="width">Pixels.</param>
    /// <param name="height">Pixels.</param>
    /// <param name="dark">Whether the system is set to dark.</param>
    /// <param name="entry">The address that lets it in; null for the one that was told first.</param>
    internal async Task<Visit> Visit(ServedPage served, int width = 1440, int height = 900, bool dark = false, Uri? entry = null)
    {
        IBrowserContext context = await _browser!.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
            ReducedMotion = ReducedMotion.Reduce,
            HasTouch = width < 600,
        });
        context.SetDefaultTimeout(Patience);
        Visit visit = new(served, context, await context.NewPageAsync());
        await visit.Page.GotoAsync((entry ?? served.Entry).AbsoluteUri);
        return visit;
    }
}
