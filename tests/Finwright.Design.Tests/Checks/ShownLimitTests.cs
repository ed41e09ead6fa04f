using Finwright.Design.Fields;

namespace Finwright.Design.Tests.Checks;

/// <summary>A rule that is broken shows the number that breaks it and the number it is held against; at the limit itself it is silent.</summary>
public sealed class ShownLimitTests
{
    private const string FreeEdges = """
        "leading_edge": [ { "depth_mm": 0, "aft_mm": 0 }, { "depth_mm": 100, "aft_mm": 5 }, { "depth_mm": 200, "aft_mm": 20 }, { "depth_mm": 300, "aft_mm": 60 } ],
        "trailing_edge": [ { "depth_mm": 0, "aft_mm": 110 }, { "depth_mm": 100, "aft_mm": 110 }, { "depth_mm": 200, "aft_mm": 105 }, { "depth_mm": 300, "aft_mm": 95 } ]
        """;

    // Values and limits are those that the file names or that the rule in docs/design-file.md gives; the line's width is 0.45 mm unless said otherwise.
    [Theory]
    [InlineData("\"brief\": { \"getting_going_speed_m_per_s\": 6, \"cruise_speed_m_per_s\": 5.9 }", "5.9 m/s", "6 m/s")]
    [InlineData("\"brief\": { \"cruise_speed_m_per_s\": 13, \"top_speed_m_per_s\": 12.5 }", "12.5 m/s", "13 m/s")]
    [InlineData("\"brief\": { \"board_width_mm\": 500, \"tail_width_mm\": 501 }", "501 mm", "500 mm")]
    [InlineData("\"brief\": { \"draught_limit_mm\": 299 }", "300 mm", "299 mm")]
    [InlineData("\"parts\": { \"cuts\": [ { \"at_depth_mm\": 120 }, { \"at_depth_mm\": 110 } ] }", "110 mm", "120 mm")]
    [InlineData("\"parts\": { \"cuts\": [ { \"at_depth_mm\": 310 } ] }", "310 mm", "300 mm")]
    [InlineData("\"print\": { \"layer_mm\": 0.37, \"line_width_mm\": 0.45 }", "0.37 mm", "0.36 mm")]
    // 80 - 2 x 25 = 30 mm.
    [InlineData("\"print\": { \"bed_x_mm\": 80, \"edge_margin_mm\": 25 }", "30 mm", "40 mm")]
    [InlineData("\"print\": { \"bed_y_mm\": 81, \"edge_margin_mm\": 25 }", "31 mm", "40 mm")]
    // Two lines of 0.45 mm.
    [InlineData("\"print\": { \"walls\": 2, \"line_width_mm\": 0.45 }, \"pour\": { \"ports\": { \"depth_mm\": 1 } }", "1 mm", "0.9 mm")]
    [InlineData("\"pour\": { \"stages\": [ { \"to_percent\": 60, \"after_hours\": 0 }, { \"to_percent\": 50, \"after_hours\": 5 }, { \"to_percent\": 100, \"after_hours\": 9 } ] }", "50 %", "60 %")]
    [InlineData("\"pour\": { \"stages\": [ { \"to_percent\": 60, \"after_hours\": 0 }, { \"to_percent\": 80, \"after_hours\": 5 }, { \"to_percent\": 100, \"after_hours\": 4 } ] }", "4 h", "5 h")]
    [InlineData("\"pour\": { \"stages\": [ { \"to_percent\": 100, \"after_hours\": 1 } ] }", "1 h", "0 h")]
    [InlineData("\"pour\": { \"stages\": [ { \"to_percent\": 90, \"after_hours\": 0 } ] }", "90 %", "100 %")]
    public void Check_shows_number_and_limit(string fields, string value, string limit) => AssertShows(Design(fields), value, limit);

    [Theory]
    [InlineData("\"strip\": { \"from_percent\": 50, \"to_percent\": 40 }", "40 %", "50 %")]
    [InlineData("\"flange\": { \"overhang_mm\": 5, \"fillet_mm\": 5.01 }", "5.01 mm", "5 mm")]
    [InlineData("\"sections\": [ { \"at_percent\": 1 }, { \"at_percent\": 100 } ]", "1 %", "0 %")]
    [InlineData("\"sections\": [ { \"at_percent\": 0 }, { \"at_percent\": 99 } ]", "99 %", "100 %")]
    [InlineData("\"sections\": [ { \"at_percent\": 0 }, { \"at_percent\": 60 }, { \"at_percent\": 40 }, { \"at_percent\": 100 } ]", "40 %", "60 %")]
    [InlineData("\"sections\": [ { \"at_percent\": 0, \"section\": \"naca-001\" }, { \"at_percent\": 100 } ]", "naca-001", null)]
    public void Check_shows_number_and_limit_of_the_shape(string shape, string value, string? limit) => AssertShows(Design("", shape), value, limit);

    [Theory]
    [InlineData("{ \"depth_mm\": 100, \"aft_mm\": 5 },", "", "3 points", "4 points")]
    [InlineData("{ \"depth_mm\": 0, \"aft_mm\": 0 }", "{ \"depth_mm\": 1, \"aft_mm\": 0 }", "1 mm", "0 mm")]
    [InlineData("{ \"depth_mm\": 200, \"aft_mm\": 105 }", "{ \"depth_mm\": 99, \"aft_mm\": 105 }", "99 mm", "100 mm")]
    [InlineData("{ \"depth_mm\": 300, \"aft_mm\": 95 }", "{ \"depth_mm\": 299, \"aft_mm\": 95 }", "299 mm", "300 mm")]
    public void Check_shows_number_and_limit_of_a_free_outline(string good, string bad, string value, string limit) =>
        AssertShows(Free(FreeEdges.Replace(good, bad, StringComparison.Ordinal)), value, limit);

    [Theory]
    // 150 - 2 x 40 tan 10° = 135.9 mm.
    [InlineData("\"deep_length_mm\": 137, \"front_angle_degrees\": 10, \"rear_angle_degrees\": 10", "137 mm", "135.9 mm within 0.5 mm")]
    [InlineData("\"deep_length_mm\": 135.3, \"front_angle_degrees\": 10, \"rear_angle_degrees\": 10", "135.3 mm", "135.9 mm within 0.5 mm")]
    // (150 - 69) / (40 + 40) is the tangent of 45.4°.
    [InlineData("\"deep_length_mm\": 69", "45.4 degrees, 45.4 degrees", "-5 to 45 degrees")]
    [InlineData("\"deep_length_mm\": 151", "151 mm", "150 mm")]
    // 150 - 100 tan 45° - 40 tan 45° = 10 mm.
    [InlineData("\"front_angle_degrees\": 45, \"rear_angle_degrees\": 45, \"rear_depth_mm\": 100", "10 mm", "14 mm")]
    [InlineData("\"deep_length_mm\": 140, \"deep_width_mm\": 17", "17 mm", "16 mm")]
    [InlineData("\"deep_length_mm\": 140, \"rear_depth_mm\": 20, \"corner_radius_mm\": 21", "21 mm", "20 mm")]
    [InlineData("\"front_depth_mm\": 20, \"deep_length_mm\": 140, \"rear_depth_mm\": 40, \"corner_radius_mm\": 21", "21 mm", "20 mm")]
    [InlineData("\"deep_length_mm\": 140, \"bolts\": [ { \"from_front_mm\": 150 } ]", "150 mm", "150 mm")]
    [InlineData("\"deep_length_mm\": 140, \"bolts\": [ { \"from_front_mm\": 40 }, { \"from_front_mm\": 53.5 } ]", "13.5 mm", "14 mm")]
    public void Check_shows_number_and_limit_of_a_measured_box(string measurements, string value, string limit) => AssertShows(MeasuredBox(measurements), value, limit);

    [Theory]
    [InlineData("\"deep_length_mm\": 140, \"bolts\": [ { \"from_front_mm\": 40 }, { \"from_front_mm\": 54 } ]")]
    [InlineData("\"deep_length_mm\": 140, \"bolts\": [ { \"from_front_mm\": 149.9 } ]")]
    [InlineData("\"deep_length_mm\": 140, \"deep_width_mm\": 16")]
    // 0.5 mm is what rule and protractor may disagree by: 150 - 2 x 40 tan 10° = 135.89 mm.
    [InlineData("\"deep_length_mm\": 136.3, \"front_angle_degrees\": 10, \"rear_angle_degrees\": 10")]
    [InlineData("\"deep_length_mm\": 135.5, \"front_angle_degrees\": 10, \"rear_angle_degrees\": 10")]
    // 150 - 40 tan 40° - 40 tan x = 96 gives 27.1° behind, and the same in front.
    [InlineData("\"deep_length_mm\": 96, \"front_angle_degrees\": 40")]
    [InlineData("\"deep_length_mm\": 96, \"rear_angle_degrees\": 40")]
    public void Check_takes_a_measured_box_up_to_its_limits(string measurements) => Assert.Empty(DesignReader.Read(MeasuredBox(measurements)).Findings);

    [Theory]
    // 150 - 50 = 100 mm off in all, 40 tan 45° of it in front: 60 mm over a depth of 30 mm behind, 63.4°.
    [InlineData("\"deep_length_mm\": 50, \"front_angle_degrees\": 45, \"rear_depth_mm\": 30", "45 degrees, 63.4 degrees")]
    // Likewise 100 - 30 tan 45° = 70 mm over a depth of 40 mm in front, 60.3°.
    [InlineData("\"deep_length_mm\": 50, \"rear_angle_degrees\": 45, \"rear_depth_mm\": 30", "60.3 degrees, 45 degrees")]
    public void Check_finds_the_lean_that_was_not_given(string measurements, string leans) => AssertShows(MeasuredBox(measurements), leans, "-5 to 45 degrees");

    [Fact]
    public void Check_takes_edges_that_end_a_hundredth_apart_for_one_depth()
    {
        const string End = "{ \"depth_mm\": 300, \"aft_mm\": 95 }";

        Assert.Empty(DesignReader.Read(Free(FreeEdges.Replace(End, "{ \"depth_mm\": 300.009, \"aft_mm\": 95 }", StringComparison.Ordinal))).Findings);
        Assert.Empty(DesignReader.Read(Free("\"span_mm\": 300.009, " + FreeEdges)).Findings);
    }

    [Fact]
    public void Check_takes_a_fillet_as_wide_as_its_flange() =>
        Assert.Empty(DesignReader.Read(Design("", "\"flange\": { \"overhang_mm\": 5, \"fillet_mm\": 5 }")).Findings);

    [Theory]
    [InlineData(8, true)]
    [InlineData(9, false)]
    public void Check_counts_items_of_a_list_made_in_code(int rods, bool isFine)
    {
        // At most eight clamp rods: docs/design-file.md.
        FinDesign design = Built() with
        {
            Base = new Base { Fixing = Fixing.ClampRods },
            Hardware = new Hardware { ClampRods = [.. Enumerable.Range(0, rods).Select(i => new ClampRod { FromFrontMm = 10 + 10 * i })] },
        };

        IEnumerable<Finding> tooMany = DesignValidation.Check(design).Where(finding => finding.Code == "too-many-items");

        if (isFine)
            Assert.Empty(tooMany);
        else
            Assert.Equal(("$.hardware.clamp_rods", "9 items", "8 items"), tooMany.Select(finding => (finding.Path, finding.Value, finding.Limit)).Single());
    }

    [Theory]
    [InlineData("\"brief\": { \"draught_limit_mm\": 250.5 }", "deeper-than-spot", "Take 49.5 mm off the span")]
    // 80 % of 0.5 mm.
    [InlineData("\"print\": { \"layer_mm\": 0.41, \"line_width_mm\": 0.5 }", "layer-too-tall", "more than 80 % of the line's width of 0.5 mm")]
    [InlineData("\"print\": { \"layer_mm\": 0.41, \"line_width_mm\": 0.5 }", "layer-too-tall", "Print layers of at most 0.4 mm")]
    [InlineData("\"pour\": { \"stages\": [ { \"to_percent\": 60, \"after_hours\": 0 }, { \"to_percent\": 50, \"after_hours\": 5 } ] }", "pours-not-rising", "Pour 2 reaches 50 %, no higher than pour 1 with 60 %")]
    [InlineData("\"pour\": { \"stages\": [ { \"to_percent\": 60, \"after_hours\": 0 }, { \"to_percent\": 80, \"after_hours\": 5 }, { \"to_percent\": 100, \"after_hours\": 4 } ] }", "pours-not-later", "Pour 3 comes after 4 h, no later than pour 2 with 5 h")]
    public void Check_words_the_numbers_as_they_are(string fields, string code, string words) => AssertSays(Design(fields), code, words);

    [Fact]
    public void Check_words_places_as_they_are()
    {
        AssertSays(Design("", "\"sections\": [ { \"at_percent\": 0 } ]"), "too-few-stations", "There is 1 station;");
        AssertSays(Design("", "\"sections\": []"), "too-few-stations", "There are no stations;");
        AssertSays(Design("", "\"sections\": [ { \"at_percent\": 0 }, { \"at_percent\": 60 }, { \"at_percent\": 40 }, { \"at_percent\": 100 } ]"), "stations-out-of-order", "stands at 40 %, before the one at 60 %");
        AssertSays(Design("", "\"sections\": [ { \"at_percent\": 0 }, { \"at_percent\": 60 }, { \"at_percent\": 60 }, { \"at_percent\": 100 } ]"), "stations-out-of-order", "Two stations stand at 60 %");
        AssertSays(Free(FreeEdges.Replace("{ \"depth_mm\": 200, \"aft_mm\": 105 }", "{ \"depth_mm\": 99, \"aft_mm\": 105 }", StringComparison.Ordinal)), "edge-turns-back", "from 100 mm to 99 mm");
        AssertSays(MeasuredBox("\"deep_length_mm\": 140, \"bolts\": [ { \"from_front_mm\": 40 }, { \"from_front_mm\": 53.5 } ]"), "bolts-too-near", "stands 13.5 mm behind the one before");
    }

    [Theory]
    [InlineData("\"print\": { \"layer_mm\": 0.4, \"line_width_mm\": 0.5 }")]
    [InlineData("\"hardware\": { \"cavities\": [ { \"kind\": \"cylinder\", \"at_depth_mm\": 60, \"at_chord_percent\": 40, \"length_mm\": 20, \"room_mm\": 5 } ] }")]
    [InlineData("\"hardware\": { \"cavities\": [ { \"kind\": \"box\", \"at_depth_mm\": 60, \"at_chord_percent\": 40, \"length_mm\": 20, \"height_mm\": 20, \"room_mm\": 5 } ] }")]
    [InlineData("\"materials\": { \"rod\": { \"content\": \"{}\" } }, \"pour\": { \"system\": { \"content\": \"{}\" } }")]
    public void Check_is_silent_where_nothing_is_wrong(string fields) => Assert.Empty(DesignReader.Read(Design(fields)).Findings);

    [Theory]
    [InlineData("\"materials\": { \"rod\": { \"material\": \"carbon-rod\", \"content\": \"{}\" } }", "material-given-twice")]
    [InlineData("\"materials\": { \"rod\": { \"file\": \"own.material.json\", \"content\": \"{}\" } }", "material-given-twice")]
    [InlineData("\"pour\": { \"system\": { \"name\": \"laminating-slow\", \"content\": \"{}\" } }", "resin-given-twice")]
    [InlineData("\"pour\": { \"system\": { \"file\": \"own.resin.json\", \"content\": \"{}\" } }", "resin-given-twice")]
    public void Check_counts_the_text_within_the_design_as_a_source(string fields, string code) => Assert.Equal(code, DesignReader.Read(Design(fields)).Findings[0].Code);

    [Theory]
    [InlineData('*')]
    [InlineData('?')]
    [InlineData('"')]
    [InlineData('<')]
    [InlineData('>')]
    [InlineData('|')]
    [InlineData('~')]
    public void Check_refuses_a_file_name_that_some_system_does_not_take(char character)
    {
        // The marks that Windows forbids in names (from memory), and the home folder's.
        FinDesign design = Built() with { Materials = new Materials { Rod = new MaterialChoice { File = $"own{character}.material.json" } } };

        Assert.Equal("file-outside-folder", Assert.Single(DesignValidation.Check(design)).Code);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(30, false)]
    public void Check_cautions_about_glue_alone_unless_a_rod_reaches_into_the_base(double intoBase, bool isCautioned)
    {
        FinDesign design = Built() with
        {
            Base = new Base { Fixing = Fixing.BaseOnly },
            Hardware = new Hardware { CarbonRods = [new CarbonRod { RootChordPercent = 30, IntoBaseMm = intoBase }] },
        };

        Assert.Equal(isCautioned, DesignValidation.Check(design).Any(finding => finding.Code == "held-by-glue-alone"));
    }

    [Fact]
    public void Check_notes_what_a_family_or_a_flat_tip_does_not_use()
    {
        AssertNotUsed(Design("", "\"tip\": \"flat\""), null);
        AssertNotUsed(Design("", "\"tip_rounding_mm\": 3"), null);
        AssertNotUsed(Design("").Replace("110 }", "110, \"trailing_edge\": [ { \"depth_mm\": 0, \"aft_mm\": 110 } ] }", StringComparison.Ordinal), "$.shape.outline.trailing_edge");
        // The deeper edge counts: a span that says the same is no contradiction.
        AssertNotUsed(Free("\"span_mm\": 300, " + FreeEdges.Replace("{ \"depth_mm\": 300, \"aft_mm\": 95 }", "{ \"depth_mm\": 299, \"aft_mm\": 95 }", StringComparison.Ordinal)), null);

        static void AssertNotUsed(string text, string? path) => Assert.Equal(path, DesignReader.Read(text).Findings.SingleOrDefault(finding => finding.Code == "not-used")?.Path);
    }

    [Fact]
    public void Check_holds_the_deepest_point_of_a_free_outline_against_the_spot()
    {
        string outline = FreeEdges.Replace("{ \"depth_mm\": 300, \"aft_mm\": 95 }", "{ \"depth_mm\": 301, \"aft_mm\": 95 }", StringComparison.Ordinal);
        string text = $$"""{ "name": "Limit", "brief": { "draught_limit_mm": 300 }, "shape": { "outline": { "family": "free", {{outline}} } } }""";

        Finding finding = Assert.Single(DesignReader.Read(text).Findings, finding => finding.Code == "deeper-than-spot");

        Assert.Equal(("301 mm", "300 mm"), (finding.Value, finding.Limit));
        Assert.DoesNotContain(DesignReader.Read(text.Replace("301", "300", StringComparison.Ordinal)).Findings, finding => finding.Code == "deeper-than-spot");
    }

    [Fact]
    public void Check_takes_edges_that_run_level_for_a_while_and_says_when_one_is_missing()
    {
        Assert.Empty(DesignReader.Read(Free(FreeEdges.Replace("{ \"depth_mm\": 200, \"aft_mm\": 105 }", "{ \"depth_mm\": 100, \"aft_mm\": 105 }", StringComparison.Ordinal))).Findings);
        string one = FreeEdges[..FreeEdges.IndexOf(']', StringComparison.Ordinal)] + "]";
        Assert.Equal(["too-few-points"], DesignReader.Read(Free(one)).Findings.Select(finding => finding.Code));
        Assert.Equal(["too-few-points"], DesignReader.Read(Free(FreeEdges[(FreeEdges.IndexOf("\"trailing", StringComparison.Ordinal))..])).Findings.Select(finding => finding.Code));
        // The least span of any outline is enough for a free one.
        string shallow = FreeEdges;
        double least = RecordForm.Of(typeof(Outline)).Find("span_mm")!.Minimum!.Value;
        foreach ((int depth, double share) in new[] { (100, 0.3), (200, 0.6), (300, 1.0) })
            shallow = shallow.Replace($"\"depth_mm\": {depth}", $"\"depth_mm\": {share * least:R}", StringComparison.Ordinal);
        Assert.Empty(DesignReader.Read(Free(shallow)).Findings);
    }

    [Theory]
    [InlineData(8, true)]
    [InlineData(7, false)]
    public void Check_wants_eight_points_of_an_imported_section(int points, bool isFine)
    {
        FinDesign good = Built();
        ImportedSection own = new() { Name = "own", Points = [.. Enumerable.Range(0, points).Select(i => (double[])[Math.Abs(1 - 2.0 * i / (points - 1)), 0.05 * i])] };
        SectionStation[] stations = [new() { AtPercent = 0, Section = "own" }, new() { AtPercent = 100 }];

        Assert.Equal(!isFine, DesignValidation.Check(good with { Shape = good.Shape with { ImportedSections = [own], Sections = stations } }).Any(finding => finding.Code == "too-few-points"));
    }

    [Fact]
    public void Check_says_on_which_side_of_its_range_a_number_lies()
    {
        // 30 to 160 kg: docs/design-file.md.
        Finding low = Of(29), high = Of(161), none = Of(double.NaN);
        Assert.Equal(("29 kg", "30 kg"), (low.Value, low.Limit));
        Assert.Contains("the least accepted is 30 kg", low.Message, StringComparison.Ordinal);
        Assert.Equal(("161 kg", "160 kg"), (high.Value, high.Limit));
        Assert.Contains("the most accepted is 160 kg", high.Message, StringComparison.Ordinal);
        Assert.Equal("Choose a number from 30 to 160 kg.", high.Remedy);
        Assert.Equal("Give a number in kg.", none.Remedy);

        static Finding Of(double mass) => Assert.Single(DesignValidation.Check(Built() with { Brief = new Brief { RiderMassKg = mass } }));
    }

    [Fact]
    public void Check_reports_both_numbers_of_a_point()
    {
        FinDesign good = Built();
        ImportedSection own = new() { Name = "own", Points = [[3, -3], .. Enumerable.Range(0, 8).Select(i => (double[])[0.1 * i, 0])] };

        string[] paths = [.. DesignValidation.Check(good with { Shape = good.Shape with { ImportedSections = [own] } }).Where(finding => finding.Code == "out-of-range").Select(finding => finding.Path)];

        Assert.Equal(["$.shape.imported_sections[0].points[0][0]", "$.shape.imported_sections[0].points[0][1]"], paths);
    }

    [Fact]
    public void Check_counts_characters_of_a_text_made_in_code_and_looks_for_line_breaks_where_none_may_be()
    {
        // At most 60 characters: docs/design-file.md.
        Assert.Empty(DesignValidation.Check(Built() with { Name = new string('x', 60) }));
        Finding finding = Assert.Single(DesignValidation.Check(Built() with { Name = new string('x', 61) }));
        Assert.Equal(("text-too-long", "61 characters", "60 characters"), (finding.Code, finding.Value, finding.Limit));
        Assert.Contains("or a line break", Assert.Single(DesignValidation.Check(Built() with { Name = "a\nb" })).Message, StringComparison.Ordinal);
        Assert.Empty(DesignValidation.Check(Built() with { Note = "a\nb\tc\rd" }));
        Assert.DoesNotContain("line break", Assert.Single(DesignValidation.Check(Built() with { Note = "a\u0007b" })).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_takes_corners_as_round_as_the_base_is_deep() =>
        Assert.Empty(DesignReader.Read(MeasuredBox("\"deep_length_mm\": 140, \"rear_depth_mm\": 20, \"corner_radius_mm\": 20")).Findings);

    private static FinDesign Built() => new()
    {
        Name = "Built in code",
        Shape = new Shape { Outline = new Outline { Family = OutlineFamily.Upright, SpanMm = 300, RootChordMm = 100 } },
    };

    private static void AssertSays(string text, string code, string words)
    {
        Finding finding = DesignReader.Read(text).Findings.First(finding => finding.Code == code);
        Assert.Contains(words, finding.Message + " " + finding.Remedy, StringComparison.Ordinal);
    }

    private static string Design(string others, string shape = "") => $$"""
        {
          "name": "Limit"{{(others.Length > 0 ? "," : "")}} {{others}},
          "shape": { "outline": { "family": "raked", "span_mm": 300, "root_chord_mm": 110 }{{(shape.Length > 0 ? "," : "")}} {{shape}} }
        }
        """;

    private static string Free(string outline) => $$"""{ "name": "Limit", "shape": { "outline": { "family": "free", {{outline}} } } }""";

    private static string MeasuredBox(string measurements) =>
        Design($"\"base\": {{ \"box\": \"measured\", \"fixing\": \"base-only\", \"printed\": \"as-one\", \"measured\": {{ \"hull_length_mm\": 150, \"hull_width_mm\": 16, {(measurements.Contains("front_depth", StringComparison.Ordinal) ? "" : "\"front_depth_mm\": 40,")} {measurements} }} }}");

    private static void AssertShows(string text, string value, string? limit)
    {
        Finding finding = DesignReader.Read(text).Findings[0];
        Assert.True(finding.Value == value && finding.Limit == limit, $"{finding.Code} at {finding.Path}: {finding.Value} against {finding.Limit}. {finding.Message}");
    }
}
