namespace Finwright.Water.Sections;

/// <summary>How one side of a section is finished, as the water sees it. Lengths in chords.</summary>
public sealed record SideFinish
{
    /// <summary>No trip and no roughness.</summary>
    public static SideFinish Smooth { get; } = new();

    /// <summary>Chordwise place of a forced trip, x/c, 0 to 1; null for none. Transition comes here at the latest.</summary>
    public double? TripAt { get; init; }

    /// <summary>Height of the roughness elements k/c; 0 for none. Decides where roughness trips the laminar layer.</summary>
    public double RoughnessHeight { get; init; }

    /// <summary>
    /// Roughness Reynolds number u_k k/ν at which the elements trip: about 600 for single grains, 100 to 250 for ridges across the stream
    /// (Braslow and Knox, 1958, NACA TN 4363; from memory).
    /// </summary>
    public double CriticalRoughnessReynoldsNumber { get; init; } = 600;

    /// <summary>Equivalent sand roughness k_s/c, for the friction of the turbulent layer; 0 for a smooth wall.</summary>
    public double SandRoughness { get; init; }
}
