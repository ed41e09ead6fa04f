using Finwright.Geometry;
using Finwright.Making.Pores;

namespace Finwright.Making.Tests.Pores;

public sealed class PortOpeningTests
{
    private const double Cell = 0.00738;

    [Theory]
    // Numerical reference, numpy: 20,000 random places and frames turned otherwise, wall level by counting 200³ points. Share ± 0.35 % from counting there,
    // ± 2 % from the 14³ places here; area from coarser surface points, 1 %.
    [InlineData(2e-3, 2e-3, 7.38e-3, 0.15, 1, 0, 0, 0.6589, 6.677)]
    [InlineData(3e-3, 2e-3, 7.38e-3, 0.15, 1, 0, 0, 0.9185, 11.018)]
    [InlineData(2e-3, 3e-3, 7.38e-3, 0.15, 1, 1, 0, 0.8079, 9.347)]
    [InlineData(4e-3, 3e-3, 7.38e-3, 0.15, 1, 2, 3, 1.0, 21.354)]
    [InlineData(3e-3, 1.5e-3, 5.5e-3, 0.20, 0, 0, 1, 1.0, 8.480)]
    public void Chance_agrees_with_random_places(double diameter, double depth, double cell, double share, double x, double y, double z, double chance, double squareMillimetres)
    {
        OpeningChance found = PortOpening.Chance(diameter, depth, cell, share, new(x, y, z));
        Assert.Equal(chance, found.Share, 0.02);
        Assert.Equal(squareMillimetres, found.MeanArea * 1e6, 0.01 * squareMillimetres);
    }

    [Fact]
    public void Hole_as_wide_as_the_cell_opens_both_wherever_it_is_drilled()
    {
        foreach (Point3 way in new Point3[] { new(1, 0, 0), new(0, -1, 1), new(1, 2, 3) })
        {
            OpeningChance found = PortOpening.Chance(Cell, Cell / 2, Cell, 0.15, way);
            Assert.True(found.IsCertain);
            Assert.True(found.LeastArea >= PortOpening.UsualArea);
        }
    }

    [Fact]
    public void Pin_hole_never_opens_both() => Assert.Equal(0, PortOpening.Chance(0.0003, 0.0005, Cell, 0.15, new(1, 0, 0)).Share);

    [Fact]
    public void Wider_and_deeper_holes_open_more_and_denser_infill_of_the_same_cell_less()
    {
        double before = 0;
        foreach (double millimetres in new[] { 1, 1.5, 2, 2.5, 3, 4, 5 })
        {
            double wide = PortOpening.Chance(millimetres * 1e-3, 0.002, Cell, 0.15, new(1, 0, 0)).Share;
            Assert.True(wide >= before);
            before = wide;
        }

        before = 0;
        foreach (double millimetres in new[] { 0.5, 1, 1.5, 2, 3, 4 })
        {
            double deep = PortOpening.Chance(0.002, millimetres * 1e-3, Cell, 0.15, new(1, 0, 0)).Share;
            Assert.True(deep >= before);
            before = deep;
        }

        Assert.True(PortOpening.Chance(0.002, 0.002, Cell, 0.4, new(1, 0, 0)).Share < PortOpening.Chance(0.002, 0.002, Cell, 0.15, new(1, 0, 0)).Share);
    }

    [Fact]
    public void Pattern_is_the_same_along_its_three_axes_and_scales()
    {
        double x = PortOpening.Chance(0.002, 0.002, Cell, 0.15, new(1, 0, 0)).Share;
        // The axes of a gyroid change places in a ring; the few points of the hole's surface lie otherwise to them: 2 %.
        Assert.Equal(x, PortOpening.Chance(0.002, 0.002, Cell, 0.15, new(0, 1, 0)).Share, 0.02);
        Assert.Equal(x, PortOpening.Chance(0.002, 0.002, Cell, 0.15, new(0, 0, 1)).Share, 0.02);
        Assert.Equal(x, PortOpening.Chance(0.002, 0.002, Cell, 0.15, new(-1, 0, 0)).Share, 0.02);
        Assert.Equal(x, PortOpening.Chance(0.004, 0.004, 2 * Cell, 0.15, new(1, 0, 0), 4e-6).Share, 1e-12);
    }

    [Fact]
    public void Least_depth_is_certain_and_the_next_smaller_is_not()
    {
        double depth = PortOpening.LeastDepth(0.003, Cell, 0.15, new(1, 0, 0))!.Value;
        Assert.True(PortOpening.Chance(0.003, depth, Cell, 0.15, new(1, 0, 0)).IsCertain);
        Assert.False(PortOpening.Chance(0.003, depth - Cell / 40, Cell, 0.15, new(1, 0, 0)).IsCertain);
        // No depth makes a hole of a tenth of a millimetre bore open a square millimetre on each side of so coarse a pattern at once.
        Assert.Null(PortOpening.LeastDepth(0.0001, Cell, 0.15, new(1, 0, 0)));
    }
}
