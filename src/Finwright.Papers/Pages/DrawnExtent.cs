using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>How much room drawn things take, texts by their true width.</summary>
internal static class DrawnExtent
{
    // How far letters reach below their base line and above it (accents too), over the size of the type.
    private const double Below = 0.25, Above = 0.97;

    /// <summary>Corners round a whole drawing; null when nothing is drawn.</summary>
    public static (Point2 Low, Point2 High)? Of(Drawing drawing)
    {
        (Point2 Low, Point2 High)? all = null;
        foreach (DrawnItem item in drawing.Items)
            if (Of(item) is { } own)
                all = all is { } known ? (new(Math.Min(known.Low.X, own.Low.X), Math.Min(known.Low.Y, own.Low.Y)), new(Math.Max(known.High.X, own.High.X), Math.Max(known.High.Y, own.High.Y))) : own;
        return all;
    }

    /// <summary>Corners round an item; null when there is nothing of it to see.</summary>
    public static (Point2 Low, Point2 High)? Of(DrawnItem item) => item switch
    {
        DrawnStroke { Points.Count: > 1 } stroke => Round(stroke.Points, stroke.Pen.Width / 2),
        DrawnArea area when area.Rings.Any(ring => ring.Count > 2) => Round(area.Rings.SelectMany(ring => ring), 0),
        DrawnText text when !string.IsNullOrWhiteSpace(text.Text) => Round(Corners(text), 0),
        _ => null,
    };

    /// <summary>The left end of a text's base line.</summary>
    public static Point2 StartOf(DrawnText text)
    {
        double share = text.Look.Anchor switch
        {
            TextAnchor.Middle => 0.5,
            TextAnchor.End => 1,
            _ => 0,
        };
        return share == 0 ? text.At : text.At - share * Along(text);
    }

    // From the left end of a text to its right end; y runs down.
    private static Point2 Along(DrawnText text)
    {
        (double sin, double cos) = Math.SinCos(text.Look.UpwardTurn);
        return TextMeasure.Width(text.Text, text.Look.Size, text.Look.Bold) * new Point2(cos, -sin);
    }

    private static Point2[] Corners(DrawnText text)
    {
        (double sin, double cos) = Math.SinCos(text.Look.UpwardTurn);
        Point2 start = StartOf(text), along = Along(text), up = text.Look.Size * new Point2(-sin, -cos);
        return [start - Below * up, start + Above * up, start + along - Below * up, start + along + Above * up];
    }

    private static (Point2 Low, Point2 High) Round(IEnumerable<Point2> points, double by)
    {
        double left = double.MaxValue, top = double.MaxValue, right = double.MinValue, bottom = double.MinValue;
        foreach (Point2 p in points)
            (left, top, right, bottom) = (Math.Min(left, p.X), Math.Min(top, p.Y), Math.Max(right, p.X), Math.Max(bottom, p.Y));
        return (new(left - by, top - by), new(right + by, bottom + by));
    }
}
