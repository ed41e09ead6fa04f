using Finwright.Geometry;

namespace Finwright.Papers.Drawings;

/// <summary>Keeps out of a drawing what no file could show.</summary>
internal static class DrawnItemCheck
{
    public static void Check(DrawnItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        if (string.IsNullOrEmpty(item.Layer) || !item.Layer.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-'))
            throw new ArgumentException($"The layer name \"{item.Layer}\" is malformed: lower-case letters, digits and \"-\" make one.", nameof(item));
        switch (item)
        {
            case DrawnStroke stroke:
                Check(item.Layer, stroke.Points, 2);
                if (!(stroke.Pen.Width > 0 && double.IsFinite(stroke.Pen.Width)) || stroke.Pen.Dashes is { } dashes && (dashes.Count == 0 || dashes.Any(dash => !(dash > 0 && double.IsFinite(dash)))))
                    throw new ArgumentException($"A pen of \"{item.Layer}\" is {stroke.Pen.Width} m wide, or has dashes that are none.", nameof(item));
                break;
            case DrawnArea area:
                foreach (IReadOnlyList<Point2> ring in area.Rings)
                    Check(item.Layer, ring, 3);
                break;
            case DrawnText text:
                if (!double.IsFinite(text.At.X + text.At.Y + text.Look.UpwardTurn) || !(text.Look.Size > 0 && double.IsFinite(text.Look.Size)))
                    throw new ArgumentException($"The words \"{text.Text}\" have no size, or a place that is not finite.", nameof(item));
                break;
            default:
                throw new ArgumentException($"A {item.GetType().Name} cannot be drawn.", nameof(item));
        }
    }

    private static void Check(string layer, IReadOnlyList<Point2> points, int least)
    {
        if (points.Count < least || points.Any(p => !double.IsFinite(p.X + p.Y)))
            throw new ArgumentException($"A line of \"{layer}\" has {points.Count} points, fewer than {least}, or one that is not finite.", nameof(points));
    }
}
