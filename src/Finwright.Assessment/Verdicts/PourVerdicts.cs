using Finwright.Assessment.Made;
using Finwright.Making.Pores;
using Finwright.Numerics;

namespace Finwright.Assessment.Verdicts;

/// <summary>Whether the pores fill, and no air stays.</summary>
public static class PourVerdicts
{
    // Judgement: a hundredth of the pores is what tapping and topping up get out; three show as soft spots and drink water.
    private const double TightAir = 0.01, GreatestAir = 0.03;

    // Both labyrinths for certain, or nearly so (judgement).
    private const double NearlyCertain = 0.9;

    // The mix thickens well before its working time is over (judgement).
    private const double TightFill = 0.5, GreatestFill = 1;

    // Edges that stay partly empty: judgement.
    private const double TightThin = 0.05, GreatestThin = 0.25;

    // How far boxes may be off from slices without anything being odd: cells of a few millimetres at the skin of a thin core (judgement).
    private const double BoxRange = 0.05;

    /// <summary>All verdicts, worst first.</summary>
    /// <param name="poured">The pour; at least one part.</param>
    public static IReadOnlyList<Verdict> Of(FinPoured poured)
    {
        ArgumentNullException.ThrowIfNull(poured);
        return poured.Parts.Count == 0 ? [] : [.. ((Verdict[])[Air(poured), Ports(poured), Fill(poured), Thin(poured), SecondOpinion(poured)]).OrderBy(verdict => verdict.State)];
    }

    private static Verdict Air(FinPoured poured)
    {
        PartPoured worst = poured.Parts.MaxBy(part => part.Air.Share)!;
        VerdictState state = WaterVerdicts.Below(worst.Air.Share, TightAir, GreatestAir);
        string other = worst.Search switch
        {
            { Best: { } best } when best.Air.Volume < worst.Air.Volume - AttitudeSearch.TieShare * worst.Air.Total => $" Held with the {worst.Held(best.Attitude)} only {1e6 * best.Air.Volume:0.0} ml would stay.",
            { Pair: { } pair } when pair.Air.Volume < worst.Air.Volume => $" Rocked between {worst.Held(pair.First.Attitude)} and {worst.Held(pair.Second.Attitude)}, {1e6 * pair.Air.Volume:0.0} ml would stay.",
            _ => "",
        };
        string places = worst.Suggested.Air.Volume < worst.Air.Volume
            ? $"Drill {(worst.Suggested.Vents.Count == 1 ? "a vent" : $"{worst.Suggested.Vents.Count} vents")} where suggested (as further ports of the pour; then {1e6 * worst.Suggested.Air.Volume:0.0} ml stay), or hold it otherwise while pouring."
            : "Rock and tap the part while it fills, and top it up.";
        return new()
        {
            Code = "trapped-air",
            Part = worst.Name,
            Ground = worst.Suggested.Air.Volume < worst.Air.Volume ? "vents" : "rocking",
            Checked = $"air that stays in the pores of the {worst.Name}",
            State = state,
            Value = new(100 * worst.Air.Share, "% of the pores", 1),
            Limit = new(100 * GreatestAir, "% of the pores", 1),
            Certainty = Certainty.Derived,
            HowSure = $"Resin is taken to rise level; bubbles that cling to lines, and those shallower than {1e3 * worst.Air.Tolerance:0.0} mm, are not seen. The limit is judgement.",
            Found = worst.Air.Regions.Count == 0
                ? $"Held with the {worst.Held(worst.Attitude)}, all air finds its way to a vent."
                : $"Held with the {worst.Held(worst.Attitude)}, {1e6 * worst.Air.Volume:0.0} ml of air stay in {Count(worst.Air.Regions.Count, "bubble")}; the largest holds {1e6 * worst.Air.Regions[0].Volume:0.0} ml.{other}",
            Why = "Where air stays the fin is hollow: weak, and it drinks water through every scratch.",
            Change = state == VerdictState.Holds ? "" : places,
        };
    }

    private static Verdict Ports(FinPoured poured)
    {
        (PartPoured part, PouredPort port) = poured.Parts.SelectMany(part => part.Ports.Select(port => (part, port))).MinBy(pair => pair.port.Opening.Share);
        double share = port.Opening.Share;
        VerdictState state = port.Opening.IsCertain ? VerdictState.Holds : share >= NearlyCertain ? VerdictState.Tight : VerdictState.Fails;
        string deep = port.LeastDepth is double least && least <= port.Depth
            ? $"Drill {1e3 * least:0.0} mm into the core."
            : port.LeastDepth is double beyond ? $"A hole this wide opens both for certain from {1e3 * beyond:0.0} mm into the core: put it where the part is thicker, or make it wider." : "Make the hole wider, or put it where the part is thicker.";
        return new()
        {
            Code = "ports-open-both",
            Part = part.Name,
            Ground = port.LeastDepth is null ? "wider" : port.LeastDepth <= port.Depth ? "depth" : "thicker",
            Checked = "every port opens both labyrinths of the gyroid",
            State = state,
            Value = new(100 * share, "% of places in the pattern", 0),
            Limit = new(100, "% of places in the pattern", 0),
            MustStayAbove = true,
            Certainty = Certainty.Derived,
            HowSure = "Where the hole meets the pattern is left to chance, so every place was tried. Lines that stop short of the wall open more.",
            Found = $"The port \"{port.Name}\" of the {part.Name}, {1e3 * port.Port.Diameter:0.0} mm wide and drilled {1e3 * port.Depth:0.0} mm into the core, opens both labyrinths at {100 * share:0} % of the places it may meet; the pattern repeats every {1e3 * poured.CellEdge:0.0} mm.",
            Why = "A gyroid parts the inside into two labyrinths that never meet: one that is not opened stays full of air.",
            Change = state == VerdictState.Holds ? "" : deep,
        };
    }

    private static Verdict Fill(FinPoured poured)
    {
        const string code = "fill-time", what = "filling before the resin thickens", why = "Resin that thickens half way leaves the rest of the part empty.";
        if (poured.Parts.FirstOrDefault(part => part.Fill is null) is { } unknown)
            return WaterVerdicts.Unknown(code, what, why, $"How fast the {unknown.Name} fills is not known: the resin does not tell its viscosity, or the infill is outside 5 to 30 %, for which the flow through a gyroid is known.", "Give the resin's viscosity, or pour slowly and watch.") with { Ground = "not-known" };
        if (poured.Parts.FirstOrDefault(part => part.Fill!.Status != FillStatus.Filled) is { } stalled)
        {
            bool pressure = stalled.Fill!.Status == FillStatus.TooLittlePressure;
            return new()
            {
                Code = code,
                Part = stalled.Name,
                Ground = pressure ? "head" : "thickens",
                Checked = $"{what}: {stalled.Name}",
                State = VerdictState.Fails,
                Certainty = Certainty.Derived,
                HowSure = "Flow through the pores by Darcy's law with the tighter end of the permeability.",
                Found = pressure
                    ? $"The head does not lift the resin to the top of the {stalled.Name}: it stops at {1e3 * stalled.Fill.Level:0} mm."
                    : $"The resin grows too thick at {1e3 * stalled.Fill.Level:0} mm in the {stalled.Name}.",
                Why = why,
                Change = pressure ? "Hold the feeding tube higher (pour.head_mm), or push with the syringe." : "Pour in stages, use a slower or thinner resin, or a more open infill.",
            };
        }

        PartPoured worst = poured.Parts.MaxBy(Use)!;
        double use = Use(worst), pour = PouringTime(worst), seep = worst.Fill!.Time!.Value;
        VerdictState state = WaterVerdicts.Below(use, TightFill, GreatestFill);
        return new()
        {
            Code = code,
            Part = worst.Name,
            Ground = "cup",
            Checked = $"{what}: {worst.Name}",
            State = state,
            Value = new(use, "of a cup's working time", 2),
            Limit = new(GreatestFill, "of a cup's working time", 2),
            Uncertainty = new(0.5 * use, "of a cup's working time", 2),
            Certainty = Certainty.Judgement,
            HowSure = "Flow by Darcy's law, the hand at 25 ml a minute, working time from the resin's kinetics and what its data sheet says: good to a factor of two.",
            Found = $"A cup takes {pour / 60:0.#} min to pour by hand; the pores alone would let the whole part fill in {seep / 60:0.#} min. A full cup stays workable for {Life(worst)}.",
            Why = why,
            Change = state == VerdictState.Holds ? "" : "Mix smaller cups (pour.cup_grams), or use a slower resin.",
        };
    }

    private static Verdict Thin(FinPoured poured)
    {
        PartPoured worst = poured.Parts.MaxBy(part => part.Thin.Share)!;
        VerdictState state = WaterVerdicts.Below(worst.Thin.Share, TightThin, GreatestThin);
        return new()
        {
            Code = "thin-core",
            Part = worst.Name,
            Checked = $"core too thin to fill through the gyroid: {worst.Name}",
            State = state == VerdictState.Fails ? VerdictState.NotKnown : state,
            Value = new(100 * worst.Thin.Share, "% of the core", 0),
            Limit = new(100 * GreatestThin, "% of the core", 0),
            Certainty = Certainty.Judgement,
            HowSure = "Half a cell of the gyroid is taken as the least thickness in which the labyrinths hang together; nobody has measured it.",
            Found = $"{1e6 * worst.Thin.Volume:0.0} ml of the core, mostly along the edges, is thinner than {1e3 * worst.Thin.Thickness:0.0} mm, half a cell of the gyroid; whether resin gets everywhere there is not known.",
            Why = "Thin edges may keep pockets of air that no port reaches.",
            Change = state == VerdictState.Holds ? "" : "Print the edges solid (one or two more walls), use finer lines or more infill for a smaller pattern, or accept it and seal the edges well.",
        };
    }

    private static Verdict SecondOpinion(FinPoured poured)
    {
        PartPoured worst = poured.Parts.MaxBy(part => Math.Abs(part.Air.Total / part.Pores.Pores.Value - 1))!;
        TwoOpinions both = new("pore-opinion", $"room for resin, by boxes and by slices: {worst.Name}", worst.Air.Total, worst.Pores.Pores.Value, BoxRange)
        {
            Certainty = Certainty.Derived,
            HowSure = "Slices follow the printer's own lines; boxes fill the mesh with cells and know nothing of lines. Both count walls and hardware out.",
            Found = $"Cells of {1e3 * worst.Voxels.Cell:0.0} mm leave {1e6 * worst.Air.Total:0} ml, slices {1e6 * worst.Pores.Pores.Value:0} ml.",
            Change = "Have a further cup at hand, and look at the part for slivers and walls that meet.",
        };
        return both.Verdict with { Part = worst.Name };
    }

    private static double PouringTime(PartPoured part) => part.Batches.Batches[0].PouringTime;

    private static double Life(double seconds, double? sheet) => Math.Min(seconds, sheet ?? double.PositiveInfinity);

    private static double Use(PartPoured part) =>
        Math.Max(PouringTime(part), part.Fill!.Time!.Value / part.Batches.Batches.Count) / Life(part.CupLife, part.Batches.PotLife);

    private static string Life(PartPoured part) => Life(part.CupLife, part.Batches.PotLife) is var seconds && double.IsFinite(seconds) ? $"about {seconds / 60:0} min" : "more than two days";

    private static string Count(int count, string what) => count == 1 ? $"one {what}" : $"{count} {what}s";
}
