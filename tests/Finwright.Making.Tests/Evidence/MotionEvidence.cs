using Finwright.Making.Motion;
using Finwright.Making.Tests.Motion;

namespace Finwright.Making.Tests.Evidence;

/// <summary>Paths, plastic and times of motion files beside closed forms.</summary>
internal static class MotionEvidence
{
    private const string Exact = "Closed form", Rounding = "rounding";

    private const double Millimetres = 1e3, Least = 1e-6;

    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Paths(), .. Times()];

    private static IEnumerable<EvidenceRow> Paths()
    {
        const string Topic = "Motion files: paths";
        foreach ((string what, string line, double length) in new (string, string, double)[]
        {
            ("Half circle of 10 mm radius by its centre, mm", "G3 X20 Y0 I10 J0 E1", 10 * Math.PI),
            ("Full circle of 10 mm radius without an end, mm", "G2 I10 E1", 20 * Math.PI),
            ("Quarter circle by a radius of 10 mm, mm", "G3 X10 Y10 R10 E1", 5 * Math.PI),
            ("The other three quarters by a radius of -10 mm, mm", "G3 X10 Y10 R-10 E1", 15 * Math.PI),
            ("Helix of one turn, 10 mm radius, 30 mm rise, mm", "G2 Z30 I-10 E1", Math.Sqrt(400 * Math.PI * Math.PI + 900)),
        })
        {
            MotionSummary summary = MotionText.Summary($"M83\nG1 F1200\n{line}\n");
            yield return new(Topic, what, Exact, length, summary.LaidLength * Millimetres, Least, Rounding);
        }

        MotionSummary laid = MotionText.Summary("M83\nG1 X40 E5 F1200\nG1 E-2\nG1 E2\nG1 X0 E3\n");
        yield return new(Topic, "Plastic of 5 + 3 mm of filament of 1.75 mm, drawn back by 2 mm between, mm³", Exact, 8 * Math.PI / 4 * 1.75 * 1.75, laid.PlasticVolume * 1e9, Least, Rounding);
    }

    private static IEnumerable<EvidenceRow> Times()
    {
        const string Topic = "Motion files: time at 1 m/s²";
        // Speeding up and slowing down at one acceleration: L/v + v/a, or 2 √(L/a) where the feed rate is never reached.
        yield return new(Topic, "100 mm at 100 mm/s from rest to rest, s", Exact, 1.1, Straight(0.1, 0.1, 1), Least, Rounding);
        yield return new(Topic, "1 mm at 100 mm/s, too short for its feed rate, s", Exact, 2 * Math.Sqrt(1e-3), Straight(1e-3, 0.1, 1), Least, Rounding);
        yield return new(Topic, "1 m at 200 mm/s in 5000 pieces, s", Exact, 5.2, Straight(1, 0.2, 5000), Least, Rounding);
        // Each leg from rest to v and down to c = corner speed / √2: (2v − c)/a + (L − (2v² − c²)/(2a))/v.
        double c = 0.008 / Math.Sqrt(2), leg = 0.2 - c + (0.1 - (0.02 - c * c) / 2) / 0.1;
        PathTimer corner = new(1, 0.008);
        corner.Move(0.1, 0.1, 1, 0, 0, 1, 0, 0);
        corner.Move(0.1, 0.1, 0, 1, 0, 0, 1, 0);
        corner.Stand(0);
        yield return new(Topic, "Two legs of 100 mm at 100 mm/s with a right angle between, corner speed 8 mm/s, s", Exact, 2 * leg, corner.Seconds, Least, Rounding);
    }

    private static double Straight(double length, double speed, int pieces)
    {
        PathTimer timer = new(1, 0.008);
        for (int i = 0; i < pieces; i++)
            timer.Move(length / pieces, speed, 1, 0, 0, 1, 0, 0);
        timer.Stand(0);
        return timer.Seconds;
    }
}
