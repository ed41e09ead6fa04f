namespace Finwright.Water.Polars;

/// <summary>What the section at one depth does over angle of attack and Reynolds number, to and past stall.</summary>
public interface ISectionPolar
{
    /// <summary>Forces at an angle of attack.</summary>
    /// <param name="angleOfAttack">Radians, ±π/2.</param>
    /// <param name="reynoldsNumber">On the chord.</param>
    SectionForces At(double angleOfAttack, double reynoldsNumber);

    /// <summary>Where lift peaks on one side.</summary>
    /// <param name="reynoldsNumber">On the chord.</param>
    /// <param name="positive">Peak of positive lift; else of negative lift.</param>
    SectionStall StallAt(double reynoldsNumber, bool positive);
}

/// <summary>Forces on a section, per chord and dynamic pressure.</summary>
/// <param name="Cl">Lift coefficient.</param>
/// <param name="Cd">Drag coefficient.</param>
/// <param name="Cm">Moment coefficient about the quarter chord, positive nose up.</param>
/// <param name="MinimumCp">Lowest pressure coefficient.</param>
/// <param name="Separation">Where the suction side's layer leaves for good, x/c; 1 when attached.</param>
/// <param name="Origin">How the numbers were come by.</param>
public readonly record struct SectionForces(double Cl, double Cd, double Cm, double MinimumCp, double Separation, PolarOrigin Origin);

/// <summary>The peak of lift on one side.</summary>
/// <param name="AngleOfAttack">Radians, signed.</param>
/// <param name="Cl">Lift coefficient there, signed.</param>
/// <param name="IsReached">Whether the computed points pass over the peak; when not, the last computed point stands in and the true peak lies beyond.</param>
public readonly record struct SectionStall(double AngleOfAttack, double Cl, bool IsReached);

/// <summary>How a value of a polar was come by, from best to worst.</summary>
public enum PolarOrigin
{
    /// <summary>Between solved points.</summary>
    Solved,

    /// <summary>Across a point that did not converge.</summary>
    Bridged,

    /// <summary>Beyond the last solved angle, by the stated law for stalled sections.</summary>
    Stalled,

    /// <summary>Beyond the Reynolds numbers or thickness ratios of the table: the nearest edge of the table stands in.</summary>
    BeyondTable,
}
