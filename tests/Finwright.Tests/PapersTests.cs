using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>The command that makes papers alone.</summary>
public sealed class PapersTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Papers_are_written_with_a_list_and_made_again_into_the_same_folder()
    {
        string design = _folder.Write("sandbar-delta.fin.json", DemoDesigns.Find("sandbar-delta")!);
        ProgramRun run = ProgramRun.Of("papers", design, "--out", _folder["papers"], "--paper", "letter", "--language", "de", "--ruler-across-mm", "99,4", "--date", "2027-04-18", "--json");
        Assert.True(run.ExitCode == ExitCode.Good, run.Out + run.Error);
        JsonElement answer = run.Json();
        Assert.Equal(run.Out, File.ReadAllText(_folder["papers/papers.json"]));
        Assert.Equal("finwright-papers", answer.GetProperty("kind").GetString());
        Assert.Equal("Letter", answer.GetProperty("paper").GetString());
        Assert.Equal("german", answer.GetProperty("language").GetString());
        Assert.Equal("2027-04-18", answer.GetProperty("date").GetString());
        Assert.Equal(99.4, answer.GetProperty("ruler_across_mm").GetDouble());
        Assert.Equal(100, answer.GetProperty("ruler_down_mm").GetDouble());
        IReadOnlyList<string> files = _folder.Files("papers");
        Assert.Equal(files, [.. answer.GetProperty("files").EnumerateArray().Select(file => file.GetProperty("file").GetString()!).Order(StringComparer.Ordinal)]);
        foreach (string paper in (string[])["build-sheet.pdf", "templates.pdf", "drawing.pdf"])
            Assert.StartsWith("%PDF-", File.ReadAllText(_folder["papers/" + paper]), StringComparison.Ordinal);
        Assert.Contains("templates/strip.svg", files, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("--paper", "100x150", "A5")]
    [InlineData("--paper", "a7", "210x297")]
    [InlineData("--paper", "210", "210x297")]
    [InlineData("--paper", "-210x297", "210x297")]
    [InlineData("--paper", "1e9x2e9", "210x297")]
    [InlineData("--paper", "400x3000", "1200 mm")]
    [InlineData("--language", "fr", "en, de")]
    [InlineData("--units", "cubits", "mm, inch")]
    [InlineData("--decimal", ".", "point, comma")]
    [InlineData("--ruler-across-mm", "50", "90 to 110")]
    [InlineData("--ruler-down-mm", "111", "90 to 110")]
    [InlineData("--ruler-down-mm", "NaN", "a number")]
    [InlineData("--date", "yesterday", "2027-04-18")]
    [InlineData("--date", "2027-02-30", "2027-04-18")]
    public void A_wish_that_cannot_be_met_is_refused_with_what_to_do(string option, string value, string remedy)
    {
        string design = _folder.Write("fin.fin.json", DemoDesigns.Find("sandbar-delta")!);
        foreach (string command in (string[])["papers", "pack"])
        {
            ProgramRun run = ProgramRun.Of(command, design, "--out", _folder["papers"], option, value).IsRefusal();
            Assert.Contains(remedy, string.Join(' ', run.Error.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        }

        Assert.False(Directory.Exists(_folder["papers"]));
    }

    [Fact]
    public void A_design_that_cannot_be_made_gets_no_papers()
    {
        string design = _folder.Write("fin.fin.json", DemoDesigns.Find("fairway-upright")!.Replace("\"root_chord_percent\": 48", "\"root_chord_percent\": 97", StringComparison.Ordinal));
        ProgramRun run = ProgramRun.Of("papers", design, "--out", _folder["papers"]);
        Assert.NotEqual(ExitCode.Good, run.ExitCode);
        Assert.Contains("nothing was written", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_folder["papers"]));
    }

    [Fact]
    public void Papers_into_a_folder_of_other_files_are_refused_before_any_work()
    {
        string design = _folder.Write("fin.fin.json", DemoDesigns.Find("sandbar-delta")!);
        Directory.CreateDirectory(_folder["holiday"]);
        _folder.Write("holiday/beach.txt", "sand");
        ProgramRun run = ProgramRun.Of("papers", design, "--out", _folder["holiday"]).IsRefusal();
        Assert.Contains("--overwrite", run.Error, StringComparison.Ordinal);
        Assert.Equal(["beach.txt"], _folder.Files("holiday"));
    }
}
