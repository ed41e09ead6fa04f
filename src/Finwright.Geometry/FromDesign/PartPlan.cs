using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Parts;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.FromDesign;

/// <summary>Every part to print, how it lies, and which parts share a bed.</summary>
public sealed record PartPlan
{
    /// <summary>The parts: blade pieces from the root down, base, gauge.</summary>
    public required IReadOnlyList<PrintPart> Parts { get; init; }

    /// <summary>Beds, each with its parts; a part that does not fit the printer is on none.</summary>
    public required IReadOnlyList<Plate> Plates { get; init; }

    /// <summary>Cuts across the blade, from the root down.</summary>
    public required IReadOnlyList<CutPlane> Cuts { get; init; }

    /// <summary>Whether the cuts were proposed rather than given.</summary>
    public required bool CutsAreProposed { get; init; }

    /// <summary>Dowels across the cuts.</summary>
    public required IReadOnlyList<Dowel> Dowels { get; init; }

    /// <summary>Port dimples.</summary>
    public required IReadOnlyList<PortDimple> Ports { get; init; }

    /// <summary>The engraved part number; null when there is none.</summary>
    public required EngravedText? Engraving { get; init; }

    /// <summary>Cuts, dowels, marks and lays out the parts of a fin.</summary>
    /// <param name="design">The design; every value within the range of its field.</param>
    /// <param name="blade">The blade of the same design.</param>
    /// <param name="solids">The solids of the same design.</param>
    /// <param name="kernel">Builds and slices the solids.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <param name="progress">Receives the share of the work done, 0 to 1; null for nobody.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The plan, also when a part does not fit the printer (a finding says so); null when the parts cannot be made.</returns>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static PartPlan? Build(
        FinDesign design, BladeShape blade, FinSolids solids, ISolidKernel kernel, ICollection<Finding> findings,
        IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(blade);
        ArgumentNullException.ThrowIfNull(solids);
        ArgumentNullException.ThrowIfNull(kernel);
        ArgumentNullException.ThrowIfNull(findings);
        try
        {
            return new PartPlanner(new(design, blade, solids, findings), kernel, progress, cancellation).Plan();
        }
        catch (SolidException fault)
        {
            findings.Add(new(
                "solid-failed", Severity.Error, "$.shape",
                $"The parts could not be built: {fault.Message}",
                "Take out bores, pockets or cuts one by one to find the one that cannot be made."));
            return null;
        }
    }
}
