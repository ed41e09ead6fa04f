using Finwright.Design;
using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Parts;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.FromDesign;

public sealed class PartPlanTests(PartFixture fixture) : IClassFixture<PartFixture>
{
    private static FinDesign Plain => PartFixture.Design with
    {
        Pour = new() { Ports = new() { Dimples = false } },
        Base = new() { Gauge = false },
    };

    private static FinDesign CutTwice => Plain with
    {
        Parts = new() { Cuts = [new() { AtDepthMm = 100, SlopeDegrees = 10 }, new() { AtDepthMm = 200 }] },
    };

    [Fact]
    public void Build_fin_that_fits_gives_blade_base_and_gauge_each_whole()
    {
        PartPlan plan = fixture.Build(PartFixture.Design with { Parts = new() { Number = "FW-21" } }, out List<Finding> findings);
        Assert.Equal("blade, base, gauge", string.Join(", ", plan.Parts.Select(p => p.Name)));
        Assert.All(plan.Parts, p => Assert.True(p.PieceCount == 1 && p.SealedVoidCount == 0 && MeshChecks.IsClosed(p.Mesh) && p.Laid.Fits, p.Name));
        Assert.DoesNotContain(findings, f => f.Severity != Severity.Note);
        Assert.Equal("blade front, blade rear, base front, base rear", string.Join(", ", plan.Ports.Select(p => p.Name)));
        Assert.NotNull(plan.Engraving);
    }

    [Fact]
    public void Build_cut_faces_stand_the_bond_gap_apart()
    {
        PartPlan plan = fixture.Build(CutTwice, out _);
        Assert.Equal("blade 1 of 3, blade 2 of 3, blade 3 of 3, base", string.Join(", ", plan.Parts.Select(p => p.Name)));
        for (int i = 0; i < 2; i++)
        {
            // 0.15 mm, half on either side. The kernel keeps single precision: 2e-8 m at 0.3 m.
            Assert.Equal(-0.075e-3, plan.Parts[i].Mesh.Points().Max(plan.Cuts[i].Beyond), 1e-7);
            Assert.Equal(0.075e-3, plan.Parts[i + 1].Mesh.Points().Min(plan.Cuts[i].Beyond), 1e-7);
        }
    }

    [Fact]
    public void Build_pieces_and_bond_gaps_and_dowel_bores_add_up_to_the_whole_blade()
    {
        PartPlan plan = fixture.Build(CutTwice, out _);
        SolidExpression whole = PartFixture.Solids().Blade, bored = whole.Without([.. plan.Dowels.Select(d => d.Tool())]);
        IReadOnlyList<SolidResult> parts = fixture.Kernel.Evaluate(
            [
                whole,
                .. plan.Cuts.Select(c => bored.TrimmedBy(c.Normal, c.Offset - 0.075e-3).TrimmedBy(-1 * c.Normal, -c.Offset - 0.075e-3)),
                .. plan.Dowels.Select(d => d.Tool()),
            ],
            TestContext.Current.CancellationToken);
        double sum = plan.Parts.Take(3).Sum(p => p.Volume) + parts.Skip(1).Sum(p => p.Volume);
        Assert.Equal(1, sum / parts[0].Volume, 6);
    }

    [Fact]
    public void Build_dowel_bores_of_both_pieces_are_round_of_the_right_size_and_in_line()
    {
        PartPlan plan = fixture.Build(CutTwice, out List<Finding> findings);
        Assert.DoesNotContain(findings, f => f.Code == "dowel-no-room");
        Assert.Equal(4, plan.Dowels.Count);
        foreach (Dowel dowel in plan.Dowels)
        {
            // 36 mm of dowel and 1 mm of room at the ends.
            Assert.Equal(37e-3, (dowel.To - dowel.From).Length, 9);
            Placement frame = Placement.Along(0.5 * (dowel.From + dowel.To), dowel.To - dowel.From, new(1, 0, 0));
            // Deep in the piece at the root side, and in the one at the tip side; never beyond the ends.
            foreach ((int piece, double height) in new[] { (dowel.Cut, -17e-3), (dowel.Cut, -8e-3), (dowel.Cut + 1, 8e-3), (dowel.Cut + 1, 17e-3) })
            {
                IReadOnlyList<Point2> hole = Assert.Single(fixture.Rings(plan.Parts[piece].Mesh, frame, height), r => PartFixture.Area(r) < 0 && PartFixture.Centroid(r).Length < 1e-3);
                Assert.True(PartFixture.Centroid(hole).Length < 0.02e-3, $"{PartFixture.Centroid(hole)} off the axis");
                // 3 mm dowel and 0.4 mm of bore allowance.
                Assert.Equal(3.4e-3, Math.Sqrt(-4 * PartFixture.Area(hole) / Math.PI), 0.01e-3);
            }

            foreach ((int piece, double height) in new[] { (dowel.Cut, -18.6e-3), (dowel.Cut + 1, 18.6e-3) })
                Assert.DoesNotContain(fixture.Rings(plan.Parts[piece].Mesh, frame, height), r => PartFixture.Area(r) < 0 && PartFixture.Centroid(r).Length < 1e-3);
            Assert.True(dowel.Wall >= 0.9e-3);
        }
    }

    [Fact]
    public void Build_dowel_keeps_clear_of_a_carbon_rod_in_its_place()
    {
        double y = 0.1, x = PartFixture.Blade.Outline.LeadingEdge(y) + 0.3 * PartFixture.Blade.Outline.Chord(y), slope = Math.Tan(0.15);
        PlacedFeature rod = new()
        {
            Name = "carbon rod 1",
            Kind = FeatureKind.CarbonRodBore,
            Path = "$.hardware.carbon_rods[0]",
            Owner = "carbon rod 1",
            Volume = FeatureVolume.Cylinder(4.4e-3, new(x - slope * y, 0, 0), new(x + slope * 0.1, 0.2, 0)),
            OpenBefore = 5e-3,
        };
        PartPlan plan = fixture.Build(
            Plain with { Parts = new() { Cuts = [new() { AtDepthMm = 100 }], DowelMm = 2, DowelLengthMm = 20 } }, out List<Finding> findings, PartFixture.Solids(rod));
        Assert.Empty(findings);
        Assert.Equal(2, plan.Dowels.Count);
        // Two lines of 0.45 mm between the bores of 4.4 and 2.4 mm.
        Assert.All(plan.Dowels, d => Assert.True(rod.Volume.DistanceTo(FeatureVolume.Cylinder(2.4e-3, d.From, d.To)) >= 0.9e-3 - 1e-6));
        Assert.True(plan.Dowels[0].Wall >= 0.9e-3);
    }

    [Fact]
    public void Build_dowel_thicker_than_the_blade_is_left_out_and_said_so()
    {
        PartPlan plan = fixture.Build(Plain with { Parts = new() { Cuts = [new() { AtDepthMm = 250 }], DowelMm = 9 } }, out List<Finding> findings);
        Assert.Empty(plan.Dowels);
        Finding finding = Assert.Single(findings, f => f.Code == "dowel-no-room");
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Equal("9.0 mm", finding.Limit);
        // The section at 250 mm is 8.6 mm thick: less two lines a side and the allowance about 6 mm are left, the taper takes its share.
        Assert.InRange(double.Parse(finding.Value!.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 4, 6.5);
    }

    [Theory]
    [InlineData(Side.Starboard)]
    [InlineData(Side.Port)]
    public void Build_dimples_have_their_depth_and_width_on_the_chosen_side(Side side)
    {
        PartPlan plan = fixture.Build(PartFixture.Design with { Pour = new() { Ports = new() { Side = side } } }, out List<Finding> findings);
        Assert.Empty(findings);
        double sign = side == Side.Starboard ? 1 : -1;
        foreach (PortDimple port in plan.Ports.Where(p => p.Name.StartsWith("blade", StringComparison.Ordinal)))
        {
            TriangleMesh mesh = plan.Parts[0].Mesh;
            IReadOnlyList<double> z = new MeshProbe(mesh).Crossings(port.Centre.X, port.Centre.Y);
            double floor = side == Side.Starboard ? z[0] : z[^1];
            // 1 mm under the skin; facets lie within 0.01 mm of the skin.
            Assert.Equal(sign * (PartFixture.Blade.HalfThickness(port.Centre.X, port.Centre.Y) - 1e-3), floor, 0.01e-3);
            IReadOnlyList<Point2> hole = Assert.Single(
                fixture.Rings(mesh, Placement.Identity, floor + sign * 0.1e-3), r => PartFixture.Area(r) < 0 && (PartFixture.Centroid(r) - new Point2(port.Centre.X, port.Centre.Y)).Length < 1e-3);
            Assert.Equal(4e-3, Math.Sqrt(-4 * PartFixture.Area(hole) / Math.PI), 0.01e-3);
        }

        Assert.True(plan.Ports[0].Centre.X < plan.Ports[1].Centre.X);
    }

    [Fact]
    public void Build_dimples_too_deep_for_the_blade_are_left_out_and_said_so()
    {
        PartPlan plan = fixture.Build(PartFixture.Design with { Pour = new() { Ports = new() { DepthMm = 6, DiameterMm = 12 } }, Print = PartFixture.Design.Print with { Walls = 12 } }, out List<Finding> findings);
        Assert.DoesNotContain(plan.Ports, p => p.Name.StartsWith("blade", StringComparison.Ordinal));
        Assert.Equal(2, findings.Count(f => f.Code == "port-no-room" && f.Message.Contains("blade", StringComparison.Ordinal)));
    }

    [Fact]
    public void Build_a_further_port_lies_where_the_design_puts_it()
    {
        PartPlan plan = fixture.Build(PartFixture.Design with { Pour = new() { Ports = new() { Further = [new() { AtDepthMm = 120, AtChordPercent = 40 }] } } }, out List<Finding> findings);
        Assert.Empty(findings);
        PortDimple port = Assert.Single(plan.Ports, p => p.Name.EndsWith("further 1", StringComparison.Ordinal));
        Assert.Equal(0.12, port.Centre.Y, 9);
        Assert.Equal(PartFixture.Blade.Outline.LeadingEdge(0.12) + 0.4 * PartFixture.Blade.Outline.Chord(0.12), port.Centre.X, 9);
        Assert.StartsWith("blade", port.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void Build_a_further_port_beyond_the_tip_is_refused_with_its_place()
    {
        fixture.Build(PartFixture.Design with { Pour = new() { Ports = new() { Further = [new() { AtDepthMm = 799, AtChordPercent = 40 }] } } }, out List<Finding> findings);
        Finding finding = Assert.Single(findings, f => f.Code == "port-beyond-tip");
        Assert.Equal("$.pour.ports.further[0].at_depth_mm", finding.Path);
        Assert.True(finding.IsError);
    }

    [Fact]
    public void Build_number_on_the_root_face_reads_the_right_way_round_and_has_its_depth()
    {
        PartPlan plan = fixture.Build(Plain with { Parts = new() { Number = "L", EngravingMm = 0.5 } }, out List<Finding> findings);
        Assert.Empty(findings);
        EngravedText text = plan.Engraving!;
        // Looking at the root face from the hull, with starboard up, aft is to the right: axes x and z of the design. An L leans on its left and lower side.
        Placement seen = new(new(1, 0, 0), new(0, 0, 1), new(0, -1, 0), default);
        Point2[] groove = [.. Assert.Single(fixture.Rings(plan.Parts[0].Mesh, seen, -0.25e-3), r => PartFixture.Area(r) < 0).Reverse()];
        double area = StrokeText.Outline("L", text.Place.Height, text.Pen).Sum(PartFixture.Area);
        Assert.Equal(1, PartFixture.Area(groove) / area, 3);
        Point2 middle = PartFixture.Centroid(groove), box = new((groove.Min(p => p.X) + groove.Max(p => p.X)) / 2, (groove.Min(p => p.Y) + groove.Max(p => p.Y)) / 2);
        Assert.True(middle.X < box.X && middle.Y < box.Y);
        Assert.Single(fixture.Rings(plan.Parts[0].Mesh, seen, -0.49e-3), r => PartFixture.Area(r) < 0);
        Assert.DoesNotContain(fixture.Rings(plan.Parts[0].Mesh, seen, -0.51e-3), r => PartFixture.Area(r) < 0);
    }

    [Fact]
    public void Build_number_keeps_clear_of_a_bore_in_the_root_face()
    {
        PlacedFeature bore = new()
        {
            Name = "bolt",
            Kind = FeatureKind.BoltBore,
            Path = "$.hardware",
            Owner = "bolt",
            Volume = FeatureVolume.Cylinder(6.4e-3, new(0.02, 0, 0), new(0.02, 0.03, 0)),
            OpenBefore = 5e-3,
        };
        PartPlan plan = fixture.Build(Plain with { Parts = new() { Number = "FW-21" } }, out List<Finding> findings, PartFixture.Solids(bore));
        Assert.Empty(findings);
        // The bore and five letters stay apart: as many holes in the face as the bore and the letters have outer rings.
        EngravedText text = plan.Engraving!;
        double half = StrokeText.Width("FW-21", text.Place.Height, text.Pen) / 2;
        Assert.True(Math.Abs(text.Place.Centre.X - 0.02) - half >= 3.2e-3 + 0.9e-3 - 1e-6);
    }

    [Fact]
    public void Build_number_too_long_for_the_face_is_left_out_and_said_so()
    {
        PartPlan plan = fixture.Build(Plain with { Parts = new() { Number = "WWWWWWWWWWWW" }, Print = PartFixture.Design.Print with { LineWidthMm = 1.5 } }, out List<Finding> findings);
        Assert.Null(plan.Engraving);
        Assert.Single(findings, f => f.Code == "engraving-no-room");
    }

    [Fact]
    public void Build_number_with_an_unknown_letter_is_an_error_not_an_exception()
    {
        fixture.Build(Plain with { Parts = new() { Number = "fin é" } }, out List<Finding> findings);
        Assert.Single(findings, f => f.Code == "engraving-character" && f.IsError);
    }

    [Fact]
    public void Build_gauge_has_the_length_depth_and_thickness_of_the_base_and_a_thin_plate_between()
    {
        PartPlan plan = fixture.Build(PartFixture.Design, out _);
        Bounds foot = plan.Parts[1].Mesh.Bounds(), gauge = plan.Parts[2].Mesh.Bounds();
        const double close = 0.02e-3;
        Assert.Equal(foot.Minimum.X, gauge.Minimum.X, close);
        Assert.Equal(foot.Minimum.Y, gauge.Minimum.Y, close);
        Assert.Equal(foot.Minimum.Z, gauge.Minimum.Z, close);
        Assert.Equal(foot.Maximum.X, gauge.Maximum.X, close);
        Assert.Equal(foot.Maximum.Y, gauge.Maximum.Y, close);
        Assert.Equal(foot.Maximum.Z, gauge.Maximum.Z, close);

        MeshProbe probe = new(plan.Parts[2].Mesh);
        double front = PartFixture.Plan.FrontX, rear = PartFixture.Plan.RearX;
        // Clear of the letters and of the finger hole.
        Assert.Equal([7.9e-3, 4.9e-3], probe.Crossings(front + 14e-3, -2e-3).Select(z => Math.Round(z, 6)));
        Assert.Equal([7.9e-3, -7.9e-3], probe.Crossings(front + 7.9e-3, -1e-6).Select(z => Math.Round(z, 6)));
        Assert.Equal([7.9e-3, -7.9e-3], probe.Crossings(rear - 7.9e-3, -1e-6).Select(z => Math.Round(z, 6)));
        Assert.Equal(2, probe.Crossings(front + 8.1e-3, -1e-6).Count);
        // End faces: 10 degrees at both ends, from the drawing. Outermost x at two depths.
        foreach ((double y, double lean) in new[] { (-5e-3, 5e-3), (-25e-3, 25e-3) })
        {
            Point2[] all = [.. fixture.Rings(plan.Parts[2].Mesh, new(new(1, 0, 0), new(0, 0, 1), new(0, -1, 0), default), -y).SelectMany(r => r)];
            Assert.Equal(front + lean * Math.Tan(10 * Math.PI / 180), all.Min(p => p.X), close);
            Assert.Equal(rear - lean * Math.Tan(10 * Math.PI / 180), all.Max(p => p.X), close);
        }
    }

    [Fact]
    public void Build_gauge_lies_flush_and_narrows_upward_without_overhang()
    {
        PrintPart gauge = fixture.Build(PartFixture.Design, out _).Parts[2];
        Assert.Equal(PrintAttitude.Lying, gauge.Attitude);
        Assert.Equal(15.8e-3, gauge.Size.Z, 0.02e-3);
        TriangleMesh placed = gauge.Mesh.Placed(gauge.PrintPlacement);
        double Solid(double z) => fixture.Rings(placed, Placement.Identity, z).Sum(PartFixture.Area);
        double[] areas = [Solid(0.1e-3), Solid(1.5e-3), Solid(2.5e-3), Solid(3.1e-3), Solid(8e-3), Solid(15.7e-3)];
        for (int i = 1; i < areas.Length; i++)
            Assert.True(areas[i] <= areas[i - 1] * (1 + 1e-6));
    }

    [Fact]
    public void Build_blade_too_large_for_the_bed_is_cut_as_proposed_and_every_piece_fits()
    {
        FinDesign small = Plain with { Print = new() { BedXMm = 180, BedYMm = 180, BedZMm = 180 } };
        PartPlan plan = fixture.Build(small, out List<Finding> findings);
        Assert.True(plan.CutsAreProposed);
        // 300 mm of span on 180 mm: two pieces standing.
        Assert.Equal(0.15, Assert.Single(plan.Cuts).Through.Y, 3e-3);
        Assert.Contains(findings, f => f.Code == "cuts-proposed" && f.Severity == Severity.Note);
        Assert.All(plan.Parts, p => Assert.True(p.Laid.Fits, p.Name));
        Assert.Equal(plan.Parts.Count, plan.Plates.Sum(p => p.Parts.Count));
    }

    [Fact]
    public void Build_blade_too_large_and_no_cut_allowed_says_by_how_much_and_where_to_cut()
    {
        PartPlan plan = fixture.Build(Plain with { Print = new() { BedXMm = 180, BedYMm = 180, BedZMm = 180 }, Parts = new() { ProposeCuts = false } }, out List<Finding> findings);
        Finding finding = Assert.Single(findings, f => f.Code == "part-too-large");
        Assert.True(finding.IsError);
        Assert.Contains("Cut it at", finding.Remedy, StringComparison.Ordinal);
        Assert.Contains("bed of at least", finding.Remedy, StringComparison.Ordinal);
        Assert.Equal("base", string.Join(", ", plan.Plates.SelectMany(p => p.Parts).Select(p => p.Part.Name)));
    }

    [Fact]
    public void Build_blade_that_would_fit_the_other_way_is_told_so()
    {
        FinDesign low = Plain with { Print = new() { BedXMm = 400, BedYMm = 300, BedZMm = 120 }, Parts = new() { BladeAttitude = PrintAttitude.Standing, ProposeCuts = false } };
        fixture.Build(low, out List<Finding> findings);
        Finding finding = Assert.Single(findings, f => f.Code == "part-too-large");
        // 300 mm of span on 120 mm of height.
        Assert.Contains("180.0 mm in height", finding.Message, StringComparison.Ordinal);
        Assert.StartsWith("Let it print lying", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Build_base_longer_than_the_bed_says_so_and_stays_off_the_plates()
    {
        PartPlan plan = fixture.Build(Plain with { Print = new() { BedXMm = 110, BedYMm = 110, BedZMm = 350 } }, out List<Finding> findings);
        Assert.Contains(findings, f => f.Code == "part-too-large" && f.Message.StartsWith("The base", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Plates.SelectMany(p => p.Parts), p => p.Part.Name == "base");
    }

    [Fact]
    public void Build_parts_on_plates_keep_to_the_bed_and_its_margin_and_apart_from_each_other()
    {
        FinDesign small = PartFixture.Design with { Print = new() { BedXMm = 180, BedYMm = 180, BedZMm = 120, EdgeMarginMm = 6, PartGapMm = 7 } };
        PartPlan plan = fixture.Build(small, out _);
        Assert.Equal(plan.Parts.Count, plan.Plates.Sum(p => p.Parts.Count));
        Assert.Equal(Enumerable.Range(1, plan.Plates.Count), plan.Plates.Select(p => p.Number));
        Assert.True(Assert.Single(plan.Plates[0].Parts).Part.IsGauge, "The gauge has the first plate to itself.");
        foreach (Plate plate in plan.Plates)
        {
            Bounds[] boxes = [.. plate.Parts.Select(p => p.Part.Mesh.Placed(p.Placement).Bounds())];
            Assert.All(plate.Parts, p => Assert.Equal(1, p.Placement.Determinant, 9));
            Assert.All(boxes, b => Assert.True(b.Minimum.X >= 0.006 - 1e-9 && b.Minimum.Y >= 0.006 - 1e-9 && b.Maximum.X <= 0.174 + 1e-9 && b.Maximum.Y <= 0.174 + 1e-9 && b.Maximum.Z <= 0.12));
            Assert.All(boxes, b => Assert.Equal(0, b.Minimum.Z, 9));
            for (int i = 0; i < boxes.Length; i++)
                for (int j = 0; j < i; j++)
                    Assert.True(Math.Max(
                        Math.Max(boxes[i].Minimum.X - boxes[j].Maximum.X, boxes[j].Minimum.X - boxes[i].Maximum.X),
                        Math.Max(boxes[i].Minimum.Y - boxes[j].Maximum.Y, boxes[j].Minimum.Y - boxes[i].Maximum.Y)) >= 0.007 - 1e-9);
        }
    }

    [Fact]
    public void Build_cut_through_a_nut_pocket_is_refused_with_the_nearest_clear_depth()
    {
        PlacedFeature pocket = new()
        {
            Name = "front bolt: nut pocket",
            Kind = FeatureKind.NutPocket,
            Path = "$.hardware.box_bolts.blade_depth_mm",
            Owner = "front bolt",
            Volume = FeatureVolume.Prism(Rings.Hexagon(10.2e-3), new(0.02, 32e-3, 0), new(0.02, 38e-3, 0)),
        };
        PlacedFeature bore = pocket with { Name = "front bolt: bore", Kind = FeatureKind.BoltBore, Volume = FeatureVolume.Cylinder(6.4e-3, new(0.02, 0, 0), new(0.02, 45e-3, 0)), OpenBefore = 5e-3 };
        List<Finding> findings = fixture.Refuse(Plain with { Parts = new() { Cuts = [new() { AtDepthMm = 36 }] } }, PartFixture.Solids(pocket, bore));
        Finding finding = Assert.Single(findings, f => f.Code == "cut-through-pocket");
        Assert.Equal("$.parts.cuts[0].at_depth_mm", finding.Path);
        // Pocket 32 to 38 mm; three lines of 0.45 mm and half the bond gap of 0.15 mm: 1.425 mm beside it.
        Assert.Contains("at most 30.6 mm or at least 39.4 mm", finding.Remedy, StringComparison.Ordinal);
        Assert.NotNull(fixture.Build(Plain with { Parts = new() { Cuts = [new() { AtDepthMm = 39.5 }] } }, out _, PartFixture.Solids(pocket, bore)));
    }

    [Theory]
    [InlineData(310, 0)]
    [InlineData(20, 55)]
    [InlineData(290, -50)]
    public void Build_cut_that_misses_an_edge_of_the_blade_is_refused(double depth, double slope) =>
        Assert.Single(fixture.Refuse(Plain with { Parts = new() { Cuts = [new() { AtDepthMm = depth, SlopeDegrees = slope }] } }), f => f.Code == "cut-outside-blade");

    [Fact]
    public void Build_cuts_that_cross_inside_the_blade_are_refused() =>
        Assert.Single(
            fixture.Refuse(Plain with { Parts = new() { Cuts = [new() { AtDepthMm = 100, SlopeDegrees = 20 }, new() { AtDepthMm = 110, SlopeDegrees = -20 }] } }), f => f.Code == "cuts-meet");

    [Fact]
    public void Build_one_print_is_called_fin_and_has_its_number_on_the_port_side_of_the_base()
    {
        FinSolids apart = PartFixture.Solids();
        FinSolids asOne = apart with { Blade = new MeshSolid(PartFixture.Blade.Mesh()).And(PartFixture.Plan.Solid()), Base = null };
        PartPlan plan = fixture.Build(Plain with { Parts = new() { Number = "FW-21" } }, out List<Finding> findings, asOne);
        Assert.Empty(findings);
        Assert.Equal("fin", string.Join(", ", plan.Parts.Select(p => p.Name)));
        Assert.Equal(1, plan.Parts[0].PieceCount);
        // The port side lies at z = −7.9 mm and is left only by the letters, 0.4 mm deep.
        Point3 place = plan.Engraving!.Face.Apply(new(plan.Engraving.Place.Centre.X, plan.Engraving.Place.Centre.Y, 0));
        Assert.Equal(-7.9e-3, place.Z, 9);
        Assert.True(place.Y < 0);
        Assert.Equal(new Point3(0, 0, -1), plan.Engraving.Face.AxisZ);
    }

    [Fact]
    public void Build_same_design_gives_the_same_coordinates_on_a_fresh_kernel()
    {
        FinDesign design = CutTwice with { Parts = CutTwice.Parts with { Number = "A1" } };
        using ManifoldKernel other = new();
        PartPlan first = fixture.Build(design, out _);
        PartPlan? second = PartPlan.Build(design, PartFixture.Blade, PartFixture.Solids(), other, [], null, TestContext.Current.CancellationToken);
        Assert.Equal(first.Parts.Count, second!.Parts.Count);
        foreach ((PrintPart a, PrintPart b) in first.Parts.Zip(second.Parts))
        {
            Assert.True(a.Mesh.Coordinates.SequenceEqual(b.Mesh.Coordinates));
            Assert.True(a.Mesh.Corners.SequenceEqual(b.Mesh.Corners));
            Assert.Equal(a.PrintPlacement, b.PrintPlacement);
        }
    }

    [Fact]
    public void Build_that_is_stopped_throws_and_adds_nothing_more()
    {
        using CancellationTokenSource stopped = new();
        stopped.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => PartPlan.Build(Plain, PartFixture.Blade, PartFixture.Solids(), fixture.Kernel, [], null, stopped.Token));
    }

    [Fact]
    public void Build_reports_progress_that_rises_to_one()
    {
        List<double> shares = [];
        PartPlan.Build(Plain, PartFixture.Blade, PartFixture.Solids(), fixture.Kernel, [], new Listener(shares), TestContext.Current.CancellationToken);
        Assert.Equal(shares.Order(), shares);
        Assert.Equal(1, shares[^1]);
    }

    private sealed class Listener(List<double> shares) : IProgress<double>
    {
        public void Report(double value) => shares.Add(value);
    }
}
