using System.Globalization;

namespace Finwright.Design.Tests.Reading;

/// <summary>Files far larger or deeper than any fin.</summary>
public sealed class LimitTests
{
    [Fact]
    public void Read_takes_a_section_of_10000_points()
    {
        string points = string.Join(", ", Enumerable.Range(0, 10_000).Select(i => 2 * Math.PI * i / 9_999).Select(angle =>
            string.Create(CultureInfo.InvariantCulture, $"[{(1 + Math.Cos(angle)) / 2:R}, {0.05 * Math.Sin(angle):R}]")));
        string text = $$"""
            {
              "name": "Fine", "shape": {
                "outline": { "family": "upright", "span_mm": 300, "root_chord_mm": 100 },
                "sections": [ { "at_percent": 0, "section": "ellipse" }, { "at_percent": 100, "section": "ellipse" } ],
                "imported_sections": [ { "name": "ellipse", "points": [ {{points}} ] } ]
              }
            }
            """;

        DesignReading reading = DesignReader.Read(text);

        Assert.Empty(reading.Findings);
        Assert.Equal(10_000, reading.Design!.Shape.ImportedSections[0].Points.Count);
    }

    [Theory]
    [InlineData('[', ']')]
    [InlineData('{', '}')]
    public void Read_refuses_nesting_beyond_any_design_however_deep(char open, char close)
    {
        foreach (int depth in new[] { DesignLimits.Depth + 1, 1_000, 500_000 })
        {
            string inner = open == '[' ? new string('[', depth) : string.Concat(Enumerable.Repeat("{\"a\":", depth));
            foreach (string text in new[] { "{\"a\":" + inner, "{\"a\":" + inner + "1" + new string(close, depth) + "}" })
                Assert.Equal("too-deep", Assert.Single(DesignReader.Read(text).Findings).Code);
        }
    }

    [Fact]
    public void Read_accepts_nesting_up_to_the_limit_as_JSON()
    {
        string text = $"{{\"a\":{new string('[', DesignLimits.Depth - 1)}{new string(']', DesignLimits.Depth - 1)}}}";

        Assert.DoesNotContain(DesignReader.Read(text).Findings, finding => finding.Code is "too-deep" or "not-json");
    }

    [Fact]
    public void Read_refuses_a_file_beyond_4_MB()
    {
        string text = Examples.Small + new string(' ', DesignLimits.FileBytes);

        Assert.Equal("file-too-large", Assert.Single(DesignReader.Read(text).Findings).Code);
        Assert.Equal("file-too-large", Assert.Single(DesignReader.Read(System.Text.Encoding.UTF8.GetBytes(text)).Findings).Code);
        // Two bytes for each character: within the limit as characters, beyond it as a file.
        Assert.Equal("file-too-large", Assert.Single(DesignReader.Read(new string('ä', DesignLimits.FileBytes - 10)).Findings).Code);
    }

    [Fact]
    public void Read_refuses_a_list_of_a_million_items()
    {
        string text = Examples.Small.Insert(1, $"\"hardware\": {{ \"carbon_rods\": [{string.Join(',', Enumerable.Repeat("1", 1_000_000))}] }},");

        Assert.Equal("too-many-values", Assert.Single(DesignReader.Read(text).Findings).Code);
    }

    [Fact]
    public void Read_refuses_a_list_longer_than_its_own_limit_with_one_finding()
    {
        string text = Examples.Small.Insert(1, $"\"hardware\": {{ \"carbon_rods\": [{string.Join(',', Enumerable.Repeat("{}", 3_000))}] }},");

        Finding finding = Assert.Single(DesignReader.Read(text).Findings);
        Assert.Equal(("too-many-items", "3000 items", "12 items"), (finding.Code, finding.Value, finding.Limit));
    }

    [Fact]
    public void Read_counts_the_characters_of_a_text_as_a_reader_does()
    {
        // The limit of a name is 60; a wave is one character, though two in memory.
        Assert.Empty(DesignReader.Read(Examples.Small.Replace("Saltmarsh 24", string.Concat(Enumerable.Repeat("🌊", 60)), StringComparison.Ordinal)).Findings);
        Finding finding = Assert.Single(DesignReader.Read(Examples.Small.Replace("Saltmarsh 24", new string('x', 61), StringComparison.Ordinal)).Findings);
        Assert.Equal(("text-too-long", "61 characters", "60 characters"), (finding.Code, finding.Value, finding.Limit));
    }

    [Fact]
    public void Read_lists_the_first_findings_and_counts_the_rest()
    {
        string text = "{" + string.Join(',', Enumerable.Range(0, 100_000).Select(i => $"\"k{i}\": 1")) + "}";

        IReadOnlyList<Finding> findings = DesignReader.Read(text).Findings;

        Assert.Equal(DesignLimits.Findings + 1, findings.Count);
        Assert.Equal("more-findings", findings[^1].Code);
        Assert.True(findings[^1].IsError);
    }
}
