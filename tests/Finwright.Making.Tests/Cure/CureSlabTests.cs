using Finwright.Making.Cure;
using Finwright.Making.Resins;

namespace Finwright.Making.Tests.Cure;

public sealed class CureSlabTests
{
    private static readonly CureKinetics Inert = new(0, 50e3, 0, 50e3, 0, 1, 0, 0, 0.6);

    [Theory]
    // Exact series of a slab with convection, worked out to the digits shown (numerical reference, numpy; first roots agree with textbook tables, from memory). Tolerance: last digit.
    [InlineData(0.1, 0.2, 0.9940, 0.9514)]
    [InlineData(0.1, 1.0, 0.9224, 0.8781)]
    [InlineData(1.0, 0.2, 0.9506, 0.6434)]
    [InlineData(1.0, 0.5, 0.7725, 0.5045)]
    [InlineData(1.0, 1.0, 0.5339, 0.3482)]
    [InlineData(1.0, 2.0, 0.2547, 0.1661)]
    [InlineData(10, 0.2, 0.8293, 0.1225)]
    [InlineData(10, 0.5, 0.4546, 0.0643)]
    [InlineData(10, 1.0, 0.1638, 0.0232)]
    public void Solve_without_reaction_cools_as_the_exact_series(double biot, double fourier, double centre, double surface)
    {
        SlabCase slab = Cooling(biot, fourier, 100, new(1e-3, 1e-4, 1e9));
        CureMoment end = Solve(slab).History[^1];
        Assert.Equal(centre, (end.Hottest - slab.Surroundings) / 50, 1.5e-4);
        Assert.Equal(surface, (end.WallOutside - slab.Surroundings) / 50, 1.5e-4);
    }

    [Fact]
    public void Solve_converges_with_the_square_of_the_cell()
    {
        double At(int cells) => Solve(Cooling(1, 1, cells, new(1e-4, 1e-4, 1e9))).History[^1].Hottest;
        double exact = At(160);
        double[] errors = [At(5) - exact, At(10) - exact, At(20) - exact];
        // Order 2 of finite volumes; 1.8 because the last comparison itself still errs by a sixty-fourth.
        Assert.InRange(Math.Log2(Math.Abs(errors[0] / errors[1])), 1.8, 2.3);
        Assert.InRange(Math.Log2(Math.Abs(errors[1] / errors[2])), 1.8, 2.3);
    }

    [Fact]
    public void Solve_converges_with_the_third_power_of_the_step()
    {
        // Steps held by the longest one alone; the peak of a mild cure after two hours.
        SlabCase slab = CureCases.Slab(CureCases.Infusion, 0.025, 300) with { Duration = 7200, Cells = 10, Options = new(1e9, 1e9, 1) };
        double At(double longest) => Solve(slab with { Options = new(1e9, 1e9, longest) }).History[^1].Hottest;
        double exact = At(5), coarse = At(480) - exact, middle = At(240) - exact, fine = At(120) - exact;
        Assert.InRange(Math.Log2(Math.Abs(coarse / middle)), 2.5, 3.6);
        Assert.InRange(Math.Log2(Math.Abs(middle / fine)), 2.5, 3.6);
    }

    [Fact]
    public void Solve_with_steady_heat_gives_the_parabola_of_the_closed_form()
    {
        // dα/dt = 10⁻⁹ 1/s with 10¹² J/kg: 1150 W/kg, so slowly used up that it is steady. Closed form: q L²/8k + q L w/2k_w + q L/2h (Carslaw and Jaeger, from memory).
        ResinSystem steady = CureCases.Infusion with { Kinetics = new(1e-9, 0, 0, 0, 0, 0, 1e12, 0, 0.6) };
        SlabCase slab = CureCases.Slab(steady, 0.012, 300) with { Duration = 1e5 };
        SlabCure cure = Solve(slab);
        double q = 1e3 * 1150, flux = q * 0.006;
        double outside = slab.Surroundings + flux / 300, inside = outside + flux * 0.0012 / 0.29, centre = inside + q * 0.012 * 0.012 / (8 * 0.20);
        Assert.Equal(outside, cure.History[^1].WallOutside, 0.005);
        Assert.Equal(inside, cure.History[^1].WallInside, 0.005);
        // The half cell beside the wall carries the whole flux: q dx²/8k too warm.
        Assert.Equal(centre, cure.History[^1].Hottest, q * 0.00015 * 0.00015 / (8 * 0.20) + 0.005);
    }

    [Fact]
    public void Solve_accounts_for_all_the_heat()
    {
        foreach (SlabCase slab in Cases())
        {
            SlabCure cure = Solve(slab);
            Assert.Equal(CureStatus.Done, cure.Status);
            // A thousandth is what is asked for; the method keeps the balance to the tolerance of its linear solver.
            Assert.InRange(cure.Balance.Gap, 0, 1e-3);
            Assert.True(cure.Balance.Released > 0 && cure.Balance.Lost > 0);
        }
    }

    [Fact]
    public void Solve_with_no_loss_rises_by_the_adiabatic_rise()
    {
        SlabCase slab = CureCases.Slab(CureCases.Infusion, 0.012, 1e-9) with { WallThickness = 0, Duration = 48 * 3600 };
        SlabCure cure = Solve(slab);
        double rise = (1 - 0.001) * CureRate.AdiabaticRise(CureCases.Infusion);
        Assert.Equal(slab.StartTemperature + rise, cure.Centre.Temperature, 0.02 * rise);
        Assert.Equal(rise * cure.MeanConversion, cure.Centre.Temperature - slab.StartTemperature, 0.5);
    }

    [Fact]
    public void Solve_twice_gives_the_same_bits()
    {
        SlabCase slab = CureCases.Slab(CureCases.Infusion, 0.012, 8);
        Assert.Equal(Solve(slab).History, Solve(slab).History);
    }

    [Fact]
    public void Solve_at_twice_the_size_and_half_the_rate_and_cooling_keeps_the_temperatures_of_a_thin_slab()
    {
        // Biot number small: heat made ~ L rate, heat lost ~ h, stored ~ L. Twice L, half rate, same h... time doubles: dT/dt, loss/L and rate all halve together.
        SlabCase thin = CureCases.Slab(CureCases.Scaled(0.4), 0.0005, 0.3) with { WallThickness = 0.00005, Duration = 40 * 3600 };
        SlabCase thick = CureCases.Slab(CureCases.Scaled(0.2), 0.001, 0.3) with { WallThickness = 0.0001, Duration = 80 * 3600 };
        SlabCure one = Solve(thin), other = Solve(thick);
        // 0.05 K: what conduction across a millimetre still adds.
        Assert.Equal(one.Centre.Temperature, other.Centre.Temperature, 0.05);
        Assert.Equal(2 * one.Centre.Time, other.Centre.Time, 0.01 * other.Centre.Time);
    }

    [Fact]
    public void Solve_in_a_cold_room_stops_where_the_resin_turns_to_glass()
    {
        ResinSystem resin = CureCases.Scaled(0.4) with { GlassTransition = CureCases.Glass };
        SlabCase slab = CureCases.Slab(resin, 0.006, 10) with { Duration = 7 * 86400 };
        SlabCure held = Solve(slab), free = Solve(slab with { Resin = resin with { GlassTransition = null } });
        double glass = CureRate.GlassTransition(CureCases.Glass, held.LeastConversion) - slab.Surroundings;
        Assert.True(held.LeastConversion < free.LeastConversion - 0.03);
        // After a week at room temperature the glass transition stands 10 to 30 K above the room (common practice, no source).
        Assert.InRange(glass, 10, 30);
        SlabCure day = Solve(slab with { Duration = 86400 });
        Assert.True(day.LeastConversion < held.LeastConversion);
    }

    [Fact]
    public void Solve_refuses_what_is_no_slab()
    {
        SlabCase slab = CureCases.Slab(CureCases.Infusion, 0.012, 8);
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(slab with { Thickness = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(slab with { Thickness = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(slab with { StartTemperature = 22 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(slab with { InfillShare = 0.9 }));
    }

    [Fact]
    public void Solve_stops_when_asked()
    {
        using CancellationTokenSource source = new();
        source.Cancel();
        Assert.Throws<OperationCanceledException>(() => CureSlab.Solve(CureCases.Slab(CureCases.Infusion, 0.012, 8), source.Token));
    }

    private static SlabCure Solve(SlabCase slab) => CureSlab.Solve(slab, TestContext.Current.CancellationToken);

    private static SlabCase Cooling(double biot, double fourier, int cells, CureOptions options)
    {
        const double Half = 0.01, Conductivity = 0.2, Capacity = 1150 * 1700.0;
        return new()
        {
            Resin = CureCases.Infusion with { Kinetics = Inert },
            Thickness = 2 * Half,
            WallThickness = 0,
            StartTemperature = 350,
            Surroundings = 300,
            Cooling = SurfaceCooling.Fixed(biot * Conductivity / Half),
            Duration = fourier * Half * Half * Capacity / Conductivity,
            Cells = cells,
            Options = options,
        };
    }

    private static IEnumerable<SlabCase> Cases()
    {
        yield return CureCases.Slab(CureCases.Infusion, 0.012, 8);
        yield return CureCases.Slab(CureCases.Scaled(6), 0.012, 300);
        yield return CureCases.Slab(CureCases.Scaled(0.4) with { GlassTransition = CureCases.Glass }, 0.016, 8) with { InfillShare = 0.15, Cooling = SurfaceCooling.StillAir(0.11) };
        yield return CureCases.Slab(CureCases.Infusion, 0.016, 8) with { Cooling = SurfaceCooling.StillWater(0.11), InfillShare = 0.2 };
    }
}
