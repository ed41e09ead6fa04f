using Finwright.Numerics;

namespace Finwright.Strength.Materials;

/// <summary>Where a number of a material comes from.</summary>
/// <param name="Certainty">How sure it is.</param>
/// <param name="Text">The source in words.</param>
public sealed record MaterialSource(Certainty Certainty, string Text);

/// <summary>A material with ranges and sources: typical values to start from. A maker's data sheet of the very material in hand goes before them.</summary>
public abstract record Material
{
    /// <summary>Short name in small letters, by which it is found.</summary>
    public required string Name { get; init; }

    /// <summary>Name for people.</summary>
    public required string Title { get; init; }

    /// <summary>What to know when using it.</summary>
    public required string Remark { get; init; }

    /// <summary>Source of each number, by the name of its field in the file.</summary>
    public required IReadOnlyDictionary<string, MaterialSource> Sources { get; init; }

    /// <summary>Density, kg/m³.</summary>
    public required Ranged Density { get; init; }
}
