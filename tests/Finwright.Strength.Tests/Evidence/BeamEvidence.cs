using Finwright.Strength.Beams;
using Finwright.Strength.Plates;
using Finwright.Strength.Tests.Plates;

namespace Finwright.Strength.Tests.Evidence;

/// <summary>The beam beside closed forms.</summary>
internal static class BeamEvidence
{
    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Timoshenko(), .. SecondOpinion()];

    private static IEnumerable<EvidenceRow> Timoshenko()
    {
        const string Topic = "Cantilever 30 × 10 × 200 mm, 20 N at its tip, 2.9 GPa, ν = 0.35";
        const string Source = "Timoshenko's beam, closed form";
        double bending = 2.9e9 * 0.030 * Math.Pow(0.010, 3) / 12, shear = 5.0 / 6 * 2.9e9 / 2.7 * 0.030 * 0.010;
        double Tip(double stiffness) => BeamModel.Create([new(0, bending, 1, 0, stiffness), new(0.2, bending, 1, 0, stiffness)]).Solve([new(0, 0.2, 20)]).DeflectionAt(0, 0.2) * 1e3;
        double bent = Tip(1e15);
        yield return new(Topic, "Bending, mm", Source, 7.35632, bent, 1e-5, "last printed digit");
        yield return new(Topic, "Shear, factor 5/6, mm", Source, 0.01490, Tip(shear) - bent, 1e-5, "last printed digit");
    }

    private static IEnumerable<EvidenceRow> SecondOpinion()
    {
        const string Topic = "The blade as a beam, beside the solid: a second opinion, softer by what the clamped root holds";
        const string Solid = "Numerical reference: CalculiX 2.20, C3D20R";
        const string Tapered = "Tapered swept fin, chord 110 to 60, span 220 mm", Delta = "Delta, chord 220 to 40, span 160 mm, 10 kPa";
        const string Holds = "10 %: the root holds the chord straight, a beam's does not";
        const string Miss = "a root chord longer than the span is no beam; its clamp stiffens all of it";
        PlateFin fin = PlateCases.Tapered, delta = PlateCases.Delta;
        BeamModel beam = BladeBeam.Sideways(BladeBeam.Sections(fin));
        (double x, double y) = PlateCases.At(fin, 0.5, 0.180);
        (double point, double pointTwist) = Tip(fin, beam.Solve([new(x, y, 196.2)]));
        (double pressed, double pressedTwist) = Tip(fin, beam.Solve(Pressure(fin)));
        yield return new(Topic, Tapered + ", 196.2 N at 180 mm, tip, mm", Solid, 41.066, point, 4.1, Holds);
        yield return new(Topic, Tapered + ", 196.2 N at 180 mm, twist, degrees", Solid, 6.380, pointTwist, 0.64, Holds);
        yield return new(Topic, Tapered + ", 10 kPa, tip, mm", Solid, 15.941, pressed, 1.6, Holds);
        yield return new(Topic, Tapered + ", 10 kPa, twist, degrees", Solid, 2.594, pressedTwist, 0.26, Holds);
        (double deflection, double twist) = Tip(delta, BladeBeam.Sideways(BladeBeam.Sections(delta)).Solve(Pressure(delta)));
        yield return new(Topic, Delta + ", tip, mm", Solid, 2.8211, deflection, 0.28, Holds, Miss, 1.1);
        yield return new(Topic, Delta + ", twist, degrees", Solid, 1.1775, twist, 0.12, Holds, Miss, 0.31);
    }

    private static (double Millimetres, double TwistDegrees) Tip(PlateFin fin, BeamShape shape)
    {
        (double x, double y) = PlateCases.At(fin, 0.5, fin.Span);
        // The reference counts twist positive for the nose to port.
        return (shape.DeflectionAt(x, y) * 1e3, -shape.TwistAt(y) * 180 / Math.PI);
    }

    /// <summary>10 kPa on the planform, in 40 strips.</summary>
    private static IReadOnlyList<BeamLoad> Pressure(PlateFin fin)
    {
        const int Strips = 40;
        return
        [
            .. Enumerable.Range(0, Strips).Select(i =>
            {
                double y = fin.Span * (i + 0.5) / Strips;
                return new BeamLoad(PlateCases.At(fin, 0.5, y).X, y, 10e3 * (fin.TrailingEdge(y) - fin.LeadingEdge(y)) * fin.Span / Strips);
            }),
        ];
    }
}
