using Finwright.Geometry;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Views;

/// <summary>Dimensions whose number stands level beside their line: for those that are too short to hold it, and for several below one another.</summary>
internal static class NumberBeside
{
    private const double Gap = 1e-3;

    // Stands for the number while lines are drawn: they make no room for it.
    private const string Short = "0";

    /// <summary>Across the paper, the number to the left.</summary>
    public static void Across(Drawing drawing, Tongue tongue, Point2 a, Point2 b, double y, string text)
    {
        DrawnBox box = Lines(drawing, tongue, lines => lines.Across(a, b, y, Short));
        Say(drawing, text, new(box.From.X - Gap, y), TextAnchor.End);
    }

    /// <summary>Down the paper, the number on the side away from what is measured.</summary>
    public static void Down(Drawing drawing, Tongue tongue, Point2 a, Point2 b, double x, string text)
    {
        DrawnBox box = Lines(drawing, tongue, lines => lines.Down(a, b, x, Short));
        bool left = x < Math.Min(a.X, b.X);
        Say(drawing, text, new(left ? box.From.X - Gap : box.To.X + Gap, (a.Y + b.Y) / 2), left ? TextAnchor.End : TextAnchor.Start);
    }

    private static DrawnBox Lines(Drawing drawing, Tongue tongue, Action<Dimensions> draw)
    {
        Drawing lines = new();
        draw(new(lines, tongue));
        foreach (DrawnItem item in lines.Items.Where(item => item is not DrawnText))
            drawing.Add(item);
        return lines.GeometryBounds;
    }

    private static void Say(Drawing drawing, string text, Point2 at, TextAnchor anchor) =>
        drawing.Add(new DrawnText(Dimensions.WordLayer, text, at + new Point2(0, 0.36 * Dimensions.WordSize), new(Dimensions.WordSize, ViewPens.Edge.Colour, anchor)));
}
