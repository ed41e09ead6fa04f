using Finwright.Strength.Plates;
using static Finwright.Strength.Tests.Plates.PlateCases;

namespace Finwright.Strength.Tests.Plates;

public sealed class PlateModesTests
{
    [Fact]
    public void Shapes_have_unit_mass_and_stand_apart()
    {
        // Σ ρ t w_i w_j dA over a fine grid; the rotary part of a plate 1/100 thick is 0.1 %.
        const double Side = 0.2, Thick = 0.002;
        PlateModes modes = PlateModel.Create(Even(Side, Side, 0, Thick, 0.3), Evenly(8, 8)).Modes(4);
        Assert.Equal(PlateStatus.Solved, modes.Status);
        const int Points = 80;
        for (int i = 0; i < 4; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = 0;
                for (int k = 0; k < Points * Points; k++)
                {
                    double x = (k % Points + 0.5) / Points * Side, y = (k / Points + 0.5) / Points * Side;
                    sum += 1000 * Thick * Side * Side / (Points * Points) * modes.Shapes[i](x, y) * modes.Shapes[j](x, y);
                }

                Assert.Equal(i == j ? 1 : 0, sum, 0.004);
            }
        }
    }

    [Fact]
    public void First_frequencies_do_not_depend_on_how_many_are_asked_for()
    {
        PlateModel model = PlateModel.Create(Tapered);
        IReadOnlyList<double> few = model.Modes(1).AngularFrequencies, many = model.Modes(8).AngularFrequencies;
        Assert.Equal(1, few[0] / many[0], 1e-8);
        for (int m = 1; m < many.Count; m++)
            Assert.True(many[m] > many[m - 1]);
    }

    [Fact]
    public void Rayleigh_quotient_of_a_static_shape_lies_above_the_first_frequency()
    {
        // Weight as a load: ω² ≤ Σ load × w/Σ m w², within a few percent of it for a cantilever.
        PlateModel model = PlateModel.Create(Tapered);
        PlateModes modes = model.Modes(1);
        double Surface(double x, double y) => Density * 2 * Tapered.HalfThickness(x, y);
        PlateSolution hanging = model.Solve(Surface);
        double below = 0;
        const int Points = 200;
        for (int k = 0; k < Points * Points; k++)
        {
            double y = (k / Points + 0.5) / Points * 0.22;
            (double x, _) = At(Tapered, (k % Points + 0.5) / Points, y);
            double w = hanging.Deflection(x, y);
            below += Surface(x, y) * w * w * 0.22 / Points * (0.110 - 0.05 * y / 0.22) / Points;
        }

        Assert.InRange(Math.Sqrt(hanging.ExternalWork / below) / modes.AngularFrequencies[0], 1, 1.03);
    }

    [Fact]
    public void Rods_of_carbon_raise_and_heavy_tips_lower_the_first_frequency()
    {
        double plain = PlateModel.Create(Tapered).Modes(1).AngularFrequencies[0];
        PlateFin rods = Tapered with { Rods = [new(0.03, 0, 0.1, 0.2, 0, 0.004, 125e9, 4e9, 1500)] }, lead = Tapered with { Rods = [new(0.11, 0.19, 0.13, 0.21, 0, 0.004, 2900e6, 1e9, 11000)] };
        Assert.True(PlateModel.Create(rods).Modes(1).AngularFrequencies[0] > 1.01 * plain);
        Assert.True(PlateModel.Create(lead).Modes(1).AngularFrequencies[0] < 0.99 * plain);
    }
}
