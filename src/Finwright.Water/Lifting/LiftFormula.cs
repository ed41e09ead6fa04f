namespace Finwright.Water.Lifting;

/// <summary>Lift slope of a fin by a formula fitted to measured control surfaces: a second opinion that knows nothing of lattices and panels.</summary>
/// <remarks>Whicker and Fehlner (1958), DTMB 933, eq. [1]: dCL/dα = a0 a / (cosΛ √(a² / cos⁴Λ + 4) + a0 / π), with a section slope a0 of 0.9 times 2π, a the effective aspect ratio, Λ the sweep of the quarter chords.</remarks>
public static class LiftFormula
{
    /// <summary>Least and greatest effective aspect ratio at which it is asked: those of the measured series, 1 to 3, and what its form carries beyond (judgement).</summary>
    public const double LeastAspect = 0.8, GreatestAspect = 8;

    /// <summary>Greatest sweep at which it is asked, radians (30 degrees): the measured series ends at 11, beyond 30 the leading-edge vortex carries (judgement).</summary>
    public const double GreatestSweep = 30 * Math.PI / 180;

    private const double SectionSlope = 0.9 * 2 * Math.PI;

    /// <summary>Lift slope of a fin on a wall, per radian on the area of the fin.</summary>
    /// <param name="aspect">Effective aspect ratio: twice span² over area.</param>
    /// <param name="sweep">Sweep of the quarter-chord line, radians.</param>
    /// <returns>The slope; null where the formula does not reach.</returns>
    public static double? SlopeOnWall(double aspect, double sweep)
    {
        if (!(aspect >= LeastAspect && aspect <= GreatestAspect && Math.Abs(sweep) <= GreatestSweep))
            return null;
        double cos = Math.Cos(sweep);
        return SectionSlope * aspect / (cos * Math.Sqrt(aspect * aspect / (cos * cos * cos * cos) + 4) + SectionSlope / Math.PI);
    }
}
