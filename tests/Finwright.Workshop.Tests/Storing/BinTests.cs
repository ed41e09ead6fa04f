using Finwright.Design;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Library;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Tests.Storing;

/// <summary>What is deleted can be had back for 30 days; what is kept forgets nothing.</summary>
public sealed class BinTests
{
    public static TheoryData<BinKind> Kinds => new(Enum.GetValues<BinKind>());

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_deleted_thing_is_had_back_as_it_was(BinKind kind)
    {
        using TemporaryStore place = new();
        ManualTime time = new();
        using WorkshopStore store = place.Open(time);
        (long id, Action delete) = Alone(store, kind);
        string before = Show(store);
        delete();
        Assert.NotEqual(before, Show(store), StringComparer.Ordinal);
        BinItem item = Assert.Single(store.Bin.List());
        Assert.Equal((kind, id, time.Now, time.Now.AddDays(30)), (item.Kind, item.Id, item.DeletedAt, item.GoneAfter));
        Assert.NotEmpty(item.Name);
        Assert.Equal(StoreProblem.Wrong, Assert.Throws<StoreException>(delete).Problem);
        time.Now += TimeSpan.FromDays(30);
        store.Restore(kind, id);
        Assert.Equal(before, Show(store));
        Assert.Empty(store.Bin.List());
        Assert.Equal(StoreProblem.Wrong, Assert.Throws<StoreException>(() => store.Restore(kind, id)).Problem);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_thing_deleted_long_ago_goes_when_another_is_deleted_and_not_by_opening(BinKind kind)
    {
        using TemporaryStore place = new();
        ManualTime time = new();
        long id;
        using (WorkshopStore store = place.Open(time))
        {
            (id, Action delete) = Alone(store, kind);
            delete();
        }

        time.Now += TimeSpan.FromDays(30.01);
        using WorkshopStore later = place.Open(time);
        Assert.Equal(id, Assert.Single(later.Bin.List()).Id);
        long outing = later.Outings.Add(new() { SailedOn = new(2027, 6, 1) }, null).Id;
        later.Outings.Delete(outing);
        Assert.Equal((BinKind.Outing, outing), (Assert.Single(later.Bin.List()).Kind, later.Bin.List()[0].Id));
        later.Connection.Database.IsSound();
    }

    [Fact]
    public void What_a_kept_thing_names_stays_however_long_ago_it_was_deleted()
    {
        using TemporaryStore place = new();
        ManualTime time = new();
        using WorkshopStore store = place.Open(time);
        Revision revision = store.Shelf.Add("Fin", SampleFins.BareEntry("Fin"), []);
        StockItem spool = store.Stock.Add(Spool("B1"));
        Build sailed = store.Builds.Add(new() { RevisionId = revision.Id, Name = "sailed", FilamentId = spool.Id });
        Build built = store.Builds.Add(new() { RevisionId = revision.Id, Name = "built", FilamentId = spool.Id });
        store.Stock.Use(new(0, spool.Id, built.Id, 150, null, ""));
        Outing outing = store.Outings.Add(new() { SailedOn = new(2027, 5, 1), BuildId = sailed.Id }, null);
        BenchSession session = store.Bench.Add(Readings(built.Id));
        store.Calibrations.Add([Learned(built.Id, session.Id)]);
        store.Stock.Delete(spool.Id);
        store.Builds.Delete(sailed.Id);
        store.Bench.Delete(session.Id);
        time.Now += TimeSpan.FromDays(400);
        store.Outings.Delete(store.Outings.Add(new() { SailedOn = new(2027, 6, 1) }, null).Id);

        Assert.Equal("B1", store.Stock.Get(store.Builds.Get("built").FilamentId!.Value).Batch);
        Assert.Equal("sailed", store.Outings.Get(outing.Id).Build);
        Assert.Equal(session.Id, Assert.Single(Assert.Single(store.Calibrations.List()).Sessions));
        store.Restore(BinKind.Build, sailed.Id);
        Assert.Equal(2, store.Builds.List().Count);
    }

    [Fact]
    public void A_design_with_builds_is_not_deleted_and_a_build_without_its_design_is_not_had_back()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        Revision revision = store.Shelf.Add("Fin", SampleFins.BareEntry("Fin"), []);
        Build build = store.Builds.Add(new() { RevisionId = revision.Id, Name = "one" });
        StoreException problem = Assert.Throws<StoreException>(() => store.Shelf.Delete(revision.DesignId));
        Assert.Contains("one", problem.Message, StringComparison.Ordinal);
        Assert.Single(store.Shelf.List());
        store.Builds.Delete(build.Id);
        store.Shelf.Delete(revision.DesignId);
        Assert.Equal(StoreProblem.Wrong, Assert.Throws<StoreException>(() => store.Restore(BinKind.Build, build.Id)).Problem);
        store.Restore(BinKind.Design, revision.DesignId);
        store.Restore(BinKind.Build, build.Id);
        Assert.Single(store.Builds.List());
    }

    [Fact]
    public void Readings_and_calibrations_of_a_deleted_build_go_and_come_with_it()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        Revision revision = store.Shelf.Add("Fin", SampleFins.BareEntry("Fin"), []);
        Build build = store.Builds.Add(new() { RevisionId = revision.Id, Name = "one" });
        BenchSession session = store.Bench.Add(Readings(build.Id)), deleted = store.Bench.Add(Readings(build.Id));
        store.Calibrations.Add([Learned(build.Id, session.Id)]);
        store.Bench.Delete(deleted.Id);
        store.Builds.Delete(build.Id);
        Assert.Empty(store.Bench.List());
        Assert.Empty(store.Calibrations.List());
        StoreException problem = Assert.Throws<StoreException>(() => store.Restore(BinKind.Bench, deleted.Id));
        Assert.Contains("\"one\" is deleted", problem.Message, StringComparison.Ordinal);
        Assert.Throws<StoreException>(() => store.Bench.Add(Readings(build.Id)));
        store.Builds.Restore("ONE");
        Assert.Equal(session.Id, Assert.Single(store.Bench.List()).Id);
        Assert.Single(store.Calibrations.List());
    }

    [Fact]
    public void A_name_that_was_given_away_meanwhile_keeps_a_thing_in_the_bin()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        Revision revision = store.Shelf.Add("Fin", SampleFins.BareEntry("Fin"), []);
        store.Shelf.Delete(revision.DesignId);
        store.Shelf.Add("fin", SampleFins.BareEntry("fin"), []);
        Assert.Equal(StoreProblem.Wrong, Assert.Throws<StoreException>(() => store.Restore(BinKind.Design, revision.DesignId)).Problem);
        Assert.Single(store.Bin.List());
        StockItem spool = store.Stock.Add(Spool("B1"));
        store.Stock.Delete(spool.Id);
        store.Stock.Add(Spool("b1"));
        Assert.Equal(StoreProblem.Wrong, Assert.Throws<StoreException>(() => store.Restore(BinKind.Stock, spool.Id)).Problem);
    }

    [Theory]
    [InlineData("text = 'other'")]
    [InlineData("hash = ''")]
    [InlineData("note = 'other'")]
    [InlineData("number = 9")]
    [InlineData("design_id = 1")]
    [InlineData("id = 77")]
    public void A_revision_is_never_changed(string change)
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        Revision revision = store.Shelf.Add("Fin", SampleFins.BareEntry("Fin"), []);
        SqliteException problem = Assert.Throws<SqliteException>(() => store.Connection.Database.Run($"UPDATE revision SET {change}"));
        Assert.Contains("never changed", problem.Message, StringComparison.Ordinal);
        Assert.Equal(revision, store.Shelf.Get(Reference.Parse("Fin@1")));
    }

    /// <summary>Something of a kind that nothing else names.</summary>
    private static (long Id, Action Delete) Alone(WorkshopStore store, BinKind kind)
    {
        Revision revision = store.Shelf.Add("Fin", SampleFins.BareEntry("Fin"), []);
        switch (kind)
        {
            case BinKind.Design:
                return (revision.DesignId, () => store.Shelf.Delete(revision.DesignId));
            case BinKind.Outing:
                long outing = store.Outings.Add(new() { SailedOn = new(2027, 5, 1), Place = "the bay" }, new("a.gpx", new string('a', 64), [1, 2])).Id;
                return (outing, () => store.Outings.Delete(outing));
            case BinKind.Stock:
                long item = store.Stock.Add(Spool("B1")).Id;
                store.Stock.Use(new(0, item, null, 10, null, ""));
                return (item, () => store.Stock.Delete(item));
            case BinKind.Library:
                long box = store.Library.Add(DesignPart.Usual(LibraryKind.Box, "Box", "")).Id;
                return (box, () => store.Library.Delete(box));
        }

        long build = store.Builds.Add(new() { RevisionId = revision.Id, Name = "one" }).Id;
        if (kind == BinKind.Build)
            return (build, () => store.Builds.Delete(build));
        long session = store.Bench.Add(Readings(build)).Id;
        if (kind == BinKind.Bench)
            return (session, () => store.Bench.Delete(session));
        long calibration = store.Calibrations.Add([Learned(build, session)])[0].Id;
        return (calibration, () => store.Calibrations.Delete(calibration));
    }

    private static StockItem Spool(string batch) => new() { Kind = StockKind.Filament, Name = "grey PETG", Batch = batch, Quantity = 1000, Unit = StockUnit.Grams };

    private static BenchSession Readings(long build) => new(0, build, new(2027, 4, 9), RootHold.Clamped, "", [new(1, 10, 190, ChordPlace.MidChord, 190, ChordPlace.MidChord, new(8.2, 0.2), null, "")]);

    private static Calibration Learned(long build, long session) =>
        new(0, new(2027, 4, 10, 8, 0, 0, TimeSpan.Zero), "test", build, null, null, LearnedQuantity.WallStiffness, 0.9, 0.85, 0.95, [session], "");

    private static string Show(WorkshopStore store) => string.Join('\n', (string[])
    [
        .. store.Shelf.List().Select(design => $"{design.Name} {design.Revisions}"),
        .. store.Stock.List().Select(item => item.ToString()),
        .. store.Builds.List().Select(build => build.ToString()),
        .. store.Bench.List().Select(session => $"{session.Id} {session.Readings.Count}"),
        .. store.Outings.List().Select(outing => outing.ToString()),
        .. store.Library.List().Select(item => item.ToString()),
        .. store.Calibrations.List().Select(calibration => $"{calibration.Id} {calibration.Factor} {calibration.Sessions.Count}"),
    ]);
}
