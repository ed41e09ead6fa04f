using Finwright.Design;
using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Tests.Features;

namespace Finwright.Geometry.Tests.FromDesign;

/// <summary>What cannot be made is said, with place, number and remedy.</summary>
public sealed class FinSolidsFindingsTests
{
    private static readonly FinDesign Design = TestDesigns.Design;
    private static readonly TriangleMesh Skin = TestDesigns.Broad.Mesh(20, 60);

    [Fact]
    public void Rod_asked_deeper_than_its_margin_is_told_where_it_ends()
    {
        FinDesign design = With(new CarbonRod { RootChordPercent = 40, DiameterMm = 10, ToDepthMm = 245 });
        Finding finding = Only(design, "rod-outside-skin");
        Assert.Equal("$.hardware.carbon_rods[0].to_depth_mm", finding.Path);
        Assert.Contains("depth", finding.Message, StringComparison.Ordinal);
        // The remedy names a depth that works.
        double told = double.Parse(finding.Remedy.Split(' ')[4], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Empty(Findings(With(design.Hardware.CarbonRods[0] with { ToDepthMm = told })));
    }

    [Fact]
    public void Rod_with_less_than_its_margin_left_is_told_how_much_is_left()
    {
        List<Finding> free = [];
        FinSolids fin = FinSolids.Build(With(new CarbonRod { RootChordPercent = 40, DiameterMm = 8 }), TestDesigns.Broad, Skin, free)!;
        double depth = fin.Bores.Single(b => b.Name == "carbon rod: bore").To.Y;
        Finding finding = Only(With(new CarbonRod { RootChordPercent = 40, DiameterMm = 8, ToDepthMm = depth * 1e3 + 2 }), "rod-margin");
        Assert.Equal("1 mm", finding.Limit);
        Assert.StartsWith("0.9", finding.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, 4)] // in the nose: thinner than the rod
    [InlineData(95, 4)]
    [InlineData(40, 12)]
    public void Rod_that_fits_nowhere_is_refused_at_its_place(double percent, double diameter)
    {
        Finding finding = Findings(With(new CarbonRod { RootChordPercent = percent, DiameterMm = diameter, MarginMm = 5 }))[0];
        Assert.True(finding.IsError);
        Assert.Equal("$.hardware.carbon_rods[0].root_chord_percent", finding.Path);
    }

    [Fact]
    public void Rod_past_the_tip_is_refused()
    {
        Finding finding = Only(With(new CarbonRod { RootChordPercent = 40, ToDepthMm = 300 }), "rod-outside-skin");
        Assert.Equal("250 mm", finding.Limit);
    }

    [Fact]
    public void Rods_that_meet_are_found()
    {
        FinDesign design = Design with
        {
            Hardware = new() { CarbonRods = [new() { RootChordPercent = 40, ToDepthMm = 100 }, new() { RootChordPercent = 41, ToDepthMm = 100 }] },
        };
        Finding finding = Only(design, "pockets-meet");
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.StartsWith("$.hardware.carbon_rods[1].", finding.Path, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rod_that_goes_as_deep_as_it_can_ends_before_it_meets_an_earlier_rod()
    {
        // 6 mm apart at the root, drawing together toward the tip.
        FinDesign design = Design with
        {
            Hardware = new() { CarbonRods = [new() { RootChordPercent = 40, TipChordPercent = 50 }, new() { RootChordPercent = 43, TipChordPercent = 45 }] },
        };
        List<Finding> findings = [];
        BoreRecord[] bores = [.. FinSolids.Build(design, TestDesigns.Broad, Skin, findings)!.Bores.Where(bore => bore.Name.StartsWith("carbon", StringComparison.Ordinal))];
        Assert.DoesNotContain(findings, finding => finding.Severity == Severity.Error);
        FeatureVolume first = FeatureVolume.Cylinder(bores[0].Diameter, bores[0].From, bores[0].To), second = FeatureVolume.Cylinder(bores[1].Diameter, bores[1].From, bores[1].To);
        Assert.InRange(first.DistanceTo(second), design.Print.LineWidthMm * 1e-3 - 1e-9, 1e-3);
        Assert.InRange(bores[1].To.Y, 0.02, bores[0].To.Y - 0.01);
    }

    [Fact]
    public void Rods_with_a_thin_wall_between_them_are_a_caution_with_the_wall()
    {
        // Root chord 220 mm: 2.182 % is 4.8 mm between axes, 0.4 mm between bores of 4.4 mm; the rods run parallel enough near the root.
        FinDesign design = Design with
        {
            Hardware = new()
            {
                CarbonRods =
                [
                    new() { RootChordPercent = 40, TipChordPercent = 40, ToDepthMm = 20 },
                    new() { RootChordPercent = 42.3, TipChordPercent = 46, ToDepthMm = 20 },
                ],
            },
        };
        List<Finding> findings = Findings(design);
        Finding finding = Assert.Single(findings);
        Assert.Equal(("pockets-meet", Severity.Caution), (finding.Code, finding.Severity));
        Assert.StartsWith("0.", finding.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Nut_in_a_blade_too_thin_for_it_is_found_with_the_missing_thickness()
    {
        TaperedBlade thin = new(0.25, 0.22, 0.09, 25 * Math.PI / 180, 0.05);
        List<Finding> findings = [];
        Assert.Null(FinSolids.Build(Design with { Base = new() { Fixing = Fixing.ThroughBolts } }, thin, thin.Mesh(20, 60), findings));
        Assert.Contains(findings, f => f is { Code: "feature-outside-skin", IsError: true, Path: "$.hardware.box_bolts.blade_depth_mm" } && f.Remedy.Contains("thicken", StringComparison.Ordinal));
    }

    [Fact]
    public void Bolt_beside_the_blade_is_found()
    {
        TaperedBlade narrow = new(0.3, 0.1, 0.06, 5 * Math.PI / 180, 0.12);
        List<Finding> findings = [];
        Assert.Null(FinSolids.Build(Design with { Base = new() { Fixing = Fixing.ThroughBolts } }, narrow, narrow.Mesh(20, 60), findings));
        Assert.Single(findings, f => f.Code == "blade-does-not-reach" && f.Message.StartsWith("The blade does not reach the front box bolt", StringComparison.Ordinal) && f.Message.Contains("ahead of the leading edge", StringComparison.Ordinal));
        // The rear bolt still meets the blade, but where it is thinner than the bore.
        Assert.Contains(findings, f => f.Code == "feature-outside-skin" && f.Message.StartsWith("Rear box bolt: bore", StringComparison.Ordinal));
    }

    [Fact]
    public void Nut_pocket_through_the_hull_plane_is_found()
    {
        Finding finding = Findings(Design with { Base = new() { Fixing = Fixing.BaseOnly, NutDepthMm = 34 } }).First(f => f.Code == "pocket-meets-hull");
        Assert.Equal("$.base.nut_depth_mm", finding.Path);
        Assert.True(finding.IsError);
    }

    [Fact]
    public void Clamp_rod_through_a_box_bolt_is_found()
    {
        FinDesign design = Design with
        {
            Base = new() { Fixing = Fixing.ClampRods },
            Hardware = new() { ClampRods = [new() { FromFrontMm = 24 }] },
        };
        Assert.Contains(Findings(design), f => f.Code == "pockets-meet" && f.IsError);
    }

    [Fact]
    public void Clamp_rod_behind_the_base_is_found()
    {
        FinDesign design = Design with
        {
            Base = new() { Fixing = Fixing.ClampRods },
            Hardware = new() { ClampRods = [new() { FromFrontMm = 75 }, new() { FromFrontMm = 200 }] },
        };
        Assert.Equal("$.hardware.clamp_rods[1].from_front_mm", Only(design, "clamp-rod-off-base").Path);
    }

    [Fact]
    public void Socket_pocket_wider_than_the_base_is_found()
    {
        FinDesign design = Design with
        {
            Base = new() { Fixing = Fixing.ClampRods },
            Hardware = new() { ClampRods = [new() { FromFrontMm = 75, Thread = Finwright.Design.Thread.M8 }] },
        };
        Assert.Contains(Findings(design), f => f is { Code: "feature-outside-skin", IsError: true, Path: "$.hardware.clamp_rods[0].thread" });
    }

    [Fact]
    public void Strip_wider_than_the_trailing_edge_is_found_with_the_edge_it_needs()
    {
        TaperedBlade sharp = new(0.25, 0.22, 0.09, 25 * Math.PI / 180, 0.09, trailingEdge: 0.8e-3);
        List<Finding> findings = [];
        Assert.Null(FinSolids.Build(Design with { Shape = Design.Shape with { Strip = new() } }, sharp, sharp.Mesh(20, 60), findings));
        Finding finding = Assert.Single(findings);
        Assert.Equal(("slot-wall-thin", "$.shape.trailing_edge_mm"), (finding.Code, finding.Path));
        // 0.6 mm slot and two lines of 0.45 mm.
        Assert.Contains("1.5 mm", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Rod_through_the_strip_s_slot_is_found()
    {
        FinDesign design = Design with
        {
            Shape = Design.Shape with { Strip = new() { SlotDepthMm = 15 } },
            Hardware = new() { CarbonRods = [new() { RootChordPercent = 92, DiameterMm = 1, MarginMm = 0.4, ToDepthMm = 80 }] },
        };
        Assert.Contains(Findings(design), f => f.Code == "pockets-meet" && f.Message.Contains("slot", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(45, 80, 8, "cavity-margin", "room_mm")]
    [InlineData(4, 80, 5, "cavity-outside-blade", "at_chord_percent")]
    [InlineData(45, 10, 5, "cavity-outside-blade", "at_depth_mm")]
    [InlineData(45, 245, 5, "cavity-outside-blade", "at_depth_mm")]
    public void Cavity_that_does_not_fit_is_found(double percent, double depth, double length, string code, string key)
    {
        double room = code == "cavity-margin" ? 17 : 3;
        FinDesign design = Design with
        {
            Hardware = new() { Cavities = [new() { AtChordPercent = percent, AtDepthMm = depth, LengthMm = 3 * length, RoomMm = room }] },
        };
        Finding finding = Only(design, code);
        Assert.Equal($"$.hardware.cavities[0].{key}", finding.Path);
        Assert.True(finding.IsError);
    }

    [Fact]
    public void Rod_sealed_between_blade_and_base_in_one_print_is_found()
    {
        FinDesign design = Design with
        {
            Base = new() { Fixing = Fixing.BaseOnly, Printed = BasePrinting.AsOne },
            Hardware = new() { CarbonRods = [new() { RootChordPercent = 50, IntoBaseMm = 15 }] },
        };
        Assert.Equal("$.hardware.carbon_rods[0].into_base_mm", Only(design, "sealed-void").Path);
    }

    [Fact]
    public void Blade_set_off_its_base_is_found() =>
        Assert.Contains(Findings(Design with { Base = new() { Fixing = Fixing.BaseOnly, BladeOffsetMm = 120 } }), f => f.Code == "blade-beside-base");

    [Fact]
    public void Bores_below_the_fine_series_are_a_caution()
    {
        Finding finding = Assert.Single(Findings(Design with { Print = new() { BoreAllowanceMm = 0.1 } }));
        Assert.Equal(("bore-tight", Severity.Caution, "6.1 mm", "6.4 mm"), (finding.Code, finding.Severity, finding.Value, finding.Limit));
    }

    [Fact]
    public void Screw_under_the_blade_is_found_with_what_is_missing()
    {
        // The broad blade covers the whole tab.
        Finding finding = Findings(Design with { Base = new() { Box = BoxKind.LongSlot, Fixing = Fixing.BaseOnly } }).First(f => f.Code == "screw-covered");
        Assert.Equal("$.base.slot.length_mm", finding.Path);
    }

    [Fact]
    public void Measured_box_without_measurements_is_refused() =>
        Assert.Equal("$.base.measured", Only(Design with { Base = new() { Box = BoxKind.Measured, Fixing = Fixing.BaseOnly } }, "measurements-missing").Path);

    [Theory]
    [InlineData(null, null, null, "box-ends-missing")]
    [InlineData(null, 10.0, null, "box-ends-missing")]
    [InlineData(120.0, 10.0, 10.0, "box-inconsistent")] // 140 - 2 · 40 tan 10° = 125.9
    [InlineData(40.0, null, null, "box-inconsistent")] // 51 degrees
    [InlineData(200.0, null, null, "box-inconsistent")]
    public void Measured_box_that_contradicts_itself_is_refused(double? deep, double? front, double? rear, string code)
    {
        MeasuredBox box = new()
        {
            HullLengthMm = 140,
            HullWidthMm = 16,
            FrontDepthMm = 40,
            DeepLengthMm = deep,
            FrontAngleDegrees = front,
            RearAngleDegrees = rear,
        };
        Only(Design with { Base = new() { Box = BoxKind.Measured, Fixing = Fixing.BaseOnly, Measured = box } }, code);
    }

    [Fact]
    public void Measured_box_whose_three_measures_agree_is_taken()
    {
        MeasuredBox box = new() { HullLengthMm = 140, HullWidthMm = 16, FrontDepthMm = 40, DeepLengthMm = 125.9, FrontAngleDegrees = 10, RearAngleDegrees = 10 };
        Assert.Empty(Findings(Design with { Base = new() { Box = BoxKind.Measured, Fixing = Fixing.BaseOnly, Measured = box } }));
    }

    private static FinDesign With(CarbonRod rod) => Design with { Hardware = new() { CarbonRods = [rod] } };

    private static Finding Only(FinDesign design, string code)
    {
        List<Finding> findings = Findings(design);
        Assert.True(findings.Count == 1, string.Join('\n', findings));
        Assert.Equal(code, findings[0].Code);
        return findings[0];
    }

    private static List<Finding> Findings(FinDesign design)
    {
        List<Finding> findings = [];
        FinSolids? fin = FinSolids.Build(design, TestDesigns.Broad, Skin, findings);
        Assert.Equal(findings.Exists(f => f.IsError), fin is null);
        Assert.All(findings, f => Assert.True(DesignPath.Exists(design, f.Path), f.Path));
        return findings;
    }
}
