using Finwright.Geometry.FromDesign;

namespace Finwright.Assessment.Made;

/// <summary>Everything to buy and cut.</summary>
internal static class HardwareList
{
    /// <summary>The list.</summary>
    /// <param name="solids">What is bored into the fin.</param>
    /// <param name="plan">What is cut; null when it was not reached.</param>
    /// <param name="parts">The design's cuts and dowels.</param>
    public static IReadOnlyList<HardwareItem> Of(FinSolids solids, PartPlan? plan, Design.Parts parts) => plan is { Dowels.Count: > 0 }
        ? [.. solids.Hardware, new(HardwareKind.Dowel, $"{parts.DowelMm} mm dowel rod", parts.DowelLengthMm / 1e3, plan.Dowels.Count, plan.Cuts.Count == 1 ? "across the cut" : "across the cuts")]
        : solids.Hardware;
}
