using Finwright.Design.Fields;

namespace Finwright.Design.Tests.Checks;

/// <summary>Designs built in code are held to the same ranges as those from files.</summary>
public sealed class RangeTests
{
    [Fact]
    public void Check_of_a_design_with_defaults_finds_nothing() => Assert.Empty(DesignValidation.Check(Good()));

    [Theory]
    [InlineData(160, true)]
    [InlineData(160.0000001, false)]
    [InlineData(30, true)]
    [InlineData(29.9999999, false)]
    [InlineData(double.NaN, false)]
    [InlineData(double.PositiveInfinity, false)]
    [InlineData(double.NegativeInfinity, false)]
    public void Check_accepts_a_number_up_to_and_including_its_limits(double mass, bool isFine) =>
        Assert.Equal(isFine, DesignValidation.Check(Good() with { Brief = new Brief { RiderMassKg = mass } }).Count == 0);

    [Fact]
    public void Check_shows_a_number_that_misses_its_limit_by_a_hair_in_full()
    {
        Finding finding = Assert.Single(DesignValidation.Check(Good() with { Brief = new Brief { RiderMassKg = 160.0000001 } }));

        Assert.Equal(("160.0000001 kg", "160 kg"), (finding.Value, finding.Limit));
    }

    [Fact]
    public void Check_reports_what_only_code_can_do_wrong()
    {
        FinDesign good = Good();

        AssertFinds(good with { Pour = null! }, "null-not-allowed", "$.pour");
        AssertFinds(good with { Hardware = new Hardware { CarbonRods = [null!] } }, "null-not-allowed", "$.hardware.carbon_rods[0]");
        AssertFinds(good with { Base = new Base { Box = (BoxKind)99 } }, "unknown-word", "$.base.box");
        AssertFinds(good with { Format = 1 }, "out-of-range", "$.format");
        AssertFinds(good with { Name = "half \ud83c wave" }, "unprintable-text", "$.name");
        AssertFinds(
            good with { Shape = good.Shape with { ImportedSections = [new ImportedSection { Name = "p", Points = [[1, 0, 0]] }] } },
            "wrong-type",
            "$.shape.imported_sections[0].points[0]");
    }

    [Fact]
    public void Check_of_nothing_is_the_callers_mistake() => Assert.Throws<ArgumentNullException>(() => DesignValidation.Check(null!));

    [Fact]
    public void Check_reports_each_number_just_outside_its_range()
    {
        // Every number of the print group in turn, a hair above its most and below its least.
        foreach (Field field in RecordForm.Of(typeof(Print)).Fields.Where(field => field.Form.Kind == FieldKind.Number))
        {
            foreach (double value in new[] { Math.BitDecrement(field.Minimum!.Value), Math.BitIncrement(field.Maximum!.Value) })
            {
                string text = Examples.Small.Insert(1, $"\"print\": {{ \"{field.Key}\": {value:R} }},");

                Assert.Contains(DesignReader.Read(text).Findings, finding => finding.Code == "out-of-range" && finding.Path == $"$.print.{field.Key}");
            }
        }
    }

    private static FinDesign Good() => new()
    {
        Name = "Built in code",
        Shape = new Shape { Outline = new Outline { Family = OutlineFamily.Upright, SpanMm = 300, RootChordMm = 100 } },
    };

    private static void AssertFinds(FinDesign design, string code, string path) =>
        Assert.Contains(DesignValidation.Check(design), finding => finding.Code == code && finding.Path == path && finding.IsError);
}
