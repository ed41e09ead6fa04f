using System.IO.Compression;
using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>Out of one workshop and into another, through the command line.</summary>
public sealed class ExchangeTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_design_goes_to_another_workshop_once()
    {
        Fill();
        string file = _folder["fairway.fin-bundle.zip"];
        Good("one", "export", "Fairway upright", "--with-builds", "--to", file);
        Run("one", "export", "Fairway upright", "--to", file).IsRefusal();
        Assert.Contains("revisions 1, 2 came in; 1 build came in: Fairway one", Good("two", "import", file).Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        JsonElement again = Good("two", "import", file, "--json").Json().GetProperty("answer");
        Assert.Equal(("bundle", 0, 3), (again.GetProperty("kind").GetString(), again.GetProperty("added").GetInt32(), again.GetProperty("known").GetInt32()));
        Assert.Contains("Fairway of a friend: revision 2", Export("Fairway upright@2", "two", "--as", "Fairway of a friend").Out, StringComparison.Ordinal);
        Assert.Equal(2, Good("two", "shelf", "--json").Json().GetProperty("designs").GetArrayLength());
    }

    [Fact]
    public void The_whole_workshop_goes_into_a_new_one_and_only_there()
    {
        Fill();
        string file = _folder["all.fin-workshop.zip"], again = _folder["again.fin-workshop.zip"];
        Good("one", "export", "--everything", "--to", file);
        Good("two", "import", file);
        Good("two", "export", "--everything", "--to", again);
        Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(again));
        Assert.Contains("holds something already", Run("two", "import", file).IsRefusal().Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_go_out_and_come_in()
    {
        Fill();
        string readings = _folder.Write("a.csv", "mass_kg;at_mm;at_chord;deflection_mm\n7,5;90;mid-chord;2,25\n"), outings = _folder.Write("b.csv", "sailed_on,place,build\n2027-05-01,the bay,fairway one\n");
        string stock = _folder.Write("c.csv", "kind,name,quantity,unit\nfilament,grey,1000,grams\n"), table = _folder["table.csv"];
        Run("one", "import", readings).IsRefusal();
        Good("one", "import", readings, "--build", "Fairway one", "--date", "2027-04-18", "--root", "clamped");
        Good("one", "import", outings);
        Good("one", "import", stock);
        Good("one", "export", "--readings", "fairway one", "--to", table);
        Assert.StartsWith("mass_kg,at_mm,at_chord,", File.ReadAllText(table), StringComparison.Ordinal);
        Assert.Contains("\n# 2027-04-18, root clamped\n7.5,90,mid-chord,90,mid-chord,2.25,", File.ReadAllText(table), StringComparison.Ordinal);
        Good("one", "export", "--outings", "--to", table, "--overwrite");
        Assert.Contains("\n2027-05-01,the bay,", File.ReadAllText(table), StringComparison.Ordinal);
        Good("one", "export", "--stock", "--to", table, "--overwrite");
        Assert.Contains("1 was there already", Good("one", "import", table).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_file_is_told_with_its_lines_and_leaves_no_trace()
    {
        string table = _folder.Write("a.csv", "sailed_on,grip\n2027-05-01,9\nnever,1\n");
        ProgramRun run = Run("one", "import", table).IsRefusal();
        Assert.Contains("a.csv:2  grip", run.Error, StringComparison.Ordinal);
        Assert.Contains("a.csv:3  sailed_on", run.Error, StringComparison.Ordinal);
        string zip = _folder["a.zip"];
        using (ZipArchive archive = ZipFile.Open(zip, ZipArchiveMode.Create))
            archive.CreateEntry("../evil.txt");
        Assert.Contains("climb out", Run("one", "import", zip).IsRefusal().Error, StringComparison.Ordinal);
        Assert.Contains("shelf add", Run("one", "import", Demo()).IsRefusal().Error, StringComparison.Ordinal);
        Run("one", "import", _folder.Write("b.txt", "hello")).IsRefusal();
        Run("one", "import", _folder["none.zip"]).IsRefusal();
        Run("one", "import", _folder.Path).IsRefusal();
        Assert.Equal(["a.csv", "a.zip", "b.txt", "fairway.fin.json"], _folder.Files());
    }

    [Theory]
    [InlineData("export", "--to", "x.zip")]
    [InlineData("export", "Fairway", "--stock", "--to", "x.zip")]
    [InlineData("export", "--stock", "--with-builds", "--to", "x.csv")]
    [InlineData("export", "Nobody", "--to", "x.zip")]
    [InlineData("export", "--readings", "Fairway one", "--to", "x.csv")]
    [InlineData("export", "Fairway upright")]
    [InlineData("import", "a.csv", "--as", "B")]
    [InlineData("import", "a.csv", "--date", "2027-04-18")]
    public void What_makes_no_sense_is_refused(params string[] call)
    {
        Fill();
        _folder.Write("a.csv", "kind,name,quantity,unit\nfilament,grey,1000,grams\n");
        Run("one", [.. call.Select(word => word.Contains('.', StringComparison.Ordinal) ? _folder[word] : word)]).IsRefusal();
        Assert.False(Path.Exists(_folder["x.zip"]) || Path.Exists(_folder["x.csv"]));
    }

    private void Fill()
    {
        string first = Demo(), second = _folder.Write("second.fin.json", DemoDesigns.Find("fairway-upright")!.Replace("\"rider_mass_kg\": 84", "\"rider_mass_kg\": 80", StringComparison.Ordinal));
        Good("one", "shelf", "add", first);
        Good("one", "shelf", "revise", "Fairway upright", second);
        Good("one", "built", "add", "Fairway upright", "--name", "Fairway one");
    }

    private ProgramRun Export(string name, string to, params string[] more)
    {
        string file = _folder[$"{Guid.NewGuid()}.zip"];
        Good("one", "export", name, "--to", file);
        return Good(to, ["import", file, .. more]);
    }

    private string Demo() => _folder.Write("fairway.fin.json", DemoDesigns.Find("fairway-upright")!);

    private ProgramRun Run(string store, params string[] call) => ProgramRun.Of([.. call, "--store", _folder[$"{store}.finstore"]]);

    private ProgramRun Good(string store, params string[] call)
    {
        ProgramRun run = Run(store, call);
        Assert.True(run.ExitCode == ExitCode.Good, run.Error);
        return run;
    }
}
