using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class PrintTests : IDisposable
{
    private static readonly Lazy<ProgramRun> Text = new(() => OfDemo()), Json = new(() => OfDemo("--json"));
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private static ProgramRun OfDemo(params string[] options)
    {
        using TemporaryFolder folder = new();
        return ProgramRun.Of(["print", folder.Write("a.fin.json", DemoDesigns.Find("sandbar-delta")!), .. options]);
    }

    [Fact]
    public void Print_of_a_demo_names_every_part_and_every_stop_with_its_layer_and_height()
    {
        JsonElement answer = Json.Value.Json();
        Assert.Equal("finwright-print", answer.GetProperty("kind").GetString());
        Assert.Equal("", Json.Value.Error);
        Assert.Equal(["base", "blade", "gauge"], answer.GetProperty("parts").EnumerateArray().Select(part => part.GetProperty("name").GetString()!).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        foreach (JsonElement plate in answer.GetProperty("plates").EnumerateArray())
        {
            foreach (JsonElement stop in plate.GetProperty("stops").EnumerateArray())
            {
                int layer = stop.GetProperty("before_layer").GetInt32();
                // Layers of 0.2 mm from the bed: so many lie below.
                Assert.Equal(0.2 * (layer - 1), stop.GetProperty("at_height_mm").GetDouble(), 1e-6);
                Assert.Contains($"Stop before layer {layer}, at", Text.Value.Out, StringComparison.Ordinal);
            }
        }

        Assert.NotEmpty(answer.GetProperty("plates").EnumerateArray().SelectMany(plate => plate.GetProperty("stops").EnumerateArray()));
    }

    [Fact]
    public void Plastic_of_parts_is_walls_solid_layers_and_infill_and_costs_its_share_of_a_kilogram()
    {
        foreach (JsonElement part in Json.Value.Json().GetProperty("parts").EnumerateArray())
        {
            double Of(string field) => part.GetProperty(field).GetDouble();
            Assert.Equal(Of("plastic_cm3"), Of("walls_cm3") + Of("solid_cm3") + Of("infill_cm3"), 1e-6);
            // The demo's own density and price: 1.27 g/cm³, 22 a kilogram by default.
            Assert.Equal(Of("plastic_grams"), 1.27 * Of("plastic_cm3"), 1e-3);
            Assert.Equal(Of("filament_cost"), 0.022 * Of("plastic_grams"), 1e-3);
            // Filament of 1.75 mm: 2.405 mm² of section.
            Assert.Equal(Of("filament_m"), Of("plastic_cm3") / (Math.PI / 4 * 1.75 * 1.75), 1e-3);
        }
    }

    [Fact]
    public void Exit_code_is_1_just_when_a_verdict_fails_or_an_error_was_found()
    {
        JsonElement answer = Json.Value.Json();
        bool fails = answer.GetProperty("verdicts").EnumerateArray().Any(own => own.GetProperty("state").GetString() == "fails") || answer.GetProperty("findings").EnumerateArray().Any(own => own.GetProperty("severity").GetString() == "error");
        Assert.Equal(fails ? ExitCode.Fails : ExitCode.Good, Json.Value.ExitCode);
        Assert.Equal(Json.Value.ExitCode, Text.Value.ExitCode);
    }

    [Fact]
    public void Text_fits_80_columns() => MakingText.Fits(Text.Value);

    [Theory]
    [InlineData("print")]
    [InlineData("pour")]
    [InlineData("cure")]
    [InlineData("plan")]
    public void A_missing_file_a_folder_and_a_broken_design_are_refused(string command)
    {
        ProgramRun.Of(command, _folder["missing.fin.json"]).IsRefusal();
        ProgramRun.Of(command, _folder.Path).IsRefusal();
        ProgramRun.Of(command, "").IsRefusal();
        ProgramRun broken = ProgramRun.Of(command, _folder.Write("a.fin.json", "{ \"name\": 3"));
        Assert.Equal(ExitCode.WrongInput, broken.ExitCode);
        Assert.Equal("", broken.Out);
        Assert.Contains("What to do: ", broken.Error, StringComparison.Ordinal);
        ProgramRun json = ProgramRun.Of(command, _folder["a.fin.json"], "--json");
        Assert.Equal(ExitCode.WrongInput, json.ExitCode);
        Assert.NotEmpty(json.Json().GetProperty("findings").EnumerateArray());
    }

    [Theory]
    [InlineData("print")]
    [InlineData("pour")]
    [InlineData("cure")]
    public void Settings_beside_a_design_are_refused(string command)
    {
        string design = _folder.Write("a.fin.json", DemoDesigns.Find("sandbar-delta")!);
        Assert.Contains("--settings goes with a mesh", ProgramRun.Of(command, design, "--settings", design).IsRefusal().Error, StringComparison.Ordinal);
    }
}
