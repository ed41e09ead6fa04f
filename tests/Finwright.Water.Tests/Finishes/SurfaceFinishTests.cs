using Finwright.Water.Finishes;
using Finwright.Water.Sections;

namespace Finwright.Water.Tests.Finishes;

public sealed class SurfaceFinishTests
{
    private const double Degree = Math.PI / 180;

    // Geometry, worked out apart: 0.2 mm layers on walls inclined 80, 70 and 45 degrees. Tolerance: last digit.
    [Theory]
    [InlineData(80, 35)]
    [InlineData(70, 68)]
    [InlineData(45, 141)]
    public void StepHeight_of_inclined_wall_is_layer_times_cosine(double degrees, double micrometres) =>
        Assert.Equal(micrometres, SurfaceFinish.StepHeight(0.2e-3, degrees * Degree) * 1e6, 0.51);

    [Fact]
    public void Lines_across_the_stream_trip_and_rub_more_than_lines_along_it()
    {
        SurfaceFinish across = SurfaceFinish.BarePrint(0.2e-3, 45 * Degree, Math.PI / 2), along = SurfaceFinish.BarePrint(0.2e-3, 45 * Degree, 0);
        Assert.Equal(across.ElementHeight, along.ElementHeight);
        Assert.Equal((200, 600), (across.CriticalRoughnessReynoldsNumber, along.CriticalRoughnessReynoldsNumber));
        Assert.True(across.SandRoughness > along.SandRoughness);
        // Saw-tooth of height k in k_s = 4.43 k_rms: 4.43/√12.
        Assert.Equal(4.43 / Math.Sqrt(12), across.SandRoughness / across.ElementHeight, 1e-3);
    }

    [Fact]
    public void Upright_wall_keeps_the_valleys_between_beads() =>
        Assert.Equal(40e-6, SurfaceFinish.BarePrint(0.2e-3, Math.PI / 2, 0).ElementHeight, 1e-12);

    [Fact]
    public void OnChord_gives_heights_in_chords()
    {
        SideFinish side = SurfaceFinish.Grit400.OnChord(0.1);
        Assert.Equal(5e-5, side.RoughnessHeight, 1e-15);
        Assert.Equal(5e-5, side.SandRoughness, 1e-15);
        Assert.Equal(600, side.CriticalRoughnessReynoldsNumber);
        Assert.Null(side.TripAt);
    }

    [Fact]
    public void Sanded_finish_is_smooth_enough_at_top_speed_and_bare_layers_are_not()
    {
        double admissible = RoughnessHeights.Admissible(WaterProperties.Sea(15), 15);
        Assert.True(SurfaceFinish.Polished.ElementHeight < admissible);
        Assert.True(SurfaceFinish.Grit400.ElementHeight < admissible);
        Assert.True(SurfaceFinish.BarePrint(0.2e-3, 80 * Degree, Math.PI / 2).ElementHeight > 3 * admissible);
    }

    [Theory]
    [InlineData(0, 45, 0)]
    [InlineData(0.2e-3, 95, 0)]
    [InlineData(0.2e-3, 45, -1)]
    [InlineData(double.NaN, 45, 0)]
    public void BarePrint_outside_its_range_refuses(double layer, double inclinationDegrees, double lineAngle) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SurfaceFinish.BarePrint(layer, inclinationDegrees * Degree, lineAngle));
}
