namespace Finwright.Water.Sections;

/// <summary>What a section does at one angle of attack. Forces per chord and dynamic pressure; places in chords from the nose.</summary>
public sealed record SectionPoint
{
    /// <summary>Angle of attack, radians.</summary>
    public required double AngleOfAttack { get; init; }

    /// <summary>Whether the coupled equations were solved; when not, no number below means anything.</summary>
    public required bool Converged { get; init; }

    /// <summary>
    /// Whether the suction peak is higher than measured sections bear before the flow lets go at the nose; the numbers then solve the equations,
    /// but the section has stalled. See <see cref="NoseStall"/>.
    /// </summary>
    public bool IsPastNoseStall { get; init; }

    /// <summary>Whether the numbers below may be used.</summary>
    public bool IsUsable => Converged && !IsPastNoseStall;

    /// <summary>Newton steps taken.</summary>
    public int Iterations { get; init; }

    /// <summary>Lift coefficient.</summary>
    public double Cl { get; init; }

    /// <summary>Drag coefficient.</summary>
    public double Cd { get; init; }

    /// <summary>The part of <see cref="Cd"/> that is skin friction; the rest is pressure.</summary>
    public double CdFriction { get; init; }

    /// <summary>Moment coefficient about the quarter chord, positive nose up.</summary>
    public double Cm { get; init; }

    /// <summary>Where the layer of the upper side turns turbulent, x/c; 1 when it stays laminar to the trailing edge.</summary>
    public double TransitionUpper { get; init; }

    /// <summary>Where the layer of the lower side turns turbulent, x/c.</summary>
    public double TransitionLower { get; init; }

    /// <summary>Where the turbulent layer of the upper side leaves the surface for good, x/c; 1 when it does not. A closed laminar bubble does not count.</summary>
    public double SeparationUpper { get; init; }

    /// <summary>Where the turbulent layer of the lower side leaves the surface for good, x/c; 1 when it does not.</summary>
    public double SeparationLower { get; init; }

    /// <summary>Lowest pressure coefficient on the section.</summary>
    public double MinimumCp { get; init; }

    /// <summary>Place of the lowest pressure, x/c.</summary>
    public double MinimumCpAt { get; init; }

    /// <summary>The surface in detail; null when it was not asked for.</summary>
    public SectionSurface? Surface { get; init; }
}
