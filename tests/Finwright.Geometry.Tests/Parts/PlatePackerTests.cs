using CsCheck;
using Finwright.Geometry.Parts;

namespace Finwright.Geometry.Tests.Parts;

public sealed class PlatePackerTests
{
    [Fact]
    public void Pack_four_quarters_fill_one_plate()
    {
        IReadOnlyList<PackedPlace?> places = PlatePacker.Pack([.. Enumerable.Repeat(new Point2(0.5, 0.4), 4)], 1, 0.8, 0);
        Assert.All(places, p => Assert.Equal(0, p!.Value.Plate));
        Assert.Equal(4, places.Distinct().Count());
    }

    [Fact]
    public void Pack_gap_that_leaves_no_room_opens_a_second_plate()
    {
        IReadOnlyList<PackedPlace?> places = PlatePacker.Pack([new(0.5, 0.8), new(0.5, 0.8)], 1, 0.8, 0.01);
        Assert.Equal([0, 1], places.Select(p => p!.Value.Plate).Order());
    }

    [Fact]
    public void Pack_part_longer_than_the_plate_is_wide_is_turned()
    {
        PackedPlace place = PlatePacker.Pack([new(0.7, 0.2)], 0.3, 0.8, 0.01)[0]!.Value;
        Assert.True(place.Turned);
    }

    [Fact]
    public void Pack_part_larger_than_the_plate_has_no_place_and_does_not_disturb_the_rest()
    {
        IReadOnlyList<PackedPlace?> places = PlatePacker.Pack([new(2, 2), new(0.5, 0.5)], 1, 1, 0);
        Assert.Null(places[0]);
        Assert.Equal(new PackedPlace(0, 0, 0, false), places[1]);
    }

    [Fact]
    public void Pack_nothing_needs_no_plate() => Assert.Empty(PlatePacker.Pack([], 1, 1, 0));

    [Fact]
    public void Pack_many_small_parts_fill_most_of_the_plates()
    {
        // 64 squares of an eighth of the side fill the plate exactly.
        IReadOnlyList<PackedPlace?> places = PlatePacker.Pack([.. Enumerable.Repeat(new Point2(0.125, 0.125), 64)], 1, 1, 0);
        Assert.All(places, p => Assert.Equal(0, p!.Value.Plate));
    }

    [Fact]
    public void Pack_parts_keep_the_gap_and_stay_on_their_plate_whatever_their_sizes() =>
        (from sizes in Gen.Select(Gen.Double[0.02, 0.9], Gen.Double[0.02, 0.9]).Array[0, 14]
         from width in Gen.Double[0.3, 1]
         from depth in Gen.Double[0.3, 1]
         from gap in Gen.Double[0, 0.05]
         select (sizes, width, depth, gap)).Hold(
            c =>
            {
                Point2[] sizes = [.. c.sizes.Select(s => new Point2(s.Item1, s.Item2))];
                IReadOnlyList<PackedPlace?> places = PlatePacker.Pack(sizes, c.width, c.depth, c.gap);
                Assert.Equal(places, PlatePacker.Pack(sizes, c.width, c.depth, c.gap));
                const double slack = 1e-8; // rounding of sums of lengths below a metre
                for (int i = 0; i < sizes.Length; i++)
                {
                    bool could = Math.Min(sizes[i].X, sizes[i].Y) <= Math.Min(c.width, c.depth) && Math.Max(sizes[i].X, sizes[i].Y) <= Math.Max(c.width, c.depth);
                    Assert.Equal(could, places[i] is not null);
                    if (Box(i) is not { } a)
                        continue;
                    Assert.True(a.Left >= 0 && a.Front >= 0 && a.Right <= c.width + slack && a.Rear <= c.depth + slack);
                    for (int j = 0; j < i; j++)
                        if (Box(j) is { } b && a.Plate == b.Plate)
                            Assert.True(
                                a.Left >= b.Right + c.gap - slack || b.Left >= a.Right + c.gap - slack || a.Front >= b.Rear + c.gap - slack || b.Front >= a.Rear + c.gap - slack,
                                $"{a} meets {b}");
                }

                (int Plate, double Left, double Front, double Right, double Rear)? Box(int i) => places[i] is { } p
                    ? (p.Plate, p.X, p.Y, p.X + (p.Turned ? sizes[i].Y : sizes[i].X), p.Y + (p.Turned ? sizes[i].X : sizes[i].Y))
                    : null;
            },
            iter: 1000);
}
