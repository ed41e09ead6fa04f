using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>Shows how the sheets of a template go together.</summary>
internal static class AssemblyMap
{
    private const double NameSize = 3.6e-3;
    private static readonly Pen Line = new(Palette.Quiet, 0.12e-3);
    private static readonly Pen Sheet = new(Palette.Line, 0.25e-3);
    private static readonly Ink White = new(255, 255, 255);

    /// <summary>The map, no larger than a room.</summary>
    public static Drawing Draw(TiledTemplate template, double width, double height)
    {
        TilePlan plan = template.Plan;
        double scale = Math.Min(width / plan.Width, height / plan.Height);
        Drawing map = new();
        foreach (Tile tile in template.Sheets)
        {
            if (template.HasSheet(tile.Row, tile.Column - 1))
                map.Add(new DrawnArea("overlaps", Palette.Rule, [Box(new(tile.Box.From, new(tile.Box.From.X + plan.Overlap, tile.Box.To.Y)))]));
            if (template.HasSheet(tile.Row - 1, tile.Column))
                map.Add(new DrawnArea("overlaps", Palette.Rule, [Box(new(tile.Box.From, new(tile.Box.To.X, tile.Box.From.Y + plan.Overlap)))]));
        }

        foreach (DrawnStroke stroke in template.Scaled.Items.OfType<DrawnStroke>())
            map.Add(new DrawnStroke("template", Line, [.. stroke.Points.Select(p => scale * p)], stroke.Closed));
        foreach (Tile tile in template.Sheets)
            map.Add(new DrawnStroke("sheets", Sheet, Box(tile.Box), Closed: true));
        foreach (Tile tile in template.Sheets)
        {
            Point2 middle = scale * (0.5 * (tile.Box.From + tile.Box.To));
            Point2 half = new(Extent.Length(tile.Name, NameSize, bold: true) / 2 + 1e-3, 0.36 * NameSize + 1e-3);
            map.Add(new DrawnArea("names", White, [Corners(middle - half, middle + half)]));
            map.Add(new DrawnText("names", tile.Name, middle + new Point2(0, 0.36 * NameSize), new(NameSize, Palette.Line, TextAnchor.Middle, Bold: true)));
        }

        return map;

        Point2[] Box(DrawnBox box) => Corners(scale * box.From, scale * box.To);
    }

    private static Point2[] Corners(Point2 from, Point2 to) => [from, new(to.X, from.Y), to, new(from.X, to.Y)];
}
