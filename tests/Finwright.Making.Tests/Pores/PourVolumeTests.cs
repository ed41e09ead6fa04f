using Finwright.Making.Layers;
using Finwright.Making.Pores;
using Finwright.Making.Resins;
using Finwright.Numerics;

namespace Finwright.Making.Tests.Pores;

public sealed class PourVolumeTests
{
    private static readonly ResinSystem Resin = new()
    {
        Name = "trial",
        Title = "Trial",
        Remark = "Invented for the tests.",
        Kinetics = new(1, 1, 1, 1, 1, 1, 1, 0, 0.6),
        Density = 1100,
        HeatCapacity = 1700,
        Conductivity = 0.2,
        HardenerByMass = 0.25,
        ResinPartDensity = 1150,
        HardenerPartDensity = 950,
        PotLife = new(3600, 0.1, 298.15),
    };

    private static PartLayers Part()
    {
        PrintSettings settings = new() { LayerHeight = 0.0002, LineWidth = 0.00045, Walls = 3, SolidLayers = 0, InfillShare = 0.15, PlasticDensity = 1270 };
        Layer layer = new(0, 0.0002, [], [], 0.0015, 0.0012, 0.001, 0.4);
        return new("part", settings, Finwright.Geometry.Placement.Identity, new(0.1, 0.02, 0.02), [.. Enumerable.Range(0, 100).Select(i => layer with { Bottom = i * 0.0002, Top = (i + 1) * 0.0002 })]);
    }

    [Fact]
    public void Pores_are_the_open_share_of_the_core_less_hardware()
    {
        // 10 cm² of core, 20 mm high: 20 ml, 17 open, 2 for hardware.
        PoreVolume pores = PourVolume.FromLayers(Part(), 2e-6);
        Assert.Equal(15e-6, pores.Pores.Value, 1e-12);
        // By hand: infill 20 ml × 0.15 × 0.1 = 0.3 ml; lines 0.4 m × 13.5 µm × 20 mm × 0.85 + 20 ml × 0.15 × 0.03 = 0.0918 + 0.09 ml; √(0.3² + 0.1818²).
        Assert.Equal(Math.Sqrt(0.3 * 0.3 + 0.1818 * 0.1818) * 1e-6, pores.Pores.High - pores.Pores.Value, 1e-12);
        Assert.Equal(2, pores.Reasons.Count);
        Assert.Throws<ArgumentOutOfRangeException>(() => PourVolume.FromLayers(Part(), 18e-6));
    }

    [Fact]
    public void Pores_from_plastic_laid_are_what_is_left_of_the_envelope()
    {
        PoreVolume pores = PourVolume.FromPlastic(30e-6, 12e-6, 1e-6);
        Assert.Equal(17e-6, pores.Pores.Value, 1e-15);
        Assert.Equal(12e-6 * 0.035, pores.Pores.Value - pores.Pores.Low, 1e-15);
    }

    [Fact]
    public void Need_balances_what_fills_shrinks_stands_and_is_lost()
    {
        PourNeed need = PourVolume.Need([new(new(50e-6, 48e-6, 53e-6), []), new(new(20e-6, 19e-6, 21e-6), [])], 15e-6, 0.05, 0.04);
        // Solid resin fills the pores in the end: what was poured into them less its shrinkage.
        Assert.Equal(70e-6, (need.Pores.Value + need.TopUp.Value) * (1 - 0.04), 1e-15);
        Assert.Equal(need.Total.Value, need.Pores.Value + need.TopUp.Value + need.Reservoirs + need.Losses.Value, 1e-15);
        Assert.Equal(0.05 * need.Total.Value, need.Losses.Value, 1e-15);
        Assert.True(need.Total.Low < need.Total.Value && need.Total.Value < need.Total.High);
        Assert.True(need.Total.High - need.Total.Value > 4e-6);
    }

    [Theory]
    [InlineData(298.15, 3600)]
    [InlineData(288.15, 7200)]
    [InlineData(308.15, 1800)]
    public void Pot_life_halves_for_ten_kelvin(double temperature, double seconds) => Assert.Equal(seconds, BatchPlan.PotLifeAt(Resin.PotLife!, temperature)!.Value, 1e-6);

    [Fact]
    public void Pot_life_far_from_the_data_sheets_temperature_is_not_told() => Assert.Null(BatchPlan.PotLifeAt(Resin.PotLife!, 281));

    [Fact]
    public void Batches_fit_their_cups_and_their_masses_add_up()
    {
        BatchPlan plan = BatchPlan.Of(new(150e-6, 140e-6, 165e-6), Resin, 0.08, 293.15);
        // 80 g of 1.1 g/ml less 3 ml on the cup: 69.7 ml; 165 ml take three.
        Assert.Equal(3, plan.Batches.Count);
        Assert.Equal(BatchLimit.Cup, plan.Limit);
        Batch batch = plan.Batches[0];
        Assert.True(batch.Mass.High <= 0.08);
        Assert.Equal(150e-6, plan.Batches.Sum(b => b.Volume.Value), 1e-12);
        Assert.Equal(batch.Mass.Value, batch.ResinMass!.Value.Value + batch.HardenerMass!.Value.Value, 1e-12);
        Assert.Equal(0.25, batch.HardenerMass.Value.Value / batch.ResinMass.Value.Value, 1e-12);
        Assert.Equal(0.25 * 1150 / 950, batch.HardenerVolume!.Value.Value / batch.ResinVolume!.Value.Value, 1e-12);
        Assert.Equal(1100 * 53e-6, batch.Mass.Value, 1e-12);
        Assert.Equal(120, batch.PouringTime, 1e-9);
    }

    [Fact]
    public void Batches_get_smaller_when_the_working_time_or_the_stated_mass_is_the_limit()
    {
        Ranged total = new(150e-6, 140e-6, 165e-6);
        Assert.Equal(BatchLimit.StatedMass, BatchPlan.Of(total, Resin, 0.3, 293.15).Limit);
        ResinSystem fast = Resin with { PotLife = new(300, 0.1, 298.15) };
        BatchPlan hurried = BatchPlan.Of(total, fast, 0.1, 303.15);
        Assert.Equal(BatchLimit.PotLife, hurried.Limit);
        Assert.All(hurried.Batches, batch => Assert.True(batch.Volume.High / BatchPlan.HandFlow <= BatchPlan.UsableShare * hurried.PotLife!.Value * (1 + 1e-9)));
        BatchPlan unknown = BatchPlan.Of(total, Resin with { PotLife = null, HardenerByMass = null }, 0.3, 293.15);
        Assert.Null(unknown.PotLife);
        Assert.Null(unknown.Batches[0].ResinMass);
        Assert.Null(unknown.Batches[0].HardenerVolume);
        Assert.Single(unknown.Batches);
    }
}
