using System.Net;
using Finwright.Page.Hosting;
using Finwright.Page.Settings;
using Finwright.Page.Works;

namespace Finwright.Page.Phone;

/// <summary>Whether phones are let in: off until it is switched on, off again after a working day or when the program ends.</summary>
/// <param name="settings">How the page is served.</param>
/// <param name="desk">The store.</param>
/// <param name="reader">How the page speaks.</param>
public sealed class PhoneAccess(PageSettings settings, Desk desk, ReaderSettings reader) : IAsyncDisposable
{
    /// <summary>It ends by itself after this time.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromHours(12);

    private readonly SemaphoreSlim _turn = new(1, 1);
    private ITimer? _end;

    /// <summary>The server; null while phones are not let in.</summary>
    public PhoneHost? Host { get; private set; }

    /// <summary>When it ends by itself.</summary>
    public DateTimeOffset EndsAt { get; private set; }

    /// <summary>It was switched on or off, or a phone came in.</summary>
    public event Action? Changed;

    /// <summary>Lets phones in.</summary>
    /// <param name="at">Address of this computer in the home network.</param>
    /// <exception cref="IOException">It cannot listen there.</exception>
    public async Task Open(IPAddress at)
    {
        await _turn.WaitAsync().ConfigureAwait(false);
        try
        {
            await End().ConfigureAwait(false);
            Host = await PhoneHost.Start(at, settings, desk, reader).ConfigureAwait(false);
            Host.Door.Changed += Tell;
            EndsAt = settings.Time.GetUtcNow() + Longest;
            _end = settings.Time.CreateTimer(_ => _ = Close(), null, Longest, Timeout.InfiniteTimeSpan);
        }
        finally
        {
            _turn.Release();
        }

        Tell();
    }

    /// <summary>Lets nobody in any more.</summary>
    public async Task Close()
    {
        await _turn.WaitAsync().ConfigureAwait(false);
        try
        {
            await End().ConfigureAwait(false);
        }
        finally
        {
            _turn.Release();
        }

        Tell();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await End().ConfigureAwait(false);
        _turn.Dispose();
    }

    private async Task End()
    {
        if (_end is not null)
            await _end.DisposeAsync().ConfigureAwait(false);
        (PhoneHost? host, Host, _end) = (Host, null, null);
        if (host is null)
            return;
        host.Door.Changed -= Tell;
        await host.DisposeAsync().ConfigureAwait(false);
    }

    private void Tell() => Changed?.Invoke();
}
