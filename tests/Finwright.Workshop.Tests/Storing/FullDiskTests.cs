using Finwright.Workshop.Storing;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Tests.Storing;

/// <summary>A disk without room: a change is refused whole, and what was there stays.</summary>
public sealed class FullDiskTests
{
    [Fact]
    public void A_change_that_finds_no_room_is_refused_whole_and_works_when_there_is_room()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        OtherProgram.AddSeason(store, "before", 1000);
        SqliteConnection database = store.Connection.Database;
        long pages = (long)database.Scalar("PRAGMA page_count")!;
        database.Run($"PRAGMA max_page_count = {pages + 2}");
        IsFull(Assert.Throws<StoreException>(() => OtherProgram.AddSeason(store, "too much", 100_000)), place.File);
        Assert.Equal("before", Assert.Single(store.Shelf.List()).Name);
        Assert.Single(store.Outings.List());
        database.IsSound();

        database.Run($"PRAGMA max_page_count = {pages + 1000}");
        OtherProgram.AddSeason(store, "after", 100_000);
        Assert.Equal(["after", "before"], store.Shelf.List().Select(design => design.Name), StringComparer.Ordinal);
    }

    [Fact]
    public void A_part_that_finds_no_room_leaves_nothing_even_when_whoever_changes_goes_on()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        SqliteConnection database = store.Connection.Database;
        database.Run($"PRAGMA max_page_count = {(long)database.Scalar("PRAGMA page_count")! + 2}");
        Exception? first = null;
        StoreException? last = Record.Exception(() => store.Together(() =>
        {
            first = Record.Exception(() => OtherProgram.AddSeason(store, "too much", 100_000));
            store.Outings.Add(new() { SailedOn = new(2027, 5, 1) }, null);
        })) as StoreException;
        IsFull(Assert.IsType<StoreException>(first), place.File);
        // Either the whole is undone, or the part alone: never some of the part.
        Assert.Empty(store.Shelf.List());
        Assert.Empty(store.Builds.List());
        Assert.Equal(last is null ? 1 : 0, store.Outings.List().Count);
        database.IsSound();
    }

    [Fact]
    public async Task A_program_whose_files_may_grow_no_more_has_kept_what_it_was_told_done()
    {
        using TemporaryStore place = new();
        IReadOnlyList<string> lines = await OtherProgram.Run("add until refused", place.File, "s", LimitedTo(1500));
        string refusal = lines[^2];
        Assert.StartsWith("Full: ", refusal, StringComparison.Ordinal);
        Assert.Contains(place.File, refusal, StringComparison.Ordinal);
        using WorkshopStore store = place.Open();
        Assert.Equal(lines.SkipLast(2).Order(StringComparer.Ordinal), store.Shelf.List().Select(design => "added " + design.Name).Order(StringComparer.Ordinal));
        Assert.Equal(store.Shelf.List().Count, store.Outings.List().Count);
        Assert.InRange(store.Shelf.List().Count, 5, 100);
        store.Connection.Database.IsSound();
    }

    [Fact]
    public async Task A_backup_that_finds_no_room_leaves_nothing()
    {
        using TemporaryStore place = new();
        using (WorkshopStore store = place.Open())
            OtherProgram.AddSeason(store, "before", 3_000_000);
        IReadOnlyList<string> lines = await OtherProgram.Run("back up", place.File, "copy.finstore", LimitedTo(1500));
        Assert.StartsWith("Full: ", lines[0], StringComparison.Ordinal);
        Assert.Contains("copy.finstore", lines[0], StringComparison.Ordinal);
        Assert.Equal(["workshop.finstore"], place.Files);
    }

    [Fact]
    public void A_backup_into_a_folder_that_is_not_there_leaves_nothing()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        OtherProgram.AddSeason(store, "before", 1000);
        StoreException problem = Assert.Throws<StoreException>(() => StoreBackup.Write(store, Path.Combine(place.Folder, "missing", "copy.finstore")));
        Assert.Equal(StoreProblem.Unreachable, problem.Problem);
        Assert.False(Directory.Exists(Path.Combine(place.Folder, "missing")));
    }

    // The shell ignores the signal that the limit sends, so that the write fails instead; the runtime's own memory files must not count.
    private static string[] LimitedTo(int kilobytes) =>
        ["env", "DOTNET_EnableWriteXorExecute=0", "bash", "-c", $"trap '' XFSZ; ulimit -f {kilobytes}; exec \"$@\"", "bash"];

    private static void IsFull(StoreException problem, string file)
    {
        Assert.Equal(StoreProblem.Full, problem.Problem);
        Assert.Contains(file, problem.Message, StringComparison.Ordinal);
        Assert.Contains("Make room", problem.Remedy, StringComparison.Ordinal);
    }
}
