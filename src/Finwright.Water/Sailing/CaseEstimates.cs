using Finwright.Numerics;

namespace Finwright.Water.Sailing;

/// <summary>What differs from case to case, beyond the brief: estimates with their reasons, all open to change.</summary>
/// <remarks>No measurement of a sailboard's side force was found; each number is a judgement unless it says otherwise.</remarks>
public sealed record CaseEstimates
{
    /// <summary>
    /// Hang-out when getting going as a share of the full one: standing nearly upright, not yet in the outer straps, about 0.7 m against 0.95 m.
    /// </summary>
    public double GettingGoingHangOut { get; init; } = 0.75;

    /// <summary>Peak over mean side force while pumping.</summary>
    public double PumpingFactor { get; init; } = 1.25;

    /// <summary>Highest peak over mean side force while pumping.</summary>
    public double PumpingFactorHigh { get; init; } = 1.5;

    /// <summary>
    /// Fin's share of the side force when getting going. Slender-body theory for a hull of draught t at leeway λ gives a side force
    /// ½ρV² π t² λ: about 13 N at 5 m/s, 60 mm, 5 degrees, a twentieth of the fin's load. Once planing the draught is some millimetres and the
    /// fin carries all; counting nothing for the hull there is on the safe side.
    /// </summary>
    public double GettingGoingFinShare { get; init; } = 0.95;

    /// <summary>Angle of the sail's force ahead of athwartships when getting going, radians: one bears away to plane.</summary>
    public double GettingGoingForceAngle { get; init; } = 30 * Math.PI / 180;

    /// <summary>Lean of the rig to windward at cruise, radians.</summary>
    public double CruiseRigLean { get; init; } = 8 * Math.PI / 180;

    /// <summary>Lean of the rig to windward at top speed, radians.</summary>
    public double TopRigLean { get; init; } = 15 * Math.PI / 180;

    /// <summary>Angle of the sail's force ahead of athwartships at cruise (on a reach), radians.</summary>
    public double CruiseForceAngle { get; init; } = 20 * Math.PI / 180;

    /// <summary>Angle of the sail's force ahead of athwartships at top speed (bearing away), radians.</summary>
    public double TopForceAngle { get; init; } = 35 * Math.PI / 180;

    /// <summary>Least side force at top speed, as a share of that at cruise: well borne away, in a turn, or with the weight aft.</summary>
    public double TopShareLow { get; init; } = 0.6;

    /// <summary>Momentary over steady side force in a gust, in chop, on landing: 1.5 to 2, the upper end for the structure's sake.</summary>
    public double OverloadFactor { get; init; } = 2;

    /// <summary>Lower end of the overload factor.</summary>
    public double OverloadFactorLow { get; init; } = 1.5;

    /// <summary>Upper end of the overload factor. Makers design for 2 to 3 (common practice, no source).</summary>
    public double OverloadFactorHigh { get; init; } = 3;

    /// <summary>Deceleration when the tip strikes, m/s². About five times gravity: from 5 m/s to rest within a quarter of a metre.</summary>
    public double GroundingDeceleration { get; init; } = 50;

    /// <summary>Share of the rider's mass that the fin stops on grounding; the rest flies on.</summary>
    public double GroundingRiderShare { get; init; } = 1.0 / 3;

    /// <summary>How well the hang-out is known, m.</summary>
    public double HangOutUncertainty { get; init; } = 0.1;

    /// <summary>How well the sail's height of effort is known, relative.</summary>
    public double EffortHeightUncertainty { get; init; } = 0.1;

    /// <summary>How far the hull's lift may act beside the centre line, as a share of the board's width.</summary>
    public double HullLiftOffsetShare { get; init; } = 0.05;

    internal void Check()
    {
        Require.Between(GettingGoingHangOut, 0.1, 1);
        Require.Between(PumpingFactor, 1, PumpingFactorHigh);
        Require.Between(PumpingFactorHigh, 1, 5);
        Require.Between(GettingGoingFinShare, 0.1, 1);
        Require.Between(CruiseForceAngle, 0, 1.4);
        Require.Between(GettingGoingForceAngle, CruiseForceAngle, 1.4);
        Require.Between(TopForceAngle, CruiseForceAngle, 1.4);
        Require.Between(TopShareLow, 0, 1);
        Require.Between(OverloadFactorLow, 1, OverloadFactor);
        Require.Between(OverloadFactorHigh, OverloadFactor, 10);
        Require.Positive(GroundingDeceleration);
        Require.Between(GroundingRiderShare, 0, 1);
        Require.NotNegative(HangOutUncertainty);
        Require.Between(EffortHeightUncertainty, 0, 0.5);
        Require.Between(HullLiftOffsetShare, 0, 0.2);
    }
}
