using Finwright.Geometry;
using Finwright.Making.Layers;
using Finwright.Making.Pores;
using Finwright.Making.Resins;
using Finwright.Making.Voxels;

namespace Finwright.Assessment.Made;

/// <summary>How every part of a fin is poured.</summary>
/// <param name="Resin">The resin.</param>
/// <param name="CellEdge">Edge of the gyroid's cell, metres.</param>
/// <param name="Parts">Part by part; a part without core is not among them.</param>
public sealed record FinPoured(ResinSystem Resin, double CellEdge, IReadOnlyList<PartPoured> Parts);

/// <summary>How a part is poured.</summary>
public sealed record PartPoured
{
    /// <summary>Name of the part.</summary>
    public required string Name { get; init; }

    /// <summary>Whether it is the base, printed apart from the blade.</summary>
    public bool IsBase { get; init; }

    /// <summary>Whether it came as a mesh of its own and is no part of a fin.</summary>
    public bool IsImported { get; init; }

    /// <summary>The part layer by layer.</summary>
    public required PartLayers Layers { get; init; }

    /// <summary>The part on the grid on which its air was looked for.</summary>
    public required PartVoxels Voxels { get; init; }

    /// <summary>How it is held.</summary>
    public required PourAttitude Attitude { get; init; }

    /// <summary>Whether the attitude was found rather than given.</summary>
    public required bool IsAttitudeFound { get; init; }

    /// <summary>Its ports, the feed first.</summary>
    public required IReadOnlyList<PouredPort> Ports { get; init; }

    /// <summary>Whether the ports are suggested, because the part has none of its own.</summary>
    public required bool ArePortsSuggested { get; init; }

    /// <summary>Air that stays as it is held.</summary>
    public required TrappedAirResult Air { get; init; }

    /// <summary>What holding it otherwise is worth; null with suggested ports.</summary>
    public AttitudeSearchResult? Search { get; init; }

    /// <summary>Where ports should go in this attitude.</summary>
    public required PortPlan Suggested { get; init; }

    /// <summary>Core in which the gyroid's labyrinths break into pockets.</summary>
    public required ThinCoreResult Thin { get; init; }

    /// <summary>Room for resin.</summary>
    public required PoreVolume Pores { get; init; }

    /// <summary>What must be mixed for it.</summary>
    public required PourNeed Need { get; init; }

    /// <summary>Cup by cup.</summary>
    public required BatchPlan Batches { get; init; }

    /// <summary>How it fills; null when the resin does not tell its viscosity or the infill is outside the range of the law.</summary>
    public FillResult? Fill { get; init; }

    /// <summary>End of the working time of a full cup, s; infinite when it does not end in the time it is followed.</summary>
    public required double CupLife { get; init; }

    /// <summary>Upward direction while it is poured, layer axes.</summary>
    public Point3 Up => Attitude.Up;

    /// <summary>An attitude of this part in words: of the fin, or of the mesh's own axes for a part that is no fin.</summary>
    /// <param name="attitude">The attitude.</param>
    public string Held(PourAttitude attitude)
    {
        ArgumentNullException.ThrowIfNull(attitude);
        return IsImported ? MeshSides.Aggregate(attitude.Name, (words, side) => words.Replace(side.OfFin, side.OfMesh, StringComparison.Ordinal)) : attitude.Name;
    }

    // Design axes: x aft, y from the hull to the tip, z to starboard.
    private static readonly (string OfFin, string OfMesh)[] MeshSides =
    [
        ("trailing edge", "+x side"), ("leading edge", "-x side"), ("tip", "+y side"), ("root", "-y side"), ("starboard side", "+z side"), ("port side", "-z side"),
    ];

    /// <summary>From layer axes to the axes of its mesh.</summary>
    public Point3 InMesh(Point3 layered) => Layers.ToLayers.RigidInverse().Apply(layered);
}

/// <summary>A port of a part that is poured.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Port">Mouth, direction and diameter, layer axes.</param>
/// <param name="IsFeed">Whether the resin comes in here; else air goes out.</param>
/// <param name="Depth">How deep it is drilled into the core, metres.</param>
/// <param name="Opening">How likely it opens both labyrinths.</param>
/// <param name="LeastDepth">Depth in the core from which it opens both for certain, metres; null when no depth does.</param>
public sealed record PouredPort(string Name, PourPort Port, bool IsFeed, double Depth, OpeningChance Opening, double? LeastDepth);
