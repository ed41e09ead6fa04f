using System.Text;
using Finwright.Design;
using Finwright.Making.Files;
using Finwright.Making.Resins;
using Finwright.Numerics;

namespace Finwright.Making.Tests.Files;

public sealed class ResinFileTests
{
    /// <summary>A resin as a maker types it from a data sheet.</summary>
    private const string Plain = """
        {
          "format": 1, "name": "my-resin", "title": "My resin", "remark": "From its sheet.",
          "rate_1_per_s": 35982, "activation_1_j_per_mol": 54960, "rate_2_per_s": 3574.1, "activation_2_j_per_mol": 44289,
          "order_m": 0.398, "order_n": 1.536, "heat_of_reaction_j_per_g": 450,
          "density_kg_per_m3": 1100, "heat_capacity_j_per_kg_k": 1700, "conductivity_w_per_m_k": 0.2,
          "glass_uncured_celsius": -57, "glass_cured_celsius": 91, "glass_shape": 0.369,
          "hardener_parts_per_100": 30, "resin_part_density_kg_per_m3": 1150, "hardener_part_density_kg_per_m3": 970,
          "pot_life_minutes": 60, "pot_life_mass_g": 100, "pot_life_celsius": 25
        }
        """;

    public static TheoryData<string> Names() => [.. ResinLibrary.All.Select(r => r.Name)];

    [Fact]
    public void Library_has_its_five_resins_and_lists_them_when_asked_for_another()
    {
        Assert.Equal("casting-slow infusion-other infusion-reference laminating-slow laminating-standard", string.Join(" ", ResinLibrary.All.Select(r => r.Name).Order(StringComparer.Ordinal)));
        Assert.Null(ResinLibrary.Find("glue"));
        Assert.Contains("casting-slow", Assert.Throws<ArgumentException>(() => ResinLibrary.Get("glue")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Write_then_read_gives_the_same_resin(string name)
    {
        ResinSystem resin = ResinLibrary.Get(name);
        byte[] bytes = Bytes(resin);
        ResinReading reading = ResinFile.Read(bytes);
        Assert.Empty(reading.Findings);
        Assert.Equal(bytes, Bytes(reading.Resin!));
        Assert.Equal(resin.Kinetics, reading.Resin!.Kinetics);
        Assert.Equal(resin.GlassTransition, reading.Resin.GlassTransition);
        Assert.Equal(resin.Viscosity, reading.Resin.Viscosity);
        Assert.Equal(resin.Numbers, reading.Resin.Numbers);
        Assert.NotNull(resin.HardenerByMass);
    }

    [Fact]
    public void Reference_has_the_constants_of_its_source_in_si()
    {
        // Constants as given in a public model file that cites Thermochimica Acta 2015, doi 10.1016/j.tca.2015.11.014, table 5 (paper not seen).
        ResinSystem resin = ResinLibrary.Get("infusion-reference");
        Assert.Equal(new CureKinetics(35982, 54960, 3574.1, 44289, 0.39845, 1.5361, 460e3, 0.001, 0.6), resin.Kinetics);
        Assert.Equal(91 + 273.15, resin.GlassTransition!.Cured, 1e-9);
        Assert.Equal(Certainty.Published, resin.Numbers["rate_1_per_s"].Certainty);
        // 5 K more cut viscosity by almost half (kit manual for aircraft builders): 85 kJ/mol gives exp(-85000/8.3145 × (1/298.15 − 1/303.15)) = 0.568.
        ResinViscosity v = resin.Viscosity!;
        Assert.Equal(0.568, Math.Exp(v.Activation / 8.314462618 * (1 / 303.15 - 1 / 298.15)), 5e-4);
    }

    [Fact]
    public void Slower_kinds_are_the_reference_with_both_rates_scaled_alike()
    {
        CureKinetics reference = ResinLibrary.Get("infusion-reference").Kinetics;
        foreach (string name in new[] { "casting-slow", "laminating-slow", "laminating-standard" })
        {
            CureKinetics kinetics = ResinLibrary.Get(name).Kinetics;
            double scale = kinetics.Rate1 / reference.Rate1;
            // Six printed digits.
            Assert.Equal(scale, kinetics.Rate2 / reference.Rate2, 1e-5);
            Assert.Equal(reference with { Rate1 = kinetics.Rate1, Rate2 = kinetics.Rate2 }, kinetics);
        }
    }

    [Fact]
    public void Bare_numbers_of_a_data_sheet_make_a_resin()
    {
        ResinReading reading = ResinFile.Read(Encoding.UTF8.GetBytes(Plain));
        Assert.Empty(reading.Findings);
        ResinSystem resin = reading.Resin!;
        Assert.Equal(450e3, resin.Kinetics.HeatOfReaction);
        Assert.Equal((0.001, 0.6), (resin.Kinetics.InitialConversion, resin.Kinetics.GelConversion));
        Assert.Null(resin.Viscosity);
        Assert.Equal(0.30, resin.HardenerByMass!.Value, 1e-12);
        Assert.Equal(new PotLifeStatement(3600, 0.1, 298.15), resin.PotLife);
        Assert.Equal(Certainty.Judgement, resin.Numbers["density_kg_per_m3"].Certainty);
        Assert.Equal(0, resin.Shrinkage);
        // What was changed in code is written without the old source.
        Assert.Contains("\"value\": 1200", Encoding.UTF8.GetString(Bytes(resin with { Density = 1200 })), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"glass_shape\": 0.369,", "", "incomplete-group", "$.glass_shape")]
    [InlineData(", \"pot_life_mass_g\": 100", "", "incomplete-group", "$.pot_life_mass_g")]
    [InlineData("\"pot_life_minutes\"", "\"viscosity_pa_s\": 0.5, \"pot_life_minutes\"", "incomplete-group", "$.viscosity_at_celsius")]
    [InlineData("\"rate_1_per_s\"", "\"rate_1\"", "unknown-field", "$.rate_1")]
    [InlineData("\"rate_1_per_s\"", "\"rate_1\"", "missing-field", "$.rate_1_per_s")]
    [InlineData("\"format\": 1,", "\"format\": 1, \"kind\": \"epoxy\",", "unknown-field", "$.kind")]
    [InlineData("\"heat_of_reaction_j_per_g\": 450", "\"heat_of_reaction_j_per_g\": 450000", "out-of-range", "$.heat_of_reaction_j_per_g")]
    [InlineData("\"heat_of_reaction_j_per_g\": 450", "\"heat_of_reaction_j_per_g\": \"450\"", "wrong-type", "$.heat_of_reaction_j_per_g")]
    [InlineData("54960", "25000", "rate-absurd", "$.rate_1_per_s")]
    [InlineData("\"rate_2_per_s\": 3574.1", "\"rate_2_per_s\": 0.1, \"initial_conversion\": 0.01", null, null)]
    [InlineData("\"glass_cured_celsius\": 91", "\"glass_cured_celsius\": 0", null, null)]
    [InlineData("\"glass_uncured_celsius\": -57, \"glass_cured_celsius\": 91", "\"glass_uncured_celsius\": 30, \"glass_cured_celsius\": 20", "glass-order", "$.glass_cured_celsius")]
    [InlineData("\"order_m\"", "\"initial_conversion\": 0.3, \"gel_conversion\": 0.3, \"order_m\"", "gelled-at-once", "$.initial_conversion")]
    [InlineData("\"heat_of_reaction_j_per_g\": 450,", "\"heat_of_reaction_j_per_g\": 700, ", null, null)]
    [InlineData("\"heat_capacity_j_per_kg_k\": 1700", "\"heat_capacity_j_per_kg_k\": 800", "heat-absurd", "$.heat_of_reaction_j_per_g")]
    public void Read_says_what_is_wrong_where_and_what_to_do(string from, string to, string? code, string? path)
    {
        Assert.Contains(from, Plain, StringComparison.Ordinal);
        ResinReading reading = ResinFile.Read(Encoding.UTF8.GetBytes(Plain.Replace(from, to, StringComparison.Ordinal)));
        if (code is null)
        {
            Assert.Empty(reading.Findings);
            return;
        }

        Assert.Null(reading.Resin);
        Finding finding = Assert.Single(reading.Findings, f => f.Code == code && f.Path == path);
        Assert.True(finding.IsError);
        Assert.NotEmpty(finding.Remedy);
    }

    [Fact]
    public void Densities_that_do_not_fit_each_other_are_a_caution_and_the_resin_is_read()
    {
        // 100 parts of 1150 and 30 of 970 make 130 / (100/1150 + 30/970) = 1103 kg/m³.
        ResinReading reading = ResinFile.Read(Encoding.UTF8.GetBytes(Plain.Replace("\"density_kg_per_m3\": 1100", "\"density_kg_per_m3\": 1250", StringComparison.Ordinal)));
        Assert.NotNull(reading.Resin);
        Finding finding = Assert.Single(reading.Findings);
        Assert.Equal("density-mismatch", finding.Code);
        Assert.Contains("1103", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"heat_of_reaction_j_per_g\": 450", "\"heat_of_reaction_j_per_g\": 40", "$.heat_of_reaction_j_per_g", "50")]
    [InlineData("\"order_n\": 1.536", "\"order_n\": 0", "$.order_n", "0.5")]
    [InlineData("\"conductivity_w_per_m_k\": 0.2", "\"conductivity_w_per_m_k\": 1.9", "$.conductivity_w_per_m_k", "1.5")]
    [InlineData("\"glass_shape\": 0.369", "\"glass_shape\": 0.02", "$.glass_shape", "0.05")]
    public void Numbers_unusual_for_a_resin_are_a_caution_and_the_resin_is_read(string from, string to, string path, string limit)
    {
        ResinReading reading = ResinFile.Read(Encoding.UTF8.GetBytes(Plain.Replace(from, to, StringComparison.Ordinal)));
        Assert.NotNull(reading.Resin);
        Finding finding = Assert.Single(reading.Findings);
        Assert.Equal(("unusual", path, limit, false), (finding.Code, finding.Path, finding.Limit, finding.IsError));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{}")]
    public void Read_refuses_what_is_no_resin(string text)
    {
        ResinReading reading = ResinFile.Read(Encoding.UTF8.GetBytes(text));
        Assert.Null(reading.Resin);
        Assert.NotEmpty(reading.Findings);
    }

    private static byte[] Bytes(ResinSystem resin)
    {
        using MemoryStream stream = new();
        ResinFile.Write(stream, resin);
        return stream.ToArray();
    }
}
