using Finwright.Design;
using Finwright.Water;

namespace Finwright.Assessment.Verdicts;

/// <summary>Weed and depth of the spot.</summary>
internal static class SpotVerdicts
{
    public static Verdict Weed(Brief brief, Margin margin) => new()
    {
        Code = "weed",
        Ground = brief.Weed == Design.Weed.Thick ? "thick-weed" : "some-weed",
        Checked = "weed slides off the leading edge",
        State = VentilationVerdicts.StateOf(margin.State),
        Value = Degrees(margin.Value),
        Limit = Degrees(margin.Limit),
        MustStayAbove = margin.MustStayAbove,
        Uncertainty = Degrees(margin.Uncertainty),
        Certainty = margin.Certainty,
        HowSure = "The friction of wet weed, 35 to 45° of sweep, is common practice; nobody has measured it.",
        Found = margin.Explanation,
        Why = "Weed on the edge brakes, and lets the fin stall and draw air.",
        Change = margin.State is MarginState.Holds ? "" : brief.Weed == Design.Weed.Thick
            ? "Rake the fin more, so that nearly all of the leading edge is swept by 45° or more."
            : "Rake the fin more, above all near the root, where weed hangs first.",
    };

    public static Verdict Draught(Margin margin) => new()
    {
        Code = "draught",
        Checked = "depth of the fin at the spot",
        State = VentilationVerdicts.StateOf(margin.State),
        Value = Mm(margin.Value),
        Limit = Mm(margin.Limit),
        MustStayAbove = margin.MustStayAbove,
        Certainty = margin.Certainty,
        HowSure = "The depth of the fin is exact; the depth of the water is what you gave.",
        Found = margin.Explanation,
        Why = "A fin that touches ground throws you off and can break the box.",
        Change = margin.State is MarginState.Holds ? "" : "Make the fin shorter, and wider to keep its area.",
    };

    private static Quantity? Degrees(double? radians) => radians is double angle ? new(double.RadiansToDegrees(angle), "°", 0) : null;

    private static Quantity? Mm(double? metres) => metres is double length ? new(1e3 * length, "mm", 0) : null;
}
