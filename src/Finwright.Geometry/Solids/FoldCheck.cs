namespace Finwright.Geometry.Solids;

/// <summary>A place where a surface runs through itself.</summary>
/// <param name="Axis">Axis square to the slice: 0 for x, 1 for y, 2 for z.</param>
/// <param name="Height">Where the slice lies along that axis, metres.</param>
/// <param name="SignedArea">Area of the slice's rings with their signs, m².</param>
/// <param name="FilledArea">Area that the rings fill, m².</param>
/// <param name="Share">Disagreement of the two areas over the filled area of the largest slice along the axis.</param>
public sealed record Fold(int Axis, double Height, double SignedArea, double FilledArea, double Share);

/// <summary>
/// Looks for surfaces that run through themselves, such as a loft whose edges cross. A closed mesh can do so and still
/// pass <see cref="MeshChecks"/>, and a kernel builds on it without complaint.
/// </summary>
/// <remarks>
/// A sample, not a proof: slices square to each axis are measured twice, by the signed area of their rings and by the
/// area they fill. The two agree to rounding unless rings overlap or are inside out. Folds that fall between the slices
/// are missed.
/// </remarks>
public static class FoldCheck
{
    /// <summary>Disagreement that counts as a fold, against the filled area of the largest slice. Sound lofts stay below 1e-8.</summary>
    private const double Tolerance = 1e-6;

    /// <summary>The worst fold, or null when none was met.</summary>
    /// <param name="kernel">What slices.</param>
    /// <param name="mesh">Closed, outward-facing mesh.</param>
    /// <param name="slices">Slices along each axis.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="SolidException">The mesh is not closed or is inside out as a whole.</exception>
    public static Fold? Worst(ISolidKernel kernel, TriangleMesh mesh, int slices = 60, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(kernel);
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(slices);
        Fold? worst = null;
        double worstShare = Tolerance;
        MeshSolid solid = new(mesh);
        for (int axis = 0; axis < 3; axis++)
        {
            // Turn the axes round until this one is z.
            Placement turn = axis switch
            {
                0 => new(new(0, 0, 1), new(1, 0, 0), new(0, 1, 0), default),
                1 => new(new(0, 1, 0), new(0, 0, 1), new(1, 0, 0), default),
                _ => Placement.Identity,
            };
            IReadOnlyList<SliceArea> areas = kernel.SliceAreas(solid.Placed(turn), Heights(mesh.Placed(turn).Bounds(), slices), cancellation);
            double largest = areas.Max(a => a.FilledArea);
            foreach (SliceArea area in areas)
                if (Math.Abs(area.SignedArea - area.FilledArea) is var difference && difference > worstShare * largest)
                {
                    worstShare = difference / largest;
                    worst = new(axis, area.Height, area.SignedArea, area.FilledArea, worstShare);
                }
        }

        return worst;
    }

    /// <summary>Evenly spread, with an odd offset so that heights do not fall on the regular stations of a loft.</summary>
    private static double[] Heights(Bounds bounds, int count)
    {
        const double Offset = 0.4871;
        double[] heights = new double[count];
        for (int i = 0; i < count; i++)
            heights[i] = bounds.Minimum.Z + (bounds.Maximum.Z - bounds.Minimum.Z) * (i + Offset) / count;
        return heights;
    }
}
