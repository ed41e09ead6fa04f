using BenchmarkDotNet.Attributes;
using Finwright.Geometry.Sections;
using Finwright.Water.Sections;

namespace Finwright.Bench;

/// <summary>The flow past one section with its boundary layers.</summary>
[MemoryDiagnoser]
public class SectionBench
{
    private const double Degree = Math.PI / 180;

    private Section _section = null!;
    private SectionFlow _flow = null!;
    private SectionConditions _conditions = null!;

    [GlobalSetup]
    public void Prepare()
    {
        if (!SectionCatalogue.TryFind("naca-0010", null, out Section? section, out string problem))
            throw new InvalidOperationException(problem);
        _section = section;
        _flow = new SectionFlow(section);
        _conditions = new() { ReynoldsNumber = 1e6, CriticalAmplification = 5 };
    }

    [Benchmark(Description = "new section: panels and factors")]
    public SectionFlow Create() => new(_section);

    [Benchmark(Description = "one angle, from nothing")]
    public double Point() => _flow.Solve(4 * Degree, _conditions).Cd;
}
