using Finwright.Design;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Exchange.Stores;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Season;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Tests.Season;

public sealed class DemoSeasonTests : IDisposable
{
    private readonly TemporaryStore _place = new();
    private readonly WorkshopStore _store;

    public DemoSeasonTests() => _store = _place.Open();

    public void Dispose()
    {
        _store.Dispose();
        _place.Dispose();
    }

    [Fact]
    public void The_season_is_whole()
    {
        StoreContents contents = Load();
        Assert.Equal((3, 8, 6, 6, 15, 13, 5), (contents.Designs, contents.Revisions, contents.Builds, contents.BenchSessions, contents.Outings, contents.Tracks, contents.StockItems));
        foreach (ShelvedDesign design in _store.Shelf.List())
        {
            foreach (Revision own in _store.Shelf.Revisions(design.Id))
            {
                DesignReading reading = _store.Shelf.Read(own.Id);
                Assert.False(reading.HasErrors, own.Label);
                Assert.StartsWith("<svg", _store.Shelf.Picture(own.Id), StringComparison.Ordinal);
                Assert.Equal(2027, own.MadeAt.Year);
                Assert.NotEmpty(own.Note);
            }
        }

        Assert.Equal("Fairway upright@2", _store.Shelf.Get(Reference.Parse("Fairway upright@3")).Parent);
        Assert.All(_store.Stock.List(), item => Assert.True(item.Left >= 0, $"{item.Label}: {item.Left}"));
        Assert.Single(_store.Builds.List(), build => build.Problems.Length > 0);
        foreach (Build build in _store.Builds.List())
        {
            Assert.True(build.Cost > 5 && build.MassGrams > 100 && build.PeakCelsius > build.RoomCelsius, build.Name);
            // A fin weighs what went into it, less what was cut off and what stayed in cups: resin weighs 1.1 to 1.2 g/ml (common practice, no source).
            Assert.InRange(build.MassGrams!.Value, 0.75 * (build.PlasticGrams!.Value + 1.1 * build.ResinMl!.Value), build.PlasticGrams.Value + 1.2 * build.ResinMl.Value + 120);
            Assert.All(_store.Outings.List(build.Id), own => Assert.True(own.SailedOn > build.MadeOn));
            Assert.All(_store.Bench.List(build.Id), own => Assert.True(own.TakenOn > build.MadeOn));
            Assert.True(DateOnly.FromDateTime(_store.Shelf.Find(build.RevisionId)!.MadeAt.UtcDateTime) < build.MadeOn);
        }
    }

    [Fact]
    public void The_faster_fin_is_told_from_the_slower_and_equal_ones_are_not_told_apart()
    {
        Load();
        FairComparison fairway = Compare("Fairway grey", "Fairway black"), sandbar = Compare("Sandbar one", "Sandbar two");
        Assert.Equal(FairVerdict.SecondFaster, fairway.Verdict);
        Assert.Equal(DayHandling.WithinDays, fairway.Days);
        // It was made a knot faster.
        Assert.InRange(1852.0 / 3600, -fairway.High!.Value, -fairway.Low!.Value);
        Assert.Equal(FairVerdict.CannotTell, sandbar.Verdict);
        Assert.InRange(0, sandbar.Low!.Value, sandbar.High!.Value);
        Assert.Equal(FairVerdict.NotComparable, Compare("Eelgrass one", "Eelgrass two").Verdict);
        Assert.All((FairSide[])[fairway.First, fairway.Second, sandbar.First, sandbar.Second], side => Assert.Equal((42, 3), (side.Runs, side.Days)));
    }

    [Fact]
    public void Tracks_are_sound_and_their_runs_are_found()
    {
        Load();
        foreach (Outing outing in _store.Outings.List().Where(own => own.HasTrack))
        {
            TrackMeasures measures = TrackMeasures.Of(OutingTracks.Of(_store, outing)!);
            Assert.Equal(14, measures.Runs.Count);
            Assert.DoesNotContain(measures.Findings, finding => finding.Severity != Severity.Note);
            Assert.All(measures.Runs, run => Assert.InRange(run.BestTenSeconds!.Speed, 10, 17));
        }
    }

    [Fact]
    public void A_name_that_is_taken_keeps_all_of_it_out()
    {
        Revision mine = _store.Shelf.Add("Mine", SampleFins.Entry(), []);
        _store.Builds.Add(new() { RevisionId = mine.Id, Name = "eelgrass TWO" });
        StoreException refusal = Assert.Throws<StoreException>(Load);
        Assert.Contains("eelgrass TWO", refusal.Message, StringComparison.Ordinal);
        Assert.Single(_store.Shelf.List());
        Assert.Empty(_store.Stock.List());
        Assert.Throws<StoreException>(() =>
        {
            _store.Builds.Delete(_store.Builds.Get("eelgrass two").Id);
            Load();
            Load();
        });
        Assert.Equal(4, _store.Shelf.List().Count);
    }

    [Fact]
    public void The_season_is_the_same_every_time_and_goes_out_and_in()
    {
        Load();
        using TemporaryStore second = new();
        using WorkshopStore other = second.Open();
        StoreImport.Read(new MemoryStream(Exported(_store)), other);
        Assert.Equal(Exported(_store), Exported(other));
        Assert.Equal(_store.Outings.Track(1)!.Points, SeasonBuilds.Fairway[0].Outings[0].Bundled().Track!.Points);
    }

    private StoreContents Load() => DemoSeason.Load(_store, SeasonDemos.Find, "Finwright test", TestContext.Current.CancellationToken);

    private FairComparison Compare(string first, string second) => OutingComparison.Of(_store, _store.Builds.Get(first), _store.Builds.Get(second)).Comparison;

    private static byte[] Exported(WorkshopStore store)
    {
        using MemoryStream stream = new();
        StoreExport.Write(store, "Finwright test", stream);
        return stream.ToArray();
    }
}
