namespace Finwright.Water.Lifting;

/// <summary>The leeway at which a fin carries a side force, and what is left.</summary>
public sealed record LeewayResult
{
    /// <summary>How the search came out.</summary>
    public required LeewayStatus Status { get; init; }

    /// <summary>Side force that was asked for, newtons.</summary>
    public required double Asked { get; init; }

    /// <summary>The fin at the leeway found; at its greatest side force when the fin cannot carry what was asked.</summary>
    public required LiftingResult Result { get; init; }

    /// <summary>Where stall starts and where side force peaks, on the side of the leeway.</summary>
    public required StallLimits Limits { get; init; }

    /// <summary>Side force left before stall starts, newtons; negative past it; null when no stall is known.</summary>
    public double? ReserveToOnset => Limits.Onset is { } onset ? Math.Abs(onset.SideForce) - Math.Abs(Result.SideForce) : null;

    /// <summary>Side force left before the greatest, newtons; null when no peak was found.</summary>
    public double? ReserveToMaximum => Limits.Maximum is { } maximum ? Math.Abs(maximum.SideForce) - Math.Abs(Result.SideForce) : null;
}

/// <summary>How a search for leeway came out.</summary>
public enum LeewayStatus
{
    /// <summary>Found, below the onset of stall.</summary>
    Found,

    /// <summary>Found between the onset of stall and the greatest side force.</summary>
    FoundPastOnset,

    /// <summary>The fin cannot carry this side force at this speed.</summary>
    BeyondMaximum,

    /// <summary>Not reached within 25 degrees of leeway, and no peak of side force found there either.</summary>
    BeyondRange,

    /// <summary>Lattice and sections were not brought together on the way.</summary>
    NotConverged,
}

/// <summary>How far a fin goes at one speed to one side.</summary>
public sealed class StallLimits
{
    /// <summary>The search ends here, radians (25 degrees).</summary>
    public const double SearchLimit = 25 * Math.PI / 180;

    // Many results are never asked for their peak, and it takes longer to find than all the rest.
    private readonly Lazy<LiftingResult?> _maximum;

    internal StallLimits(LiftingResult? onset, Func<LiftingResult?> findMaximum) => (Onset, _maximum) = (onset, new(findMaximum));

    /// <summary>The fin when its first 3 % of area reach their sections' peak of lift; null when none does within <see cref="SearchLimit"/>, or without sections.</summary>
    public LiftingResult? Onset { get; }

    /// <summary>The fin at its greatest side force; null when side force still rises at <see cref="SearchLimit"/>, or without sections.</summary>
    /// <remarks>Looked for when it is first asked for, in steps of half a degree past onset. Past onset the answer depends on the history of the flow: a bound, not a promise.</remarks>
    public LiftingResult? Maximum => _maximum.Value;

    /// <summary>Depth where stall starts, metres below the hull; null when it does not.</summary>
    public double? OnsetDepth => Onset?.Critical?.Depth;

    /// <summary>Whether the sections' computed points really pass over the peak of lift where stall starts; when not, stall comes later than shown.</summary>
    public bool IsOnsetCertain => Onset is not null && !Onset.Validity.HasFlag(LiftingValidity.PeakNotReached);
}
