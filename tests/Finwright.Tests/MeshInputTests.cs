using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>Meshes in place of a design: sound ones in every form, and those that no printer can make.</summary>
public sealed class MeshInputTests : IDisposable
{
    private static readonly TestMesh Box = TestMesh.Box(60, 40, 20);
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string, string, string> Unsound => new()
    {
        { "open", Box.Open().Text(), "is not closed" },
        { "inside out", Box.InsideOut().Text(), "is inside out" },
        { "runs through itself", Box.And(TestMesh.Box(60, 40, 20, new(30, 10, 5))).Text(), "runs through itself" },
        { "in micrometres", TestMesh.Box(60e3, 40e3, 20e3).Text(), "measures 60000 × 40000 × 20000 mm" },
        { "in metres", TestMesh.Box(0.06, 0.04, 0.02).Text(), "less than one printed line" },
        { "thinner than a line", TestMesh.Box(60, 0.1, 20).Text(), "less than one printed line" },
    };

    public static TheoryData<string, string> Junk => new()
    {
        { "nothing", "" },
        { "words", "this is no mesh" },
        { "a design", DemoDesigns.Find("sandbar-delta")! },
        { "no triangles", "solid part\nendsolid part\n" },
        { "cut short", Box.Text()[..400] },
        { "not a number", Box.Text().Replace("60", "NaN", StringComparison.Ordinal) },
        { "far away", TestMesh.Box(60, 40, 20, new(1e6, 0, 0)).Text() },
        { "a flat sheet", TestMesh.Box(60, 40, 0).Text() },
    };

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_box_is_printed_alike_from_stl_text_stl_binary_and_3mf()
    {
        string[] files = [_folder.Write("box.stl", Box.Text()), Box.Binary(_folder["bin.STL"]), Box.ThreeMf(_folder["box.3mf"], "block")];
        JsonElement[] parts = [.. files.Select(file => ProgramRun.Of("print", file, "--json").Json().GetProperty("parts")[0])];
        foreach (JsonElement part in parts)
        {
            Assert.Equal(100, part.GetProperty("layers").GetInt32());
            Assert.Equal(20, part.GetProperty("height_mm").GetDouble(), 1e-3);
            Assert.Equal(48, part.GetProperty("envelope_cm3").GetDouble(), 1e-4);
            // Exact: three walls of 0.45 mm, five solid layers of 0.2 mm below and above.
            Assert.Equal((60 - 2.7) * (40 - 2.7) * (20 - 2) / 1000, part.GetProperty("core_cm3").GetDouble(), 1e-3);
            // The box rests on any of its six sides.
            Assert.Equal(6, part.GetProperty("orientations").GetArrayLength());
            Assert.Equal([20, 20, 40, 40, 60, 60], part.GetProperty("orientations").EnumerateArray().Select(way => Math.Round(way.GetProperty("height_mm").GetDouble(), 6)).Order());
        }
    }

    [Theory]
    [MemberData(nameof(Unsound))]
    public void A_mesh_that_cannot_be_printed_is_refused_with_a_finding(string what, string text, string words)
    {
        foreach (string command in (string[])["print", "pour", "cure"])
        {
            ProgramRun run = ProgramRun.Of(command, _folder.Write("a.stl", text)).IsRefusal();
            Assert.True(MakingText.Words(run.Error).Contains(words, StringComparison.Ordinal), $"{what}: {run.Error}");
        }

        ProgramRun json = ProgramRun.Of("print", _folder["a.stl"], "--json");
        Assert.Equal(ExitCode.WrongInput, json.ExitCode);
        Assert.Equal("error", json.Json().GetProperty("findings")[0].GetProperty("severity").GetString());
    }

    [Theory]
    [MemberData(nameof(Junk))]
    public void Junk_in_place_of_a_mesh_is_refused(string what, string text)
    {
        foreach (string name in (string[])["a.stl", "a.3mf"])
        {
            ProgramRun run = ProgramRun.Of("print", _folder.Write(name, text)).IsRefusal();
            Assert.True(run.Error.Length < 2000, what);
        }
    }

    [Fact]
    public void Binary_junk_a_missing_file_and_a_folder_are_refused()
    {
        byte[] bytes = new byte[5000];
        new Random(7).NextBytes(bytes);
        foreach (string name in (string[])["a.stl", "a.3mf"])
        {
            File.WriteAllBytes(_folder[name], bytes);
            ProgramRun.Of("pour", _folder[name]).IsRefusal();
        }

        string whole = Box.ThreeMf(_folder["b.3mf"], "block");
        File.WriteAllBytes(_folder["c.3mf"], File.ReadAllBytes(whole)[..^200]);
        ProgramRun.Of("pour", _folder["c.3mf"]).IsRefusal();
        ProgramRun.Of("pour", _folder["missing.stl"]).IsRefusal();
        Directory.CreateDirectory(_folder["folder.stl"]);
        Assert.Contains("is a folder", ProgramRun.Of("pour", _folder["folder.stl"]).IsRefusal().Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_parts_in_a_3mf_are_refused_by_name() =>
        Assert.Contains("holds 2 parts: \"left\", \"right\"", MakingText.Words(ProgramRun.Of("print", Box.ThreeMf(_folder["two.3mf"], "left", "right")).IsRefusal().Error), StringComparison.Ordinal);

    [Fact]
    public void A_mesh_thinner_than_its_walls_is_printed_but_neither_poured_nor_cured()
    {
        string thin = _folder.Write("thin.stl", TestMesh.Box(60, 40, 2).Text());
        foreach (string command in (string[])["pour", "cure"])
        {
            ProgramRun run = ProgramRun.Of(command, thin, "--json");
            Assert.Equal(ExitCode.Good, run.ExitCode);
            Assert.Empty(run.Json().GetProperty("parts").EnumerateArray());
            Assert.Contains(run.Json().GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("code").GetString() == "no-core");
            ProgramRun text = ProgramRun.Of(command, thin);
            Assert.Contains(command == "pour" ? "No part has room for resin." : "No part is poured.", text.Out, StringComparison.Ordinal);
            MakingText.Fits(text);
        }
    }

    [Fact]
    public void A_mesh_higher_than_the_printer_ends_with_1_and_says_what_fits()
    {
        ProgramRun run = ProgramRun.Of("print", _folder.Write("high.stl", TestMesh.Box(30, 40, 230).Text()), "--json");
        Assert.Equal(ExitCode.Fails, run.ExitCode);
        JsonElement finding = run.Json().GetProperty("findings")[0];
        Assert.Equal("part-too-large", finding.GetProperty("code").GetString());
        // A bed of 250 mm less 5 at each edge: on its long side it fits.
        Assert.Contains("Turn it on another side", finding.GetProperty("remedy").GetString(), StringComparison.Ordinal);
        Assert.True(run.Json().GetProperty("parts")[0].GetProperty("orientations")[0].GetProperty("fits").GetBoolean());
    }

    [Fact]
    public void Settings_of_a_part_and_those_of_a_design_are_taken()
    {
        string box = _folder.Write("box.stl", Box.Text());
        string part = _folder.Write("a.part.json", """{ "format": 1, "name": "my block", "print": { "walls": 2, "solid_layers": 3, "layer_mm": 0.25, "infill_percent": 20 } }""");
        JsonElement own = ProgramRun.Of("print", box, "--settings", part, "--json").Json();
        Assert.Equal("my block", own.GetProperty("name").GetString());
        Assert.Equal((60 - 1.8) * (40 - 1.8) * (20 - 1.5) / 1000, own.GetProperty("parts")[0].GetProperty("core_cm3").GetDouble(), 1e-3);
        string design = _folder.Write("a.fin.json", DemoDesigns.Find("sandbar-delta")!);
        Assert.Equal(100, ProgramRun.Of("print", box, "--settings", design, "--json").Json().GetProperty("parts")[0].GetProperty("layers").GetInt32());
    }

    [Theory]
    [InlineData("{ \"format\": 1, \"wals\": 3 }", "wals")]
    [InlineData("{ \"format\": 1, \"print\": { \"walls\": 0 } }", "walls")]
    [InlineData("{ \"format\": 9 }", "format")]
    [InlineData("{ \"format\": 1, \"ports\": [ { \"x_mm\": 30, \"y_mm\": 0 } ] }", "z_mm")]
    [InlineData("{ \"format\": 1, \"ports\": [ { \"x_mm\": 30, \"y_mm\": -30, \"z_mm\": 10 } ] }", "30.0 mm from the skin")]
    [InlineData("{ \"format\": 1, \"pour\": { \"system\": { \"name\": \"honey\" } } }", "honey")]
    [InlineData("{ \"format\": 1, \"pour\": { \"system\": { \"file\": \"missing.resin.json\" } } }", "missing.resin.json")]
    [InlineData("{ \"format\": 1, \"pour\": { \"stages\": [ { \"to_percent\": 60, \"after_hours\": 0 }, { \"to_percent\": 50, \"after_hours\": 9 } ] } }", "no higher than pour 1")]
    [InlineData("[]", "What to do")]
    [InlineData("", "What to do")]
    [InlineData("\u0001\u0002", "What to do")]
    public void Wrong_settings_are_refused_with_their_place(string settings, string words)
    {
        ProgramRun run = ProgramRun.Of("pour", _folder.Write("box.stl", Box.Text()), "--settings", _folder.Write("a.part.json", settings)).IsRefusal();
        Assert.Contains(words, MakingText.Words(run.Error), StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_settings_file_a_folder_and_an_empty_name_are_refused()
    {
        string box = _folder.Write("box.stl", Box.Text());
        ProgramRun.Of("cure", box, "--settings", _folder["missing.part.json"]).IsRefusal();
        ProgramRun.Of("cure", box, "--settings", _folder.Path).IsRefusal();
        ProgramRun.Of("cure", box, "--settings", "").IsRefusal();
        ProgramRun.Of("cure", box, "--settings", _folder["missing.fin.json"]).IsRefusal();
        ProgramRun.Of("cure", box, "--settings", box).IsRefusal();
    }

    [Fact]
    public void Plan_of_a_mesh_is_refused() => ProgramRun.Of("plan", _folder.Write("box.stl", Box.Text())).IsRefusal();
}
