using Finwright.Numerics;

namespace Finwright.Water.Sailing;

/// <summary>The side force that the rider's weight can balance: steady, hull flat on the water.</summary>
/// <remarks>
/// <para>
/// Across the board: sail side force F = fin + hull. In roll about the mast foot, with the rig leaning to windward by θ:
/// F z/cos θ + s F d = g (m y + m_rig h sin θ), where z is the sail's height of effort along the mast, d the depth of the fin's load, s the
/// fin's share of F, m and y mass and hang-out of the rider, m_rig and h mass and centre height of the rig. Our own derivation from statics.
/// </para>
/// <para>
/// Assumed: no roll acceleration; the hull's lift acts on the centre line (see <see cref="HullLiftOffset"/>); the hull's own side force acts at
/// the waterline; mast foot on the centre line at the height of the hull plane; the rider's pull is square to the board's centre line.
/// </para>
/// </remarks>
public sealed record RollBalance
{
    /// <summary>Mass of the rider, kg.</summary>
    public required double RiderMass { get; init; }

    /// <summary>Distance of the rider's centre of mass from the centre line, m.</summary>
    public required double HangOut { get; init; }

    /// <summary>Height of the sail's centre of effort along the mast, m.</summary>
    public required double SailEffortHeight { get; init; }

    /// <summary>Depth of the fin's load below the hull, m.</summary>
    public required double FinEffortDepth { get; init; }

    /// <summary>Share of the side force that the fin carries, 0 to 1; the hull carries the rest.</summary>
    public double FinShare { get; init; } = 1;

    /// <summary>Lean of the rig to windward, radians, 0 to 60 degrees.</summary>
    public double RigLean { get; init; }

    /// <summary>Mass of the rig, kg.</summary>
    public double RigMass { get; init; }

    /// <summary>Height of the rig's centre of mass along the mast, m.</summary>
    public double RigCentreHeight { get; init; }

    /// <summary>
    /// Distance of the hull's lift from the centre line, m, positive to leeward. The rider's weight then has a longer arm. 0 for a flat board.
    /// </summary>
    public double HullLiftOffset { get; init; }

    /// <summary>Mass of the board, kg; only counts with <see cref="HullLiftOffset"/>.</summary>
    public double BoardMass { get; init; }

    /// <summary>Side force of the sail, N: what fin and hull together carry.</summary>
    public double SideForce
    {
        get
        {
            Check();
            // The hull carries all weight less the sail's upward pull F tan θ, at its offset.
            double weight = PhysicalConstants.Gravity * (RiderMass + RigMass + BoardMass);
            double moment = PhysicalConstants.Gravity * (RiderMass * HangOut + RigMass * RigCentreHeight * Math.Sin(RigLean)) + weight * HullLiftOffset;
            double arm = SailEffortHeight / Math.Cos(RigLean) + FinShare * FinEffortDepth + HullLiftOffset * Math.Tan(RigLean);
            return moment / arm;
        }
    }

    /// <summary>Side force on the fin, N.</summary>
    public double FinSideForce => FinShare * SideForce;

    /// <summary>Part of the weight that the leaning sail carries, N.</summary>
    public double SailLift => SideForce * Math.Tan(RigLean);

    private void Check()
    {
        Require.Positive(RiderMass);
        Require.Positive(HangOut);
        Require.Positive(SailEffortHeight);
        Require.NotNegative(FinEffortDepth);
        Require.Between(FinShare, 0, 1);
        Require.Between(RigLean, 0, Math.PI / 3);
        Require.NotNegative(RigMass);
        Require.NotNegative(RigCentreHeight);
        Require.NotNegative(BoardMass);
        Require.Between(HullLiftOffset, -HangOut / 2, HangOut / 2);
    }
}
