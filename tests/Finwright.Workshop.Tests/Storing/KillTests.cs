using System.Diagnostics;
using System.Globalization;
using CsCheck;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Tests.Storing;

/// <summary>Programs are killed while they write: what they had been told is done is there, and nothing is there in part.</summary>
public sealed class KillTests
{
    private const int Rounds = 50, Writers = 4;

    [Fact]
    public async Task After_200_kills_everything_told_done_is_there_and_nothing_in_part()
    {
        using TemporaryStore place = new();
        HashSet<string> done = new(StringComparer.Ordinal);
        int killed = 0;
        for (int round = 0; round < Rounds; round++)
        {
            uint seed = (uint)round;
            // Several at once, so that one also dies while another waits for it or writes.
            IReadOnlyList<string>[] told = await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Killed(place.File, seed, writer)));
            killed += told.Length;
            foreach (string line in told.SelectMany(lines => lines))
                done.Add(line);
            Whole(place.File, done);
        }

        Assert.Equal(Rounds * Writers, killed);
        Assert.True(done.Count > 2 * Rounds, $"Only {done.Count} changes in {killed} lives.");
    }

    [Fact]
    public async Task A_killed_upgrade_is_made_whole_or_not_at_all()
    {
        await Task.WhenAll(Enumerable.Range(0, 12).Select(async i =>
        {
            using TemporaryStore place = new();
            EarlierStore.Make(place, version: 2);
            using (Process process = OtherProgram.Start("look and try to change", place.File, ""))
            {
                // Together they start slowly; the upgrade lies somewhere in the second half of this.
                await Task.Delay(100 + 60 * i, TestContext.Current.CancellationToken);
                process.Kill();
                await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            }

            using WorkshopStore store = place.Open();
            Assert.Null(store.Refusal);
            Assert.Equal(EarlierStore.Text, store.Shelf.Text(7));
            Assert.Equal("Old one", Assert.Single(store.Builds.List()).Name);
            Assert.Single(store.Bench.List());
            store.Connection.Database.IsSound();
            // A copy that was not finished does not bear the name of one.
            Assert.All(place.Files.Where(file => file.Contains(".version-2-", StringComparison.Ordinal) && !file.EndsWith(".partial", StringComparison.Ordinal) && !file.EndsWith("-journal", StringComparison.Ordinal)), file =>
            {
                using SqliteConnection copy = new($"Data Source={Path.Combine(place.Folder, file)};Mode=ReadOnly;Pooling=False");
                copy.Open();
                copy.IsSound();
                Assert.Equal("Old one", copy.Scalar("SELECT name FROM build"));
            });
        }));
    }

    /// <summary>Starts a writer, and kills it some moments after its first word, or while it still opens the store.</summary>
    /// <returns>What it was told done.</returns>
    private static async Task<IReadOnlyList<string>> Killed(string store, uint round, int writer)
    {
        PCG random = new((uint)(round * Writers + writer), 1);
        using Process process = OtherProgram.Start("add until killed", store, string.Create(CultureInfo.InvariantCulture, $"{round}-{writer}"));
        List<string> lines = [];
        string? line = null;
        if (round % 10 != 0)
        {
            line = await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
            await Task.Delay((int)(5 + random.Next(56)), TestContext.Current.CancellationToken);
        }
        else
        {
            await Task.Delay((int)(60 + random.Next(200)), TestContext.Current.CancellationToken);
        }

        Assert.False(process.HasExited, process.HasExited ? await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken) : "");
        process.Kill();
        string rest = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(128 + 9, process.ExitCode);
        if (line is not null)
            lines.Add(line);
        lines.AddRange(rest.Split('\n')[..^1]);
        return lines;
    }

    private static void Whole(string file, HashSet<string> done)
    {
        using WorkshopStore store = WorkshopStore.Open(file);
        Assert.Null(store.Refusal);
        SqliteConnection database = store.Connection.Database;
        database.IsSound();
        IReadOnlyList<ShelvedDesign> designs = store.Shelf.List();
        HashSet<string> there = new(designs.Select(design => "added " + design.Name), StringComparer.Ordinal);
        there.UnionWith(designs.Where(design => design.Revisions == 2).Select(design => "revised " + design.Name));
        Assert.Empty(done.Except(there, StringComparer.Ordinal));
        // A design is there with its picture, its build and its sailed outing, or not at all.
        Assert.All(designs, design => Assert.Equal(1, design.Builds));
        Assert.Equal(0L, database.Scalar("SELECT count(*) FROM revision WHERE NOT EXISTS (SELECT 1 FROM picture WHERE picture.revision_id = revision.id)"));
        Assert.Equal(
            (long)designs.Count,
            database.Scalar("SELECT count(*) FROM outing JOIN track ON track.outing_id = outing.id JOIN build ON build.id = outing.build_id JOIN revision ON revision.id = build.revision_id WHERE grip = 3"));
        Assert.Equal((long)designs.Count, database.Scalar("SELECT count(*) FROM outing"));
        Assert.Equal((long)designs.Sum(design => design.Revisions), database.Scalar("SELECT count(*) FROM revision"));
    }
}
