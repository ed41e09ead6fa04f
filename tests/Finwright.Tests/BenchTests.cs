using System.Globalization;
using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class BenchTests : IDisposable
{
    private static readonly string Delta = DemoDesigns.Find("sandbar-delta")!;
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Bench_of_a_design_file_gives_the_deflection_of_solid_elements()
    {
        // Numerical reference, CalculiX 2.20, C3D20R, 51 653 nodes: NACA 0012 of one material, chord 110 to 60 mm, span 220 mm, 196.2 N in the middle of the chord at 180 mm. Deflection of the tip at
        // 10, 50 and 90 % of its chord 38.387, 41.066 and 43.732 mm, twist 6.380 degrees. Tolerance 1 %: what a plate leaves out of a solid.
        string file = _folder.Write("tapered.fin.json", Tapered());
        JsonElement answer = Json("bench", file, "--mass-kg", "20.0068", "--at-mm", "180", "--at-chord", "mid-chord");
        JsonElement tip = answer.GetProperty("deflectionMm").GetProperty("tip");
        double leading = Number(tip, "leadingEdge"), trailing = Number(tip, "trailingEdge");
        Within(0.01, 41.066, Number(tip, "midChord"));
        Within(0.01, 6.380, Number(answer, "twistDegrees"));
        // The chord of the tip stays all but straight.
        Within(0.01, 38.387, leading + 0.1 * (trailing - leading));
        Within(0.01, 43.732, leading + 0.9 * (trailing - leading));
        Assert.Equal(196.2, Number(answer, "forceN"), 0.01);
        Assert.Contains("beyond 10 % the true deflection is smaller", answer.GetProperty("notes")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_root_that_gives_bends_farther_and_one_weight_twice_as_heavy_twice_as_far()
    {
        string file = _folder.Write("delta.fin.json", Delta);
        double Tip(params string[] more) => Number(Json(["bench", file, "--at-mm", "90", .. more]).GetProperty("deflectionMm").GetProperty("tip"), "midChord");
        double clamped = Tip("--root", "clamped", "--mass-kg", "5"), elastic = Tip("--root", "elastic", "--mass-kg", "5"), joint = Tip("--root", "joint", "--mass-kg", "5");
        Assert.True(clamped < elastic && elastic <= joint);
        Assert.Equal(2 * clamped, Tip("--root", "clamped", "--mass-kg", "10"), 1e-6);
        Assert.Equal(clamped, Tip("--root", "clamped", "--mass-kg", "5", "--at-chord", "mid-chord"), 1e-9);
    }

    [Fact]
    public void Bench_as_text_fits_80_columns_but_for_the_joint_and_says_what_it_assumes()
    {
        ProgramRun run = ProgramRun.Of("bench", _folder.Write("delta.fin.json", Delta), "--root", "clamped");
        Assert.Equal(ExitCode.Good, run.ExitCode);
        Assert.StartsWith("Sandbar delta\n15 kg hung ", run.Out, StringComparison.Ordinal);
        Assert.Contains("held rigidly along its whole length", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--mass-kg", "0")]
    [InlineData("--mass-kg", "500")]
    [InlineData("--at-mm", "900")]
    [InlineData("--at-mm", "-1")]
    [InlineData("--at-chord", "middle")]
    [InlineData("--root", "loose")]
    public void Bench_refuses_what_no_bench_has(string option, string value) =>
        Assert.Contains(option, ProgramRun.Of("bench", _folder.Write("delta.fin.json", Delta), option, value).IsRefusal().Error, StringComparison.Ordinal);

    [Fact]
    public void Bench_of_a_design_that_is_wrong_ends_with_2() =>
        Assert.Equal(ExitCode.WrongInput, ProgramRun.Of("bench", _folder.Write("wrong.fin.json", Delta.Replace("\"clamp-rods\"", "\"glue\"", StringComparison.Ordinal))).ExitCode);

    /// <summary>The tapered fin of the reference as a design file.</summary>
    private static string Tapered()
    {
        string Points(double from, double to) => string.Join(", ", Enumerable.Range(0, 4).Select(i => string.Create(CultureInfo.InvariantCulture, $"{{ \"depth_mm\": {220 * i / 3.0:0.######}, \"aft_mm\": {from + (to - from) * i / 3:0.######} }}")));
        string sections = string.Join(", ", Enumerable.Range(0, 11).Select(i => string.Create(CultureInfo.InvariantCulture, $"{{ \"at_percent\": {10 * i}, \"section\": \"naca-0012\", \"thickness_percent\": {100 * (13.2 - 0.72 * i) / (110 - 5 * i):0.######} }}")));
        return $$"""
            {
              "format": 2,
              "name": "Tapered",
              "shape": {
                "outline": { "family": "free", "leading_edge": [{{Points(0, 92.573)}}], "trailing_edge": [{{Points(110, 152.573)}}] },
                "sections": [{{sections}}],
                "tip": "flat",
                "trailing_edge_mm": 0.25
              },
              "base": { "root_hold": "clamped", "printed": "as-one", "fixing": "base-only" },
              "materials": { "printed": { "modulus_gpa": 2.9, "poisson_ratio": 0.35 }, "core": { "modulus_gpa": 2.9, "poisson_ratio": 0.35 } }
            }
            """;
    }

    private static JsonElement Json(params string[] words)
    {
        ProgramRun run = ProgramRun.Of([.. words, "--json"]);
        Assert.Equal("", run.Error);
        return run.Json();
    }

    private static double Number(JsonElement element, string name) => element.GetProperty(name).GetDouble();

    private static void Within(double share, double expected, double actual) => Assert.InRange(actual, expected * (1 - share), expected * (1 + share));
}
