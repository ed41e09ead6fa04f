using Finwright.Numerics;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Joints;

/// <summary>What may limit how hard a bolt is tightened.</summary>
public enum TorqueLimit
{
    /// <summary>The bolt stretches for good.</summary>
    Bolt,

    /// <summary>The nut sinks into the print.</summary>
    NutBearing,

    /// <summary>The nut comes out with the print above it.</summary>
    PullOut,

    /// <summary>The turning nut bursts the wall beside it.</summary>
    WallBurst,

    /// <summary>The tapered base is driven into the box like a wedge and spreads it.</summary>
    Spreading,
}

/// <summary>Advice on how hard to tighten a bolt. Estimate: the board's and the bolt's makers' data go before it.</summary>
/// <param name="Least">Least torque that keeps the joint closed even when the thread turns hard, N·m; 0 when nothing asks for it.</param>
/// <param name="Greatest">Greatest torque that stays off all limits even when the thread turns easily, N·m.</param>
/// <param name="LimitedBy">Which limit that is.</param>
/// <param name="Reason">The advice in words.</param>
public sealed record TorqueAdvice(double Least, double Greatest, TorqueLimit LimitedBy, string Reason)
{
    /// <summary>Whether any torque does both.</summary>
    public bool IsPossible => Least <= Greatest;
}

/// <summary>How hard to tighten: enough to keep the joint closed, not so much that something gives.</summary>
public static class TighteningTorque
{
    /// <summary>What people do by hand in plastic, N·m: 2 to 4 (from memory).</summary>
    public static Ranged HandTight { get; } = new(3, 2, 4);

    /// <summary>Share of the bolt's yield to which it is tightened (common practice, no source).</summary>
    public const double ShareOfYield = 0.7;

    /// <summary>Divisor on the strength of plastic that was not tested: 3 to 4 (from memory).</summary>
    public const double UntestedFactor = 3;

    /// <summary>Divisor after a spare piece with the same nut has stood the pull (from memory).</summary>
    public const double TestedFactor = 1.5;

    // A nut that begins to sink in warns by coming loose and breaks nothing, so less is kept in hand (judgement).
    private const double BearingFactor = 1.5;

    /// <summary>Works out the band.</summary>
    /// <param name="seat">The nut and its pocket.</param>
    /// <param name="bolt">Metal of the bolt.</param>
    /// <param name="surround">What the nut's pocket is made of.</param>
    /// <param name="direction">How it was printed.</param>
    /// <param name="neededPull">Pull of this bolt that keeps the joint closed at the heaviest load, N; 0 when none is needed.</param>
    /// <param name="spreadingPull">Pull of this bolt at which the box or base is spread as far as it may be, N; null when the ends do not taper.</param>
    /// <param name="plasticFactor">Divisor on the middle strength of print and resin where they would break, at least 1: <see cref="UntestedFactor"/>, or <see cref="TestedFactor"/>.</param>
    public static TorqueAdvice Of(NutSeat seat, Metal bolt, NutSurround surround, PrintDirection direction, double neededPull, double? spreadingPull = null, double plasticFactor = UntestedFactor)
    {
        ArgumentNullException.ThrowIfNull(seat);
        ArgumentNullException.ThrowIfNull(surround);
        Require.AtLeast(plasticFactor, 1);
        Require.NotNegative(neededPull);
        if (spreadingPull is double spreading)
            Require.NotNegative(spreading, nameof(spreadingPull));
        double least = ThreadStrength.Torque(seat.Thread, neededPull).High;
        double AtEase(double pull) => ThreadStrength.Torque(seat.Thread, pull).Low;
        (TorqueLimit Limit, double Torque)[] limits =
        [
            (TorqueLimit.Bolt, AtEase(ShareOfYield * ThreadStrength.YieldPull(seat.Thread, bolt).Low)),
            (TorqueLimit.NutBearing, AtEase(seat.BearingPull(surround).Value / Math.Min(BearingFactor, plasticFactor))),
            (TorqueLimit.PullOut, AtEase(seat.PullOut(surround).Value / plasticFactor)),
            (TorqueLimit.WallBurst, seat.WallBurstTorque(surround, direction) is Ranged burst ? burst.Value / plasticFactor : double.PositiveInfinity),
            (TorqueLimit.Spreading, spreadingPull is double pull ? AtEase(pull) : double.PositiveInfinity),
        ];
        (TorqueLimit limit, double greatest) = limits.MinBy(l => l.Torque);
        return new(least, greatest, limit, Words(least, greatest, limit));
    }

    private static string Words(double least, double greatest, TorqueLimit limit)
    {
        string why = limit switch
        {
            TorqueLimit.Bolt => "the bolt begins to stretch for good",
            TorqueLimit.NutBearing => "the nut sinks into the print",
            TorqueLimit.PullOut => "the nut may come out with what is above it",
            TorqueLimit.WallBurst => "the turning nut may burst the wall beside it",
            _ => "the tapered base, drawn in like a wedge, spreads the box",
        };
        string band = least > greatest
            ? $"No torque does both: {least:0.0} N·m keep the joint closed at the heaviest load, but above {greatest:0.0} N·m {why}. Bond the joint, add bolts, or give the nut more print around it."
            : least > 0
                ? $"{least:0.0} to {greatest:0.0} N·m: less lets the joint open at the heaviest load, more and {why}."
                : $"Up to {greatest:0.0} N·m: more and {why}.";
        return $"{band} Estimate, greased thread; by hand people reach {HandTight.Low:0} to {HandTight.High:0} N·m. The makers' data go before it.";
    }
}
