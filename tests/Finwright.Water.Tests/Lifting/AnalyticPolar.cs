using Finwright.Water.Polars;

namespace Finwright.Water.Tests.Lifting;

/// <summary>A section in closed form: cubic lift up to its peak, then falling towards a stalled plate; quadratic drag.</summary>
/// <param name="slope">Lift slope per radian at zero lift.</param>
/// <param name="stall">Angle from zero lift to the peak, radians; infinite for a section that never stalls and lifts along a straight line.</param>
/// <param name="zeroLift">Angle of zero lift, radians.</param>
/// <param name="cd">Drag coefficient at zero lift.</param>
internal sealed class AnalyticPolar(double slope, double stall = double.PositiveInfinity, double zeroLift = 0, double cd = 0, double cm = 0) : ISectionPolar
{
    private const double Fall = 0.08;

    public double Peak => 2.0 / 3 * slope * stall;

    public SectionForces At(double angleOfAttack, double reynoldsNumber)
    {
        double s = angleOfAttack - zeroLift, size = Math.Abs(s);
        if (double.IsPositiveInfinity(stall))
            return new(slope * s, cd, cm, -1, 1, PolarOrigin.Solved);
        double cl, drag = cd + 0.01 * s * s / (stall * stall);
        if (size <= stall)
        {
            cl = slope * s * (1 - s * s / (3 * stall * stall));
            return new(cl, drag, cm, -1, 1, PolarOrigin.Solved);
        }

        double over = (size - stall) / Fall, rest = Math.Exp(-over * over);
        cl = Plate(size) + (Peak - Plate(stall)) * rest;
        drag += 2 * Math.Sin(size) * Math.Sin(size) * (1 - rest);
        return new(Math.CopySign(cl, s), drag, cm, -1, 0.1, PolarOrigin.Stalled);
    }

    public SectionStall StallAt(double reynoldsNumber, bool positive)
    {
        double sign = positive ? 1 : -1;
        return double.IsPositiveInfinity(stall)
            ? new(sign * Math.PI / 2, sign * slope * Math.PI / 2, true)
            : new(sign * stall + zeroLift, sign * Peak, true);
    }

    private static double Plate(double angle) => 0.75 * Math.Sin(2 * angle);
}
