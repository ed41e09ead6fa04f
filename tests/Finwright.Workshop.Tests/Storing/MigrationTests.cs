using Finwright.Workshop.Outings;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Tests.Storing;

/// <summary>Stores of earlier and later programs, and files that are no stores.</summary>
public sealed class MigrationTests
{
    public static TheoryData<int> Earlier => [.. Enumerable.Range(1, StoreSchema.Current - 1)];

    [Theory]
    [MemberData(nameof(Earlier))]
    public void A_store_of_an_earlier_program_is_brought_up_to_date_with_a_copy_kept_beside_it(int version)
    {
        using TemporaryStore place = new();
        EarlierStore.Make(place, version);
        using (WorkshopStore store = place.Open(new ManualTime()))
        {
            Assert.Null(store.Refusal);
            Revision revision = store.Shelf.Get(Reference.Parse("Old@1"));
            Assert.Equal((7, "first", EarlierStore.Text, "<svg/>"), (revision.Id, revision.Note, store.Shelf.Text(7), store.Shelf.Picture(7)));
            Assert.Equal(["slalom"], store.Shelf.Find("Old")!.Tags);
            if (version >= 2)
            {
                Assert.Equal((180.5, new DateOnly(2026, 2, 3), "Old@1"), (store.Builds.Get("Old one").PlasticGrams, store.Builds.Get("Old one").MadeOn, store.Builds.Get("Old one").Revision));
                Assert.Equal(8.25, Assert.Single(Assert.Single(store.Bench.List()).Readings).DeflectionMm!.Value.Value);
            }

            if (version >= 3)
            {
                Outing outing = Assert.Single(store.Outings.List());
                Assert.Equal((5, "the bay", "Old one", 4), (outing.Id, outing.Place, outing.Build, outing.Grip));
                Assert.Equal([1, 2, 3], store.Outings.Track(5)!.Points);
            }

            // Everything that came later is there to be used.
            store.Outings.Add(new() { SailedOn = new(2027, 5, 1) }, null);
            Assert.Empty(store.Calibrations.List());
            store.Connection.Database.IsSound();
        }

        string copy = $"workshop.finstore.version-{version}-20270301T101112123";
        Assert.Equal(["workshop.finstore", copy], place.Files);
        using SqliteConnection kept = new($"Data Source={Path.Combine(place.Folder, copy)};Mode=ReadOnly;Pooling=False");
        kept.Open();
        Assert.Equal((long)version, kept.Scalar("PRAGMA user_version"));
        Assert.Equal(EarlierStore.Text, kept.Scalar("SELECT text FROM revision WHERE id = 7"));
    }

    [Fact]
    public void An_upgrade_that_fails_leaves_the_store_as_it_was_and_shows_what_it_holds()
    {
        using TemporaryStore place = new();
        EarlierStore.Make(place, version: 2);
        using (SqliteConnection database = place.Database())
            database.Run("CREATE TABLE track (in_the_way INTEGER)");
        byte[] bytes = File.ReadAllBytes(place.File);
        using (WorkshopStore store = place.Open())
        {
            Assert.Equal(EarlierStore.Text, store.Shelf.Text(7));
            Assert.Equal("Old one", Assert.Single(store.Builds.List()).Name);
            StoreException problem = Assert.Throws<StoreException>(() => store.Shelf.Rename(4, "New"));
            Assert.Equal(StoreProblem.Damaged, problem.Problem);
            Assert.Contains("version 2", problem.Message, StringComparison.Ordinal);
            Assert.Contains("track", problem.Message, StringComparison.Ordinal);
        }

        Assert.Equal(["workshop.finstore"], place.Files);
        Assert.Equal(bytes, File.ReadAllBytes(place.File));
    }

    [Fact]
    public void An_upgrade_without_room_for_the_copy_is_not_made_and_the_store_is_read()
    {
        using TemporaryStore place = new();
        EarlierStore.Make(place, version: 3);
        byte[] bytes = File.ReadAllBytes(place.File);
        ManualTime time = new();
        string copy = StoreBackup.NameBeforeUpgrade(place.File, 3, time);
        Directory.CreateDirectory(copy);
        Exception? problem = Record.Exception(() =>
        {
            using WorkshopStore store = place.Open(time);
        });
        Assert.IsType<StoreException>(problem);
        Assert.Equal(bytes, File.ReadAllBytes(place.File));
        Assert.Equal(["workshop.finstore"], place.Files);
    }

    [Fact]
    public async Task Two_programs_that_bring_a_store_up_to_date_at_once_do_it_once()
    {
        using TemporaryStore place = new();
        EarlierStore.Make(place, version: 1);
        await Task.WhenAll(OtherProgram.Run("add 100", place.File, "one"), OtherProgram.Run("add 100", place.File, "two"));
        using WorkshopStore store = place.Open();
        Assert.Equal(200, store.Outings.List().Count);
        Assert.Equal(EarlierStore.Text, store.Shelf.Text(7));
        store.Connection.Database.IsSound();
        Assert.Single(place.Files, file => file.Contains(".version-1-", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("DELETE")]
    [InlineData("WAL")]
    public void A_store_of_a_later_program_is_refused_and_not_touched(string journal)
    {
        using TemporaryStore place = new();
        place.Open().Dispose();
        using (SqliteConnection database = place.Database())
            database.Run($"PRAGMA journal_mode = {journal}; PRAGMA user_version = {StoreSchema.Current + 1}; CREATE TABLE hologram (id INTEGER)");
        StoreException problem = Untouched(place);
        Assert.Equal(StoreProblem.Foreign, problem.Problem);
        Assert.Contains($"version {StoreSchema.Current + 1}", problem.Message, StringComparison.Ordinal);
        Assert.Contains("later Finwright", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("DELETE")]
    [InlineData("WAL")]
    public void A_database_of_another_program_is_refused_and_not_touched(string journal)
    {
        using TemporaryStore place = new();
        using (SqliteConnection database = place.Database())
            database.Run($"PRAGMA journal_mode = {journal}; CREATE TABLE song (title TEXT); INSERT INTO song VALUES ('Riders')");
        Assert.Equal(StoreProblem.Foreign, Untouched(place).Problem);
    }

    [Theory]
    [InlineData("x")]
    [InlineData("What the wind was like, day after day, since the spring before last; much longer than the header of a database is.")]
    [InlineData("SQLite format 3\0")]
    public void A_text_is_refused_and_not_touched(string text)
    {
        using TemporaryStore place = new();
        File.WriteAllText(place.File, text);
        Assert.Equal(StoreProblem.Foreign, Untouched(place).Problem);
    }

    [Fact]
    public void A_folder_is_refused()
    {
        using TemporaryStore place = new();
        foreach (string path in (string[])[place.Folder, place.Folder + "/", place.File + "/"])
            Assert.Equal(StoreProblem.Unreachable, Assert.Throws<StoreException>(() => WorkshopStore.Open(path)).Problem);
        Assert.Empty(place.Files);
    }

    [Theory]
    [InlineData("/dev/null")]
    [InlineData("/dev/zero")]
    [InlineData("/dev/full")]
    public void A_device_is_refused_and_nothing_is_left_beside_it(string device)
    {
        using TemporaryStore place = new();
        foreach (bool create in (bool[])[true, false])
        {
            Assert.Equal(StoreProblem.Foreign, Assert.Throws<StoreException>(() => WorkshopStore.Open(device, create)).Problem);
            Assert.False(File.Exists(device + "-journal") || File.Exists(device + "-wal"));
        }

        File.CreateSymbolicLink(place.File, device);
        Assert.Equal(StoreProblem.Foreign, Assert.Throws<StoreException>(() => place.Open()).Problem);
        Assert.Equal(["workshop.finstore"], place.Files);
    }

    [Fact]
    public async Task A_pipe_is_refused_without_waiting_for_somebody_to_write_to_it()
    {
        using TemporaryStore place = new();
        await System.Diagnostics.Process.Start("mkfifo", [place.File]).WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(StoreProblem.Foreign, Assert.Throws<StoreException>(() => place.Open()).Problem);
    }

    [Fact]
    public void An_empty_file_becomes_a_store_when_something_is_kept_and_not_by_looking()
    {
        using TemporaryStore place = new();
        File.WriteAllBytes(place.File, []);
        using (WorkshopStore looking = WorkshopStore.Open(place.File, create: false))
            Assert.Empty(looking.Shelf.List());
        Assert.Equal(0, new FileInfo(place.File).Length);
        using WorkshopStore store = place.Open();
        store.Outings.Add(new() { SailedOn = new(2027, 5, 1) }, null);
        Assert.Single(store.Outings.List());
    }

    [Fact]
    public void A_link_to_a_store_is_the_store()
    {
        using TemporaryStore place = new(), elsewhere = new();
        File.CreateSymbolicLink(place.File, elsewhere.File);
        using (WorkshopStore store = place.Open())
            store.Outings.Add(new() { SailedOn = new(2027, 5, 1) }, null);
        using WorkshopStore same = elsewhere.Open();
        Assert.Single(same.Outings.List());
        Assert.NotNull(File.ResolveLinkTarget(place.File, returnFinalTarget: false));
    }

    private static StoreException Untouched(TemporaryStore place)
    {
        byte[] bytes = File.ReadAllBytes(place.File);
        DateTime changed = File.GetLastWriteTimeUtc(place.File);
        StoreException? problem = null;
        foreach (bool create in (bool[])[true, false])
            problem = Assert.Throws<StoreException>(() => WorkshopStore.Open(place.File, create));
        Assert.Equal(bytes, File.ReadAllBytes(place.File));
        Assert.Equal(changed, File.GetLastWriteTimeUtc(place.File));
        Assert.Equal(["workshop.finstore"], place.Files);
        Assert.Contains("not touched", problem!.Remedy, StringComparison.Ordinal);
        return problem;
    }
}
