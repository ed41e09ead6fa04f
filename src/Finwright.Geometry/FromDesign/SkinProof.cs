using Finwright.Design;
using Finwright.Geometry.Solids;
using static Finwright.Geometry.FromDesign.Wording;

namespace Finwright.Geometry.FromDesign;

/// <summary>A second opinion on the lofted skin before anything is cut: whether it runs through itself.</summary>
public static class SkinProof
{
    /// <summary>
    /// Share of the largest slice that may overlap. A sharp, strongly twisted trailing edge overlaps by a few ten-thousandths, far
    /// below what a printed line can show; a skin whose edges cross, by several hundredths.
    /// </summary>
    private const double LargestShare = 1e-3;

    /// <summary>Whether the skin is sound; reports where it is not.</summary>
    /// <param name="skin">Closed skin of the blade, design axes.</param>
    /// <param name="kernel">Slices the skin.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static bool Holds(TriangleMesh skin, ISolidKernel kernel, ICollection<Finding> findings, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(findings);
        Fold? found;
        try
        {
            found = FoldCheck.Worst(kernel, skin, cancellation: cancellation);
        }
        catch (SolidException fault)
        {
            findings.Add(new(
                "solid-failed", Severity.Error, "$.shape", $"The skin could not be sliced: {fault.Message}",
                "Give the skin a coarser tolerance (\"skin_tolerance_mm\")."));
            return false;
        }

        if (found is not { Share: > LargestShare } fold)
            return true;
        string place = fold.Axis switch
        {
            0 => $"{Mm(fold.Height)} aft of the root's quarter chord",
            1 => $"{Mm(fold.Height)} depth",
            _ => $"{Mm(fold.Height)} to starboard of the middle",
        };
        findings.Add(new(
            "skin-runs-through-itself", Severity.Error, "$.shape",
            $"The skin of the blade runs through itself near {place}: a share of {100 * fold.Share:0.##} % of the slice there counts twice or inside out.",
            "Take back twist, camber or flange step by step to find what folds it, or move the outline's points there apart.")
        { Value = $"{100 * fold.Share:0.##} %", Limit = $"{100 * LargestShare:0.##} %" });
        return false;
    }
}
