using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class WaterTests(SailedDemo demo) : IClassFixture<SailedDemo>
{
    private static readonly string[] Cases = ["getting-going", "cruise", "top-speed", "overload", "grounding"];
    private static readonly string[] Codes = ["stall-reserve", "stall-overload", "ventilation", "cavitation", "leeway", "drag-share", "centre-of-effort", "weed", "draught"];

    [Fact]
    public void Water_as_json_has_every_load_case_and_every_verdict()
    {
        JsonElement answer = demo.Json;
        Assert.Equal("finwright-water", answer.GetProperty("kind").GetString());
        Assert.Equal(Cases, answer.GetProperty("load_cases").EnumerateArray().Select(own => own.GetProperty("case").GetString()!), StringComparer.Ordinal);
        Assert.Equal(Codes.Order(StringComparer.Ordinal), answer.GetProperty("verdicts").EnumerateArray().Select(own => own.GetProperty("code").GetString()!).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("problem").ValueKind);
    }

    [Fact]
    public void The_drag_of_a_case_is_the_sum_of_its_parts_and_the_coefficients_belong_to_the_forces()
    {
        JsonElement cruise = demo.Case("cruise"), drag = cruise.GetProperty("drag");
        double sum = ((string[])["induced_n", "section_n", "separation_n", "junction_n", "spray_n"]).Sum(part => drag.GetProperty(part).GetDouble());
        Assert.Equal(drag.GetProperty("total_n").GetDouble(), sum, 1e-6);
        Assert.Equal(cruise.GetProperty("side_force_n").GetDouble() / sum, cruise.GetProperty("cl").GetDouble() / cruise.GetProperty("cd").GetDouble(), 1e-3);
        Assert.InRange(cruise.GetProperty("leeway_degrees").GetDouble(), 1, 12);
        Assert.InRange(cruise.GetProperty("centre_of_effort_depth_mm").GetDouble(), 60, 150);
    }

    [Fact]
    public void It_says_how_smooth_the_blade_has_to_be()
    {
        JsonElement smooth = demo.Json.GetProperty("smoothness");
        double friction = smooth.GetProperty("friction_below_um").GetDouble(), speed = smooth.GetProperty("speed_m_per_s").GetDouble();
        // Schlichting, Boundary-Layer Theory (from memory): u k/ν = 100 at most.
        Assert.Equal(100e6 * demo.Json.GetProperty("water").GetProperty("kinematic_viscosity_m2_per_s").GetDouble() / speed, friction, 1e-3 * friction);
        Assert.InRange(smooth.GetProperty("ridges_trip_above_um").GetDouble(), 2 * friction, 20 * friction);
        Assert.Contains("adds no friction", demo.Run().Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void The_hull_lies_between_endless_hull_and_none()
    {
        JsonElement cruise = demo.Case("cruise");
        double Bound(string name) => cruise.GetProperty(name).GetProperty("leeway_degrees").GetDouble();
        Assert.InRange(cruise.GetProperty("leeway_degrees").GetDouble(), Bound("under_mirror"), Bound("under_bare_surface"));
    }

    [Fact]
    public void Water_says_the_sentence_first_then_the_verdicts_worst_first_in_80_columns()
    {
        ProgramRun run = demo.Run();
        string[] lines = run.Out.Split('\n');
        Assert.Equal("Sandbar delta", lines[0]);
        Assert.StartsWith("At 9 m/s it carries ", lines[1], StringComparison.Ordinal);
        Assert.All(lines, line => Assert.True(line.Length <= 80, line));
        string marks = string.Concat(lines.Where(line => line.Length > 2 && "✕◐?●".Contains(line[0], StringComparison.Ordinal) && line[1] == ' ').Select(line => line[0]));
        Assert.Equal(Codes.Length, marks.Length);
        Assert.Equal(marks, string.Concat(marks.OrderBy(mark => "✕◐?●".IndexOf(mark, StringComparison.Ordinal))));
        Assert.Contains("How sure this is", run.Out, StringComparison.Ordinal);
        Assert.Contains("rules of thumb", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Water_ends_with_1_when_a_verdict_fails_and_else_with_0()
    {
        bool fails = demo.Json.GetProperty("verdicts").EnumerateArray().Any(own => own.GetProperty("state").GetString() == "fails");
        Assert.Equal(fails ? ExitCode.Fails : ExitCode.Good, demo.Run().ExitCode);
        string shallow = demo.Folder.Write("shallow.fin.json", DemoDesigns.Find("sandbar-delta")!.Replace("\"draught_limit_mm\": 240", "\"draught_limit_mm\": 200", StringComparison.Ordinal));
        ProgramRun run = ProgramRun.Of("water", shallow);
        Assert.Equal(ExitCode.Fails, run.ExitCode);
        Assert.Contains("12 mm deeper than the spot allows", run.Out.ReplaceLineEndings(" ").Replace("             ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Water_swept_over_leeway_gives_a_row_for_each_angle()
    {
        JsonElement[] rows = [.. demo.Run("--sweep", "leeway=0:6:1.5", "--json").Json().GetProperty("sweep").EnumerateArray()];
        Assert.Equal([0, 1.5, 3, 4.5, 6], rows.Select(row => row.GetProperty("leeway_degrees").GetDouble()));
        double[] forces = [.. rows.Select(row => row.GetProperty("side_force_n").GetDouble())];
        Assert.Equal(forces.Order(), forces);
        // A symmetric fin pointed straight ahead.
        Assert.Equal(0, forces[0], 1e-6);
        Assert.Contains("leeway at 9 m/s", demo.Run("--sweep", "leeway=-4:4:2").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Water_against_itself_has_not_moved()
    {
        JsonElement answer = demo.Run("--against", demo.Design, "--json").Json();
        Assert.Equal("Sandbar delta", answer.GetProperty("against").GetString());
        JsonElement verdict = answer.GetProperty("verdicts").EnumerateArray().Single(own => own.GetProperty("code").GetString() == "centre-of-effort");
        Assert.Equal(0, verdict.GetProperty("value").GetDouble());
        Assert.Equal("holds", verdict.GetProperty("state").GetString());
    }

    [Theory]
    [InlineData("takes leeway=first:last:step", "--sweep", "speed=0:10:1")]
    [InlineData("takes leeway=first:last:step", "--sweep", "0:10:1")]
    [InlineData("first:last:step", "--sweep", "leeway=0:10")]
    [InlineData("the step is 0", "--sweep", "leeway=0:10:0")]
    [InlineData("leads away", "--sweep", "leeway=0:10:-1")]
    [InlineData("at most 401", "--sweep", "leeway=0:20:0.001")]
    [InlineData("outside -25 to 25", "--sweep", "leeway=0:40:1")]
    [InlineData("There is no such file", "--against", "nowhere.fin.json")]
    public void Water_with_a_bad_option_is_refused_with_one_message(string words, string option, string value) =>
        Assert.Contains(words, string.Join(' ', demo.Run(option, value).IsRefusal().Error.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);

    [Fact]
    public void Water_of_a_broken_design_is_wrong_input_in_text_and_json()
    {
        string broken = demo.Folder.Write("broken.fin.json", "{ \"name\": 3 }");
        ProgramRun text = ProgramRun.Of("water", broken);
        Assert.Equal(ExitCode.WrongInput, text.ExitCode);
        Assert.Equal("", text.Out);
        ProgramRun json = ProgramRun.Of("water", broken, "--json");
        Assert.Equal(ExitCode.WrongInput, json.ExitCode);
        Assert.True(json.Json().GetProperty("findings").GetArrayLength() > 0);
        Assert.Equal(0, json.Json().GetProperty("load_cases").GetArrayLength());
    }

    [Fact]
    public void Water_of_a_section_too_thick_for_the_method_says_so_and_judges_what_it_can()
    {
        string thick = demo.Folder.Write("thick.fin.json", DemoDesigns.Find("sandbar-delta")!.Replace("\"thickness_percent\": 9.4", "\"thickness_percent\": 24", StringComparison.Ordinal));
        ProgramRun run = ProgramRun.Of("water", thick);
        Assert.Contains("24 % thick", run.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("? not known", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Water_that_is_stopped_answers_nothing()
    {
        ProgramRun run = ProgramRun.Of(new CancellationToken(canceled: true), "water", demo.Design);
        Assert.Equal(ExitCode.Stopped, run.ExitCode);
        Assert.Equal("", run.Out);
    }
}

/// <summary>A demo design sailed once.</summary>
public sealed class SailedDemo : IDisposable
{
    private JsonElement? _json;

    public SailedDemo() => Design = Folder.Write("sandbar-delta.fin.json", DemoDesigns.Find("sandbar-delta")!);

    public TemporaryFolder Folder { get; } = new();

    public string Design { get; }

    public JsonElement Json => _json ??= Run("--json").Json();

    internal ProgramRun Run(params string[] options) => ProgramRun.Of(["water", Design, .. options]);

    public JsonElement Case(string name) => Json.GetProperty("load_cases").EnumerateArray().Single(own => own.GetProperty("case").GetString() == name);

    public void Dispose() => Folder.Dispose();
}
