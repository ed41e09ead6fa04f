using Finwright.Strength.Grounding;

namespace Finwright.Strength.Tests.Grounding;

public sealed class StrikeTests
{
    private static readonly Strike Upright = new() { Mass = 20, Compliances = [1 / 400e3, 1 / 400e3] };

    [Fact]
    public void Upright_edge_gives_the_force_of_a_mass_on_a_spring()
    {
        // F = V √(k m), two equal springs in a row: k = 200 kN/m; 5 √(200e3 · 20) = 10 kN; ½ m V² = 250 J = ½ F²/k.
        StrikeResult strike = Upright.At(5);
        Assert.Equal(200e3, Upright.Stiffness, 1e-6);
        Assert.Equal(10e3, strike.AftForce, 1e-6);
        Assert.Equal(0, strike.UpForce);
        Assert.Equal(250, strike.Energy, 1e-9);
        Assert.Equal(strike.Energy, 0.5 * strike.AftForce * strike.AftForce / Upright.Stiffness, 1e-9);
        Assert.Equal(5, Upright.SpeedAtWhich(10e3), 1e-12);
    }

    [Fact]
    public void Mass_on_a_spring_followed_in_time_reaches_the_same_force()
    {
        // Second method: the motion in steps of 2 µs, leapfrog. Tolerance: its second order.
        double x = 0, v = 5, greatest = 0;
        const double Step = 2e-6;
        for (int i = 0; i < 20_000; i++)
        {
            v -= Upright.Stiffness * x / Upright.Mass * Step / 2;
            x += v * Step;
            v -= Upright.Stiffness * x / Upright.Mass * Step / 2;
            greatest = Math.Max(greatest, Upright.Stiffness * x);
        }

        Assert.Equal(Upright.At(5).AftForce, greatest, 1e-3 * greatest);
    }

    [Fact]
    public void Raked_edge_without_friction_is_pushed_square_to_itself()
    {
        Strike raked = Upright with { EdgeLean = Math.PI / 4 };
        StrikeResult strike = raked.At(5);
        Assert.True(strike.RidesUp);
        Assert.Equal(10e3 * Math.Sqrt(0.5), strike.NormalForce, 1e-6);
        Assert.Equal(5000, strike.AftForce, 1e-6);
        Assert.Equal(5000, strike.UpForce, 1e-6);
        Assert.Equal(125, strike.Energy, 1e-9);
    }

    [Fact]
    public void Edge_catches_when_friction_holds_more_than_its_slope()
    {
        Strike caught = Upright with { EdgeLean = 0.3, Friction = 0.4 }, slides = Upright with { EdgeLean = 0.3, Friction = 0.2 };
        Assert.False(caught.RidesUp);
        Assert.Equal(10e3, caught.At(5).AftForce, 1e-6);
        Assert.True(slides.RidesUp);
        // Friction points along the edge against the sliding: force on the fin N (cos + μ sin) aft, N (sin - μ cos) up; square and along to the edge they give N and μ N back.
        StrikeResult strike = slides.At(5);
        double along = strike.AftForce * Math.Sin(0.3) - strike.UpForce * Math.Cos(0.3), square = strike.AftForce * Math.Cos(0.3) + strike.UpForce * Math.Sin(0.3);
        Assert.Equal(0.2 * strike.NormalForce, along, 1e-6);
        Assert.Equal(strike.NormalForce, square, 1e-6);
    }

    [Fact]
    public void EffectiveMass_of_a_rod_struck_at_its_end_is_a_quarter()
    {
        // Closed form: slender rod of length l, J = m l²/12, arm l/2: m/4.
        Assert.Equal(2.5, Strike.EffectiveMass(10, 10 * 4.0 / 12, 1), 1e-12);
        Assert.Equal(10, Strike.EffectiveMass(10, 3, 0), 1e-12);
    }

    [Fact]
    public void Refuses_what_cannot_strike()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => (Upright with { Compliances = [] }).At(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => (Upright with { EdgeLean = 1.5 }).At(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Upright.At(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Upright.SpeedAtWhich(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => (Upright with { Friction = -0.1 }).At(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => (Upright with { Mass = 0 }).At(1));
    }

    [Fact]
    public void Edge_that_friction_just_holds_catches()
    {
        Strike even = Upright with { EdgeLean = 0.3, Friction = Math.Tan(0.3) };
        Assert.False(even.RidesUp);
        Assert.False(even.At(5).RidesUp);
        Assert.Equal(10e3, even.At(5).AftForce, 1e-6);
        Assert.Equal(0, even.At(5).UpForce);
    }

    [Fact]
    public void EffectiveMass_falls_with_the_arm_on_either_side()
    {
        // 1/(1/m + r²/J): at r² = J/m half the mass.
        Assert.Equal(5, Strike.EffectiveMass(10, 40, 2), 1e-12);
        Assert.Equal(5, Strike.EffectiveMass(10, 40, -2), 1e-12);
    }
}
