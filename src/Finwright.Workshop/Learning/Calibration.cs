namespace Finwright.Workshop.Learning;

/// <summary>What a factor multiplies in predictions.</summary>
public enum LearnedQuantity
{
    /// <summary>Stiffness of the printed walls.</summary>
    WallStiffness,

    /// <summary>Stiffness of the filled core.</summary>
    CoreStiffness,

    /// <summary>Plastic that the printer lays down.</summary>
    Plastic,

    /// <summary>Resin that the pores take.</summary>
    Resin,

    /// <summary>Time that the printer takes.</summary>
    PrintTime,
}

/// <summary>A factor learned from a build or its bench, for fins of the same filament and resin.</summary>
/// <param name="Id">Its number; 0 before it is kept.</param>
/// <param name="MadeAt">When it was learned.</param>
/// <param name="MadeBy">The program and its version.</param>
/// <param name="BuildId">The build that taught it.</param>
/// <param name="FilamentId">The filament that it holds for; null for any.</param>
/// <param name="ResinId">The resin that it holds for; null for any.</param>
/// <param name="Quantity">What it multiplies.</param>
/// <param name="Factor">The factor, against the values that the design's materials give.</param>
/// <param name="Low">Lower end of its range.</param>
/// <param name="High">Upper end.</param>
/// <param name="Sessions">The readings that it came from; none when it came from the build itself.</param>
/// <param name="Note">The maker's own words.</param>
public sealed record Calibration(
    long Id, DateTimeOffset MadeAt, string MadeBy, long? BuildId, long? FilamentId, long? ResinId, LearnedQuantity Quantity, double Factor, double Low, double High, IReadOnlyList<long> Sessions, string Note);
