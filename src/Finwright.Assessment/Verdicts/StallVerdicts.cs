using Finwright.Assessment.Afloat;
using Finwright.Numerics;
using Finwright.Water.Lifting;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Verdicts;

/// <summary>How much of what the fin can carry is used.</summary>
internal static class StallVerdicts
{
    // Judgement: chop and steering swing the load by some tenths of it.
    private const double TightShare = 0.7, GreatestShare = 0.85;

    // In a gust the fin may come close to its stall; past it, it lets go.
    private const double TightOverload = 0.85, GreatestOverload = 1;

    // Boundary-layer methods of the integral kind put maximum lift 5 to 10 % too high (from memory); side force is less sure than that.
    private const double ShareUncertainty = 0.15;

    // More area than this is another fin, not a change.
    private const double GreatestAdvice = 1.5;

    private const string HowSure = "Maximum lift of sections is good to 10 %, mostly on the high side; past the onset of stall the flow is not unique. Limits are judgement.";

    /// <summary>Steady sailing: the worst of getting going, cruise and top speed.</summary>
    public static Verdict Steady(FinAfloat afloat) => Judge(
        afloat,
        "stall-reserve",
        "reserve before stall",
        [LoadCaseKind.GettingGoing, LoadCaseKind.Cruise, LoadCaseKind.TopSpeed],
        (TightShare, GreatestShare),
        "A fin that stalls lets go: the tail slides sideways, air is drawn in, and the grip comes back only when you ease it.");

    /// <summary>A gust or a landing.</summary>
    public static Verdict Overload(FinAfloat afloat) => Judge(
        afloat,
        "stall-overload",
        "reserve before stall in a gust or landing",
        [LoadCaseKind.Overload],
        (TightOverload, GreatestOverload),
        "For a moment the fin carries about twice its load; past stall it spins out.") with
    { Case = LoadCaseKind.Overload };

    private static Verdict Judge(FinAfloat afloat, string code, string what, LoadCaseKind[] kinds, (double Tight, double Greatest) limits, string why)
    {
        CaseAfloat[] cases = [.. afloat.Cases.Where(own => kinds.Contains(own.Load.Kind))];
        if (cases.Length == 0)
            return WaterVerdicts.WithoutFlow(code, what, why, afloat);
        if (cases.FirstOrDefault(own => own.UnderHull.Status == LeewayStatus.NotConverged) is { } lost)
            return WaterVerdicts.Unknown(code, what, why, $"At {lost.Load.Name} the lifting surface and its sections were not brought together.", "Change the outline a little and try again.") with { Ground = "not-converged" };
        CaseAfloat worst = cases.MaxBy(own => own.ShareOfStall ?? 0)!;
        if (worst.ShareOfStall is not double share || worst.UnderHull.Limits.Onset is not { } onset)
        {
            return WaterVerdicts.Unknown(code, what, why, "No section of the fin reaches its peak of lift within 25° of leeway.", "") with { State = VerdictState.Holds };
        }

        VerdictState state = WaterVerdicts.Below(share, limits.Tight, limits.Greatest);
        StripResult? at = onset.Critical;
        string place = at is null ? "" : $" Stall starts {1e3 * at.Depth:0} mm below the hull, at {double.RadiansToDegrees(Math.Abs(onset.Flow.Leeway)):0.0}° of leeway.";
        string certain = worst.UnderHull.Limits.IsOnsetCertain ? "" : " The computed points of the section end before its peak, so stall comes later than shown.";
        return new()
        {
            Code = code,
            Case = worst.Load.Kind,
            Ground = share / limits.Tight <= GreatestAdvice ? "area" : "load",
            Checked = kinds.Length > 1 ? $"{what} {CaseWords.When(worst.Load.Kind)}" : what,
            State = state,
            Value = new(share, "of stall", 2),
            Limit = new(limits.Greatest, "of stall", 2),
            Uncertainty = new(ShareUncertainty * share, "of stall", 2),
            Certainty = Certainty.Judgement,
            HowSure = HowSure + certain,
            Found = $"At {worst.Load.Speed:0.#} m/s the load is {worst.Load.SideForce:0} N; the fin starts to stall at {Math.Abs(onset.SideForce):0} N.{place}",
            Why = why,
            Change = state == VerdictState.Holds ? "" : $"{Wanted(afloat, share, limits.Tight)} or a rounder, thicker nose (more thickness near the hull) stalls later.",
        };
    }

    /// <summary>The onset of stall goes with area, at least near enough for advice.</summary>
    private static string Wanted(FinAfloat afloat, double share, double tight) => share / tight <= GreatestAdvice
        ? $"About {1e4 * afloat.Planform.Area * share / tight:0} cm² instead of {1e4 * afloat.Planform.Area:0} cm² would hold;"
        : "Much more area, or less load at this speed (push later, with more speed) would hold;";
}
