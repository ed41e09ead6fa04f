using Finwright.Geometry;
using Finwright.Geometry.Solids;
using Finwright.Making.Layers;
using Finwright.Making.Printing;
using Finwright.Making.Tests.Layers;

namespace Finwright.Making.Tests.Printing;

public sealed class PrintTimeTests
{
    private static readonly PrinterModel Printer = new() { TravelShare = 0, FirstLayerFactor = 1 };

    /// <summary>A box in layers, drawn by hand: 60 × 30 mm, 3 walls of 0.45 mm, 20 layers, five solid at each end.</summary>
    private static PartLayers Box(double infill = 0.15)
    {
        PrintSettings settings = TestParts.Settings with { InfillShare = infill };
        Point2[] outline = [new(0, 0), new(0.06, 0), new(0.06, 0.03), new(0, 0.03)];
        const double inside = (0.06 - 2.7e-3) * (0.03 - 2.7e-3);
        Layer[] layers = [.. Enumerable.Range(0, 20).Select(i => new Layer(
            i * 0.2e-3, (i + 1) * 0.2e-3, [outline], [], 0.06 * 0.03, inside, i is < 5 or >= 15 ? 0 : inside, (0.06 * 0.03 - inside) / 0.45e-3))];
        return new("box", settings, Placement.Identity, new(0.06, 0.03, 4e-3), layers);
    }

    [Theory]
    [InlineData(0.04, 0.06, 1.5, 0.04 / 0.06 + 0.06 / 1.5)]
    [InlineData(0.0001, 0.06, 1.5, 0.0163299316)]
    [InlineData(0.0024, 0.06, 1.5, 0.08)]
    public void Stretches_one_speeds_up_and_slows_down(double length, double speed, double acceleration, double seconds)
    {
        // s/v + v/a; 2 √(s/a) for 0.1 mm: 2 √(1e-4/1.5); both agree at s = v²/a = 2.4 mm. Hand arithmetic.
        Assert.Equal(seconds, PrintTime.Stretches(length, length, speed, acceleration), 1e-9);
        Assert.Equal(7 * seconds, PrintTime.Stretches(7 * length, length, speed, acceleration), 1e-9);
    }

    [Fact]
    public void Of_box_lays_the_lines_that_fill_it()
    {
        PrintEstimate print = PrintTime.Of(Box(), Printer);
        LayerTime middle = print.Layers[10], bottom = print.Layers[0];
        // Lines 0.225, 0.675 and 1.125 mm inside: 180 − 8 × 0.225 mm and so on; area over width for the rest. Plain arithmetic.
        Assert.Equal(0.180 - 8 * 0.225e-3, middle.OuterWall, 1e-12);
        Assert.Equal(2 * 0.180 - 8 * (0.675e-3 + 1.125e-3), middle.InnerWalls, 1e-12);
        Assert.Equal(57.3e-3 * 27.3e-3 / 0.45e-3, bottom.Solid, 1e-9);
        Assert.Equal(0, bottom.Infill);
        Assert.Equal(0.15 * 57.3e-3 * 27.3e-3 / 0.45e-3, middle.Infill, 1e-9);
        // Plastic: walls, ten solid layers, 15 % of ten layers of core.
        double walls = (0.06 * 0.03 - 57.3e-3 * 27.3e-3) * 4e-3, layer = 57.3e-3 * 27.3e-3 * 0.2e-3;
        Assert.Equal(walls, print.WallVolume, 1e-15);
        Assert.Equal(10 * layer, print.SolidVolume, 1e-15);
        Assert.Equal(1.5 * layer, print.InfillVolume, 1e-15);
        Assert.Equal(1270 * (walls + 11.5 * layer), print.Mass, 1e-12);
        Assert.Equal(print.Volume, print.Layers.Sum(l => (l.OuterWall + l.InnerWalls + l.Solid + l.Infill) * 0.45e-3 * 0.2e-3), 1e-12);
    }

    [Fact]
    public void Of_box_takes_the_time_worked_by_hand()
    {
        // Solid bottom layer. Outer wall 178.2 mm at 40 mm/s in stretches of 180/4 = 45 mm: each 45/40 + 40/1500 s, 3.96 of them.
        // Inner 345.6 mm at 60: each 45/60 + 60/1500, 7.68 of them. Solid 3476.2 mm in stretches π A/P = π × 1564.29/180 = 27.302 mm at 60.
        // Flow: 10 / (0.45 × 0.2) = 111 mm/s, no limit. Change 1.5 s.
        double stretch = Math.PI * 57.3 * 27.3 / 180, solid = 57.3 * 27.3 / 0.45;
        double byHand = 178.2 / 45 * (45.0 / 40 + 40.0 / 1500) + 345.6 / 45 * (45.0 / 60 + 60.0 / 1500) + solid / stretch * (stretch / 60 + 60.0 / 1500) + 1.5;
        PrintEstimate print = PrintTime.Of(Box(), Printer);
        Assert.Equal(byHand, print.Layers[0].Seconds, 1e-6);
        Assert.False(print.Layers[0].IsHeldBack);
        Assert.Equal(print.Seconds.Value, Printer.StartTime + print.Layers.Sum(l => l.Seconds), 1e-9);
        Assert.True(print.Seconds.Low < print.Seconds.Value && print.Seconds.Value < print.Seconds.High);
    }

    [Theory]
    [InlineData(0.15, 42.426407)]
    [InlineData(0.01, 60)]
    [InlineData(0, 60)]
    public void Of_core_takes_the_time_worked_by_hand(double share, double speed)
    {
        // Bends of the gyroid: √(a × 0.4 × width / share) = √(1500 × 0.4 × 0.45 / 0.15) = 42.4 mm/s; with thinner infill its own speed of 60 mm/s decides. Ways between lines: a fifth of all lines at 150 mm/s.
        double stretch = Math.PI * 57.3 * 27.3 / 180, infill = share * 57.3 * 27.3 / 0.45, lines = 178.2 + 345.6 + infill;
        double byHand = 178.2 / 45 * (45.0 / 40 + 40.0 / 1500) + 345.6 / 45 * (45.0 / 60 + 60.0 / 1500) + infill / stretch * (stretch / speed + speed / 1500) + 0.2 * lines / 150 + 1.5;
        LayerTime core = PrintTime.Of(Box(share), Printer with { TravelShare = 0.2, LeastLayerTime = 0 }).Layers[10];
        Assert.Equal(byHand, core.Seconds, 1e-6);
        Assert.False(core.IsHeldBack);
    }

    [Fact]
    public void Of_a_ring_gains_where_it_bends_the_other_way()
    {
        // An L, 60 mm and 60 mm, arms 30 mm: five corners lose twice half a line each, the sixth, which bends the other way, gains a quarter circle of half a line. All six are sharp: stretches of 240/6 = 40 mm.
        PartLayers box = Box(0);
        Layer el = box.Layers[10] with { Outline = [[new(0, 0), new(0.06, 0), new(0.06, 0.03), new(0.03, 0.03), new(0.03, 0.06), new(0, 0.06)]], CoreArea = 0, WallLength = 0.3, InsideArea = 0.06 * 0.03 };
        LayerTime time = PrintTime.Of(box with { Layers = [el] }, Printer with { LeastLayerTime = 0, LayerChange = 0 }).Layers[0];
        double outer = 240 - (10 - Math.PI / 2) * 0.225, inner = 300 - outer, solid = 0.06 * 0.03 / 0.45e-6 * 1e-3;
        Assert.Equal(outer * 1e-3, time.OuterWall, 1e-9);
        Assert.Equal(inner * 1e-3, time.InnerWalls, 1e-9);
        double stretch = Math.PI * 60 * 30 / 240;
        Assert.Equal(outer / 40 * (40.0 / 40 + 40.0 / 1500) + inner / 40 * (40.0 / 60 + 60.0 / 1500) + (solid * 1e3 / stretch) * (stretch / 60 + 60.0 / 1500), time.Seconds, 1e-5);
    }

    [Fact]
    public void Of_parts_of_unlike_height_goes_on_with_the_taller_one_alone()
    {
        PrinterModel printer = Printer with { LeastLayerTime = 0 };
        PartLayers tall = Box(), low = tall with { Layers = [.. tall.Layers.Take(12)] };
        PrintEstimate alone = PrintTime.Of(tall, printer), both = PrintTime.Of([low, tall], printer);
        Assert.Equal(20, both.Layers.Count);
        Assert.Equal(2 * (alone.Layers[11].Seconds - 1.5) + 1.5, both.Layers[11].Seconds, 1e-9);
        Assert.Equal(alone.Layers[12].Seconds, both.Layers[12].Seconds, 1e-12);
        // Its own doubt, not that of the start.
        double printing = both.Seconds.Value - printer.StartTime;
        Assert.Equal(printer.StartTime + 0.85 * printing, both.Seconds.Low, 1e-9);
        Assert.Equal(printer.StartTime + 1.25 * printing, both.Seconds.High, 1e-9);
    }

    [Fact]
    public void Of_box_is_held_down_by_flow_and_by_the_first_layer()
    {
        // 2 mm³/s through 0.45 × 0.2 mm is 22.2 mm/s for every line; with acceleration without end all lines take their length over it.
        PrinterModel slow = Printer with { FlowLimit = 2e-9, Acceleration = 1e9, LeastLayerTime = 0 };
        double lines = 0.06 * 0.03 / 0.45e-3, speed = 2e-9 / (0.45e-3 * 0.2e-3);
        Assert.Equal(lines / speed + 1.5, PrintTime.Of(Box(), slow).Layers[1].Seconds, 1e-3);
        Assert.Equal(2 * lines / speed + 1.5, PrintTime.Of(Box(), slow with { FirstLayerFactor = 0.5 }).Layers[0].Seconds, 1e-3);
    }

    [Fact]
    public void Of_small_layers_wait_and_parts_on_one_plate_share_the_wait()
    {
        PrinterModel waiting = Printer with { LeastLayerTime = 60 };
        PrintEstimate one = PrintTime.Of(Box(), waiting);
        Assert.All(one.Layers.Take(15).Skip(5), layer => Assert.Equal(61.5, layer.Seconds, 1e-9));
        Assert.True(one.Layers[7].IsHeldBack);
        // Two boxes: the wait is for both together, the change too.
        PrintEstimate two = PrintTime.Of([Box(), Box()], waiting);
        Assert.Equal(61.5, two.Layers[7].Seconds, 1e-9);
        Assert.Equal(2 * one.Mass, two.Mass, 1e-12);
        Assert.True(two.Seconds.Value < 2 * one.Seconds.Value - waiting.StartTime);
    }

    [Fact]
    public void Of_round_part_draws_its_rings_without_stopping()
    {
        PartLayers tube = TestParts.Slice(new PrismSolid([Rings.Circle(15e-3)], 2e-3));
        LayerTime layer = PrintTime.Of(tube, Printer with { LeastLayerTime = 0 }).Layers[5];
        // 2π (15 − 0.225) mm; tolerance: a polygon of the circle's area is a hair longer than it.
        Assert.Equal(2 * Math.PI * 14.775e-3, layer.OuterWall, 1e-5);
        Assert.Equal(2 * Math.PI * (14.325e-3 + 13.875e-3), layer.InnerWalls, 3e-5);
    }

    [Fact]
    public void Of_refuses_what_means_nothing()
    {
        Assert.Throws<ArgumentException>(() => PrintTime.Of([], Printer));
        foreach (PrinterModel impossible in (PrinterModel[])[
            Printer with { OuterWallSpeed = 0 }, Printer with { InnerWallSpeed = -1 }, Printer with { SolidSpeed = 0 }, Printer with { InfillSpeed = double.NaN }, Printer with { TravelSpeed = 0 }, Printer with { FlowLimit = 0 },
            Printer with { Acceleration = 0 }, Printer with { TravelShare = -0.1 }, Printer with { LayerChange = -1 }, Printer with { LeastLayerTime = -1 }, Printer with { StartTime = -1 }, Printer with { FirstLayerFactor = 0 }])
            Assert.Throws<ArgumentOutOfRangeException>(() => PrintTime.Of(Box(), impossible));
        Assert.Throws<ArgumentException>(() => PrintTime.Of([Box(), Box() with { Settings = TestParts.Settings with { LayerHeight = 0.3e-3 } }], Printer));
    }
}
