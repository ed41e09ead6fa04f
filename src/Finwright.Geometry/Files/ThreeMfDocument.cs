namespace Finwright.Geometry.Files;

/// <summary>What a 3MF file carries: parts laid out on a bed, and what they are.</summary>
/// <param name="Title">Name of the whole.</param>
/// <param name="Parts">The parts in order; at least one.</param>
public sealed record ThreeMfDocument(string Title, IReadOnlyList<ThreeMfPart> Parts)
{
    /// <summary>Facts about the design under names of our own, for example <c>DesignHash</c>: a letter, then letters, digits, "_" or "-"; no name twice.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Notes { get; init; } = [];

    /// <summary>A picture of the parts in PNG form; none when null.</summary>
    public byte[]? Thumbnail { get; init; }
}

/// <summary>One part to print.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="Mesh">Closed, outward-facing mesh in the attitude in which it is printed, z up; metres.</param>
/// <param name="Placement">Where it lies on the bed: a rotation and a shift, no mirror.</param>
public sealed record ThreeMfPart(string Name, TriangleMesh Mesh, Placement Placement);
