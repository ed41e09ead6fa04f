namespace Finwright.Strength.Beams;

/// <summary>How the blade resists at one depth, as a beam along the span. SI; x aft, y down the span.</summary>
/// <param name="Y">Depth, m.</param>
/// <param name="BendingRigidity">EI of bending to the side, N m², above 0.</param>
/// <param name="TorsionRigidity">GJ, N m², above 0.</param>
/// <param name="ShearCentre">x of the shear centre, m.</param>
/// <param name="ShearStiffness">Shear stiffness to the side, N, above 0 (5/6 G A for a plate).</param>
public sealed record BeamStation(double Y, double BendingRigidity, double TorsionRigidity, double ShearCentre, double ShearStiffness);

/// <summary>How the sections of the stations were cut.</summary>
public enum BeamCut
{
    /// <summary>Level, at one depth; a beam that is swept by an angle has the cosine of it of each stiffness in its own cross-section.</summary>
    Level,

    /// <summary>Square to the line of shear centres.</summary>
    SquareToAxis,
}

/// <summary>A load on the beam, joined to it at its depth.</summary>
/// <param name="X">Where the force acts, m.</param>
/// <param name="Y">Depth, m.</param>
/// <param name="Force">To starboard, N.</param>
/// <param name="MomentX">Moment about the x direction, N m; positive as from a force to starboard farther down.</param>
/// <param name="MomentY">Moment about the y direction, N m; positive turns the nose to starboard, as a force to starboard farther forward does.</param>
public readonly record struct BeamLoad(double X, double Y, double Force, double MomentX = 0, double MomentY = 0);
