using Finwright.Water.Lifting;
using Finwright.Water.Tests.Lifting;

namespace Finwright.Water.Tests.Evidence;

/// <summary>The lifting surface beside closed forms, measured wings and independent lattices.</summary>
internal static class LiftingEvidence
{
    private const string Lattice = "Numerical reference: vortex lattice, converged";
    private static readonly RootCondition Mirror = RootCondition.FullMirror;

    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Unswept(), .. Swept(), .. ControlSurfaces(), .. Deltas(), .. Hulls()];

    private static IEnumerable<EvidenceRow> Unswept()
    {
        const string Topic = "Lifting surface at small leeway, flat, full mirror: slopes per radian on the fin's area";
        foreach (double aspect in new[] { 6.0, 20 })
        {
            // 8/(π A): root chord of an elliptic half wing of span 1.
            double induced = new LatticeCase(LatticeCase.Elliptic(1, 8 / (Math.PI * aspect)), Mirror, 20, 6).InducedOverElliptic;
            yield return new(Topic, $"Elliptic wing, aspect ratio {aspect}, induced drag over CL²/(π A)", "Prandtl, 1918, closed form", 1, induced, 0.001, "the planform's loading is not quite elliptic when its chord counts");
        }

        yield return new(Topic, "Circular wing, slope", "Jordan, 1973, from memory", 1.7900, new LatticeCase(LatticeCase.Elliptic(1, 2), Mirror, 24, 8).Slope, 0.0018, "curved edge followed by straight pieces");
        foreach ((double aspect, double slope) in new[] { (1, 1.460), (3, 3.145), (8, 4.586) })
            yield return new(Topic, $"Rectangle, aspect ratio {aspect}, slope", Lattice, slope, new LatticeCase(LiftingFin.Trapezoid(aspect / 2, 1, 1, 0), Mirror, 14, 9).Slope, 0.0015, "last printed digit and the grid used here");
    }

    private static IEnumerable<EvidenceRow> Swept()
    {
        const string Topic = "Swept wings, full mirror: slopes per radian on the fin's area";
        const string Kink = "0.4 %: the kink at the mirror converges with the strip width";
        foreach ((double aspect, double sweep, double slope) in new[] { (4, 0, 3.711), (4, 30, 3.562), (8, 0, 4.744), (8, 30, 4.362) })
        {
            double root = 1 / (aspect * 0.7);
            LatticeCase trapezoid = new(LiftingFin.Trapezoid(0.5, root, 0.4 * root, sweep * Math.PI / 180), Mirror, 20, 6);
            yield return new(Topic, $"Trapezoid, taper 0.4, aspect ratio {aspect}, quarter chord swept {sweep}°, slope", Lattice, slope, trapezoid.Slope, 0.004 * slope, Kink);
        }

        double span = Math.Sqrt(2), run = Math.Tan(Lifting.Water.Radians(53.54));
        LatticeCase warren = new(new() { Span = span, LeadingEdge = y => y * run, TrailingEdge = y => 1.5 + y * (run - 1 / span) }, Mirror, 24, 8);
        const string Notes = "Warren's wing 12 as given in lecture notes on vortex lattices";
        yield return new(Topic, "Warren 12, slope", Notes, 2.743, warren.Slope, 0.0055, "0.2 %; a converged lattice elsewhere gave 2.748");
        yield return new(Topic, "Warren 12, moment about the apex per radian", Notes, -3.10, -warren.Slope * warren.CentreX, 0.01, "last printed digit");

        LiftingFin fin = LiftingFin.Trapezoid(2.5, 1, 1, Math.PI / 4);
        double slopeOfFine = new LatticeCase(fin, Mirror, 24, 8).Slope;
        const string Wing = "Aspect ratio 5, untapered, swept 45°";
        const string Tunnel = "Weber and Brebner, 1958, ARC R&M 2882, 12 % section, curve read off";
        yield return new(Topic, Wing + ", slope with 4 × 1 even panels", "Bertin and Smith, Aerodynamics for Engineers, from memory", 3.443, new LatticeCase(fin, Mirror, 4, 1, even: true).Slope, 0.002, "same panels, last digits");
        yield return new(Topic, Wing + ", slope", Lattice, 3.1855, slopeOfFine, 0.004 * 3.1855, Kink);
        yield return new(Topic, Wing + ", slope", Tunnel, 3.17, slopeOfFine, 0.02 * 3.17, "2 %");
        LiftingSurface wing = LiftingSurface.Create(fin, Mirror, new() { Tip = TipForm.None });
        foreach ((double leeway, double lift) in new[] { (2.05, 0.124), (4.18, 0.240), (6.31, 0.352), (8.44, 0.458), (10.50, 0.560) })
            yield return new(Topic, $"{Wing}, lift at {leeway:0.0}°", Tunnel, lift, wing.Solve(Lifting.Water.At(5, leeway)).CL, 0.02, "the readings lie above any straight line through nothing by 0.01");
    }

    private static IEnumerable<EvidenceRow> ControlSurfaces()
    {
        const string Topic = "Short control surfaces on a ground board, taper 0.45, unswept, square tips";
        const string Source = "Whicker and Fehlner, 1958, DTMB 933, equation 1";
        foreach ((double aspect, double slope, double[] lifts) in new (double, double, double[])[] { (1, 1.401, [0.128, 0.269, 0.422, 0.587]), (2, 2.444, []), (3, 3.138, [0.276, 0.556, 0.840, 1.128]) })
        {
            LiftingSurface fin = LowAspectTests.Surface(aspect, 0, TipForm.Square);
            yield return new(Topic, $"Aspect ratio {aspect}, slope per radian", Source, slope, fin.Solve(Lifting.Water.At(8, 0.1)).CL / Lifting.Water.Radians(0.1), 0.05 * slope, "5 %");
            for (int i = 0; i < lifts.Length; i++)
                yield return new(Topic, $"Aspect ratio {aspect}, lift at {5 * (i + 1)}°, with cross-flow", Source, lifts[i], fin.Solve(Lifting.Water.At(8, 5 * (i + 1))).CL, 0.12 * lifts[i], "12 %");
        }
    }

    private static IEnumerable<EvidenceRow> Deltas()
    {
        const string Topic = "Sharp delta wings, vortex lift from the suction of the leading edge";
        const string Source = "Polhamus, 1966, NASA TN D-3767; its two factors from a converged lattice (numerical reference)";
        foreach ((double aspect, double potential, double vortex) in new[] { (1.5, 1.783, 3.14), (2, 2.199, 3.18) })
        {
            LiftingSurface delta = LowAspectTests.SharpDelta(aspect);
            foreach (double leeway in new[] { 10.0, 20 })
            {
                double lift = LowAspectTests.SuctionAnalogy(potential, vortex, Lifting.Water.Radians(leeway));
                yield return new(Topic, $"Aspect ratio {aspect}, lift at {leeway}°", Source, lift, delta.Solve(Lifting.Water.At(8, leeway)).CL, 0.05 * lift, "5 %");
            }
        }
    }

    private static IEnumerable<EvidenceRow> Hulls()
    {
        const string Topic = "Fin under a flat hull: share of the way from bare surface to full mirror";
        // The reference was refined at half-width 0.5 only; its fin was not described, 0.4 m by 0.1 m is taken.
        foreach ((double width, double share) in new[] { (0.17, 0.31), (0.25, 0.46), (0.33, 0.52), (0.5, 0.68), (0.75, 0.74), (1.0, 0.78), (1.33, 0.81) })
        {
            string source = width is 0.5 ? "Numerical reference: panels, fine mesh" : "Numerical reference: panels, coarse mesh";
            yield return new(Topic, $"Half-width over fin height {width}, hull 0.4 m ahead and 0.05 m behind", source, share, RootConditionTests.Fraction(width, 0.05), 0.05, "5 % of the gap");
        }
    }
}
