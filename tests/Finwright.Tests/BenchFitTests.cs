using System.Text.Json;
using Finwright.Design;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class BenchFitTests : IDisposable
{
    private static readonly string Delta = DemoDesigns.Find("sandbar-delta")!;
    private readonly TemporaryFolder _folder = new();
    private readonly string _design, _readings;

    public BenchFitTests()
    {
        _design = _folder.Write("delta.fin.json", Delta);
        _readings = _folder.Write("delta.readings.csv", Example());
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Bench_fit_as_json_has_factors_covariance_and_every_reading_before_and_after()
    {
        ProgramRun run = ProgramRun.Of("bench", "fit", _design, _readings, "--json");
        Assert.Equal(ExitCode.Good, run.ExitCode);
        JsonElement answer = run.Json();
        Assert.Equal("finwright-bench-fit", answer.GetProperty("kind").GetString());
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("problem").ValueKind);
        JsonElement[] factors = [.. answer.GetProperty("factors").EnumerateArray()];
        Assert.Equal(["walls", "core", "root"], factors.Select(own => own.GetProperty("part").GetString()!), StringComparer.Ordinal);
        Assert.All(factors, own => Assert.InRange(Number(own, "factor"), Number(own, "low"), Number(own, "high")));
        // The example was made with walls 0.9 and core 0.88.
        Assert.InRange(0.9, Number(factors[0], "low"), Number(factors[0], "high"));
        Assert.InRange(0.88, Number(factors[1], "low"), Number(factors[1], "high"));
        JsonElement covariance = answer.GetProperty("logCovariance");
        Assert.Equal(Number(factors[0], "deviationPercent"), 100 * Math.Sqrt(covariance[0][0].GetDouble()), 1e-6);
        Assert.Equal(covariance[0][1].GetDouble(), covariance[1][0].GetDouble(), 1e-12);
        JsonElement[] readings = [.. answer.GetProperty("readings").EnumerateArray()];
        Assert.Equal(11, readings.Length);
        Assert.All(readings, own => Assert.Equal(Number(own, "residual"), (Number(own, "read") - Number(own, "after")) / Number(own, "deviation"), 1e-5));
        Assert.Equal(Number(answer, "chiSquare"), readings.Sum(own => Math.Pow(Number(own, "residual"), 2)), 1e-5);
    }

    [Fact]
    public void Bench_fit_as_text_says_the_factors_first_and_fits_80_columns()
    {
        ProgramRun run = ProgramRun.Of("bench", "fit", _design, _readings);
        Assert.Equal(ExitCode.Good, run.ExitCode);
        Assert.StartsWith("Sandbar delta\n11 readings. Measured stiffness over computed: walls 0.", run.Out, StringComparison.Ordinal);
        Assert.Contains("cannot tell walls from core", run.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        // A path is left whole.
        Assert.All(run.Out.Split('\n').Where(line => !line.Contains(_design, StringComparison.Ordinal)), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Bench_fit_saves_a_copy_that_predicts_what_was_read_and_never_over_a_file()
    {
        string saved = _folder["measured.fin.json"];
        JsonElement fit = ProgramRun.Of("bench", "fit", _design, _readings, "--root", "clamped", "--save", saved, "--json").Json();
        Assert.Equal(saved, fit.GetProperty("savedAs").GetString());
        FinDesign before = DesignReader.ReadFile(_design).Design!, after = DesignReader.ReadFile(saved).Design!;
        Assert.Equal(Number(fit.GetProperty("factors")[0], "factor"), after.Materials.WallFactor, 1e-4);
        Assert.Equal(Number(fit.GetProperty("factors")[1], "deviationPercent"), after.Materials.CoreFactorDeviationPercent!.Value, 0.01);
        // All else as it was; the hold of the bench is not the hold in the board.
        Assert.Equal(before.Base.RootHold, after.Base.RootHold);
        Assert.Equal(DesignWriter.Write(before), DesignWriter.Write(after with { Materials = before.Materials }));
        // Compared anew, the saved design predicts before what the first comparison predicted after.
        JsonElement again = ProgramRun.Of("bench", "fit", saved, _readings, "--root", "clamped", "--json").Json();
        Assert.Equal(Number(fit.GetProperty("readings")[0], "after"), Number(again.GetProperty("readings")[0], "before"), 0.002);
        Assert.Contains(again.GetProperty("notes").EnumerateArray(), note => note.GetString()!.Contains("count twice", StringComparison.Ordinal));

        string content = File.ReadAllText(saved);
        Assert.Contains("exists already", ProgramRun.Of("bench", "fit", _design, _readings, "--save", saved).IsRefusal().Error, StringComparison.Ordinal);
        Assert.Equal(content, File.ReadAllText(saved));
        Assert.Equal(ExitCode.Good, ProgramRun.Of("bench", "fit", _design, _readings, "--save", saved, "--overwrite").ExitCode);
        Assert.False(string.Equals(content, File.ReadAllText(saved), StringComparison.Ordinal));
    }

    [Fact]
    public void A_copy_in_another_folder_takes_the_material_files_along()
    {
        Assert.Equal(ExitCode.Good, ProgramRun.Of("materials", "petg-printed", "--copy", _folder["own.material.json"]).ExitCode);
        string design = _folder.Write("own.fin.json", Delta.Replace("\"materials\": {", "\"materials\": { \"printed\": { \"file\": \"own.material.json\" },", StringComparison.Ordinal));
        Directory.CreateDirectory(_folder["elsewhere"]);
        string saved = Path.Combine(_folder["elsewhere"], "measured.fin.json");
        Assert.Equal(ExitCode.Good, ProgramRun.Of("bench", "fit", design, _readings, "--save", saved).ExitCode);
        Assert.Equal(ExitCode.Good, ProgramRun.Of("bench", saved).ExitCode);
    }

    [Fact]
    public void A_reading_that_cannot_be_is_named_and_marked()
    {
        string wrong = _folder.Write("wrong.readings.csv", Example().Replace("20,120,mid-chord,120,trailing-edge,", "20,120,mid-chord,120,trailing-edge,1", StringComparison.Ordinal));
        ProgramRun run = ProgramRun.Of("bench", "fit", _design, wrong, "--json");
        JsonElement marked = Assert.Single(run.Json().GetProperty("readings").EnumerateArray(), own => own.GetProperty("looksWrong").GetBoolean() && Number(own, "read") > 10 && Number(own, "atMm") == 120);
        Assert.Contains(run.Json().GetProperty("remarks").EnumerateArray(), remark => remark.GetString()!.Contains($"The deflection on line {marked.GetProperty("line")} lies", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "no reading in the file")]
    [InlineData("mass_kg,at_mm,at_chord,deflection_mm\n15,90,mid-chord,two\n", "csv:2")]
    [InlineData("mass_kg,at_mm,at_chord,deflection_mm\n15,400,mid-chord,2\n", "beyond the tip")]
    [InlineData("\u0001\u0002", "no text has")]
    public void Bad_readings_are_refused_with_their_place(string text, string says) =>
        Assert.Contains(says, ProgramRun.Of("bench", "fit", _design, _folder.Write("bad.readings.csv", text)).IsRefusal().Error.ReplaceLineEndings(" ").Replace("         ", " ", StringComparison.Ordinal), StringComparison.Ordinal);

    [Fact]
    public void Files_that_are_not_there_are_refused()
    {
        ProgramRun.Of("bench", "fit", _design, _folder["none.csv"]).IsRefusal();
        ProgramRun.Of("bench", "fit", _folder["none.fin.json"], _readings).IsRefusal();
        ProgramRun.Of("bench", "fit", _design, _folder.Path).IsRefusal();
        ProgramRun.Of("bench", "fit", _design, _readings, "--overwrite").IsRefusal();
        ProgramRun.Of("bench", "fit", _design, _readings, "--save", Path.Combine(_folder["nowhere"], "a.fin.json")).IsRefusal();
    }

    private static string Example()
    {
        DirectoryInfo folder = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "finwright.slnx")))
            folder = folder.Parent!;
        return File.ReadAllText(Path.Combine(folder.FullName, "examples", "sandbar-delta.readings.csv"));
    }

    private static double Number(JsonElement element, string name) => element.GetProperty(name).GetDouble();
}
