using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>A template laid out over sheets.</summary>
/// <param name="Template">The template.</param>
/// <param name="Scale">The printer's scale, as its pages lie in the printer.</param>
/// <param name="Scaled">Its drawing as it is drawn, its box at the origin.</param>
/// <param name="Plan">Its sheets.</param>
/// <param name="Marks">Marks in the overlaps.</param>
internal sealed record TiledTemplate(Template Template, PrinterScale Scale, Drawing Scaled, TilePlan Plan, IReadOnlyList<JoinMark> Marks)
{
    // No line lies so near to the edge of the sheets that half of it is cut off.
    private const double Rim = 1e-3;

    /// <summary>The tiles that show something or lie between two that do: the others need no paper.</summary>
    public IReadOnlyList<Tile> Sheets { get; } = [.. SheetsOf(Plan, Scaled)];

    /// <summary>Whether there are neighbours to join.</summary>
    public bool IsJoined => Sheets.Count > 1;

    /// <summary>Whether there is a sheet in a place.</summary>
    public bool HasSheet(int row, int column) => Plan.At(row, column) is { } tile && Sheets.Contains(tile);

    /// <summary>Lays a template out on upright or landscape pages, whichever are better.</summary>
    /// <param name="template">The template.</param>
    /// <param name="scale">The printer's scale on an upright page.</param>
    /// <param name="upright">Room for a tile on an upright page.</param>
    /// <param name="landscape">Room for a tile on a landscape page.</param>
    public static TiledTemplate Of(Template template, PrinterScale scale, TileRoom upright, TileRoom landscape)
    {
        Drawing standing = Laid(template, scale), lying = scale.IsTrue ? standing : Laid(template, scale.Turned);
        TilePlan plan = TilePlan.Better(PlanOf(standing, upright, isLandscape: false), PlanOf(lying, landscape, isLandscape: true));
        Drawing scaled = plan.IsLandscape ? lying : standing;
        return new(template, plan.IsLandscape ? scale.Turned : scale, scaled, plan, JoinMark.Of(plan, [.. SheetsOf(plan, scaled)], scaled));
    }

    private static IEnumerable<Tile> SheetsOf(TilePlan plan, Drawing drawing)
    {
        Tile[] shown = [.. plan.Tiles.Where(Shows)];
        // One that holds its neighbours together stays.
        return plan.Tiles.Where(tile => shown.Contains(tile)
            || shown.Any(other => other.Row == tile.Row && other.Column < tile.Column) && shown.Any(other => other.Row == tile.Row && other.Column > tile.Column)
            || shown.Any(other => other.Column == tile.Column && other.Row < tile.Row) && shown.Any(other => other.Column == tile.Column && other.Row > tile.Row));

        // What lies where it overlaps the one before is on that one too.
        bool Shows(Tile tile)
        {
            Point2 from = tile.Box.From + new Point2(tile.Column > 0 ? plan.Overlap : 0, tile.Row > 0 ? plan.Overlap : 0);
            return WindowCut.Of(drawing, new(from, tile.Box.To)).Items.Count > 0;
        }
    }

    private static Drawing Laid(Template template, PrinterScale scale)
    {
        Drawing scaled = scale.Apply(template.Drawing);
        return scaled.Moved(new Point2(Rim, Rim) - scaled.Bounds.From);
    }

    private static TilePlan? PlanOf(Drawing drawing, TileRoom room, bool isLandscape)
    {
        DrawnBox box = drawing.Bounds;
        return TilePlan.On(box.To.X + Rim, box.To.Y + Rim, room, isLandscape, [.. drawing.Items.Select(item => DrawnBox.Round(Extent.Of(item)))]);
    }
}
