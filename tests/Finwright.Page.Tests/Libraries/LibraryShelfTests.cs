using Finwright.Design;
using Finwright.Page.Editing;
using Finwright.Page.Libraries;
using Finwright.Workshop.Library;

namespace Finwright.Page.Tests.Libraries;

public sealed class LibraryShelfTests : IDisposable
{
    private readonly Workbench _bench = new();
    private readonly LibraryShelf _shelf;

    public LibraryShelfTests() => _shelf = new(_bench.Desk);

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Every_kind_has_something_that_came_along_and_each_can_be_taken_without_an_error()
    {
        DesignSession session = _bench.Session();
        foreach (LibraryKind kind in LibraryShelf.Kinds)
        {
            IReadOnlyList<LibraryEntry> known = [.. _shelf.All(kind).Where(entry => entry.IsKnown)];
            Assert.NotEmpty(known);
            foreach (LibraryEntry entry in known)
            {
                DesignReading reading = entry.Content!.Into(session.Now.Design, isKnown: true);
                Assert.DoesNotContain(reading.Findings, finding => finding.IsError);
                Assert.Same(entry.Content, LibraryShelf.FindKnown(kind, entry.Key)!.Content);
                Assert.Equal(kind, LibraryShelf.KindOf(LibraryFile.WordOf(kind)));
            }
        }
    }

    [Fact]
    public void A_measured_box_taken_into_a_design_is_one_step_that_undo_takes_back()
    {
        LibraryItem item = _shelf.Keep(new DesignPart(LibraryKind.Box, "Blue board", "", BoxMeasuringTests.Measured().Carrier!));
        DesignSession session = _bench.Session();
        LibraryContent content = _shelf.Find(LibraryKind.Box, item.Id)!.Content!;
        Assert.Empty(session.Change("", "take Blue board", design => content.Into(design, isKnown: false)));
        // It has no bolts: what still holds came with it.
        Assert.Equal(Fixing.BaseOnly, session.Now.Design.Base.Fixing);
        Assert.Equal((BoxKind.Measured, 150), (session.Now.Design.Base.Box, session.Now.Design.Base.Measured!.HullLengthMm));
        session.Undo();
        Assert.Equal((BoxKind.TwoBoltTapered, Fixing.ThroughBolts), (session.Now.Design.Base.Box, session.Now.Design.Base.Fixing));
        Assert.False(session.CanUndo);
    }

    [Fact]
    public void What_a_design_holds_can_be_kept_and_copies_get_a_number()
    {
        FinDesign design = _bench.Design with { Brief = _bench.Design.Brief with { SailAreaM2 = 4.7 } };
        DesignPart sail = Assert.IsType<DesignPart>(Assert.Single(PartsOfDesign.Of(LibraryKind.Sail, design, "")));
        Assert.Equal("Storm", _shelf.Keep(LibraryShelf.Renamed(sail, "Storm")).Name);
        Assert.Equal("Storm 2", _shelf.Keep(LibraryShelf.Renamed(sail, "Storm")).Name);
        Assert.Empty(PartsOfDesign.Of(LibraryKind.Resin, design, ""));
        KeptResin resin = _shelf.All(LibraryKind.Resin).Select(entry => entry.Content).OfType<KeptResin>().First();
        FinDesign carrying = LibraryShelf.Renamed(resin, "Ours").Into(design, isKnown: false).Design!;
        Assert.Equal("Ours", Assert.Single(PartsOfDesign.Of(LibraryKind.Resin, carrying, "")).Name);
    }

    [Fact]
    public void A_draft_says_what_is_wrong_and_gives_nothing_until_it_is_mended()
    {
        PartDraft draft = new(DesignPart.Usual(LibraryKind.Box, "Mine", ""));
        Assert.DoesNotContain("$.base.measured", draft.Paths);
        draft.Set("$.base.box", "measured");
        Assert.Contains("$.base.measured", draft.Paths);
        draft.Set("$.base.measured", System.Text.Json.Nodes.JsonNode.Parse("""{ "hull_length_mm": 150, "hull_width_mm": 16, "front_depth_mm": 40 }"""));
        Assert.Null(draft.Content);
        Assert.Contains(draft.Findings, finding => finding.IsError);
        draft.Set("$.base.measured.deep_length_mm", 138);
        Assert.NotNull(draft.Content);
    }
}
