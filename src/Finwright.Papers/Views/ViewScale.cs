namespace Finwright.Papers.Views;

/// <summary>The round scales of drawings.</summary>
internal static class ViewScale
{
    // Reductions that a rule with the usual edges reads, and the ones between that a calculator does.
    private static readonly double[] Reductions = [1, 2, 2.5, 3, 4, 5, 6, 8, 10, 15, 20];

    /// <summary>Lengths on paper over lengths of the fin, the largest first.</summary>
    public static IEnumerable<double> All => Reductions.Select(reduction => 1 / reduction);
}
