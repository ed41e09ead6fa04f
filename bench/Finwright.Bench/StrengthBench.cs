using BenchmarkDotNet.Attributes;
using Finwright.Assessment;
using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Strength.Bench;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Plates;
using Finwright.Strength.Vibrations;

namespace Finwright.Bench;

/// <summary>A demo fin as a structure: from its design, under load, in the water, on the bench.</summary>
public class StrengthBench
{
    private const double SeaWater = 1026;

    private readonly Assessor _warm = new();
    private FinDesign _design = null!;
    private Blade _blade = null!;
    private FinStructure _structure = null!;
    private PlateLoad[] _load = null!;
    private double _factor = 1;

    [ParamsSource(nameof(Demos))]
    public string Demo { get; set; } = "";

    public static IEnumerable<string> Demos => Examples.All;

    [GlobalSetup]
    public void Prepare()
    {
        (_design, _blade) = Examples.Blade(Demo);
        _structure = Build();
        _load = [new(0.05, 0.4 * _blade.Span, 150)];
    }

    [GlobalSetup(Target = nameof(Loaded))]
    public void Warm()
    {
        Prepare();
        _warm.Assess(_design, AssessmentDepth.Strength);
    }

    [GlobalCleanup]
    public void Close() => _warm.Dispose();

    [Benchmark(Description = "new fin: materials, joint, plate, sections and beam")]
    public FinStructure Build() => FinStructure.Of(_design, _blade, [])!;

    [Benchmark(Description = "plate of a design: mesh, matrices and factor, one load")]
    public double FactorAndSolve() => PlateModel.Create(_structure.Plate.Fin).Solve(_load).MaximumDeflection;

    [Benchmark(Description = "known blade and water, other stiffness: structure, load cases with stress and joint, divergence, grounding, frequencies, bench")]
    public int Loaded()
    {
        // A factor that was not asked for before, so that nothing of the structure is taken from the cache.
        _factor += 1e-6;
        return _warm.Assess(_design with { Materials = _design.Materials with { WallFactor = _factor } }, AssessmentDepth.Strength).StrengthVerdicts.Count;
    }

    [Benchmark(Description = "first eight modes in air and their frequencies in water")]
    public double Frequencies()
    {
        PlateModel plate = _structure.Plate;
        PlateModes modes = plate.Modes(8);
        AddedMass water = AddedMass.Create(plate.MeshEnd, plate.Fin.LeadingEdge, plate.Fin.TrailingEdge, VibrationRoot.Wall);
        return WetModes.Of(modes.AngularFrequencies, modes.Shapes, water, SeaWater)!.AngularFrequencies[0];
    }

    [Benchmark(Description = "what the bench should show, with ranges")]
    public double OnBench() => BenchTest.Predict(_structure, new(15, 0.4 * _blade.Span, 0.5)).AtTip.MidChord.Value;
}
