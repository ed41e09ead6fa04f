using Finwright.Design;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Parts;
using Finwright.Geometry.Solids;
using Finwright.Geometry.Tests.Features;

namespace Finwright.Geometry.Tests.FromDesign;

/// <summary>Bores, pockets, slots and cavities measured on the finished solids.</summary>
public sealed class FinSolidsTests : IDisposable
{
    // Solids keep 24 bits of each coordinate; polygons stand in for circles to within 4 µm and have the circle's area.
    private const double Position = 2e-6, Size = 2e-6;

    private static readonly TriangleMesh Skin = TestDesigns.Broad.Mesh();

    private readonly ManifoldKernel _kernel = new();

    public void Dispose() => _kernel.Dispose();

    [Fact]
    public void Base_only_bolts_have_a_bore_and_a_nut_pocket_at_their_depth_below_the_top_edge()
    {
        FinSolids fin = Build(TestDesigns.Design);
        foreach (BoltAxis bolt in fin.Plan.Bolts)
        {
            Point3 top = fin.Plan.OnTopEdge(bolt.AtHull, bolt.Up), down = -1 * bolt.Up;
            Placement along = Placement.Along(top, down, new(1, 0, 0));
            // 6 mm bolt and 0.4 mm bore allowance.
            IReadOnlyList<Point2> bore = Hole(fin.Base!, along, 5e-3);
            Assert.Equal(6.4e-3, Slices.Diameter(bore), Size);
            Assert.Equal(0, Slices.Centroid(bore).Length, Position);
            // 10.0 mm across flats (ISO 4032) and 0.2 mm allowance, flats to the sides of the fin; its middle 12 mm below the top edge.
            IReadOnlyList<Point2> nut = Hole(fin.Base!, along, 12e-3);
            (double low, double high) = Slices.Range(nut, p => p.Y);
            // The base lies on its starboard side: on its upper side the way in for the nut leaves a layer of 0.2 mm more.
            Assert.Equal(-5.1e-3, low, Size);
            Assert.Equal(5.3e-3, high, Size);
            (low, high) = Slices.Range(nut, p => p.X);
            Assert.Equal(10.2e-3 * 2 / Math.Sqrt(3), high - low, Size);
            Assert.Equal(0, high + low, 2 * Position);
            // 5.2 mm high (ISO 4032) and 0.2 mm allowance: from 9.3 to 14.7 mm.
            Assert.Equal(6.4e-3, Slices.Diameter(Hole(fin.Base!, along, 9.29e-3)), Size);
            Assert.True(Slices.Diameter(Hole(fin.Base!, along, 9.31e-3)) > 10e-3);
            Assert.True(Slices.Diameter(Hole(fin.Base!, along, 14.69e-3)) > 10e-3);
            Assert.Equal(6.4e-3, Slices.Diameter(Hole(fin.Base!, along, 14.71e-3)), Size);
            // 5 mm of room for the bolt's end.
            Assert.NotEmpty(Holes(fin.Base!, along, 19.69e-3));
            Assert.Empty(Holes(fin.Base!, along, 19.71e-3));
        }

        AssertSound(fin);
    }

    [Theory]
    [InlineData(PrintAttitude.Lying)]
    [InlineData(PrintAttitude.Standing)]
    public void Every_nut_pocket_is_open_straight_up_as_printed_until_the_whole_nut_is_in(PrintAttitude attitude)
    {
        FinSolids fin = Build(TestDesigns.Design with { Parts = new() { BaseAttitude = attitude } });
        Point3 up = attitude == PrintAttitude.Lying ? new(0, 0, -1) : new(0, -1, 0);
        MeshProbe probe = new(Evaluate([fin.Base!])[0].Mesh);
        foreach (PlacedFeature pocket in fin.Features.Where(f => f.NeedsPause))
        {
            // No plastic over any point of the nut below the nut's own top.
            Point3 half = 0.499 * (pocket.Volume.To - pocket.Volume.From), aside = 5e-3 * new Point3(1, 0, 0);
            double top = pocket.Volume.Reach(up);
            foreach (Point3 place in new[] { pocket.Volume.Middle + half, pocket.Volume.Middle - half, pocket.Volume.Middle + aside, pocket.Volume.Middle - aside })
                for (double height = place.Dot(up); height < top - 1e-5; height += 0.2e-3)
                    Assert.False(probe.Contains(place + (height - place.Dot(up)) * up), $"{pocket.Name}: plastic {1e3 * (top - height):0.0} mm below the nut's top.");
        }
    }

    [Fact]
    public void Bores_and_pockets_take_their_closed_form_volumes_from_the_base()
    {
        FinSolids fin = Build(TestDesigns.Design);
        double whole = Evaluate([fin.Plan.Solid()])[0].Volume, left = Evaluate([fin.Base!])[0].Volume;
        double hexagon = Math.Sqrt(3) / 2 * 10.2e-3 * 10.2e-3, circle = Math.PI / 4 * 6.4e-3 * 6.4e-3;
        // The bore inside the nut pocket counts once; the bolts stand square to the top edge, so each mouth is a flat circle.
        // Above its middle the pocket is as wide as the nut's corners, a layer of 0.2 mm higher than its flat: the nut sinks in there at the pause.
        double pocket = hexagon / 2 + 2 / Math.Sqrt(3) * 10.2e-3 * (5.1e-3 + 0.2e-3);
        double bolt = circle * (19.7e-3 - 5.4e-3) + pocket * 5.4e-3;
        Assert.Equal(2 * bolt, whole - left, 2 * bolt * 1e-5);
    }

    [Theory]
    [InlineData(NutKind.Square, 10.2, 10.2, 5.2)]
    [InlineData(NutKind.Cross, 10.2, 12.2, 10.2)]
    public void Square_and_cross_nuts_have_pockets_of_their_own_form(NutKind nut, double alongMm, double acrossMm, double heightMm)
    {
        FinSolids fin = Build(TestDesigns.Design with { Hardware = new() { BoxBolts = new() { Nut = nut } } });
        BoltAxis bolt = fin.Plan.Bolts[0];
        Placement along = Placement.Along(fin.Plan.OnTopEdge(bolt.AtHull, bolt.Up), -1 * bolt.Up, new(1, 0, 0));
        IReadOnlyList<Point2> pocket = Hole(fin.Base!, along, 12e-3);
        (double low, double high) = Slices.Range(pocket, p => p.X);
        Assert.Equal(alongMm * 1e-3, high - low, 10e-6);
        (low, high) = Slices.Range(pocket, p => p.Y);
        // A layer of 0.2 mm more on the upper side, where the nut goes in.
        Assert.Equal(acrossMm * 1e-3 + 0.2e-3, high - low, Size);
        Assert.Equal(6.4e-3, Slices.Diameter(Hole(fin.Base!, along, 12e-3 - heightMm * 1e-3 / 2 - 1e-4)), Size);
        AssertSound(fin);
    }

    [Fact]
    public void Through_bolts_bore_base_and_blade_on_one_axis_to_the_nut_in_the_blade()
    {
        FinSolids fin = Build(TestDesigns.Design with { Base = new() { Fixing = Fixing.ThroughBolts } });
        foreach (BoltAxis bolt in fin.Plan.Bolts)
        {
            Placement along = Placement.Along(bolt.AtHull, -1 * bolt.Up, new(1, 0, 0));
            double nutAlong = 35e-3 / -bolt.Up.Y;
            Assert.Equal(6.4e-3, Slices.Diameter(Hole(fin.Base!, along, -10e-3)), Size);
            IReadOnlyList<Point2> inBlade = Hole(fin.Blade, along, 10e-3);
            Assert.Equal(6.4e-3, Slices.Diameter(inBlade), Size);
            Assert.Equal(0, Slices.Centroid(inBlade).Length, Position);
            (double low, double high) = Slices.Range(Hole(fin.Blade, along, nutAlong), p => p.Y);
            Assert.Equal(10.2e-3, high - low, Size);
        }

        Assert.Contains(fin.Pockets, p => p.NeedsPause && Math.Abs(p.Centre.Y - 35e-3) < 1e-9);
        AssertSound(fin);
    }

    [Fact]
    public void Clamp_rods_run_from_a_nut_in_the_blade_to_a_socket_pocket_at_the_top_edge()
    {
        FinSolids fin = Build(TestDesigns.Design with
        {
            Base = new() { Fixing = Fixing.ClampRods },
            Hardware = new() { ClampRods = [new() { FromFrontMm = 50 }, new() { FromFrontMm = 95, LeanDegrees = 8, Nut = NutKind.Square }] },
        });
        double[] leans = [0, 8 * Math.PI / 180], places = [50e-3, 95e-3];
        for (int i = 0; i < 2; i++)
        {
            Point3 atHull = new(fin.Plan.FrontX + places[i], 0, 0), down = new(Math.Sin(leans[i]), Math.Cos(leans[i]), 0);
            Placement along = Placement.Along(atHull, down, new(1, 0, 0));
            Assert.Equal(6.4e-3, Slices.Diameter(Hole(fin.Blade, along, 20e-3)), Size);
            Assert.Equal(6.4e-3, Slices.Diameter(Hole(fin.Base!, along, -3e-3)), Size);
            (double low, double high) = Slices.Range(Hole(fin.Blade, along, 40e-3 / Math.Cos(leans[i])), p => p.Y);
            Assert.Equal(10.2e-3, high - low, Size);
            Point3 top = fin.Plan.OnTopEdge(atHull, down);
            double topAlong = (top - atHull).Dot(down);
            // A 14.0 mm socket (from memory) and the pocket allowance; 8.2 mm deep.
            Assert.Equal(14.2e-3, Slices.Diameter(Hole(fin.Base!, along, topAlong + 7e-3)), Size);
            Assert.Equal(6.4e-3, Slices.Diameter(Hole(fin.Base!, along, topAlong + 8.3e-3)), Size);
        }

        Assert.Equal(2, fin.Hardware.Count(h => h.Kind == HardwareKind.ThreadedRod));
        AssertSound(fin);
    }

    [Fact]
    public void Carbon_rods_keep_their_margin_and_their_bore_is_straight_from_base_to_end()
    {
        FinSolids fin = Build(TestDesigns.Design with
        {
            Hardware = new()
            {
                CarbonRods =
                [
                    new() { RootChordPercent = 40, IntoBaseMm = 15 },
                    new() { RootChordPercent = 62, TipChordPercent = 55, DiameterMm = 3, ToDepthMm = 120 },
                ],
            },
        });
        Assert.Equal(2, fin.Bores.Count(b => b.Name.StartsWith("carbon", StringComparison.Ordinal)));
        foreach (BoreRecord bore in fin.Bores.Where(b => b.Name.StartsWith("carbon", StringComparison.Ordinal)))
        {
            double length = (bore.To - bore.From).Length;
            Placement along = Placement.Along(bore.From, bore.To - bore.From, new(1, 0, 0));
            foreach (double part in new[] { 0.2, 0.6, 0.999 })
            {
                IReadOnlyList<Point2> hole = Hole(fin.Blade, along, part * length);
                Assert.Equal(bore.Diameter, Slices.Diameter(hole), Size);
                Assert.Equal(0, Slices.Centroid(hole).Length, Position);
            }

            Assert.Empty(Holes(fin.Blade, along, length + 0.1e-3));
        }

        Assert.Equal(-15e-3, fin.Bores.First(b => b.Name == "carbon rod 1: bore").From.Y, 9);
        Assert.Equal(120e-3, fin.Bores.First(b => b.Name == "carbon rod 2: bore").To.Y, 9);
        Assert.Equal(3.4e-3, fin.Bores.First(b => b.Name == "carbon rod 2: bore").Diameter, 9);
        AssertSound(fin);
    }

    [Fact]
    public void Strip_slot_is_as_wide_and_as_deep_as_asked_square_to_the_edge()
    {
        FinDesign design = TestDesigns.Design;
        FinSolids fin = Build(design with { Shape = design.Shape with { Strip = new() { SheetMm = 0.4, AllowanceMm = 0.2, SlotDepthMm = 8 } } });
        Geometry.Outlines.Outline outline = TestDesigns.Broad.Outline;
        double y = 0.125;
        Point3 edge = new(outline.TrailingEdge(y), y, 0), along = new(outline.TrailingEdge(y + 0.01) - outline.TrailingEdge(y), 0.01, 0);
        // Cut square to the edge: in the frame, x runs forward into the blade and y across it.
        Point3 forward = new(-along.Y, along.X, 0);
        Placement frame = Placement.Along(edge, along, forward);
        IReadOnlyList<Point2> ring = Assert.Single(Slices.Cut(_kernel, fin.Blade, frame, 0));
        List<Point2> slot = [.. ring.Where(p => Math.Abs(p.Y) < 0.31e-3 && p.X < 20e-3)];
        Assert.Equal(8e-3, slot.Max(p => p.X), 5e-6);
        (double low, double high) = Slices.Range(slot, p => p.Y);
        Assert.Equal(0.6e-3, high - low, 2e-6);
        Assert.Equal(0, (low + high) / 2, 1e-6);
        AssertSound(fin);
    }

    [Fact]
    public void Cavity_has_its_room_its_ledge_and_its_lid()
    {
        Cavity cavity = new()
        {
            Name = "tracker",
            AtDepthMm = 80,
            AtChordPercent = 45,
            LengthMm = 30,
            HeightMm = 24,
            RoomMm = 6,
            LedgeMm = 2.5,
            LidMm = 1.2,
        };
        FinSolids fin = Build(TestDesigns.Design with { Hardware = new() { Cavities = [cavity] } });
        PocketRecord room = fin.Pockets.Single(p => p.Name == "tracker"), lid = fin.Pockets.Single(p => p.Name == "tracker: lid");
        Placement across = Placement.Along(new(room.Centre.X, 80e-3, 0), new(0, 0, 1), new(1, 0, 0));
        IReadOnlyList<Point2> inRoom = Hole(fin.Blade, across, room.Centre.Z);
        Assert.Equal(30e-3 * 24e-3, Math.Abs(Slices.Area(inRoom)), 1e-9);
        IReadOnlyList<Point2> inLid = Hole(fin.Blade, across, lid.Centre.Z);
        Assert.Equal(35e-3 * 29e-3, Math.Abs(Slices.Area(inLid)), 1e-9);
        Assert.Equal(1.2e-3, lid.Extent.Z, 9);
        Assert.Equal(6e-3, lid.Centre.Z - lid.Extent.Z / 2 - (room.Centre.Z - room.Extent.Z / 2), 9);
        // Flush at the lowest point of the opening: there the skin stands just as high as the recess.
        double lowest = double.PositiveInfinity, half = TestDesigns.Broad.HalfThickness(room.Centre.X, 80e-3);
        for (int i = 0; i <= 400; i++)
            for (int j = 0; j <= 400; j++)
                lowest = Math.Min(lowest, TestDesigns.Broad.HalfThickness(room.Centre.X + 35e-3 * (i / 400.0 - 0.5), 80e-3 + 29e-3 * (j / 400.0 - 0.5)));
        Assert.Equal(lowest, lid.Centre.Z + lid.Extent.Z / 2, 1e-6);
        Assert.True(lowest < half);
        AssertSound(fin);
    }

    [Fact]
    public void Cavity_to_port_is_the_mirror_of_one_to_starboard()
    {
        Cavity cavity = new() { Kind = CavityKind.Cylinder, AtDepthMm = 70, AtChordPercent = 40, LengthMm = 20, RoomMm = 5 };
        FinSolids starboard = Build(TestDesigns.Design with { Hardware = new() { Cavities = [cavity] } });
        FinSolids port = Build(TestDesigns.Design with { Hardware = new() { Cavities = [cavity with { Side = Side.Port }] } });
        Bounds a = Evaluate([new MeshSolid(Skin).Within(starboard.Features.First(f => f.Kind == FeatureKind.CavityRoom).Tool())])[0].Mesh.Bounds();
        Bounds b = Evaluate([new MeshSolid(Skin).Within(port.Features.First(f => f.Kind == FeatureKind.CavityRoom).Tool())])[0].Mesh.Bounds();
        Assert.Equal(a.Maximum.Z, -b.Minimum.Z, 1e-6);
        Assert.Equal(a.Minimum.Z, -b.Maximum.Z, 1e-6);
    }

    [Fact]
    public void Long_slot_tab_has_its_pin_across_and_its_screw_upright()
    {
        TaperedBlade small = new(0.22, 0.1, 0.05, 30 * Math.PI / 180, 0.09);
        FinSolids fin = Build(TestDesigns.Design with { Base = new() { Box = BoxKind.LongSlot, Fixing = Fixing.BaseOnly } }, small);
        // 3 mm pin, 11 mm above the hull, 8 mm before the rear end; 4 mm screw, 8 mm behind the front end (from memory); 0.4 mm allowance.
        Placement across = Placement.Shift(new(fin.Plan.RearX - 8e-3, -11e-3, 0));
        IReadOnlyList<Point2> pin = Hole(fin.Base!, across, 1e-3);
        Assert.Equal(3.4e-3, Slices.Diameter(pin), Size);
        Assert.Equal(0, Slices.Centroid(pin).Length, Position);
        Placement up = Placement.Along(new(fin.Plan.FrontX + 8e-3, 0, 0), new(0, -1, 0), new(1, 0, 0));
        IReadOnlyList<Point2> screw = Hole(fin.Base!, up, 5e-3);
        Assert.Equal(4.4e-3, Slices.Diameter(screw), Size);
        Assert.Equal(0, Slices.Centroid(screw).Length, Position);
        AssertSound(fin, small);
    }

    [Theory]
    [InlineData(Fixing.BaseOnly, PrintAttitude.Lying, 1e-6)]
    // As one it stands on the top edge of the base, 8 degrees off the hull plane on which the blade stands, so the ways in lean a little.
    [InlineData(Fixing.ThroughBolts, PrintAttitude.Standing, 3e-4)]
    public void Printed_as_one_is_a_single_piece_of_the_same_plastic(Fixing fixing, PrintAttitude attitude, double tolerance)
    {
        // Alike on the bed, so that the ways in for the nuts are cut on the same side.
        FinDesign apart = TestDesigns.Design with { Base = new() { Fixing = fixing }, Parts = new() { BladeAttitude = attitude, BaseAttitude = attitude } };
        FinSolids two = Build(apart), one = Build(apart with { Base = apart.Base with { Printed = BasePrinting.AsOne } });
        Assert.Null(one.Base);
        IReadOnlyList<SolidResult> results = Evaluate([two.Blade, two.Base!, one.Blade]);
        Assert.Equal(results[0].Volume + results[1].Volume, results[2].Volume, tolerance * results[2].Volume);
        Assert.Equal(1, results[2].PieceCount);
        Assert.Equal(0, results[2].SealedVoidCount);
    }

    [Fact]
    public void Build_twice_gives_the_same_bits()
    {
        FinDesign design = TestDesigns.Design with { Hardware = new() { CarbonRods = [new() { RootChordPercent = 40 }] } };
        TriangleMesh first = Evaluate([Build(design).Blade])[0].Mesh, second = Evaluate([Build(design).Blade])[0].Mesh;
        Assert.True(first.Coordinates.SequenceEqual(second.Coordinates) && first.Corners.SequenceEqual(second.Corners));
    }

    [Fact]
    public void Cut_list_gives_every_rod_a_length_that_fits_its_bore()
    {
        FinSolids fin = Build(TestDesigns.Design with
        {
            Base = new() { Fixing = Fixing.ClampRods },
            Hardware = new() { ClampRods = [new() { FromFrontMm = 75 }], CarbonRods = [new() { RootChordPercent = 70, DiameterMm = 3, IntoBaseMm = 12 }] },
        });
        HardwareItem threaded = fin.Hardware.Single(h => h.Kind == HardwareKind.ThreadedRod), carbon = fin.Hardware.Single(h => h.Kind == HardwareKind.CarbonRod);
        BoreRecord rodBore = fin.Bores.Single(b => b.Name == "clamp rod: bore"), carbonBore = fin.Bores.Single(b => b.Name == "carbon rod: bore");
        Assert.InRange(threaded.Length, (rodBore.To - rodBore.From).Length - 10e-3, (rodBore.To - rodBore.From).Length - 1e-3);
        Assert.Equal((carbonBore.To - carbonBore.From).Length - 1e-3, carbon.Length, 9);
        Assert.Equal(4, fin.Hardware.Where(h => h.Kind == HardwareKind.Nut).Sum(h => h.Count));
    }

    private static FinSolids Build(FinDesign design, TaperedBlade? blade = null)
    {
        List<Finding> findings = [];
        FinSolids? fin = FinSolids.Build(design, blade ?? TestDesigns.Broad, blade?.Mesh() ?? Skin, findings);
        Assert.True(fin is not null, string.Join('\n', findings));
        Assert.Empty(findings);
        return fin;
    }

    private IReadOnlyList<SolidResult> Evaluate(IReadOnlyList<SolidExpression> solids) =>
        _kernel.Evaluate(solids, TestContext.Current.CancellationToken);

    private void AssertSound(FinSolids fin, TaperedBlade? blade = null)
    {
        double whole = (blade?.Mesh() ?? Skin).Volume();
        foreach (SolidResult result in Evaluate(fin.Base is null ? [fin.Blade] : [fin.Blade, fin.Base]))
        {
            Assert.Equal(1, result.PieceCount);
            Assert.Equal(0, result.SealedVoidCount);
            Assert.InRange(result.Volume, 0, 2 * whole);
        }
    }

    // The holes round the frame's axis; others in the cut belong to other features.
    private IReadOnlyList<IReadOnlyList<Point2>> Holes(SolidExpression solid, Placement along, double height) =>
        [.. Slices.Cut(_kernel, solid, along, height).Where(r => Slices.Area(r) < 0 && Slices.Centroid(r).Length < 1e-3)];

    private IReadOnlyList<Point2> Hole(SolidExpression solid, Placement along, double height) => Assert.Single(Holes(solid, along, height));
}
