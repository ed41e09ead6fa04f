using System.Globalization;
using System.Text;
using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class MotionTests : IDisposable
{
    // Plate 2 of the demo, blade and base, stops for nuts; the file is of another size but as high as the blade stands.
    private static readonly string Delta = DemoDesigns.Find("sandbar-delta")!;
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_tower_is_read_back_as_it_was_written()
    {
        ProgramRun run = ProgramRun.Of("motion", _folder.Write("a.gcode", Tower(50)), "--json");
        JsonElement answer = run.Json();
        Assert.Equal(ExitCode.Good, run.ExitCode);
        Assert.Equal("finwright-motion", answer.GetProperty("kind").GetString());
        Assert.Equal(50, answer.GetProperty("layers").GetInt32());
        Assert.Equal(10, answer.GetProperty("height_mm").GetDouble(), 1e-9);
        // Four sides of 40 mm and 1 mm of filament of 1.75 mm each, fifty times: exact.
        Assert.Equal(50 * 4 * Math.PI / 4 * 1.75 * 1.75 / 1000, answer.GetProperty("plastic_cm3").GetDouble(), 1e-6);
        Assert.Equal(50 * 4 * 0.04, answer.GetProperty("laid_m").GetDouble(), 1e-9);
        ProgramRun text = ProgramRun.Of("motion", _folder["a.gcode"]);
        Assert.Contains("50 layers up to 10.00 mm", text.Out, StringComparison.Ordinal);
        MakingText.Fits(text);
    }

    [Fact]
    public void Filament_of_another_width_and_plastic_as_a_volume_are_reckoned_with()
    {
        string file = _folder.Write("a.gcode", Tower(50));
        Assert.Equal(50 * 4 * Math.PI / 4 * 2.85 * 2.85 / 1000, Plastic("--filament-mm", "2.85"), 1e-6);
        Assert.Equal(50 * 4 / 1000.0, Plastic("--volumetric"), 1e-9);

        double Plastic(params string[] options) => ProgramRun.Of(["motion", file, .. options, "--json"]).Json().GetProperty("plastic_cm3").GetDouble();
    }

    [Fact]
    public void A_copy_with_stops_differs_by_the_inserted_lines_alone_and_an_existing_file_is_kept()
    {
        string design = _folder.Write("a.fin.json", Delta), text = Tower(1060), file = _folder.Write("plate.gcode", text), copy = _folder["copy.gcode"];
        ProgramRun run = ProgramRun.Of("motion", file, "--design", design, "--plate", "2", "--insert-stops", copy, "--stop-line", "M600", "--json");
        JsonElement inserted = run.Json().GetProperty("inserted"), plate = run.Json().GetProperty("plate");
        Assert.Equal(2, plate.GetProperty("number").GetInt32());
        Assert.True(inserted.GetProperty("written").GetBoolean(), run.Out);
        string[] before = text.Split('\n'), after = File.ReadAllText(copy).Split('\n');
        int[] heights = [.. plate.GetProperty("stops").EnumerateArray().Select(stop => (int)Math.Round(stop.GetProperty("at_height_mm").GetDouble() / 0.2)).Distinct()];
        Assert.NotEmpty(heights);
        Assert.Equal(heights.Length, after.Length - before.Length);
        Assert.Equal(before, after.Where(line => line != "M600"), StringComparer.Ordinal);
        // Each stands before the first move of the layer above it.
        foreach (int layers in heights)
            Assert.Contains($"M600\nG1 Z{Text(0.2 * (layers + 1))} ", File.ReadAllText(copy), StringComparison.Ordinal);

        // The copy has what it needs; a second copy onto it is refused, and it stays as it was.
        byte[] kept = File.ReadAllBytes(copy);
        Assert.Contains("exists already", ProgramRun.Of("motion", file, "--design", design, "--insert-stops", copy).IsRefusal().Error, StringComparison.Ordinal);
        Assert.Equal(kept, File.ReadAllBytes(copy));
        Assert.Equal(text, File.ReadAllText(file));
        Assert.All(ProgramRun.Of("motion", copy, "--design", design, "--plate", "2", "--stop-line", "M600", "--json").Json().GetProperty("plate").GetProperty("stops").EnumerateArray(), stop => Assert.Equal("present", stop.GetProperty("state").GetString()));
    }

    [Fact]
    public void Junk_binary_and_packed_files_are_refused()
    {
        byte[] bytes = new byte[4000];
        new Random(3).NextBytes(bytes);
        File.WriteAllBytes(_folder["random.gcode"], bytes);
        ProgramRun.Of("motion", _folder["random.gcode"]).IsRefusal();
        ProgramRun.Of("motion", _folder.Write("empty.gcode", "")).IsRefusal();
        ProgramRun.Of("motion", _folder.Write("words.gcode", "once upon a time\n")).IsRefusal();
        ProgramRun.Of("motion", _folder.Write("zip.gcode", "PK\u0003\u0004 and so on\n")).IsRefusal();
        ProgramRun.Of("motion", _folder.Write("design.gcode", Delta)).IsRefusal();
        ProgramRun.Of("motion", _folder["missing.gcode"]).IsRefusal();
        ProgramRun.Of("motion", _folder.Path).IsRefusal();
    }

    [Theory]
    [InlineData("--insert-stops", "b.gcode")]
    [InlineData("--plate", "2")]
    [InlineData("--overwrite")]
    [InlineData("--filament-mm", "20")]
    [InlineData("--acceleration", "1")]
    [InlineData("--design", "missing.fin.json")]
    public void Options_that_do_not_fit_are_refused(params string[] options) => ProgramRun.Of(["motion", _folder.Write("a.gcode", Tower(3)), .. options]).IsRefusal();

    /// <summary>Squares of 40 mm, one a layer of 0.2 mm, four sides with 1 mm of filament each.</summary>
    private static string Tower(int layers)
    {
        StringBuilder text = new("G21\nG90\nM83\n");
        for (int i = 1; i <= layers; i++)
            text.Append(CultureInfo.InvariantCulture, $"G1 Z{Text(0.2 * i)} F600\nG0 X50 Y50 F6000\nG1 X90 E1 F1200\nG1 Y90 E1\nG1 X50 E1\nG1 Y50 E1\n");
        return text.ToString();
    }

    private static string Text(double height) => height.ToString("0.0", CultureInfo.InvariantCulture);
}
