using Microsoft.AspNetCore.Components.Server.Circuits;

namespace Finwright.Page.Hosting;

/// <summary>Counts the tabs that are open, and ends the server when there were some and there have been none for a while.</summary>
/// <remarks>Started by a double click there is no terminal in which anybody could end it.</remarks>
internal sealed class OpenTabs : CircuitHandler, IDisposable
{
    /// <summary>For so long a computer may be busy with something else.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMinutes(15);

    private readonly Lock _gate = new();
    private readonly ITimer _end;
    private int _open;

    /// <summary>Counts.</summary>
    /// <param name="server">Is ended.</param>
    /// <param name="time">The clock.</param>
    public OpenTabs(IHostApplicationLifetime server, TimeProvider time) =>
        _end = time.CreateTimer(_ => End(server), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);

    /// <inheritdoc/>
    public override Task OnConnectionUpAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        lock (_gate)
        {
            _open++;
            _end.Change(Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public override Task OnConnectionDownAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        lock (_gate)
        {
            if (--_open == 0)
                _end.Change(Patience, Timeout.InfiniteTimeSpan);
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public void Dispose() => _end.Dispose();

    private void End(IHostApplicationLifetime server)
    {
        lock (_gate)
        {
            if (_open > 0)
                return;
        }

        server.StopApplication();
    }
}
