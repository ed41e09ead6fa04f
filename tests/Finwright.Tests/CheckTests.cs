using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class CheckTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Demos => [.. DemoDesigns.Names];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Demos))]
    public void Check_of_each_demo_finds_no_error_and_gives_the_numbers(string demo)
    {
        ProgramRun run = ProgramRun.Of("check", _folder.Write("demo.fin.json", DemoDesigns.Find(demo)!), "--json");
        Assert.Equal(ExitCode.Good, run.ExitCode);
        Assert.Equal("", run.Error);
        JsonElement answer = run.Json();
        Assert.True(answer.GetProperty("can_be_made").GetBoolean());
        Assert.DoesNotContain(answer.GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("severity").GetString() == "error");
        Assert.True(answer.GetProperty("planform").GetProperty("area_cm2").GetDouble() > 100);
        Assert.Equal(11, answer.GetProperty("stations").GetArrayLength());
        Assert.True(answer.GetProperty("parts").GetArrayLength() >= 2);
        Assert.Equal(64, answer.GetProperty("design_sha256").GetString()!.Length);
        Assert.Equal(0, answer.GetProperty("files").GetArrayLength());
    }

    [Fact]
    public void Check_writes_nothing()
    {
        string file = _folder.Write("demo.fin.json", DemoDesigns.Find("sandbar-delta")!);
        ProgramRun.Of("check", file);
        Assert.Equal(["demo.fin.json"], _folder.Files());
    }

    [Fact]
    public void Check_of_an_asked_area_gives_that_area()
    {
        ProgramRun.Of("new", _folder["a.fin.json"], "--family", "raked", "--span-mm", "251", "--area-cm2", "187.5");
        JsonElement planform = ProgramRun.Of("check", _folder["a.fin.json"], "--json").Json().GetProperty("planform");
        Assert.Equal(187.5, planform.GetProperty("area_cm2").GetDouble(), 0.01);
        Assert.Equal(251, planform.GetProperty("span_mm").GetDouble(), 1e-3);
        Assert.Equal(25.1 * 25.1 / 187.5, planform.GetProperty("aspect_ratio").GetDouble(), 1e-3);
    }

    [Fact]
    public void Check_text_names_file_line_path_and_what_to_do()
    {
        string file = _folder.Write("a.fin.json", "{\n  \"name\": \"A\",\n  \"colour\": \"red\",\n  \"shape\": { \"outline\": { \"family\": \"upright\", \"span_mm\": 300, \"area_cm2\": 250 } }\n}\n");
        ProgramRun run = ProgramRun.Of("check", file);
        Assert.Equal(ExitCode.WrongInput, run.ExitCode);
        Assert.Contains($"{file}:3  $.colour", run.Out, StringComparison.Ordinal);
        Assert.Contains("What to do: ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_of_a_rod_that_leaves_the_skin_fails_with_code_1_and_the_line_of_the_rod()
    {
        string text = DemoDesigns.Find("fairway-upright")!.Replace("\"diameter_mm\": 6", "\"diameter_mm\": 12", StringComparison.Ordinal).Replace("225", "325", StringComparison.Ordinal);
        string file = _folder.Write("a.fin.json", text);
        ProgramRun run = ProgramRun.Of("check", file, "--json");
        Assert.Equal(ExitCode.Fails, run.ExitCode);
        JsonElement error = run.Json().GetProperty("findings")[0];
        Assert.Equal("error", error.GetProperty("severity").GetString());
        Assert.StartsWith("$.hardware.carbon_rods[0]", error.GetProperty("path").GetString(), StringComparison.Ordinal);
        int line = Array.FindIndex(text.Split('\n'), l => l.Contains("\"diameter_mm\": 12", StringComparison.Ordinal)) + 1;
        Assert.Equal(line, error.GetProperty("line").GetInt32());
    }

    [Fact]
    public void Check_reads_a_section_file_beside_the_design()
    {
        string columns = string.Join('\n', ProgramRun.Of("section", "naca-0012", "--points", "161").Out.TrimEnd().Split('\n')[^161..]);
        _folder.Write("mine.dat", columns);
        string file = _folder.Write("a.fin.json", WithImported("mine.dat"));
        ProgramRun run = ProgramRun.Of("check", file, "--json");
        Assert.Equal(ExitCode.Good, run.ExitCode);
        Assert.Equal(12, run.Json().GetProperty("stations")[0].GetProperty("thickness_percent").GetDouble(), 0.05);
        string before = run.Json().GetProperty("design_sha256").GetString()!;
        _folder.Write("mine.dat", string.Join('\n', ProgramRun.Of("section", "naca-0011", "--points", "161").Out.TrimEnd().Split('\n')[^161..]));
        Assert.NotEqual(before, ProgramRun.Of("check", file, "--json").Json().GetProperty("design_sha256").GetString(), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("missing.dat", "")]
    [InlineData("bad.dat", "line 2")]
    public void Check_of_a_design_with_a_bad_section_file_says_which_and_why(string name, string words)
    {
        _folder.Write("bad.dat", "1 0\n0.5 sand\n0 0\n");
        ProgramRun run = ProgramRun.Of("check", _folder.Write("a.fin.json", WithImported(name)));
        Assert.Equal(ExitCode.WrongInput, run.ExitCode);
        Assert.Contains(name, run.Out, StringComparison.Ordinal);
        Assert.Contains(words, run.Out, StringComparison.Ordinal);
    }

    private static string WithImported(string file) =>
        $$"""
        {
          "name": "A",
          "shape": {
            "outline": { "family": "upright", "span_mm": 300, "area_cm2": 290 },
            "imported_sections": [ { "name": "mine", "file": "{{file}}" } ],
            "sections": [ { "at_percent": 0, "section": "mine" }, { "at_percent": 100, "section": "mine" } ]
          },
          "base": { "fixing": "base-only" }
        }
        """;
}
