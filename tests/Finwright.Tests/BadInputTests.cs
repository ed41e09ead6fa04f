using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>Designs that are broken, hostile or impossible: findings or one clear message, never a fault, never a file.</summary>
public sealed class BadInputTests : IDisposable
{
    private static readonly string Delta = DemoDesigns.Find("sandbar-delta")!;
    private static readonly string[] OddValues = ["null", "true", "\"\"", "[]", "{}", "-0.0", "1e308", "\"naca-0012\"", "0", "-1", "1e-300"];
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string, string> Texts => new()
    {
        { "nothing", "" },
        { "truncated", Delta[..(Delta.Length / 2)] },
        { "not JSON", "<fin><span>200</span></fin>" },
        { "a list", "[1, 2, 3]" },
        { "deep", new string('[', 100_000) },
        { "deep section", "{\"name\":" + string.Concat(Enumerable.Repeat("{\"a\":", 5000)) + "1" + new string('}', 5001) },
        { "NaN", Delta.Replace("212", "NaN", StringComparison.Ordinal) },
        { "NaN as text", Delta.Replace("212", "\"NaN\"", StringComparison.Ordinal) },
        { "a huge number", Delta.Replace("212", "1e999", StringComparison.Ordinal) },
        { "a negative span", Delta.Replace("212", "-212", StringComparison.Ordinal) },
        { "a text for a number", Delta.Replace("212", "\"deep\"", StringComparison.Ordinal) },
        { "a list for a section", Delta.Replace("\"parts\": {", "\"parts\": [], \"note2\": {", StringComparison.Ordinal) },
        { "an unknown field", Delta.Replace("\"span_mm\"", "\"spam_mm\"", StringComparison.Ordinal) },
        { "a field twice", Delta.Replace("\"family\"", "\"span_mm\": 200, \"family\"", StringComparison.Ordinal) },
        { "a later format", Delta.Replace("\"format\": 2", "\"format\": 99", StringComparison.Ordinal) },
        { "zero thickness", Delta.Replace("\"thickness_percent\": 9.4", "\"thickness_percent\": 0", StringComparison.Ordinal) },
        { "binary", "\0\u0001\u0002PNG" },
    };

    /// <summary>Readable designs that no printer can make: replacement in the delta's text.</summary>
    public static TheoryData<string, string, string> Impossible => new()
    {
        { "a rod outside the skin", "\"from_front_mm\": 98", "\"from_front_mm\": 150" },
        { "pockets that meet", "\"from_front_mm\": 98", "\"from_front_mm\": 54" },
        { "nuts wider than the blade", "\"thickness_percent\": 9.4", "\"thickness_percent\": 4" },
    };

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("no command \"sail\"", "sail", "a.fin.json")]
    [InlineData("no option \"--bogus\"", "check", "--bogus", "a.fin.json")]
    [InlineData("no option \"--bogus\"", "pack", "a.fin.json", "--bogus", "--out", "out")]
    [InlineData("no option \"-o\"", "pack", "a.fin.json", "-o", "out")]
    [InlineData("with \"b.fin.json\"", "check", "a.fin.json", "b.fin.json")]
    [InlineData("needs FILE", "check")]
    [InlineData("needs SECTION", "section")]
    [InlineData("needs FILE", "water")]
    [InlineData("no option \"--speed\"", "water", "a.fin.json", "--speed", "9")]
    [InlineData("'--out' is required", "pack", "a.fin.json")]
    [InlineData("is empty", "check", "")]
    [InlineData("is empty", "new", "")]
    [InlineData("is a folder", "section", ".")]
    public void Run_of_a_wrong_command_line_names_the_word_at_fault(string words, params string[] arguments) =>
        Assert.Contains(words, ProgramRun.Of(arguments).IsRefusal().Error.ReplaceLineEndings(" ").Replace("            ", " ", StringComparison.Ordinal), StringComparison.Ordinal);

    [Fact]
    public void Check_of_a_file_named_like_an_option_works_after_two_dashes() =>
        Assert.Contains("There is no such file.", ProgramRun.Of("check", "--", "--odd").IsRefusal().Error, StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Texts))]
    public void Pack_of_a_broken_file_is_refused_and_writes_nothing(string what, string text)
    {
        ProgramRun run = ProgramRun.Of("pack", _folder.Write("a.fin.json", text), "--out", _folder["out"]);
        Assert.True(run.IsRefusal().Error.Length < 4000, what);
        Assert.Equal(["a.fin.json"], _folder.Files());
        Assert.False(Directory.Exists(_folder["out"]));
    }

    [Theory]
    [MemberData(nameof(Texts))]
    public void Check_of_a_broken_file_answers_in_json_when_asked(string what, string text)
    {
        ProgramRun run = ProgramRun.Of("check", _folder.Write("a.fin.json", text), "--json");
        Assert.Equal(ExitCode.WrongInput, run.ExitCode);
        Assert.False(run.Json().GetProperty("can_be_made").GetBoolean(), what);
        Assert.True(run.Json().GetProperty("findings").GetArrayLength() > 0, what);
    }

    [Theory]
    [MemberData(nameof(Impossible))]
    public void Pack_of_an_impossible_fin_fails_with_a_finding_and_writes_nothing(string what, string from, string to)
    {
        ProgramRun run = ProgramRun.Of("pack", _folder.Write("a.fin.json", Delta.Replace(from, to, StringComparison.Ordinal)), "--out", _folder["out"]);
        Assert.True(run.ExitCode == ExitCode.Fails, $"{what}: {run.Out}{run.Error}");
        Assert.Contains("What to do: ", run.Error, StringComparison.Ordinal);
        Assert.Equal(["a.fin.json"], _folder.Files());
    }

    [Fact]
    public void Pack_of_crossing_edges_fails_with_a_finding()
    {
        const string crossing = """
            { "name": "X", "shape": { "outline": { "family": "free",
              "leading_edge": [ { "depth_mm": 0, "aft_mm": 0 }, { "depth_mm": 60, "aft_mm": 150 }, { "depth_mm": 120, "aft_mm": 150 }, { "depth_mm": 200, "aft_mm": 40 } ],
              "trailing_edge": [ { "depth_mm": 0, "aft_mm": 110 }, { "depth_mm": 60, "aft_mm": 20 }, { "depth_mm": 120, "aft_mm": 20 }, { "depth_mm": 200, "aft_mm": 90 } ] } } }
            """;
        ProgramRun run = ProgramRun.Of("pack", _folder.Write("a.fin.json", crossing), "--out", _folder["out"]);
        Assert.True(run.ExitCode is ExitCode.Fails or ExitCode.WrongInput, run.Out + run.Error);
        Assert.Contains("What to do: ", run.Error, StringComparison.Ordinal);
        Assert.Equal(["a.fin.json"], _folder.Files());
    }

    [Fact]
    public void Check_of_a_huge_file_is_refused_without_reading_it_all()
    {
        using (FileStream stream = File.Create(_folder["huge.fin.json"]))
            stream.SetLength(1L << 33);
        ProgramRun run = ProgramRun.Of("check", _folder["huge.fin.json"]);
        Assert.Equal(ExitCode.WrongInput, run.ExitCode);
        Assert.Contains("larger than", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("pack")]
    public void A_missing_file_or_a_folder_is_refused(string command)
    {
        string[] rest = command == "pack" ? ["--out", _folder["out"]] : [];
        ProgramRun.Of([command, _folder["missing.fin.json"], .. rest]).IsRefusal();
        ProgramRun.Of([command, _folder.Path, .. rest]).IsRefusal();
        Assert.Empty(_folder.Files());
    }

    /// <summary>One value of a demo replaced by another of any kind: an answer with an exit code, never a fault.</summary>
    [Fact]
    public void Check_of_a_demo_with_any_value_changed_never_faults()
    {
        Gen<string> value = Gen.OneOf(
            Gen.Double[-1e3, 1e3].Select(x => JsonSerializer.Serialize(x)),
            Gen.Int[0, OddValues.Length - 1].Select(i => OddValues[i]));
        Gen.Select(Gen.Int[0, DemoDesigns.Names.Count - 1].Select(i => DemoDesigns.Names[i]), Gen.Int[0, 200], value).Hold(
            (demo, place, text) =>
            {
                string design = Changed(DemoDesigns.Find(demo)!, place, text);
                using TemporaryFolder folder = new();
                ProgramRun run = ProgramRun.Of("check", folder.Write("a.fin.json", design), "--json");
                return run.ExitCode is ExitCode.Good or ExitCode.Fails or ExitCode.WrongInput;
            },
            iter: 40, threads: 2);
    }

    private static string Changed(string design, int place, string text)
    {
        JsonNode root = JsonNode.Parse(design)!;
        List<(JsonNode Parent, Action<JsonNode?> Set)> leaves = [];
        Collect(root, leaves);
        leaves[place % leaves.Count].Set(JsonNode.Parse(text));
        return root.ToJsonString();
    }

    private static void Collect(JsonNode node, List<(JsonNode Parent, Action<JsonNode?> Set)> leaves)
    {
        if (node is JsonObject section)
        {
            foreach ((string name, JsonNode? child) in section.ToArray())
            {
                if (child is JsonObject or JsonArray)
                    Collect(child, leaves);
                leaves.Add((section, value => section[name] = value));
            }
        }
        else if (node is JsonArray list)
        {
            for (int i = 0; i < list.Count; i++)
            {
                int at = i;
                if (list[i] is JsonObject or JsonArray)
                    Collect(list[i]!, leaves);
                leaves.Add((list, value => list[at] = value));
            }
        }
    }
}
