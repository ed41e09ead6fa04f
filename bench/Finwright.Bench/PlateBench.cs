using BenchmarkDotNet.Attributes;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;

namespace Finwright.Bench;

/// <summary>A swept fin of printed walls on a filled core, with two rods, a hole and a sheet, as a plate of the usual mesh.</summary>
[MemoryDiagnoser]
public class PlateBench
{
    private static readonly PlateFin Fin = Build();
    private static readonly PlateLoad[] Load = [new(0.1, 0.18, 196.2)];
    private static readonly StiffnessFactors Factors = new(Wall: 1.1, Core: 0.9);

    private PlateModel _model = null!;

    [GlobalSetup]
    public void Prepare() => _model = Create();

    [Benchmark(Description = "new fin: mesh, matrices and factor")]
    public PlateModel Create() => PlateModel.Create(Fin);

    [Benchmark(Description = "new fin under one load, with a stress")]
    public double CreateAndSolve() => PlateModel.Create(Fin).Solve(Load).StressAt(0.08, 0.06).Upper.SigmaY;

    [Benchmark(Description = "other factors under one load")]
    public double WithFactors() => _model.With(Factors).Solve(Load).MaximumDeflection;

    [Benchmark(Description = "another load")]
    public double Solve() => _model.Solve(Load).MaximumDeflection;

    [Benchmark(Description = "first six modes in air")]
    public PlateModes Modes() => _model.Modes(6);

    private static PlateFin Build()
    {
        static double Section(double x) => 5 * (0.2969 * Math.Sqrt(x) - 0.1260 * x - 0.3516 * x * x + 0.2843 * x * x * x - 0.1015 * x * x * x * x);
        PlateFin fin = PlateFin.Trapezoid(0.220, 0.110, 0.060, 0.092573, 0.0132, 0.006, Section, Elasticity.Isotropic(2000e6, 0.38, 1270));
        return fin with
        {
            Core = Elasticity.Isotropic(2600e6, 0.4, 1180),
            WallDepth = (_, _) => 0.0012,
            Rods = [new(0.03, 0, 0.08, 0.15, 0, 0.004, 125e9, 4.2e9, 1500), new(0.05, 0, 0.09, 0.12, 0, 0.004, 125e9, 4.2e9, 1500)],
            Voids = [PlateVoid.Circle(0.05, 0.02, 0.003, -0.01, 0.01)],
            Sheet = PlateSheet.AlongTrailingEdge(0.0006, Elasticity.Isotropic(20e9, 0.3, 1900), fin.TrailingEdge, 0.008, 0.05, 0.2),
        };
    }
}
