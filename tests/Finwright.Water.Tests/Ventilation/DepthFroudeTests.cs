using Finwright.Water.Ventilation;

namespace Finwright.Water.Tests.Ventilation;

public sealed class DepthFroudeTests
{
    // Numerical reference: the washout bound of Harwood, Young and Ceccio (2016), J. Fluid Mech. 800, 5-56, worked out apart. Tolerance: last digit.
    [Theory]
    [InlineData(1, 0.3, 1.43)]
    [InlineData(1, 0.4, 1.24)]
    [InlineData(2, 0.3, 1.78)]
    [InlineData(2, 0.4, 1.54)]
    public void Washout_agrees_with_the_reference(double aspectRatio, double lift, double froude) =>
        Assert.Equal(froude, DepthFroude.Washout(aspectRatio, lift), 0.0051);

    // Numerical reference: Breslin and Skalak (1959), NASA Memorandum 2-23-59W, CL > 5/Fn² and Fn > 3, worked out apart. Tolerance: last digit.
    [Theory]
    [InlineData(0.2, 5.0)]
    [InlineData(0.3, 4.08)]
    [InlineData(0.4, 3.54)]
    [InlineData(0.5, 3.16)]
    [InlineData(0.8, 3.0)]
    public void FullVentilation_agrees_with_the_reference(double lift, double froude) =>
        Assert.Equal(froude, DepthFroude.FullVentilation(lift), 0.0051);

    [Fact]
    public void Bounds_stand_apart_as_the_later_paper_says() =>
        // Harwood, Young and Ceccio (2016): the older bound lies 2.86 times higher (aspect ratio 1, CL 0.5).
        Assert.Equal(2.86, DepthFroude.FullVentilation(0.5) / DepthFroude.Washout(1, 0.5), 0.006);

    [Fact]
    public void Number_and_speed_undo_each_other()
    {
        Assert.Equal(9 / Math.Sqrt(9.80665 * 0.4), DepthFroude.Number(9, 0.4), 1e-12);
        Assert.Equal(9, DepthFroude.Speed(DepthFroude.Number(9, 0.4), 0.4), 1e-12);
    }

    [Theory]
    [InlineData(0.1, 0.3)]
    [InlineData(20, 0.3)]
    [InlineData(2, 0)]
    [InlineData(2, double.NaN)]
    public void Washout_outside_its_range_refuses(double aspectRatio, double lift) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DepthFroude.Washout(aspectRatio, lift));
}
