using System.Text;
using System.Text.Json.Nodes;
using Finwright.Design;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Exchange;
using Finwright.Workshop.Exchange.Archives;
using Finwright.Workshop.Exchange.Bundles;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tests.Exchange.Archives;
using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Tests.Exchange.Bundles;

public sealed class BundleTests
{
    private static readonly Lazy<byte[]> Sample = new(() =>
    {
        using TemporaryStore one = new();
        using WorkshopStore store = one.Open();
        Fill(store);
        return Exported(store, "Mudflat", withBuilds: true);
    });

    [Fact]
    public void A_design_with_its_builds_comes_back_the_same_in_another_store()
    {
        using TemporaryStore one = new(), two = new();
        using WorkshopStore from = one.Open(), to = two.Open();
        Fill(from);
        byte[] file = Exported(from, "Mudflat", withBuilds: true);
        Assert.Equal(file, Exported(from, "Mudflat", withBuilds: true));
        BundleTaken taken = Taken(file, to);
        Assert.True(taken.IsNew);
        Assert.Equal([1, 2, 3], taken.Added);
        Assert.Equal(["Mudflat one", "Mudflat two"], taken.Builds);
        Assert.Equal(file, Exported(to, "Mudflat", withBuilds: true));
        Assert.Equal(from.Shelf.Find("Mudflat")!.AddedAt, to.Shelf.Find("Mudflat")!.AddedAt);
        Assert.Equal(818.5, to.Stock.Get("grey PETG").Left);
    }

    [Fact]
    public void Taking_in_twice_changes_nothing()
    {
        using TemporaryStore one = new(), two = new();
        using WorkshopStore from = one.Open(), to = two.Open();
        Fill(from);
        byte[] file = Exported(from, "Mudflat", withBuilds: true);
        Taken(file, to);
        BundleTaken again = Taken(file, to);
        Assert.False(again.IsNew);
        Assert.Empty(again.Added);
        Assert.Equal([1, 2, 3], again.Known);
        Assert.Empty(again.Builds);
        Assert.Equal(2, again.KnownBuilds.Count);
        Assert.Equal(file, Exported(to, "Mudflat", withBuilds: true));
        Assert.Equal(2, to.Stock.List().Count);
        Assert.Equal(818.5, to.Stock.Get("grey PETG").Left);
    }

    [Fact]
    public void New_revisions_are_added_where_the_history_agrees()
    {
        using TemporaryStore one = new(), two = new();
        using WorkshopStore from = one.Open(), to = two.Open();
        Fill(from);
        Taken(Exported(from, "Mudflat@2"), to);
        Assert.Equal([2], to.Shelf.Revisions(to.Shelf.Find("Mudflat")!.Id).Select(own => own.Number));
        BundleTaken taken = Taken(Exported(from, "Mudflat"), to);
        Assert.Equal([1, 3], taken.Added);
        Assert.Equal([2], taken.Known);
        Assert.Equal("Mudflat@2", to.Shelf.Get(Reference.Parse("mudflat@3")).Parent);
    }

    [Fact]
    public void Where_the_history_differs_a_name_is_asked_for_and_nothing_changes()
    {
        using TemporaryStore one = new(), two = new();
        using WorkshopStore from = one.Open(), to = two.Open();
        Fill(from);
        to.Shelf.Add("mudflat", SampleFins.Entry(massKg: 33), []);
        byte[] file = Exported(from, "Mudflat");
        ExchangeException refusal = Assert.Throws<ExchangeException>(() => Taken(file, to));
        Assert.Contains("--as", refusal.Remedy, StringComparison.Ordinal);
        Assert.Equal(1, Assert.Single(to.Shelf.List()).Revisions);
        BundleTaken taken = Taken(file, to, "Mudflat of a friend");
        Assert.Equal(("Mudflat of a friend", 3), (taken.Name, taken.Added.Count));
        Assert.Equal(2, to.Shelf.List().Count);
    }

    [Fact]
    public void A_build_of_the_same_name_with_other_content_is_refused()
    {
        using TemporaryStore one = new(), two = new();
        using WorkshopStore from = one.Open(), to = two.Open();
        Fill(from);
        byte[] file = Exported(from, "Mudflat", withBuilds: true);
        Taken(file, to);
        to.Builds.Change(to.Builds.Get("Mudflat one") with { MassGrams = 1 });
        Assert.Contains("Mudflat one", Assert.Throws<ExchangeException>(() => Taken(file, to)).Message, StringComparison.Ordinal);
        Assert.Equal(1, to.Builds.Get("Mudflat one").MassGrams);
    }

    [Fact]
    public void Names_stay_words_whatever_they_hold()
    {
        const string name = "<script>alert(1)</script> ../../etc & \"x\"";
        using TemporaryStore one = new(), two = new();
        using WorkshopStore from = one.Open(), to = two.Open();
        from.Shelf.Add(name, SampleFins.Entry(note: "# [a](b) <img>\nsecond line"), ["<b>"]);
        byte[] file = Exported(from, name);
        Taken(file, to);
        Assert.Equal(name, to.Shelf.List()[0].Name);
        Assert.Equal("# [a](b) <img>\nsecond line", to.Shelf.List()[0].Latest.Note);
        string notes = Encoding.UTF8.GetString(Entry(file, "notes.md"));
        Assert.DoesNotContain(" <script>", notes, StringComparison.Ordinal);
        Assert.Contains("\\<script\\>", notes, StringComparison.Ordinal);
    }

    [Fact]
    public void A_parent_in_another_design_is_told_but_not_needed()
    {
        using TemporaryStore one = new(), two = new();
        using WorkshopStore from = one.Open(), to = two.Open();
        Revision first = from.Shelf.Add("Mother", SampleFins.Entry(), []);
        from.Shelf.Add("Child", SampleFins.Entry(massKg: 3), [], first.Id);
        byte[] file = Exported(from, "Child");
        Assert.Contains("\"made_from\": \"Mother@1\"", Encoding.UTF8.GetString(Entry(file, "bundle.json")), StringComparison.Ordinal);
        Taken(file, to);
        Assert.Equal("", to.Shelf.List()[0].Latest.Parent);
    }

    public static TheoryData<string, Action<Dictionary<string, byte[]>>> Hostile => new()
    {
        { "hash differs", files => Change(files, "revisions/1.fin.json", text => text.Replace("\"mass_kg\": 15", "\"mass_kg\": 16", StringComparison.Ordinal), reseal: false) },
        { "hash differs", files => Change(files, "revisions/1.fin.json", text => text.Replace("\"mass_kg\": 15", "\"mass_kg\": 16", StringComparison.Ordinal)) },
        { "cannot be read as a design", files => Reseal(files, "revisions/1.fin.json", "{}"u8.ToArray(), andHash: 1) },
        { "cannot be read as a design", files => Reseal(files, "revisions/1.fin.json", Encoding.UTF8.GetBytes(new string('[', 100_000)), andHash: 1) },
        { "missing", files => files.Remove("revisions/2.fin.json") },
        { "does not name", files => files.Add("more.txt", "x"u8.ToArray()) },
        { "has no place", files => Reseal(files, "nested.zip", "PK"u8.ToArray()) },
        { "layout 2", files => List(files, list => list["layout"] = 2) },
        { "does not say", files => List(files, list => list["kind"] = "other") },
        { "nested too deep", files => files["bundle.json"] = Encoding.UTF8.GetBytes(new string('[', 1_000_000)) },
        { "makes no sense", files => List(files, list => list["surprise"] = 1) },
        { "makes no sense", files => List(files, list => list["name"] = null) },
        { "came later", files => List(files, list => list["revisions"]![0]!["parent"] = 2) },
        { "came later", files => List(files, list => list["revisions"]![0]!["parent"] = 1) },
        { "not there", files => List(files, list => list["revisions"]![2]!["number"] = 9, list => list["revisions"]![2]!["parent"] = 7) },
        { "does not come after", files => List(files, list => list["revisions"]![1]!["number"] = 1) },
        { "no revision", files => List(files, list => list["revisions"] = new JsonArray()) },
        { "plain drawing", files => Reseal(files, "pictures/1.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"><script>1</script></svg>"u8.ToArray()) },
        { "plain drawing", files => Reseal(files, "pictures/1.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\" onload=\"x()\"/>"u8.ToArray()) },
        { "plain drawing", files => Reseal(files, "pictures/1.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"><path fill=\"url(http://x)\"/></svg>"u8.ToArray()) },
        { "plain drawing", files => Reseal(files, "pictures/1.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"><image href=\"http://x\"/></svg>"u8.ToArray()) },
        { "no SVG", files => Reseal(files, "pictures/1.svg", "<!DOCTYPE svg [<!ENTITY a \"b\">]><svg xmlns=\"http://www.w3.org/2000/svg\">&a;</svg>"u8.ToArray()) },
        { "no text in UTF-8", files => Reseal(files, "pictures/1.svg", [0xFF, 0xFE]) },
        { "nested too deep", files => Reseal(files, "results/3.json", Encoding.UTF8.GetBytes(new string('[', 100_000))) },
        { "cannot be right", files => Builds(files, builds => builds["builds"]![0]!["bench"]![0]!["readings"]![0]!["mass_kg"] = 1e6) },
        { "cannot be", files => Change(files, "builds.json", text => text.Replace("\"plastic_g\": 181.5", "\"plastic_g\": 1e999", StringComparison.Ordinal)) },
        { "rating", files => Builds(files, builds => builds["builds"]![0]!["outings"]![0]!["grip"] = 6) },
        { "damaged", files => Reseal(files, "tracks/1.track", [1, 2, 3]) },
        { "not named", files => Builds(files, builds => builds["builds"]![0]!["outings"]![0]!["track"]!["entry"] = "notes.txt") },
        { "not named", files => Builds(files, builds => builds["builds"]![0]!["outings"]![0]!["track"]!["sha256"] = "no") },
        { "not in the bundle", files => Builds(files, builds => builds["builds"]![0]!["revision"] = 7) },
        { "not among the items", files => Builds(files, builds => builds["builds"]![0]!["filament"]!["name"] = "gold") },
        { "makes no sense", files => Builds(files, builds => builds["stock"]![0]!["kind"] = "uranium") },
        { "1 to 80 characters", files => Builds(files, builds => builds["builds"]![0]!["name"] = "a\u0007") },
        { "The name", files => List(files, list => list["name"] = new string('a', 81)) },
    };

    [Theory]
    [MemberData(nameof(Hostile))]
    public void What_cannot_be_right_is_refused_and_nothing_is_taken_in(string why, Action<Dictionary<string, byte[]>> spoil)
    {
        using TemporaryStore two = new();
        using WorkshopStore to = two.Open();
        Dictionary<string, byte[]> files = ZipFiles.Of(Sample.Value);
        spoil(files);
        Exception refusal = Assert.ThrowsAny<Exception>(() => Taken(ZipFiles.Zip(files), to));
        Assert.True(refusal is ExchangeException or StoreException, refusal.ToString());
        Assert.Contains(why, refusal.Message, StringComparison.Ordinal);
        Assert.Empty(to.Shelf.List());
        Assert.Empty(to.Stock.List());
        Assert.Empty(to.Builds.List());
        Assert.Equal(["workshop.finstore"], Directory.EnumerateFiles(two.Folder).Select(Path.GetFileName).Where(name => !name!.EndsWith("-wal", StringComparison.Ordinal) && !name.EndsWith("-shm", StringComparison.Ordinal)), StringComparer.Ordinal);
    }

    private static void Fill(WorkshopStore store)
    {
        Revision first = store.Shelf.Add("Mudflat", SampleFins.Entry(note: "as drawn"), ["slalom"]);
        Revision second = store.Shelf.Revise(first.DesignId, SampleFins.Entry(massKg: 12, note: "less weight"));
        Revision third = store.Shelf.Revise(first.DesignId, SampleFins.Entry(massKg: 10));
        store.Shelf.KeepPrediction(third.Id, "Finwright test", """{ "mass_g": 432.1 }""");
        StockItem spool = store.Stock.Add(new() { Kind = StockKind.Filament, Name = "grey PETG", Batch = "B7", Quantity = 1000, Unit = StockUnit.Grams, Price = 21.5, Currency = "EUR", BoughtOn = new(2027, 3, 1) });
        StockItem resin = store.Stock.Add(new() { Kind = StockKind.Resin, Name = "slow resin", Quantity = 900, Unit = StockUnit.Millilitres });
        Build build = store.Builds.Add(new() { RevisionId = second.Id, Name = "Mudflat one", FilamentId = spool.Id, ResinId = resin.Id, PlasticGrams = 181.5, MadeOn = new(2027, 4, 2), Problems = "a leak" });
        store.Stock.Use(new(0, spool.Id, build.Id, 181.5, new(2027, 4, 2), ""));
        store.Builds.Keep(build.Id, new BuildPart("tip", null, spool.Id, 31.5, null, ""));
        store.Builds.Keep(build.Id, new BuildPart("blade", new(2027, 4, 1), spool.Id, 150, 9.5, "clean"));
        store.Builds.Keep(build.Id, new BuildPhoto("photos/blade.jpg", "the blade"));
        store.Bench.Add(new(0, build.Id, new(2027, 4, 9), RootHold.Clamped, "in the vice", [new(1, 10, 190, ChordPlace.MidChord, 190, ChordPlace.TrailingEdge, new(8.2, 0.2), null, "dial gauge")]));
        store.Outings.Add(new() { SailedOn = new(2027, 5, 1), Place = "the estuary", BuildId = build.Id, Grip = 4, SpinOuts = 0, WindLowKnots = 14 }, new("first.gpx", new string('a', 64), TrackForm.Write(new(new(2027, 5, 1, 9, 0, 0, TimeSpan.Zero), [new(0, 0.9, 0.1, 8), new(1, 0.9, 0.1001, 8.1)]))));
        store.Outings.Add(new() { SailedOn = new(2027, 5, 2), Place = "the estuary", BuildId = build.Id }, null);
        store.Builds.Add(new() { RevisionId = third.Id, Name = "Mudflat two" });
    }

    private static byte[] Exported(WorkshopStore store, string reference, bool withBuilds = false)
    {
        using MemoryStream stream = new();
        BundleExport.Write(store, Reference.Parse(reference), withBuilds, "Finwright test", stream);
        return stream.ToArray();
    }

    private static BundleTaken Taken(byte[] file, WorkshopStore store, string? name = null) => BundleImport.Read(new MemoryStream(file), store, name);

    private static byte[] Entry(byte[] file, string name) => ZipFiles.Of(file)[name];

    private static void List(Dictionary<string, byte[]> files, params Action<JsonNode>[] changes) => ZipFiles.Change(files, "bundle.json", changes);

    private static void Builds(Dictionary<string, byte[]> files, Action<JsonNode> change)
    {
        JsonNode builds = JsonNode.Parse(files["builds.json"])!;
        change(builds);
        Reseal(files, "builds.json", Encoding.UTF8.GetBytes(builds.ToJsonString()));
    }

    private static void Change(Dictionary<string, byte[]> files, string name, Func<string, string> change, bool reseal = true)
    {
        string before = Encoding.UTF8.GetString(files[name]), after = change(before);
        Assert.NotEqual(before, after, StringComparer.Ordinal);
        if (reseal)
            Reseal(files, name, Encoding.UTF8.GetBytes(after));
        else
            files[name] = Encoding.UTF8.GetBytes(after);
    }

    private static void Reseal(Dictionary<string, byte[]> files, string name, byte[] bytes, int? andHash = null)
    {
        ZipFiles.Reseal(files, "bundle.json", name, bytes);
        if (andHash is int number)
            List(files, list => list["revisions"]![number - 1]!["sha256"] = Sha256.Of(bytes));
    }
}
