using Finwright.Strength.Plates;
using Finwright.Strength.Tests.Plates;
using Finwright.Strength.Vibrations;

namespace Finwright.Strength.Tests.Vibrations;

public sealed class WetModesTests
{
    [Fact]
    public void Of_one_mode_is_the_oscillator_with_more_mass()
    {
        AddedMass water = AddedMass.Create(0.2, _ => 0, _ => 0.1, VibrationRoot.Wall);
        double mass = water.Matrix([(_, y) => 5 * y], 1000)![0];
        WetModes wet = WetModes.Of([300], [(_, y) => 5 * y], water, 1000)!;
        Assert.Equal(300 / Math.Sqrt(1 + mass), wet.AngularFrequencies[0], 9);
        Assert.Equal(1 / Math.Sqrt(1 + mass), Math.Abs(wet.Share(0, 0)), 9);
        Assert.Equal(Math.Abs(wet.Share(0, 0)) * 5 * 0.1, Math.Abs(wet.Shape(0, 0.05, 0.1)), 9);
    }

    [Fact]
    public void Of_water_without_density_leaves_the_dry_modes()
    {
        PlateModes dry = PlateModel.Create(PlateCases.Tapered).Modes(4);
        WetModes wet = VibrationCases.Wet(PlateCases.Tapered, dry, 0);
        for (int i = 0; i < 4; i++)
        {
            Assert.Equal(1, wet.AngularFrequencies[i] / dry.AngularFrequencies[i], 9);
            Assert.Equal(1, Math.Abs(wet.Share(i, i)), 9);
        }
    }

    [Fact]
    public void Of_more_dry_modes_comes_down()
    {
        PlateFin fin = PlateCases.Tapered;
        PlateModel plate = PlateModel.Create(fin);
        WetModes few = VibrationCases.Wet(fin, plate.Modes(3), 1000), many = VibrationCases.Wet(fin, plate.Modes(8), 1000);
        for (int i = 0; i < 3; i++)
            // Rounding of the dry modes, which come from iteration.
            Assert.InRange(many.AngularFrequencies[i] / few.AngularFrequencies[i], 0.97, 1 + 1e-6);
    }

    [Fact]
    public void Of_wet_shapes_are_orthogonal_in_the_mass_of_blade_and_water()
    {
        PlateFin fin = PlateCases.Tapered;
        PlateModes dry = PlateModel.Create(fin).Modes(5);
        AddedMass water = AddedMass.Create(fin.Span, fin.LeadingEdge, fin.TrailingEdge, VibrationRoot.Wall);
        WetModes wet = WetModes.Of(dry.AngularFrequencies, dry.Shapes, water, 1000)!;
        double[] mass = water.Matrix([.. Enumerable.Range(0, 5).Select(i => (Func<double, double, double>)((x, y) => wet.Shape(i, x, y)))], 1000)!;
        for (int i = 0; i < 5; i++)
        {
            for (int k = 0; k < 5; k++)
            {
                double own = Enumerable.Range(0, 5).Sum(d => wet.Share(i, d) * wet.Share(k, d));
                Assert.Equal(i == k ? 1 : 0, own + mass[i * 5 + k], 8);
            }
        }
    }

    [Fact]
    public void Of_lists_that_do_not_fit_is_refused()
    {
        AddedMass water = AddedMass.Create(0.2, _ => 0, _ => 0.1, VibrationRoot.Wall);
        Assert.Throws<ArgumentException>(() => WetModes.Of([1, 2], [(_, _) => 1], water, 1000));
        Assert.Throws<ArgumentException>(() => WetModes.Of([], [], water, 1000));
        Assert.Throws<ArgumentOutOfRangeException>(() => WetModes.Of([0], [(_, _) => 1], water, 1000));
    }
}
