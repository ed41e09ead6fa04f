using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Finwright.Browser.Tests;

/// <summary>One browser on the page: notes every error of its console and every request that leaves this computer.</summary>
internal sealed class Visit : IAsyncDisposable
{
    private readonly ServedPage _served;
    private readonly IBrowserContext _context;
    private readonly ConcurrentQueue<string> _wrong = new();

    public Visit(ServedPage served, IBrowserContext context, IPage page)
    {
        (_served, _context, Page) = (served, context, page);
        Watch(page);
    }

    /// <summary>The tab.</summary>
    public IPage Page { get; }

    /// <summary>What went wrong that no one expected.</summary>
    public IReadOnlyCollection<string> Wrong => _wrong;

    /// <summary>Whether losing the server is part of the test: its complaints do not count then.</summary>
    public bool MayLoseServer { get; set; }

    /// <summary>Goes to an address of the page and waits until it listens.</summary>
    public async Task<IPage> Go(string path)
    {
        await Page.GotoAsync(new Uri(_served.Address, path).AbsoluteUri);
        await IsLive(Page);
        return Page;
    }

    /// <summary>A further tab of the same browser.</summary>
    public async Task<IPage> OtherTab(string path)
    {
        IPage tab = await Window(new Uri(_served.Address, path).AbsoluteUri);
        await IsLive(tab);
        return tab;
    }

    /// <summary>A further window of the same browser, at a whole address.</summary>
    public async Task<IPage> Window(string address)
    {
        IPage window = await _context.NewPageAsync();
        Watch(window);
        // An address may lead on at once: who asked waits for what it needs to see.
        await window.GotoAsync(address, new() { WaitUntil = WaitUntilState.Commit });
        return window;
    }

    /// <summary>What is sent first does not listen yet: waits until it does.</summary>
    public static Task IsLive(IPage page) => page.WaitForSelectorAsync("body[data-live]");

    /// <summary>Fails the test when anything went wrong that was not expected.</summary>
    public void NothingWentWrong() => Assert.True(_wrong.IsEmpty, string.Join("\n", _wrong));

    public async ValueTask DisposeAsync() => await _context.CloseAsync();

    private void Watch(IPage page)
    {
        page.Console += (_, message) =>
        {
            if (message.Type == "error" && !MayLoseServer)
                _wrong.Enqueue($"console: {message.Text} ({message.Location})");
        };
        page.PageError += (_, error) =>
        {
            // The framework's own word, with nobody to hear it, when the server goes while an answer is under way.
            if (!MayLoseServer || !error.Contains("Cannot send data if the connection", StringComparison.Ordinal))
                _wrong.Enqueue($"script: {error}");
        };
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(_served.Address.AbsoluteUri, StringComparison.Ordinal) && !request.Url.StartsWith("data:", StringComparison.Ordinal) && !request.Url.StartsWith("blob:", StringComparison.Ordinal))
                _wrong.Enqueue($"request to elsewhere: {request.Url}");
        };
    }
}
