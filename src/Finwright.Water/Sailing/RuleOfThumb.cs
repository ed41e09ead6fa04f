using Finwright.Numerics;

namespace Finwright.Water.Sailing;

/// <summary>Where a fin stands in the band of a rule of thumb.</summary>
public enum BandPosition
{
    /// <summary>Smaller than the band.</summary>
    Below,

    /// <summary>Within the band.</summary>
    Within,

    /// <summary>Larger than the band.</summary>
    Above,
}

/// <summary>What a rule of thumb says for this board, sail and rider, and where the fin stands. Never a verdict: it only stands beside the computed answer.</summary>
/// <param name="Name">The rule in a few words.</param>
/// <param name="Measure">What is compared.</param>
/// <param name="Low">Lower end for this brief, m or m².</param>
/// <param name="High">Upper end for this brief, m or m².</param>
/// <param name="Value">The fin's own, m or m².</param>
/// <param name="Certainty">How sure the rule is.</param>
/// <param name="Basis">Where the rule comes from and whom it fits.</param>
public sealed record RuleOfThumb(string Name, FinMeasure Measure, double Low, double High, double Value, Certainty Certainty, string Basis)
{
    /// <summary>Where the fin stands.</summary>
    public BandPosition Position => Value < Low ? BandPosition.Below : Value > High ? BandPosition.Above : BandPosition.Within;
}

/// <summary>What a rule of thumb speaks of.</summary>
public enum FinMeasure
{
    /// <summary>Area, m².</summary>
    Area,

    /// <summary>Span (the trade says length), m.</summary>
    Span,
}
