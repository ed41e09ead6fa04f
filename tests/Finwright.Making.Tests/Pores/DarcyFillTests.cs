using Finwright.Geometry;
using Finwright.Making.Pores;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Pores;

public sealed class DarcyFillTests
{
    private const double Permeability = 3e-3 * 0.0074 * 0.0074;

    /// <summary>Straight body, 0.2 m high, under a constant pressure: φ μ H² / (2 k Δp).</summary>
    private static readonly double UnderConstantPressure = 0.85 * 0.5 * 0.2 * 0.2 / (2 * Permeability * 2000);

    private static FillConditions Straight(double pressure, double density) => new()
    {
        Column = PoreColumn.Straight(0.2, 0.002),
        OpenShare = 0.85,
        Permeability = Permeability,
        Density = density,
        Pressure = pressure,
        Viscosity = _ => 0.5,
        TimeLimit = 3600,
    };

    [Fact]
    public void Solve_without_weight_gives_the_closed_form_of_constant_pressure()
    {
        // A density of 1e-6 kg/m³ leaves weight out to 1e-8.
        FillResult result = DarcyFill.Solve(Straight(2000, 1e-6));
        Assert.Equal(FillStatus.Filled, result.Status);
        // Numerical reference, scipy: 25.87 s, last printed digit. The slabs are integrated exactly; the time within a step is interpolated linearly.
        Assert.Equal(25.87, result.Time!.Value, 0.005);
        Assert.Equal(UnderConstantPressure, result.Time.Value, 1e-5);
        // The level goes with the square root of time.
        Assert.Equal(result.Times[^1] / 4, result.Times[result.Times.Count / 2 - 1], 1e-5);
    }

    [Fact]
    public void Solve_under_a_reservoir_gives_the_closed_form_of_constant_head()
    {
        // Numerical reference, scipy: 48.51 s, last printed digit; it took g as 9.81, so the density makes up for it.
        const double Density = 1100 * 9.81 / DarcyFill.Gravity;
        FillResult result = DarcyFill.Solve(Straight(DarcyFill.HeadPressure(Density, 0.25), Density));
        Assert.Equal(48.51, result.Time!.Value, 0.006);
        // φ μ / (k ρ g) (h ln(h / (h − H)) − H) with the resin's surface h above the inlet.
        double closed = 0.85 * 0.5 / (Permeability * Density * DarcyFill.Gravity) * (0.25 * Math.Log(0.25 / 0.05) - 0.2);
        Assert.Equal(closed, result.Time.Value, 1e-4);
    }

    [Fact]
    public void Solve_with_resin_that_thickens_agrees_with_time_stretched_by_the_viscosity()
    {
        // μ = μ₀ e^(t/τ): ∫dt/μ = τ (1 − e^(−T/τ)) / μ₀, so T = −τ ln(1 − t₀/τ) with t₀ the time at constant viscosity.
        double plain = DarcyFill.Solve(Straight(2000, 1e-6)).Time!.Value;
        FillResult thick = DarcyFill.Solve(Straight(2000, 1e-6) with { Viscosity = t => 0.5 * Math.Exp(t / 40), TimeLimit = 400 });
        Assert.Equal(-40 * Math.Log(1 - plain / 40), thick.Time!.Value, 1e-4);
    }

    [Fact]
    public void Solve_stalls_where_the_resin_gels()
    {
        // With τ = 10 s the whole of ∫dt/μ lasts for 10 s of fresh resin, and the level stops at the height of that time.
        FillResult result = DarcyFill.Solve(Straight(2000, 1e-6) with { Viscosity = t => t < 300 ? 0.5 * Math.Exp(t / 10) : double.PositiveInfinity, TimeLimit = 400 });
        Assert.Equal(FillStatus.Stalled, result.Status);
        Assert.Null(result.Time);
        Assert.Equal(0.2 * Math.Sqrt(10 / UnderConstantPressure), result.Level, 1e-6);
        Assert.Equal(0.85 * 0.002 * result.Level, result.FilledVolume, 1e-12);
    }

    [Fact]
    public void Solve_says_when_the_pressure_cannot_lift_the_resin()
    {
        FillResult result = DarcyFill.Solve(Straight(DarcyFill.HeadPressure(1100, 0.15), 1100) with { TimeLimit = 1e5 });
        Assert.Equal(FillStatus.TooLittlePressure, result.Status);
        Assert.InRange(result.Level, 0.149, 0.15);
    }

    [Fact]
    public void Solve_with_a_narrow_bore_is_as_slow_as_the_bore()
    {
        // Pores a thousand times as open: only the bore is left, and V = Q t with Poiseuille's flow.
        FillConditions conditions = Straight(2000, 1e-6) with { Permeability = 1e3 * Permeability, Bores = [new(0.003, 0.15), new(0.004, 0.0014)], TimeLimit = 36000 };
        double resistance = 128 * 0.5 / Math.PI * (0.15 / Math.Pow(0.003, 4) + 0.0014 / Math.Pow(0.004, 4));
        FillResult result = DarcyFill.Solve(conditions);
        Assert.Equal(0.85 * 0.002 * 0.2 * resistance / 2000, result.Time!.Value, 2e-3 * result.Time.Value);
        Assert.Equal(2000 / resistance, result.GreatestFlow, 2e-3 * result.GreatestFlow);
        // Re = 4 ρ Q / (π d μ), here far below 1.
        Assert.InRange(result.ReynoldsNumber, 1e-12, 1e-3);
    }

    [Fact]
    public void Solve_of_two_areas_agrees_with_the_sum_written_out()
    {
        // 100 mm of area A, then 100 mm of area 4A, no weight: t = φμ/(kp) [H²/2 + 4 (H H + H²/8)].
        PoreColumn column = new(0.001, [.. Enumerable.Repeat(0.001, 100), .. Enumerable.Repeat(0.004, 100)]);
        double expected = 0.85 * 0.5 / (Permeability * 2000) * 0.01 * (0.5 + 4 * (1 + 0.125));
        Assert.Equal(expected, DarcyFill.Solve(Straight(2000, 1e-6) with { Column = column }).Time!.Value, 1e-4 * expected);
    }

    [Fact]
    public void Column_of_a_box_keeps_its_volume_in_every_attitude_and_its_height_when_upright()
    {
        PartVoxels box = new(default, new(0.001, 0.002, 0.001), 30, 20, 10);
        Array.Fill(box.Core, 1);
        foreach (Point3 up in new Point3[] { new(1, 0, 0), new(0, 0, 1), new(1, 2, -3) })
            Assert.Equal(box.CoreVolume, PoreColumn.Of(box, up, 37)!.Volume, 1e-3 * box.CoreVolume);
        PoreColumn upright = PoreColumn.Of(box, new(0, 0, 2), 10)!;
        Assert.Equal(0.010, upright.Height, 1e-12);
        Assert.All(upright.CoreArea, area => Assert.Equal(0.030 * 0.040, area, 1e-9));
        Assert.Null(PoreColumn.Of(new PartVoxels(default, new(1, 1, 1), 2, 2, 2), new(0, 0, 1)));
    }
}
