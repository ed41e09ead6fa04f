using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Parts;
using Finwright.Geometry.Solids;
using Finwright.Making.Printing;
using Finwright.Making.Tests.Layers;

namespace Finwright.Making.Tests.Printing;

public sealed class OrientationRankingTests
{
    private static readonly PrintRoom Room = new(0.24, 0.20, 0.21, 0.005);

    // A plate like a blade: 100 mm along x, 180 mm down y, 10 mm across z.
    private static readonly Resting Standing = new(PrintAttitude.Standing, new(0, -1, 0)), Lying = new(PrintAttitude.Lying, new(0, 0, 1));

    private static TriangleMesh Plate(double y = 180e-3) =>
        TestParts.Build(new PrismSolid([Rings.Rectangle(100e-3, y)], 10e-3).Placed(Placement.Shift(new(0, y / 2, -5e-3))));

    private static IReadOnlyList<RankedWay> Rank(TriangleMesh mesh, params Resting[] ways) =>
        OrientationRanking.Rank(mesh, ways, Room, new(0, 1, 0), TestParts.Settings, new PrinterModel());

    [Fact]
    public void Rank_plate_lies_before_it_stands_because_of_its_layers()
    {
        IReadOnlyList<RankedWay> ranked = Rank(Plate(), Standing, Lying);
        Assert.Equal([PrintAttitude.Lying, PrintAttitude.Standing], ranked.Select(w => w.Way.Attitude));
        Assert.Equal([1, 2], ranked.Select(w => w.Rank));
        // The span lies in the layers of a lying plate and pulls those of a standing one apart.
        Assert.Equal(Math.PI / 2, ranked[0].LoadAngle, 1e-9);
        Assert.Equal(0, ranked[1].LoadAngle, 1e-9);
        Assert.Equal(LayersToLoad.Across, ranked[1].Load);
        Assert.Equal(10e-3, ranked[0].Height, 1e-6);
        Assert.Equal(180e-3, ranked[1].Height, 1e-6);
        Assert.Equal(100e-3 * 180e-3, ranked[0].Contact, 1e-7);
        Assert.Equal(100e-3 * 10e-3, ranked[1].Contact, 1e-7);
        Assert.Equal(0, ranked[0].Overhang);
        Assert.Contains("pulls the layers apart", ranked[1].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Rank_what_does_not_fit_comes_last_and_says_by_how_much()
    {
        // 300 mm stand in no room 210 mm high; lying it is longer than the bed's diagonal allows (√(240² + 200²) = 312 mm, less its width).
        IReadOnlyList<RankedWay> ranked = Rank(Plate(230e-3), Lying, Standing);
        Assert.True(ranked[0].Laid.Fits);
        Assert.Equal(PrintAttitude.Lying, ranked[0].Way.Attitude);
        Assert.False(ranked[1].Laid.Fits);
        Assert.Equal(230.0 / 210, ranked[1].Laid.Fill, 1e-6);
        Assert.Contains("1.10 times", ranked[1].Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(29, LayersToLoad.Across)]
    [InlineData(31, LayersToLoad.Slanting)]
    [InlineData(59, LayersToLoad.Slanting)]
    [InlineData(61, LayersToLoad.Along)]
    [InlineData(119, LayersToLoad.Along)]
    [InlineData(121, LayersToLoad.Slanting)]
    public void Rank_tells_how_the_layers_lie_to_the_load(double degrees, LayersToLoad load)
    {
        // The stress leans so far from the normal of a standing plate's layers; which way it points and how long it is do not matter.
        double angle = degrees * Math.PI / 180;
        RankedWay way = Assert.Single(OrientationRanking.Rank(Plate(), [Standing], Room, new(0, 3 * Math.Cos(angle), 3 * Math.Sin(angle)), TestParts.Settings, new PrinterModel()));
        Assert.Equal(load, way.Load);
        Assert.Equal(Math.Min(angle, Math.PI - angle), way.LoadAngle, 1e-9);
    }

    [Fact]
    public void Rank_takes_the_rough_time_worked_by_hand()
    {
        // 100 × 180 × 10 mm: 180 cm³, skin 416 cm² of 1.35 mm is 56.16 cm³, 15 % of the rest 18.576 cm³; 60 mm/s × 0.45 × 0.2 = 5.4 mm³/s; 50 layers of 1.5 s, 480 s to begin with.
        double plastic = 56_160 + 0.15 * (180_000 - 56_160);
        Assert.Equal(480 + plastic / 5.4 + 50 * 1.5, Rank(Plate(), Lying)[0].Seconds, 1e-3);
        // A nozzle that melts 2 mm³/s decides; standing, 900 layers wait 20 s each.
        Assert.Equal(480 + plastic / 2 + 75, OrientationRanking.Rank(Plate(), [Lying], Room, new(0, 1, 0), TestParts.Settings, new PrinterModel { FlowLimit = 2e-9 })[0].Seconds, 1e-3);
        Assert.Equal(480 + 900 * 21.5, OrientationRanking.Rank(Plate(), [Standing], Room, new(0, 1, 0), TestParts.Settings, new PrinterModel { LeastLayerTime = 20 })[0].Seconds, 1e-3);
        // A sheet of less than its walls is all skin.
        TriangleMesh sheet = TestParts.Build(new PrismSolid([Rings.Rectangle(100e-3, 100e-3)], 1e-3));
        Assert.Equal(480 + 10_000 / 5.4 + 5 * 1.5, Rank(sheet, Lying)[0].Seconds, 1e-3);
    }

    [Fact]
    public void Rank_of_ways_whose_layers_lie_alike_the_one_with_less_overhang_and_then_the_quicker_comes_first()
    {
        // On its edge the plate has its layers along the span too, and nothing hangs over; it is ten times as high.
        Resting edge = new(PrintAttitude.Lying, new(1, 0, 0));
        IReadOnlyList<RankedWay> plate = Rank(Plate(), edge, Lying);
        Assert.Equal([Lying, edge], plate.Select(w => w.Way));
        Assert.Contains("it takes longer", plate[1].Reason, StringComparison.Ordinal);
        // A cone leaning out by 55 degrees: 25 mm high, on its small end much hangs over, on its large end nothing, and neither takes longer.
        double big = 2e-3 + 25e-3 * Math.Tan(55 * Math.PI / 180);
        TriangleMesh cone = TestParts.Revolved(z => 2e-3 + (big - 2e-3) * z / 25e-3, [0, 25e-3], 90);
        Resting point = new(PrintAttitude.Standing, new(0, 0, -1)), foot = new(PrintAttitude.Standing, new(0, 0, 1));
        IReadOnlyList<RankedWay> cones = OrientationRanking.Rank(cone, [point, foot], Room, new(1, 0, 0), TestParts.Settings, new PrinterModel());
        Assert.Equal([foot, point], cones.Select(w => w.Way));
        Assert.Equal(0, cones[0].Overhang);
        Assert.Equal(cones[0].Seconds, cones[1].Seconds, 1e-6);
        Assert.Contains("it overhangs more", cones[1].Reason, StringComparison.Ordinal);
        // Alike in everything: as they were named.
        Assert.Contains("named later", Rank(Plate(), Lying, Lying)[1].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Rank_of_ways_that_do_not_fit_the_one_that_nearly_does_comes_first_whatever_its_layers()
    {
        PrintRoom low = new(0.24, 0.20, 0.15, 0.005), narrow = new(0.12, 0.10, 0.15, 0.005);
        Assert.Equal([Lying, Standing], OrientationRanking.Rank(Plate(), [Standing, Lying], low, new(0, 1, 0), TestParts.Settings, new PrinterModel()).Select(w => w.Way));
        // Standing, 180 mm are too high by a fifth; lying, they are far too long for a bed of 110 mm.
        IReadOnlyList<RankedWay> none = OrientationRanking.Rank(Plate(), [Lying, Standing], narrow, new(0, 1, 0), TestParts.Settings, new PrinterModel());
        Assert.Equal([Standing, Lying], none.Select(w => w.Way));
        Assert.True(none[0].Laid.Fill < none[1].Laid.Fill && none[0].Load > none[1].Load);
    }

    [Fact]
    public void Rank_refuses_what_means_nothing()
    {
        TriangleMesh plate = Plate();
        Assert.Throws<ArgumentException>(() => Rank(plate));
        Assert.Throws<ArgumentOutOfRangeException>(() => OrientationRanking.Rank(plate, [Lying], Room, new(0, 0, 0), TestParts.Settings, new PrinterModel()));
        Assert.Throws<ArgumentOutOfRangeException>(() => OrientationRanking.Rank(plate, [Lying], Room, new(0, 1, 0), TestParts.Settings, new PrinterModel(), overhangLimit: 1.6));
    }

    [Theory]
    [InlineData(45, 0)]
    [InlineData(55, 1)]
    public void Rank_cone_on_its_point_overhangs_beyond_the_limit(double halfAngleDegrees, int overhangs)
    {
        // A cone standing on a small flat: all its side leans out by its half angle; area π (R + r) √((R − r)² + h²), 180 corners: 0.1 %.
        const double r = 2e-3, h = 10e-3;
        double big = r + h * Math.Tan(halfAngleDegrees * Math.PI / 180);
        TriangleMesh cone = TestParts.Revolved(z => r + (big - r) * z / h, [0, h], 180);
        RankedWay way = Assert.Single(OrientationRanking.Rank(cone, [new(PrintAttitude.Standing, new(0, 0, -1))], Room, new(1, 0, 0), TestParts.Settings, new PrinterModel()));
        double side = Math.PI * (big + r) * Math.Sqrt((big - r) * (big - r) + h * h);
        Assert.Equal(overhangs * side, way.Overhang, 1e-3 * side);
        Assert.Equal(Math.PI * r * r, way.Contact, 1e-7);
    }
}
