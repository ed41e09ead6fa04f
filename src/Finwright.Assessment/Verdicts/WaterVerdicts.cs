using Finwright.Assessment.Afloat;
using Finwright.Design;
using Finwright.Numerics;
using Finwright.Water.Lifting;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Verdicts;

/// <summary>Judges what a fin does when it sails.</summary>
public static class WaterVerdicts
{
    // Judgement: leeway of 2 to 5 degrees is usual at cruise; beyond 7 the board sails visibly askew.
    private const double TightLeewayDegrees = 5, GreatestLeewayDegrees = 7;

    // Judgement: a good fin takes a fifth of what drives the board; at half it would rule the speed.
    private const double TightDragShare = 0.35, GreatestDragShare = 0.5;

    // Judgement: sailors feel a mast foot moved by 10 mm and trim by moving it; 25 mm is beyond what a mast track evens out without other losses.
    private const double TightShiftMm = 10, GreatestShiftMm = 25;

    // How far the formula may be off without anything being odd: 2 to 4 % against a lattice on plain outlines (own comparison), 10 % for what it does not know (judgement).
    private const double FormulaRange = 0.12;

    // The centre of effort is known to about a fiftieth of the chord at the root.
    private const double ShiftUncertaintyShare = 0.02;

    private const string NeedsFlow = "The flow over the fin was not worked out.";

    /// <summary>All verdicts, worst first, in a steady order among equals.</summary>
    /// <param name="design">The design.</param>
    /// <param name="afloat">What it does.</param>
    /// <param name="reference">What a reference design does; null when none was given.</param>
    /// <param name="referenceName">Its name.</param>
    public static IReadOnlyList<Verdict> Of(FinDesign design, FinAfloat afloat, FinAfloat? reference = null, string? referenceName = null)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(afloat);
        return WorstFirst(
        [
            StallVerdicts.Steady(afloat),
            StallVerdicts.Overload(afloat),
            .. VentilationVerdicts.Of(afloat),
            Leeway(afloat),
            DragShare(afloat),
            CentreOfEffort(afloat, reference, referenceName),
            .. SecondOpinion(afloat),
            SpotVerdicts.Weed(design.Brief, afloat.Weed),
            SpotVerdicts.Draught(afloat.Draught),
        ]);
    }

    /// <summary>Sorts verdicts, worst first; equals keep their order.</summary>
    public static IReadOnlyList<Verdict> WorstFirst(IEnumerable<Verdict> verdicts) => [.. verdicts.OrderBy(verdict => verdict.State)];

    /// <summary>A verdict on something that was not worked out.</summary>
    internal static Verdict Unknown(string code, string what, string why, string found, string change) => new()
    {
        Code = code,
        Checked = what,
        State = VerdictState.NotKnown,
        Certainty = Certainty.Judgement,
        HowSure = "Not known.",
        Found = found,
        Why = why,
        Change = change,
    };

    internal static Verdict WithoutFlow(string code, string what, string why, FinAfloat afloat) =>
        Unknown(code, what, why, NeedsFlow, afloat.Problem ?? "") with { Ground = "no-flow" };

    internal static VerdictState Below(double value, double tight, double limit) =>
        value > limit ? VerdictState.Fails : value > tight ? VerdictState.Tight : VerdictState.Holds;

    private static Verdict Leeway(FinAfloat afloat)
    {
        const string code = "leeway", what = "leeway at cruise", why = "Leeway is where the board goes beside where it points: it costs height when sailing upwind, and turns the hull across its own wake.";
        if (afloat[LoadCaseKind.Cruise] is not { } cruise)
            return WithoutFlow(code, what, why, afloat);
        const string change = "A larger or deeper fin makes less leeway; so does more speed.";
        if (!cruise.IsCarried)
        {
            return Unknown(code, what, why, "The fin does not carry the side force at cruise, so there is no steady leeway.", change) with
            {
                State = cruise.UnderHull.Status == LeewayStatus.BeyondMaximum ? VerdictState.Fails : VerdictState.NotKnown,
            };
        }

        double degrees = Degrees(cruise.UnderHull.Result.Flow.Leeway);
        double low = Degrees(cruise.UnderMirror.Result.Flow.Leeway), high = Degrees(cruise.UnderBareSurface.Result.Flow.Leeway);
        VerdictState state = Below(degrees, TightLeewayDegrees, GreatestLeewayDegrees);
        string bounds = cruise.UnderMirror.Status == LeewayStatus.Found && cruise.UnderBareSurface.Status is LeewayStatus.Found or LeewayStatus.FoundPastOnset
            ? $" Under an endless hull it would be {low:0.0}°, with no hull {high:0.0}°."
            : "";
        return new()
        {
            Code = code,
            Checked = what,
            State = state,
            Value = new(degrees, "°", 1),
            Limit = new(GreatestLeewayDegrees, "°", 0),
            Uncertainty = new(0.15 * degrees, "°", 1),
            Certainty = Certainty.Judgement,
            HowSure = "Good to about 15 %: the hull's effect is computed, the side force is the less certain part. The limit is judgement.",
            Found = $"At {cruise.Load.Speed:0.#} m/s the fin carries {cruise.Load.SideForce:0} N at {degrees:0.0}° of leeway; 2 to 5° is usual.{bounds}",
            Why = why,
            Change = state == VerdictState.Holds ? "" : change,
        };
    }

    private static Verdict DragShare(FinAfloat afloat)
    {
        const string code = "drag-share", what = "share of the sail's drive that the fin uses up at cruise", why = "What the fin takes does not go into speed.";
        if (afloat[LoadCaseKind.Cruise] is not { IsCarried: true } cruise)
            return WithoutFlow(code, what, why, afloat);
        CaseEstimates estimates = new();
        double drive = cruise.Load.SideForce * Math.Tan(estimates.CruiseForceAngle);
        DragSplit drag = cruise.UnderHull.Result.Drag;
        double share = drag.Total / drive;
        VerdictState state = Below(share, TightDragShare, GreatestDragShare);
        return new()
        {
            Code = code,
            Checked = what,
            State = state,
            Value = new(100 * share, "%", 0),
            Limit = new(100 * GreatestDragShare, "%", 0),
            Uncertainty = new(25 * share, "%", 0),
            Certainty = Certainty.Judgement,
            HowSure = $"The drag is good to some 15 %; the drive rests on a sail force {Degrees(estimates.CruiseForceAngle):0}° ahead of athwartships, which is judgement, and so is the limit.",
            Found = $"The fin drags with {drag.Total:0} N: {drag.Induced:0} N for the side force itself (induced), {drag.Section:0} N of friction and wake, {drag.Separation + drag.Junction + drag.Spray:0} N at tip and root. The sail drives with about {drive:0} N.",
            Why = why,
            Ground = drag.Induced > drag.Section ? "induced" : "friction",
            Change = state == VerdictState.Holds ? "" : drag.Induced > drag.Section
                ? "Most of it goes with the side force: a deeper, narrower fin helps most."
                : "Most of it is friction: a smaller or smoother fin helps most.",
        };
    }

    // Only where the formula reaches: elsewhere there is nothing to hold the lifting surface against.
    private static IEnumerable<Verdict> SecondOpinion(FinAfloat afloat)
    {
        if (afloat.Slope is not { Formula: double formula } slope)
            yield break;
        yield return new TwoOpinions("lift-opinion", "side force for leeway, by lifting surface and by a formula", slope.Surface, formula, FormulaRange)
        {
            Certainty = Certainty.Published,
            HowSure = "The formula (Whicker and Fehlner 1958) follows measured rudders of aspect ratio 1 to 3 and little sweep, with square or faired tips; it knows neither twist and camber nor your sections.",
            Found = $"On an endless wall the lifting surface gives {slope.Surface:0.00} per radian, the formula {formula:0.00}, at an effective aspect ratio of {slope.Aspect:0.0} and {Degrees(slope.Sweep):0}° of sweep.",
            Change = "Look at outline and sections for something odd; take leeway and stall as rougher than stated.",
        }.Verdict;
    }

    private static Verdict CentreOfEffort(FinAfloat afloat, FinAfloat? reference, string? referenceName)
    {
        const string code = "centre-of-effort", what = "shift of the centre of effort against a fin you know", why = "A fin whose load sits farther aft or forward turns the board out of the balance that you are used to.";
        if (afloat[LoadCaseKind.Cruise]?.UnderHull.Result.CentreOfEffort is not { } own)
            return WithoutFlow(code, what, why, afloat);
        if (reference is null)
            return Unknown(code, what, why, $"The load at cruise acts {1e3 * own.Y:0} mm below the hull and {Aft(1e3 * (own.X - afloat.BoxMiddle))} the middle of the box. There is no fin to compare it with.", "Compare it with the design of a fin that you know; on the command line: --against.") with { Ground = "no-reference" };
        if (reference[LoadCaseKind.Cruise]?.UnderHull.Result.CentreOfEffort is not { } other)
            return Unknown(code, what, why, $"The flow over {referenceName} was not worked out.", reference.Problem ?? "Check the design of the reference fin.") with { Ground = "reference" };
        double shift = 1e3 * (own.X - afloat.BoxMiddle - other.X + reference.BoxMiddle);
        VerdictState state = Below(Math.Abs(shift), TightShiftMm, GreatestShiftMm);
        double uncertainty = 1e3 * ShiftUncertaintyShare * afloat.Planform.MeanChord;
        return new()
        {
            Code = code,
            Checked = what,
            State = state,
            Value = new(Math.Abs(shift), "mm", 0),
            Limit = new(GreatestShiftMm, "mm", 0),
            Uncertainty = new(uncertainty, "mm", 0),
            Certainty = Certainty.Judgement,
            HowSure = "The difference of two like computations is good to a few millimetres. Places are measured from the middle of the box. The limit is judgement.",
            Found = $"The load at cruise acts {Math.Abs(shift):0} mm {(shift >= 0 ? "farther aft" : "farther forward")} than on {referenceName}, and {1e3 * Math.Abs(own.Y - other.Y):0} mm {(own.Y >= other.Y ? "deeper" : "less deep")}.",
            Why = why,
            Ground = shift > 0 ? "aft" : "forward",
            Change = state == VerdictState.Holds ? "" : shift > 0
                ? "Less rake, or the base farther forward in the box, brings it back; or move the mast foot aft."
                : "More rake, or the base farther aft in the box, brings it back; or move the mast foot forward.",
        };
    }

    private static string Aft(double mm) => mm >= 0 ? $"{mm:0} mm aft of" : $"{-mm:0} mm ahead of";

    private static double Degrees(double radians) => double.RadiansToDegrees(Math.Abs(radians));
}
