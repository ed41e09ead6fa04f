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
