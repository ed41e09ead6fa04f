using BenchmarkDotNet.Attributes;
using Finwright.Geometry.Blades;
using Finwright.Water.Lifting;
using Finwright.Water.Polars;

namespace Finwright.Bench;

/// <summary>The lifting surface of a demo blade under a hull, with a section in closed form, so that only the surface itself is measured.</summary>
[MemoryDiagnoser]
public class LiftingBench
{
    private static readonly (double Speed, double Force)[] Cases = [(4, 150), (6, 300), (8, 350), (10, 400), (15, 500)];

    private LiftingFin _fin = null!;
    private LiftingSurface _surface = null!;

    [ParamsSource(nameof(Demos))]
    public string Demo { get; set; } = "";

    public static IEnumerable<string> Demos => Examples.All;

    [GlobalSetup]
    public void Prepare()
    {
        (_, Blade blade) = Examples.Blade(Demo);
        ISectionPolar section = new CubicSection();
        _fin = blade.ToLiftingFin(_ => section);
        _surface = Create();
    }

    [Benchmark(Description = "new fin: lattice, hull and factors")]
    public LiftingSurface Create() => LiftingSurface.Create(_fin, RootCondition.Hull(0.25, 0.8, 0.1));

    [Benchmark(Description = "five load cases, leeway given")]
    public double Forces()
    {
        double sum = 0;
        foreach ((double speed, double _) in Cases)
            sum += _surface.Solve(Flow(speed) with { Leeway = 0.08 }).SideForce;
        return sum;
    }

    [Benchmark(Description = "five load cases, side force given, with stall and reserve")]
    public double Leeways()
    {
        double sum = 0;
        foreach ((double speed, double force) in Cases)
            sum += _surface.LeewayFor(Flow(speed), force).Result.Flow.Leeway;
        return sum;
    }

    private static FlowState Flow(double speed) => new(speed, 1026, 1.19e-6, 0);

    /// <summary>Lift 6 s (1 - s²/3s₀²) up to its peak at s₀ = 0.24, then falling to a stalled plate.</summary>
    private sealed class CubicSection : ISectionPolar
    {
        private const double Stall = 0.24, Peak = 4 * Stall;

        public SectionForces At(double angleOfAttack, double reynoldsNumber)
        {
            double size = Math.Abs(angleOfAttack);
            if (size <= Stall)
                return new(6 * angleOfAttack * (1 - size * size / (3 * Stall * Stall)), 0.007 + 0.1 * size * size, 0, -1, 1, PolarOrigin.Solved);
            double rest = 1 / (1 + 100 * (size - Stall) * (size - Stall));
            return new(Math.CopySign(0.7 + (Peak - 0.7) * rest, angleOfAttack), 0.013 + (1 - rest) * size, -0.05, -1, 0.2, PolarOrigin.Stalled);
        }

        public SectionStall StallAt(double reynoldsNumber, bool positive) => positive ? new(Stall, Peak, true) : new(-Stall, -Peak, true);
    }
}
