using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>A template laid out over sheets.</summary>
/// <param name="Template">The template.</param>
/// <param name="Scaled">Its drawing as it is drawn, its box at the origin.</param>
/// <param name="Plan">Its sheets.</param>
/// <param name="Marks">Marks in the overlaps.</param>
internal sealed record TiledTemplate(Template Template, Drawing Scaled, TilePlan Plan, IReadOnlyList<JoinMark> Marks)
{
    // No line lies so near to the edge of the sheets that half of it is cut off.
    private const double Rim = 1e-3;

    /// <summary>Lays a template out.</summary>
    public static TiledTemplate Of(Template template, PrinterScale scale, TileRoom upright, TileRoom landscape)
    {
        Drawing scaled = scale.Apply(template.Drawing);
        DrawnBox box = scaled.Bounds;
        scaled = scaled.Moved(new Point2(Rim, Rim) - box.From);
        TilePlan plan = TilePlan.Of(box.Width + 2 * Rim, box.Height + 2 * Rim, upright, landscape);
        return new(template, scaled, plan, JoinMark.Of(plan, scaled));
    }
}
