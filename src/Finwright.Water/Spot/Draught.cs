using Finwright.Numerics;

namespace Finwright.Water.Spot;

/// <summary>How deep the fin reaches below the hull, against what the spot allows.</summary>
/// <remarks>
/// The span is measured square to the hull, so rake does not change it, and leeway turns the fin about an upright axis. Heel makes it reach less
/// deep below its root; a tail that sinks with the nose up carries a tip that stands aft deeper.
/// </remarks>
public static class Draught
{
    /// <summary>Depth of the tip below the root's level, m.</summary>
    /// <param name="span">Span, square to the hull, m.</param>
    /// <param name="tipAft">Distance of the tip aft of the root, m.</param>
    /// <param name="heel">Heel either way, radians, within ±π/2.</param>
    /// <param name="trim">Nose-up trim, radians, within ±π/4.</param>
    public static double Depth(double span, double tipAft = 0, double heel = 0, double trim = 0)
    {
        Require.Positive(span);
        Require.Finite(tipAft);
        Require.Between(heel, -Math.PI / 2, Math.PI / 2);
        Require.Between(trim, -Math.PI / 4, Math.PI / 4);
        return span * Math.Cos(heel) * Math.Cos(trim) + tipAft * Math.Sin(trim);
    }

    /// <summary>The span against the spot's limit.</summary>
    /// <param name="span">Span, m.</param>
    /// <param name="limit">Greatest depth of fin that the spot allows, m; null for deep water.</param>
    public static Margin Judge(double span, double? limit)
    {
        Require.Positive(span);
        if (limit is null)
            return new() { Name = "draught", Value = span, Certainty = Certainty.Derived, State = MarginState.Holds, Explanation = "The spot sets no limit." };
        double allowed = Require.Positive(limit.Value);
        return new()
        {
            Name = "draught",
            Value = span,
            Limit = allowed,
            Uncertainty = 0,
            Certainty = Certainty.Derived,
            State = span > allowed ? MarginState.Fails : MarginState.Holds,
            Explanation = span > allowed
                ? $"The fin reaches {(span - allowed) * 1000:0} mm deeper than the spot allows. Rake does not help: the span is measured straight down from the hull."
                : $"The fin reaches {span * 1000:0} mm below the hull of {allowed * 1000:0} allowed. A board that is not planing floats deeper, and waves take depth away.",
        };
    }
}
