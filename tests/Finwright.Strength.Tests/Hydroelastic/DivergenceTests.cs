using Finwright.Strength.Hydroelastic;

namespace Finwright.Strength.Tests.Hydroelastic;

public sealed class DivergenceTests
{
    [Fact]
    public void Pressure_converges_with_the_second_order_of_the_strips()
    {
        double exact = Math.Pow(Math.PI / (2 * SweptWing.Length), 2) * 80 / (SweptWing.Chord * SweptWing.Arm * SweptWing.Slope);
        double coarse = Math.Abs(SweptWing.Pressure(0, 10)!.Value - exact), fine = Math.Abs(SweptWing.Pressure(0, 20)!.Value - exact);
        Assert.InRange(Math.Log2(coarse / fine), 1.8, 2.2);
    }

    [Fact]
    public void Pressure_of_a_wing_swept_aft_is_practically_out_of_reach()
    {
        // A converged Ritz solution gives 5.7e7 Pa at 10°: about 340 m/s in water. At 20° there is none.
        Assert.True(SweptWing.Pressure(10 * Math.PI / 180, 40) is null or > 4e7);
        Assert.True(SweptWing.Pressure(20 * Math.PI / 180, 40) is null or > 4e7);
    }

    [Fact]
    public void Pressure_of_an_axis_ahead_of_the_lift_is_none() => Assert.Null(SweptWing.Pressure(0, 20, -SweptWing.Arm));

    [Fact]
    public void Pressure_of_one_strip_is_one_over_flexibility_times_response()
    {
        Assert.Equal(1 / (2e-3 * 0.5 + 1e-3 * 0.25), Divergence.Pressure([2e-3, 1e-3], [0.5, 0.25], 1)!.Value, 9);
        Assert.Null(Divergence.Pressure([2e-3], [-0.5], 1));
        Assert.Null(Divergence.Pressure([0.0], [0.5], 1));
    }

    [Fact]
    public void Pressure_of_a_turning_pair_is_none() => Assert.Null(Divergence.Pressure([1, 0, 0, 1], [0, 1, -1, 0], 2)); // eigenvalues ±i

    [Fact]
    public void Pressure_of_lengths_that_do_not_fit_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Divergence.Pressure([1, 2, 3], [1, 2], 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Divergence.Pressure([double.NaN], [1], 1));
    }
}
