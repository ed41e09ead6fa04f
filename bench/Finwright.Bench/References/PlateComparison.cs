using System.Text.Json;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;

namespace Finwright.Bench.References;

/// <summary>A clamped trapezoid of even thickness under a pressure: our plate, against a solid of quadratic bricks.</summary>
internal static class PlateComparison
{
    private const double Span = 0.22, RootChord = 0.11, TipChord = 0.06, TipLeadingEdge = 0.09, Thickness = 0.008, Modulus = 2e9, Poisson = 0.38, Pressure = 2000;

    private const double Millimetres = 1000;

    // Bricks are too stiff and become softer with each finer mesh; what stays is the root, which the solid holds through its thickness and the plate cannot.
    private static readonly (int Chord, int Span, int Layers, double Limit)[] Bricks = [(8, 14, 2, 0.02), (16, 28, 2, 0.01), (24, 42, 3, 0.005)];

    // The finest bricks take seconds.
    private static readonly Sampling Few = Sampling.Usual with { LeastSamples = 3 };

    /// <summary>The trapezoid.</summary>
    public static PlateFin Blade { get; } =
        PlateFin.Trapezoid(Span, RootChord, TipChord, TipLeadingEdge, Thickness, Thickness, _ => 0.5, Elasticity.Isotropic(Modulus, Poisson, 1270));

    public static Comparison Run()
    {
        List<ComparisonRow> rows = [];
        string name = "";
        foreach ((int chord, int span, int layers, double limit) in Bricks)
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
            JsonElement answer = ReferenceProgram.Ask(ReferenceProgram.Python, "plate.py", "python3 calculix-ccx", new { plate, timing = Few.Told });
            name = ReferenceProgram.Name(answer) + ", C3D20R, the time it tells of itself";
            (Times times, PlateSolution solution) = Sampling.Usual.Measure(() => PlateModel.Create(Blade).Solve((_, _) => Pressure));
            if (solution.Status is not PlateStatus.Solved)
                throw new InvalidOperationException($"The plate ended with {solution.Status}.");
            Times theirTimes = ReferenceProgram.Times(answer);
            string size = $"our usual mesh; {chord} × {span} × {layers} bricks, {answer.GetProperty("unknowns").GetInt32()} unknowns";
            // The bricks are pressed on their upper face: their deflection is negative.
            rows.Add(ComparisonRow.Relative(
                "tip, leading edge", size, "mm", solution.Deflection(TipLeadingEdge, Span) * Millimetres, -answer.GetProperty("leading").GetDouble() * Millimetres, limit, times, theirTimes));
            rows.Add(ComparisonRow.Relative(
                "tip, trailing edge", size, "mm", solution.Deflection(TipLeadingEdge + TipChord, Span) * Millimetres, -answer.GetProperty("trailing").GetDouble() * Millimetres, limit, null, null));
        }

        return new("A clamped plate under pressure", name, rows);
    }
}
