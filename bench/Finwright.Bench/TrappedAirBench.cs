using BenchmarkDotNet.Attributes;
using Finwright.Geometry;
using Finwright.Making.Pores;
using Finwright.Making.Voxels;

namespace Finwright.Bench;

/// <summary>A blade of 220 × 110 × 13 mm on cells of 1 mm: about 150,000 cells of core.</summary>
[MemoryDiagnoser]
public class TrappedAirBench
{
    private static readonly PourPort[] Ports = [new(new(0.055, 0.002, 0), new(0, -1, 0), 0.004), new(new(0.055, 0.218, 0), new(0, 1, 0), 0.004)];

    private PartVoxels _part = null!;
    private TrappedAir _air = null!;

    [GlobalSetup]
    public void Prepare()
    {
        _part = new(new(0, 0, -0.008), new(0.001, 0.001, 0.001), 110, 220, 16);
        for (int k = 0; k < _part.CountZ; k++)
            for (int j = 0; j < _part.CountY; j++)
                for (int i = 0; i < _part.CountX; i++)
                {
                    Point3 at = _part.Centre(i, j, k);
                    double x = at.X / 0.055 - 1, half = 0.0065 * Math.Sqrt(Math.Max(0, 1 - x * x));
                    _part.Core[_part.Index(i, j, k)] = Math.Clamp(0.5 + (half - Math.Abs(at.Z)) / 0.001, 0, 1);
                }

        _air = new(PoreGrid.Create(_part, 0.15));
    }

    [Benchmark(Description = "one attitude")]
    public double Attitude() => _air.Solve(new(0.2, 1, 0.1), [Ports[1]]).Volume;

    [Benchmark(Description = "attitude search")]
    public double Search() => AttitudeSearch.Search(_part, 0.15, Ports, new(0, 1, 0), Placement.Identity).Best.Air.Volume;

    [Benchmark(Description = "places for ports")]
    public int Places() => PortPlaces.Suggest(_part, 0.15, new(0.3, 1, 0.1), 0.004)!.Vents.Count;

    [Benchmark(Description = "whether a port opens both labyrinths")]
    public double Opening() => PortOpening.Chance(0.004, 0.003, 0.0074, 0.15, new(0, 0, 1)).Share;
}
