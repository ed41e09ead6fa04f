namespace Finwright.Workshop.Tracks;

/// <summary>A difference of two fins with its standard deviation.</summary>
/// <param name="Difference">First less second, m/s.</param>
/// <param name="Deviation">Standard deviation of the difference, m/s.</param>
/// <param name="Freedom">Degrees of freedom of the deviation; infinite when there is no spread at all.</param>
/// <param name="HasUnevenDays">Whether the spread from day to day was added.</param>
internal sealed record DayDifference(double Difference, double Deviation, double Freedom, bool HasUnevenDays);

/// <summary>Differences within days and between days; sources at <see cref="FairComparison"/>.</summary>
internal static class DayStatistics
{
    /// <summary>Mean and standard deviation of one value; not a number where there are too few.</summary>
    public static (double Mean, double Deviation) MeanAndDeviation(IReadOnlyList<double> values)
    {
        if (values.Count == 0)
            return (double.NaN, double.NaN);
        double mean = values.Average();
        return (mean, values.Count < 2 ? double.NaN : Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Count - 1)));
    }

    /// <summary>The difference within days, averaged over days. With one day this is Welch's comparison of two means.</summary>
    public static DayDifference Within(IReadOnlyList<DayBlock> blocks)
    {
        (double Difference, double Variance, double Weight, double Quartic)[] days = [.. blocks.Select(OfDay)];
        double weights = days.Sum(day => day.Weight), difference = days.Sum(day => day.Weight * day.Difference) / weights;
        double variance = 0, quartic = 0, squares = 0;
        foreach ((_, double v, double weight, double q) in days)
        {
            double share = weight / weights;
            variance += share * share * v;
            quartic += share * share * share * share * q;
            squares += share * share;
        }

        double spread = DaySpread(days);
        // The spread of the days is known from one fewer degrees of freedom than there are days.
        double added = spread * squares;
        if (added > 0)
            quartic += added * added / (days.Length - 1);
        variance += added;
        return new(difference, Math.Sqrt(variance), quartic > 0 ? variance * variance / quartic : double.PositiveInfinity, added > 0);
    }

    /// <summary>The difference of means of days, sail by sail, with the spread of days pooled; null when no fin has two days with one sail.</summary>
    public static DayDifference? Between(ComparedRun[] first, ComparedRun[] second)
    {
        double difference = 0, weights = 0, squares = 0, variancePart = 0;
        int freedom = 0;
        foreach (double sail in first.Select(run => run.Sail!.Value).Distinct().Order())
        {
            double[] a = DayMeans(first, sail), b = DayMeans(second, sail);
            if (b.Length == 0)
                continue;
            double weight = (double)a.Length * b.Length / (a.Length + b.Length), meanA = a.Average(), meanB = b.Average();
            difference += weight * (meanA - meanB);
            weights += weight;
            // Weight squared times (1/nₐ + 1/n_b) is the weight itself.
            variancePart += weight;
            squares += a.Sum(value => (value - meanA) * (value - meanA)) + b.Sum(value => (value - meanB) * (value - meanB));
            freedom += a.Length + b.Length - 2;
        }

        return freedom < 1 ? null : new(difference / weights, Math.Sqrt(squares / freedom * variancePart) / weights, freedom, false);
    }

    private static double[] DayMeans(ComparedRun[] runs, double sail) =>
        [.. runs.Where(run => run.Sail.Equals(sail)).GroupBy(run => run.Day).OrderBy(day => day.Key).Select(day => day.Average(run => run.Speed))];

    private static (double Difference, double Variance, double Weight, double Quartic) OfDay(DayBlock block)
    {
        int nA = block.First.Length, nB = block.Second.Length;
        (double meanA, double deviationA) = MeanAndDeviation([.. block.First.Select(run => run.Speed)]);
        (double meanB, double deviationB) = MeanAndDeviation([.. block.Second.Select(run => run.Speed)]);
        double vA = deviationA * deviationA / nA, vB = deviationB * deviationB / nB;
        return (meanA - meanB, vA + vB, (double)nA * nB / (nA + nB), vA * vA / (nA - 1) + vB * vB / (nB - 1));
    }

    /// <summary>Variance of the difference from day to day that the runs do not explain, by moments; 0 with one day.</summary>
    private static double DaySpread((double Difference, double Variance, double Weight, double Quartic)[] days)
    {
        if (days.Length < 2 || Array.Exists(days, day => day.Variance is 0))
            return 0;
        double w = days.Sum(day => 1 / day.Variance), mean = days.Sum(day => day.Difference / day.Variance) / w;
        double q = days.Sum(day => (day.Difference - mean) * (day.Difference - mean) / day.Variance);
        double scale = w - days.Sum(day => 1 / (day.Variance * day.Variance)) / w;
        return Math.Max(0, (q - (days.Length - 1)) / scale);
    }
}
