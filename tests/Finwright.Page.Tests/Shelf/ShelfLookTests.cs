using System.Text.Json.Nodes;
using Finwright.Page.Editing;
using Finwright.Page.Shelf;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Tests.Shelf;

public sealed class ShelfLookTests : IDisposable
{
    private readonly Workbench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Search_and_tag_narrow_the_shelf()
    {
        Copy("Weedy", "weed");
        Copy("Deep", "fairway, weed");
        Assert.Equal(3, Look("", "").Items.Count);
        Assert.Equal("Weedy", Assert.Single(Look("weedy", "").Items).Design.Name);
        Assert.Equal(2, Look("", "WEED").Items.Count);
        Assert.Equal([("fairway", 1), ("weed", 2)], Look("", "").Tags);
        Assert.Empty(Look("nothing like it", "").Items);
        Assert.Equal(3, Look("nothing like it", "").All);
    }

    [Fact]
    public void Changes_that_are_no_revision_yet_are_told()
    {
        DesignSession session = _bench.Session();
        Assert.False(Assert.Single(Look("", "").Items).HasUnkept);
        session.Set("$.shape.outline.span_mm", JsonValue.Create(310.0), "span");
        Assert.True(Assert.Single(Look("", "").Items).HasUnkept);
        session.KeepAsRevision("deeper");
        ShelfItem kept = Assert.Single(Look("", "").Items);
        Assert.False(kept.HasUnkept);
        Assert.Equal(2, kept.Design.Revisions);
    }

    [Fact]
    public void Verdicts_are_those_of_the_latest_revision_and_order_the_shelf()
    {
        Revision failing = Copy("Failing", ""), holding = Copy("Holding", "");
        Keep(failing, "fails", "holds", "tight");
        Keep(holding, "holds", "not known");
        IReadOnlyList<ShelfItem> items = Look("", "", ShelfOrder.Verdict).Items;
        Assert.Equal(["Failing", "Holding", "Plain"], items.Select(item => item.Design.Name));
        Assert.Equal(new VerdictCount(1, 1, 0, 1), items[0].Verdicts);
        Assert.Equal(new VerdictCount(0, 0, 1, 1), items[1].Verdicts);
        Assert.Null(items[2].Verdicts);
    }

    [Fact]
    public void A_copy_remembers_where_it_came_from_and_needs_a_free_name()
    {
        Assert.Equal("Plain@1", Copy("Other", "").Parent);
        Assert.Throws<StoreException>(() => Copy("Other", ""));
        Assert.Equal("Plain 2", _bench.Desk.Ask(store => ShelfCopy.FreeName(store, "Plain")));
        string longest = new('x', 80);
        Copy(longest, "");
        Assert.Equal(80, _bench.Desk.Ask(store => ShelfCopy.FreeName(store, longest)).Length);
    }

    [Theory]
    [InlineData("a/b\\c:d", "a-b-c-d")]
    [InlineData("..", "fin")]
    [InlineData("Schöner Fisch", "Schöner Fisch")]
    public void Names_of_saved_files_suit_every_system(string name, string expected) => Assert.Equal(expected, FileName.Of(name));

    private Revision Copy(string name, string tags) => _bench.Desk.Change(store =>
    {
        Revision copy = ShelfCopy.Of(store, store.Shelf.Get(new("Plain", 1)), name, "test");
        store.Shelf.Tag(copy.DesignId, tags.Split(','));
        return copy;
    });

    private void Keep(Revision revision, params string[] words) => _bench.Desk.Change(store => Predictions.Keep(store, revision, _bench.Desk.ProgramVersion, new()
    {
        Name = revision.DesignName,
        DesignSha256 = "",
        Groups = [ResultGroup.Verdicts],
        Lines = [.. words.Select((word, i) => new ResultLine($"verdict.{i}", ResultGroup.Verdicts, "v", null, word, "", null, null, 0))],
    }));

    private ShelfLook Look(string search, string tag, ShelfOrder order = ShelfOrder.Name) => ShelfLook.Of(_bench.Desk, search, tag, order);
}
