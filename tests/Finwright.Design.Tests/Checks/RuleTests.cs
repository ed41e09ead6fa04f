namespace Finwright.Design.Tests.Checks;

/// <summary>Rules that tie fields together: each broken once, and kept at its edge.</summary>
public sealed class RuleTests
{
    private const string Outline = "\"family\": \"raked\", \"span_mm\": 300, \"root_chord_mm\": 110";
    private const string FreeEdges = """
        "leading_edge": [ { "depth_mm": 0, "aft_mm": 0 }, { "depth_mm": 100, "aft_mm": 5 }, { "depth_mm": 200, "aft_mm": 20 }, { "depth_mm": 300, "aft_mm": 60 } ],
        "trailing_edge": [ { "depth_mm": 0, "aft_mm": 110 }, { "depth_mm": 100, "aft_mm": 110 }, { "depth_mm": 200, "aft_mm": 105 }, { "depth_mm": 300, "aft_mm": 95 } ]
        """;
    private const string Box = "\"hull_length_mm\": 150, \"hull_width_mm\": 16, \"front_depth_mm\": 40";

    [Theory]
    [InlineData("\"brief\": { \"getting_going_speed_m_per_s\": 6, \"cruise_speed_m_per_s\": 5.9 }", "speeds-out-of-order", "$.brief.cruise_speed_m_per_s")]
    [InlineData("\"brief\": { \"cruise_speed_m_per_s\": 15 }", "speeds-out-of-order", "$.brief.top_speed_m_per_s")]
    [InlineData("\"brief\": { \"board_width_mm\": 500, \"tail_width_mm\": 501 }", "tail-wider-than-board", "$.brief.tail_width_mm")]
    [InlineData("\"brief\": { \"draught_limit_mm\": 299 }", "deeper-than-spot", "$.shape.outline.span_mm")]
    [InlineData("\"base\": { \"box\": \"measured\" }", "measurements-missing", "$.base.measured")]
    [InlineData("\"base\": { \"measured\": { " + Box + ", \"deep_length_mm\": 140 } }", "not-used", "$.base.measured")]
    [InlineData("\"base\": { \"fixing\": \"clamp-rods\" }", "rods-missing", "$.hardware.clamp_rods")]
    [InlineData("\"base\": { \"fixing\": \"clamp-rods\" }, \"hardware\": { \"clamp_rods\": [ { \"from_front_mm\": 40 } ] }", "one-rod", "$.hardware.clamp_rods")]
    [InlineData("\"hardware\": { \"clamp_rods\": [ { \"from_front_mm\": 40 }, { \"from_front_mm\": 90 } ] }", "rods-not-used", "$.base.fixing")]
    [InlineData("\"base\": { \"box\": \"long-slot\" }", "bolts-missing", "$.base.fixing")]
    [InlineData("\"base\": { \"fixing\": \"clamp-rods\", \"printed\": \"as-one\" }, \"hardware\": { \"clamp_rods\": [ { \"from_front_mm\": 40 }, { \"from_front_mm\": 90 } ] }", "rods-in-one-print", "$.base.printed")]
    [InlineData("\"base\": { \"fixing\": \"base-only\" }", "held-by-glue-alone", "$.base.fixing")]
    [InlineData("\"hardware\": { \"cavities\": [ { \"kind\": \"cylinder\", \"at_depth_mm\": 60, \"at_chord_percent\": 40, \"length_mm\": 20, \"height_mm\": 20, \"room_mm\": 5 } ] }", "cylinder-with-height", "$.hardware.cavities[0].height_mm")]
    [InlineData("\"hardware\": { \"cavities\": [ { \"at_depth_mm\": 60, \"at_chord_percent\": 40, \"length_mm\": 20, \"room_mm\": 5 }, { \"at_depth_mm\": 160, \"at_chord_percent\": 40, \"length_mm\": 20, \"room_mm\": 5 } ] }", "repeated-name", "$.hardware.cavities[1].name")]
    [InlineData("\"parts\": { \"number\": \"ew-7\" }", "part-number", "$.parts.number")]
    [InlineData("\"parts\": { \"number\": \" E7\" }", "part-number", "$.parts.number")]
    [InlineData("\"parts\": { \"number\": \"Ä7\" }", "part-number", "$.parts.number")]
    [InlineData("\"parts\": { \"cuts\": [ { \"at_depth_mm\": 120 }, { \"at_depth_mm\": 120 } ] }", "cuts-out-of-order", "$.parts.cuts[1].at_depth_mm")]
    [InlineData("\"parts\": { \"cuts\": [ { \"at_depth_mm\": 300 } ] }", "cut-below-tip", "$.parts.cuts[0].at_depth_mm")]
    [InlineData("\"print\": { \"layer_mm\": 0.37 }", "layer-too-tall", "$.print.layer_mm")]
    [InlineData("\"print\": { \"layer_mm\": 0.45 }", "layer-too-tall", "$.print.layer_mm")]
    [InlineData("\"print\": { \"bed_x_mm\": 80, \"edge_margin_mm\": 25 }", "margin-leaves-no-bed", "$.print.edge_margin_mm")]
    [InlineData("\"print\": { \"walls\": 2 }, \"pour\": { \"ports\": { \"depth_mm\": 0.9 } }", "dimple-through-wall", "$.pour.ports.depth_mm")]
    [InlineData("\"materials\": { \"printed\": { \"material\": \"petg-printed\", \"file\": \"own.material.json\" } }", "material-given-twice", "$.materials.printed")]
    [InlineData("\"materials\": { \"rod\": { \"file\": \"../own.material.json\" } }", "file-outside-folder", "$.materials.rod.file")]
    [InlineData("\"materials\": { \"resin\": { \"modulus_across_gpa\": 2 } }", "not-used", "$.materials.resin")]
    [InlineData("\"pour\": { \"system\": { \"name\": \"laminating-slow\", \"file\": \"own.resin.json\" } }", "resin-given-twice", "$.pour.system")]
    [InlineData("\"pour\": { \"system\": { \"file\": \"/tmp/own.resin.json\" } }", "file-outside-folder", "$.pour.system.file")]
    [InlineData("\"pour\": { \"tilt_degrees\": 20 }", "not-used", "$.pour.tilt_degrees")]
    [InlineData("\"pour\": { \"stages\": [ { \"to_percent\": 60, \"after_hours\": 0 }, { \"to_percent\": 60, \"after_hours\": 5 }, { \"to_percent\": 100, \"after_hours\": 9 } ] }", "pours-not-rising", "$.pour.stages[1].to_percent")]
    [InlineData("\"pour\": { \"stages\": [ { \"to_percent\": 60, \"after_hours\": 0 }, { \"to_percent\": 100, \"after_hours\": 0 } ] }", "pours-not-later", "$.pour.stages[1].after_hours")]
    [InlineData("\"pour\": { \"stages\": [ { \"to_percent\": 100, \"after_hours\": 1 } ] }", "first-pour-late", "$.pour.stages[0].after_hours")]
    [InlineData("\"pour\": { \"stages\": [ { \"to_percent\": 90, \"after_hours\": 0 } ] }", "last-pour-low", "$.pour.stages[0].to_percent")]
    public void Check_says_which_fields_do_not_go_together(string fields, string code, string path) =>
        AssertFinds(Design(Outline, others: fields), code, path);

    [Theory]
    [InlineData("\"brief\": { \"getting_going_speed_m_per_s\": 9, \"cruise_speed_m_per_s\": 9, \"top_speed_m_per_s\": 9 }")]
    [InlineData("\"brief\": { \"board_width_mm\": 500, \"tail_width_mm\": 500, \"draught_limit_mm\": 300 }")]
    [InlineData("\"base\": { \"box\": \"long-slot\", \"fixing\": \"base-only\", \"printed\": \"as-one\" }")]
    [InlineData("\"parts\": { \"number\": \"EW-07.B 2\", \"cuts\": [ { \"at_depth_mm\": 120 }, { \"at_depth_mm\": 120.01 }, { \"at_depth_mm\": 299.9 } ] }")]
    [InlineData("\"print\": { \"layer_mm\": 0.36, \"walls\": 2, \"bed_x_mm\": 80, \"edge_margin_mm\": 20 }, \"pour\": { \"ports\": { \"depth_mm\": 0.89 } }")]
    [InlineData("\"print\": { \"walls\": 1 }, \"pour\": { \"ports\": { \"dimples\": false, \"depth_mm\": 3 } }")]
    public void Check_lets_fields_be_at_the_edge_of_going_together(string fields) =>
        Assert.Empty(DesignReader.Read(Design(Outline, others: fields)).Findings);

    [Theory]
    [InlineData("\"family\": \"raked\", \"root_chord_mm\": 110", "span-missing", "$.shape.outline.span_mm")]
    [InlineData("\"family\": \"raked\", \"span_mm\": 300", "size-missing", "$.shape.outline.root_chord_mm")]
    [InlineData(Outline + ", \"area_cm2\": 250", "size-given-twice", "$.shape.outline.area_cm2")]
    [InlineData(Outline + ", \"leading_edge\": [ { \"depth_mm\": 0, \"aft_mm\": 0 } ]", "not-used", "$.shape.outline.leading_edge")]
    [InlineData("\"family\": \"free\", \"span_mm\": 280, " + FreeEdges, "not-used", "$.shape.outline.span_mm")]
    [InlineData("\"family\": \"free\", \"rake_degrees\": 20, " + FreeEdges, "not-used", "$.shape.outline.rake_degrees")]
    public void Check_wants_an_outline_that_says_one_blade(string outline, string code, string path) =>
        AssertFinds(Design(outline), code, path);

    [Theory]
    [InlineData("{ \"depth_mm\": 100, \"aft_mm\": 5 },", "", "too-few-points", "$.shape.outline.leading_edge")]
    [InlineData("{ \"depth_mm\": 0, \"aft_mm\": 0 }", "{ \"depth_mm\": 1, \"aft_mm\": 0 }", "edge-starts-below-hull", "$.shape.outline.leading_edge[0].depth_mm")]
    [InlineData("{ \"depth_mm\": 200, \"aft_mm\": 105 }", "{ \"depth_mm\": 99, \"aft_mm\": 105 }", "edge-turns-back", "$.shape.outline.trailing_edge[2].depth_mm")]
    [InlineData("{ \"depth_mm\": 300, \"aft_mm\": 95 }", "{ \"depth_mm\": 299, \"aft_mm\": 95 }", "edges-end-apart", "$.shape.outline.trailing_edge[3].depth_mm")]
    [InlineData("{ \"depth_mm\": 0, \"aft_mm\": 110 }", "{ \"depth_mm\": 0, \"aft_mm\": 0 }", "edges-cross", "$.shape.outline.trailing_edge[0].aft_mm")]
    public void Check_wants_edges_that_run_down_from_the_hull(string good, string bad, string code, string path)
    {
        Assert.Empty(DesignReader.Read(Design("\"family\": \"free\", " + FreeEdges)).Findings);
        Assert.Contains(good, FreeEdges, StringComparison.Ordinal);

        AssertFinds(Design("\"family\": \"free\", " + FreeEdges.Replace(good, bad, StringComparison.Ordinal)), code, path);
    }

    [Fact]
    public void Check_wants_a_free_outline_as_deep_as_any_other()
    {
        string shallow = FreeEdges.Replace("00, \"aft", "0, \"aft", StringComparison.Ordinal);

        AssertFinds(Design("\"family\": \"free\", " + shallow), "out-of-range", "$.shape.outline.leading_edge");
    }

    [Fact]
    public void Check_wants_both_edges_of_a_free_outline() =>
        Assert.Equal(2, DesignReader.Read(Design("\"family\": \"free\"")).Findings.Count(finding => finding.Code == "too-few-points"));

    [Theory]
    [InlineData("[]", "too-few-stations", "$.shape.sections")]
    [InlineData("[ { \"at_percent\": 0 } ]", "too-few-stations", "$.shape.sections")]
    [InlineData("[ { \"at_percent\": 1 }, { \"at_percent\": 100 } ]", "stations-incomplete", "$.shape.sections[0].at_percent")]
    [InlineData("[ { \"at_percent\": 0 }, { \"at_percent\": 99 } ]", "stations-incomplete", "$.shape.sections[1].at_percent")]
    [InlineData("[ { \"at_percent\": 0 }, { \"at_percent\": 60 }, { \"at_percent\": 40 }, { \"at_percent\": 100 } ]", "stations-out-of-order", "$.shape.sections[2].at_percent")]
    [InlineData("[ { \"at_percent\": 0 }, { \"at_percent\": 60 }, { \"at_percent\": 60 }, { \"at_percent\": 100 } ]", "stations-out-of-order", "$.shape.sections[2].at_percent")]
    [InlineData("[ { \"at_percent\": 0, \"section\": \"naca-001\" }, { \"at_percent\": 100 } ]", "unknown-section", "$.shape.sections[0].section")]
    [InlineData("[ { \"at_percent\": 0, \"section\": \"\" }, { \"at_percent\": 100 } ]", "unknown-section", "$.shape.sections[0].section")]
    [InlineData("[ { \"at_percent\": 0, \"section\": \"naca-0010\\n\" }, { \"at_percent\": 100 } ]", "unprintable-text", "$.shape.sections[0].section")]
    public void Check_wants_stations_in_order_with_sections_that_exist(string stations, string code, string path) =>
        AssertFinds(Design(Outline, $"\"sections\": {stations}"), code, path);

    [Theory]
    [InlineData("naca-0010")]
    [InlineData("naca-2412")]
    [InlineData("naca-0010-35")]
    [InlineData("naca-16-009")]
    [InlineData("NACA 0010")]
    public void Check_knows_the_names_of_sections_made_by_formula(string name) =>
        Assert.Empty(DesignReader.Read(Design(Outline, $"\"sections\": [ {{ \"at_percent\": 0, \"section\": \"{name}\" }}, {{ \"at_percent\": 100 }} ]")).Findings);

    [Theory]
    [InlineData("{ \"name\": \"own\" }", "points-missing", "points")]
    [InlineData("{ \"name\": \"own\", \"file\": \"own.dat\", \"points\": [[1, 0]] }", "points-given-twice", "file")]
    [InlineData("{ \"name\": \"own\", \"points\": [[1, 0], [0, 0], [1, 0]] }", "too-few-points", "points")]
    [InlineData("{ \"name\": \" \", \"file\": \"own.dat\" }", "blank-name", "name")]
    [InlineData("{ \"name\": \"naca-0010\", \"file\": \"own.dat\" }", "name-taken", "name")]
    [InlineData("{ \"name\": \"own\", \"file\": \"/etc/own.dat\" }", "file-outside-folder", "file")]
    [InlineData("{ \"name\": \"own\", \"file\": \"C:\\\\own.dat\" }", "file-outside-folder", "file")]
    [InlineData("{ \"name\": \"own\", \"file\": \"\\\\\\\\server\\\\own.dat\" }", "file-outside-folder", "file")]
    [InlineData("{ \"name\": \"own\", \"file\": \"../own.dat\" }", "file-outside-folder", "file")]
    [InlineData("{ \"name\": \"own\", \"file\": \"a/../../own.dat\" }", "file-outside-folder", "file")]
    [InlineData("{ \"name\": \"own\", \"file\": \"a\\\\..\\\\..\\\\own.dat\" }", "file-outside-folder", "file")]
    [InlineData("{ \"name\": \"own\", \"file\": \"\" }", "file-outside-folder", "file")]
    [InlineData("{ \"name\": \"own\", \"file\": \"a/\" }", "file-outside-folder", "file")]
    public void Check_wants_an_imported_section_with_one_source_inside_the_folder(string section, string code, string field)
    {
        string text = Design(Outline, $"\"imported_sections\": [ {section} ]");

        Finding finding = Assert.Single(DesignReader.Read(text).Findings, finding => finding.Code != "not-used");
        Assert.Equal((code, $"$.shape.imported_sections[0].{field}", true), (finding.Code, finding.Path, finding.IsError));
    }

    [Theory]
    [InlineData("own.dat")]
    [InlineData("sections/own 2.dat")]
    [InlineData("..own.dat")]
    public void Check_takes_files_beside_and_below_the_design(string file) =>
        Assert.Empty(DesignReader.Read(Design(Outline, $"\"imported_sections\": [ {{ \"name\": \"own\", \"file\": \"{file}\" }} ], \"sections\": [ {{ \"at_percent\": 0, \"section\": \"own\" }}, {{ \"at_percent\": 100 }} ]")).Findings);

    [Fact]
    public void Check_wants_names_of_imported_sections_to_differ_and_notes_those_not_used()
    {
        string text = Design(Outline, "\"imported_sections\": [ { \"name\": \"own\", \"file\": \"a.dat\" }, { \"name\": \"own\", \"file\": \"b.dat\" } ]");

        Assert.Equal("not-used not-used repeated-name", string.Join(' ', DesignReader.Read(text).Findings.Select(finding => finding.Code).Order(StringComparer.Ordinal)));
    }

    [Theory]
    [InlineData("\"tip\": \"flat\", \"tip_rounding_mm\": 3", "not-used", "$.shape.tip_rounding_mm")]
    [InlineData("\"strip\": { \"from_percent\": 50, \"to_percent\": 50 }", "strip-ends-before-start", "$.shape.strip.to_percent")]
    [InlineData("\"flange\": { \"overhang_mm\": 5, \"fillet_mm\": 5.01 }", "fillet-over-flange", "$.shape.flange.fillet_mm")]
    public void Check_wants_strip_flange_and_tip_to_fit_the_blade(string shape, string code, string path) =>
        AssertFinds(Design(Outline, shape), code, path);

    [Theory]
    [InlineData("", "box-ends-missing", "deep_length_mm")]
    [InlineData("\"front_angle_degrees\": 10", "box-ends-missing", "deep_length_mm")]
    // The front takes 40 tan 30° = 23.1 mm off, more than the 10 mm that both ends do: the rear leans -18 degrees.
    [InlineData("\"deep_length_mm\": 140, \"front_angle_degrees\": 30", "box-inconsistent", "deep_length_mm")]
    // 150 - 2 x 40 tan 10° = 135.9 mm.
    [InlineData("\"deep_length_mm\": 137, \"front_angle_degrees\": 10, \"rear_angle_degrees\": 10", "box-inconsistent", "deep_length_mm")]
    // 2 x 40 tan 45° = 80 mm are the most that the ends may take off.
    [InlineData("\"deep_length_mm\": 69", "box-inconsistent", "deep_length_mm")]
    [InlineData("\"deep_length_mm\": 151", "box-undercut", "deep_length_mm")]
    [InlineData("\"front_angle_degrees\": -2, \"rear_angle_degrees\": 1", "box-undercut", "front_angle_degrees")]
    // 150 - 100 tan 45° - 40 tan 45° = 10 mm.
    [InlineData("\"front_angle_degrees\": 45, \"rear_angle_degrees\": 45, \"rear_depth_mm\": 100", "box-ends-meet", "front_angle_degrees")]
    [InlineData("\"deep_length_mm\": 140, \"deep_width_mm\": 17", "box-undercut", "deep_width_mm")]
    [InlineData("\"deep_length_mm\": 140, \"rear_depth_mm\": 20, \"corner_radius_mm\": 21", "corner-too-round", "corner_radius_mm")]
    [InlineData("\"deep_length_mm\": 140, \"bolts\": [ { \"from_front_mm\": 150 } ]", "bolt-outside-box", "bolts[0].from_front_mm")]
    [InlineData("\"deep_length_mm\": 140, \"bolts\": [ { \"from_front_mm\": 100 }, { \"from_front_mm\": 30 } ]", "bolts-too-near", "bolts[1].from_front_mm")]
    public void Check_wants_measurements_of_a_box_that_can_be(string measurements, string code, string field)
    {
        string box = measurements.Length > 0 ? $"{Box}, {measurements}" : Box;

        AssertFinds(Design(Outline, others: $"\"base\": {{ \"box\": \"measured\", \"fixing\": \"base-only\", \"printed\": \"as-one\", \"measured\": {{ {box} }} }}"), code, $"$.base.measured.{field}");
    }

    [Theory]
    [InlineData("\"deep_length_mm\": 150")]
    [InlineData("\"deep_length_mm\": 70")]
    [InlineData("\"deep_length_mm\": 140, \"rear_angle_degrees\": 10")]
    [InlineData("\"deep_length_mm\": 136, \"front_angle_degrees\": 10, \"rear_angle_degrees\": 10")]
    [InlineData("\"front_angle_degrees\": -2, \"rear_angle_degrees\": 2")]
    // The standard two-bolt head, as its owner might measure it (common practice, no source): faces at 10 degrees,
    // 50.8 and 31.75 mm deep.
    [InlineData("\"hull_length_mm\": 155.9, \"hull_width_mm\": 15.9, \"front_depth_mm\": 50.8, \"rear_depth_mm\": 31.75, \"front_angle_degrees\": 10, \"rear_angle_degrees\": 10, \"deep_length_mm\": 141.3, \"bolts\": [ { \"from_front_mm\": 21, \"lean_degrees\": 7.68 }, { \"from_front_mm\": 127.1, \"lean_degrees\": 7.68 } ]")]
    public void Check_takes_measurements_of_usual_boxes(string measurements)
    {
        string box = measurements.Contains("hull_length", StringComparison.Ordinal) ? measurements : $"{Box}, {measurements}";

        Assert.Empty(DesignReader.Read(Design(Outline, others: $"\"base\": {{ \"box\": \"measured\", \"fixing\": \"base-only\", \"printed\": \"as-one\", \"measured\": {{ {box} }} }}")).Findings);
    }

    [Fact]
    public void Check_wants_bolts_in_a_measured_box_for_through_bolts() =>
        AssertFinds(Design(Outline, others: $"\"base\": {{ \"box\": \"measured\", \"measured\": {{ {Box}, \"deep_length_mm\": 140 }} }}"), "bolts-missing", "$.base.fixing");

    [Fact]
    public void Check_only_cautions_where_the_fin_can_still_be_made()
    {
        string[] texts =
        [
            Design(Outline, others: "\"brief\": { \"draught_limit_mm\": 250 }"),
            Design(Outline, others: "\"print\": { \"layer_mm\": 0.37 }"),
            Design("\"family\": \"free\", \"rake_degrees\": 20, " + FreeEdges),
        ];

        Assert.All(texts, text => Assert.False(DesignReader.Read(text).HasErrors));
        Assert.True(DesignReader.Read(Design(Outline, others: "\"print\": { \"layer_mm\": 0.45 }")).HasErrors);
    }

    [Fact]
    public void Check_wants_a_name() => AssertFinds(Design(Outline).Replace("Rule", " ", StringComparison.Ordinal), "blank-name", "$.name");

    private static string Design(string outline, string shape = "", string others = "") => $$"""
        {
          "name": "Rule"{{(others.Length > 0 ? "," : "")}} {{others}},
          "shape": { "outline": { {{outline}} }{{(shape.Length > 0 ? "," : "")}} {{shape}} }
        }
        """;

    private static void AssertFinds(string text, string code, string path)
    {
        Finding finding = DesignReader.Read(text).Findings[0];
        Assert.True(finding.Code == code && finding.Path == path, $"{finding.Code} at {finding.Path}: {finding.Message}");
    }
}
