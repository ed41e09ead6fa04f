using Finwright.Assessment.Made;
using Finwright.Making.Cure;

namespace Finwright.Papers.Sheet;

/// <summary>When to look at a part that cures, and what the thermometer should show then.</summary>
public static class CureTimes
{
    // Readings are told for these shares of the time of the peak, to the quarter of an hour, later to the half.
    private const double Quarter = 900, Half = 1800, HalfFrom = 5400;
    private static readonly double[] ReadAt = [0.5, 0.75, 1, 1.5, 2, 3];

    /// <summary>Times at which to read, s after the first pour, round numbers.</summary>
    /// <param name="nominal">The cure as expected.</param>
    public static IReadOnlyList<double> ToRead(PartCureResult nominal)
    {
        ArgumentNullException.ThrowIfNull(nominal);
        return [.. ReadAt.Select(share => Even(share * nominal.Resin.Time)).Where(time => time <= nominal.History[^1].Time).Distinct()];
    }

    /// <summary>A temperature of the cure at a time, between moments by a straight line, K.</summary>
    /// <param name="history">The cure.</param>
    /// <param name="time">s after the first pour; beyond the ends the end holds.</param>
    /// <param name="of">Which temperature.</param>
    public static double At(IReadOnlyList<CureMoment> history, double time, Func<CureMoment, double> of)
    {
        ArgumentNullException.ThrowIfNull(history);
        ArgumentNullException.ThrowIfNull(of);
        int next = 1;
        while (next < history.Count - 1 && history[next].Time < time)
            next++;
        (CureMoment before, CureMoment after) = (history[next - 1], history[next]);
        double share = after.Time > before.Time ? Math.Clamp((time - before.Time) / (after.Time - before.Time), 0, 1) : 1;
        return of(before) + share * (of(after) - of(before));
    }

    /// <summary>How long a part stays in its bath: as the design says, or longer where it must; null without a bath.</summary>
    /// <param name="part">The part.</param>
    /// <returns>s after the first pour.</returns>
    public static double? InWater(PartCured part)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (part.Case.Bath is not { } bath)
            return null;
        return part.Water is { Status: WaterTimeStatus.Found } found ? Math.Max(bath.Duration, found.Duration) : bath.Duration;
    }

    private static double Even(double time)
    {
        double step = time < HalfFrom ? Quarter : Half;
        return Math.Max(step, step * Math.Round(time / step));
    }
}
