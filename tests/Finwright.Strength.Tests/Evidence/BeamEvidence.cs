using Finwright.Strength.Beams;

namespace Finwright.Strength.Tests.Evidence;

/// <summary>The beam beside closed forms.</summary>
internal static class BeamEvidence
{
    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Timoshenko()];

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
}
