using Finwright.Strength.Joints;

namespace Finwright.Strength.Tests.Joints;

public sealed class TaperedEndsTests
{
    private const double TenDegrees = 10 * Math.PI / 180;

    [Fact]
    public void Without_friction_each_end_feels_nearly_three_times_the_pull()
    {
        TaperedEnds ends = new(TenDegrees, 0);
        // 1/(2 sin 10°) = 2.8794, 1/(2 tan 10°) = 2.8356: closed form, last digit.
        Assert.Equal(2.8794, ends.FaceForce(1), 5e-5);
        Assert.Equal(2.8356, ends.SpreadingForce(1), 5e-5);
        Assert.Equal(2.8356, ends.HeightPerLength, 5e-5);
        Assert.False(ends.SticksByItself);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.25)]
    [InlineData(0.5)]
    public void With_friction_the_faces_balance_the_pull_and_spread_less(double friction)
    {
        TaperedEnds ends = new(TenDegrees, friction);
        double face = ends.FaceForce(1000);
        // Balance along the pull: two faces, each N sin a + μ N cos a.
        Assert.Equal(1000, 2 * face * (Math.Sin(TenDegrees) + friction * Math.Cos(TenDegrees)), 1e-9);
        Assert.True(ends.SpreadingForce(1000) < new TaperedEnds(TenDegrees, 0).SpreadingForce(1000));
        Assert.Equal(1000, ends.PullThatSpreads(ends.SpreadingForce(1000)), 1e-9);
        Assert.Equal(friction > 0.1763, ends.SticksByItself);
    }

    [Fact]
    public void A_base_at_ten_degrees_with_a_fifth_of_friction_by_hand()
    {
        TaperedEnds ends = new(TenDegrees, 0.2);
        // 1000/(2 (0.173648 + 0.2 · 0.984808)) = 1349.13; times (0.984808 - 0.2 · 0.173648): 1281.78.
        Assert.Equal(1349.13, ends.FaceForce(1000), 0.01);
        Assert.Equal(1281.78, ends.SpreadingForce(1000), 0.01);
        Assert.True(new TaperedEnds(TenDegrees, Math.Tan(TenDegrees)).SticksByItself);
    }

    [Fact]
    public void Squeezed_base_grows_wider_by_poisson()
    {
        (double stress, double growth) = new TaperedEnds(TenDegrees, 0).Squeeze(5000, 15.8e-3, 31.75e-3, 2e9, 0.38);
        // 5000 N · 2.8356/(15.8 · 31.75 mm²) = 28.26 MPa; 0.38 · 28.26/2000 · 15.8 mm = 0.085 mm.
        Assert.Equal(28.26e6, stress, 0.01e6);
        Assert.Equal(0.0848e-3, growth, 0.0001e-3);
    }

    [Theory]
    [InlineData(0, 0.1)]
    [InlineData(1.2, 0.1)]
    [InlineData(0.1, -0.1)]
    [InlineData(double.NaN, 0)]
    public void Refuses_what_is_no_wedge(double angle, double friction) => Assert.Throws<ArgumentOutOfRangeException>(() => new TaperedEnds(angle, friction).FaceForce(1));

    [Fact]
    public void Refuses_the_height_of_what_is_no_wedge() => Assert.Throws<ArgumentOutOfRangeException>(() => new TaperedEnds(0, 0).HeightPerLength);
}
