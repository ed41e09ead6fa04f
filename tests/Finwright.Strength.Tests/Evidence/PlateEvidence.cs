using Finwright.Strength.Plates;
using Finwright.Strength.Tests.Plates;
using static Finwright.Strength.Tests.Plates.PlateCases;

namespace Finwright.Strength.Tests.Evidence;

/// <summary>The blade as a plate beside closed forms, converged series and solid elements.</summary>
internal static class PlateEvidence
{
    private const string Solid = "Numerical reference, CalculiX 2.20, C3D20R, converged";
    private const string Ritz = "Numerical reference, Ritz series for thin plates, converged";

    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Beams(), .. Plates(), .. TaperedFin(), .. DeltaFin(), .. LayeredFin()];

    private static IEnumerable<EvidenceRow> Beams()
    {
        const string Topic = "Plate as a beam: cantilevers in closed form";
        const string Exact = "0.1 %: load spread in 60 points";
        double tip = PlateModel.Create(Strip).Solve(Line(Strip, 0.2, 20)).Tip(Strip, 0.5);
        yield return new(Topic, "30 × 10 × 200 mm, 20 N at the end, no contraction across: deflection, mm", "Timoshenko, 1921, shear factor 5/6: 7.35632 + 0.01490", 7.37122, tip, 0.0074, Exact);

        const string Section = "Transformed section, closed form: 2 805 120 + 2 853 344 + 3 076 248 N mm²";
        PlateModel rods = PlateModel.Create(RodStrip);
        PlateSolution moment = rods.Solve(EndMoment(10));
        (double x, double y) = (0.015, 0.1);
        PlateStress stress = moment.StressAt(x, y);
        const string Reason = "1 %: rods across the width, ends of the rods";
        yield return new(Topic, "30 × 10 mm, skins 1.2 mm, two rods of 4 mm, 10 N m: EI, N m²", Section, 8.7347, 10 / moment.Curvature(x, y).Y, 0.087, Reason);
        yield return new(Topic, "The same: stress in the skin, MPa", Section, 11.449, -stress.Upper.SigmaY / 1e6, 0.115, Reason);
        yield return new(Topic, "The same: stress in the core at 3.8 mm, MPa", Section, 11.311, -stress.CoreUpper!.Value.SigmaY / 1e6, 0.113, Reason);
        yield return new(Topic, "The same: stress in a rod, MPa", Section, 286.21, moment.RodStations(0).Single(s => Math.Abs(s.Distance - 0.1) < 1e-9).BendingStress / 1e6, 2.9, Reason);
    }

    private static IEnumerable<EvidenceRow> Plates()
    {
        const string Topic = "Plate: even cantilever plates in air, ω a² √(ρh/D), a the length from the clamp, Poisson's ratio 0.3";
        (double Aspect, double[] Values)[] cases =
            [(0.5, [3.493, 5.351, 10.18]), (1, [3.4711, 8.507, 21.29, 27.20, 30.96]), (2, [3.439, 14.80, 21.44, 48.18, 60.15]), (5, [3.398, 21.27, 33.92])];
        foreach ((double aspect, double[] values) in cases)
        {
            IReadOnlyList<double> found = Frequencies(aspect, 0, values.Length);
            for (int m = 0; m < values.Length; m++)
                yield return new(Topic, $"Length over chord {aspect}, mode {m + 1}", Ritz, values[m], found[m], 0.003 * values[m], "0.3 %: shear of a plate 1/1000 thick, last digit");
        }

        IReadOnlyList<double> square = Frequencies(1, 0, 5), twice = Frequencies(2, 0, 3);
        const string Barton = "Barton, 1951, as quoted in Leissa, 1969, NASA SP-160 (from memory); upper bound";
        const string Leissa = "Leissa, 1973 (from memory); upper bound";
        foreach ((int mode, double value) in new[] { (0, 3.494), (1, 8.547), (2, 21.44), (3, 27.46), (4, 31.17) })
            yield return new(Topic, $"Square, mode {mode + 1}", Barton, value, square[mode], 0.012 * value, "1.2 %: few terms");
        foreach ((int mode, double value) in new[] { (0, 3.492), (1, 8.525), (2, 21.43), (3, 27.33), (4, 31.11) })
            yield return new(Topic, $"Square, mode {mode + 1}", Leissa, value, square[mode], 0.01 * value, "1 %: few terms");
        foreach ((int mode, double value) in new[] { (0, 3.472), (1, 14.93), (2, 21.61) })
            yield return new(Topic, $"Length over chord 2, mode {mode + 1}", Barton, value, twice[mode], 0.012 * value, "1.2 %: few terms");
        foreach ((int degrees, double first, double second) in new[] { (15, 3.583, 8.697), (30, 3.929, 9.411) })
        {
            IReadOnlyList<double> skew = Frequencies(1, degrees * Math.PI / 180, 2);
            yield return new(Topic, $"Rhombus swept {degrees}°, mode 1", Ritz, first, skew[0], 0.005 * first, "0.5 %");
            yield return new(Topic, $"Rhombus swept {degrees}°, mode 2", Ritz, second, skew[1], 0.005 * second, "0.5 %");
        }

        yield return new(Topic, "Rhombus swept 45°, mode 1", Ritz, 4.51, Frequencies(1, Math.PI / 4, 1)[0], 0.03, "0.5 %: singular blunt corner");
    }

    private static IEnumerable<EvidenceRow> TaperedFin()
    {
        const string Topic = "Plate: fin of 110 and 60 mm chord, 220 mm span, swept 20°, 13.2 to 6 mm thick, one material, clamped";
        const string Near = "1 %", Stress = "3 %: smoothed stress";
        PlateModel model = PlateModel.Create(Tapered);
        PlateSolution point = model.Solve(Point(Tapered)), pressure = model.Solve(Pressure);
        foreach ((double share, double one, double two) in new[] { (0.1, 38.387, 14.875), (0.25, 39.393, 15.272), (0.5, 41.066, 15.941), (0.75, 42.733, 16.625), (0.9, 43.732, 17.048) })
        {
            yield return new(Topic, $"196.2 N at 180 mm: tip at {share} chord, mm", Solid, one, point.Tip(Tapered, share), 0.01 * one, Near);
            yield return new(Topic, $"10 kPa: tip at {share} chord, mm", Solid, two, pressure.Tip(Tapered, share), 0.01 * two, Near);
        }

        yield return new(Topic, "196.2 N: twist of the tip, degrees", Solid, 6.380, point.Twist(Tapered), 0.0638, Near);
        yield return new(Topic, "10 kPa: twist of the tip, degrees", Solid, 2.594, pressure.Twist(Tapered), 0.0259, Near);
        yield return new(Topic, "196.2 N: stress along the span at 60 mm, MPa", Solid, -22.41, point.Stress(Tapered, 0.060), 0.67, Stress);
        yield return new(Topic, "10 kPa: stress along the span at 60 mm, MPa", Solid, -8.551, pressure.Stress(Tapered, 0.060), 0.26, Stress);
        PlateModes modes = model.Modes(3);
        foreach ((int mode, double value, double tolerance) in new[] { (0, 67.27, 0.01), (1, 275.4, 0.015), (2, 401.4, 0.015) })
            yield return new(Topic, $"Frequency in air, mode {mode + 1}, Hz", Solid, value, modes.AngularFrequencies[mode] / (2 * Math.PI), tolerance * value, $"{100 * tolerance} %");
        yield return new(Topic, "Volume, cm³", "Numerical reference, quadrature", 127.508, model.MassProperties.Mass / Density * 1e6, 0.07, "0.05 %: points toward the nose");
        yield return new(Topic, "Area, cm²", "Closed form", 187, model.Area * 1e4, 1e-6, "rounding");
    }

    private static IEnumerable<EvidenceRow> DeltaFin()
    {
        const string Topic = "Plate: delta of 220 and 40 mm chord, 160 mm span, straight trailing edge, 17.6 to 4 mm thick, 10 kPa";
        PlateSolution pressure = PlateModel.Create(Delta).Solve(Pressure);
        foreach ((double share, double value) in new[] { (0.1, 2.5079), (0.5, 2.8211), (0.9, 3.1656) })
            yield return new(Topic, $"Tip at {share} chord, mm", Solid, value, pressure.Tip(Delta, share), 0.015 * value, "1.5 %");
        yield return new(Topic, "Twist of the tip, degrees", Solid, 1.1775, pressure.Twist(Delta), 0.015 * 1.1775, "1.5 %");
        yield return new(Topic, "Stress along the span at 40 mm, MPa", Solid, -2.522, pressure.Stress(Delta, 0.040), 0.03 * 2.522, "3 %: smoothed stress");
    }

    private static IEnumerable<EvidenceRow> LayeredFin()
    {
        const string Topic = "Plate: the tapered fin with walls of 1.2 mm, 2000 MPa, on a core of 2600 MPa";
        PlateModes modes = PlateModel.Create(Layered).Modes(3);
        foreach ((int mode, double value) in new[] { (0, 59.295), (1, 240.81), (2, 352.10) })
            yield return new(Topic, $"Frequency in air, mode {mode + 1}, Hz", Solid, value, modes.AngularFrequencies[mode] / (2 * Math.PI), 0.01 * value, "1 %");
    }

    // Skins above and below, two rods in the middle of the thickness.
    private static PlateFin RodStrip => Strip with
    {
        Wall = Uncontracting(2000e6, 740e6),
        Core = Uncontracting(2600e6, 960e6),
        WallDepth = (_, _) => 1.2 * Millimetre,
        Rods = [new(0.008, 0, 0.008, 0.2, 0, 0.004, 125e9, 4.2e9, 1500), new(0.022, 0, 0.022, 0.2, 0, 0.004, 125e9, 4.2e9, 1500)],
    };

    // A couple of forces beyond the end: a pure moment, since a load off the mesh acts on the edge with its moment.
    private static IReadOnlyList<PlateLoad> EndMoment(double moment) => [.. Line(Strip, 0.2, -moment), .. Line(Strip, 0.2, moment).Select(load => load with { Y = 1.2 })];
}
