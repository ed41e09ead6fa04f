using Finwright.Geometry;
using Finwright.Making.Cure;
using Finwright.Making.Resins;
using Finwright.Making.Voxels;

namespace Finwright.Assessment.Made;

/// <summary>How every poured part of a fin cures.</summary>
/// <param name="Resin">The resin.</param>
/// <param name="Softening">Temperature at which the walls soften, K.</param>
/// <param name="Parts">Part by part.</param>
/// <param name="Cup">One full cup standing on the bench.</param>
/// <param name="Reservoir">The resin in tube and funnel on a port; null when there is none.</param>
public sealed record FinCured(ResinSystem Resin, double Softening, IReadOnlyList<PartCured> Parts, CupRun Cup, CupRun? Reservoir);

/// <summary>How a part cures.</summary>
/// <param name="Part">The part as it is poured.</param>
/// <param name="Voxels">The grid.</param>
/// <param name="Case">What was assumed, nominal.</param>
/// <param name="Band">The cure with its range.</param>
/// <param name="Water">How long it must stand in water; null when it is not to stand in water.</param>
public sealed record PartCured(PartPoured Part, PartVoxels Voxels, PartCureCase Case, PartCureBand Band, WaterTime? Water)
{
    /// <summary>Name of the part.</summary>
    public string Name => Part.Name;

    /// <summary>Whether all three runs came to their end.</summary>
    public bool IsWhole => Band.Slow.Status == CureStatus.Done && Band.Nominal.Status == CureStatus.Done && Band.Fast.Status == CureStatus.Done;

    /// <summary>Least and greatest of the three runs: with a bath the nominal one need not lie between the ends.</summary>
    /// <param name="of">A temperature of a run, K.</param>
    public (double Low, double High) Range(Func<PartCureResult, double> of)
    {
        ArgumentNullException.ThrowIfNull(of);
        double[] all = [of(Band.Slow), of(Band.Nominal), of(Band.Fast)];
        return (all.Min(), all.Max());
    }

    /// <summary>Where the resin is hottest, in the axes of the part's mesh, metres.</summary>
    public Point3 HottestPlace => Part.InMesh(Band.Nominal.HottestPlace);
}
