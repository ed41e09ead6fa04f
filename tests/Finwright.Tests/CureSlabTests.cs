using System.Globalization;
using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class CureSlabTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    /// <summary>
    /// Slabs of a resin without glass transition between walls of 1.2 mm, no infill, air and start at 22 °C.
    /// Numerical reference, scipy BDF, relative tolerance 1e-9, finite volumes, 100 cells. Tolerance: what a grid of half the cells and steps of that size may
    /// differ; near the edge where heat feeds itself a peak moves by kelvins with the last digit of a constant.
    /// </summary>
    [Theory]
    [InlineData(1, 12, 8, 165.04, 3, 115.08, 0.02, null)]
    [InlineData(1, 25, 300, 32.538, 0.1, 120.79, 0.01, 326.65)]
    [InlineData(0.4, 12, 8, 28.547, 0.1, 308.66, 0.01, 967.83)]
    [InlineData(6, 12, 300, 111.80, 1.5, 22.13, 0.01, 19.51)]
    public void Slab_peaks_and_gels_as_the_numerical_reference(double rates, double thickness, double convection, double peak, double kelvin, double minutes, double share, double? gel)
    {
        JsonElement answer = ProgramRun.Of(
            "cure-slab", "--thickness-mm", Text(thickness), "--convection", Text(convection), "--wall-mm", "1.2", "--infill", "0", "--ambient-celsius", "22", "--resin", Resin(rates), "--json").Json();
        Assert.Equal(peak, answer.GetProperty("peakCentreCelsius").GetDouble(), kelvin);
        Assert.Equal(minutes, answer.GetProperty("peakMinutes").GetDouble(), share * minutes);
        if (gel is double time)
            Assert.Equal(time, answer.GetProperty("gelMinutes").GetDouble(), 0.01 * time);
        // The first slab's wall, from the same reference.
        if (rates == 1 && thickness == 12)
            Assert.Equal(151.32, answer.GetProperty("peakWallCelsius").GetDouble(), kelvin);
        Assert.True(answer.GetProperty("slow").GetProperty("peakCentreCelsius").GetDouble() < peak);
        Assert.True(answer.GetProperty("fast").GetProperty("peakCentreCelsius").GetDouble() > peak);
    }

    [Fact]
    public void A_rate_factor_is_the_same_as_both_rates_times_it()
    {
        string[] rest = ["--thickness-mm", "12", "--convection", "8", "--infill", "0", "--json"];
        JsonElement byFactor = ProgramRun.Of(["cure-slab", "--resin", Resin(1), "--rate-factor", "0.4", .. rest]).Json(), byFile = ProgramRun.Of(["cure-slab", "--resin", Resin(0.4), .. rest]).Json();
        Assert.Equal(byFile.GetProperty("peakCentreCelsius").GetDouble(), byFactor.GetProperty("peakCentreCelsius").GetDouble(), 1e-6);
        Assert.Equal(byFile.GetProperty("gelMinutes").GetDouble(), byFactor.GetProperty("gelMinutes").GetDouble(), 1e-6 * 1000);
    }

    [Fact]
    public void Slab_that_softens_its_walls_ends_with_1_and_one_that_does_not_with_0()
    {
        ProgramRun hot = ProgramRun.Of("cure-slab", "--thickness-mm", "12", "--convection", "8", "--wall-mm", "1.2", "--infill", "0", "--ambient-celsius", "22", "--resin", Resin(1));
        Assert.Equal(ExitCode.Fails, hot.ExitCode);
        Assert.Contains("the walls soften at 65 °C and reach it", hot.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        ProgramRun cool = ProgramRun.Of("cure-slab", "--thickness-mm", "12", "--convection", "8", "--wall-mm", "1.2", "--infill", "0", "--ambient-celsius", "22", "--resin", Resin(0.4));
        Assert.Equal(ExitCode.Good, cool.ExitCode);
        Assert.Contains("The middle peaks at 29 °C", cool.Out, StringComparison.Ordinal);
        Assert.All((hot.Out + cool.Out).Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Equal("", hot.Error + cool.Error);
    }

    [Fact]
    public void Without_a_thickness_it_says_only_how_thick_one_may_pour_and_water_allows_more_than_air()
    {
        JsonElement air = ProgramRun.Of("cure-slab", "--cooling", "air", "--json").Json(), water = ProgramRun.Of("cure-slab", "--cooling", "water", "--json").Json();
        Assert.Equal(JsonValueKind.Null, air.GetProperty("nominal").ValueKind);
        double inAir = air.GetProperty("thickest").GetProperty("cautiousMm").GetDouble(), inWater = water.GetProperty("thickest").GetProperty("cautiousMm").GetDouble();
        Assert.True(inAir > 0 && inWater > inAir, $"{inAir} {inWater}");
        Assert.True(air.GetProperty("thickest").GetProperty("nominalMm").GetDouble() >= inAir);
    }

    [Theory]
    [InlineData("outside 0.2 to 200", "--thickness-mm", "0")]
    [InlineData("outside 0.2 to 200", "--thickness-mm", "1000")]
    [InlineData("takes a number", "--thickness-mm", "thick")]
    [InlineData("outside 0 to 60 %", "--infill", "90")]
    [InlineData("outside 0 to 60 %", "--infill", "-1")]
    [InlineData("outside 0.1 to 10000", "--convection", "0")]
    [InlineData("takes one of", "--cooling", "oil")]
    [InlineData("outside 0 to 60", "--ambient-celsius", "-20")]
    [InlineData("outside 0.01 to 100", "--rate-factor", "0")]
    [InlineData("no resin \"laminating-slo\". Perhaps \"laminating-slow\" is meant.", "--resin", "laminating-slo")]
    [InlineData("There is no such file.", "--resin", "missing.resin.json")]
    public void A_wrong_option_is_refused(string words, params string[] options) =>
        Assert.Contains(words, ProgramRun.Of(["cure-slab", .. options]).IsRefusal().Error.ReplaceLineEndings(" ").Replace("            ", " ", StringComparison.Ordinal), StringComparison.Ordinal);

    [Fact]
    public void A_resin_file_with_wrong_fields_is_refused_with_all_that_is_wrong()
    {
        string text = File.ReadAllText(Resin(1)).Replace("\"order_m\": 0.39845,", "\"order_q\": 1, \"order_m\": \"low\",", StringComparison.Ordinal).Replace("\"density_kg_per_m3\": 1150,", "", StringComparison.Ordinal);
        ProgramRun run = ProgramRun.Of("cure-slab", "--resin", _folder.Write("wrong.resin.json", text)).IsRefusal();
        foreach (string word in (string[])["order_q", "order_m", "density_kg_per_m3", "in the resin file"])
            Assert.Contains(word, run.Error, StringComparison.Ordinal);
    }

    // Constants as a public model file gives them that cites Thermochimica Acta 2015, doi 10.1016/j.tca.2015.11.014; density, heat and conductivity as the reference took them.
    private string Resin(double rates) => _folder.Write($"set-b-{Text(rates)}.resin.json", $$"""
        {
          "format": 1,
          "name": "set-b",
          "title": "Set B",
          "remark": "For a test.",
          "rate_1_per_s": {{Text(35982 * rates)}},
          "activation_1_j_per_mol": 54960,
          "rate_2_per_s": {{Text(3574.1 * rates)}},
          "activation_2_j_per_mol": 44289,
          "order_m": 0.39845,
          "order_n": 1.5361,
          "heat_of_reaction_j_per_g": 460,
          "initial_conversion": 0.001,
          "gel_conversion": 0.6,
          "density_kg_per_m3": 1150,
          "heat_capacity_j_per_kg_k": 1700,
          "conductivity_w_per_m_k": 0.20
        }
        """);

    private static string Text(double number) => number.ToString(CultureInfo.InvariantCulture);
}
