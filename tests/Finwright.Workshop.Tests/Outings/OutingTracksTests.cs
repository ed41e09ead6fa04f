using System.Security.Cryptography;
using System.Text;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tests.Tracks;
using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Tests.Outings;

public sealed class OutingTracksTests
{
    [Fact]
    public void A_track_goes_through_the_store_unchanged_and_is_known_by_its_file()
    {
        byte[] file = Encoding.UTF8.GetBytes(new TrackMaker(5).Sail(12, 60).Gpx());
        using MemoryStream stream = new(file);
        (TrackReading reading, KeptTrack? kept) = OutingTracks.Read(stream, "a.gpx", TestContext.Current.CancellationToken);
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(file)), kept!.Hash);
        using TemporaryStore temporary = new();
        using WorkshopStore store = temporary.Open();
        Outing outing = store.Outings.Add(new() { SailedOn = new(2026, 7, 14) }, kept);
        Track track = OutingTracks.Of(store, outing)!;
        Assert.Equal(reading.Track!.Points, track.Points);
        Assert.Equal(reading.Track.Start, track.Start);
        Assert.Null(OutingTracks.Of(store, store.Outings.Add(new() { SailedOn = new(2026, 7, 15) }, null)));
    }

    [Fact]
    public void A_damaged_track_is_told_as_damaged_with_its_outing_and_its_file()
    {
        using TemporaryStore temporary = new();
        using WorkshopStore store = temporary.Open();
        Outing outing = store.Outings.Add(new() { SailedOn = new(2026, 7, 14) }, new("afternoon.gpx", new string('0', 64), [1, 2, 3]));
        StoreException problem = Assert.Throws<StoreException>(() => OutingTracks.Of(store, outing));
        Assert.Equal(StoreProblem.Damaged, problem.Problem);
        Assert.Contains($"outing {outing.Id}", problem.Message, StringComparison.Ordinal);
        Assert.Contains("afternoon.gpx", problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_track_is_not_kept()
    {
        using MemoryStream stream = new("once upon a time"u8.ToArray());
        (TrackReading reading, KeptTrack? kept) = OutingTracks.Read(stream, "a.gpx", TestContext.Current.CancellationToken);
        Assert.Null(kept);
        Assert.Single(reading.Findings);
    }
}
