using System.Diagnostics;
using Finwright.Workshop.Storing;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Tests.Storing;

/// <summary>Several programs, or several parts of one, with the same store open.</summary>
public sealed class SharedStoreTests
{
    [Fact]
    public async Task Two_programs_that_make_the_same_store_at_once_and_write_to_it_lose_nothing()
    {
        using TemporaryStore place = new();
        await Task.WhenAll(OtherProgram.Run("add 100", place.File, "one"), OtherProgram.Run("add 100", place.File, "two"));
        using WorkshopStore store = place.Open();
        Assert.Equal((100, 100), (store.Outings.List().Count(outing => outing.Place == "one"), store.Outings.List().Count(outing => outing.Place == "two")));
        store.Connection.Database.IsSound();
    }

    [Fact]
    public void Threads_that_make_the_same_store_at_once_and_write_to_it_lose_nothing()
    {
        for (int round = 0; round < 10; round++)
        {
            using TemporaryStore place = new();
            Parallel.For(0, 4, new ParallelOptions { MaxDegreeOfParallelism = 4 }, thread =>
            {
                for (int i = 0; i < 3; i++)
                {
                    // Opened and closed again and again: the locks of the others must outlast it.
                    using WorkshopStore store = place.Open();
                    store.Outings.Add(new() { SailedOn = new(2027, 5, 1 + thread) }, null);
                }
            });
            using WorkshopStore all = place.Open();
            Assert.Equal([3, 3, 3, 3], all.Outings.List().GroupBy(outing => outing.SailedOn).Select(day => day.Count()));
            all.Connection.Database.IsSound();
        }
    }

    [Fact]
    public async Task While_another_program_writes_reading_sees_what_was_and_changing_is_refused_after_its_patience()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = WorkshopStore.Open(place.File, patience: TimeSpan.FromMilliseconds(200));
        OtherProgram.AddSeason(store, "before", 10);
        using Process other = OtherProgram.Start("hold a change until told", place.File, "meanwhile");
        Assert.Equal("holding", await other.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken));

        Assert.Equal("before", Assert.Single(store.Shelf.List()).Name);
        StoreException problem = Assert.Throws<StoreException>(() => OtherProgram.AddSeason(store, "refused", 10));
        Assert.Equal(StoreProblem.Busy, problem.Problem);
        Assert.Contains(place.File, problem.Message, StringComparison.Ordinal);
        using (WorkshopStore reader = place.Open())
            Assert.Single(reader.Shelf.List());

        await other.StandardInput.WriteLineAsync("go on");
        await other.StandardInput.FlushAsync(TestContext.Current.CancellationToken);
        await other.WaitForExitAsync(TestContext.Current.CancellationToken);
        OtherProgram.AddSeason(store, "after", 10);
        Assert.Equal(["after", "before", "meanwhile"], store.Shelf.List().Select(design => design.Name), StringComparer.Ordinal);
        store.Connection.Database.IsSound();
    }

    [Fact]
    public async Task A_change_waits_for_another_that_ends_in_time()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        using SqliteConnection other = place.Database();
        using SqliteTransaction held = other.BeginTransaction(deferred: false);
        Task change = Task.Run(() => store.Outings.Add(new() { SailedOn = new(2027, 5, 1) }, null), TestContext.Current.CancellationToken);
        await Task.Delay(100, TestContext.Current.CancellationToken);
        Assert.False(change.IsCompleted);
        held.Rollback();
        await change;
        Assert.Single(store.Outings.List());
    }

    [Fact]
    public void A_store_opened_twice_in_one_program_keeps_its_locks_when_one_is_closed()
    {
        using TemporaryStore place = new();
        place.Open().Dispose();
        using WorkshopStore kept = place.Open();
        Assert.Empty(kept.Outings.List());
        place.Open().Dispose();
        // Who closes last folds the changes that lie beside into the store: another program must see that it is not the last.
        Assert.Contains("workshop.finstore-wal", place.Files, StringComparer.Ordinal);
        kept.Outings.Add(new() { SailedOn = new(2027, 5, 1) }, null);
        using Process other = OtherProgram.Start("look and try to change", place.File, "");
        Assert.Equal("outings 1\nrefusal \nchanged\nend\n", other.StandardOutput.ReadToEnd());
        Assert.Contains("workshop.finstore-wal", place.Files, StringComparer.Ordinal);
        Assert.Equal(2, kept.Outings.List().Count);
    }
}
