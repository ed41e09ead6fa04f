using Finwright.Water.Lifting;
using Finwright.Water.Sailing;
using Finwright.Water.Ventilation;

namespace Finwright.Assessment.Afloat;

/// <summary>What the fin does in one load case.</summary>
public sealed record CaseAfloat
{
    /// <summary>The situation.</summary>
    public required LoadCase Load { get; init; }

    /// <summary>The fin under its hull.</summary>
    public required LeewayResult UnderHull { get; init; }

    /// <summary>The same under an endless hull: the upper bound.</summary>
    public required LeewayResult UnderMirror { get; init; }

    /// <summary>The same with no hull: the lower bound.</summary>
    public required LeewayResult UnderBareSurface { get; init; }

    /// <summary>How far it is from letting go.</summary>
    public required VentilationMargins Margins { get; init; }

    /// <summary>Whether the fin carries the side force at all.</summary>
    public bool IsCarried => UnderHull.Status is LeewayStatus.Found or LeewayStatus.FoundPastOnset;

    /// <summary>Side force asked for over that at the onset of stall; null when no stall was found.</summary>
    public double? ShareOfStall => UnderHull.Limits.Onset is { } onset ? Math.Abs(UnderHull.Asked) / Math.Abs(onset.SideForce) : null;
}
