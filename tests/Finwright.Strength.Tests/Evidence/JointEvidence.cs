using Finwright.Geometry.Features;
using Finwright.Strength.Grounding;
using Finwright.Strength.Joints;

namespace Finwright.Strength.Tests.Evidence;

/// <summary>Joints, bolts and wedges beside closed forms, tables and pulled specimens.</summary>
internal static class JointEvidence
{
    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Sections(), .. Bolts(), .. Wedges(), .. Strikes()];

    private static IEnumerable<EvidenceRow> Sections()
    {
        const string Topic = "Joint that opens: 110 by 13 mm, two M6 of steel in the middle, plastic of 1.8 GPa";
        const double Length = 0.110, Width = 0.013, Modulus = 1.8e9, Area = 20.1e-6;
        Footprint face = Footprint.Rectangle(Length, Width);
        Reinforcement rod = new() { X = -0.03, Z = 0, Area = Area, Modulus = 193e9, FreeLength = Width };
        const string Concrete = "Cracked reinforced section, elastic, worked by hand: b x²/2 = n A (d - x)";
        double na = 193e9 / Modulus * 2 * Area, x = na / Length * (Math.Sqrt(1 + Length * Width / na) - 1);
        double inertia = Length * x * x * x / 3 + na * (Width / 2 - x) * (Width / 2 - x);
        JointState open = new CrackedSection(face, Modulus, Width, [rod, rod with { X = 0.03 }]).Solve(new(8, 0, 0));
        yield return new(Topic, "8 N·m, no preload, depth in contact, mm", Concrete, 1e3 * x, 1e3 * open.ContactDepth, 1e-5, "same equations");
        yield return new(Topic, "8 N·m, no preload, greatest pressure, MPa", Concrete, 8e-6 * x / inertia, 1e-6 * open.GreatestPressure, 1e-5, "same equations");
        yield return new(Topic, "8 N·m, no preload, pull of each rod, N", Concrete, 8 * na / 2 * (Width / 2 - x) / inertia, open.Tensions[0], 1e-5, "same equations");

        Reinforcement bolt = rod with { Preload = 2000, FreeLength = 0.05 };
        CrackedSection tightened = new(face, Modulus, Width, [bolt, bolt with { X = 0.03 }]);
        yield return new(Topic, "2000 N in each bolt, opening moment, N·m", "Kern of a rectangle: P h/6", 4000 * Width / 6, tightened.OpeningFactor(new(1, 0, 0)), 1e-5, "closed form");

        const double Eccentric = 0.3;
        JointState pressed = new CrackedSection(face, Modulus, Width, []).Solve(new(1000 * Eccentric * Width, 0, -1000));
        yield return new(Topic, "No bolts, pressed by 1 kN at 0.3 of the width off centre, greatest pressure, MPa", "Footing without tension: 2 N/(3 b (h/2 - e))", 2e-3 / (3 * Length * Width * (0.5 - Eccentric)), 1e-6 * pressed.GreatestPressure, 1e-5, "closed form");
    }

    private static IEnumerable<EvidenceRow> Bolts()
    {
        const string Topic = "Bolts and nuts";
        foreach ((MetricThread thread, double area, double digit) in new[] { (MetricThread.M4, 8.78, 0.005), (MetricThread.M5, 14.2, 0.05), (MetricThread.M6, 20.1, 0.05), (MetricThread.M8, 36.6, 0.05) })
            yield return new(Topic, $"{thread}, stress area, mm²", "ISO 898-1, from memory", area, 1e6 * ThreadStrength.StressArea(thread), digit, "last digit");

        // The engaged length is not stated in the abstract; 1.25 diameters and 48 MPa are assumed here.
        double pull = NutSeat.ShearCylinder(8e-3, 10e-3, new(48e6, 45e6, 50e6)).Value;
        const string Sliwka = "Sliwka and Wojcik, 2025, Polymers 18(1):112, abstract";
        foreach ((string kind, double kilonewtons) in new[] { ("printed thread", 3.41), ("heat-set insert", 3.83), ("wire-coil insert", 4.78) })
            yield return new(Topic, $"Plausibility only: M8 in printed polyamide, {kind}, pull-out, kN, 10 mm engaged assumed", Sliwka, kilonewtons, 1e-3 * pull, 0.35 * kilonewtons, "35 %: length and strength are assumed");
    }

    private static IEnumerable<EvidenceRow> Wedges()
    {
        const string Topic = "Base with ends tapered by 10°, no friction";
        TaperedEnds ends = new(10 * Math.PI / 180, 0);
        yield return new(Topic, "Force on each end face over pull of the bolts", "Closed form: 1/(2 sin a)", 2.8794, ends.FaceForce(1), 5e-5, "last digit");
        yield return new(Topic, "Height over error in length", "Closed form: 1/(2 tan a)", 2.8356, ends.HeightPerLength, 5e-5, "last digit");
    }

    private static IEnumerable<EvidenceRow> Strikes()
    {
        Strike strike = new() { Mass = 18, Compliances = [1 / 400e3, 1 / 400e3] };
        yield return new("Grounding", "18 kg at 5 m/s on two springs of 400 kN/m in a row, force, kN", "Closed form: V √(k m)", 5e-3 * Math.Sqrt(200e3 * 18), 1e-3 * strike.At(5).AftForce, 1e-5, "rounding");
    }
}
