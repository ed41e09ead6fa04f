using Finwright.Assessment.Loaded;
using Finwright.Numerics;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Joints;
using Finwright.Strength.Materials;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Verdicts;

/// <summary>Whether the joint between blade and base stays closed and its bolts, nuts and rods hold.</summary>
internal static class JointVerdicts
{
    // Judgement: a joint that opens at cruise pumps water and works loose; beyond nine tenths of that load play shows.
    private const double TightShare = 0.9;

    // As for plastic that was not tested, on the load of a gust.
    private const double LeastReserve = 1.5, AmpleReserve = 2;

    // More than this is not worth telling apart.
    private const double MostReserve = 99;

    private const string OpeningWhy = "A joint that opens pumps water and air, hums, and works its bolts loose until they give.";

    public static IEnumerable<Verdict> Of(FinLoaded loaded)
    {
        if (loaded.Structure is not { } structure)
            yield break;
        if (structure.Root.Joint is not null && loaded[LoadCaseKind.Cruise] is { } cruise)
            yield return Opening(structure, cruise);
        if (structure.Root.Joint is not null && loaded[LoadCaseKind.Overload] is { } overload)
            yield return Hold(structure, overload);
        if (loaded[LoadCaseKind.Overload] is { Base: { } inBox } worst)
            yield return Base(structure, worst, inBox);
        foreach (NutTorque torque in loaded.Torques.Where(own => !own.Advice.IsPossible).Take(1))
            yield return Torque(torque);
    }

    private static Verdict Opening(FinStructure structure, CaseLoaded cruise)
    {
        JointState state = cruise.Joint!;
        double share = 1 / structure.Root.Joint!.OpeningFactor(new(cruise.RootMoment, 0, 0));
        bool bonded = state.Status is JointStatus.Bonded;
        VerdictState verdict = !state.HasAnswer ? VerdictState.Fails : bonded ? VerdictState.Tight : WaterVerdicts.Below(share, TightShare, 1);
        string found = !state.HasAnswer
            ? "Nothing holds the joint under the load at cruise: it falls open."
            : bonded ? $"Bolts alone would let the joint open; the bond holds it with {1e-6 * state.BondStress:0.0} MPa of pull at its edge."
            : $"A moment of {cruise.RootMoment:0} N·m at the hull leaves {100 * state.ContactShare:0} % of the face in contact; the gap on the other side is {1e3 * state.Gap:0.00} mm.";
        return new()
        {
            Code = "joint-opening",
            Checked = "moment at cruise over the moment that opens the joint",
            State = verdict,
            Value = double.IsFinite(share) ? new(share, "", 2) : null,
            // Faces that are bonded may be asked for more than bolts alone would hold.
            Limit = bonded ? null : new(1, "", 0),
            Uncertainty = double.IsFinite(share) ? new(0.4 * share, "", 2) : null,
            Certainty = Certainty.Judgement,
            HowSure = "The pull of hand-tight bolts varies by half either way, and printed faces are not plane to a hundredth: the first turn of a real joint is softer.",
            Found = found,
            Why = OpeningWhy,
            Change = verdict == VerdictState.Holds ? "" : "Widen the root, tighten within the advised torque, add a clamp rod, bond the faces, or print blade and base as one.",
        };
    }

    private static Verdict Hold(FinStructure structure, CaseLoaded overload)
    {
        JointState state = overload.Joint!;
        const string code = "joint-hold", what = "reserve of bolts, nuts and rods across the joint, in a gust or landing", why = "When the first bolt, nut or rod lets go, the blade is lost.";
        const string change = "Add or thicken bolts or rods, seat the nuts deeper, let rods reach farther into the base, or bond the faces.";
        if (!state.HasAnswer)
            return WaterVerdicts.Unknown(code, what, why, "Nothing holds the joint under this load: it falls open.", change) with { State = VerdictState.Fails, Ground = "ties" };
        if (state.Status is JointStatus.Bonded)
            return Bond(structure, state, structure.Root.UnderWithoutBond(overload.RootMoment)!);
        (double reserve, int worst) = Reserve(structure, state);
        Ranged strength = structure.TieStrengthRange(worst);
        VerdictState verdict = reserve < LeastReserve ? VerdictState.Fails : reserve < AmpleReserve ? VerdictState.Tight : VerdictState.Holds;
        return new()
        {
            Code = code,
            Ground = "ties",
            Checked = what,
            State = verdict,
            Value = new(reserve, "", 1),
            Limit = new(LeastReserve, "", 1),
            MustStayAbove = true,
            Uncertainty = new(0.4 * reserve, "", 1),
            Certainty = Certainty.Judgement,
            HowSure = "Pull-out of nuts from prints is an estimate from the strength between layers; tests of other prints lie within a factor of two. Makers' data of bolts go before it.",
            Found = $"The {structure.Root.Ties[worst].Name} pulls with {Math.Abs(state.Tensions[worst]):0} N and gives at about {strength.Value:0} N ({strength.Low:0} to {strength.High:0}).",
            Why = why,
            Change = verdict == VerdictState.Holds ? "" : change,
        };
    }

    // Of the bolt, nut or rod that gives first, and which.
    private static (double Reserve, int Worst) Reserve(FinStructure structure, JointState state) =>
        Enumerable.Range(0, state.Tensions.Count)
            .Select(i => (Reserve: Math.Min(structure.TieStrength(i) / Math.Max(Math.Abs(state.Tensions[i]), 1e-9), MostReserve), i))
            .MinBy(own => own.Reserve);

    // A blade is lost when both have given: the bond, and then bolts and rods.
    private static Verdict Bond(FinStructure structure, JointState state, JointState whenGiven)
    {
        Ranged strength = structure.Materials.FaceBond;
        double ties = whenGiven.HasAnswer ? Reserve(structure, whenGiven).Reserve : 0;
        double reserve = Math.Max(Math.Min(strength.Value / Math.Max(state.BondStress, 1), MostReserve), ties);
        VerdictState verdict = reserve < LeastReserve ? VerdictState.Fails : reserve < AmpleReserve ? VerdictState.Tight : VerdictState.Holds;
        return new()
        {
            Code = "joint-hold",
            Ground = "bond",
            Checked = "reserve of the bonded joint, in a gust or landing",
            State = verdict,
            Value = new(reserve, "", 1),
            Limit = new(LeastReserve, "", 1),
            MustStayAbove = true,
            Uncertainty = new(0.5 * reserve, "", 1),
            Certainty = Certainty.Judgement,
            HowSure = "What resin holds between printed faces is judgement; abraded, degreased and wetted faces hold more, greasy ones nothing.",
            Found = $"The bond is pulled with {1e-6 * state.BondStress:0.0} MPa at its edge and bears about {1e-6 * strength.Value:0.0} MPa ({1e-6 * strength.Low:0.0} to {1e-6 * strength.High:0.0}). When it gives, bolts and rods alone {(ties > 0 ? $"hold with a reserve of {ties:0.0}" : "do not hold the blade")}.",
            Why = "A bond gives all at once; then bolts and rods alone hold the blade.",
            Change = verdict == VerdictState.Holds ? "" : "Widen the root or its flange, add rods across the joint, or print blade and base as one.",
        };
    }

    private static Verdict Base(FinStructure structure, CaseLoaded overload, BaseInBoxState state)
    {
        PrintedPlastic printed = structure.Materials.Printed;
        Ranged strength = structure.Root.BaseLies ? printed.StrengthAlong : printed.StrengthAcross;
        double stress = Math.Max(state.GreatestBendingStress, Math.Max(state.HullEdgePressure, state.TopEdgePressure)), reserve = Math.Min(strength.Value / stress, MostReserve);
        VerdictState verdict = reserve < LeastReserve ? VerdictState.Fails : reserve < AmpleReserve ? VerdictState.Tight : VerdictState.Holds;
        return new()
        {
            Code = "base",
            Checked = "reserve of the base in its box, in a gust or landing",
            State = verdict,
            Value = new(reserve, "", 1),
            Limit = new(LeastReserve, "", 1),
            MustStayAbove = true,
            Uncertainty = new(0.3 * reserve, "", 1),
            Certainty = Certainty.Judgement,
            HowSure = "The base is taken as one solid that bears on the box along its sides; bores weaken it, a tight fit helps it. What the box itself bears only its maker knows.",
            Found = $"{overload.RootMoment:0} N·m bend the base with {1e-6 * state.GreatestBendingStress:0.0} MPa {1e3 * state.GreatestBendingAt:0} mm inside the box; it presses on the box with {1e-6 * state.HullEdgePressure:0.0} MPa at the hull edge and {1e-6 * state.TopEdgePressure:0.0} MPa at the top.",
            Why = "A base that breaks leaves its upper half, and the bolts, in the board.",
            Change = verdict == VerdictState.Holds ? "" : "Print the base lying, let carbon rods reach into it, or take a wider box.",
        };
    }

    private static Verdict Torque(NutTorque own) => new()
    {
        Code = "tightening",
        Checked = "torque that closes the joint over the torque that something bears",
        State = VerdictState.Tight,
        Value = new(own.Advice.Least, "N·m", 1),
        Limit = new(own.Advice.Greatest, "N·m", 1),
        Certainty = Certainty.Judgement,
        HowSure = "Friction of threads varies by half either way.",
        Found = $"{own.Name}: {own.Advice.Reason}",
        Why = "Over-tightening spreads the base in its box, or pulls the nut out; under-tightening lets the joint open.",
        Change = "Seat the nut deeper, give it more print at its sides, or take more bolts.",
    };
}
