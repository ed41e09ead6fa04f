using System.Text.Json.Nodes;
using Finwright.Design;
using Finwright.Page.Editing;

namespace Finwright.Page.Tests.Editing;

public sealed class DesignEditTests
{
    private static readonly FinDesign Plain = new() { Name = "Plain", Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 300, RootChordMm = 120 } } };

    [Fact]
    public void A_field_is_set_at_its_place_and_nothing_else_changes()
    {
        DesignReading reading = DesignEdit.Set(Plain, "$.shape.sections[1].thickness_percent", JsonValue.Create(9.2));
        Assert.Equal(9.2, reading.Design!.Shape.Sections[1].ThicknessPercent);
        FinDesign back = DesignEdit.Set(reading.Design, "$.shape.sections[1].thickness_percent", JsonValue.Create(8.5)).Design!;
        Assert.Equal(DesignWriter.Write(Plain), DesignWriter.Write(back));
    }

    [Fact]
    public void Items_are_added_at_the_end_and_taken_out_by_number()
    {
        FinDesign two = DesignEdit.Add(Plain, "$.hardware.carbon_rods", new JsonObject { ["root_chord_percent"] = 30 }).Design!;
        two = DesignEdit.Add(two, "$.hardware.carbon_rods", new JsonObject { ["root_chord_percent"] = 45 }).Design!;
        Assert.Equal([30.0, 45.0], two.Hardware.CarbonRods.Select(rod => rod.RootChordPercent));
        FinDesign one = DesignEdit.Remove(two, "$.hardware.carbon_rods[0]").Design!;
        Assert.Equal(45, Assert.Single(one.Hardware.CarbonRods).RootChordPercent);
    }

    [Fact]
    public void A_value_out_of_range_stays_in_the_design_with_its_finding()
    {
        DesignReading reading = DesignEdit.Set(Plain, "$.shape.outline.span_mm", JsonValue.Create(5000));
        Assert.Equal(5000, reading.Design!.Shape.Outline.SpanMm);
        Assert.Contains(reading.Findings, finding => finding.IsError && finding.Path == "$.shape.outline.span_mm");
    }

    [Fact]
    public void A_place_that_is_not_there_is_refused() =>
        Assert.Throws<ArgumentException>(() => DesignEdit.Set(Plain, "$.shape.strip.sheet_mm", JsonValue.Create(0.3)));
}
