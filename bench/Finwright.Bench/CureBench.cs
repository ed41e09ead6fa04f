using BenchmarkDotNet.Attributes;
using Finwright.Geometry;
using Finwright.Making.Cure;
using Finwright.Making.Resins;
using Finwright.Making.Voxels;

namespace Finwright.Bench;

/// <summary>A day's cure of a slab and of a tapering part of some 30 000 cells, with its range.</summary>
[MemoryDiagnoser]
public class CureBench
{
    private static readonly ResinSystem Resin = new()
    {
        Name = "bench",
        Title = "Bench",
        Remark = "An infusion resin, slowed.",
        Kinetics = new(0.45 * 35982, 54960, 0.45 * 3574.1, 44289, 0.39845, 1.5361, 460e3, 0.001, 0.6),
        GlassTransition = new(216.15, 364.15, 0.36903),
        Density = 1150,
        HeatCapacity = 1700,
        Conductivity = 0.20,
    };

    private static readonly PartCureCase Part = new() { Resin = Resin, InfillShare = 0.15, WallThickness = 0.0012, Room = 293.15, Bath = new(600, 8 * 3600, 288.15, 0.2), Up = new(0, 1, 0) };

    private PartVoxels _voxels = null!;

    [GlobalSetup]
    public void Prepare() => _voxels = Wedge();

    [Benchmark(Description = "slab with its range")]
    public double Slab() => CureBand.Of(new() { Resin = Resin, Thickness = 0.016, InfillShare = 0.15, StartTemperature = 293.15, Surroundings = 293.15, Cooling = SurfaceCooling.StillAir(0.1) }).Fast.Centre.Temperature;

    [Benchmark(Description = "part, one run")]
    public double One() => PartCure.Solve(_voxels, Part).Resin.Temperature;

    [Benchmark(Description = "part with its range")]
    public double Band() => PartCure.Band(_voxels, Part).Fast.Resin.Temperature;

    [Benchmark(Description = "how long in water")]
    public double Water() => PartCure.WaterNeeded(_voxels, Part, 333.15).Duration;

    /// <summary>A wedge 110 mm long and 220 mm deep, 16 mm thick at one edge and 2 mm at the other, in cells of 2.2 by 4 by 1 mm, by sampling.</summary>
    private static PartVoxels Wedge()
    {
        PartVoxels voxels = new(new(-0.0022, -0.004, -0.009), new(0.0022, 0.004, 0.001), 52, 57, 18);
        Point3 c = voxels.Cell;
        static double Half(double x) => x is >= 0 and <= 0.11 ? 0.008 - 0.007 * x / 0.11 : 0;
        for (int k = 0; k < voxels.CountZ; k++)
        {
            for (int j = 0; j < voxels.CountY; j++)
            {
                for (int i = 0; i < voxels.CountX; i++)
                {
                    Point3 at = voxels.Centre(i, j, k);
                    int n = voxels.Index(i, j, k);
                    bool isIn = at.Y is >= 0 and <= 0.22;
                    double part = isIn ? Share(at.Z, c.Z, Half(at.X)) : 0;
                    bool isEdge = at.Y < 0.002 || at.Y > 0.218 || at.X < 0.0022 || at.X > 0.1078;
                    voxels.Part[n] = part;
                    voxels.Core[n] = isEdge ? 0 : isIn ? Share(at.Z, c.Z, Half(at.X) - 0.0012) : 0;
                    bool isSurface = part > 0 && Math.Abs(at.Z) + c.Z / 2 > Half(at.X) - 1e-9;
                    voxels.CooledArea[n] = (isSurface ? c.X * c.Y : 0) + (isEdge ? part * c.Z * (at.X is < 0.0022 or > 0.1078 ? c.Y : c.X) : 0);
                    double before = isIn ? Share(at.Z, c.Z, Half(at.X - c.X / 2)) : 0;
                    voxels.FacesX[i + (voxels.CountX + 1) * (j + voxels.CountY * k)] = at.X - c.X / 2 > 1e-6 ? before : 0;
                    voxels.FacesY[i + voxels.CountX * (j + (voxels.CountY + 1) * k)] = at.Y > c.Y && isIn ? part : 0;
                    voxels.FacesZ[n] = isIn && Math.Abs(at.Z - c.Z / 2) < Half(at.X) ? 1 : 0;
                }
            }
        }

        return voxels;
    }

    private static double Share(double z, double cell, double half) => half <= 0 ? 0 : Math.Clamp((Math.Min(z + cell / 2, half) - Math.Max(z - cell / 2, -half)) / cell, 0, 1);
}
