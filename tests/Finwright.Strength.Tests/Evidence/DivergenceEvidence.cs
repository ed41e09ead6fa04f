using Finwright.Strength.Tests.Hydroelastic;

namespace Finwright.Strength.Tests.Evidence;

/// <summary>Static divergence beside the closed form and an independent Ritz solution.</summary>
internal static class DivergenceEvidence
{
    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Swept()];

    private static IEnumerable<EvidenceRow> Swept()
    {
        const string Topic = "Divergence of a uniform cantilever with strip loads, dynamic pressure in kPa";
        const string Ritz = "Numerical reference: Ritz solution, converged";
        double exact = Math.Pow(Math.PI / (2 * SweptWing.Length), 2) * 80 / (SweptWing.Chord * SweptWing.Arm * SweptWing.Slope) * 1e-3;
        yield return new(Topic, "Unswept", "(π/2l)² GJ/(c e a₀), closed form", exact, At(0), 0.001 * exact, "0.1 %: 40 strips");
        foreach ((int sweep, double pressure) in new[] { (-20, 227.5), (-10, 314.3), (2, 749.3), (5, 1244) })
            yield return new(Topic, $"Swept by {sweep}°", Ritz, pressure, At(sweep), 0.003 * pressure, "0.3 %: 40 strips, last printed digit");
    }

    private static double At(double degrees) => SweptWing.Pressure(degrees * Math.PI / 180, 40)!.Value * 1e-3;
}
