using Finwright.Numerics;

namespace Finwright.Workshop.Tracks;

/// <summary>How far a best speed is usually off.</summary>
/// <remarks>
/// From positions: 1 to 2 knots over 2 s and 0.3 to 0.5 knots over 10 s, at a point a second (from memory; here the middles, and a power law between and beyond, which is our judgement).
/// Measured speed: half a knot over 2 s, falling with the root of the time as independent errors do (judgement: receivers promise about 0.1 m/s at steady speed, an arm that swings adds to it).
/// Neither is ever less than a tenth of a knot: an arm does not go quite the board's way (judgement).
/// </remarks>
public static class SpeedError
{
    private const double ShortSeconds = 2, LongSeconds = 10;
    private const double PositionsShort = 1.5 * SpeedUnits.Knot, PositionsLong = 0.4 * SpeedUnits.Knot;
    private const double Least = 0.1 * SpeedUnits.Knot;
    private const double MeasuredShort = 0.5 * SpeedUnits.Knot;
    private static readonly double PositionsPower = Math.Log(PositionsShort / PositionsLong) / Math.Log(LongSeconds / ShortSeconds);

    /// <summary>Usual error of a mean speed, m/s to either side.</summary>
    /// <param name="source">Where it comes from.</param>
    /// <param name="duration">Seconds over which it is the mean, positive.</param>
    public static double Usual(SpeedSource source, double duration)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(duration);
        return Math.Max(Least, source == SpeedSource.Measured
            ? MeasuredShort * Math.Sqrt(ShortSeconds / duration)
            : PositionsShort * Math.Pow(ShortSeconds / duration, PositionsPower));
    }

    /// <summary>How sure the usual errors are.</summary>
    /// <param name="source">Where the speed comes from.</param>
    public static Certainty CertaintyOf(SpeedSource source) => source == SpeedSource.Measured ? Certainty.Judgement : Certainty.FromMemory;
}
