using System.Text;
using Finwright.Design;
using Finwright.Numerics;
using Finwright.Strength.Files;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Tests.Files;

public sealed class MaterialFileTests
{
    public static TheoryData<string> Names() => [.. MaterialLibrary.All.Select(m => m.Name)];

    [Fact]
    public void Library_has_every_kind_and_each_name_once()
    {
        Assert.Equal(MaterialLibrary.All.Count, MaterialLibrary.All.Select(m => m.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(
            [typeof(CastResin), typeof(Metal), typeof(PrintedPlastic), typeof(Rod), typeof(Sheet)],
            MaterialLibrary.All.Select(m => m.GetType()).Distinct().OrderBy(t => t.Name, StringComparer.Ordinal));
        Assert.Null(MaterialLibrary.Find("wood"));
        Assert.Contains("carbon-rod", Assert.Throws<ArgumentException>(() => MaterialLibrary.Get<Rod>("brass")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Write_then_read_gives_the_same_material(string name)
    {
        Material material = MaterialLibrary.Find(name)!;
        byte[] bytes = Bytes(material);
        MaterialReading reading = MaterialFile.Read(bytes);
        Assert.Empty(reading.Findings);
        Assert.Equal(bytes, Bytes(reading.Material!));
        Assert.Equal(material.GetType(), reading.Material!.GetType());
        Assert.Equal(material.Density, reading.Material.Density);
    }

    [Fact]
    public void Library_values_are_in_si_units()
    {
        PrintedPlastic petg = MaterialLibrary.Get<PrintedPlastic>("petg-printed");
        Assert.Equal(new Ranged(2.0e9, 1.7e9, 2.3e9), petg.ModulusAlong);
        Assert.Equal(65 + 273.15, petg.SofteningTemperature.Value, 1e-9);
        // ISO 3506-1 as reproduced on torqbolt.com: class 70, 450 and 700 MPa.
        Metal bolt = MaterialLibrary.Get<Metal>("stainless-a4-70");
        Assert.Equal(450e6, bolt.Yield.Value, 1.0);
        Assert.Equal(700e6, bolt.Ultimate.Value, 1.0);
    }

    [Fact]
    public void Printed_standing_is_softer_and_weaker_along_the_span()
    {
        PrintedPlastic petg = MaterialLibrary.Get<PrintedPlastic>("petg-printed");
        Elasticity standing = petg.Elasticity(PrintDirection.Standing), lying = petg.Elasticity(PrintDirection.Lying);
        Assert.Equal(petg.ModulusAlong.Value, standing.ModulusX);
        Assert.Equal(petg.ModulusAcross.Value, standing.ModulusY);
        Assert.Equal(petg.ModulusAlong.Value, lying.ModulusY);
        Assert.Equal(standing.PoissonXY / standing.ModulusX, standing.PoissonYX / standing.ModulusY, 1e-24);
        Assert.Equal(petg.StrengthAcross, petg.StrengthAlongSpan(PrintDirection.Standing));
        Assert.Equal(petg.StrengthAlong, petg.StrengthAlongSpan(PrintDirection.Lying));
    }

    [Theory]
    [InlineData("\"modulus_gpa\"", "\"modulus_gap\"", "unknown-field", "$.modulus_gap")]
    [InlineData("\"modulus_gpa\"", "\"modulus_gap\"", "missing-field", "$.modulus_gpa")]
    [InlineData("\"low\": 190", "\"low\": 195", "range-order", "$.modulus_gpa")]
    [InlineData("\"low\": 190", "\"low\": \"190\"", "wrong-type", "$.modulus_gpa.low")]
    [InlineData("\"low\": 190", "\"lowest\": 190", "unknown-field", "$.modulus_gpa.lowest")]
    [InlineData("\"low\": 190", "\"low\": 1e400", "wrong-type", "$.modulus_gpa.low")]
    [InlineData("\"low\": 190", "\"value\": 190", "duplicate-field", "$.modulus_gpa.value")]
    [InlineData("\"value\": 193", "\"value\": 193000", "out-of-range", "$.modulus_gpa.value")]
    [InlineData("\"from-memory\"", "\"hearsay\"", "unknown-word", "$.modulus_gpa.certainty")]
    [InlineData("\"metal\"", "\"wood\"", "unknown-word", "$.kind")]
    [InlineData("\"metal\"", "\"rod\"", "unknown-field", "$.poisson")]
    [InlineData("\"format\": 1", "\"format\": 2", "unknown-format", "$.format")]
    [InlineData("\"stainless-a4-80\"", "\"My bolt\"", "bad-name", "$.name")]
    [InlineData("\"title\": ", "\"title\": 5, \"titel\": ", "wrong-type", "$.title")]
    [InlineData("{", "[", "not-json", "$")]
    [InlineData("{", "[{", "not-json", "$")]
    public void Read_says_what_is_wrong_where_and_what_to_do(string from, string to, string code, string path)
    {
        string text = Encoding.UTF8.GetString(Bytes(MaterialLibrary.Find("stainless-a4-80")!));
        int at = text.IndexOf(from, StringComparison.Ordinal);
        MaterialReading reading = MaterialFile.Read(Encoding.UTF8.GetBytes(string.Concat(text.AsSpan(0, at), to, text.AsSpan(at + from.Length))));
        Assert.Null(reading.Material);
        Finding finding = Assert.Single(reading.Findings, f => f.Code == code && f.Path == path);
        Assert.NotEmpty(finding.Message);
        Assert.NotEmpty(finding.Remedy);
        Assert.True(finding.IsError);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{\"kind\": \"metal\"} {}")]
    [InlineData("{\"kind\": {\"a\": {\"b\": {\"c\": {\"d\": {\"e\": {\"f\": {\"g\": {\"h\": 1}}}}}}}}}")]
    public void Read_refuses_what_is_no_material(string text)
    {
        MaterialReading reading = MaterialFile.Read(Encoding.UTF8.GetBytes(text));
        Assert.Null(reading.Material);
        Assert.NotEmpty(reading.Findings);
    }

    [Fact]
    public void Read_refuses_bytes_that_are_no_text_and_files_that_are_too_large()
    {
        string text = Encoding.UTF8.GetString(Bytes(MaterialLibrary.Find("brass")!));
        byte[] broken = Encoding.UTF8.GetBytes(text.Replace("\"Brass\"", "\"Br#ss\"", StringComparison.Ordinal));
        broken[Array.IndexOf(broken, (byte)'#')] = 0xFF;
        Assert.Equal("not-json", Assert.Single(MaterialFile.Read(broken).Findings).Code);
        Assert.Equal("too-large", Assert.Single(MaterialFile.Read(new byte[300 * 1024]).Findings).Code);
    }

    [Fact]
    public void Read_accepts_a_byte_order_mark_comments_and_trailing_commas()
    {
        string text = Encoding.UTF8.GetString(Bytes(MaterialLibrary.Find("brass")!));
        text = "\uFEFF// my brass\n" + text.Insert(text.LastIndexOf('}'), ",\n");
        Assert.Empty(MaterialFile.Read(Encoding.UTF8.GetBytes(text)).Findings);
    }

    [Fact]
    public void Number_may_stand_alone_and_then_has_no_range_and_no_source()
    {
        string text = Encoding.UTF8.GetString(Bytes(MaterialLibrary.Find("brass")!));
        int at = text.IndexOf("\"density_kg_per_m3\"", StringComparison.Ordinal);
        MaterialReading reading = MaterialFile.Read(Encoding.UTF8.GetBytes(text[..at] + "\"density_kg_per_m3\": 8400 }"));
        Assert.Empty(reading.Findings);
        Assert.Equal(Ranged.Exact(8400), reading.Material!.Density);
        Assert.Equal(Certainty.Judgement, reading.Material.Sources["density_kg_per_m3"].Certainty);
        Assert.Equal("out-of-range", Assert.Single(MaterialFile.Read(Encoding.UTF8.GetBytes(text[..at] + "\"density_kg_per_m3\": 8.4 }")).Findings).Code);
    }

    private static byte[] Bytes(Material material)
    {
        using MemoryStream stream = new();
        MaterialFile.Write(stream, material);
        return stream.ToArray();
    }
}
