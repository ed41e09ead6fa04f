namespace Finwright.Water.Sections;

/// <summary>The stream and the surface that a section works in.</summary>
public sealed record SectionConditions
{
    /// <summary>Reynolds number on the chord.</summary>
    public required double ReynoldsNumber { get; init; }

    /// <summary>Amplification exponent n at which a laminar layer becomes turbulent: about 9 in a quiet tunnel, 4 to 6 in chop.</summary>
    public double CriticalAmplification { get; init; } = 9;

    /// <summary>Finish of the upper (starboard) side.</summary>
    public SideFinish Upper { get; init; } = SideFinish.Smooth;

    /// <summary>Finish of the lower (port) side.</summary>
    public SideFinish Lower { get; init; } = SideFinish.Smooth;
}
