using System.Text.Json.Serialization;

namespace Finwright.Assessment.Packing;

/// <summary>What every answer about a design begins with.</summary>
/// <param name="Kind">Says what the file is.</param>
/// <param name="Layout">Version of the layout; raised when a field changes its meaning or goes.</param>
public abstract record DesignAnswer([property: JsonPropertyOrder(-6)] string Kind, [property: JsonPropertyOrder(-5)] int Layout = 1)
{
    /// <summary>Name and version of the program.</summary>
    [JsonPropertyOrder(-4)]
    public required string MadeBy { get; init; }

    /// <summary>Name of fin or part; null when the input could not be read.</summary>
    [JsonPropertyOrder(-3)]
    public required string? Name { get; init; }

    /// <summary>SHA-256 of the design's content; empty for a part that came as a mesh.</summary>
    [JsonPropertyOrder(-2)]
    public required string DesignSha256 { get; init; }

    /// <summary>The answer in plain words.</summary>
    [JsonPropertyOrder(-1)]
    public required string Sentence { get; init; }
}
