using Finwright.Commands;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>Every call that the README and the help pages show, run as it stands, with its files in a folder of its own.</summary>
public sealed class ExampleTests : IDisposable
{
    private const string Start = "dotnet run --project src/Finwright -- ";
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Readme => [.. File.ReadLines(Path.Combine(Root, "README.md")).Where(line => line.StartsWith(Start, StringComparison.Ordinal)).Select(line => line[Start.Length..])];

    public static TheoryData<string> Help =>
    [
        .. ((ProgramCommand[])[new NewCommand(), new CheckCommand(), new PackCommand(), new WaterCommand(), new StrengthCommand(), new BenchCommand(), new BenchFitCommand(), new MaterialsCommand(), new SectionCommand(), new SchemaCommand()])
            .Select(command => command.Example["finwright ".Length..].Split(" > ")[0]),
    ];

    private static string Root
    {
        get
        {
            DirectoryInfo folder = new(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(folder.FullName, "finwright.slnx")))
                folder = folder.Parent!;
            return folder.FullName;
        }
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Readme))]
    public void Every_call_of_the_readme_works(string call) => Works(call);

    [Theory]
    [MemberData(nameof(Help))]
    public void Every_example_of_a_help_page_works(string call) => Works(call);

    private void Works(string call)
    {
        string[] words = [.. call.Split(' ').Select(Placed)];
        // The design that "new" writes in an earlier line of the page.
        if (words[0] != "new" && Array.Exists(words, word => word == _folder["my-fin.fin.json"]))
            Assert.Equal(ExitCode.Good, ProgramRun.Of("new", _folder["my-fin.fin.json"], "--demo", "sandbar-delta").ExitCode);
        if (Array.Exists(words, word => word == _folder["my-fin.readings.csv"]))
            File.Copy(Path.Combine(Root, "examples", "sandbar-delta.readings.csv"), _folder["my-fin.readings.csv"]);
        ProgramRun run = ProgramRun.Of(words);
        // A verdict on the example's fin may fail; that is an answer.
        Assert.True(run.ExitCode == ExitCode.Good || (words[0] is "water" or "strength" && run.ExitCode == ExitCode.Fails), run.Error + run.Out);
        Assert.NotEmpty(run.Out);
    }

    private string Placed(string word) =>
        word.StartsWith("examples/", StringComparison.Ordinal) ? Path.Combine(Root, word)
        : word.StartsWith("my-", StringComparison.Ordinal) || word.StartsWith("out/", StringComparison.Ordinal) ? _folder[word.Replace('/', '-')]
        : word;
}
