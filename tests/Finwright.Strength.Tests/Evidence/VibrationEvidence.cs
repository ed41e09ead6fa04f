using Finwright.Strength.Plates;
using Finwright.Strength.Tests.Plates;
using Finwright.Strength.Tests.Vibrations;
using Finwright.Strength.Vibrations;

namespace Finwright.Strength.Tests.Evidence;

/// <summary>Added mass and wet frequencies beside closed forms and independent boundary elements.</summary>
internal static class VibrationEvidence
{
    private const string Elements = "Numerical reference: vortex-ring boundary elements, converged";

    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Heave(), .. Cantilevers(), .. Fin()];

    private static IEnumerable<EvidenceRow> Heave()
    {
        const string Topic = "Added mass of a flat rectangle moving square to itself, over ρ π c² L/4";
        AddedMass disc = AddedMass.Create(1, y => -Math.Sqrt(Math.Max(1 - y * y, 0)), y => Math.Sqrt(Math.Max(1 - y * y, 0)), VibrationRoot.Wall);
        yield return new(Topic, "Disc of radius a instead, over 8/3 ρ a³", "Lamb, Hydrodynamics, 1932, closed form, from memory", 1, disc.Matrix([(_, _) => 1], 1)![0] * 3 / 4, 0.005, "0.5 %: round edge in straight pieces");
        foreach ((int length, double expected, double rule) in new[] { (1, 0.5790, 0.579), (2, 0.7569, 0.757), (5, 0.8967, 0.897), (10, 0.9476, 0.947) })
        {
            double computed = VibrationCases.Heave(length, 16);
            yield return new(Topic, $"L/c = {length}", Elements, expected, computed, 3e-4, "panels used here");
            yield return new(Topic, $"L/c = {length}, as practised", "DNV-RP-C205, table of added mass coefficients, from memory", rule, computed, 1e-3, "last printed digit");
        }
    }

    private static IEnumerable<EvidenceRow> Cantilevers()
    {
        const string Topic = "Wet over dry frequency of even plates clamped to a wall; μ = ρ_water b/(ρ_plate h), b the chord";
        foreach ((double aspect, double mu, double[] expected) in new (double, double, double[])[] { (1, 10, [0.4588, 0.5553, 0.5058]), (2, 10, [0.4068, 0.5256, 0.4302]), (2, 20, [0.3003, 0.4003, 0.3203]) })
        {
            const double Chord = 0.1, Thickness = 0.001;
            PlateFin fin = PlateCases.Even(aspect * Chord, Chord, 0, Thickness, 0.3);
            PlateModes dry = PlateModel.Create(fin).Modes(8);
            WetModes wet = VibrationCases.Wet(fin, dry, mu * fin.Wall.Density * Thickness / Chord);
            for (int i = 0; i < expected.Length; i++)
                yield return new(Topic, $"a/b = {aspect}, μ = {mu}, mode {i + 1}", Elements + ", Ritz modes", expected[i], wet.AngularFrequencies[i] / dry.AngularFrequencies[i], 0.007 * expected[i], "0.7 %: eight modes and the panels used here");
        }
    }

    private static IEnumerable<EvidenceRow> Fin()
    {
        const string Topic = "Tapered swept fin in fresh water, wall at the root, Hz";
        PlateFin fin = PlateCases.Tapered;
        WetModes wet = VibrationCases.Wet(fin, PlateModel.Create(fin).Modes(6), 1000);
        double[] expected = [23.75, 103.4, 168.2];
        for (int i = 0; i < expected.Length; i++)
            yield return new(Topic, $"Chord 110 to 60, span 220, thickness 13.2 to 6 mm, 2.9 GPa: mode {i + 1}", "Numerical reference: CalculiX 2.20, C3D20R, with vortex-ring boundary elements", expected[i], wet.AngularFrequencies[i] / (2 * Math.PI), 0.01 * expected[i], "1 %: plate and panels used here");
    }
}
