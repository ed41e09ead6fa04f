using Finwright.Strength.FromDesign;
using Finwright.Strength.Margins;
using Finwright.Strength.Plates;

namespace Finwright.Assessment.Loaded;

/// <summary>How much of their strength the walls use at one depth, at their most strained place there.</summary>
/// <param name="Depth">Depth, metres.</param>
/// <param name="Use">Equivalent stress over strength; 1 breaks.</param>
public readonly record struct WallUseAlong(double Depth, double Use)
{
    /// <summary>The use of the walls over the depths at which they are judged, root first; clear of the edges and of the clamped root, where a plate's stresses are not those of the solid.</summary>
    /// <param name="structure">The fin.</param>
    /// <param name="plate">The blade under its load.</param>
    public static IReadOnlyList<WallUseAlong> Of(FinStructure structure, PlateSolution plate)
    {
        ArgumentNullException.ThrowIfNull(structure);
        ArgumentNullException.ThrowIfNull(plate);
        PlateFin fin = structure.Plate.Fin;
        JudgedZone zone = LayerMargins.Judged(fin);
        return [.. Enumerable.Range(0, zone.SpanSteps + 1).Select(j =>
        {
            double depth = zone.FromDepth + (zone.ToDepth - zone.FromDepth) * j / zone.SpanSteps, leading = fin.LeadingEdge(depth), chord = fin.TrailingEdge(depth) - leading;
            double most = 0;
            for (int i = 0; i <= zone.ChordSteps; i++)
            {
                double share = zone.EdgeShare + (1 - 2 * zone.EdgeShare) * i / zone.ChordSteps;
                most = Math.Max(most, LayerMargins.WallUse(plate, structure.Materials, structure.Direction, leading + share * chord, depth));
            }

            return new WallUseAlong(depth, most);
        })];
    }
}
