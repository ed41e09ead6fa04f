using Finwright.Papers.Words;

namespace Finwright.Papers.Views;

/// <summary>The round scales of drawings.</summary>
internal static class ViewScale
{
    // Reductions that a rule with the usual edges reads, and the ones between that a calculator does.
    private static readonly double[] Reductions = [1, 2, 2.5, 3, 4, 5, 6, 8, 10, 15, 20];

    /// <summary>Lengths on paper over lengths of the fin, the largest first.</summary>
    public static IEnumerable<double> All => Reductions.Select(reduction => 1 / reduction);

    /// <summary>A scale as it is written: "1 : 2.5".</summary>
    public static string Text(double scale, Tongue tongue) => "1 : " + tongue.Number(1 / scale, Math.Abs(1 / scale - Math.Round(1 / scale)) > 0.05 ? 1 : 0);
}
