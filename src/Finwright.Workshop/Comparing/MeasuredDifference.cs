using Finwright.Workshop.Reviewing;

namespace Finwright.Workshop.Comparing;

/// <summary>What was measured of two builds, side by side.</summary>
/// <param name="Name">What was measured.</param>
/// <param name="Unit">Unit of the numbers.</param>
/// <param name="First">Of the first.</param>
/// <param name="Second">Of the second.</param>
/// <param name="FirstPredicted">What was expected of the first; null when nothing was.</param>
/// <param name="SecondPredicted">What was expected of the second.</param>
/// <param name="IsBeyondDoubt">Whether they differ by more than both measurements may be off.</param>
/// <param name="Decimals">Decimals that the numbers deserve.</param>
public sealed record MeasuredPair(string Name, string Unit, double First, double Second, double? FirstPredicted, double? SecondPredicted, bool IsBeyondDoubt, int Decimals)
{
    /// <summary>Change in per cent of the first; null where that says nothing.</summary>
    public double? Percent => First is 0 ? null : 100 * (Second - First) / Math.Abs(First);
}

/// <summary>Holds what was measured of two builds side by side.</summary>
public static class MeasuredDifference
{
    // Weights and places this close are the same, kg and mm.
    private const double SameMass = 0.05, SamePlace = 1.5;

    /// <summary>Everything measured of both; readings of the bench where weight, hold and places are the same.</summary>
    /// <param name="first">The first build.</param>
    /// <param name="second">The second.</param>
    public static IReadOnlyList<MeasuredPair> Of(BuildReview first, BuildReview second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        List<MeasuredPair> pairs = [];
        foreach (ReviewLine one in first.Lines)
            if (second.Lines.FirstOrDefault(line => line.Key == one.Key && line.Unit == one.Unit) is { } other)
                Add(one.Name, one, other);
        List<ReadingReview> left = [.. second.Readings];
        foreach (ReadingReview one in first.Readings)
        {
            if (left.Find(reading => IsAlike(one, reading)) is not { } other)
                continue;
            left.Remove(other);
            Add($"{one.Against.Name} at {one.ReadAtMm:0} mm{(one.Quantity is Finwright.Strength.Bench.BenchQuantity.Twist ? "" : $", {ChordWords.Of(one.ReadChord)}")}, {one.MassKg:0.##} kg at {one.AtMm:0} mm", one.Against, other.Against);
        }

        return pairs;

        void Add(string name, ReviewLine one, ReviewLine other)
        {
            if (one.Measured is double a && other.Measured is double b)
                pairs.Add(new(name, one.Unit, a, b, one.Predicted, other.Predicted, Math.Abs(b - a) > double.Hypot(one.Doubt, other.Doubt), one.Decimals));
        }
    }

    private static bool IsAlike(ReadingReview one, ReadingReview other) =>
        one.Quantity == other.Quantity && one.RootHold == other.RootHold && one.AtChord == other.AtChord
        && (one.ReadChord == other.ReadChord || one.Quantity is Finwright.Strength.Bench.BenchQuantity.Twist)
        && Math.Abs(one.MassKg - other.MassKg) <= SameMass && Math.Abs(one.AtMm - other.AtMm) <= SamePlace && Math.Abs(one.ReadAtMm - other.ReadAtMm) <= SamePlace;
}
