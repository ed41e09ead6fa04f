using BenchmarkDotNet.Attributes;
using Finwright.Assessment;
using Finwright.Design;

namespace Finwright.Bench;

/// <summary>Sailing a demo fin: with its sections solved anew, and with the sections kept.</summary>
public class WaterBench
{
    private readonly Assessor _warm = new();
    private FinDesign _design = null!;
    private double _mass;

    [GlobalSetup(Target = nameof(NewFin))]
    public void Read() => _design = Examples.Read(Examples.All.First()).Design!;

    [GlobalSetup(Target = nameof(AnotherRider))]
    public void Warm()
    {
        Read();
        _mass = _design.Brief.RiderMassKg;
        _warm.Assess(_design, AssessmentDepth.Water);
    }

    [GlobalCleanup]
    public void Close() => _warm.Dispose();

    [Benchmark(Description = "a new fin: polars of its sections on all cores, then the load cases")]
    public int NewFin()
    {
        using Assessor assessor = new();
        return assessor.Assess(_design, AssessmentDepth.Water).Verdicts.Count;
    }

    [Benchmark(Description = "another rider on a known fin: load cases, bounds and sweeps, polars kept")]
    public int AnotherRider()
    {
        // A mass that was not asked for before, so that no stage but the polars is taken from the cache.
        _mass += 1e-3;
        return _warm.Assess(_design with { Brief = _design.Brief with { RiderMassKg = _mass } }, AssessmentDepth.Water).Verdicts.Count;
    }
}
