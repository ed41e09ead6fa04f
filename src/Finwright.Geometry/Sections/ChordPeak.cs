namespace Finwright.Geometry.Sections;

/// <summary>Finds where along the chord a smooth curve is greatest: a coarse search, then golden sections.</summary>
internal static class ChordPeak
{
    private const int CoarseSteps = 64;

    // Golden sections shrink by 0.618; 36 of them take a coarse bracket to 1e-9 chords, where a peak is flat to 1e-16.
    private const int Refinements = 36;

    /// <summary>Place and value of the greatest value of <paramref name="curve"/> over the chord.</summary>
    public static (double Place, double Value) Of(Func<double, double> curve)
    {
        // Stations crowd at the nose, where thickness rises fastest.
        static double Station(int i)
        {
            double s = (double)i / CoarseSteps;
            return s * s * (2 - s);
        }

        int best = 0;
        double bestValue = curve(0);
        for (int i = 1; i <= CoarseSteps; i++)
            if (curve(Station(i)) is double value && value > bestValue)
                (best, bestValue) = (i, value);

        double low = Station(Math.Max(best - 1, 0)), high = Station(Math.Min(best + 1, CoarseSteps));
        double shrink = (Math.Sqrt(5) - 1) / 2;
        double left = high - shrink * (high - low), right = low + shrink * (high - low);
        double atLeft = curve(left), atRight = curve(right);
        for (int i = 0; i < Refinements; i++)
            if (atLeft >= atRight)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - shrink * (high - low);
                atLeft = curve(left);
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + shrink * (high - low);
                atRight = curve(right);
            }

        (double place, double peak) = atLeft >= atRight ? (left, atLeft) : (right, atRight);
        return peak >= bestValue ? (place, peak) : (Station(best), bestValue);
    }
}
