using System.Text.Json;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;

namespace Finwright.Bench.References;

/// <summary>A clamped trapezoid of even thickness under a pressure: our plate, against a solid of quadratic bricks.</summary>
internal static class PlateComparison
{
    private const double Span = 0.22, RootChord = 0.11, TipChord = 0.06, TipLeadingEdge = 0.09, Thickness = 0.008, Modulus = 2e9, Poisson = 0.38, Pressure = 2000;

    // A plate of a twenty-seventh of its span: the solid's root is held through its thickness as no plate's is, and its corners are singular.
    private const double Limit = 0.02;

    private const double Millimetres = 1000;

    private static readonly (int Chord, int Span, int Layers)[] Meshes = [(8, 14, 1), (8, 14, 2), (16, 28, 2)];

    /// <summary>The trapezoid.</summary>
    public static PlateFin Blade { get; } =
        PlateFin.Trapezoid(Span, RootChord, TipChord, TipLeadingEdge, Thickness, Thickness, _ => 0.5, Elasticity.Isotropic(Modulus, Poisson, 1270));

    public static Comparison Run()
    {
        List<ComparisonRow> rows = [];
        string name = "";
        foreach ((int chord, int span, int layers) in Meshes)
        {
            object plate = new
            {
                span = Span,
                rootChord = RootChord,
                tipChord = TipChord,
                tipLeadingEdge = TipLeadingEdge,
                thickness = Thickness,
                modulus = Modulus,
                poisson = Poisson,
                pressure = Pressure,
                alongChord = chord,
                alongSpan = span,
                throughThickness = layers,
            };
            JsonElement answer = ReferenceProgram.Ask(ReferenceProgram.Python, "plate.py", "python3 calculix-ccx", new { plate, timing = Sampling.Usual.Told });
            name = ReferenceProgram.Name(answer) + ", C3D20R, the time it tells of itself";
            PlateOptions options = new() { ChordElements = chord, SpanElements = span };
            (Times times, PlateSolution solution) = Sampling.Usual.Measure(() => PlateModel.Create(Blade, options).Solve((_, _) => Pressure));
            if (solution.Status is not PlateStatus.Solved)
                throw new InvalidOperationException($"The plate ended with {solution.Status}.");
            Times theirTimes = ReferenceProgram.Times(answer);
            string size = $"{chord} × {span} elements, bricks in {layers} {(layers == 1 ? "layer" : "layers")} ({answer.GetProperty("unknowns").GetInt32()} unknowns)";
            // The bricks are pressed on their upper face: their deflection is negative.
            rows.Add(ComparisonRow.Relative(
                "tip, leading edge", size, "mm", solution.Deflection(TipLeadingEdge, Span) * Millimetres, -answer.GetProperty("leading").GetDouble() * Millimetres, Limit, times, theirTimes));
            rows.Add(ComparisonRow.Relative(
                "tip, trailing edge", size, "mm", solution.Deflection(TipLeadingEdge + TipChord, Span) * Millimetres, -answer.GetProperty("trailing").GetDouble() * Millimetres, Limit, times, theirTimes) with
            {
                OurTimes = null,
                TheirTimes = null,
            });
        }

        return new("A clamped plate under pressure", name, rows);
    }
}
