using System.Text.Json;
using System.Xml.Linq;
using Finwright.Design;
using Finwright.Terminal;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Tests;

/// <summary>Fins side by side, builds against their predictions, and what they teach, through the command line.</summary>
public sealed class CompareTests : IDisposable
{
    private static readonly FinDesign Delta = DesignReader.Read(DemoDesigns.Find("sandbar-delta")!).Design!;

    private readonly TemporaryFolder _folder = new();
    private readonly string _store, _readings;

    public CompareTests()
    {
        _store = _folder["workshop.finstore"];
        DirectoryInfo root = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root.FullName, "finwright.slnx")))
            root = root.Parent!;
        _readings = Path.Combine(root.FullName, "examples", "sandbar-delta.readings.csv");
        using WorkshopStore store = WorkshopStore.Open(_store);
        Revision first = store.Shelf.Add("Delta", new(Delta, null, "", "test"), []), second = store.Shelf.Revise(first.DesignId, new(Delta with { Prove = Delta.Prove with { MassKg = 20 } }, null, "", "test"));
        long filament = store.Stock.Add(new() { Kind = StockKind.Filament, Name = "grey PETG", Batch = "B7", Quantity = 1000, Unit = StockUnit.Grams }).Id;
        long resin = store.Stock.Add(new() { Kind = StockKind.Resin, Name = "slow epoxy", Quantity = 1000, Unit = StockUnit.Millilitres }).Id;
        store.Builds.Add(new() { RevisionId = first.Id, Name = "one", FilamentId = filament, ResinId = resin, PlasticGrams = 250, PrintHours = 12 });
        store.Builds.Add(new() { RevisionId = second.Id, Name = "two", FilamentId = filament, ResinId = resin, PlasticGrams = 210 });
        // What a minute's work would give.
        foreach (Revision revision in (Revision[])[first, second])
            Predictions.Keep(store, revision, ProgramVersion.Text, Kept);
    }

    private static FinResults Kept => new()
    {
        Name = "Delta",
        DesignSha256 = "",
        Groups = [ResultGroup.Print],
        Lines =
        [
            new(ResultKeys.Plastic, ResultGroup.Print, "plastic of the parts", 200, null, "g", 190, 210, 0),
            new(ResultKeys.PrintTime, ResultGroup.Print, "time on the printer", 11, null, "h", 9.4, 13.8, 1),
        ],
    };

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Two_files_are_compared_at_once_and_drawn_without_a_store()
    {
        string one = _folder.Write("my-fin.fin.json", DesignWriter.Write(Delta)), other = _folder.Write("my-other.fin.json", DesignWriter.Write(Delta with { Shape = Delta.Shape with { Outline = Delta.Shape.Outline with { SpanMm = 200 } } }));
        string svg = _folder["both.svg"], none = _folder["none.finstore"];
        ProgramRun run = ProgramRun.Of("compare", one, other, "--quick", "--svg", svg, "--store", none);
        Assert.Equal(ExitCode.Good, run.ExitCode);
        Assert.Equal("", run.Error);
        Assert.Contains("1 input differs;", run.Out, StringComparison.Ordinal);
        Assert.Contains("shape.outline.span_mm: 212 -> 200 mm (-5.7 %)", run.Out, StringComparison.Ordinal);
        Assert.Contains("span: 212.0 mm -> 200.0 mm (-5.7 %)", run.Out, StringComparison.Ordinal);
        Assert.Contains("not compared: water, strength,", run.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.All(run.Out.Split('\n').Where(line => !line.Contains(_folder.Path, StringComparison.Ordinal)), line => Assert.True(line.Length <= 80, line));
        Assert.Equal("svg", XDocument.Load(svg).Root!.Name.LocalName);
        Assert.False(File.Exists(none));

        Assert.Contains("exists already", ProgramRun.Of("compare", one, other, "--quick", "--svg", svg).IsRefusal().Error, StringComparison.Ordinal);
        Assert.Contains("no result differs", ProgramRun.Of("compare", one, one, "--quick").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Revisions_are_compared_by_name_and_number_and_from_what_is_kept()
    {
        JsonElement answer = Good("compare", "delta@1", "DELTA", "--json").Json();
        Assert.Equal(("Delta@1", "Delta@2"), (answer.GetProperty("first").GetProperty("label").GetString(), answer.GetProperty("second").GetProperty("label").GetString()));
        JsonElement change = Assert.Single(answer.GetProperty("inputs").EnumerateArray());
        Assert.Equal("$.prove.mass_kg", change.GetProperty("path").GetString());
        Assert.Equal(100.0 / 3, change.GetProperty("percent").GetDouble(), 1e-9);
        Assert.Equal(0, answer.GetProperty("results").GetArrayLength());
    }

    [Fact]
    public void Readings_are_kept_listed_learned_from_deleted_and_had_back()
    {
        Assert.Contains("No readings are kept", Good("bench", "list").Out, StringComparison.Ordinal);
        JsonElement kept = Good("bench", "add", "one", _readings, "--date", "2026-05-04", "--root", "joint", "--note", "calm day", "--json").Json();
        Assert.Equal(("one", "2026-05-04", "joint"), (kept.GetProperty("build").GetString(), kept.GetProperty("taken_on").GetString(), kept.GetProperty("root_hold").GetString()));
        string number = kept.GetProperty("number").GetRawText();
        Assert.Contains("one: calm day", Good("bench", "list", "build:one").Out, StringComparison.Ordinal);
        Assert.Contains("No readings", Good("bench", "list", "two").Out, StringComparison.Ordinal);

        JsonElement[] taught = [.. Good("bench", "learn", "one", "--json").Json().GetProperty("calibrations").EnumerateArray()];
        Assert.Equal(["wall-stiffness", "core-stiffness", "plastic", "print-time"], taught.Select(own => own.GetProperty("quantity").GetString()!), StringComparer.Ordinal);
        // The readings were made with walls 0.9 and core 0.88 and some noise.
        foreach ((double truth, JsonElement own) in ((double[])[0.9, 0.88]).Zip(taught))
            Assert.InRange(truth, own.GetProperty("low").GetDouble(), own.GetProperty("high").GetDouble());
        Assert.Equal(1.25, taught[2].GetProperty("factor").GetDouble(), 1e-9);

        // What one has taught is in the prediction of two.
        JsonElement two = Good("built", "show", "two", "--json").Json();
        Assert.Equal(4, two.GetProperty("used").GetArrayLength());
        JsonElement plastic = two.GetProperty("lines").EnumerateArray().First(line => line.GetProperty("key").GetString() == ResultKeys.Plastic);
        Assert.Equal((250, "below"), (plastic.GetProperty("predicted").GetDouble(), plastic.GetProperty("state").GetString()));

        Assert.Contains("and 2 calibrations that came from them", Good("bench", "delete", number).Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(2, Good("built", "show", "two", "--json").Json().GetProperty("used").GetArrayLength());
        Run("bench", "delete", number).IsRefusal();
        Assert.Contains("are back", Good("bench", "restore", number).Out, StringComparison.Ordinal);
        Assert.Equal(1, Good("bench", "list", "--json").Json().GetProperty("sessions").GetArrayLength());
    }

    [Fact]
    public void A_build_is_shown_against_its_prediction()
    {
        Good("bench", "add", "one", _readings);
        ProgramRun run = Good("built", "show", "one");
        Assert.Contains($"{"plastic, g",-29}{"200",8}  {"190 to 210",-16}{"250",8}   1.25  above", run.Out, StringComparison.Ordinal);
        Assert.Contains("Which assumption was off\n  The plastic weighs 250 g against 200 (190 to 210).", run.Out, StringComparison.Ordinal);
        Assert.Contains("Readings 1, ", run.Out, StringComparison.Ordinal);
        // The first line of the file: 10 kg at 190 mm on the leading edge, read there.
        Assert.Contains("\n  10 kg at 190 L, 190 L, mm ", run.Out, StringComparison.Ordinal);
        Assert.Contains("Not measured: mass of the finished fin, resin poured, peak temperature, cost.", run.Out.ReplaceLineEndings(" ").Replace("     ", " ", StringComparison.Ordinal).Replace("    ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Two_builds_are_compared_with_what_was_measured_of_each()
    {
        ProgramRun run = Good("compare", "build:one", "build:two");
        Assert.Contains("plastic: 250 -> 210 g (-16 %); expected 200 -> 200", run.Out, StringComparison.Ordinal);
        Assert.Contains("build:one, held against its prediction", run.Out, StringComparison.Ordinal);
        Good("bench", "learn", "two");
        // Both are of the batch: both results use it.
        JsonElement answer = Good("compare", "build:one", "build:two", "--quick", "--json").Json();
        foreach (string side in (string[])["first", "second"])
            Assert.Equal("two", answer.GetProperty(side).GetProperty("used")[0].GetProperty("builds")[0].GetString());
    }

    [Fact]
    public void What_is_not_there_or_cannot_be_is_refused_with_one_message()
    {
        Assert.Contains("There is no build \"three\"", Run("compare", "build:three", "Delta").IsRefusal().Error, StringComparison.Ordinal);
        Assert.Contains("There is no revision 9", Run("compare", "Delta@9", "Delta").IsRefusal().Error, StringComparison.Ordinal);
        Assert.Contains("There is no such file", Run("compare", _folder["none.fin.json"], "Delta").IsRefusal().Error.ReplaceLineEndings(" ").Replace("           ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("cannot be compared", Run("compare", _folder.Write("bad.fin.json", "{ \"name\": 3 }"), "Delta", "--quick").IsRefusal().Error, StringComparison.Ordinal);
        Run("compare", "Delta", "Delta", "--overwrite").IsRefusal();
        Run("compare", "", "Delta").IsRefusal();
        Run("built", "show", "three").IsRefusal();
        Run("bench", "add", "three", _readings).IsRefusal();
        Run("bench", "add", "one", _folder["none.csv"]).IsRefusal();
        Run("bench", "add", "one", _readings, "--date", "4.5.2026").IsRefusal();
        Run("bench", "add", "one", _readings, "--date", "2999-01-01").IsRefusal();
        Assert.Contains("beyond the tip", Run("bench", "add", "one", _folder.Write("far.csv", "mass_kg,at_mm,at_chord,deflection_mm\n15,400,mid-chord,2\n")).IsRefusal().Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Run("bench", "delete", "one").IsRefusal();
        Run("bench", "delete", "7").IsRefusal();
        Run("bench", "restore", "7").IsRefusal();
        Run("bench", "list", "three").IsRefusal();
        Assert.Equal(0, Good("bench", "list", "--json").Json().GetProperty("sessions").GetArrayLength());
    }

    [Fact]
    public void A_build_that_teaches_nothing_says_why()
    {
        using (WorkshopStore store = WorkshopStore.Open(_store))
            store.Builds.Add(new() { RevisionId = store.Shelf.Get(new("Delta", 1)).Id, Name = "bare" });
        string error = Run("bench", "learn", "bare").IsRefusal().Error.ReplaceLineEndings(" ");
        Assert.Contains("teaches nothing yet", error, StringComparison.Ordinal);
        Assert.Contains("no readings of the bench", error.Replace("           ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    private ProgramRun Run(params string[] words) => ProgramRun.Of([.. words, "--store", _store]);

    private ProgramRun Good(params string[] words)
    {
        ProgramRun run = Run(words);
        Assert.True(run.ExitCode == ExitCode.Good, run.Error + run.Out);
        return run;
    }
}
