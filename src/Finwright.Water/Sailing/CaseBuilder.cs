using Finwright.Numerics;

namespace Finwright.Water.Sailing;

/// <summary>Makes the load cases from the balance at cruise.</summary>
/// <param name="brief">Rider, rig, board, speeds; checked.</param>
/// <param name="estimates">What differs between cases; checked.</param>
/// <param name="cruise">The balance at cruise.</param>
/// <param name="stanceUncertainty">Relative uncertainty of the derived side force.</param>
internal sealed class CaseBuilder(SailingBrief brief, CaseEstimates estimates, RollBalance cruise, double stanceUncertainty)
{
    // A given force at cruise moves the other cases in the same proportion; what stance and sail leave open is then settled.
    private double Scale => brief.GivenSideForce is double given ? given / cruise.FinSideForce : 1;

    private double Open => brief.GivenSideForce is null ? stanceUncertainty : 0;

    private string Given => brief.GivenSideForce is null ? "" : " Scaled to the side force that you gave for cruise.";

    public LoadCase GettingGoing()
    {
        RollBalance upright = cruise with { HangOut = estimates.GettingGoingHangOut * brief.HangOut, RigLean = 0, FinShare = estimates.GettingGoingFinShare };
        double turned = Turned(estimates.GettingGoingForceAngle), mean = turned * upright.FinSideForce, force = estimates.PumpingFactor * mean;
        return Case(LoadCaseKind.GettingGoing, "getting going", brief.GettingGoingSpeed, force, 1 / estimates.PumpingFactor, estimates.PumpingFactorHigh / estimates.PumpingFactor) with
        {
            Purpose = "Least speed under load: does the fin stall or let go before the board planes?",
            Derivation = $"Rider upright with {estimates.GettingGoingHangOut:0.##} of the full hang-out and the rig upright, borne away so that {turned:0.00} of the side force is left, gives a mean of {mean * Scale:0} N on the fin, which carries {estimates.GettingGoingFinShare:0.##} of it (the hull the rest); pumping peaks at {estimates.PumpingFactor:0.##} times the mean. In little wind the sail gives less. The shares are judgement.{Given}",
            Certainty = Certainty.Judgement,
        };
    }

    public LoadCase Cruise() => Case(LoadCaseKind.Cruise, "cruise", brief.CruiseSpeed, cruise.FinSideForce, 1, 1) with
    {
        RigLean = estimates.CruiseRigLean,
        SailLift = Scale * cruise.SailLift,
        Purpose = "The usual load: leeway, drag, and the reserve before stall.",
        Derivation = brief.GivenSideForce is null
            ? $"Rider fully hung out against the sail's height of effort and the fin's depth; the rig leans {Degrees(estimates.CruiseRigLean)} degrees to windward (judgement). The fin carries all."
            : $"Given by you. Rider and sail would give {cruise.FinSideForce:0} N.",
        Certainty = Certainty.Derived,
    };

    public LoadCase TopSpeed()
    {
        double turned = Turned(estimates.TopForceAngle);
        RollBalance leaning = cruise with { RigLean = estimates.TopRigLean };
        double force = turned * leaning.FinSideForce;
        double bound = Math.Max(cruise.FinSideForce / force, 1);
        return Case(LoadCaseKind.TopSpeed, "top speed", brief.TopSpeed, force, Math.Min(estimates.TopShareLow * cruise.FinSideForce / force, 1), bound) with
        {
            RigLean = estimates.TopRigLean,
            SailLift = Scale * turned * leaning.SailLift,
            Purpose = "Greatest dynamic pressure: cavitation, ventilation, friction, twist.",
            Derivation = $"Bearing away turns the sail's force from {Degrees(estimates.CruiseForceAngle)} to {Degrees(estimates.TopForceAngle)} degrees ahead of athwartships, so {turned:0.00} of the side force is left; the rig leans {Degrees(estimates.TopRigLean)} degrees and takes weight off the hull. Angles are judgement; the side force at cruise is the upper bound, since the rider's leverage is the same.{Given}",
            Certainty = Certainty.Judgement,
        };
    }

    public LoadCase Overload() => Case(
        LoadCaseKind.Overload,
        "overload",
        brief.CruiseSpeed,
        estimates.OverloadFactor * cruise.FinSideForce,
        estimates.OverloadFactorLow / estimates.OverloadFactor,
        estimates.OverloadFactorHigh / estimates.OverloadFactor) with
    {
        RigLean = estimates.CruiseRigLean,
        SailLift = Scale * cruise.SailLift,
        Purpose = "A gust, chop or a landing for a moment: strength of fin and joint, and whether the fin stalls first. A fin that stalls first never sees this load.",
        Derivation = $"{estimates.OverloadFactor:0.##} times the side force at cruise, at cruise speed. {estimates.OverloadFactorLow:0.##} to 2 is judgement; makers design for 2 to {estimates.OverloadFactorHigh:0.##} (common practice, no source).{Given}",
        Certainty = Certainty.Judgement,
    };

    public LoadCase Grounding()
    {
        double mass = brief.BoardMass + brief.RigMass + estimates.GroundingRiderShare * brief.RiderMass;
        return Case(LoadCaseKind.Grounding, "grounding", brief.GettingGoingSpeed, 0, 1, 1) with
        {
            ImpactForce = mass * estimates.GroundingDeceleration,
            Purpose = "The tip strikes ground: root joint, bolts and box. For the structure only; the water does not matter.",
            Derivation = $"Board, rig and {estimates.GroundingRiderShare:P0} of the rider ({mass:0} kg in all) brought to rest at {estimates.GroundingDeceleration:0} m/s², pushing aft at the tip. Pure judgement: a rock stops a board harder, sand softer; half to twice this is possible.",
            Certainty = Certainty.Judgement,
        };
    }

    // The rider's weight balances the whole horizontal force of the sail; bearing away turns part of it from side to drive.
    private double Turned(double forceAngle) => Math.Cos(forceAngle) / Math.Cos(estimates.CruiseForceAngle);

    private static string Degrees(double radians) => $"{radians * 180 / Math.PI:0}";

    /// <summary>A case whose side force may lie between two factors of it, widened by what stance and sail leave open.</summary>
    private LoadCase Case(LoadCaseKind kind, string name, double speed, double derived, double low, double high)
    {
        double force = Scale * derived;
        double below = Math.Sqrt(Open * Open + (1 - low) * (1 - low)), above = Math.Sqrt(Open * Open + (high - 1) * (high - 1));
        return new()
        {
            Kind = kind,
            Name = name,
            Speed = speed,
            SideForce = force,
            SideForceLow = force * Math.Max(1 - below, 0),
            SideForceHigh = force * (1 + above),
            DerivedSideForce = derived,
            Purpose = "",
            Derivation = "",
            Certainty = Certainty.Judgement,
        };
    }
}
