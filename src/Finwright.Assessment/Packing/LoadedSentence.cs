using Finwright.Assessment.Loaded;
using Finwright.Design;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Packing;

/// <summary>Whether a fin bends, twists, opens or breaks, in a sentence or two.</summary>
public static class LoadedSentence
{
    /// <summary>The sentence.</summary>
    public static string Of(FinLoaded loaded)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        if (loaded[LoadCaseKind.Cruise] is { Status: LoadedStatus.BeyondRange })
            return $"The fin is far too soft: at cruise it would bend by more than {100 * CaseLoaded.FarthestShare:0} % of its span.";
        if (loaded[LoadCaseKind.Cruise] is { Status: LoadedStatus.NotSettled })
            return "Load and shape do not settle at cruise: the fin is too soft, near divergence, or the flow over it did not converge.";
        if (loaded[LoadCaseKind.Cruise] is not { HasNumbers: true } cruise)
            return $"How the fin bends was not worked out. {loaded.Problem}".TrimEnd();
        double twist = double.RadiansToDegrees(cruise.Tip.Twist);
        string bends = $"At cruise the tip bends {1e3 * Math.Abs(cruise.Tip.MidChord):0.0} mm and turns {Math.Abs(twist):0.0}°, {(twist >= 0 ? "washing out" : "washing in")}";
        string force = cruise.SideForceShare is double share ? $"; at the leeway of a stiff fin it carries {100 * (share - 1):+0;-0;0} % side force." : ".";
        string breaks = loaded[LoadCaseKind.Overload] is { HasNumbers: true, Peaks.Count: > 0 } overload && overload.Peaks.MinBy(peak => peak.Reserve) is { } worst
            ? $" In a gust or landing the least reserve is {Math.Min(worst.Reserve, 99):0.0}, in the {StressSummary.Words(worst)}."
            : "";
        return bends + force + breaks;
    }

    /// <summary>What is assumed throughout, and what to take care of.</summary>
    public static IReadOnlyList<string> Assumptions(FinDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return
        [
            "Estimates, never a certificate. Hang a weight on the fin on land before you trust it, and sail it close to shore first: a fin that fails far from shore leaves you without steering.",
            "A linear plate of walls, core and rods without flaws; hollows in the pour, bad layers and old cracks are not in it. Makers' data sheets go before the values used here.",
            design.Parts.BladeAttitude == PrintAttitude.Lying
                ? "Blade printed lying: layers run along the span."
                : "Blade printed standing: bending pulls its layers apart, where a print is weakest.",
            design.Base.RootHold switch
            {
                RootHold.Clamped => "The root is taken as held rigidly along its whole length.",
                RootHold.Elastic => "The base gives in its box; the joint is taken as whole.",
                _ => "The base gives in its box, and a joint between blade and base may open; bolts are hand-tight.",
            },
        ];
    }
}
