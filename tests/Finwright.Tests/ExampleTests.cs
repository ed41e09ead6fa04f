using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Finwright.Commands;
using Finwright.Commands.Store;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>Every call that the README and the help pages show, run as it stands, with its files in a folder of its own.</summary>
public sealed partial class ExampleTests : IDisposable
{
    private const string Start = "dotnet run --project src/Finwright -- ";
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Readme => [.. File.ReadLines(Path.Combine(Root, "README.md")).Where(line => line.StartsWith(Start, StringComparison.Ordinal)).Select(line => line[Start.Length..])];

    public static TheoryData<string> Help =>
    [
        .. ProgramCommands.All.Select(command => command.Example["finwright ".Length..].Split(" > ")[0])
            // Once is enough for what the README shows too, and for what a list shows when it is called by the word above it.
            .Except(File.ReadLines(Path.Combine(Root, "README.md")).Select(line => line.Replace(Start, "", StringComparison.Ordinal)), StringComparer.Ordinal).Distinct(StringComparer.Ordinal),
    ];

    /// <summary>What must have been done before an example works in the demo season.</summary>
    private static readonly Dictionary<string, string[]> Before = new(StringComparer.Ordinal)
    {
        ["shelf delete"] = ["shelf", "add", "my-fin.fin.json", "--name", "Spare"],
        ["built restore"] = ["built", "delete", "Eelgrass two"],
        ["stock restore"] = ["stock", "delete", "slow laminating resin/R3"],
        ["outing restore"] = ["outing", "delete", "1"],
        ["bench restore"] = ["bench", "delete", "3"],
        ["store restore"] = ["outing", "delete", "12"],
        ["import"] = ["export", "Fairway upright", "--to", "fairway.fin-bundle.zip"],
    };

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
        string[] typed = [.. Words().Matches(call).Select(word => word.Value.Replace("\"", "", StringComparison.Ordinal))];
        ProgramCommand command = ProgramCommands.All.Where(own => $"finwright {call} ".StartsWith(own.Call + " ", StringComparison.Ordinal)).MaxBy(own => own.Call.Length)!;
        string[] words = [.. typed.Select(Placed)];
        // The design that "new" writes in an earlier line of the page.
        if (typed[0] != "new")
            Have("my-fin.fin.json", DemoDesigns.Find("sandbar-delta")!);
        Have("my-other.fin.json", DemoDesigns.Find("fairway-upright")!);
        Have("my-fin.readings.csv", Example("sandbar-delta.readings.csv"));
        Have("my-cup.csv", Example("slow-laminating.cup.csv"));
        Have("my-afternoon.gpx", Example("lagoon-afternoon.gpx"));
        if (Array.Exists(words, word => word == _folder["my-plate-2.gcode"]))
            _folder.Write("my-plate-2.gcode", Tower());
        if (command is StoreCommand or StorePathCommand)
            words = InTheSeason(words, command);
        ProgramRun run = command is ServeCommand ? ProgramRun.UntilItTells([.. words.Where(word => word != "--no-browser"), "--no-browser", "--port", "0"]) : ProgramRun.Of(words);
        // A verdict on the example's fin may fail; that is an answer.
        Assert.True(run.ExitCode == ExitCode.Good || (typed[0] is "water" or "strength" or "print" or "motion" or "pour" or "cure" or "cure-slab" or "plan" && run.ExitCode == ExitCode.Fails), run.Error + run.Out);
        Assert.NotEmpty(run.Out);

        void Have(string name, string text)
        {
            if (Array.Exists(words, word => word == _folder[name]) || Before.Any(own => command.Call.EndsWith(" " + own.Key, StringComparison.Ordinal) && own.Value.Contains(name, StringComparer.Ordinal)))
                _folder.Write(name, text);
        }

        static string Example(string name) => File.ReadAllText(Path.Combine(Root, "examples", name));
    }

    /// <summary>The words of a call that works in the store of the demo season, which is loaded first, with what must have been done before.</summary>
    private string[] InTheSeason(string[] words, ProgramCommand command)
    {
        int named = Array.IndexOf(words, "--store");
        string store = named < 0 ? _folder["workshop.finstore"] : words[named + 1];
        if (command is not StoreDemoCommand)
            Good("store", "demo");
        if (Before.FirstOrDefault(own => command.Call.EndsWith(" " + own.Key, StringComparison.Ordinal)).Value is { } before)
            Good([.. before.Select(Placed)]);
        return named < 0 ? [.. words, "--store", store] : words;

        void Good(params string[] call)
        {
            ProgramRun run = ProgramRun.Of([.. call, "--store", store]);
            Assert.True(run.ExitCode == ExitCode.Good, run.Error);
        }
    }

    /// <summary>A motion file of a square tower as high as a fin: not the plate of the example, which the answer then says.</summary>
    private static string Tower()
    {
        StringBuilder text = new("G21\nG90\nM83\n");
        for (int layer = 1; layer <= 1200; layer++)
            text.Append(CultureInfo.InvariantCulture, $"G1 Z{0.2 * layer:F2} F1200\nG1 X60 Y20 E2\nG1 X60 Y60 E2\nG1 X20 Y60 E2\nG1 X20 Y20 E2\n");
        return text.ToString();
    }

    // Words may hold blanks in quotes.
    [GeneratedRegex("""(?:[^\s"]+|"[^"]*")+""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Words();

    private string Placed(string word) =>
        word.StartsWith("examples/", StringComparison.Ordinal) ? Path.Combine(Root, word)
        : word.StartsWith("my-", StringComparison.Ordinal) || word.StartsWith("out/", StringComparison.Ordinal) || word.EndsWith(".finstore", StringComparison.Ordinal) || word.EndsWith(".zip", StringComparison.Ordinal) ? _folder[word.Replace('/', '-')]
        : word;
}
