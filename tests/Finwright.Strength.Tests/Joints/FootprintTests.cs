using Finwright.Strength.Joints;

namespace Finwright.Strength.Tests.Joints;

public sealed class FootprintTests
{
    // 40 by 20 mm, far from the origin, with a hole of 8 by 8 mm off its middle; millimetres.
    private static readonly FootprintPoint[] Outline = [new(10, 0), new(50, 0), new(50, 20), new(10, 20)];
    private static readonly FootprintPoint[] Hole = [new(40, 4), new(48, 4), new(48, 12), new(40, 12)];

    [Fact]
    public void Area_and_centroid_are_those_of_the_outline_less_the_hole()
    {
        foreach (IReadOnlyList<FootprintPoint> outline in (IReadOnlyList<FootprintPoint>[])[Outline, [.. Outline.Reverse()]])
        {
            Footprint face = new(outline, Hole);
            // (800 · 30 - 64 · 44)/736 and (800 · 10 - 64 · 8)/736.
            Assert.Equal(736, face.Area, 1e-9);
            Assert.Equal(28.782609, face.Centroid.X, 1e-6);
            Assert.Equal(10.173913, face.Centroid.Z, 1e-6);
        }
    }

    [Fact]
    public void Corners_count_from_the_centroid()
    {
        Footprint face = new(Outline, Hole);
        Assert.Equal(50 - 28.782609, face.Rings[0].Max(corner => corner.X), 1e-6);
        Assert.Equal(10 - 28.782609, face.Rings[0].Min(corner => corner.X), 1e-6);
        Assert.Equal(20 - 10.173913, face.Rings[0].Max(corner => corner.Z), 1e-6);
        Assert.Equal(48 - 28.782609, face.Rings[1].Max(corner => corner.X), 1e-6);
        Assert.Equal(4 - 10.173913, face.Rings[1].Min(corner => corner.Z), 1e-6);
        Assert.Equal(50 - 28.782609, face.Reach, 1e-6);
    }

    [Fact]
    public void What_encloses_nothing_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new Footprint([new(0, 0), new(1, 0)]));
        Assert.Throws<ArgumentException>(() => new Footprint([new(0, 0), new(1, 0), new(2, 0)]));
        Assert.Throws<ArgumentException>(() => new Footprint(Hole, Outline));
        Assert.Throws<ArgumentException>(() => new Footprint(Hole, Hole));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Footprint([new(0, 0), new(1, 0), new(double.NaN, 1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Footprint.Rectangle(0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Footprint.Rectangle(1, -1));
        Assert.Throws<ArgumentNullException>(() => new Footprint(null!));
    }

    [Fact]
    public void A_load_times_a_factor_is_that_of_each_of_its_three() => Assert.Equal(new(2, -4, 6), new JointLoad(1, -2, 3).Times(2));
}
