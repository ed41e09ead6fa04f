using System.Text;

namespace Finwright.Design.Tests;

public sealed class DesignReaderTests
{
    [Theory]
    [InlineData(Examples.Small)]
    [InlineData(Examples.Full)]
    public void Read_a_good_design_finds_nothing(string text)
    {
        DesignReading reading = DesignReader.Read(text);

        Assert.Empty(reading.Findings);
        Assert.NotNull(reading.Design);
    }

    [Fact]
    public void Read_takes_each_value_from_its_key()
    {
        FinDesign design = DesignReader.Read(Examples.Full).Design!;

        Assert.Equal("Ebb tide, wide", design.Name);
        Assert.Equal(74.5, design.Brief.RiderMassKg);
        Assert.Equal(310, design.Brief.SideForceN);
        Assert.Equal(4.5, design.Brief.GettingGoingSpeedMPerS);
        Assert.Equal(290, design.Shape.Outline.AreaCm2);
        Assert.Equal(OutlineFamily.WideDelta, design.Shape.Outline.Family);
        Assert.Equal("naca-0010-35 estuary naca-16-009", string.Join(" ", design.Shape.Sections.Select(section => section.Section)));
        Assert.Equal([0.7, -0.03], design.Shape.ImportedSections[0].Points[7]);
        Assert.Equal(Thread.M6, design.Base.Measured!.Bolts[1].Thread);
        Assert.Equal(4, design.Base.Measured.Bolts[0].LeanDegrees);
        Assert.Equal(NutKind.Square, design.Hardware.ClampRods[1].Nut);
        Assert.Equal(ChordPlace.LeadingEdge, design.Prove.AtChord);
    }

    [Fact]
    public void Read_leaves_what_is_not_given_at_its_default()
    {
        FinDesign design = DesignReader.Read(Examples.Small).Design!;

        Assert.Equal(new Brief(), design.Brief);
        Assert.Equal(new Print(), design.Print);
        Assert.Null(design.Shape.Strip);
        Assert.Equal([0, 100], design.Shape.Sections.Select(section => section.AtPercent));
    }

    [Fact]
    public void Read_reports_everything_at_once_with_path_and_line()
    {
        DesignReading reading = DesignReader.Read("""
            {
              "name": "Knot",
              "colour": "blue",
              "brief": {
                "rider_mass_kg": "80 kg",
                "weed": "lots",
                "weed": "none",
                "side_force_n": 1e999,
                "water": null
              },
              "shape": {
                "outline": { "family": "raked", "span_cm": 30,
                  "span_mm": -300, "root_chord_mm": 100 },
                "sections": [
                  { "at_percent": 0 },
                  { "thickness_percent": 8 }
                ]
              },
              "hardware": { "clamp_rods": 2 },
              "print": { "walls": 2.5, "bed_x_mm": 20 }
            }
            """);

        Assert.Null(reading.Design);
        Assert.Equal(
            [
                ("unknown-field", "$.colour", 3),
                ("wrong-type", "$.brief.rider_mass_kg", 5),
                ("unknown-word", "$.brief.weed", 6),
                ("duplicate-field", "$.brief.weed", 7),
                ("not-finite", "$.brief.side_force_n", 8),
                ("null-not-allowed", "$.brief.water", 9),
                ("unknown-field", "$.shape.outline.span_cm", 12),
                ("out-of-range", "$.shape.outline.span_mm", 13),
                ("missing-field", "$.shape.sections[1].at_percent", 16),
                ("wrong-type", "$.hardware.clamp_rods", 19),
                ("wrong-type", "$.print.walls", 20),
                ("out-of-range", "$.print.bed_x_mm", 20),
            ],
            reading.Findings.Select(finding => (finding.Code, finding.Path, finding.Line!.Value)));
        Assert.All(reading.Findings, finding => Assert.True(finding.IsError && finding.Message.Length > 0 && finding.Remedy.Length > 0));
    }

    [Fact]
    public void Read_says_value_and_limit_of_a_number_out_of_range()
    {
        Finding finding = Assert.Single(DesignReader.Read(Examples.Small.Replace("240", "-12.5", StringComparison.Ordinal)).Findings);

        Assert.Equal("-12.5 mm", finding.Value);
        Assert.Equal("40 mm", finding.Limit);
        Assert.Contains("\"span_mm\" is -12.5 mm", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("span_cm", "Did you mean \"span_mm\"?")]
    [InlineData("span", "Did you mean \"span_mm\"?")]
    [InlineData("sapn_mm", "Did you mean \"span_mm\"?")]
    [InlineData("SPAN_MM", "Write it in small letters: \"span_mm\".")]
    [InlineData("strip", "It belongs in $.shape: move it there.")]
    public void Read_says_which_field_an_unknown_name_may_mean(string key, string remedy)
    {
        string text = $$"""{ "name": "x", "shape": { "outline": { "family": "raked", "span_mm": 300, "root_chord_mm": 100, "{{key}}": 1 } } }""";

        Assert.Equal(remedy, Assert.Single(DesignReader.Read(text).Findings).Remedy);
    }

    [Fact]
    public void Read_lists_the_known_names_when_none_is_near() =>
        Assert.Contains("at_span_percent", Assert.Single(DesignReader.Read(Examples.Small.Insert(1, "\"prove\": { \"zzzzzzzz\": 1 },")).Findings).Remedy, StringComparison.Ordinal);

    [Fact]
    public void Read_lists_the_words_when_one_is_unknown()
    {
        Finding finding = Assert.Single(DesignReader.Read(Examples.Small.Replace("steep-rake", "steep rake", StringComparison.Ordinal)).Findings);

        Assert.Equal("unknown-word", finding.Code);
        Assert.Equal("Did you mean \"steep-rake\"? Choose one of: upright, raked, steep-rake, wide-delta, free.", finding.Remedy);
    }

    [Fact]
    public void Read_keeps_the_design_when_only_a_value_with_a_default_is_wrong()
    {
        DesignReading reading = DesignReader.Read(Examples.Small.Insert(1, "\"prove\": { \"mass_kg\": \"12\" },"));

        Assert.True(reading.HasErrors);
        Assert.Equal(15, reading.Design!.Prove.MassKg);
    }

    [Fact]
    public void Read_does_not_judge_by_values_it_could_not_read()
    {
        // The rods cannot be read, so nothing may be said about there being none.
        DesignReading reading = DesignReader.Read(Examples.Small.Insert(1, "\"base\": { \"fixing\": \"clamp-rods\" }, \"hardware\": null,"));

        Assert.Equal("null-not-allowed", Assert.Single(reading.Findings).Code);
    }

    [Fact]
    public void LineOf_knows_the_line_of_each_value_given_and_no_other()
    {
        DesignReading reading = DesignReader.Read(Examples.Small);

        Assert.Equal(5, reading.LineOf("$.shape.outline.span_mm"));
        Assert.Equal(1, reading.LineOf("$"));
        Assert.Null(reading.LineOf("$.shape.sections[0].at_percent"));
        Assert.Null(reading.LineOf("$.shape.outline.span_mm[3]"));
        Assert.Null(reading.LineOf("nonsense"));
        Assert.Null(reading.LineOf("$.shape["));
        Assert.Null(reading.LineOf(""));
    }

    [Fact]
    public void Locate_gives_a_finding_the_line_of_its_value_or_of_the_section_where_it_is_missing()
    {
        DesignReading reading = DesignReader.Read(Examples.Small);
        Finding At(string path) => reading.Locate([new Finding("x", Severity.Note, path, "m", "r")])[0];

        Assert.Equal(5, At("$.shape.outline.span_mm").Line);
        Assert.Equal(4, At("$.shape.strip.sheet_mm").Line);
        Assert.Null(At("$.pour.ports").Line);
    }

    [Fact]
    public void ReadFile_remembers_the_folder_and_takes_a_byte_order_mark()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        string path = Path.Combine(folder, "a.fin.json");
        File.WriteAllText(path, Examples.Small, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));

        DesignReading reading = DesignReader.ReadFile(path);
        Directory.Delete(folder, recursive: true);

        Assert.Empty(reading.Findings);
        Assert.Equal(folder, reading.Folder);
    }

    [Fact]
    public void ReadFile_of_a_missing_file_throws_for_the_edge_to_catch() =>
        Assert.Throws<FileNotFoundException>(() => DesignReader.ReadFile(Path.Combine(Path.GetTempPath(), "no-such-fin.fin.json")));
}
