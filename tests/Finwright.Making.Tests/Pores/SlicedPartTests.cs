using Finwright.Geometry;
using Finwright.Making.Layers;
using Finwright.Making.Pores;
using Finwright.Making.Tests.Layers;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Pores;

/// <summary>The way from solid over layers and grid to trapped air, for a box printed askew: its core's sides cross layers and cells at a slope.</summary>
public sealed class SlicedPartTests
{
    // Height of the box's roof in the axes of its mesh.
    private const double Tilt = 20 * Math.PI / 180, Highest = 0.040;

    private static readonly Lazy<(PartLayers Layers, PartVoxels Voxels)> Askew = new(() =>
    {
        PartLayers layers = TestParts.Slice(TestParts.Box(0.060, 0.020, 0.040), Placement.Rotation(new(0, 1, 0), Tilt));
        return (layers, Voxeliser.Of(layers, new(0.0011, 0.001, 0.0009), TestContext.Current.CancellationToken));
    });

    // Walls of 3 × 0.45 mm lie level and are cut at 20°, so they are 1.35 cos 20° thick; five solid layers of 0.2 mm are 1 cos 20°.
    private static readonly double WallX = 0.00135 * Math.Cos(Tilt), Roof = 0.001 * Math.Cos(Tilt);

    private static Point3 Up => Askew.Value.Layers.ToLayers.Turn(new(0, 0, 1));

    [Fact]
    public void Box_stood_level_keeps_no_air_under_its_sloped_grid_with_one_vent_in_its_roof()
    {
        PortPlan plan = PortPlaces.Suggest(Askew.Value.Voxels, 0.15, Up, 0.004)!;
        Assert.Single(plan.Vents);
        Assert.Equal(0, plan.Air.Volume);
        // The vent goes out through the roof: square to it within 10°, its mouth at the core's roof within a cell's height.
        Assert.True(plan.Vents[0].Outward.Dot(Up) > Math.Cos(10 * Math.PI / 180));
        Placement back = Askew.Value.Layers.ToLayers.RigidInverse();
        Assert.Equal(Highest - Roof, back.Apply(plan.Vents[0].Mouth).Z, 0.0009);
        Assert.True(back.Apply(plan.Feed.Mouth).Z < Highest - 0.036);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    public void Vent_in_its_side_keeps_the_layer_of_air_above_it(double millimetresDown)
    {
        (PartLayers layers, PartVoxels voxels) = Askew.Value;
        Point3 mouth = layers.ToLayers.Apply(new(0.030 - WallX, 0, Highest - Roof - millimetresDown * 1e-3));
        TrappedAirResult result = new TrappedAir(PoreGrid.Create(voxels, 0.15)).Solve(Up, [new(mouth, layers.ToLayers.Turn(new(1, 0, 0)), 1e-5)]);
        double expected = 0.85 * (0.060 - 2 * WallX) * (0.020 - 2 * 0.00135) * millimetresDown * 1e-3;
        // A quarter of a cell in the level of the roof and of the resin: 0.4 mm in all.
        Assert.Equal(expected, result.Volume, 0.0004 / (millimetresDown * 1e-3) * expected);
        Assert.Single(result.Regions);
        Assert.Equal([true], result.VentsReach);
    }

    [Fact]
    public void Core_is_taken_whole()
    {
        PoreGrid grid = PoreGrid.Create(Askew.Value.Voxels, 0.15);
        Assert.Equal(0.85 * Askew.Value.Layers.CoreVolume, grid.Volume + grid.Neglected, 1e-6 * grid.Volume);
        Assert.InRange(grid.Neglected, 0, 0.01 * grid.Volume);
        Assert.Equal(Askew.Value.Layers.CoreVolume, PoreColumn.Of(Askew.Value.Voxels, Up)!.Volume, 0.01 * Askew.Value.Layers.CoreVolume);
        Assert.Equal(Askew.Value.Layers.CoreVolume, PoreColumn.Of(Askew.Value.Layers)!.Volume, 0.01 * Askew.Value.Layers.CoreVolume);
    }
}
