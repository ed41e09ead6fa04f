using Finwright.Strength.Materials;
using Finwright.Strength.Plates;

namespace Finwright.Strength.Tests.Plates;

/// <summary>The plates that the tests and the evidence share.</summary>
internal static class PlateCases
{
    public const double Millimetre = 1e-3, Density = 1200;

    private static readonly Elasticity Plastic = Elasticity.Isotropic(2900e6, 0.35, Density);

    /// <summary>Half thickness over thickness of the four-digit symmetric section.</summary>
    public static double FourDigit(double x) => 5 * (0.2969 * Math.Sqrt(x) - 0.1260 * x - 0.3516 * x * x + 0.2843 * x * x * x - 0.1015 * x * x * x * x);

    /// <summary>Tapered swept fin: chord 110 to 60, span 220, thickness 13.2 to 6 mm.</summary>
    public static PlateFin Tapered { get; } = PlateFin.Trapezoid(0.220, 0.110, 0.060, 0.092573, 0.0132, 0.006, FourDigit, Plastic);

    /// <summary>The same in two materials: walls of 1.2 mm.</summary>
    public static PlateFin Layered { get; } = Tapered with
    {
        Wall = Elasticity.Isotropic(2000e6, 0.35, Density),
        Core = Elasticity.Isotropic(2600e6, 0.35, Density),
        WallDepth = (_, _) => 1.2 * Millimetre,
    };

    /// <summary>Delta: chord 220 to 40, span 160, straight trailing edge, thickness 17.6 to 4 mm.</summary>
    public static PlateFin Delta { get; } = PlateFin.Trapezoid(0.160, 0.220, 0.040, 0.180, 0.0176, 0.004, FourDigit, Plastic);

    /// <summary>A fin with a round tip: elliptic chord, sweeping aft, 12 % thick.</summary>
    public static PlateFin RoundTip { get; } = Round();

    /// <summary>Even plate as a parallelogram, clamped along the chord; a is the length of its sides from the clamp, skew the sweep.</summary>
    public static PlateFin Even(double length, double chord, double skew, double thickness, double poisson) => PlateFin.Trapezoid(
        length * Math.Cos(skew), chord, chord, length * Math.Sin(skew), thickness, thickness, _ => 0.5, Elasticity.Isotropic(1e9, poisson, 1000));

    /// <summary>Without narrowing toward the nose: for even plates.</summary>
    public static PlateOptions Evenly(int chord, int span) => new() { ChordElements = chord, SpanElements = span, NoseGrading = 0 };

    /// <summary>A strip 30 × 10 × 200 mm without contraction across: a beam.</summary>
    public static PlateFin Strip { get; } = PlateFin.Trapezoid(0.2, 0.03, 0.03, 0, 0.01, 0.01, _ => 0.5, Uncontracting(2900e6, 2900e6 / 2.7));

    public static Elasticity Uncontracting(double modulus, double shear) => new(modulus, modulus, 0, shear, shear, shear, Density);

    /// <summary>A force spread evenly along the chord at a depth.</summary>
    public static IReadOnlyList<PlateLoad> Line(PlateFin fin, double y, double force)
    {
        const int Parts = 60;
        double from = fin.LeadingEdge(y), chord = fin.TrailingEdge(y) - from;
        return [.. Enumerable.Range(0, Parts).Select(i => new PlateLoad(from + (i + 0.5) / Parts * chord, y, force / Parts))];
    }

    /// <summary>Point at a share of the chord.</summary>
    public static (double X, double Y) At(PlateFin fin, double share, double y) => (fin.LeadingEdge(y) + share * (fin.TrailingEdge(y) - fin.LeadingEdge(y)), y);

    /// <summary>196.2 N in the middle of the chord at 180 mm.</summary>
    public static IReadOnlyList<PlateLoad> Point(PlateFin fin)
    {
        (double x, double y) = At(fin, 0.5, 0.180);
        return [new(x, y, 196.2)];
    }

    public static double Pressure(double x, double y) => 10e3;

    /// <summary>Deflection of the tip at a share of its chord, mm.</summary>
    public static double Tip(this PlateSolution solution, PlateFin fin, double share)
    {
        (double x, double y) = At(fin, share, fin.Span);
        return solution.Deflection(x, y) / Millimetre;
    }

    /// <summary>Twist of the tip between 10 and 90 % of its chord, degrees.</summary>
    public static double Twist(this PlateSolution solution, PlateFin fin) =>
        (solution.Tip(fin, 0.9) - solution.Tip(fin, 0.1)) * Millimetre / (0.8 * (fin.TrailingEdge(fin.Span) - fin.LeadingEdge(fin.Span))) * 180 / Math.PI;

    /// <summary>Stress along the span at the starboard surface in the middle of the chord, MPa.</summary>
    public static double Stress(this PlateSolution solution, PlateFin fin, double depth)
    {
        (double x, double y) = At(fin, 0.5, depth);
        return solution.StressAt(x, y).Upper.SigmaY / 1e6;
    }

    /// <summary>ω a² √(ρ h/D) of an even plate of side a = 1 m.</summary>
    public static IReadOnlyList<double> Frequencies(double aspect, double skew, int count, PlateOptions? options = null)
    {
        const double Thickness = 1e-3, Poisson = 0.3;
        double rigidity = 1e9 * Thickness * Thickness * Thickness / (12 * (1 - Poisson * Poisson));
        return [.. PlateModel.Create(Even(1, 1 / aspect, skew, Thickness, Poisson), options ?? Evenly(8, 14)).Modes(count).AngularFrequencies.Select(w => w * Math.Sqrt(1000 * Thickness / rigidity))];
    }

    private static PlateFin Round()
    {
        const double Span = 0.2, Root = 0.1;
        double Chord(double y) => Root * Math.Sqrt(Math.Max(0, 1 - y * y / (Span * Span)));
        double Leading(double y) => 0.3 * y - 0.4 * Chord(y);
        return new()
        {
            Span = Span,
            LeadingEdge = Leading,
            TrailingEdge = y => Leading(y) + Chord(y),
            HalfThickness = (x, y) => Chord(y) > 0 ? 0.12 * Chord(y) * FourDigit((x - Leading(y)) / Chord(y)) : 0,
            Wall = Plastic,
            Core = Plastic,
            WallDepth = (_, _) => double.MaxValue,
        };
    }
}
