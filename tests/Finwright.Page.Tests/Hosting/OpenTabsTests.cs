using Finwright.Page.Hosting;
using Microsoft.Extensions.Hosting;

namespace Finwright.Page.Tests.Hosting;

public sealed class OpenTabsTests
{
    [Fact]
    public async Task The_server_ends_only_when_the_page_was_open_and_nobody_has_it_open_any_more()
    {
        Clock clock = new();
        Server server = new();
        using OpenTabs tabs = new(server, clock);
        Assert.False(clock.IsSet);
        await tabs.OnConnectionUpAsync(null!, TestContext.Current.CancellationToken);
        await tabs.OnConnectionUpAsync(null!, TestContext.Current.CancellationToken);
        await tabs.OnConnectionDownAsync(null!, TestContext.Current.CancellationToken);
        Assert.False(clock.IsSet);
        await tabs.OnConnectionDownAsync(null!, TestContext.Current.CancellationToken);
        Assert.True(clock.IsSet);
        // Somebody came back just as the time was over.
        await tabs.OnConnectionUpAsync(null!, TestContext.Current.CancellationToken);
        Assert.False(clock.IsSet);
        clock.Ring();
        Assert.False(server.WasStopped);
        await tabs.OnConnectionDownAsync(null!, TestContext.Current.CancellationToken);
        clock.Ring();
        Assert.True(server.WasStopped);
    }

    private sealed class Clock : TimeProvider
    {
        private Action? _ring;

        public bool IsSet { get; private set; }

        public void Ring() => _ring!();

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            _ring = () => callback(state);
            return new Alarm(this);
        }

        private sealed class Alarm(Clock clock) : ITimer
        {
            public bool Change(TimeSpan dueTime, TimeSpan period)
            {
                clock.IsSet = dueTime != Timeout.InfiniteTimeSpan;
                return true;
            }

            public void Dispose()
            {
            }

            public ValueTask DisposeAsync() => ValueTask.CompletedTask;
        }
    }

    private sealed class Server : IHostApplicationLifetime
    {
        public bool WasStopped { get; private set; }

        public CancellationToken ApplicationStarted => default;

        public CancellationToken ApplicationStopping => default;

        public CancellationToken ApplicationStopped => default;

        public void StopApplication() => WasStopped = true;
    }
}
