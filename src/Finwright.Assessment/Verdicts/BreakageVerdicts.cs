using Finwright.Assessment.Loaded;
using Finwright.Numerics;
using Finwright.Strength.Margins;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Verdicts;

/// <summary>Whether walls, core and rods bear the loads of sailing.</summary>
internal static class BreakageVerdicts
{
    // What is asked of bonded plastic that was not tested is 3 to 4 on the steady load (from memory); a gust or landing is about twice that load, so it is asked for half as much.
    private const double LeastReserve = 1.5, AmpleReserve = 2;

    // Plastics that are loaded and unloaded a million times bear about a quarter of what breaks them at once (from memory).
    private const double TiringShare = 0.2, GreatestTiringShare = 0.35;

    private const string Fallback = "A fin that breaks does so under the greatest load, far from shore.";

    private static readonly (StressedPart[] Parts, string Code, string What, string Change)[] Kinds =
    [
        ([StressedPart.WallAcrossLayers], "walls-across-layers", "reserve of the walls between their layers, in a gust or landing", "Print the blade lying, so that layers run along the span; or thicken the root, add carbon rods, or take more walls."),
        ([StressedPart.WallAlongLayers], "walls-along-layers", "reserve of the walls along their layers, in a gust or landing", "Thicken the root, add carbon rods, or shorten the span."),
        ([StressedPart.RootCorner], "root-corner", "reserve of the corner at the root, in a gust or landing", "Give the root a flange with a fillet of at least half the root's thickness."),
        ([StressedPart.Cut], "cut-bond", "reserve of the bond at the cuts, in a gust or landing", "Move the cut farther from the root, let carbon rods cross it, or print the blade in one piece."),
        ([StressedPart.Core], "core", "reserve of the core, in a gust or landing", "More walls or carbon rods take load off the core; make sure that the pour leaves no hollows."),
        ([StressedPart.Rod], "rods", "reserve of the carbon rods, in a gust or landing", "Take thicker rods, or more of them, or let them end where the blade bends less."),
        ([StressedPart.RodBond], "rod-bond", "reserve of the bond of the carbon rods, in a gust or landing", "Let the rods reach into the base, or taper off deeper in the blade; abrade and degrease them before bonding."),
    ];

    public static IEnumerable<Verdict> Of(FinLoaded loaded)
    {
        foreach ((StressedPart[] parts, string code, string what, string change) in Kinds)
        {
            if (loaded[LoadCaseKind.Overload] is not { HasNumbers: true } overload)
            {
                // Without numbers nothing is known of any part; that is said once.
                if (code == "walls-along-layers")
                    yield return NoNumbers(loaded);
                continue;
            }

            StressPeak? worst = overload.Peaks.Where(peak => parts.Contains(peak.Part)).MinBy(peak => peak.Reserve);
            if (worst is not null)
                yield return Reserve(code, what, change, worst, overload);
        }

        if (loaded[LoadCaseKind.Cruise] is { HasNumbers: true } cruise)
            yield return Tiring(cruise);
    }

    private static Verdict NoNumbers(FinLoaded loaded)
    {
        const string code = "breaking", what = "reserve against breaking";
        return loaded[LoadCaseKind.Overload] is { Status: LoadedStatus.BeyondRange } overload
            ? WaterVerdicts.Unknown(
                code, what, Fallback,
                $"Under {overload.Load.SideForce:0} N the blade would bend by more than {100 * CaseLoaded.FarthestShare:0} % of its span; stresses are not worked out that far.",
                "Thicken the sections, add thick carbon rods, or shorten the span.") with
            { State = VerdictState.Fails, Ground = "beyond-range" }
            : loaded[LoadCaseKind.Overload] is { Status: LoadedStatus.NotSettled }
            ? WaterVerdicts.Unknown(
                code, what, Fallback,
                "Load and shape did not settle in a gust or landing: the blade is too soft, near divergence, or the flow over it did not converge.",
                "Thicken the sections, add thick carbon rods, rake the blade, or shorten the span.") with
            { Ground = "not-settled" }
            : WaterVerdicts.Unknown(code, what, Fallback, "The loads on the blade were not worked out.", loaded.Problem ?? "") with
            { Ground = "no-loads" };
    }

    private static Verdict Reserve(string code, string what, string change, StressPeak peak, CaseLoaded overload)
    {
        double reserve = Math.Min(peak.Reserve, 99);
        VerdictState state = reserve < LeastReserve ? VerdictState.Fails : reserve < AmpleReserve ? VerdictState.Tight : VerdictState.Holds;
        string carried = overload.Status is LoadedStatus.NotCarried ? " The fin stalls before it carries that load, so this is on the safe side." : "";
        return new()
        {
            Code = code,
            Checked = what,
            State = state,
            Value = new(reserve, "", 1),
            Limit = new(LeastReserve, "", 1),
            MustStayAbove = true,
            Uncertainty = new(Math.Max(reserve - Math.Min(peak.LeastReserve, reserve), 0.2 * reserve), "", 1),
            Certainty = Certainty.Judgement,
            HowSure = "Stresses are those of a smooth blade without flaws; strength of prints scatters by a third. The limit stands for plastic that was not tested (from memory); a proof test on land is worth more than this number.",
            Found = $"Under {overload.Load.SideForce:0} N there are {1e-6 * peak.Stress:0.0} MPa in the {peak.Name}, {1e3 * peak.Y:0} mm below the hull; about {1e-6 * peak.Strength.Value:0} MPa are borne (at least {1e-6 * peak.Strength.Low:0}).{carried}",
            Why = Fallback,
            Change = state == VerdictState.Holds ? "" : change,
        };
    }

    private static Verdict Tiring(CaseLoaded cruise)
    {
        StressPeak worst = cruise.Peaks.Where(peak => peak.Part is StressedPart.WallAcrossLayers or StressedPart.WallAlongLayers or StressedPart.RootCorner or StressedPart.Core).MinBy(peak => peak.Reserve)!;
        double share = worst.Stress / worst.Strength.Value;
        VerdictState state = WaterVerdicts.Below(share, TiringShare, GreatestTiringShare);
        return new()
        {
            Code = "tiring",
            Checked = "stress at cruise over strength, load after load",
            State = state,
            Value = new(100 * share, "%", 0),
            Limit = new(100 * GreatestTiringShare, "%", 0),
            Uncertainty = new(30 * share, "%", 0),
            Certainty = Certainty.FromMemory,
            HowSure = "No tests of printed, resin-filled fins under repeated load are known; the limit is what plastics in general bear a million times (from memory).",
            Found = $"At cruise the most used part, {worst.Name} {1e3 * worst.Y:0} mm below the hull, works at {100 * share:0} % of its strength; every wave adds a cycle.",
            Why = "A crack that grows a little with every gust shows late; a fin that held a season may not hold the next.",
            Change = state == VerdictState.Holds ? "" : "Thicken the root or add rods; look for white lines and fine cracks at the root after every few outings, and repeat the bench test each season: a softer fin is a cracked one.",
        };
    }
}
