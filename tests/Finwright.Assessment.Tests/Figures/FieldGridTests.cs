using CsCheck;
using Finwright.Assessment.Figures;
using OxyPlot;

namespace Finwright.Assessment.Tests.Figures;

public sealed class FieldGridTests
{
    private const int Steps = 80;

    [Fact]
    public void RegionFrom_a_level_below_all_is_the_whole_shape()
    {
        // A trapezoid with parallel sides 3 and 1, 2 high: area (3 + 1)/2 · 2 = 4. Straight edges: exact but for rounding.
        FieldGrid field = new(3, [new(0, 0), new(1.5, 0), new(3, 0), new(1, 2), new(1.5, 2), new(2, 2)], [1, 2, 3, 4, 5, 6]);
        Assert.Equal(4, Math.Abs(Polygons.Area(Assert.Single(field.RegionFrom(0)))), 1e-12);
        Assert.Empty(field.RegionFrom(7));
    }

    [Fact]
    public void RegionFrom_may_end_in_a_point()
    {
        // A triangle of base 2 and height 1 whose last row is one point.
        FieldGrid field = new(3, [new(0, 0), new(1, 0), new(2, 0), new(1, 1), new(1, 1), new(1, 1)], [5, 5, 5, 5, 5, 5]);
        Assert.Equal(1, Polygons.Area(FieldGrid.Joined(field.RegionFrom(5))), 1e-12);
    }

    [Fact]
    public void RegionFrom_the_level_of_a_cone_is_a_disc()
    {
        // Heights 1 - r: from 0.4 up lies a disc of radius 0.6. Straight lines between crossings at 1/40 of the side: the error is of the order (h/r)²/6, under 1e-3.
        double area = Polygons.Area(FieldGrid.Joined(Square((x, y) => 1 - Math.Sqrt(x * x + y * y)).RegionFrom(0.4)));
        Assert.Equal(Math.PI * 0.36, Math.Abs(area), 1e-3 * Math.PI * 0.36);
    }

    [Fact]
    public void Joined_rings_leave_out_the_hole_and_whatever_lies_in_it()
    {
        // A rampart round the middle, r from 0.3 to 0.7, with a hill of radius 0.1 within.
        FieldGrid field = Square((x, y) =>
        {
            double r = Math.Sqrt(x * x + y * y);
            return Math.Max(0.2 - Math.Abs(r - 0.5), 0.1 - r);
        });
        IReadOnlyList<IReadOnlyList<DataPoint>> rings = field.RegionFrom(0);
        Assert.Equal(3, rings.Count);
        IReadOnlyList<DataPoint> line = FieldGrid.Joined(rings);
        // π (0.49 - 0.09 + 0.01); tolerance as for the disc, three times.
        Assert.Equal(Math.PI * 0.41, Math.Abs(Polygons.Area(line)), 3e-3 * Math.PI * 0.41);
        Assert.True(Polygons.Holds(line, new(0.013, 0.017)));
        Assert.False(Polygons.Holds(line, new(0.213, 0.017)));
        Assert.True(Polygons.Holds(line, new(0.513, 0.017)));
        Assert.False(Polygons.Holds(line, new(0.813, 0.017)));
    }

    [Fact]
    public void A_region_and_what_it_leaves_make_up_the_whole_and_higher_regions_are_smaller() =>
        Gen.Double[-1, 1].Array[36].Select(Gen.Double[-1, 1], Gen.Double[0, 0.5]).Hold((values, level, more) =>
        {
            DataPoint[] places = [.. Enumerable.Range(0, 36).Select(i => new DataPoint(i % 6, i / 6))];
            double Above(double[] field, double from) => Math.Abs(Polygons.Area(FieldGrid.Joined(new FieldGrid(6, places, field).RegionFrom(from))));
            double above = Above(values, level);
            // A square of side 5. Rounding only. What lies right at the level counts above, so what is left begins at the next number.
            Assert.Equal(25, above + Above([.. values.Select(value => -value)], Math.BitIncrement(-level)), 1e-9);
            Assert.True(Above(values, level + more) <= above + 1e-9);
        });

    [Fact]
    public void A_field_with_a_hole_in_its_numbers_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new FieldGrid(2, new DataPoint[4], [1, 2, double.NaN, 4]));
        Assert.Throws<ArgumentException>(() => new FieldGrid(3, new DataPoint[4], [1, 2, 3, 4]));
    }

    private static FieldGrid Square(Func<double, double, double> height)
    {
        DataPoint[] places = [.. from j in Enumerable.Range(0, Steps + 1) from i in Enumerable.Range(0, Steps + 1) select new DataPoint(2.0 * i / Steps - 1, 2.0 * j / Steps - 1)];
        return new(Steps + 1, places, [.. places.Select(place => height(place.X, place.Y))]);
    }
}
