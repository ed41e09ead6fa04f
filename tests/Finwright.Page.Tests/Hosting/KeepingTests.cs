using System.Text.Json.Nodes;
using Finwright.Page.Editing;

namespace Finwright.Page.Tests.Hosting;

/// <summary>What becomes of changes that cannot be written.</summary>
public sealed class KeepingTests : IDisposable
{
    private const string Span = "$.shape.outline.span_mm";

    private readonly Workbench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_change_that_cannot_be_written_stays_on_the_page_and_is_written_later()
    {
        DesignSession session = _bench.Session();
        session.Set(Span, JsonValue.Create(301.0), "first");
        session.Set(Span, JsonValue.Create(302.0), "second");
        string first = _bench.Desk.Ask(store => store.Drafts.Step(session.DesignId, 1).Text), second = _bench.Desk.Ask(store => store.Drafts.Step(session.DesignId, 2).Text);
        // Another program threw the draft away: what comes next does not follow, and is refused.
        _bench.Desk.Note(store => store.Drafts.Begin(session.DesignId, session.Base.Id, first));
        Assert.Empty(session.Set(Span, JsonValue.Create(303.0), "third"));
        Assert.Equal(303, session.Now.Design.Shape.Outline.SpanMm);
        Assert.NotNull(session.NotKept);
        Assert.Empty(session.Set("$.shape.outline.root_chord_mm", JsonValue.Create(121.0), "fourth"));
        Assert.NotNull(session.NotKept);
        // Taking back what is not written would lose it.
        session.Undo();
        Assert.Equal(303, session.Now.Design.Shape.Outline.SpanMm);
        _bench.Desk.Note(store => store.Drafts.Keep(session.DesignId, new(1, "first", Span, first)));
        _bench.Desk.Note(store => store.Drafts.Keep(session.DesignId, new(2, "second", Span, second)));
        session.LetGo();
        Assert.Null(session.NotKept);
        using OpenDesigns restarted = _bench.Restarted();
        DesignSession again = restarted.Open(session.Name)!;
        Assert.Equal((303.0, 121.0), (again.Now.Design.Shape.Outline.SpanMm, again.Now.Design.Shape.Outline.RootChordMm));
        again.Undo();
        Assert.Equal((303.0, 120.0), (again.Now.Design.Shape.Outline.SpanMm, again.Now.Design.Shape.Outline.RootChordMm));
    }

    [Fact]
    public void A_slide_that_another_change_follows_at_once_is_kept_to_its_end()
    {
        DesignSession session = _bench.Session();
        foreach (double span in new[] { 301.0, 305, 309 })
            session.Set(Span, JsonValue.Create(span), "span", goesOn: true);
        session.Set("$.shape.outline.root_chord_mm", JsonValue.Create(121.0), "chord");
        session.Undo();
        Assert.Equal(309, session.Now.Design.Shape.Outline.SpanMm);
    }
}
