using Finwright.Assessment.Made;
using Finwright.Making.Printing;
using Finwright.Numerics;

namespace Finwright.Assessment.Verdicts;

/// <summary>Whether the print comes out, and everything that belongs inside gets in.</summary>
public static class PrintVerdicts
{
    private const double SquareCentimetre = 1e-4;

    // A few square centimetres of drooping lines sand away; more leaves holes (judgement).
    private const double MostOverhang = 2;

    /// <summary>All verdicts, worst first.</summary>
    /// <param name="printed">The print; at least one part.</param>
    public static IReadOnlyList<Verdict> Of(FinPrinted printed)
    {
        ArgumentNullException.ThrowIfNull(printed);
        return [.. ((Verdict?[])[Stops(printed), Overhang(printed), Layers(printed)]).OfType<Verdict>().OrderBy(verdict => verdict.State)];
    }

    private static Verdict? Stops(FinPrinted printed)
    {
        (string Part, StopEntry Item, PrintStop Stop)[] items = [.. printed.Parts.SelectMany(part => part.Stops.SelectMany(stop => stop.Items.Select(item => (part.Part.Name, item, stop))))];
        string[] lost = [.. printed.Parts.SelectMany(part => part.StopPlan.NotPossible)];
        const string code = "stops", what = "nuts lie under the next layer", why = "A nut that stands proud tears the print from the bed; one forgotten cannot be put in later.";
        if (lost.Length > 0)
        {
            return new()
            {
                Code = code,
                Ground = "no-stop",
                Checked = what,
                State = VerdictState.Fails,
                Certainty = Certainty.Derived,
                HowSure = "From the layers as they are cut.",
                Found = $"No stop gets these in: {string.Join(", ", lost)}.",
                Why = why,
                Change = "Turn the part on the bed, or let the pocket open to a side.",
            };
        }

        if (items.Length == 0)
            return null;
        (string Part, StopEntry Item, PrintStop Stop) worst = items.MinBy(entry => entry.Item.Clearance);
        double clearance = worst.Item.Clearance;
        VerdictState state = clearance < 0 ? VerdictState.Fails : clearance < PrintStops.LeastClearance - 2e-6 ? VerdictState.Tight : VerdictState.Holds;
        return new()
        {
            Code = code,
            Ground = "clearance",
            Checked = what,
            State = state,
            Value = new(1e3 * clearance, "mm", 2),
            Limit = new(1e3 * PrintStops.LeastClearance, "mm", 2),
            MustStayAbove = true,
            Certainty = Certainty.CommonPractice,
            HowSure = "From the layers as they are cut; nuts differ by some tenths of a millimetre, so measure yours.",
            Found = $"{(items.Length == 1 ? "One item goes" : $"{items.Length} items go")} in at {printed.Parts.Sum(part => part.Stops.Count)} {(printed.Parts.Sum(part => part.Stops.Count) == 1 ? "stop" : "stops")}; least room over {worst.Item.Name} of the {worst.Part}, before layer {worst.Stop.LayerNumber}.",
            Why = why,
            Change = state == VerdictState.Holds ? "" : "Give the pocket more allowance (print.pocket_allowance_mm), or use a square nut.",
        };
    }

    private static Verdict Overhang(FinPrinted printed)
    {
        PartPrinted worst = printed.Parts.MaxBy(part => part.AsLaid.Overhang)!;
        double area = worst.AsLaid.Overhang / SquareCentimetre;
        VerdictState state = area > MostOverhang ? VerdictState.Tight : VerdictState.Holds;
        return new()
        {
            Code = "overhang",
            Part = worst.Part.Name,
            Ground = worst.Orientations[0].Way.Down == worst.AsLaid.Way.Down ? "support" : Choice(worst.Orientations[0]),
            Checked = $"overhang without support: {worst.Part.Name}",
            // Supports help: nothing is too much, but it has to be known.
            State = state,
            Value = new(area, "cm²", 1),
            Certainty = Certainty.CommonPractice,
            HowSure = "Faces steeper than the limit of your printer (print.overhang_limit_degrees); roofs of pockets and bores count too, though short bridges hold.",
            Found = area < 0.05 ? "Nothing hangs over more than your printer can bridge." : $"As it lies, {area:0.0} cm² of the {worst.Part.Name} hang over more than your printer prints without support.",
            Why = "Drooping lines make the skin rough and leave holes through which resin runs.",
            Change = state == VerdictState.Holds ? "" : worst.Orientations[0].Way.Down == worst.AsLaid.Way.Down
                ? "Let the printer's program put supports there, and fill and sand that side."
                : $"Printed {Choice(worst.Orientations[0])}, {worst.Orientations[0].Overhang / SquareCentimetre:0} cm² hang over.",
        };
    }

    private static Verdict? Layers(FinPrinted printed)
    {
        PartPrinted[] loaded = [.. printed.Parts.Where(part => part.Part is { IsGauge: false, IsBase: false, IsImported: false })];
        if (loaded.Length == 0)
            return null;
        PartPrinted worst = loaded.MinBy(part => part.AsLaid.LoadAngle)!;
        double angle = double.RadiansToDegrees(worst.AsLaid.LoadAngle);
        RankedWay best = worst.Orientations[0];
        bool better = best.Laid.Fits && best.Load < worst.AsLaid.Load;
        return new()
        {
            Code = "layers-to-load",
            Part = worst.Part.Name,
            Ground = better ? Choice(best) : "",
            Checked = $"bending does not pull layers apart: {worst.Part.Name}",
            State = worst.AsLaid.Load == LayersToLoad.Across ? VerdictState.Tight : VerdictState.Holds,
            Value = new(angle, "°", 0),
            Limit = new(30, "°", 0),
            MustStayAbove = true,
            Certainty = Certainty.FromMemory,
            HowSure = "Layers hold 50 to 80 % of what the plastic does along them; the strength of the fin is worked out with it.",
            Found = worst.AsLaid.Load switch
            {
                LayersToLoad.Across => $"Printed as it lies, bending at the root of the {worst.Part.Name} pulls its layers apart.",
                LayersToLoad.Slanting => $"The layers of the {worst.Part.Name} slant to the bending at its root.",
                _ => $"The layers of the {worst.Part.Name} run along the bending at its root.",
            },
            Why = "Where layers part, a fin snaps without warning.",
            Change = worst.AsLaid.Load != LayersToLoad.Across
                ? ""
                : "Carbon rods along the span and more walls carry it: the verdicts on strength count with them." + (better ? $" Printed {Choice(best)} its layers run along the load, but {best.Overhang / SquareCentimetre:0} cm² hang over and one side comes out rough." : ""),
        };
    }

    private static string Choice(RankedWay way) => way.Way.Attitude == Design.PrintAttitude.Standing ? "standing" : "lying";
}
