namespace Finwright.Page.RunSheets;

/// <summary>How a temperature stands to what was expected.</summary>
public enum ReadingState
{
    /// <summary>Nothing is known to hold it against.</summary>
    NotKnown,

    /// <summary>Cooler than the range.</summary>
    Cool,

    /// <summary>Within the range.</summary>
    Expected,

    /// <summary>Warmer than the range.</summary>
    Warm,

    /// <summary>Where the walls soften, or so near that the next reading may be there.</summary>
    Danger,
}

/// <summary>Holds readings of a thermometer against the worked-out cure. The page's own script does the same, so that it answers out of reach too.</summary>
public static class ReadingJudgement
{
    /// <summary>A thermometer and its place are no better than this, K (judgement).</summary>
    public const double Slack = 2;

    /// <summary>So near below the limit there is no time to wait for the next reading, K (judgement).</summary>
    public const double Near = 5;

    /// <summary>Judges a reading.</summary>
    /// <param name="thermometer">What is expected.</param>
    /// <param name="kelvin">What was read, K.</param>
    /// <param name="seconds">Time since the part was poured, s; null when it is not known.</param>
    public static ReadingState Of(RunThermometer thermometer, double kelvin, double? seconds)
    {
        ArgumentNullException.ThrowIfNull(thermometer);
        if (thermometer.Limit is double limit && kelvin > limit - Near)
            return ReadingState.Danger;
        if (seconds is not double time || time < 0 || At(thermometer, time) is not { } expected)
            return ReadingState.NotKnown;
        return kelvin > expected.High + Slack ? ReadingState.Warm : kelvin < expected.Low - Slack ? ReadingState.Cool : ReadingState.Expected;
    }

    /// <summary>What is expected at a time; null beyond the curve.</summary>
    /// <param name="thermometer">The curve.</param>
    /// <param name="seconds">Time since the part was poured, s.</param>
    public static RunWarmth? At(RunThermometer thermometer, double seconds)
    {
        ArgumentNullException.ThrowIfNull(thermometer);
        IReadOnlyList<RunWarmth> curve = thermometer.Curve;
        for (int i = 1; i < curve.Count; i++)
        {
            (RunWarmth before, RunWarmth after) = (curve[i - 1], curve[i]);
            if (seconds < before.Seconds || seconds > after.Seconds)
                continue;
            double share = after.Seconds > before.Seconds ? (seconds - before.Seconds) / (after.Seconds - before.Seconds) : 1;
            return new(seconds, Between(before.Low, after.Low), Between(before.Expected, after.Expected), Between(before.High, after.High));

            double Between(double a, double b) => a + share * (b - a);
        }

        return null;
    }
}
