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
        FinDesign design = new()
        {
            Name = "Built in code",
            Shape = new Shape { Outline = new Outline { Family = OutlineFamily.Upright, SpanMm = 300, RootChordMm = 100 } },
            Base = new Base { Fixing = Fixing.ClampRods },
            Hardware = new Hardware { ClampRods = [.. Enumerable.Range(0, rods).Select(i => new ClampRod { FromFrontMm = 10 + 10 * i })] },
        };

        IEnumerable<Finding> tooMany = DesignValidation.Check(design).Where(finding => finding.Code == "too-many-items");

        if (isFine)
            Assert.Empty(tooMany);
        else
            Assert.Equal(("$.hardware.clamp_rods", "9 items", "8 items"), tooMany.Select(finding => (finding.Path, finding.Value, finding.Limit)).Single());
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
