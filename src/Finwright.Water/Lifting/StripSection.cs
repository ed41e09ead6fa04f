using Finwright.Water.Polars;

namespace Finwright.Water.Lifting;

/// <summary>What the section of one strip answers at an angle, in the plane square to the quarter-chord line.</summary>
/// <remarks>
/// Simple sweep theory: the section sees the part of the stream square to the quarter-chord line, so lift goes with cos²Λ, the Reynolds number of speed and chord with cos²Λ.
/// Friction acts with the whole stream; what drag has beyond its value at no angle goes with cos³Λ. Raked fins hold on a little longer inboard than this, since the boundary layer drains toward the tip: the onset of stall is what
/// is meant, side force beyond it is on the low side. Where a leading-edge vortex rolls up, the section does not stall: its lift goes on
/// along its slope, and the suction it can no longer hold is handed to the vortex.
/// </remarks>
internal readonly struct StripSection(ISectionPolar polar, double reynolds, double cosSweep, double vortexShare, double camberAngle)
{
    // Small against the distance between points of a polar, large against rounding.
    private const double SlopeStep = 0.1 * Math.PI / 180;

    public double Cl(double angle)
    {
        double own = polar.At(angle, reynolds).Cl;
        if (vortexShare is 0)
            return own;
        SectionStall stall = polar.StallAt(reynolds, angle + camberAngle >= 0);
        if (Math.Abs(angle + camberAngle) <= Math.Abs(stall.AngleOfAttack + camberAngle))
            return own;
        double half = (stall.AngleOfAttack - camberAngle) / 2;
        double slope = (polar.At(half, reynolds).Cl - polar.At(-camberAngle, reynolds).Cl) / (half + camberAngle);
        double on = stall.Cl + slope * (angle - stall.AngleOfAttack);
        return own + vortexShare * (on - own);
    }

    public double Slope(double angle) => (Cl(angle + SlopeStep) - Cl(angle - SlopeStep)) / (2 * SlopeStep);

    public SectionStall StallOn(bool positive) => polar.StallAt(reynolds, positive);

    /// <summary>Angle from zero lift over the same at the peak of lift: 1 where stall begins.</summary>
    public double StallShare(double angle)
    {
        double from = angle + camberAngle;
        double to = polar.StallAt(reynolds, from >= 0).AngleOfAttack + camberAngle;
        return to != 0 ? Math.Max(from / to, 0) : 0;
    }

    public SectionForces Forces(double angle) => polar.At(angle, reynolds);

    /// <summary>Drag coefficient on the whole stream.</summary>
    public double Cd(double angle)
    {
        double still = polar.At(-camberAngle, reynolds).Cd, own = polar.At(angle, reynolds).Cd;
        if (vortexShare > 0)
        {
            double at = StallShare(angle) > 1 ? polar.StallAt(reynolds, angle + camberAngle >= 0).AngleOfAttack : angle;
            own += vortexShare * (polar.At(at, reynolds).Cd - own);
        }

        return still + (own - still) * cosSweep * cosSweep * cosSweep;
    }
}
