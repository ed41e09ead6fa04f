using Finwright.Design;
using Finwright.Strength.Files;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests.Storing;

public sealed class WorkshopStoreTests
{
    [Fact]
    public void What_was_kept_is_there_when_the_store_is_opened_again()
    {
        using TemporaryStore place = new();
        using (WorkshopStore store = place.Open())
        {
            Revision first = store.Shelf.Add("Mudflat", SampleFins.Entry(note: "as drawn"), ["slalom", "21 cm"]);
            Revision second = store.Shelf.Revise(first.DesignId, SampleFins.Entry(massKg: 12, note: "less weight"));
            StockItem spool = store.Stock.Add(new() { Kind = StockKind.Filament, Name = "grey PETG", Batch = "B7", Quantity = 1000, Unit = StockUnit.Grams, Price = 21.5, Currency = "EUR", BoughtOn = new(2027, 3, 1) });
            Build build = store.Builds.Add(new() { RevisionId = second.Id, Name = "Mudflat one", FilamentId = spool.Id, PlasticGrams = 181.5, MadeOn = new(2027, 4, 2) });
            store.Stock.Use(new(0, spool.Id, build.Id, 181.5, new(2027, 4, 2), ""));
            store.Builds.Keep(build.Id, new BuildPart("blade", new(2027, 4, 1), spool.Id, 150, 9.5, "clean"));
            store.Builds.Keep(build.Id, new BuildPhoto("photos/blade.jpg", "the blade"));
            BenchSession session = store.Bench.Add(new(0, build.Id, new(2027, 4, 9), RootHold.Clamped, "in the vice", [new(1, 10, 190, ChordPlace.MidChord, 190, ChordPlace.TrailingEdge, new(8.2, 0.2), null, "dial gauge")]));
            store.Outings.Add(new() { SailedOn = new(2027, 5, 1), Place = "the estuary", BuildId = build.Id, Grip = 4, SpinOuts = 0 }, new("a.gpx", new string('a', 64), [1, 2, 3]));
            store.Calibrations.Add([new(0, new(2027, 4, 10, 8, 0, 0, TimeSpan.Zero), "test", build.Id, spool.Id, null, LearnedQuantity.WallStiffness, 0.9, 0.85, 0.95, [session.Id], "")]);
        }

        using WorkshopStore again = place.Open();
        ShelvedDesign design = Assert.Single(again.Shelf.List());
        Assert.Equal(("Mudflat", 2, 1, "less weight", "Mudflat@1"), (design.Name, design.Revisions, design.Builds, design.Latest.Note, design.Latest.Parent));
        Assert.Equal(["slalom", "21 cm"], design.Tags);
        Assert.Equal(12, again.Shelf.Read(design.Latest.Id).Design!.Prove.MassKg);
        Assert.Equal(15, again.Shelf.Read(again.Shelf.Get(Reference.Parse("mudflat@1")).Id).Design!.Prove.MassKg);
        StockItem left = again.Stock.Get("grey petg");
        Assert.Equal((818.5, new DateOnly(2027, 3, 1), StockUnit.Grams), (left.Left, left.BoughtOn, left.Unit));
        Build kept = again.Builds.Get("MUDFLAT ONE");
        Assert.Equal(("Mudflat@2", 181.5, null), (kept.Revision, kept.PlasticGrams, kept.ResinMl));
        Assert.Equal(new BuildPart("blade", new(2027, 4, 1), left.Id, 150, 9.5, "clean"), Assert.Single(again.Builds.Parts(kept.Id)));
        Assert.Equal(new BuildPhoto("photos/blade.jpg", "the blade"), Assert.Single(again.Builds.Photos(kept.Id)));
        BenchSession readings = Assert.Single(again.Bench.List(kept.Id));
        Assert.Equal(new BenchReadingLine(1, 10, 190, ChordPlace.MidChord, 190, ChordPlace.TrailingEdge, new(8.2, 0.2), null, "dial gauge"), Assert.Single(readings.Readings));
        Assert.Equal(RootHold.Clamped, readings.RootHold);
        Outing outing = Assert.Single(again.Outings.List(kept.Id));
        Assert.Equal(("the estuary", "Mudflat one", 4, true), (outing.Place, outing.Build, outing.Grip, outing.HasTrack));
        Assert.Equal([1, 2, 3], again.Outings.Track(outing.Id)!.Points);
        Calibration learned = Assert.Single(again.Calibrations.List());
        Assert.Equal((LearnedQuantity.WallStiffness, 0.9, readings.Id), (learned.Quantity, learned.Factor, Assert.Single(learned.Sessions)));
    }

    [Fact]
    public void Changes_made_together_are_all_undone_when_one_of_them_fails()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        StoreException problem = Assert.Throws<StoreException>(() => store.Together(() =>
        {
            store.Shelf.Add("Mudflat", SampleFins.Entry(), []);
            store.Shelf.Add("mudflat", SampleFins.Entry(), []);
        }));
        Assert.Equal(StoreProblem.Wrong, problem.Problem);
        Assert.Empty(store.Shelf.List());
    }

    [Theory]
    [InlineData("a ?#%20;='\"é|x")]
    [InlineData("file:workshop.finstore")]
    [InlineData(":memory:")]
    [InlineData("|DataDirectory|")]
    [InlineData(" workshop ")]
    public void A_store_lies_where_it_was_asked_for_whatever_its_name(string name)
    {
        using TemporaryStore place = new();
        string file = Path.Combine(place.Folder, name, name);
        for (int i = 0; i < 2; i++)
        {
            using WorkshopStore store = WorkshopStore.Open(file);
            store.Outings.Add(new() { SailedOn = new(2027, 5, 1) }, null);
            Assert.Equal(i + 1, store.Outings.List().Count);
        }

        Assert.Equal([file], Directory.EnumerateFiles(place.Folder, "*", SearchOption.AllDirectories), StringComparer.Ordinal);
        using (WorkshopStore store = WorkshopStore.Open(file))
            StoreBackup.Write(store, file + " copy");
        using WorkshopStore copy = WorkshopStore.Open(file + " copy");
        Assert.Equal(2, copy.Outings.List().Count);
    }

    [Fact]
    public void A_store_that_is_not_there_is_empty_and_is_not_made_by_looking()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = WorkshopStore.Open(place.File, create: false);
        Assert.Empty(store.Shelf.List());
        Assert.NotNull(store.Refusal);
        Assert.Throws<StoreException>(() => store.Shelf.Add("Mudflat", SampleFins.Entry(), []));
        Assert.False(File.Exists(place.File));
    }
}
