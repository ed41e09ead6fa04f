using System.Text;

namespace Finwright.Design.Tests;

public sealed class PartSettingsReaderTests
{
    [Fact]
    public void Read_takes_the_groups_of_a_design_file_and_ports_of_its_own()
    {
        PartSettingsReading reading = Read("""{ "format": 1, "name": "block", "print": { "walls": 2 }, "pour": { "cooling": "still-air" }, "ports": [ { "x_mm": 1, "y_mm": 2.5, "z_mm": 3 } ] }""");
        Assert.Empty(reading.Findings);
        Assert.Equal(("block", 2, Cooling.StillAir), (reading.Settings!.Name, reading.Settings.Print.Walls, reading.Settings.Pour.Cooling));
        Assert.Equal(new MeshPort { XMm = 1, YMm = 2.5, ZMm = 3 }, Assert.Single(reading.Settings.Ports));
    }

    [Fact]
    public void Read_an_empty_group_gives_every_default()
    {
        PartSettingsReading reading = Read("{}");
        Assert.Empty(reading.Findings);
        Assert.Equal(new Print(), reading.Settings!.Print);
    }

    [Theory]
    [InlineData("""{ "shape": {} }""", "unknown-field", "$.shape")]
    [InlineData("""{ "print": { "walls": 40 } }""", "out-of-range", "$.print.walls")]
    [InlineData("""{ "ports": [ { "x_mm": 1, "y_mm": 2 } ] }""", "missing-field", "$.ports[0].z_mm")]
    [InlineData("""{ "pour": { "system": { "name": "a", "content": "b" } } }""", "resin-given-twice", "$.pour.system")]
    [InlineData("""[]""", "wrong-root", "$")]
    [InlineData("""{ "format": 2 }""", "out-of-range", "$.format")]
    public void Read_says_what_is_wrong_and_where(string text, string code, string path)
    {
        PartSettingsReading reading = Read(text);
        Assert.True(reading.HasErrors);
        Finding finding = Assert.Single(reading.Findings, f => f.Code == code);
        Assert.Equal(path, finding.Path);
        Assert.Equal(1, finding.Line);
        Assert.NotEmpty(finding.Remedy);
    }

    [Fact]
    public void Read_junk_is_refused_with_a_reason()
    {
        foreach (byte[] bytes in (byte[][])[[], [0xFF, 0xFE, 0x00], Encoding.UTF8.GetBytes("{ \"print\": "), [0x7B, 0x00, 0x7D]])
        {
            PartSettingsReading reading = PartSettingsReader.Read(bytes);
            Assert.Null(reading.Settings);
            Assert.True(reading.HasErrors);
        }
    }

    [Fact]
    public void The_example_in_the_documentation_reads_without_a_finding()
    {
        string text = File.ReadAllText(Path.Combine(Repository.Root, "docs", "part-settings.md"));
        int start = text.IndexOf("```json", StringComparison.Ordinal) + "```json".Length;
        PartSettingsReading reading = Read(text[start..text.IndexOf("```", start, StringComparison.Ordinal)]);
        Assert.Empty(reading.Findings);
        Assert.Equal(2, reading.Settings!.Ports.Count);
    }

    private static PartSettingsReading Read(string text) => PartSettingsReader.Read(Encoding.UTF8.GetBytes(text));
}
