using CsCheck;
using Finwright.Making.Cure;

namespace Finwright.Making.Tests.Cure;

public sealed class SurfaceCoolingTests
{
    [Fact]
    public void Air_has_the_properties_of_the_handbook()
    {
        // Air at 300 K: ν 15.9e-6, α 22.5e-6 m²/s, k 0.0263 W/(m K) (Incropera and DeWitt, table A.4, from memory). 2 %: sources differ by as much.
        FluidHeat air = FluidHeat.Air(300);
        Assert.Equal(15.9e-6, air.KinematicViscosity, 0.02 * 15.9e-6);
        Assert.Equal(22.5e-6, air.Diffusivity, 0.02 * 22.5e-6);
        Assert.Equal(0.0263, air.Conductivity, 0.02 * 0.0263);
    }

    [Theory]
    // Density, dynamic viscosity and conductivity of water at one atmosphere (IAPWS tables, from memory). Tolerances: 0.02 %, 2.5 %, 0.5 %, as the forms promise.
    [InlineData(0.01, 999.8, 1.792e-3, 0.556)]
    [InlineData(20, 998.2, 1.002e-3, 0.598)]
    [InlineData(25, 997.05, 0.890e-3, 0.607)]
    [InlineData(50, 988.0, 0.547e-3, 0.644)]
    [InlineData(80, 971.8, 0.354e-3, 0.670)]
    public void Water_has_the_properties_of_the_tables(double celsius, double density, double viscosity, double conductivity)
    {
        FluidHeat water = FluidHeat.Water(273.15 + celsius);
        Assert.Equal(density, water.Density, 2e-4 * density);
        Assert.Equal(viscosity, water.KinematicViscosity * water.Density, 0.025 * viscosity);
        Assert.Equal(conductivity, water.Conductivity, 0.005 * conductivity);
    }

    [Fact]
    public void Still_air_with_radiation_lands_where_workshops_find_it()
    {
        // Convection 4 to 5 and radiation 5.5 W/(m² K): 8 to 11 at usual differences (numerical reference with the cited equation), more for a low wall or a hot one.
        Gen.Select(Gen.Double[5, 60], Gen.Double[0.05, 0.4]).Hold((over, height) => SurfaceCooling.StillAir(height).At(293 + over, 293) is > 7.5 and < 14);
        Gen.Select(Gen.Double[5, 40], Gen.Double[0.05, 0.4]).Hold((over, height) => SurfaceCooling.StillWater(height).At(293 + over, 293) is > 250 and < 1200);
    }

    [Fact]
    public void Nusselt_number_follows_the_published_equation()
    {
        // Churchill and Chu, 1975, Int. J. Heat Mass Transfer 18, 1323-1329, all Rayleigh numbers: {0.825 + 0.387 Ra^(1/6)/[1 + (0.492/Pr)^(9/16)]^(8/27)}², worked out apart (python). Tolerance: rounding.
        Assert.Equal(16.558402864, SurfaceCooling.Nusselt(1e6, 0.71), 1e-8);
        Assert.Equal(122.856534876, SurfaceCooling.Nusselt(1e9, 0.71), 1e-8);
        Assert.Equal(75.288506438, SurfaceCooling.Nusselt(1e8, 7), 1e-8);
    }

    [Fact]
    public void Radiation_is_the_difference_of_fourth_powers_over_that_of_temperatures() =>
        // 0.9 σ (313.15⁴ - 293.15⁴)/20, σ of CODATA 2018.
        Assert.Equal(5.693237109, SurfaceCooling.Radiation(313.15, 293.15, 0.9), 1e-8);

    [Fact]
    public void Still_air_and_water_put_it_together()
    {
        // 100 mm high, 40 °C in 20 °C: Ra 1.79e6 in air and 4.99e8 in water, from the property formulas at 30 °C, worked out apart (python). Tolerance: rounding.
        Assert.Equal(10.818098555, SurfaceCooling.StillAir(0.1).At(313.15, 293.15), 1e-8);
        Assert.Equal(5.124861446, SurfaceCooling.StillAir(0.1, 0).At(313.15, 293.15), 1e-8);
        Assert.Equal(744.600615648, SurfaceCooling.StillWater(0.1).At(313.15, 293.15), 1e-6);
        Assert.Equal(SurfaceCooling.StillAir(0.1).At(313.15, 293.15), SurfaceCooling.StillAir(0.1).At(293.15, 313.15), 1e-12);
        Assert.Equal(8, SurfaceCooling.Fixed(8).At(313.15, 293.15));
    }

    [Fact]
    public void Mixture_lies_midway_between_the_bounds_of_hashin_and_shtrikman()
    {
        // Hashin and Shtrikman, 1962, J. Appl. Phys. 33, 3125: k1 + f2/(1/(k2 - k1) + f1/(3 k1)) and the same the other way round. k 0.3 and 0.2, a quarter of the first, by hand:
        // 0.3 + 0.75/(-10 + 0.25/0.9) = 0.2228571, 0.2 + 0.25/(10 + 0.75/0.6) = 0.2222222.
        Assert.Equal((0.2228571429 + 0.2222222222) / 2, PlasticHeat.Mixed(0.3, 0.2, 0.25), 1e-9);
        Assert.Equal(PlasticHeat.Mixed(0.3, 0.2, 0.25), PlasticHeat.Mixed(0.2, 0.3, 0.75), 1e-12);
        Assert.Equal((0.2, 0.3, 0.3), (PlasticHeat.Mixed(0.3, 0.2, 0), PlasticHeat.Mixed(0.3, 0.2, 1), PlasticHeat.Mixed(0.3, 0.3, 0.5)));
    }

    [Fact]
    public void Coefficient_grows_with_the_difference_and_never_vanishes()
    {
        foreach (SurfaceCooling cooling in new[] { SurfaceCooling.StillAir(0.1), SurfaceCooling.StillWater(0.1) })
        {
            double last = 0;
            for (double over = 0; over <= 60; over += 1)
            {
                double here = cooling.At(295 + over, 295);
                Assert.True(here > last, $"{cooling.Medium} at {over} K");
                last = here;
            }
        }

        // Water lies still at 4 °C, where it is densest: only conduction is left, not a negative root.
        Assert.True(SurfaceCooling.StillWater(0.1).At(277.13, 277.13) > 0);
    }

    [Fact]
    public void Table_gives_the_surface_of_the_balance()
    {
        SurfaceCooling air = SurfaceCooling.StillAir(0.15);
        FilmTable table = new(air, 293, 1);
        Gen.Select(Gen.Double[250, 450], Gen.Double[0.01, 10]).Hold((cell, conductance) =>
        {
            double surface = table.Surface(cell, conductance, 0.01, 293, out double slope), q = conductance * (cell - surface);
            // 0.2 %: straight lines between points half a kelvin apart.
            Assert.Equal(0.01 * air.At(surface, 293) * (surface - 293), q, 0.002 * Math.Abs(q) + 1e-6);
            double next = table.Surface(cell + 0.001, conductance, 0.01, surface, out _);
            Assert.Equal((conductance * (cell + 0.001 - next) - q) / 0.001, slope, 0.02 * slope);
        });
    }

    [Fact]
    public void Heights_and_temperatures_that_are_none_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SurfaceCooling.StillAir(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => SurfaceCooling.StillAir(0.1, 1.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => SurfaceCooling.StillWater(0.1).At(double.NaN, 293));
    }
}
