namespace Finwright.Design.Tests.Migration;

public sealed class Format1Tests
{
    private const string Old = """
        {
          "format": 1,
          "name": "Old oyster",
          "blade": {
            "outline": { "family": "raked", "span_cm": 24.7, "root_chord_cm": 10.1 },
            "stations": [
              { "at": 0, "thickness_percent": 10 },
              { "at": 0.07, "twist_deg": -1.5 },
              { "at": 1 }
            ]
          }
        }
        """;

    [Fact]
    public void Read_of_format_1_gives_the_design_in_the_present_format()
    {
        DesignReading reading = DesignReader.Read(Old);

        Finding note = Assert.Single(reading.Findings);
        Assert.Equal(("older-format", Severity.Note, 2), (note.Code, note.Severity, note.Line));
        FinDesign design = reading.Design!;
        Assert.Equal(FinDesign.CurrentFormat, design.Format);
        // Centimetres to millimetres and fractions to percent, to the last digit.
        Assert.Equal(247, design.Shape.Outline.SpanMm);
        Assert.Equal(101, design.Shape.Outline.RootChordMm);
        Assert.Equal([0, 7, 100], design.Shape.Sections.Select(section => section.AtPercent));
        Assert.Equal(-1.5, design.Shape.Sections[1].TwistDegrees);
    }

    [Fact]
    public void Read_of_format_1_written_anew_reads_as_format_2_without_a_note()
    {
        FinDesign design = DesignReader.Read(Old).Design!;

        DesignReading again = DesignReader.Read(DesignWriter.Write(design));

        Assert.Empty(again.Findings);
        Assert.Equal(DesignWriter.Write(design), DesignWriter.Write(again.Design!));
    }

    [Fact]
    public void Read_of_format_1_knows_the_lines_of_the_older_file()
    {
        DesignReading reading = DesignReader.Read(Old.Replace("-1.5", "-45", StringComparison.Ordinal));

        Finding finding = reading.Findings.Single(finding => finding.IsError);
        Assert.Equal(("out-of-range", "$.shape.sections[1].twist_degrees", 8), (finding.Code, finding.Path, finding.Line));
    }

    [Theory]
    [InlineData("\"blade\": 3", "$.shape")]
    [InlineData("\"blade\": { \"outline\": { \"family\": \"raked\", \"span_cm\": \"24\", \"root_chord_cm\": 10 } }", "$.shape.outline.span_mm")]
    [InlineData("\"blade\": { \"outline\": { \"family\": \"raked\", \"span_cm\": 1e999, \"root_chord_cm\": 10 } }", "$.shape.outline.span_mm")]
    [InlineData("\"blade\": { \"outline\": { \"family\": \"raked\", \"span_cm\": 1e300, \"root_chord_cm\": 10 } }", "$.shape.outline.span_mm")]
    [InlineData("\"blade\": { \"stations\": 7, \"outline\": { \"family\": \"raked\", \"span_cm\": 24, \"root_chord_cm\": 10 } }", "$.shape.sections")]
    public void Read_of_a_spoilt_format_1_says_what_is_wrong(string blade, string path) =>
        Assert.Contains(DesignReader.Read($$"""{ "format": 1, "name": "x", {{blade}} }""").Findings, finding => finding.IsError && finding.Path == path);

    [Theory]
    [InlineData("3", "newer-format")]
    [InlineData("1e30", "newer-format")]
    [InlineData("0", "out-of-range")]
    [InlineData("-1", "out-of-range")]
    [InlineData("1.5", "wrong-type")]
    [InlineData("\"2\"", "wrong-type")]
    [InlineData("null", "null-not-allowed")]
    public void Read_refuses_formats_that_do_not_exist(string format, string code)
    {
        Finding finding = Assert.Single(DesignReader.Read(Examples.Small.Replace("\"format\": 2", $"\"format\": {format}", StringComparison.Ordinal)).Findings);

        Assert.Equal((code, "$.format", 2), (finding.Code, finding.Path, finding.Line));
    }
}
