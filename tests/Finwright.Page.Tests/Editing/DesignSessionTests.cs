using System.Text.Json.Nodes;
using Finwright.Page.Editing;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Tests.Editing;

public sealed class DesignSessionTests : IDisposable
{
    private const string Span = "$.shape.outline.span_mm";

    private readonly Workbench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Every_step_can_be_taken_back_and_taken_again()
    {
        DesignSession session = _bench.Session();
        for (int span = 301; span <= 400; span++)
            session.Set(Span, JsonValue.Create((double)span), "span");
        for (int span = 399; span >= 300; span--)
        {
            session.Undo();
            Assert.Equal(span, session.Now.Design.Shape.Outline.SpanMm);
        }

        Assert.False(session.CanUndo);
        Assert.False(session.Differs);
        for (int i = 0; i < 100; i++)
            session.Redo();
        Assert.Equal(400, session.Now.Design.Shape.Outline.SpanMm);
        Assert.False(session.CanRedo);
    }

    [Fact]
    public void A_hand_that_moves_one_thing_makes_one_step()
    {
        DesignSession session = _bench.Session();
        for (int span = 301; span <= 320; span++)
            session.Set(Span, JsonValue.Create((double)span), "span", goesOn: true);
        session.LetGo();
        session.Set(Span, JsonValue.Create(330.0), "span", goesOn: true);
        session.LetGo();
        session.Undo();
        Assert.Equal(320, session.Now.Design.Shape.Outline.SpanMm);
        session.Undo();
        Assert.Equal(300, session.Now.Design.Shape.Outline.SpanMm);
    }

    [Fact]
    public void A_change_after_undo_drops_the_steps_that_were_taken_back()
    {
        DesignSession session = _bench.Session();
        session.Set(Span, JsonValue.Create(310.0), "span");
        session.Set(Span, JsonValue.Create(320.0), "span");
        session.Undo();
        session.Set(Span, JsonValue.Create(305.0), "span");
        Assert.False(session.CanRedo);
        session.Undo();
        Assert.Equal(310, session.Now.Design.Shape.Outline.SpanMm);
    }

    [Fact]
    public void After_a_restart_draft_and_steps_are_as_they_were()
    {
        DesignSession session = _bench.Session();
        session.Set(Span, JsonValue.Create(310.0), "span");
        session.Set(Span, JsonValue.Create(320.0), "span");
        session.Undo();
        // Not disposed of: the program was killed.
        using OpenDesigns again = _bench.Restarted();
        DesignSession back = again.Open(_bench.Design.Name)!;
        Assert.Equal(310, back.Now.Design.Shape.Outline.SpanMm);
        Assert.True(back.CanRedo);
        back.Redo();
        Assert.Equal(320, back.Now.Design.Shape.Outline.SpanMm);
    }

    [Fact]
    public void A_design_that_cannot_be_drawn_keeps_the_last_shape_and_says_why()
    {
        DesignSession session = _bench.Session();
        long drawn = session.Now.ShapeVersion;
        session.Set(Span, JsonValue.Create(5000.0), "span");
        Assert.Equal(5000, session.Now.Design.Shape.Outline.SpanMm);
        Assert.Equal(drawn, session.Now.ShapeVersion);
        Assert.Contains(session.Now.Findings, finding => finding.IsError && finding.Path == Span);
        session.Undo();
        Assert.Equal(session.Now.Version, session.Now.ShapeVersion);
    }

    [Fact]
    public void A_revision_is_kept_with_its_parent_and_only_when_something_changed()
    {
        DesignSession session = _bench.Session();
        Assert.Throws<StoreException>(() => session.KeepAsRevision("nothing"));
        session.Set(Span, JsonValue.Create(310.0), "span");
        Assert.Equal(2, session.KeepAsRevision("deeper").Number);
        Assert.False(session.Differs);
        Assert.Equal("Plain@1", session.Base.Parent);
        session.Undo();
        Assert.True(session.Differs);
    }

    [Fact]
    public async Task Water_and_strength_follow_in_the_background()
    {
        DesignSession session = _bench.Session();
        Assert.True(await Until(session, () => session.Now.Reach >= Reach.Sailing, TimeSpan.FromMinutes(2)));
        double cruise = session.Now.Sailing!.Afloat!.Cases[0].UnderHull.Asked;
        session.Set("$.brief.side_force_n", JsonValue.Create(1.5 * cruise), "side force");
        Assert.True(await Until(session, () => !session.Now.SailingIsOld, TimeSpan.FromMinutes(1)));
        session.Stop();
        Assert.True(session.Now.IsStopped);
    }

    private static async Task<bool> Until(DesignSession session, Func<bool> holds, TimeSpan patience)
    {
        using CancellationTokenSource end = new(patience);
        while (!holds() && !end.IsCancellationRequested)
            await Task.Delay(50, TestContext.Current.CancellationToken);
        return holds() && session.Now.Fault is null;
    }
}
