using Finwright.Geometry;
using Finwright.Making.Pores;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Evidence;

/// <summary>Gyroid and filling beside numerical references and closed forms.</summary>
internal static class PoresEvidence
{
    private const string Counted = "Numerical reference, numpy";

    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Shares(), .. Flow(), .. Air(), .. Openings()];

    private static IEnumerable<EvidenceRow> Shares()
    {
        const string Topic = "Gyroid: how much of the room it takes";
        foreach ((double ratio, double share) in new[] { (0.05, 0.1235), (0.10, 0.2466), (0.20, 0.4893) })
            yield return new(Topic, FormattableString.Invariant($"Printed lines {ratio:F2} of the cell edge wide, share"), Counted, share, Gyroid.InfillShare(ratio, 1), 0.006 * share, "0.5 % of the reference, last digit of 2.46");
        foreach ((double level, double share) in new[] { (0.1, 0.0646), (0.3, 0.1936), (0.5, 0.3238), (1.0, 0.6594) })
            yield return new(Topic, FormattableString.Invariant($"Wall between the levels -{level:F1} and {level:F1}, share"), Counted, share, Gyroid.SheetShare(level), 6e-4, "counting of cells, both sides");
    }

    private static IEnumerable<EvidenceRow> Flow()
    {
        const string Topic = "Gyroid: how fast it fills";
        const string Closed = "Numerical reference, scipy, of the closed form";
        yield return new(Topic, "k/a² at share 0.10", Counted, 3.3e-3, Gyroid.Permeability(1, 0.10)!.Value.Value, 0.04 * 3.3e-3, "4 %: steps of the reference's grid");
        yield return new(Topic, "k/a² at share 0.20", Counted, 2.4e-3, Gyroid.Permeability(1, 0.20)!.Value.Value, 0.04 * 2.4e-3, "4 %: steps of the reference's grid");
        FillConditions conditions = new()
        {
            Column = PoreColumn.Straight(0.2, 0.002),
            OpenShare = 0.85,
            Permeability = 3e-3 * 0.0074 * 0.0074,
            Density = 1e-6,
            Pressure = 2000,
            Viscosity = _ => 0.5,
            TimeLimit = 3600,
        };
        const string Body = "Open share 0.85, 0.5 Pa s, cell 7.4 mm, 0.2 m high, ";
        yield return new(Topic, Body + "2000 Pa without weight, s", Closed, 25.87, DarcyFill.Solve(conditions).Time!.Value, 0.01, "last printed digit");
        const double Density = 1100 * 9.81 / DarcyFill.Gravity;
        yield return new(Topic, Body + "reservoir 0.25 m, 1100 kg/m³ at g = 9.81, s", Closed, 48.51, DarcyFill.Solve(conditions with { Density = Density, Pressure = DarcyFill.HeadPressure(Density, 0.25) }).Time!.Value, 0.01, "last printed digit");
    }

    private static IEnumerable<EvidenceRow> Air()
    {
        const string Topic = "Trapped air: a box 60 × 20 × 40 mm, tilted, with a pin-hole 15 mm below its top edge";
        PartVoxels box = new(default, new(0.001, 0.001, 0.001), 60, 20, 40);
        Array.Fill(box.Core, 1);
        TrappedAir air = new(PoreGrid.Create(box, 0));
        foreach (double degrees in new double[] { 10, 25, 40 })
        {
            (double sin, double cos) = Math.SinCos(degrees * Math.PI / 180);
            double along = 15 * cos / sin, area = 15 * along / 2 * (along <= 60 ? 1 : 1 - Math.Pow(1 - 60 / along, 2)), expected = area * 20 / 1000;
            double found = air.Solve(new(sin, 0, cos), [new(new(0.060, 0.010, 0.025), new(1, 0, 0), 1e-6)]).Volume * 1e6;
            yield return new(Topic, FormattableString.Invariant($"Tilted {degrees:F0}°, wedge of air left, ml"), "Closed form, plane geometry", expected, found, 0.02 * expected, "2 %: cells of 1 mm along the level of the resin");
        }
    }

    private static IEnumerable<EvidenceRow> Openings()
    {
        const string Topic = "Ports: share of places at which a hole opens both labyrinths by 1 mm² each";
        foreach ((double diameter, double depth, Point3 way, double share) in new[] { (2.0, 2.0, new Point3(1, 0, 0), 0.6589), (3.0, 2.0, new(1, 0, 0), 0.9185), (2.0, 3.0, new(1, 1, 0), 0.8079) })
            yield return new(
                Topic, FormattableString.Invariant($"{diameter:F0} mm wide, {depth:F0} mm deep, cell 7.38 mm, 15 % plastic, along ({way.X:F0}, {way.Y:F0}, {way.Z:F0})"), "Numerical reference, numpy: 20,000 random places",
                share, PortOpening.Chance(diameter * 1e-3, depth * 1e-3, 0.00738, 0.15, way).Share, 0.02, "0.35 % from counting there, 14³ places here");
    }
}
