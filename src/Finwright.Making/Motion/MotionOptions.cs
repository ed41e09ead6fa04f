using Finwright.Numerics;

namespace Finwright.Making.Motion;

/// <summary>What a motion file does not say of itself and its reader must be told. SI.</summary>
public sealed record MotionOptions
{
    /// <summary>Diameter of the filament, metres; only used where plastic is given as a length.</summary>
    public double FilamentDiameter { get; init; } = 1.75e-3;

    /// <summary>Whether the E words are a volume (mm³) instead of a length of filament (mm). A word M200 in the file overrides it.</summary>
    public bool ExtrusionIsVolume { get; init; }

    /// <summary>Acceleration of the head, m/s²; 1 is common practice, no source.</summary>
    public double Acceleration { get; init; } = 1;

    /// <summary>Change of velocity that the head makes at a corner without slowing down, m/s; 0.008 is common practice, no source.</summary>
    public double CornerSpeed { get; init; } = 0.008;

    /// <summary>Lines that stop this printer besides the usual words, as they stand in the file.</summary>
    public IReadOnlyList<string> StopLines { get; init; } = [];

    /// <summary>The options, when each of them can be used.</summary>
    /// <exception cref="ArgumentException">One of them is not a positive number.</exception>
    internal MotionOptions Checked()
    {
        Require.Positive(FilamentDiameter);
        Require.Positive(Acceleration);
        Require.Positive(CornerSpeed);
        return this;
    }
}
