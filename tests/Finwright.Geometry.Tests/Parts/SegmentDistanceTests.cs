using CsCheck;
using Finwright.Geometry.Parts;

namespace Finwright.Geometry.Tests.Parts;

public sealed class SegmentDistanceTests
{
    private static readonly Gen<Point3> Places = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1]).Select(t => new Point3(t.Item1, t.Item2, t.Item3));

    [Fact]
    public void ToSegment_crossed_segments_a_height_apart_have_that_distance() =>
        Assert.Equal(0.3, SegmentDistance.ToSegment(new(-1, 0, 0), new(1, 0, 0), new(0, -1, 0.3), new(0, 1, 0.3)), 15);

    [Fact]
    public void ToSegment_point_beside_the_end_is_measured_to_the_end() =>
        Assert.Equal(5, SegmentDistance.ToSegment(new(4, 3, 0), new(4, 3, 0), new(0, 0, 0), new(-1, 0, 0)), 15);

    [Fact]
    public void ToTriangle_segment_through_the_triangle_has_none() =>
        Assert.Equal(0, SegmentDistance.ToTriangle(new(0.2, 0.2, -1), new(0.2, 0.2, 1), new(0, 0, 0), new(1, 0, 0), new(0, 1, 0)));

    [Fact]
    public void ToTriangle_parallel_segment_above_has_its_height() =>
        Assert.Equal(0.4, SegmentDistance.ToTriangle(new(0.2, 0.2, 0.4), new(0.3, 0.2, 0.4), new(0, 0, 0), new(1, 0, 0), new(0, 1, 0)), 15);

    [Fact]
    public void ToTriangle_agrees_with_a_dense_search() =>
        Places.Array[5].Hold(
            p =>
            {
                double found = SegmentDistance.ToTriangle(p[0], p[1], p[2], p[3], p[4]);
                const int n = 24;
                double dense = double.PositiveInfinity;
                for (int i = 0; i <= n; i++)
                    for (int j = 0; j <= n; j++)
                        for (int k = 0; k <= n - j; k++)
                        {
                            Point3 onSegment = p[0] + (double)i / n * (p[1] - p[0]);
                            Point3 onTriangle = p[2] + (double)j / n * (p[3] - p[2]) + (double)k / n * (p[4] - p[2]);
                            dense = Math.Min(dense, (onSegment - onTriangle).Length);
                        }

                // Neighbours of the grid lie up to 3.5/24 apart on either figure, in the worst direction.
                Assert.InRange(found, dense - 2 * 3.5 / n, dense + 1e-12);
            },
            iter: 300);
}
