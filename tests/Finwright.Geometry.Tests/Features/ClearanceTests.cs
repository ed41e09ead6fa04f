using Finwright.Geometry.Bases;
using Finwright.Geometry.Features;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.Features;

public sealed class ClearanceTests
{
    private static readonly TaperedBlade Blade = new(0.4, 0.11, 0.05, 8 * Math.PI / 180, 0.1);
    private static readonly IReadOnlyList<SurfacePatch> Skin = SurfacePatch.OfBlade(Blade);

    [Fact]
    public void InBlade_of_a_rod_equals_a_brute_force_search_over_the_skin()
    {
        FeatureVolume rod = FeatureVolume.Cylinder(4.4e-3, new(0.01, 0, 0), new(0.045, 0.25, 0));
        double brute = double.PositiveInfinity;
        // 0.2 mm by 0.1 mm at the most: off the true minimum by less than a micrometre where the skin is smooth.
        for (int i = 0; i <= 2000; i++)
            for (int j = 0; j <= 1500; j++)
                brute = Math.Min(brute, rod.SignedDistance(Blade.Skin(i * 0.4 / 2000, j / 1500.0)));
        Assert.Equal(brute, Clearance.InBlade(rod, Blade, Skin).Wall, 2e-6);
    }

    [Fact]
    public void InBlade_of_a_rod_square_to_its_nearest_skin_is_half_the_thickness_less_the_radius()
    {
        // An untapered, unraked blade: the thickest place is at half chord, where the skin runs parallel to the rod.
        TaperedBlade slab = new(0.3, 0.1, 0.1, 0, 0.12, trailingEdge: 0);
        FeatureVolume rod = FeatureVolume.Cylinder(3e-3, new(0.025, 0, 0), new(0.025, 0.2, 0));
        Assert.Equal(6e-3 - 1.5e-3, Clearance.InBlade(rod, slab, SurfacePatch.OfBlade(slab)).Wall, 1e-7);
    }

    [Fact]
    public void InBlade_is_negative_by_the_axis_overshoot_plus_the_radius_when_the_axis_leaves_the_blade()
    {
        TaperedBlade slab = new(0.3, 0.1, 0.1, 0, 0.12, trailingEdge: 0);
        FeatureVolume rod = FeatureVolume.Cylinder(4e-3, new(-0.03, 0.05, 0), new(-0.03, 0.1, 0));
        Assert.Equal(-(5e-3 + 2e-3), Clearance.InBlade(rod, slab, SurfacePatch.OfBlade(slab)).Wall, 1e-6);
    }

    [Fact]
    public void InBase_of_a_hexagon_nut_in_the_two_bolt_head_leaves_2_8_mm_on_each_side()
    {
        // Arithmetic: (15.8 - 10.2) / 2 mm, flats parallel to the faces.
        BasePlan plan = TwoBoltBase.Standard(0, MetricThread.M6);
        FeatureVolume pocket = FeatureVolume.Prism(Rings.Hexagon(10.2e-3), new(0, -30e-3, 0), new(0, -24.6e-3, 0));
        Assert.Equal(2.8e-3, Clearance.InBase(pocket, plan, SurfacePatch.OfBase(plan)).Wall, 1e-7);
    }

    [Fact]
    public void RodBore_goes_exactly_as_deep_as_the_margin_allows()
    {
        RodBore bore = new(0.008, 0.06, 4.4e-3, Blade, Skin);
        double depth = bore.DeepestFor(1e-3, 10e-3)!.Value;
        Assert.True(bore.To(depth).Wall >= 1e-3);
        Assert.True(bore.To(depth + 0.12e-3).Wall < 1e-3, "A tenth of a millimetre more uses the margin up.");
        Assert.InRange(depth, 0.1, 0.39);
    }

    [Fact]
    public void RodBore_in_a_twisted_blade_follows_the_mid_surface_and_keeps_its_margin()
    {
        TaperedBlade twisted = new(0.4, 0.11, 0.05, 8 * Math.PI / 180, 0.1, twist: 4 * Math.PI / 180);
        IReadOnlyList<SurfacePatch> skin = SurfacePatch.OfBlade(twisted);
        RodBore bore = new(0.02, 0.075, 3.4e-3, twisted, skin);
        double depth = bore.DeepestFor(1e-3, 10e-3)!.Value;
        FeatureVolume volume = bore.Between(0, depth);
        double brute = double.PositiveInfinity;
        for (int i = 0; i <= 1500; i++)
            for (int j = 0; j <= 1000; j++)
                brute = Math.Min(brute, volume.SignedDistance(twisted.Skin(i * 0.4 / 1500, j / 1000.0)));
        Assert.True(brute >= 1e-3 - 1e-6, $"{brute}");
        Assert.NotEqual(0, volume.To.Z);
    }
}
