using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Finwright.Design;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Exchange;
using Finwright.Workshop.Exchange.Stores;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Library;
using Finwright.Workshop.RunSheets;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tests.Exchange.Archives;

namespace Finwright.Workshop.Tests.Exchange.Stores;

public sealed class StoreExchangeTests
{
    [Fact]
    public void A_whole_store_comes_back_the_same_and_goes_out_again_with_the_same_bytes() =>
        Gen.Select(Gen.Int[0, 4], Gen.Int[0, 5], Gen.Double[-1e3, 1e3], Gen.String[Gen.Char["a<\"\\é風\n\t'=🌊"], 0, 20]).Hold(((int Designs, int Builds, double Number, string Words) own) =>
        {
            using TemporaryStore one = new(), two = new();
            using WorkshopStore from = one.Open(), to = two.Open();
            from.Together(() => Fill(from, own.Designs, own.Builds, own.Number, own.Words));
            byte[] file = Exported(from);
            Assert.Equal(file, Exported(from));
            StoreImport.Read(new MemoryStream(file), to);
            Assert.Equal(file, Exported(to));
            Assert.Equal(Shown(from), Shown(to));
        }, iter: 12, threads: 2);

    [Fact]
    public void Every_table_and_every_row_goes_along_deleted_ones_too()
    {
        using TemporaryStore one = new(), two = new();
        using WorkshopStore from = one.Open(), to = two.Open();
        Fill(from, 3, 4, 1.5, "x");
        StoreImport.Read(new MemoryStream(Exported(from)), to);
        foreach (StoredTable table in StoredTable.All(from.Connection.Database, null))
        {
            long rows = from.Connection.Count($"SELECT count(*) FROM {table.Name}");
            Assert.True(rows > 0, $"{table.Name} is not tried.");
            Assert.Equal(rows, to.Connection.Count($"SELECT count(*) FROM {table.Name}"));
        }

        Assert.NotEmpty(to.Bin.List());
        to.Shelf.Restore(to.Bin.List().First(item => item.Kind == BinKind.Design).Name);
    }

    [Fact]
    public void A_store_that_holds_something_is_left_alone()
    {
        using TemporaryStore one = new(), two = new();
        using WorkshopStore from = one.Open(), to = two.Open();
        Fill(from, 1, 1, 1, "");
        Revision mine = to.Shelf.Add("Mine", SampleFins.Entry(), []);
        to.Shelf.Delete(mine.DesignId);
        ExchangeException refusal = Assert.Throws<ExchangeException>(() => StoreImport.Read(new MemoryStream(Exported(from)), to));
        Assert.Contains("--store", refusal.Remedy, StringComparison.Ordinal);
        Assert.Single(to.Bin.List());
    }

    [Fact]
    public void A_store_of_an_earlier_version_is_brought_up_to_date_on_the_way()
    {
        using TemporaryStore one = new(), two = new();
        using WorkshopStore from = one.Open(), to = two.Open();
        Fill(from, 2, 0, 1, "");
        Dictionary<string, byte[]> files = ZipFiles.Of(Exported(from));
        // What version 1 has: designs, revisions, pictures, predictions.
        string[] tables = ["design", "picture", "prediction", "revision"];
        foreach (string name in files.Keys.Where(name => name.StartsWith("tables/", StringComparison.Ordinal) && !tables.Contains(name["tables/".Length..].Split('.')[0], StringComparer.Ordinal)).ToArray())
            files.Remove(name);
        ZipFiles.Change(files, "workshop.json", list =>
        {
            list["version"] = 1;
            foreach (JsonNode? own in list["tables"]!.AsArray().Where(own => !tables.Contains((string)own!["name"]!, StringComparer.Ordinal)).ToArray())
                list["tables"]!.AsArray().Remove(own);
            foreach (JsonNode? own in list["files"]!.AsArray().Where(own => !files.ContainsKey((string)own!["name"]!)).ToArray())
                list["files"]!.AsArray().Remove(own);
        });
        StoreImport.Read(new MemoryStream(ZipFiles.Zip(files)), to);
        Assert.Equal(from.Shelf.List().Select(own => own.Latest.Hash), to.Shelf.List().Select(own => own.Latest.Hash), StringComparer.Ordinal);
    }

    public static TheoryData<string, Action<Dictionary<string, byte[]>>> Hostile => new()
    {
        { "hash differs", files => Rows(files, "revision", row => row["text"] = "{}") },
        { "\"made_at\" that cannot be", files => Rows(files, "revision", row => row["made_at"] = "yesterday") },
        { "\"name\" that cannot be", files => Rows(files, "design", row => row["name"] = "a\nb") },
        { "\"tags\" that cannot be", files => Rows(files, "design", row => row["tags"] = "{}") },
        { "\"svg\" that cannot be", files => Rows(files, "picture", row => row["svg"] = "<svg xmlns=\"http://www.w3.org/2000/svg\"><script/></svg>") },
        { "\"kind\" that cannot be", files => Rows(files, "stock-item", row => row["kind"] = "gold") },
        { "\"bought_on\" that cannot be", files => Rows(files, "stock-item", row => row["bought_on"] = "2027-13-01") },
        { "not there", files => Rows(files, "build", row => row["revision_id"] = 12345) },
        { "made from itself", files => Rows(files, "revision", row => row["parent_id"] = (long)row["id"]!) },
        { "no row of", files => Rows(files, "design", row => row["id"] = "one") },
        { "no row of", files => Rows(files, "design", row => row.AsObject().Remove("tags")) },
        { "no row of", files => Rows(files, "design", row => row["more"] = 1) },
        { "no row of", files => Rows(files, "design", row => row["name"] = new JsonArray(new JsonArray())) },
        { "breaks a rule", files => Rows(files, "outing", row => row["grip"] = 9) },
        { "breaks a rule", files => Rows(files, "design", row => row["name"] = null) },
        { "breaks a rule", files => Rows(files, "design", row => row["id"] = 1) },
        { "no row of", files => ZipFiles.Reseal(files, "workshop.json", "tables/design.1.jsonl", Encoding.UTF8.GetBytes(new string('[', 1000) + "\n")) },
        { "ends within line", files => ZipFiles.Reseal(files, "workshop.json", "tables/design.1.jsonl", [.. files["tables/design.1.jsonl"][..^1]]) },
        { "rows, but", files => ZipFiles.Change(files, "workshop.json", list => list["tables"]![0]!["rows"] = 99) },
        { "version 99", files => ZipFiles.Change(files, "workshop.json", list => list["version"] = 99) },
        { "layout 2", files => ZipFiles.Change(files, "workshop.json", list => list["layout"] = 2) },
        { "does not name the tables", files => ZipFiles.Change(files, "workshop.json", list => list["tables"]![0]!["name"] = "design; DROP TABLE design") },
        { "other columns", files => ZipFiles.Change(files, "workshop.json", list => list["tables"]![0]!["columns"]![0] = "x") },
        { "belongs to no table", files => ZipFiles.Reseal(files, "workshop.json", "tables/other.jsonl", "{}\n"u8.ToArray()) },
    };

    [Theory]
    [MemberData(nameof(Hostile))]
    public void What_cannot_be_right_is_refused_and_nothing_is_taken_in(string why, Action<Dictionary<string, byte[]>> spoil)
    {
        Dictionary<string, byte[]> files = ZipFiles.Of(Sample.Value);
        spoil(files);
        using TemporaryStore place = new();
        using WorkshopStore to = place.Open();
        ExchangeException refusal = Assert.Throws<ExchangeException>(() => StoreImport.Read(new MemoryStream(ZipFiles.Zip(files)), to));
        Assert.Contains(why, refusal.Message, StringComparison.Ordinal);
        Assert.Empty(to.Shelf.List());
        Assert.Empty(to.Bin.List());
    }

    private static readonly Lazy<byte[]> Sample = new(() =>
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        store.Together(() => Fill(store, 2, 2, 1.5, "x"));
        return Exported(store);
    });

    private static void Fill(WorkshopStore store, int designs, int builds, double number, string words)
    {
        List<Revision> revisions = [];
        for (int i = 0; i < designs; i++)
        {
            Revision first = store.Shelf.Add($"Design {i}", SampleFins.Entry(massKg: 10 + i, note: words), [$"tag {i}"]);
            revisions.Add(store.Shelf.Revise(first.DesignId, SampleFins.Entry(massKg: 20 + i)));
            store.Shelf.KeepPrediction(first.Id, "test", $"{{\"mass_g\":{Math.Abs(number):R}}}");
            store.Drafts.Begin(first.DesignId, first.Id, store.Shelf.Text(first.Id));
            store.Drafts.Keep(first.DesignId, new(1, words, "$.prove.mass_kg", store.Shelf.Text(first.Id)));
            store.Library.Add(DesignPart.Usual(LibraryKind.Box, $"Box {i}", words));
            long sheet = store.RunSheets.Add(new() { DesignId = first.DesignId, Kind = RunKind.Pour, Title = $"Pour {i}", MadeBy = "test", Plan = "{}" }).Id;
            store.RunSheets.Enter(sheet, [new("note:1", "x" + words, new(2027, 4, 10, 8, 0, 0, TimeSpan.Zero))]);
        }

        if (designs == 0)
            return;
        StockItem spool = store.Stock.Add(new() { Kind = StockKind.Filament, Name = "grey " + words.Trim() + "x", Quantity = Math.Abs(number), Unit = StockUnit.Grams, BoughtOn = new(2027, 3, 1), Note = words });
        for (int i = 0; i < builds; i++)
        {
            Build build = store.Builds.Add(new() { RevisionId = revisions[i % designs].Id, Name = $"Build {i}", FilamentId = spool.Id, PlasticGrams = number, Note = words });
            store.Stock.Use(new(0, spool.Id, build.Id, number, null, words));
            store.Builds.Keep(build.Id, new BuildPart("tip", null, null, number, null, words));
            store.Builds.Keep(build.Id, new BuildPart("blade", new(2027, 4, 1), spool.Id, 150, 9.5, ""));
            store.Builds.Keep(build.Id, new BuildPhoto("z.jpg", words));
            store.Builds.Keep(build.Id, new BuildPhoto("a.jpg", ""));
            var session = store.Bench.Add(new(0, build.Id, new(2027, 4, 9), RootHold.Clamped, words, [new(1, 10, 190, ChordPlace.MidChord, 190, ChordPlace.TrailingEdge, new(number, 0.2), null, words)]));
            var outing = store.Outings.Add(new() { SailedOn = new(2027, 5, 1 + i), Place = words, BuildId = build.Id, Grip = 4 }, new($"{i}.gpx", new string((char)('a' + i), 64), [1, 2, 3, (byte)i]));
            store.Calibrations.Add([new(0, new(2027, 4, 10, 8, 0, 0, TimeSpan.Zero), "test", build.Id, spool.Id, null, LearnedQuantity.WallStiffness, 0.9, 0.85, 0.95, [session.Id], words)]);
            if (i % 2 == 1)
                store.Outings.Delete(outing.Id);
        }

        if (designs > 1)
        {
            Revision gone = store.Shelf.Add("Gone", SampleFins.Entry(massKg: 70), []);
            store.Shelf.Delete(gone.DesignId);
        }
    }

    private static byte[] Exported(WorkshopStore store)
    {
        using MemoryStream stream = new();
        StoreExport.Write(store, "Finwright test", stream);
        return stream.ToArray();
    }

    private static string Shown(WorkshopStore store) => System.Text.Json.JsonSerializer.Serialize(new
    {
        Designs = store.Shelf.List(),
        Bin = store.Bin.List(),
        Builds = store.Builds.List().Select(build => (object)new { build, Parts = store.Builds.Parts(build.Id), Photos = store.Builds.Photos(build.Id) }),
        Bench = store.Bench.List(),
        Outings = store.Outings.List().Select(outing => (object)new { outing, Track = store.Outings.Track(outing.Id) }),
        Stock = store.Stock.List(),
        Uses = store.Stock.Uses(),
        Calibrations = store.Calibrations.List(),
    });

    private static void Rows(Dictionary<string, byte[]> files, string table, Action<JsonNode> change)
    {
        string[] lines = Encoding.UTF8.GetString(files[$"tables/{table}.1.jsonl"]).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        JsonNode row = JsonNode.Parse(lines[^1])!;
        change(row);
        lines[^1] = row.ToJsonString();
        ZipFiles.Reseal(files, "workshop.json", $"tables/{table}.1.jsonl", Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n"));
    }
}
