using Finwright.Geometry;
using Finwright.Making.Cure;
using Finwright.Making.Resins;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Cure;

public sealed class PartCureTests
{
    private const double Ice = CureCases.IcePoint;
    private static readonly Point3 FinSize = new(0.060, 0.040, 0.0144), Wall = new(0.0012, 0.0012, 0.0012);
    private static readonly Point3 Fine = new(0.005, 0.005, 0.0012);

    [Theory]
    // Slab and part share the solver but neither cells nor faces; 1.5 and 0.15 K: cells of 0.8 mm that hold wall and resin together, as against cells of their own.
    [InlineData(0.4, 8, 0.15)]
    [InlineData(1, 300, 0.15)]
    [InlineData(6, 300, 1.5)]
    public void Solve_of_a_wide_slab_agrees_with_one_dimension(double scale, double coefficient, double tolerance)
    {
        ResinSystem resin = CureCases.Scaled(scale);
        PartVoxels voxels = CureBoxes.Box(new(0.06, 0.06, 0.0144), new(0, 0, 0.0012), new(0.03, 0.03, 0.0008), 0.3, false);
        PartCureResult part = Solve(voxels, Case(resin, coefficient) with { InfillShare = 0.15, Room = Ice + 22, Options = new() });
        SlabCure slab = CureSlab.Solve(CureCases.Slab(resin, 0.012, coefficient) with { InfillShare = 0.15 }, TestContext.Current.CancellationToken);
        Assert.Equal(slab.Centre.Temperature, part.Resin.Temperature, tolerance);
        Assert.Equal(slab.WallOutside.Temperature, part.WallOutside.Temperature, tolerance);
        Assert.Equal(slab.WallInside.Temperature, part.WallInside.Temperature, 2 * tolerance);
        Assert.Equal(slab.Centre.Time, part.Resin.Time, 0.02 * slab.Centre.Time);
        // The last place lies at the wall, in a cell that holds both.
        Assert.Equal(slab.GelEverywhere, part.GelEverywhere, 0.04 * slab.GelEverywhere);
        Assert.Equal(slab.MeanConversion, part.MeanConversion, 0.002);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.37)]
    public void Solve_without_reaction_cools_as_the_product_of_exact_series(double shift)
    {
        // A box cooled on all faces: the product of three slabs' series (Carslaw and Jaeger, from memory; Heisler's charts), mean over the volume. h 20 W/(m² K): Biot numbers 2, 1.5 and 1.
        Point3 size = new(0.040, 0.030, 0.020);
        ResinSystem inert = CureCases.Infusion with { Kinetics = new(0, 50e3, 0, 50e3, 0, 1, 0, 0, 0.6) };
        const double Time = 1200, Film = 20;
        (double mean, double centre) = ExactSlab.Box(size.X, size.Y, size.Z, Film, inert.Conductivity, inert.Density * inert.HeatCapacity, Time);
        PartVoxels voxels = CureBoxes.Box(size, new(0, 0, 0), new(0.00125, 0.00125, 0.00125), shift);
        PartCureResult cooled = Solve(voxels, Case(inert, Film) with { InfillShare = 0, Room = 300, WallThickness = 0, Pours = [new(0, double.PositiveInfinity, 350)], Duration = Time, Options = new(0.005) });
        // 0.003 of the beginning: cells of a sixteenth of the least edge, second order.
        Assert.Equal(mean, (cooled.History[^1].Mean - 300) / 50, 0.003);
        Assert.Equal(centre, (cooled.History[^1].Hottest - 300) / 50, 0.005);
        Assert.InRange(cooled.Balance.Gap, 0, 1e-4);
    }

    [Fact]
    public void Solve_comes_nearer_as_cells_shrink()
    {
        ResinSystem resin = CureCases.Scaled(6);
        double Peak(double cell) => Solve(CureBoxes.Box(new(0.03, 0.03, 0.0144), new(0, 0, 0.0012), new(0.015, 0.015, cell), 0.4, false), Case(resin, 300) with { Options = new(0.01) }).Resin.Temperature;
        double exact = Peak(0.0001);
        // A rise of 90 K, half of it across the walls' mixed cells: 4 %, 3 % and, with three cells through the wall, 0.3 % of it.
        Assert.Equal(exact, Peak(0.0016), 4.0);
        Assert.Equal(exact, Peak(0.0008), 2.5);
        Assert.Equal(exact, Peak(0.0004), 0.3);
        Assert.Equal(exact, Peak(0.0002), 0.08);
        // And towards the slab with cells of its own for wall and resin (numerical reference, scipy: 111.80 °C).
        Assert.Equal(111.80, exact - Ice, 0.3);
    }

    [Fact]
    public void Solve_accounts_for_all_the_heat()
    {
        ResinSystem resin = CureCases.Infusion with { GlassTransition = CureCases.Glass };
        PartVoxels voxels = CureBoxes.Box(FinSize, Wall, Fine, 0.4);
        foreach (PartCureCase one in new[]
        {
            Air(resin),
            Air(resin) with { Bath = new(600, 4 * 3600, Ice + 15, 0.03), Up = new(0, 1, 0) },
            Air(resin) with { Pours = [new(0, 0.02, Ice + 18), new(3 * 3600, 0.04, Ice + 25), new(8 * 3600, 1, Ice + 18)], Up = new(0, 2, 0) },
        })
        {
            PartCureResult cure = Solve(voxels, one);
            Assert.Equal(CureStatus.Done, cure.Status);
            Assert.InRange(cure.Balance.Gap, 0, 1e-3);
            // Everything was poured in the end: volume of the pores times density.
            Assert.Equal(voxels.CoreVolume * 0.85 * resin.Density, cure.ResinMass, 1e-9);
        }
    }

    [Fact]
    public void Solve_of_a_symmetric_part_is_symmetric()
    {
        PartVoxels voxels = CureBoxes.Box(FinSize, Wall, new(0.005, 0.004, 0.0012));
        PartCureResult cure = Solve(voxels, Air(CureCases.Infusion));
        Dictionary<int, double> field = cure.Cells.Zip(cure.FieldAtPeak).ToDictionary();
        foreach ((int cell, double temperature) in field)
        {
            int i = cell % voxels.CountX, j = cell / voxels.CountX % voxels.CountY, k = cell / (voxels.CountX * voxels.CountY);
            // 0.02 K: what the linear solver leaves.
            Assert.Equal(field[voxels.Index(voxels.CountX - 1 - i, voxels.CountY - 1 - j, voxels.CountZ - 1 - k)], temperature, 0.02);
        }

        Assert.Equal(0.030, cure.HottestPlace.X, 0.005);
        Assert.Equal(0.020, cure.HottestPlace.Y, 0.004);
        Assert.Equal(0.0072, cure.HottestPlace.Z, 0.0013);
    }

    [Fact]
    public void Pouring_in_stages_keeps_the_part_cooler()
    {
        PartVoxels voxels = CureBoxes.Box(FinSize, Wall, Fine, 0.4);
        PartCureCase once = Air(CureCases.Scaled(1.5)) with { Up = new(0, 1, 0), Duration = 36 * 3600 };
        PartCureCase staged = once with { Pours = [new(0, 0.013, Ice + 20), new(10 * 3600, 0.026, Ice + 20), new(20 * 3600, 1, Ice + 20)] };
        PartCureResult one = Solve(voxels, once), three = Solve(voxels, staged);
        Assert.True(three.Resin.Temperature < one.Resin.Temperature - 3, $"{three.Resin.Temperature - Ice} against {one.Resin.Temperature - Ice}");
        Assert.True(three.GelEverywhere > 20 * 3600);
        Assert.Equal(one.ResinMass, three.ResinMass, 1e-9);
    }

    [Fact]
    public void Water_keeps_the_part_cool_until_it_can_be_taken_out()
    {
        PartVoxels voxels = CureBoxes.Box(FinSize, Wall, new(0.0025, 0.0025, 0.0012), 0.4);
        ResinSystem resin = CureCases.Scaled(3) with { GlassTransition = CureCases.Glass };
        PartCureCase part = Air(resin) with { Bath = new(300, 6 * 3600, Ice + 15, 1) };
        PartCureResult dry = Solve(voxels, part with { Bath = null }), wet = Solve(voxels, part);
        Assert.True(dry.Resin.Temperature > Ice + 65 && wet.Resin.Temperature < Ice + 50, $"{dry.Resin.Temperature - Ice} {wet.Resin.Temperature - Ice}");

        WaterTime water = PartCure.WaterNeeded(voxels, part, Ice + 60, PourCaution.Nominal, TestContext.Current.CancellationToken);
        Assert.Equal(WaterTimeStatus.Found, water.Status);
        Assert.True(water.Peak <= Ice + 60);
        // The same by direct runs on the given grid: long enough with a quarter of an hour more, too short with half an hour less.
        Assert.True(Solve(voxels, part with { Bath = part.Bath! with { Duration = water.Duration + 900 } }).Resin.Temperature < Ice + 61);
        Assert.True(Solve(voxels, part with { Bath = part.Bath! with { Duration = Math.Max(60, water.Duration - 1800) } }).Resin.Temperature > Ice + 60);
        Assert.Equal(WaterTimeStatus.NotNeeded, PartCure.WaterNeeded(voxels, part, 700, PourCaution.Nominal, TestContext.Current.CancellationToken).Status);
    }

    [Fact]
    public void Band_orders_its_ends_and_knows_what_is_near_critical()
    {
        PartVoxels voxels = CureBoxes.Box(FinSize, Wall, Fine, 0.4);
        List<double> told = [];
        PartCureBand edge = PartCure.Band(voxels, Air(CureCases.Scaled(0.8)), new Progress(told), TestContext.Current.CancellationToken);
        Assert.True(edge.Slow.Resin.Temperature < edge.Nominal.Resin.Temperature && edge.Nominal.Resin.Temperature < edge.Fast.Resin.Temperature);
        PartCureBand mild = PartCure.Band(voxels, Air(CureCases.Scaled(0.15)), null, TestContext.Current.CancellationToken);
        Assert.False(mild.IsNearCritical);
        Assert.True(mild.IgnitionShare < edge.IgnitionShare);
        Assert.True(mild.Sensitivity < edge.Sensitivity);
        Assert.Equal(1, told.Max(), 1e-9);
    }

    [Fact]
    public void Merged_grid_holds_the_same_part()
    {
        PartVoxels fine = CureBoxes.Box(FinSize, Wall, new(0.0025, 0.003, 0.0012), 0.4), coarse = VoxelMerge.Halve(fine);
        Assert.Equal(fine.PartVolume, coarse.PartVolume, 1e-12);
        Assert.Equal(fine.CoreVolume, coarse.CoreVolume, 1e-12);
        Assert.Equal(fine.CooledArea.Sum(), coarse.CooledArea.Sum(), 1e-12);
        PartVoxels direct = CureBoxes.Box(FinSize, Wall, new(0.005, 0.006, 0.0024), 0.2);
        Assert.Equal(direct.PartVolume, coarse.PartVolume, 1e-12);
    }

    [Fact]
    public void Part_without_resin_says_so()
    {
        foreach ((double wall, double level) in new[] { (0.02, 1.0), (0.0012, -1.0) })
        {
            PartCureResult empty = Solve(CureBoxes.Box(FinSize, new(wall, wall, wall), Fine), Air(CureCases.Infusion) with { Pours = [new(0, level, Ice + 20)] });
            Assert.Equal(CureStatus.NothingPoured, empty.Status);
            Assert.Equal(0, empty.ResinMass);
            Assert.Equal(Ice + 20, empty.Resin.Temperature, 1e-9);
            Assert.True(double.IsPositiveInfinity(empty.GelEverywhere));
            Assert.All(empty.History, m => Assert.True(double.IsFinite(m.Hottest + m.Mean + m.WallInside + m.WallOutside + m.MeanConversion + m.LeastConversion)));
        }
    }

    [Fact]
    public void Cases_that_are_none_are_refused()
    {
        PartVoxels voxels = CureBoxes.Box(FinSize, Wall, Fine);
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(voxels, Air(CureCases.Infusion) with { Room = 20 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(voxels, Air(CureCases.Infusion) with { Up = new(0, 0, 0) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(voxels, Air(CureCases.Infusion) with { Pours = [new(100, 1, 293), new(50, 1, 293)] }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(voxels, Air(CureCases.Infusion) with { Pours = [new(1e9, 1, 293)] }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solve(voxels, Air(CureCases.Infusion) with { Bath = new(0, 3600, 288, double.NaN) }));
        Assert.Throws<ArgumentException>(() => Solve(new PartVoxels(new(0, 0, 0), Fine, 2, 2, 2), Air(CureCases.Infusion)));
        Assert.Throws<ArgumentException>(() => PartCure.WaterNeeded(voxels, Air(CureCases.Infusion), 333, PourCaution.High, TestContext.Current.CancellationToken));
    }

    private static PartCureResult Solve(PartVoxels voxels, PartCureCase part) => PartCure.Solve(voxels, part, null, TestContext.Current.CancellationToken);

    private static PartCureCase Case(ResinSystem resin, double coefficient) => new()
    {
        Resin = resin,
        InfillShare = 0,
        WallThickness = 0.0012,
        Room = Ice + 22,
        InAir = SurfaceCooling.Fixed(coefficient),
    };

    private static PartCureCase Air(ResinSystem resin) => new() { Resin = resin, InfillShare = 0.15, WallThickness = 0.0012, Room = Ice + 20 };

    private sealed class Progress(List<double> told) : IProgress<double>
    {
        public void Report(double value) => told.Add(value);
    }
}
