using Finwright.Making.Pores;

namespace Finwright.Making.Tests.Evidence;

/// <summary>Gyroid and filling beside numerical references and closed forms.</summary>
internal static class PoresEvidence
{
    private const string Counted = "Numerical reference, numpy";

    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Shares(), .. Flow()];

    private static IEnumerable<EvidenceRow> Shares()
    {
        const string Topic = "Gyroid: how much of the room it takes";
        foreach ((double ratio, double share) in new[] { (0.05, 0.1235), (0.10, 0.2466), (0.20, 0.4893) })
            yield return new(Topic, FormattableString.Invariant($"Printed lines {ratio:F2} of the cell edge wide, share"), Counted, share, Gyroid.InfillShare(ratio, 1), 0.006 * share, "0.5 % of the reference, last digit of 2.46");
        foreach ((double level, double share) in new[] { (0.1, 0.0646), (0.3, 0.1936), (0.5, 0.3238), (1.0, 0.6594) })
            yield return new(Topic, FormattableString.Invariant($"Wall |F| < {level:F1}, share"), Counted, share, Gyroid.SheetShare(level), 6e-4, "counting of cells, both sides");
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
}
