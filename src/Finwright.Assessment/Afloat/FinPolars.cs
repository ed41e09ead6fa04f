using Finwright.Water.Polars;

namespace Finwright.Assessment.Afloat;

/// <summary>What the sections of a fin do in its water, from root to tip.</summary>
public sealed record FinPolars
{
    /// <summary>The polars over the share of the span, 0 at the root to 1 at the tip; null when they could not be worked out.</summary>
    public required SectionPolarFamily? Family { get; init; }

    /// <summary>Why there are none, and what to do; null when there are.</summary>
    public string? Problem { get; init; }

    /// <summary>Amplification exponent n that stands for the state of the water.</summary>
    public required double CriticalAmplification { get; init; }

    /// <summary>Finish of the starboard side, in words.</summary>
    public required string StarboardFinish { get; init; }

    /// <summary>Finish of the port side, in words.</summary>
    public required string PortFinish { get; init; }
}
