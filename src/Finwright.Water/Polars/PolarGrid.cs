using Finwright.Water.Sections;

namespace Finwright.Water.Polars;

/// <summary>At which Reynolds numbers and angles a polar is solved.</summary>
/// <remarks>
/// Reynolds numbers are taken from one fixed row for all fins, so that a section solved for one fin serves the next: six to a decade, a
/// factor of 1.47 from one to the next, over the range that fins meet.
/// </remarks>
public static class PolarGrid
{
    /// <summary>Least Reynolds number of the row: that of the section method.</summary>
    public const double LeastReynoldsNumber = SectionFlow.LeastReynolds;

    /// <summary>Greatest Reynolds number of the row: above that of a chord of 0.25 m at 20 m/s in water of 30 °C, 6.2 million.</summary>
    public static double GreatestReynoldsNumber => AllReynoldsNumbers[^1];

    /// <summary>Greatest angle of attack of the section method on either side, degrees.</summary>
    public const double GreatestAngleDegrees = 20;

    private const int StepsPerDecade = 6;
    private const int Steps = 2 * StepsPerDecade + 1;

    // Half a degree where laminar bubbles make lift uneven, one beyond, two where nearly all sections have stalled.
    private const double FineAngleDegrees = 2, StalledAngleDegrees = 16;

    /// <summary>The whole row of Reynolds numbers, rising.</summary>
    public static IReadOnlyList<double> AllReynoldsNumbers { get; } =
        [.. Enumerable.Range(0, Steps + 1).Select(i => Rounded(LeastReynoldsNumber * Math.Pow(10, (double)i / StepsPerDecade)))];

    /// <summary>The part of the row that covers a range, its ends included as far as the row goes; at least two.</summary>
    /// <param name="least">Least Reynolds number met.</param>
    /// <param name="greatest">Greatest Reynolds number met.</param>
    /// <exception cref="ArgumentOutOfRangeException">The numbers are not above 0, or in the wrong order.</exception>
    public static IReadOnlyList<double> ReynoldsNumbers(double least, double greatest)
    {
        if (!(least > 0))
            throw new ArgumentOutOfRangeException(nameof(least), least, "A Reynolds number must be above 0.");
        if (!(greatest >= least && double.IsFinite(greatest)))
            throw new ArgumentOutOfRangeException(nameof(greatest), greatest, "The greatest Reynolds number must not be below the least.");
        IReadOnlyList<double> all = AllReynoldsNumbers;
        int first = 0, last = all.Count - 1;
        while (first < last - 1 && all[first + 1] <= least)
            first++;
        while (last > first + 1 && all[last - 1] >= greatest)
            last--;
        return [.. all.Skip(first).Take(last - first + 1)];
    }

    /// <summary>Angles of attack, radians, rising.</summary>
    /// <param name="half">Only 0 and above, for a symmetric section with equal sides.</param>
    public static IReadOnlyList<double> Angles(bool half)
    {
        List<double> degrees = [];
        for (double angle = 0; angle <= GreatestAngleDegrees; angle += angle < FineAngleDegrees ? 0.5 : angle < StalledAngleDegrees ? 1 : 2)
            degrees.Add(angle);
        IEnumerable<double> whole = half ? degrees : degrees.Skip(1).Select(angle => -angle).Reverse().Concat(degrees);
        return [.. whole.Select(double.DegreesToRadians)];
    }

    // Three digits are enough, and a plain number is the same on every machine whatever its power function.
    private static double Rounded(double value)
    {
        double unit = Math.Pow(10, Math.Floor(Math.Log10(value)) - 2);
        return Math.Round(value / unit) * unit;
    }
}
