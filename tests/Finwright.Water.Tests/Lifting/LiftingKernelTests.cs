using Finwright.Geometry;
using Finwright.Numerics;
using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

public class LiftingKernelTests
{
    // Biot and Savart: a straight vortex of unit strength and half length a gives, at distance h from its middle, a/(2π h √(a² + h²)); an endless one 1/(2π h).
    [Theory]
    [InlineData(0.5, 0.2)]
    [InlineData(3, 1e-3)]
    [InlineData(1, 40)]
    public void Segment_gives_the_closed_form_beside_its_middle(double half, double distance)
    {
        Point3 v = VortexVelocity.Segment(new(0, distance, 0), new(-half, 0, 0), new(half, 0, 0));
        double expected = half / (2 * Math.PI * distance * Math.Sqrt(half * half + distance * distance));
        Assert.Equal(expected, v.Z, 1e-12 * expected);
        Assert.Equal(0, v.X);
    }

    [Fact]
    public void Segment_on_its_own_line_gives_nothing()
    {
        Assert.Equal(default, VortexVelocity.Segment(new(2, 0, 0), new(0, 0, 0), new(1, 0, 0)));
        Assert.Equal(default, VortexVelocity.Segment(new(0.5, 0, 0), new(0, 0, 0), new(1, 0, 0)));
        Assert.Equal(default, VortexVelocity.Segment(new(0, 0, 0), new(0, 0, 0), new(1, 0, 0)));
    }

    [Theory]
    [InlineData(-3)]
    [InlineData(0)]
    [InlineData(2)]
    public void Trailing_vortex_is_a_very_long_segment(double x)
    {
        Point3 point = new(x, 0.3, 0.1);
        Point3 found = VortexVelocity.Trailing(point, default), expected = VortexVelocity.Segment(point, default, new(1e5, 0, 0));
        Assert.Equal(expected.Y, found.Y, 1e-9);
        Assert.Equal(expected.Z, found.Z, 1e-9);
    }

    // Lan (1974): in two dimensions lift and moment of flat and parabolic sections come out exact with any number of vortices above one.
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(8)]
    public void ChordRule_is_exact_in_two_dimensions(int rows)
    {
        ChordRule rule = new(rows);
        double[] matrix = new double[rows * rows], ones = new double[rows], flat = new double[rows];
        for (int i = 0; i < rows; i++)
            for (int k = 0; k < rows; k++)
                matrix[i * rows + k] = 1 / (2 * Math.PI * (rule.Controls[i] - rule.Vortices[k]));
        Array.Fill(ones, 1);
        DenseLu factor = new(rows);
        Assert.True(factor.Factor(matrix));
        factor.Solve(ones, flat);
        double lift = 0, moment = 0, suction = 0, angle = 0, parabola = 0, nose = 0;
        for (int k = 0; k < rows; k++)
        {
            lift += 2 * flat[k];
            moment -= 2 * flat[k] * (rule.Vortices[k] - 0.25);
            suction += flat[k] * rule.SuctionWeights[k];
            angle += rule.LiftWeights[k];
            // Mean line z = 4 f x (1 - x), slope 4 f (1 - 2x): zero lift at -2 f, moment -π f.
            parabola -= rule.LiftWeights[k] * 4 * (1 - 2 * rule.Controls[k]);
            nose += rule.MomentWeights[k] * 4 * (1 - 2 * rule.Controls[k]);
        }

        Assert.Equal(2 * Math.PI, lift, 1e-9);
        Assert.Equal(0, moment, 1e-9);
        // A0 = α: suction coefficient 2π α².
        Assert.Equal(1, suction, 1e-9);
        Assert.Equal(1, angle, 1e-12);
        Assert.Equal(2, parabola, 1e-9);
        if (rows > 2)
            Assert.Equal(-Math.PI, nose, 1e-9);
    }
}
