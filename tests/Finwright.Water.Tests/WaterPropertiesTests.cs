namespace Finwright.Water.Tests;

public sealed class WaterPropertiesTests
{
    // ITTC (2011), Recommended Procedure 7.5-02-01-03, Fresh Water and Seawater Properties. Fresh density
    // from its tables; fresh viscosities and vapour pressures: numerical reference, IAPWS-95. 15 °C stands in the evidence table.
    // Columns: °C, kg/m³, mPa·s, 1e-6 m²/s, Pa.
    [Theory]
    [InlineData(10, 999.7025, 1.3059, 1.3063, 1228.2)]
    [InlineData(20, 998.2072, 1.0016, 1.0034, 2339.3)]
    [InlineData(25, 997.0476, 0.8900, 0.8927, 3169.9)]
    public void Fresh_water_agrees_with_the_model_basins_table(double celsius, double density, double viscosity, double kinematic, double vapour)
    {
        WaterProperties water = WaterProperties.Fresh(celsius);
        // Two equations of state for the same water: they agree to 2e-6.
        Assert.Equal(1, water.Density / density, 5e-6);
        AssertOthers(water, viscosity, kinematic, vapour);
    }

    // Same source, sea water of 35.16504 g/kg. Density and dynamic viscosity from its tables, kinematic viscosity at 20 °C too; the rest: numerical reference, the same correlations worked out apart.
    [Theory]
    [InlineData(10, 1027.0000, 1.397, 1.3605, 1203)]
    [InlineData(20, 1024.8103, 1.077, 1.0508, 2291)]
    [InlineData(25, 1023.3873, 0.959, 0.9373, 3105)]
    public void Sea_water_agrees_with_the_model_basins_table(double celsius, double density, double viscosity, double kinematic, double vapour)
    {
        WaterProperties water = WaterProperties.Sea(celsius);
        // The table stands on a newer equation and lies 0.005 % higher throughout.
        Assert.Equal(1, water.Density / density, 6e-5);
        AssertOthers(water, viscosity, kinematic, vapour);
    }

    // UNESCO (1983), Algorithms for computation of fundamental properties of seawater, Technical Papers in Marine Science 44, check values
    // of the one-atmosphere equation of state (from memory). Tolerance: last printed digit.
    [Theory]
    [InlineData(5, 0, 999.96675)]
    [InlineData(25, 0, 997.04796)]
    [InlineData(5, 35, 1027.67547)]
    [InlineData(25, 35, 1023.34306)]
    public void Density_equation_gives_its_published_check_values(double celsius, double practicalSalinity, double density) =>
        Assert.Equal(density, WaterDensity.Eos80(celsius, practicalSalinity), 1e-5);

    [Fact]
    public void Brackish_water_lies_between_fresh_and_sea()
    {
        WaterProperties fresh = WaterProperties.Fresh(15), brackish = WaterProperties.Brackish(15), sea = WaterProperties.Sea(15);
        Assert.InRange(brackish.Density, fresh.Density, sea.Density);
        Assert.InRange(brackish.DynamicViscosity, fresh.DynamicViscosity, sea.DynamicViscosity);
        Assert.InRange(brackish.VapourPressure, sea.VapourPressure, fresh.VapourPressure);
    }

    [Fact]
    public void Vapour_pressure_at_the_normal_boiling_point_is_one_atmosphere()
    {
        // IAPWS: water boils at 99.974 °C under 101 325 Pa (from memory). Tolerance: the last digit of that, at 3600 Pa a degree, is 4 Pa.
        Assert.Equal(PhysicalConstants.Atmosphere, WaterVapour.Pressure(99.974, 0), 10.0);
    }

    [Fact]
    public void At_the_edges_of_its_range_gives_finite_numbers_that_move_the_right_way()
    {
        WaterProperties cold = WaterProperties.At(0, 42), warm = WaterProperties.At(35, 42);
        Assert.True(cold.Density > warm.Density);
        Assert.True(cold.KinematicViscosity > warm.KinematicViscosity);
        Assert.True(cold.VapourPressure < warm.VapourPressure);
        Assert.Equal(308.15, warm.Temperature, 1e-9);
    }

    [Theory]
    [InlineData(-0.1, 0)]
    [InlineData(35.1, 0)]
    [InlineData(double.NaN, 0)]
    [InlineData(15, -1)]
    [InlineData(15, 43)]
    [InlineData(15, double.NaN)]
    public void At_outside_its_range_refuses(double celsius, double salinity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterProperties.At(celsius, salinity));

    [Fact]
    public void Dynamic_pressure_and_Reynolds_number_follow_their_definitions()
    {
        // Sea at 15 °C, 8 m/s: ½ · 1026.0 · 64 = 32.8 kPa; chord 0.1 m: 0.8/1.189e-6 = 6.73e5.
        WaterProperties sea = WaterProperties.Sea(15);
        Assert.Equal(32.83e3, sea.DynamicPressure(8), 10.0);
        Assert.Equal(6.727e5, sea.ReynoldsNumber(8, 0.1), 5e2);
    }

    private static void AssertOthers(WaterProperties water, double viscosity, double kinematic, double vapour)
    {
        // The last digit of a three-digit viscosity is up to 0.05 %; the correlation itself is off by 0.02 %.
        Assert.Equal(1, water.DynamicViscosity * 1e3 / viscosity, 5e-4);
        Assert.Equal(1, water.KinematicViscosity * 1e6 / kinematic, 3e-4);
        // Rounding of the salt-water values to whole pascals: 0.04 %.
        Assert.Equal(1, water.VapourPressure / vapour, 4e-4);
    }
}
