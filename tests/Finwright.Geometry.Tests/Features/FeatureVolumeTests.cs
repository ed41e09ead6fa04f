using CsCheck;
using Finwright.Geometry.Features;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.Features;

public sealed class FeatureVolumeTests
{
    private static readonly FeatureVolume Can = FeatureVolume.Cylinder(10e-3, new(0, 0, 0), new(0, 20e-3, 0));
    private static readonly FeatureVolume Block = FeatureVolume.Prism(Rings.Rectangle(10e-3, 6e-3), new(0, 0, 0), new(0, 20e-3, 0));

    [Theory]
    [InlineData(9e-3, 10e-3, 0, 4e-3)] // beside: radial
    [InlineData(0, 23e-3, 0, 3e-3)] // beyond the end: axial
    [InlineData(8e-3, 24e-3, 0, 5e-3)] // off the rim: 3, 4, 5
    [InlineData(2e-3, 10e-3, 0, -3e-3)] // inside
    [InlineData(0, 1e-3, 0, -1e-3)] // inside, close to the end
    public void SignedDistance_of_a_cylinder_is_the_closed_form(double x, double y, double z, double expected) =>
        Assert.Equal(expected, Can.SignedDistance(new(x, y, z)), 12);

    [Theory]
    [InlineData(8e-3, 10e-3, 0, 3e-3)]
    [InlineData(8e-3, 10e-3, 7e-3, 5e-3)] // off an edge: 3, 4, 5
    [InlineData(0, 10e-3, 2e-3, -1e-3)]
    public void SignedDistance_of_a_block_is_the_closed_form(double x, double y, double z, double expected) =>
        Assert.Equal(expected, Block.SignedDistance(new(x, y, z)), 12);

    [Fact]
    public void DistanceTo_of_crossed_cylinders_is_the_gap_between_their_axes_less_both_radii()
    {
        FeatureVolume other = FeatureVolume.Cylinder(4e-3, new(-30e-3, 10e-3, 9e-3), new(30e-3, 10e-3, 9e-3));
        Assert.Equal(2e-3, Can.DistanceTo(other), 1e-7);
        Assert.Equal(2e-3, other.DistanceTo(Can), 1e-7);
    }

    [Fact]
    public void DistanceTo_is_zero_for_volumes_that_share_room()
    {
        FeatureVolume other = FeatureVolume.Cylinder(4e-3, new(-30e-3, 10e-3, 6e-3), new(30e-3, 10e-3, 6e-3));
        Assert.Equal(0, Can.DistanceTo(other));
    }

    [Fact]
    public void Reach_is_the_support_of_all_surface_points()
    {
        Gen.Double[-1, 1].Array[9].Where(v => new Point3(v[3] - v[0], v[4] - v[1], v[5] - v[2]).Length > 0.1 && new Point3(v[6], v[7], v[8]).Length > 0.1)
            .Hold(v =>
            {
                Point3 from = new(v[0], v[1], v[2]), to = new(v[3], v[4], v[5]), direction = new(v[6], v[7], v[8]);
                direction = 1 / direction.Length * direction;
                FeatureVolume hex = FeatureVolume.Prism(Rings.Hexagon(0.5), from, to);
                // The farthest point along a direction is the nearest one to a point far out that way.
                Point3 far = hex.Nearest(1e6 * direction);
                Assert.Equal(hex.Reach(direction), far.Dot(direction), 1e-5);
            });
    }

    [Fact]
    public void Nearest_and_SignedDistance_agree_outside()
    {
        Gen.Double[-0.03, 0.03].Array[3].Hold(v =>
        {
            Point3 p = new(v[0], v[1], v[2]);
            foreach (FeatureVolume volume in new[] { Can, Block })
            {
                double distance = volume.SignedDistance(p);
                Assert.Equal(Math.Max(0, distance), (volume.Nearest(p) - p).Length, 1e-12);
            }
        });
    }

    [Fact]
    public void DistanceTo_is_symmetric_and_never_more_than_a_brute_force_search_finds()
    {
        Gen.Double[-20e-3, 20e-3].Array[12].Where(v => new Point3(v[0] - v[3], v[1] - v[4], v[2] - v[5]).Length > 5e-3 && new Point3(v[6] - v[9], v[7] - v[10], v[8] - v[11]).Length > 5e-3)
            .Hold(
                v =>
                {
                    FeatureVolume a = FeatureVolume.Cylinder(5e-3, new(v[0], v[1], v[2]), new(v[3], v[4], v[5]));
                    FeatureVolume b = FeatureVolume.Prism(Rings.Hexagon(8e-3), new(v[6], v[7], v[8]), new(v[9], v[10], v[11]));
                    double distance = a.DistanceTo(b);
                    Assert.Equal(distance, b.DistanceTo(a), 2e-5); // barely touching pairs settle last
                    // Brute force: along the prism's axis and out to its corners.
                    double least = double.PositiveInfinity;
                    for (int i = 0; i <= 40; i++)
                    {
                        Point3 onAxis = b.From + i / 40.0 * (b.To - b.From);
                        least = Math.Min(least, Math.Max(0, a.SignedDistance(b.Nearest(a.Nearest(onAxis)))));
                        least = Math.Min(least, Math.Max(0, a.SignedDistance(onAxis)));
                    }

                    Assert.True(distance <= least + 1e-5, $"{distance} > {least}");
                },
                iter: 2000);
    }

    [Fact]
    public void SideView_of_a_bore_along_the_span_is_its_rectangle()
    {
        // A cylinder seen square to its axis: length times diameter.
        IReadOnlyList<Point2> view = FeatureVolume.Cylinder(0.006, new(0.01, -0.02, 0.003), new(0.04, 0.02, 0.003)).SideView();
        Assert.Equal(0.05 * 0.006, Area(view), 0.05 * 0.006 * 2e-3);
    }

    [Fact]
    public void SideView_of_a_hexagon_seen_along_its_axis_is_the_hexagon()
    {
        // Area of a regular hexagon of width s across flats: s² √3 / 2.
        IReadOnlyList<Point2> view = FeatureVolume.Prism(Rings.Hexagon(0.01), new(0, 0, -0.005), new(0, 0, 0.005)).SideView();
        Assert.Equal(6, view.Count);
        Assert.Equal(0.01 * 0.01 * Math.Sqrt(3) / 2, Area(view), 12);
    }

    private static double Area(IReadOnlyList<Point2> ring)
    {
        double twice = 0;
        for (int i = 0; i < ring.Count; i++)
            twice += ring[i].Cross(ring[(i + 1) % ring.Count]);
        return Math.Abs(twice) / 2;
    }
}
