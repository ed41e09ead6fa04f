using Finwright.Assessment.Afloat;
using Finwright.Water;
using Finwright.Water.Sailing;
using Finwright.Water.Ventilation;

namespace Finwright.Assessment.Verdicts;

/// <summary>Air and vapour on the blade.</summary>
internal static class VentilationVerdicts
{
    private const string VentilationWhy = "A fin that draws air loses half its grip or more at once, and at speed grips again only when it is unloaded.";
    private const string CavitationWhy = "Where water boils the fin loses lift, drags more, and is worn.";

    /// <summary>Ventilation at the root, and cavitation: the worst load case of each.</summary>
    public static IReadOnlyList<Verdict> Of(FinAfloat afloat)
    {
        if (afloat.Cases.Count == 0)
            return [WaterVerdicts.WithoutFlow("ventilation", "air drawn in at the root", VentilationWhy, afloat), WaterVerdicts.WithoutFlow("cavitation", "cavitation", CavitationWhy, afloat)];
        return [Ventilation(afloat), Cavitation(afloat)];
    }

    private static Verdict Ventilation(FinAfloat afloat)
    {
        // Attachment of the whole fin is the stall verdict's; here: flow at the root, seal, hull over the root. Whether a fin grips again
        // is told, not judged: at sailing speed none does.
        (CaseAfloat Case, Margin Margin) worst = Worst(afloat, own => [own.Margins.RootSeparation, own.Margins.Seal, own.Margins.HullCover]);
        (Margin margin, VentilationMargins all) = (worst.Margin, worst.Case.Margins);
        (Quantity? value, Quantity? limit, Quantity? uncertainty) = margin == all.Seal
            ? (Of(margin.Value, 1e3, "mm", 1), Of(margin.Limit, 1e3, "mm", 1), Of(margin.Uncertainty, 1e3, "mm", 1))
            : margin == all.HullCover
                ? (Of(margin.Value, 1, "root chords", 1), Of(margin.Limit, 1, "root chords", 2), Of(margin.Uncertainty, 1, "root chords", 1))
                : (Of(margin.Value, 100, "% of the chord", 0), Of(margin.Limit, 100, "% of the chord", 0), Of(margin.Uncertainty, 100, "% of the chord", 0));
        string kept = all.SideForceKept is double share ? $" Once it lets go about {100 * share:0} % of the side force is left." : "";
        string fate = all.Fate switch
        {
            CavityFate.WashesOut => " Air that gets in is washed out again.",
            CavityFate.Stays => " Air that gets in stays until you unload the fin or slow down.",
            CavityFate.MayStay => " Air that gets in may stay.",
            _ => "",
        };
        return new()
        {
            Code = "ventilation",
            Case = worst.Case.Load.Kind,
            Ground = margin == all.Seal ? "seal" : margin == all.HullCover ? "hull-cover" : "root-flow",
            Checked = $"air drawn in at the root ({margin.Name}) {CaseWords.When(worst.Case.Load.Kind)}",
            State = StateOf(margin.State),
            Value = value,
            Limit = limit,
            MustStayAbove = margin.MustStayAbove,
            Uncertainty = uncertainty,
            Certainty = margin.Certainty,
            HowSure = "Whether air finds its way depends on chop, heel and the fit of the base more than on any computed number; limits are judgement.",
            Found = $"{margin.Explanation}{fate}{kept}",
            Why = VentilationWhy,
            Change = margin.State is MarginState.Holds ? "" : margin == all.Seal
                ? "Seat the base without a gap and put a sealing washer under each bolt head."
                : margin == all.HullCover
                    ? "Place the fin farther from the edges of the tail, or choose a shorter root chord."
                    : "Give the root more chord, more thickness or less load, so that the flow stays attached there.",
        };
    }

    private static Verdict Cavitation(FinAfloat afloat)
    {
        (CaseAfloat own, Margin margin) = Worst(afloat, each => [each.Margins.Cavitation]);
        string begins = margin.Onset is { } onset ? $" It would begin at {onset.Speed:0.#} m/s ({onset.Assumption})." : "";
        return new()
        {
            Code = "cavitation",
            Case = own.Load.Kind,
            Checked = $"cavitation {CaseWords.When(own.Load.Kind)}",
            State = StateOf(margin.State),
            Value = Of(margin.Value, 100, "% of the drop to boiling", 0),
            Limit = Of(margin.Limit, 100, "% of the drop to boiling", 0),
            MustStayAbove = margin.MustStayAbove,
            Uncertainty = Of(margin.Uncertainty, 100, "% of the drop to boiling", 0),
            Certainty = margin.Certainty,
            HowSure = "Suction peaks are good to about 20 % on a clean nose; nicks and print lines make peaks of their own.",
            Found = $"{margin.Explanation}{begins}",
            Why = CavitationWhy,
            Change = margin.State is MarginState.Holds ? "" : "A rounder nose, or more area so that the fin works at less angle, lowers the suction peak.",
        };
    }

    private static (CaseAfloat Case, Margin Margin) Worst(FinAfloat afloat, Func<CaseAfloat, Margin[]> margins) => Steady(afloat)
        .SelectMany(own => margins(own).Select(margin => (own, margin)))
        .OrderBy(pair => StateOf(pair.margin.State))
        .ThenByDescending(pair => Used(pair.margin))
        .First();

    // A gust or a landing is over in a moment, and a load that is not carried stalls the fin: both are the stall verdict's.
    private static IEnumerable<CaseAfloat> Steady(FinAfloat afloat)
    {
        CaseAfloat[] steady = [.. afloat.Cases.Where(own => own.Load.Kind is not LoadCaseKind.Overload)];
        return Array.Exists(steady, own => own.IsCarried) ? steady.Where(own => own.IsCarried) : steady;
    }

    // How much of the limit is used up, so that the nearest to it comes first among equals.
    private static double Used(Margin margin) => margin is { Value: double value, Limit: double limit } && value > 0 && limit > 0
        ? (margin.MustStayAbove ? limit / value : value / limit)
        : 0;

    private static Quantity? Of(double? value, double scale, string unit, int decimals) => value is double known ? new(scale * known, unit, decimals) : null;

    internal static VerdictState StateOf(MarginState state) => state switch
    {
        MarginState.Holds => VerdictState.Holds,
        MarginState.Tight => VerdictState.Tight,
        MarginState.Fails => VerdictState.Fails,
        MarginState.NotKnown => VerdictState.NotKnown,
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Unknown state."),
    };
}
