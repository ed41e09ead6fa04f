using System.Text.Json;
using Finwright.Geometry.Files;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>Each demo packed once; the files looked at from many sides.</summary>
public sealed class PackTests(PackedDemos demos) : IClassFixture<PackedDemos>
{
    private static readonly string[] EveryPack = ["plate-1.3mf", "parts/base.stl", "parts/gauge.stl", "blade.step", "build-sheet.pdf", "templates.pdf", "drawing.pdf", "drawing.svg", "templates/planform.svg", "templates/sections.svg", "templates/base-gauge.svg", "templates/drill-places.svg", "summary.json", "picture.png", "read-me-first.txt", "water.json", "polar.svg", "span-load.svg", "leeway.svg", "pressure.svg", "strength.json", "bench.json", "bench.svg", "deflection.svg", "twist.svg", "stress.svg", "frequencies.svg", "print.json", "pour.json", "cure.json", "plan.json", "pores-base.svg", "air-base.svg", "cure-map-base.svg", "cure-base.svg"];
    private const string WorkedAnew = "sandbar-delta";
    private static readonly string[] BedFields = ["bed_x_mm", "bed_y_mm", "bed_z_mm"];

    public static TheoryData<string> Demos => [.. DemoDesigns.Names];

    [Theory]
    [MemberData(nameof(Demos))]
    public void Pack_of_a_demo_is_good_and_complete(string demo)
    {
        (ProgramRun run, string folder) = demos.Of(demo);
        Assert.True(run.ExitCode == ExitCode.Good, run.Out + run.Error);
        Assert.Equal("", run.Error);
        IReadOnlyList<string> files = demos.Folder.Files(folder);
        foreach (string expected in EveryPack)
            Assert.Contains(expected, files, StringComparer.Ordinal);
        Assert.Equal(files, [.. run.Json().GetProperty("files").EnumerateArray().Select(file => file.GetProperty("file").GetString()!).Order(StringComparer.Ordinal)]);
        Assert.All(files, file => Assert.True(new FileInfo(Path.Combine(demos.Folder[folder], file)).Length > 100, file));
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Every_part_of_a_demo_is_watertight_in_one_piece_and_of_the_volume_stated(string demo)
    {
        (ProgramRun run, string folder) = demos.Of(demo);
        foreach (JsonElement part in run.Json().GetProperty("parts").EnumerateArray())
        {
            string file = part.GetProperty("file").GetString()!;
            Admesh mesh = Admesh.Of(Path.Combine(demos.Folder[folder], file));
            Assert.Equal(1, mesh.Parts);
            Assert.Equal(0, mesh.DisconnectedFacets);
            Assert.Equal(0, mesh.FacetsReversed);
            Assert.Equal(0, mesh.DegenerateFacets);
            // Volumes are stated to 0.01 cm³; admesh adds up thousands of facets in single precision, good to some 1e-4.
            double stated = part.GetProperty("volume_cm3").GetDouble();
            Assert.Equal(stated, mesh.VolumeMm3 / 1000, 0.01 + 2e-4 * stated);
        }
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_plates_hold_every_part_once_within_the_usable_bed(string demo)
    {
        (ProgramRun run, string folder) = demos.Of(demo);
        JsonElement answer = run.Json();
        double[] bed = [.. BedFields.Select(name => JsonDocument.Parse(DemoDesigns.Find(demo)!).RootElement.GetProperty("print").GetProperty(name).GetDouble())];
        List<string> names = [];
        for (int plate = 1; plate <= answer.GetProperty("plates").GetInt32(); plate++)
        {
            using FileStream stream = File.OpenRead(Path.Combine(demos.Folder[folder], $"plate-{plate}.3mf"));
            ThreeMfDocument document = ThreeMfFile.Read(stream);
            Assert.NotNull(document.Thumbnail);
            foreach (ThreeMfPart part in document.Parts)
            {
                names.Add(part.Name);
                Geometry.Bounds bounds = part.Mesh.Placed(part.Placement).Bounds();
                // 5 mm at each edge of the bed are not used, the default of the design file; a float has seven digits.
                Assert.True(bounds.Minimum.X > 4.999e-3 && bounds.Minimum.Y > 4.999e-3 && bounds.Minimum.Z > -1e-6, part.Name);
                Assert.True(1e3 * bounds.Maximum.X < bed[0] - 4.999 && 1e3 * bounds.Maximum.Y < bed[1] - 4.999 && 1e3 * bounds.Maximum.Z < bed[2], part.Name);
            }
        }

        Assert.Equal(answer.GetProperty("parts").EnumerateArray().Select(part => part.GetProperty("name").GetString()!).Order(StringComparer.Ordinal), names.Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(WorkedAnew)]
    [InlineData("fairway-upright", Traits = ["Pace", "long"])]
    [InlineData("eelgrass-rake", Traits = ["Pace", "long"])]
    public void Pack_again_as_text_gives_the_same_bytes_and_says_what_was_made_and_where(string demo)
    {
        (ProgramRun first, string folder) = demos.Of(demo);
        string again = demos.Folder["again-" + demo];
        string[] call = ["pack", demos.DesignOf(demo), "--out", again, "--date", PackedDemos.Date];
        // One demo with all its work anew; of the others only the files (by hand the next test works out the rest).
        ProgramRun text = demo == WorkedAnew ? ProgramRun.Anew(call) : ProgramRun.Of(call);
        Assert.Contains(first.Json().GetProperty("name").GetString()!, text.Out, StringComparison.Ordinal);
        Assert.Contains($"files to {again}", text.Out, StringComparison.Ordinal);
        Assert.Contains("The fin can be made.", text.Out, StringComparison.Ordinal);
        foreach (string file in demos.Folder.Files(folder))
            Assert.True(File.ReadAllBytes(Path.Combine(demos.Folder[folder], file)).AsSpan().SequenceEqual(File.ReadAllBytes(Path.Combine(again, file))), file);
        Assert.Equal(demos.Folder.Files(folder), demos.Folder.Files("again-" + demo));
    }

    [Theory]
    [Trait("Pace", "long")]
    [InlineData("fairway-upright")]
    [InlineData("eelgrass-rake")]
    public void Worked_out_anew_a_demo_pours_and_bends_as_in_its_pack(string demo)
    {
        demos.Of(demo);
        foreach (string command in (string[])["pour", "strength"])
            Assert.Equal(ProgramRun.Of(command, demos.DesignOf(demo), "--json").Out, ProgramRun.Anew(command, demos.DesignOf(demo), "--json").Out);
    }

    [Fact]
    public void The_steep_rake_comes_in_three_pieces_and_the_others_as_their_printers_allow()
    {
        int Pieces(string demo) => demos.Of(demo).Run.Json().GetProperty("parts").EnumerateArray().Count(part => part.GetProperty("name").GetString()!.StartsWith("blade", StringComparison.Ordinal));
        Assert.Equal(3, Pieces("eelgrass-rake"));
        Assert.Equal(1, Pieces("sandbar-delta"));
    }

    [Fact]
    public void The_summary_file_is_what_json_prints()
    {
        (ProgramRun run, string folder) = demos.Of("sandbar-delta");
        Assert.Equal(run.Out, File.ReadAllText(Path.Combine(demos.Folder[folder], "summary.json")));
    }

    [Theory]
    [InlineData("water.json", "finwright-water", "design_sha256")]
    [InlineData("strength.json", "finwright-strength", "design_sha256")]
    [InlineData("print.json", "finwright-print", "design_sha256")]
    [InlineData("pour.json", "finwright-pour", "design_sha256")]
    [InlineData("cure.json", "finwright-cure", "design_sha256")]
    [InlineData("plan.json", "finwright-plan", "design_sha256")]
    [InlineData("bench.json", "finwright-bench", "designSha256")]
    public void The_answers_in_the_pack_say_what_they_are_and_are_of_the_same_design(string file, string kind, string hash)
    {
        (ProgramRun run, string folder) = demos.Of("sandbar-delta");
        JsonElement answer = JsonDocument.Parse(File.ReadAllText(Path.Combine(demos.Folder[folder], file))).RootElement;
        Assert.Equal(kind, answer.GetProperty("kind").GetString());
        Assert.Equal(run.Json().GetProperty("design_sha256").GetString(), answer.GetProperty(hash).GetString());
        Assert.NotEmpty(answer.GetProperty("sentence").GetString()!);
    }

    [Fact]
    public void The_page_to_read_first_warns_that_strength_is_an_estimate()
    {
        (_, string folder) = demos.Of("sandbar-delta");
        string page = string.Join(' ', File.ReadAllText(Path.Combine(demos.Folder[folder], "read-me-first.txt")).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("Strength is an estimate too", page, StringComparison.Ordinal);
        Assert.Contains("Test the fin on land before you sail it", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_to_read_first_holds_the_numbers_of_print_pour_and_cure()
    {
        (_, string folder) = demos.Of("sandbar-delta");
        string page = string.Join(' ', File.ReadAllText(Path.Combine(demos.Folder[folder], "read-me-first.txt")).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        JsonElement Answer(string file) => JsonDocument.Parse(File.ReadAllText(Path.Combine(demos.Folder[folder], file))).RootElement;
        foreach (JsonElement stop in Answer("print.json").GetProperty("plates").EnumerateArray().SelectMany(plate => plate.GetProperty("stops").EnumerateArray()))
            Assert.Contains($"before layer {stop.GetProperty("before_layer").GetInt32()}", page, StringComparison.Ordinal);
        foreach (JsonElement part in Answer("pour.json").GetProperty("parts").EnumerateArray())
            Assert.Contains($"held with the {part.GetProperty("attitude").GetString()}", page, StringComparison.Ordinal);
        foreach (JsonElement part in Answer("cure.json").GetProperty("parts").EnumerateArray())
            Assert.Contains($"peak at {part.GetProperty("nominal").GetProperty("peak_resin_celsius").GetDouble():0} °C", page, StringComparison.Ordinal);
        Assert.Contains(Answer("plan.json").GetProperty("sentence").GetString()!, page, StringComparison.Ordinal);
        Assert.Contains("nitrile gloves", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_summary_lists_what_the_demo_needs()
    {
        HashSet<string> Items(string demo) => demos.Of(demo).Run.Json().GetProperty("hardware").EnumerateArray().Select(item => item.GetProperty("item").GetString()!).ToHashSet(StringComparer.Ordinal);
        Assert.Superset(new HashSet<string>(["threaded-rod", "nut", "strip-sheet", "box-bolt"], StringComparer.Ordinal), Items("sandbar-delta"));
        Assert.Superset(new HashSet<string>(["carbon-rod", "nut", "box-bolt"], StringComparer.Ordinal), Items("fairway-upright"));
    }

    [Fact]
    public void The_page_to_read_first_fits_80_columns_and_names_every_file()
    {
        (ProgramRun run, string folder) = demos.Of("eelgrass-rake");
        string page = File.ReadAllText(Path.Combine(demos.Folder[folder], "read-me-first.txt"));
        Assert.All(page.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.All(run.Json().GetProperty("files").EnumerateArray(), file => Assert.Contains(file.GetProperty("file").GetString()!, page, StringComparison.Ordinal));
    }

    [Fact]
    public void Pack_into_a_folder_of_other_files_is_refused_before_any_work()
    {
        Directory.CreateDirectory(demos.Folder["holiday"]);
        File.WriteAllText(demos.Folder["holiday/beach.txt"], "sand");
        ProgramRun run = ProgramRun.Of("pack", demos.DesignOf("sandbar-delta"), "--out", demos.Folder["holiday"]).IsRefusal();
        Assert.Contains("--overwrite", run.Error, StringComparison.Ordinal);
        Assert.Equal(["beach.txt"], demos.Folder.Files("holiday"));
    }

    [Theory]
    [InlineData("/proc/finwright")]
    [InlineData("/dev/null/pack")]
    public void Pack_into_a_place_that_cannot_be_written_is_refused(string place) =>
        ProgramRun.Of("pack", demos.DesignOf("sandbar-delta"), "--out", place).IsRefusal();

    [Fact]
    public void Pack_that_is_stopped_writes_nothing()
    {
        ProgramRun run = ProgramRun.Of(new CancellationToken(canceled: true), "pack", demos.DesignOf("sandbar-delta"), "--out", demos.Folder["stopped"]);
        Assert.Equal(ExitCode.Stopped, run.ExitCode);
        Assert.False(Directory.Exists(demos.Folder["stopped"]));
        Assert.Contains("stopped", run.Error, StringComparison.Ordinal);
    }
}

/// <summary>Packs each demo on first need and keeps it for the tests of the class.</summary>
public sealed class PackedDemos : IDisposable
{
    /// <summary>Date on the papers; the day on which the tests run does not matter.</summary>
    public const string Date = "2027-04-18";

    private readonly Dictionary<string, ProgramRun> _runs = [];

    public TemporaryFolder Folder { get; } = new();

    public string DesignOf(string demo)
    {
        string file = Folder[$"{demo}.fin.json"];
        return File.Exists(file) ? file : Folder.Write($"{demo}.fin.json", DemoDesigns.Find(demo)!);
    }

    internal (ProgramRun Run, string Folder) Of(string demo)
    {
        if (!_runs.TryGetValue(demo, out ProgramRun? run))
            _runs[demo] = run = ProgramRun.Of("pack", DesignOf(demo), "--out", Folder[demo], "--json", "--date", Date);
        return (run, demo);
    }

    public void Dispose() => Folder.Dispose();
}
