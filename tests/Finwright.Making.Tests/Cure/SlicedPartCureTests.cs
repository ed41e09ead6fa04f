using Finwright.Geometry;
using Finwright.Making.Cure;
using Finwright.Making.Layers;
using Finwright.Making.Resins;
using Finwright.Making.Tests.Layers;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Cure;

/// <summary>The way from solid over layers and grid to cure: cells cut by round and sloping surfaces.</summary>
public sealed class SlicedPartCureTests
{
    [Theory]
    [InlineData(20, 600)]
    [InlineData(300, 200)]
    public void Sphere_in_water_cools_as_the_exact_series(double coefficient, double seconds)
    {
        // Resin that does not react, plastic that conducts and holds heat as resin does: one body. Exact: θ mean = Σ 3 C (sin ζ - ζ cos ζ)/ζ³ exp(-ζ² Fo), 1 - ζ cot ζ = Bi
        // (Carslaw and Jaeger, Conduction of Heat in Solids, from memory).
        const double Radius = 0.010;
        ResinSystem inert = CureCases.Infusion with { Kinetics = new(0, 50e3, 0, 50e3, 0, 1, 0, 0, 0.6) };
        double capacity = inert.Density * inert.HeatCapacity, fourier = inert.Conductivity / capacity * seconds / (Radius * Radius), biot = coefficient * Radius / inert.Conductivity;
        PartVoxels voxels = Voxeliser.Of(TestParts.Slice(TestParts.Sphere(Radius)), new(0.0009, 0.0011, 0.0010), TestContext.Current.CancellationToken);
        PartCureResult cooled = Solve(voxels, new()
        {
            Resin = inert,
            Plastic = new(inert.Density, inert.HeatCapacity, inert.Conductivity),
            InfillShare = 0,
            WallThickness = 0.00135,
            Room = 340,
            Pours = [new(0, double.PositiveInfinity, 340)],
            Bath = new(0, 1e6, 300, double.PositiveInfinity),
            InWater = SurfaceCooling.Fixed(coefficient),
            Duration = seconds,
            Options = new(0.01),
        });
        double left = 1 - cooled.Balance.Lost / (voxels.PartVolume * capacity * 40);
        (double mean, double centre) = Sphere(biot, fourier);
        // 1 %: the area of the cut cells' surface, 20 cells across.
        Assert.Equal(mean, left, 0.01);
        Assert.Equal(centre, (cooled.History[^1].Hottest - 300) / 40, 0.015);
        Assert.InRange(cooled.Balance.Gap, 0, 1e-3);
    }

    [Fact]
    public void Part_laid_askew_cures_as_the_part_laid_level()
    {
        ResinSystem resin = CureCases.Scaled(0.6) with { GlassTransition = CureCases.Glass };
        PartCureCase part = new() { Resin = resin, InfillShare = 0.15, WallThickness = 0.00135, Room = 293.15, InAir = SurfaceCooling.Fixed(9) };
        PartLayers level = TestParts.Slice(TestParts.Box(0.060, 0.020, 0.040)), askew = TestParts.Slice(TestParts.Box(0.060, 0.020, 0.040), Placement.Rotation(new(0, 1, 0), 20 * Math.PI / 180));
        PartCureResult one = Solve(Voxeliser.Of(level, new(0.003, 0.0012, 0.002), TestContext.Current.CancellationToken), part);
        PartCureResult other = Solve(Voxeliser.Of(askew, new(0.003, 0.0012, 0.002), TestContext.Current.CancellationToken), part);
        double rise = one.Resin.Temperature - 293.15;
        Assert.True(rise > 4);
        // 5 % of the rise: walls and solid layers lie otherwise, and hold a hundredth more or less of the part.
        Assert.Equal(rise, other.Resin.Temperature - 293.15, 0.05 * rise);
        Assert.Equal(one.Resin.Time, other.Resin.Time, 0.05 * one.Resin.Time);
        Assert.Equal(one.ResinMass, other.ResinMass, 0.03 * one.ResinMass);
        Assert.InRange(other.Balance.Gap, 0, 1e-3);
    }

    private static PartCureResult Solve(PartVoxels voxels, PartCureCase part) => PartCure.Solve(voxels, part, null, TestContext.Current.CancellationToken);

    private static (double Mean, double Centre) Sphere(double biot, double fourier)
    {
        double mean = 0, centre = 0;
        for (int n = 0; n < 60; n++)
        {
            // 1 - ζ cot ζ rises from its pole (or from 0) to the next one.
            double low = n * Math.PI + 1e-9, high = (n + 1) * Math.PI - 1e-9;
            for (int i = 0; i < 80; i++)
            {
                double middle = (low + high) / 2;
                if (1 - middle / Math.Tan(middle) < biot)
                    low = middle;
                else
                    high = middle;
            }

            double z = (low + high) / 2, s = Math.Sin(z) - z * Math.Cos(z), c = 4 * s / (2 * z - Math.Sin(2 * z)), decay = Math.Exp(-z * z * fourier);
            centre += c * decay;
            mean += 3 * c * s / (z * z * z) * decay;
        }

        return (mean, centre);
    }
}
