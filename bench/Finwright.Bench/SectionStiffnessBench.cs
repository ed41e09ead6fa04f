using BenchmarkDotNet.Attributes;
using Finwright.Strength.Materials;
using Finwright.Strength.Sections;
using Finwright.Strength.Vibrations;

namespace Finwright.Bench;

/// <summary>One composite section, and the added mass of a normal fin.</summary>
[MemoryDiagnoser]
public class SectionStiffnessBench
{
    private const double Chord = 0.1, Ratio = 0.1;

    private static readonly CompositeSection Section = new()
    {
        LeadingX = 0,
        TrailingX = Chord,
        Surface = x => (-Half(x), Half(x)),
        WallDepth = _ => 0.0012,
        Wall = Elasticity.Isotropic(2.0e9, 0.38, 1270),
        Core = Elasticity.Isotropic(2.6e9, 0.39, 1170),
        Rods = [new(0.030, 0, 0.004, 125e9, 4.2e9, 1500), new(0.050, 0, 0.004, 125e9, 4.2e9, 1500)],
    };

    private static readonly Func<double, double, double>[] Shapes = [.. Enumerable.Range(1, 6).Select(n => (Func<double, double, double>)((x, y) => Math.Pow(y, n) * (1 + n * x)))];

    [Benchmark(Description = "a section with two rods")]
    public double One() => SectionSolver.Of(Section).TorsionRigidity;

    [Benchmark(Description = "added mass of six shapes")]
    public double Water() => AddedMass.Create(0.22, y => 0.42 * y, y => 0.11 + 0.19 * y, VibrationRoot.Wall).Matrix(Shapes, 1000)![0];

    private static double Half(double x)
    {
        double s = x / Chord;
        return 5 * Ratio * Chord * (0.2969 * Math.Sqrt(s) + s * (-0.1260 + s * (-0.3516 + s * (0.2843 - 0.1015 * s))));
    }
}
