using Finwright.Strength.Tests.Calibration;

namespace Finwright.Strength.Tests.Evidence;

/// <summary>How often the ranges that the bench fit states hold the truth.</summary>
internal static class CalibrationEvidence
{
    private const int Trials = 300;

    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Coverage()];

    private static IEnumerable<EvidenceRow> Coverage()
    {
        int[] held = new int[2];
        for (int seed = 5000; seed < 5000 + Trials; seed++)
        {
            (double[] truth, Strength.Calibration.BenchFitResult fit) = BenchFitTests.Trial(seed, 1e-4);
            for (int i = 0; i < 2; i++)
                held[i] += truth[i] >= fit.Low(i) && truth[i] <= fit.High(i) ? 1 : 0;
        }

        const string Topic = "Bench: six readings of 0.1 mm deviation on a tapering blade, truth drawn anew 300 times";
        const string Source = "Two standard deviations of a normal law";
        yield return new(Topic, "Range stated for the walls holds the truth, % of trials", Source, 95.45, 100.0 * held[0] / Trials, 3.6, "three deviations of such a count");
        yield return new(Topic, "Range stated for the core holds the truth, % of trials", Source, 95.45, 100.0 * held[1] / Trials, 3.6, "three deviations of such a count");
    }
}
