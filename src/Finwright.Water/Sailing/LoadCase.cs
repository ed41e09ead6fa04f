using Finwright.Numerics;

namespace Finwright.Water.Sailing;

/// <summary>The situations a fin is judged in.</summary>
public enum LoadCaseKind
{
    /// <summary>Slow, pumping onto the plane: most lift coefficient.</summary>
    GettingGoing,

    /// <summary>The usual reach, fully hung out: most steady side force.</summary>
    Cruise,

    /// <summary>Fastest, bearing away: most dynamic pressure.</summary>
    TopSpeed,

    /// <summary>Gust, chop or landing: most side force for a moment.</summary>
    Overload,

    /// <summary>The tip strikes ground: a case for the structure, not for the water.</summary>
    Grounding,
}

/// <summary>One situation: speed and forces, where they come from, what they are for.</summary>
public sealed record LoadCase
{
    /// <summary>Which situation.</summary>
    public required LoadCaseKind Kind { get; init; }

    /// <summary>Its name in plain words.</summary>
    public required string Name { get; init; }

    /// <summary>Speed through the water, m/s.</summary>
    public required double Speed { get; init; }

    /// <summary>Side force on the fin to be used, N.</summary>
    public required double SideForce { get; init; }

    /// <summary>Lower end of what the side force may be, N.</summary>
    public required double SideForceLow { get; init; }

    /// <summary>Upper end of what the side force may be, N.</summary>
    public required double SideForceHigh { get; init; }

    /// <summary>What rider and sail alone would give, N; differs from <see cref="SideForce"/> only when the maker gave a side force.</summary>
    public required double DerivedSideForce { get; init; }

    /// <summary>Push from ahead at the tip, N; 0 but for grounding.</summary>
    public double ImpactForce { get; init; }

    /// <summary>Lean of the rig to windward, radians.</summary>
    public double RigLean { get; init; }

    /// <summary>Weight that the leaning sail takes off the hull, N.</summary>
    public double SailLift { get; init; }

    /// <summary>What the case is for.</summary>
    public required string Purpose { get; init; }

    /// <summary>How its numbers were come by, with every estimate named.</summary>
    public required string Derivation { get; init; }

    /// <summary>The least sure of what the side force (or the impact) stands on.</summary>
    public required Certainty Certainty { get; init; }
}
