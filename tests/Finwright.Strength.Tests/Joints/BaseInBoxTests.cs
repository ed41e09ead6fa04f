using CsCheck;
using Finwright.Strength.Joints;

namespace Finwright.Strength.Tests.Joints;

public sealed class BaseInBoxTests
{
    private static readonly BaseInBox Base = new() { Length = 0.1559, Width = 0.0158, Depth = 0.041, Clearance = 0.0001 };

    [Fact]
    public void Pure_moment_is_carried_by_two_triangles()
    {
        // Two triangles of pressure, each half the depth: p = 6 M/(L d²) at both edges; their couple is p L d/4 · 2 d/3 = M.
        BaseInBoxState state = Base.Solve(0, 50);
        double pressure = 6 * 50 / (0.1559 * 0.041 * 0.041);
        Assert.Equal(pressure, state.HullEdgePressure, 1e-6 * pressure);
        Assert.Equal(pressure, state.TopEdgePressure, 1e-6 * pressure);
        Assert.Equal(50, state.HullEdgePressure * 0.1559 * 0.041 / 4 * (2 * 0.041 / 3), 1e-9);
        double bending = 50 / (0.1559 * 0.0158 * 0.0158 / 6);
        Assert.Equal(bending, state.BendingStressAtHull, 1e-6 * bending);
        Assert.Equal(bending, state.GreatestBendingStress, 1e-6 * bending);
    }

    [Fact]
    public void A_base_or_load_that_is_none_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Base.Solve(-1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Base.Solve(0, -1));
        foreach (BaseInBox none in (BaseInBox[])[Base with { Length = 0 }, Base with { Width = 0 }, Base with { Depth = 0 }])
            Assert.Throws<ArgumentOutOfRangeException>(() => none.Solve(100, 10));
    }

    [Fact]
    public void Without_load_nothing_presses()
    {
        BaseInBoxState state = Base.Solve(0, 0);
        Assert.Equal((0, 0, 0, 0, 0), (state.HullEdgePressure, state.TopEdgePressure, state.BendingStressAtHull, state.GreatestBendingStress, state.GreatestBendingAt));
    }

    [Fact]
    public void Any_load_is_in_balance_when_summed_over_the_depth() => Gen.Select(Gen.Double[1, 2000], Gen.Double[0, 300], Gen.Double[0.015, 0.08]).Hold(
        (double force, double moment, double depth) =>
        {
            BaseInBoxState state = (Base with { Depth = depth }).Solve(force, moment);
            // Second method: the linear pressure summed in 2000 slices; midpoint rule, exact to 1e-7 for a parabola.
            const int Slices = 2000;
            double sum = 0, about = 0, shear = force, bending = moment, greatest = moment, h = depth / Slices;
            for (int i = 0; i < Slices; i++)
            {
                double s = (i + 0.5) * h, push = 0.1559 * h * (state.HullEdgePressure + (-state.TopEdgePressure - state.HullEdgePressure) * s / depth);
                sum += push;
                about += push * s;
                bending += (shear - push / 2) * h;
                shear -= push;
                greatest = Math.Max(greatest, bending);
            }

            Assert.Equal(force, sum, 1e-6 * force);
            Assert.Equal(-moment, about, 1e-6 * (moment + force * depth));
            // Nothing is left at the top: the base ends there.
            Assert.Equal(0, bending, 1e-5 * (moment + force * depth));
            double section = 0.1559 * 0.0158 * 0.0158 / 6;
            Assert.Equal(greatest / section, state.GreatestBendingStress, 1e-3 * greatest / section);
            Assert.InRange(state.GreatestBendingAt, 0, depth / 2);
        });

    [Fact]
    public void RotationStiffness_is_a_beam_turned_at_one_end()
    {
        // M/θ = 3 E I/d, I = 155.9 · 15.8³/12 mm⁴, without shear; with it, less by 1/(5/6 G A d).
        double inertia = 0.1559 * Math.Pow(0.0158, 3) / 12, bending = 3 * 1.8e9 * inertia / 0.041;
        Assert.Equal(bending, Base.RotationStiffness(1.8e9, 1e18), 1e-6 * bending);
        double both = Base.RotationStiffness(1.8e9, 0.72e9), shear = 5.0 / 6 * 0.72e9 * 0.1559 * 0.0158 * 0.041;
        Assert.Equal(1 / both, 1 / bending + 1 / shear, 1e-12);
    }

    [Fact]
    public void Play_is_clearance_over_depth() => Assert.Equal(0.1 / 41, Base.Play, 1e-12);
}
