using CsCheck;
using Finwright.Strength.Vibrations;

namespace Finwright.Strength.Tests.Vibrations;

public sealed class AddedMassTests
{
    [Fact]
    public void Matrix_of_a_heaving_rectangle_converges_with_the_second_order_or_better()
    {
        double[] values = [VibrationCases.Heave(2, 6), VibrationCases.Heave(2, 12), VibrationCases.Heave(2, 24)];
        // Second order of the panels' middles; their crowding at the edges gains up to one more.
        Assert.InRange(Math.Log2((values[1] - values[0]) / (values[2] - values[1])), 1.9, 3.2);
        // What is left at the finest: a quarter of the last step.
        Assert.InRange(values[2] - values[1], 0, 2e-4);
    }

    [Fact]
    public void Matrix_of_a_disc_moving_broadside_is_eight_thirds_of_the_radius_cubed()
    {
        // Lamb, Hydrodynamics, 1932, circular disc: 8/3 ρ a³; half of it at a wall. Turning about a diameter: 16/45 ρ a⁵. Round edge followed by straight pieces: 1 %.
        AddedMass disc = AddedMass.Create(0.1, y => -Math.Sqrt(Math.Max(0.01 - y * y, 0)), y => Math.Sqrt(Math.Max(0.01 - y * y, 0)), VibrationRoot.Wall, new(16, 16));
        double[] mass = disc.Matrix([(_, _) => 1, (x, _) => x], 1000)!;
        Assert.InRange(mass[0] / (4.0 / 3 * 1000 * 1e-3), 0.99, 1.01);
        Assert.InRange(mass[3] / (8.0 / 45 * 1000 * 1e-5), 0.99, 1.01);
        Assert.Equal(0, mass[1] / mass[0], 9);
    }

    [Fact]
    public void Matrix_of_a_long_strip_is_that_of_the_flow_across_it()
    {
        // Lamb: π ρ c²/4 per length moving, π ρ c⁴/128 turning about the middle. 40 chords long: the ends take about 1 %.
        AddedMass strip = AddedMass.Create(20, _ => -0.5, _ => 0.5, VibrationRoot.Wall, new(10, 40));
        double[] mass = strip.Matrix([(_, _) => 1, (x, _) => x], 1)!;
        Assert.InRange(mass[0] / (20 * Math.PI / 4), 0.975, 0.995);
        Assert.InRange(mass[3] / (20 * Math.PI / 128), 0.98, 1.01);
    }

    [Fact]
    public void Matrix_of_half_a_plate_at_a_wall_or_free_surface_is_half_the_whole_plates()
    {
        // Even motion about the middle of the whole plate is a wall's, odd motion a free surface's. Different panels: 0.2 %.
        AddedMass whole = AddedMass.Create(2, _ => 0, _ => 0.7, VibrationRoot.None, new(12, 32));
        double[] wall = AddedMass.Create(1, _ => 0, _ => 0.7, VibrationRoot.Wall, new(12, 16)).Matrix([(_, y) => y * y], 1)!;
        double[] surface = AddedMass.Create(1, _ => 0, _ => 0.7, VibrationRoot.FreeSurface, new(12, 16)).Matrix([(_, y) => y], 1)!;
        Assert.InRange(whole.Matrix([(_, y) => (y - 1) * (y - 1)], 1)![0] / (2 * wall[0]), 0.998, 1.002);
        Assert.InRange(whole.Matrix([(_, y) => y - 1], 1)![0] / (2 * surface[0]), 0.998, 1.002);
    }

    [Fact]
    public void Matrix_lies_between_that_at_a_free_surface_and_that_at_a_wall()
    {
        double At(VibrationRoot root) => AddedMass.Create(0.2, y => 0.3 * y, y => 0.1 + 0.1 * y, root).Matrix([(_, y) => 1 + 10 * y], 1000)![0];
        Assert.True(At(VibrationRoot.FreeSurface) < At(VibrationRoot.None));
        Assert.True(At(VibrationRoot.None) < At(VibrationRoot.Wall));
    }

    [Fact]
    public void Matrix_scales_with_the_cube_of_the_size_and_takes_energy_for_every_motion()
    {
        Gen.Select(Gen.Double[0.1, 0.4], Gen.Double[0.05, 0.3], Gen.Double[0, 1], Gen.Double[-0.5, 1], Gen.Double[0.5, 3]).Hold(c =>
        {
            (double span, double chord, double taper, double sweep, double scale) = c;
            double[] Mass(double size) => AddedMass.Create(
                size * span,
                y => sweep * y,
                y => sweep * y + chord * (size - (1 - taper) * y / span),
                VibrationRoot.Wall,
                new(5, 8)).Matrix([(_, _) => 1, (x, _) => x / size, (_, y) => y / size], 1000)!;
            double[] one = Mass(1), other = Mass(scale);
            for (int k = 0; k < 9; k++)
                Assert.Equal(0, (other[k] / Math.Pow(scale, 3) - one[k]) / Math.Sqrt(one[4 * (k / 3)] * one[4 * (k % 3)]), 9);
            Assert.Equal((one[1], one[2], one[5]), (one[3], one[6], one[7]));
            double minor = one[0] * one[4] - one[1] * one[1];
            double determinant = one[0] * (one[4] * one[8] - one[5] * one[5]) - one[1] * (one[1] * one[8] - one[5] * one[2]) + one[2] * (one[1] * one[5] - one[4] * one[2]);
            Assert.True(one[0] > 0 && minor > 0 && determinant > 0, $"{one[0]} {minor} {determinant}");
        }, 30);
    }

    [Fact]
    public void Matrix_of_a_blade_without_chord_is_not_known()
    {
        AddedMass nothing = AddedMass.Create(0.2, _ => 0, _ => 0, VibrationRoot.Wall);
        Assert.False(nothing.IsSolvable);
        Assert.Null(nothing.Matrix([(_, _) => 1], 1000));
        Assert.Null(WetModes.Of([100], [(_, _) => 1], nothing, 1000));
        Assert.Throws<ArgumentOutOfRangeException>(() => AddedMass.Create(0, _ => 0, _ => 1, VibrationRoot.Wall));
    }
}
