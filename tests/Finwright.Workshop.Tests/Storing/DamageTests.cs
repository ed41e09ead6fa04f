using CsCheck;
using Finwright.Design;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Library;
using Finwright.Workshop.RunSheets;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Storing.Rescue;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Tests.Storing;

/// <summary>Stores whose bytes were changed: looking at them ends, says what is wrong and writes nothing; rescuing them keeps what lies beside the damage.</summary>
public sealed class DamageTests
{
    private const int Designs = 30, Page = 4096;

    private static readonly Lazy<byte[]> Filled = new(Fill);

    /// <summary>A kind of damage, and where in the file it lies as a share of its length.</summary>
    private static readonly Gen<(int Kind, double Place, int Value)> Damages = Gen.Select(Gen.Int[0, 4], Gen.Double[0, 1], Gen.Int[1, 255]);

    [Fact]
    public void Looking_at_a_damaged_store_ends_and_either_works_or_says_what_to_do()
    {
        int[] seen = new int[2];
        Damages.Hold(
            damage =>
            {
                using TemporaryStore place = new();
                byte[] bytes = Damaged(damage);
                File.WriteAllBytes(place.File, bytes);
                StoreException? problem = Look(place, out bool isShown);
                Interlocked.Increment(ref seen[problem is null ? 0 : 1]);
                Assert.Equal(bytes, File.ReadAllBytes(place.File));
                if (problem is null)
                    return;
                Assert.True(problem.Problem is StoreProblem.Damaged or StoreProblem.Foreign, problem.ToString());
                Assert.Contains(place.File, problem.Message, StringComparison.Ordinal);
                Assert.Contains("finwright store", problem.Remedy, StringComparison.Ordinal);
                // Only a file that does not look like a database any more is not shown as far as it can be read.
                Assert.Equal(problem.Problem == StoreProblem.Damaged, isShown);
            },
            iter: 150);
        Assert.All(seen, count => Assert.True(count > 10, string.Join(", ", seen)));
    }

    [Fact]
    public void Nothing_is_written_to_a_store_after_damage_was_met()
    {
        using TemporaryStore place = new();
        // The picture of the last design lies on a page that nothing else needs.
        byte[] bytes = [.. Filled.Value];
        foreach (int page in PagesOf("picture"))
            bytes.AsSpan((page - 1) * Page, Page).Clear();
        File.WriteAllBytes(place.File, bytes);
        using (WorkshopStore store = place.Open())
        {
            Assert.Null(store.Refusal);
            Revision revision = store.Shelf.List()[0].Latest;
            Assert.Null(store.Shelf.Picture(revision.Id));
            Assert.Equal(StoreProblem.Damaged, store.Refusal?.Problem);
            Assert.Contains("is damaged: what can be read of it is shown", store.Refusal!.Message, StringComparison.Ordinal);
            // Everything else is shown as it was.
            Assert.Equal(revision, store.Shelf.List()[0].Latest);
            Assert.Equal(Designs, store.Outings.List().Count);
            Assert.Equal(StoreProblem.Damaged, Assert.Throws<StoreException>(() => store.Outings.Add(new() { SailedOn = new(2027, 5, 1) }, null)).Problem);
            Assert.Equal(StoreProblem.Damaged, Assert.Throws<StoreException>(() => StoreBackup.Write(store, Path.Combine(place.Folder, "copy.finstore"))).Problem);
        }

        Assert.Equal(["workshop.finstore"], place.Files);
        Assert.Equal(bytes, File.ReadAllBytes(place.File));
    }

    [Fact]
    public void A_sound_store_is_rescued_whole()
    {
        using TemporaryStore place = new();
        File.WriteAllBytes(place.File, Filled.Value);
        string target = Path.Combine(place.Folder, "rescued.finstore");
        RescueReport report = StoreRescue.Write(place.File, target);
        Assert.Equal(0, report.Lost);
        Assert.Empty(report.Remarks);
        Assert.Equal(Dump(place.File), Dump(target));
        Assert.Equal(Filled.Value, File.ReadAllBytes(place.File));
    }

    [Theory]
    [MemberData(nameof(MigrationTests.Earlier), MemberType = typeof(MigrationTests))]
    public void A_store_of_an_earlier_program_is_rescued_and_brought_up_to_date(int version)
    {
        using TemporaryStore place = new();
        EarlierStore.Make(place, version);
        string target = Path.Combine(place.Folder, "rescued.finstore");
        RescueReport report = StoreRescue.Write(place.File, target);
        Assert.Equal(0, report.Lost);
        using WorkshopStore store = WorkshopStore.Open(target);
        Assert.Null(LookAt(store));
        Revision revision = Assert.Single(store.Shelf.Revisions(4));
        // Its hash was made up, so that it does not match.
        Assert.Equal((7, StoreRescue.ChangedText + "first", EarlierStore.Text), (revision.Id, revision.Note, store.Shelf.Text(7)));
        Assert.Equal((version >= 2 ? 1 : 0, version >= 3 ? 1 : 0), (store.Builds.List().Count, store.Outings.List().Count));
    }

    [Fact]
    public void Changes_in_the_log_beside_a_store_are_rescued_too_and_unfinished_ones_are_not()
    {
        using TemporaryStore place = new(), killed = new();
        using (WorkshopStore store = place.Open())
        {
            OtherProgram.AddSeason(store, "folded in", 3000);
            store.Connection.Database.Run("PRAGMA wal_checkpoint(TRUNCATE)");
            OtherProgram.AddSeason(store, "in the log", 3000);
            File.Copy(place.File, killed.File);
            File.Copy(place.File + "-wal", killed.File + "-wal");
        }

        RescueReport whole = StoreRescue.Write(killed.File, Path.Combine(killed.Folder, "whole.finstore"));
        Assert.Equal(2, whole.Tables.Single(table => table.Table == "outing").Kept);
        using (FileStream log = new(killed.File + "-wal", FileMode.Open))
            log.SetLength(log.Length - 100);
        RescueReport torn = StoreRescue.Write(killed.File, Path.Combine(killed.Folder, "torn.finstore"));
        Assert.Equal(1, torn.Tables.Single(table => table.Table == "outing").Kept);
        Assert.Equal(0, torn.Lost);
    }

    [Fact]
    public void Rescue_of_a_damaged_store_gives_a_sound_one_with_most_of_its_rows()
    {
        int rows = Dump(Filled.Value).Count, rescued = 0;
        Damages.Hold(
            damage =>
            {
                using TemporaryStore place = new();
                byte[] bytes = Damaged(damage);
                File.WriteAllBytes(place.File, bytes);
                string target = Path.Combine(place.Folder, "rescued.finstore");
                RescueReport report = StoreRescue.Write(place.File, target);
                Assert.Equal(bytes, File.ReadAllBytes(place.File));
                using WorkshopStore store = WorkshopStore.Open(target);
                Assert.Null(LookAt(store));
                Assert.Empty(StoreCheck.Of(store, TestContext.Current.CancellationToken).Findings);
                Interlocked.Increment(ref rescued);
                if (damage.Kind == 2)
                    return;
                // Damage of a page takes at most what lies on it, a row that flows over to it, and what means nothing without these: of the
                // nineteen tables' thirty rows or so at most those of three, sessions of the bench with their readings.
                Assert.True(report.Kept >= rows * 8 / 10, $"{report.Kept} of {rows}: {string.Join("; ", report.Remarks)}");
            },
            iter: 150);
        Assert.Equal(150, rescued);
    }

    [Fact]
    public void A_store_without_its_first_page_is_rescued_by_the_shape_of_its_rows()
    {
        using TemporaryStore place = new();
        byte[] bytes = [.. Filled.Value];
        bytes.AsSpan(0, Page).Clear();
        File.WriteAllBytes(place.File, bytes);
        Assert.Equal(StoreProblem.Foreign, Assert.Throws<StoreException>(() => place.Open()).Problem);
        string target = Path.Combine(place.Folder, "rescued.finstore");
        Assert.Equal(Dump(Filled.Value).Count, StoreRescue.Write(place.File, target).Kept);
        Assert.Equal(Dump(Filled.Value), Dump(target));
    }

    [Fact]
    public void A_revision_whose_text_was_changed_is_kept_with_a_note_that_says_so()
    {
        using TemporaryStore place = new();
        byte[] bytes = [.. Filled.Value];
        byte[] sought = "\"name\": \"Fin 7\""u8.ToArray();
        int at = bytes.AsSpan().IndexOf(sought);
        Assert.True(at > 0);
        bytes[at + sought.Length - 2] = (byte)'1';
        File.WriteAllBytes(place.File, bytes);
        using (WorkshopStore store = place.Open())
        {
            Finding finding = Assert.Single(StoreCheck.Of(store, TestContext.Current.CancellationToken).Findings);
            Assert.Equal("store-revision-changed", finding.Code);
            Assert.Contains("Fin 7@1", finding.Message, StringComparison.Ordinal);
        }

        string target = Path.Combine(place.Folder, "rescued.finstore");
        RescueReport report = StoreRescue.Write(place.File, target);
        Assert.Contains("does not match its hash", Assert.Single(report.Remarks), StringComparison.Ordinal);
        using WorkshopStore rescued = WorkshopStore.Open(target);
        Assert.StartsWith(StoreRescue.ChangedText, rescued.Shelf.Get(Reference.Parse("Fin 7@1")).Note, StringComparison.Ordinal);
        Assert.Equal(1, rescued.Shelf.Revisions(rescued.Shelf.Find("Fin 7")!.Id).Count(revision => revision.Note.StartsWith(StoreRescue.ChangedText, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("design")]
    [InlineData("revision")]
    [InlineData("build")]
    [InlineData("outing")]
    [InlineData("bench_session")]
    [InlineData("stock_item")]
    public void What_hung_on_a_lost_table_is_kept(string lost)
    {
        using TemporaryStore place = new();
        byte[] bytes = [.. Filled.Value];
        foreach (int page in PagesOf(lost))
            bytes.AsSpan((page - 1) * Page, Page).Clear();
        File.WriteAllBytes(place.File, bytes);
        string target = Path.Combine(place.Folder, "rescued.finstore");
        RescueReport report = StoreRescue.Write(place.File, target);
        Assert.DoesNotContain(report.Tables, table => table.Table == lost && table.Kept > 0);
        using WorkshopStore store = WorkshopStore.Open(target);
        Assert.Null(LookAt(store));
        Assert.Empty(StoreCheck.Of(store, TestContext.Current.CancellationToken).Findings);
        // Builds whose revision is not known stand under a design of their own.
        int more = lost is "revision" or "build" ? 1 : 0;
        Assert.Equal((Designs + more, Designs, Designs), (store.Shelf.List().Count, store.Builds.List().Count, store.Outings.List().Count));
        Assert.Equal(Designs, store.Stock.Uses().Count);
        Assert.Equal(Designs, store.Builds.List().Select(build => build.FilamentId).Distinct().Count() + (lost == "build" ? Designs - 1 : 0));
        Assert.Equal(lost == "bench_session" ? 0 : Designs, store.Bench.List().Count);
        Assert.Equal(lost == "revision" ? 3 * Designs : 0, report.Tables.SingleOrDefault(table => table.Table == "revision")?.Lost ?? 0);
    }

    [Fact]
    public void Rescue_refuses_what_holds_nothing_of_a_store_and_leaves_nothing()
    {
        using TemporaryStore place = new();
        string target = Path.Combine(place.Folder, "rescued.finstore");
        Assert.Equal(StoreProblem.Unreachable, Assert.Throws<StoreException>(() => StoreRescue.Write(place.File, target)).Problem);
        File.WriteAllText(place.File, new string('x', 100_000));
        Assert.Equal(StoreProblem.Foreign, Assert.Throws<StoreException>(() => StoreRescue.Write(place.File, target)).Problem);
        File.WriteAllText(target, "mine");
        Assert.Equal(StoreProblem.Wrong, Assert.Throws<StoreException>(() => StoreRescue.Write(place.File, target)).Problem);
        Assert.Equal(["rescued.finstore", "workshop.finstore"], place.Files);
        Assert.Equal("mine", File.ReadAllText(target));
    }

    [Fact]
    public void A_check_of_a_sound_store_finds_nothing_and_counts_it()
    {
        using TemporaryStore place = new();
        File.WriteAllBytes(place.File, Filled.Value);
        using WorkshopStore store = place.Open();
        StoreCheck check = StoreCheck.Of(store, TestContext.Current.CancellationToken);
        Assert.Empty(check.Findings);
        Assert.Equal((Designs, 3 * Designs, Designs), (check.Contents!.Designs, check.Contents.Revisions, check.Contents.Tracks));
    }

    [Fact]
    public void A_check_finds_damaged_pages_missing_references_and_nonsense()
    {
        using TemporaryStore place = new();
        File.WriteAllBytes(place.File, Filled.Value);
        using (SqliteConnection database = place.Database())
            database.Run("PRAGMA foreign_keys = OFF; DELETE FROM build WHERE id = 3; UPDATE outing SET sailed_on = 'yesterday' WHERE id = 5");
        using (WorkshopStore store = place.Open())
        {
            IReadOnlyList<Finding> findings = StoreCheck.Of(store, TestContext.Current.CancellationToken).Findings;
            Assert.Contains(findings, finding => finding is { Code: "store-reference-missing", IsError: true });
            Assert.Contains(findings, finding => finding is { Code: "store-text-nonsense", Path: "outing 5" });
        }

        byte[] bytes = [.. Filled.Value];
        bytes.AsSpan((PagesOf("outing")[^1] - 1) * Page, Page).Clear();
        File.WriteAllBytes(place.File, bytes);
        using WorkshopStore damaged = place.Open();
        Assert.Contains(StoreCheck.Of(damaged, TestContext.Current.CancellationToken).Findings, finding => finding.Code == "store-page-damaged");
    }

    [Fact]
    public void Every_column_with_a_form_of_its_own_is_checked()
    {
        using TemporaryStore place = new();
        place.Open().Dispose();
        using SqliteConnection database = place.Database();
        using SqliteCommand command = database.CreateCommand();
        command.CommandText =
            "SELECT t.name || '.' || c.name FROM sqlite_schema t, pragma_table_info(t.name) c WHERE t.type = 'table' AND (c.name LIKE '%\\_at' ESCAPE '\\' OR c.name LIKE '%\\_on' ESCAPE '\\' OR c.name IN ('at', 'plan', 'use_before', 'tags', 'results', 'unit', 'quantity', 'root_hold', 'at_chord', 'read_chord') OR (t.name IN ('stock_item', 'library_item', 'run_sheet') AND c.name = 'kind')) AND c.type = 'TEXT' ORDER BY 1";
        List<string> columns = [];
        using (SqliteDataReader reader = command.ExecuteReader())
        {
            while (reader.Read())
                columns.Add(reader.GetString(0));
        }

        Assert.Equal(columns, TextColumn.All.Select(column => $"{column.Table}.{column.Column}").Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    private static byte[] Fill()
    {
        using TemporaryStore place = new();
        using (WorkshopStore store = place.Open(new ManualTime()))
        {
            for (int i = 0; i < Designs; i++)
            {
                Revision revision = store.Shelf.Add($"Fin {i}", SampleFins.Entry($"Fin {i}", note: "first"), ["slalom", $"{i} cm"]);
                store.Shelf.Revise(revision.DesignId, SampleFins.Entry($"Fin {i}", massKg: 5));
                Revision last = store.Shelf.Revise(revision.DesignId, SampleFins.Entry($"Fin {i}", massKg: 6));
                store.Shelf.KeepPrediction(last.Id, "test", "{\"mass_g\":" + i + "}");
                store.Drafts.Begin(last.DesignId, last.Id, store.Shelf.Text(last.Id));
                store.Drafts.Keep(last.DesignId, new(1, "mass", "$.prove.mass_kg", store.Shelf.Text(last.Id)));
                store.Library.Add(DesignPart.Usual(LibraryKind.Box, $"Box {i}", "measured"));
                long sheet = store.RunSheets.Add(new() { DesignId = last.DesignId, Kind = RunKind.Pour, Title = $"Pour {i}", MadeBy = "test", Plan = "{}" }).Id;
                store.RunSheets.Enter(sheet, [new("tick:1", "done", new ManualTime().Now)]);
                StockItem spool = store.Stock.Add(new() { Kind = StockKind.Filament, Name = "grey PETG", Batch = $"B{i}", Quantity = 1000, Unit = StockUnit.Grams, BoughtOn = new(2027, 3, 1) });
                Build build = store.Builds.Add(new() { RevisionId = last.Id, Name = $"Build {i}", FilamentId = spool.Id, PlasticGrams = 180 + i, MadeOn = new(2027, 4, 2) });
                store.Builds.Keep(build.Id, new BuildPart("blade", new(2027, 4, 1), spool.Id, 150, 9.5, "clean"));
                store.Builds.Keep(build.Id, new BuildPhoto($"photos/{i}.jpg", "the blade"));
                store.Stock.Use(new(0, spool.Id, build.Id, 180, new(2027, 4, 2), ""));
                long session = store.Bench.Add(new(0, build.Id, new(2027, 4, 9), RootHold.Clamped, "", [new(1, 10, 190, ChordPlace.MidChord, 190, ChordPlace.MidChord, new(8.2, 0.2), null, "")])).Id;
                store.Calibrations.Add([new(0, new ManualTime().Now, "test", build.Id, spool.Id, null, LearnedQuantity.WallStiffness, 0.9, 0.85, 0.95, [session], "")]);
                byte[] track = new byte[2000];
                Scatter(track, (uint)i);
                store.Outings.Add(new() { SailedOn = new DateOnly(2027, 5, 1).AddDays(i), Place = "the bay", BuildId = build.Id }, new($"{i}.gpx", Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(track)), track));
            }
        }

        return File.ReadAllBytes(place.File);
    }

    private static void Scatter(Span<byte> bytes, uint seed)
    {
        PCG random = new(seed);
        foreach (ref byte one in bytes)
            one = (byte)random.Next(256);
    }

    private static byte[] Damaged((int Kind, double Place, int Value) damage)
    {
        byte[] bytes = [.. Filled.Value];
        int at = (int)(damage.Place * (bytes.Length - 1)), page = at / Page * Page;
        switch (damage.Kind)
        {
            case 0:
                bytes[at] ^= (byte)damage.Value;
                return bytes;
            case 1:
                // The heads of pages, where a single byte does most.
                bytes[page + damage.Value % 16] ^= (byte)damage.Value;
                return bytes;
            case 2:
                return bytes[..Math.Max(at, bytes.Length / 4)];
            case 3:
                bytes.AsSpan(page, Page).Clear();
                return bytes;
            default:
                Scatter(bytes.AsSpan(page, Page), (uint)damage.Value);
                return bytes;
        }
    }

    private static StoreException? Look(TemporaryStore place, out bool isShown)
    {
        isShown = false;
        try
        {
            using WorkshopStore store = place.Open();
            Assert.Null(LookAt(store));
            isShown = store.Refusal is not null && store.Shelf.List().Count + store.Outings.List().Count >= Designs;
            return store.Refusal;
        }
        catch (StoreException problem)
        {
            return problem;
        }
    }

    /// <summary>Reads everything; each part although another failed.</summary>
    private static StoreException? LookAt(WorkshopStore store)
    {
        StoreException? first = null;
        foreach (Action look in (Action[])
        [
            () => store.Shelf.List().SelectMany(design => store.Shelf.Revisions(design.Id)).ToList().ForEach(revision => _ = (store.Shelf.Text(revision.Id), store.Shelf.Picture(revision.Id), store.Shelf.Prediction(revision.Id))),
            () => store.Stock.List(), () => store.Stock.Uses(),
            () => store.Builds.List().ToList().ForEach(build => _ = (store.Builds.Parts(build.Id), store.Builds.Photos(build.Id))),
            () => store.Bench.List(), () => store.Calibrations.List(), () => store.Bin.List(),
            () => store.Outings.List().ToList().ForEach(outing => store.Outings.Track(outing.Id)),
        ])
        {
            try
            {
                look();
            }
            catch (StoreException problem)
            {
                first ??= problem;
            }
        }

        StoreCheck.Of(store, TestContext.Current.CancellationToken);
        return first;
    }

    /// <summary>The pages that hold a table's rows, by the database's own account.</summary>
    private static int[] PagesOf(string table)
    {
        using TemporaryStore place = new();
        File.WriteAllBytes(place.File, Filled.Value);
        DatabasePages pages = DatabasePages.Read(place.File);
        using SqliteConnection database = place.Database();
        int root = (int)(long)database.Scalar($"SELECT rootpage FROM sqlite_schema WHERE name = '{table}'")!;
        return [.. new PageReader(pages).Tree(root, []).Order()];
    }

    private static List<string> Dump(byte[] bytes)
    {
        using TemporaryStore place = new();
        File.WriteAllBytes(place.File, bytes);
        return Dump(place.File);
    }

    /// <summary>Every row of every table as text, in their order.</summary>
    private static List<string> Dump(string file)
    {
        using SqliteConnection database = new($"Data Source={file};Pooling=False");
        database.Open();
        return [.. RescueTable.Of(database).SelectMany(table => RescueTable.Rows(database, $"SELECT * FROM {table.Name} ORDER BY 1, 2")
            .Select(row => table.Name + ": " + string.Join('|', row.Select(value => value is byte[] blob ? Convert.ToHexString(blob) : $"{value}"))))];
    }
}
