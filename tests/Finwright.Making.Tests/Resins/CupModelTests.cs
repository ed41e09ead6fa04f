using Finwright.Making.Cure;
using Finwright.Making.Resins;
using Finwright.Making.Tests.Cure;

namespace Finwright.Making.Tests.Resins;

public sealed class CupModelTests
{
    private const double Ice = CureCases.IcePoint;

    /// <summary>100 g at 25 °C in a cup of 70 mm in a room of 22 °C, 8 W/(m² K).</summary>
    private static readonly CupCase Cup = new()
    {
        Resin = CureCases.Infusion,
        Mass = 0.1,
        Diameter = 0.07,
        StartTemperature = Ice + 25,
        RoomTemperature = Ice + 22,
        Cooling = SurfaceCooling.Fixed(8),
        Duration = 4 * 3600,
    };

    [Fact]
    public void Solve_agrees_with_an_independent_integration()
    {
        // Numerical reference, scipy: solve_ivp of m c dT/dt = m H r - h A (T - Ta) and da/dt = r, A = pi D^2/2 + 4 m/(rho D), LSODA, rtol 1e-10, every 600 s.
        double[] celsius = [25.0, 26.404, 28.343, 30.725, 33.659, 37.422, 42.63, 50.937, 69.429];
        CupRun cup = Solve(Cup);
        for (int i = 0; i < celsius.Length; i++)
        {
            // 0.05 K, and at 69 °C, where it warms by a kelvin in eight seconds, 0.5 K.
            Assert.Equal(celsius[i], cup.TemperatureAt(600 * i) - Ice, i < 8 ? 0.05 : 0.5);
        }

        Assert.Equal(212.645, cup.Peak.Temperature - Ice, 0.5);
        Assert.Equal(89.65, cup.Peak.Time / 60, 0.1);
        Assert.Equal(86.72, cup.Gel / 60, 0.1);
    }

    [Fact]
    public void Pot_life_ends_with_the_rise_when_nothing_is_known_of_viscosity()
    {
        CupRun cup = Solve(Cup with { TemperatureRise = 20 });
        Assert.Equal(Ice + 45, cup.TemperatureAt(cup.PotLife), 0.1);
        Assert.True(cup.PotLife < cup.Gel);
    }

    [Fact]
    public void Pot_life_ends_with_twice_the_viscosity()
    {
        // A flat dish stays at room temperature, so that the viscosity depends on the conversion alone.
        ResinViscosity viscosity = new(0.6, 298.15, 85e3, 1.5, 1);
        CupRun dish = Solve(Cup with { Resin = CureCases.Infusion with { Viscosity = viscosity }, Diameter = 1, StartTemperature = Ice + 22, Duration = 24 * 3600 });
        CupMoment before = dish.History.Last(m => m.Time <= dish.PotLife), after = dish.History.First(m => m.Time > dish.PotLife);
        double a = before.Conversion + (after.Conversion - before.Conversion) * (dish.PotLife - before.Time) / (after.Time - before.Time);
        // Twice the fresh one: (0.6/(0.6 - α))^(1.5 + α) = 2, fresh within 0.3 % of 1; what the dish warms (under 1 K) thins it by 10 %.
        Assert.Equal(2, Math.Pow(0.6 / (0.6 - a), 1.5 + a), 0.25);
        Assert.True(dish.PotLife < dish.Gel);
    }

    [Fact]
    public void Small_and_flat_cups_stay_cooler_and_last_longer()
    {
        CupRun large = Solve(Cup with { Mass = 0.2 }), usual = Solve(Cup), flat = Solve(Cup with { Diameter = 0.2 });
        Assert.True(large.Peak.Temperature > usual.Peak.Temperature && usual.Peak.Temperature > flat.Peak.Temperature);
        Assert.True(large.PotLife < usual.PotLife && usual.PotLife < flat.PotLife);
        // A dish of 200 mm holds 100 g 3 mm deep: it hardly warms.
        Assert.True(flat.Peak.Temperature < Ice + 30);
    }

    [Fact]
    public void Area_is_that_of_a_cylinder() =>
        // 115 g of 1150 kg/m³ fill 100 ml: in a cup of 50 mm they stand 50.93 mm high. π (0.05² / 2 + 0.05 × 0.05093) = 0.011927 m².
        Assert.Equal(0.011927, CupModel.Area(0.115, 1150, 0.05), 1e-6);

    [Fact]
    public void Cups_that_are_none_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(Cup with { Mass = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(Cup with { RoomTemperature = 22 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(Cup).TemperatureAt(-1));
    }

    private static CupRun Solve(CupCase cup) => CupModel.Solve(cup, TestContext.Current.CancellationToken);
}
