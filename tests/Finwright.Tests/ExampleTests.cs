using System.Globalization;
using System.Text;
using Finwright.Commands;
using Finwright.Commands.Outings;
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
        .. ((ProgramCommand[])[new NewCommand(), new CheckCommand(), new PackCommand(), new PapersCommand(), new WaterCommand(), new StrengthCommand(), new BenchCommand(), new BenchFitCommand(), new MaterialsCommand(), new SectionCommand(), new SchemaCommand(),
            new PrintCommand(), new MotionCommand(), new PourCommand(), new CureCommand(), new CureSlabCommand(), new ResinsCommand(), new ResinsFitCommand(), new PlanCommand(), new CompareCommand(), new OutingMeasureCommand()])
            .Select(command => command.Example["finwright ".Length..].Split(" > ")[0])
            // Once is enough for what the README shows too.
            .Except(File.ReadLines(Path.Combine(Root, "README.md")).Select(line => line.Replace(Start, "", StringComparison.Ordinal)), StringComparer.Ordinal),
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
        if (Array.Exists(words, word => word == _folder["my-other.fin.json"]))
            Assert.Equal(ExitCode.Good, ProgramRun.Of("new", _folder["my-other.fin.json"], "--demo", "fairway-upright").ExitCode);
        if (Array.Exists(words, word => word == _folder["my-fin.readings.csv"]))
            File.Copy(Path.Combine(Root, "examples", "sandbar-delta.readings.csv"), _folder["my-fin.readings.csv"]);
        if (Array.Exists(words, word => word == _folder["my-cup.csv"]))
            File.Copy(Path.Combine(Root, "examples", "slow-laminating.cup.csv"), _folder["my-cup.csv"]);
        if (Array.Exists(words, word => word == _folder["my-plate-2.gcode"]))
            _folder.Write("my-plate-2.gcode", Tower());
        if (Array.Exists(words, word => word == _folder["my-afternoon.gpx"]))
            File.Copy(Path.Combine(Root, "examples", "lagoon-afternoon.gpx"), _folder["my-afternoon.gpx"]);
        ProgramRun run = ProgramRun.Of(words);
        // A verdict on the example's fin may fail; that is an answer.
        Assert.True(run.ExitCode == ExitCode.Good || (words[0] is "water" or "strength" or "print" or "motion" or "pour" or "cure" or "cure-slab" or "plan" && run.ExitCode == ExitCode.Fails), run.Error + run.Out);
        Assert.NotEmpty(run.Out);
    }

    /// <summary>A motion file of a square tower as high as a fin: not the plate of the example, which the answer then says.</summary>
    private static string Tower()
    {
        StringBuilder text = new("G21\nG90\nM83\n");
        for (int layer = 1; layer <= 1200; layer++)
            text.Append(CultureInfo.InvariantCulture, $"G1 Z{0.2 * layer:F2} F1200\nG1 X60 Y20 E2\nG1 X60 Y60 E2\nG1 X20 Y60 E2\nG1 X20 Y20 E2\n");
        return text.ToString();
    }

    private string Placed(string word) =>
        word.StartsWith("examples/", StringComparison.Ordinal) ? Path.Combine(Root, word)
        : word.StartsWith("my-", StringComparison.Ordinal) || word.StartsWith("out/", StringComparison.Ordinal) ? _folder[word.Replace('/', '-')]
        : word;
}
