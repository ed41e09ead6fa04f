using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>Pour and cure of a box of 60 × 40 × 20 mm, whose pores are known exactly, and of a demo.</summary>
public sealed class PourAndCureTests : IDisposable
{
    private const string Settings = """
        { "format": 1, "name": "block", "print": { "walls": 3, "solid_layers": 5, "layer_mm": 0.2, "line_width_mm": 0.45, "infill_percent": 15 },
          "pour": { "room_celsius": 20, "cooling": "still-air", "loss_percent": 5, "reservoir_ml": 15 },
          "ports": [ { "x_mm": 30, "y_mm": 0, "z_mm": 10 }, { "x_mm": 30, "y_mm": 40, "z_mm": 10 } ] }
        """;

    // Smaller, so that it takes less time to follow.
    private static readonly (double X, double Y, double Z) Small = (32, 26, 16);

    // Walls of 3 × 0.45 mm, five solid layers of 0.2 mm, 15 % of plastic: exact.
    private const double ExactPores = (60 - 2.7) * (40 - 2.7) * (20 - 2) / 1000 * 0.85;

    private static readonly Lazy<ProgramRun> Poured = new(() => OfBox("pour", Settings, "--json")), Cured = new(() => OfSmallBox(Settings, "--json"));
    private static readonly Lazy<ProgramRun> PouredDemo = new(() => OfDemo("pour")), CuredText = new(() => OfSmallBox(Settings));
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Pores_of_a_box_are_exact_and_its_cups_hold_what_it_takes()
    {
        JsonElement part = Poured.Value.Json().GetProperty("parts")[0];
        // 0.2 %: corners of the walls are rounded off by half a line.
        Assert.Equal(ExactPores, part.GetProperty("pores_ml").GetProperty("value").GetDouble(), 2e-3 * ExactPores);
        JsonElement need = part.GetProperty("need");
        double total = need.GetProperty("total_ml").GetProperty("value").GetDouble();
        double sum = need.GetProperty("pores_ml").GetProperty("value").GetDouble() + need.GetProperty("reservoirs_ml").GetDouble() + need.GetProperty("losses_ml").GetProperty("value").GetDouble() + need.GetProperty("top_up_ml").GetProperty("value").GetDouble();
        Assert.Equal(total, sum, 1e-4 * total);
        Assert.Equal(total, part.GetProperty("batches").EnumerateArray().Sum(cup => cup.GetProperty("volume_ml").GetProperty("value").GetDouble()), 1e-3 * total);
        Assert.False(part.GetProperty("ports_suggested").GetBoolean());
        Assert.Equal(["feed", "vent"], part.GetProperty("ports").EnumerateArray().Select(port => port.GetProperty("role").GetString()!), StringComparer.Ordinal);
    }

    [Fact]
    public void A_box_held_so_that_its_vent_is_highest_keeps_no_air_and_its_sides_are_named_by_its_own_axes()
    {
        JsonElement part = Poured.Value.Json().GetProperty("parts")[0];
        Assert.True(part.GetProperty("trapped_percent").GetDouble() < 1);
        string attitude = part.GetProperty("attitude").GetString()!;
        Assert.Contains("side", attitude, StringComparison.Ordinal);
        Assert.DoesNotContain("root", attitude, StringComparison.Ordinal);
        Assert.DoesNotContain("tip", attitude, StringComparison.Ordinal);
    }

    [Fact]
    public void Pour_of_a_demo_reads_well_at_80_columns_and_ends_by_its_verdicts()
    {
        ProgramRun run = PouredDemo.Value;
        MakingText.Fits(run);
        Assert.Equal("", run.Error);
        Assert.True(run.ExitCode is ExitCode.Good or ExitCode.Fails, run.Out);
        Assert.Equal(run.ExitCode == ExitCode.Fails, run.Out.Contains("✕ fails", StringComparison.Ordinal) || run.Out.Contains("\nerror ", StringComparison.Ordinal));
        foreach (string word in (string[])["blade", "base", "Hold it with the", "Feed \"", "Vent \"", "hardener, g", "Uncured resin"])
            Assert.Contains(word, run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Cure_of_a_box_in_still_air_stands_in_no_water_and_its_heat_is_all_accounted_for()
    {
        JsonElement answer = Cured.Value.Json(), part = answer.GetProperty("parts")[0];
        Assert.Equal("finwright-cure", answer.GetProperty("kind").GetString());
        Assert.Equal(JsonValueKind.Null, part.GetProperty("water").ValueKind);
        // Resin in the pores at the resin's density of 1.1 g/ml; cells of the grid are shared out by their coverage.
        const double exact = 1.1 * (32 - 2.7) * (26 - 2.7) * (16 - 2) / 1000 * 0.85;
        Assert.Equal(exact, part.GetProperty("resin_grams").GetDouble(), 0.01 * exact);
        foreach (string end in (string[])["slow", "nominal", "fast"])
        {
            JsonElement numbers = part.GetProperty(end);
            Assert.Equal("done", numbers.GetProperty("status").GetString());
            Assert.True(Math.Abs(numbers.GetProperty("energy_gap_percent").GetDouble()) < 1, end);
            Assert.True(numbers.GetProperty("peak_resin_celsius").GetDouble() >= numbers.GetProperty("peak_wall_celsius").GetDouble(), end);
            Assert.True(numbers.GetProperty("peak_resin_celsius").GetDouble() > 20, end);
        }
    }

    [Fact]
    public void Cure_as_text_fits_80_columns_and_tells_the_range_from_its_lower_to_its_upper_end()
    {
        MakingText.Fits(CuredText.Value);
        Match range = Regex.Match(MakingText.Words(CuredText.Value.Out), @"\(range (?<low>\d+) to (?<high>\d+) °C\)", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(10));
        Assert.True(range.Success, CuredText.Value.Out);
        Assert.True(int.Parse(range.Groups["low"].Value, CultureInfo.InvariantCulture) <= int.Parse(range.Groups["high"].Value, CultureInfo.InvariantCulture), range.Value);
    }

    [Fact]
    public void Pouring_in_stages_keeps_a_hot_resin_cooler_than_pouring_at_once()
    {
        const string hot = "\"system\": { \"name\": \"laminating-standard\" }, ";
        string atOnce = Settings.Replace("\"pour\": { ", "\"pour\": { " + hot, StringComparison.Ordinal);
        string staged = atOnce.Replace("\"loss_percent\"", "\"stages\": [ { \"to_percent\": 50, \"after_hours\": 0 }, { \"to_percent\": 100, \"after_hours\": 12 } ], \"loss_percent\"", StringComparison.Ordinal);
        double air = Peak(OfSmallBox(atOnce, "--json")), stages = Peak(OfSmallBox(staged, "--json"));
        Assert.True(stages < air - 1, $"{stages} {air}");

        static double Peak(ProgramRun run) => run.Json().GetProperty("parts")[0].GetProperty("nominal").GetProperty("peak_resin_celsius").GetDouble();
    }

    [Fact]
    public void Pour_by_a_motion_file_takes_the_pores_that_it_leaves_and_says_so()
    {
        // The file lays a tenth more than planned, in eighty layers of the box's size; the outlines hold all of the box.
        string box = _folder.Write("box.stl", TestMesh.Box(Small.X, Small.Y, Small.Z).Text());
        double laid = 1.1 * ProgramRun.Of("print", box, "--json").Json().GetProperty("parts")[0].GetProperty("plastic_cm3").GetDouble(), whole = Small.X * Small.Y * Small.Z / 1000;
        ProgramRun run = ProgramRun.Of("pour", box, "--motion", _folder.Write("plate.gcode", Turns(laid)), "--json");
        JsonElement answer = run.Json(), part = answer.GetProperty("parts")[0];
        Assert.Equal("plate.gcode", answer.GetProperty("motion").GetProperty("file").GetString());
        Assert.Equal(1, answer.GetProperty("motion").GetProperty("plate").GetInt32());
        // Filament lengths are written to a hundred-thousandth of a millimetre.
        Assert.Equal(laid, answer.GetProperty("motion").GetProperty("laid_ml").GetDouble(), 1e-4 * laid);
        Assert.Equal(whole - laid, part.GetProperty("pores_ml").GetProperty("value").GetDouble(), 1e-3 * whole);
        ProgramRun text = ProgramRun.Of("pour", box, "--motion", _folder["plate.gcode"]);
        Assert.Contains("from plate.gcode: it lays", MakingText.Words(text.Out), StringComparison.Ordinal);
        MakingText.Fits(text);
        Assert.Equal(run.ExitCode, text.ExitCode);
        // A file that lays more than the box holds is of something else.
        ProgramRun other = ProgramRun.Of("pour", box, "--motion", _folder.Write("other.gcode", Turns(2 * whole)), "--json");
        Assert.Equal(ExitCode.Fails, other.ExitCode);
        Assert.Equal(JsonValueKind.Null, other.Json().GetProperty("motion").ValueKind);
        Assert.NotEqual(part.GetProperty("pores_ml").GetProperty("value").GetDouble(), other.Json().GetProperty("parts")[0].GetProperty("pores_ml").GetProperty("value").GetDouble(), 0.1);
        Assert.Contains(other.Json().GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("code").GetString() == "motion-not-this-part" && finding.GetProperty("path").GetString() == "other.gcode");
    }

    [Fact]
    public void Wrong_motion_options_of_pour_are_refused_before_any_work()
    {
        string box = _folder.Write("box.stl", TestMesh.Box(60, 40, 20).Text());
        ProgramRun.Of("pour", box, "--motion", _folder["missing.gcode"]).IsRefusal();
        ProgramRun.Of("pour", box, "--motion", _folder.Path).IsRefusal();
        ProgramRun.Of("pour", box, "--motion", "").IsRefusal();
        ProgramRun.Of("pour", box, "--plate", "2").IsRefusal();
        ProgramRun.Of("pour", box, "--volumetric").IsRefusal();
        ProgramRun.Of("pour", box, "--motion", _folder.Write("a.gcode", Turns(5)), "--filament-mm", "30").IsRefusal();
        ProgramRun.Of("pour", box, "--motion", _folder.Write("junk.gcode", "no motion here\n")).IsRefusal();
        ProgramRun packed = ProgramRun.Of("pour", box, "--motion", _folder.Write("packed.gcode", "PK\u0003\u0004 and so on\n")).IsRefusal();
        Assert.Contains("zip container", packed.Error, StringComparison.Ordinal);
    }

    /// <summary>Layers of 0.2 mm, each once round along the middle of the small box's outer wall: all plastic of the part.</summary>
    private static string Turns(double millilitres)
    {
        int layers = (int)Math.Round(Small.Z / 0.2);
        // Filament of 1.75 mm; four sides share the layer's length of it.
        double each = millilitres * 1000 / (Math.PI / 4 * 1.75 * 1.75) / layers / 4, x = 50 + Small.X - 0.45, y = 50 + Small.Y - 0.45;
        StringBuilder text = new("G21\nG90\nM83\n");
        for (int i = 1; i <= layers; i++)
            text.Append(CultureInfo.InvariantCulture, $"G0 Z{0.2 * i:0.0} F600\nG0 X50 Y50 F6000\nG1 X{x:0.000} E{each:0.00000} F1200\nG1 Y{y:0.000} E{each:0.00000}\nG1 X50 E{each:0.00000}\nG1 Y50 E{each:0.00000}\n");
        return text.ToString();
    }

    private static ProgramRun OfBox(string command, string settings, params string[] options)
    {
        using TemporaryFolder folder = new();
        return ProgramRun.Of([command, folder.Write("box.stl", TestMesh.Box(60, 40, 20).Text()), "--settings", folder.Write("a.part.json", settings), .. options]);
    }

    /// <summary>The cure of the small box, with ports where they are suggested.</summary>
    private static ProgramRun OfSmallBox(string settings, params string[] options)
    {
        using TemporaryFolder folder = new();
        string portless = settings[..settings.IndexOf(",\n  \"ports\"", StringComparison.Ordinal)] + " }";
        return ProgramRun.Of(["cure", folder.Write("box.stl", TestMesh.Box(Small.X, Small.Y, Small.Z).Text()), "--settings", folder.Write("a.part.json", portless), .. options]);
    }

    private static ProgramRun OfDemo(string command)
    {
        using TemporaryFolder folder = new();
        return ProgramRun.Of(command, folder.Write("a.fin.json", DemoDesigns.Find("sandbar-delta")!));
    }
}
