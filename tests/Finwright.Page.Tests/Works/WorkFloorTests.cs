using System.Text.Json.Nodes;
using Finwright.Page.Editing;

namespace Finwright.Page.Tests.Works;

public sealed class WorkFloorTests : IDisposable
{
    private readonly Workbench _bench = new() { WorksAhead = false };

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Print_pour_and_cure_wait_to_be_asked_for_where_the_reader_wants_it()
    {
        DesignSession session = _bench.Session();
        Until(session, now => now.IsMakingOnRequest);
        Assert.Equal(Reach.Sailing, session.Now.Reach);
        Assert.Null(session.Now.Made);

        session.AskForMaking();
        Until(session, now => now.Made is not null);
        Assert.False(session.Now.IsMakingOnRequest);
        Assert.True(session.Now.Reach >= Reach.Poured);

        // What was asked for was the design as it stood: a change waits to be asked for again, and what is known stays to be seen.
        session.Set("$.shape.outline.span_mm", JsonValue.Create(310.0), "span");
        Until(session, now => now.IsMakingOnRequest);
        Assert.True(session.Now.MadeIsOld);
        Assert.False(session.Now.SailingIsOld);
    }

    private static void Until(DesignSession session, Func<Standing, bool> holds)
    {
        using ManualResetEventSlim seen = new();
        session.Changed += Look;
        Look();
        bool isSeen = seen.Wait(TimeSpan.FromMinutes(3));
        session.Changed -= Look;
        Assert.True(isSeen, session.Now.Fault);

        void Look()
        {
            if (holds(session.Now))
                seen.Set();
        }
    }
}
