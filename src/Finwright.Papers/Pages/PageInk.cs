using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>The small drawings that pages are made of.</summary>
internal static class PageInk
{
    private const string Layer = "page";

    // Corners of a circle: at this size the edge is off it by a hundredth of a millimetre at most.
    private const int CircleCorners = 48;

    /// <summary>Writes a line of text whose line box starts at a height.</summary>
    /// <param name="drawing">What it is written on.</param>
    /// <param name="text">The text.</param>
    /// <param name="x">Its place across.</param>
    /// <param name="top">Top of the line box.</param>
    /// <param name="look">Its look.</param>
    public static void Write(this Drawing drawing, string text, double x, double top, TextLook look) =>
        drawing.Add(new DrawnText(Layer, text, new(x, top + (PageLook.LineOf(look) + InterFont.CapitalHeight * look.Size) / 2), look));

    /// <summary>Writes lines one below the other.</summary>
    public static void Write(this Drawing drawing, IReadOnlyList<string> lines, double x, double top, TextLook look)
    {
        for (int i = 0; i < lines.Count; i++)
            drawing.Write(lines[i], x, top + i * PageLook.LineOf(look), look);
    }

    /// <summary>Draws a line.</summary>
    public static void Line(this Drawing drawing, Pen pen, params ReadOnlySpan<Point2> points) => drawing.Add(new DrawnStroke(Layer, pen, points.ToArray(), Closed: false));

    /// <summary>Draws a frame.</summary>
    public static void Frame(this Drawing drawing, Pen pen, double x, double y, double width, double height) => drawing.Add(new DrawnStroke(Layer, pen, Corners(x, y, width, height), Closed: true));

    /// <summary>Fills a box.</summary>
    public static void Fill(this Drawing drawing, Ink ink, double x, double y, double width, double height) => drawing.Add(new DrawnArea(Layer, ink, [Corners(x, y, width, height)]));

    /// <summary>A box to tick, with its upper left corner.</summary>
    public static void TickBox(this Drawing drawing, double x, double y) => drawing.Frame(PageLook.Ink, x, y, PageLook.TickBox, PageLook.TickBox);

    /// <summary>A small triangle with a stroke and a dot in it: take care.</summary>
    public static void Caution(this Drawing drawing, double x, double y, double size)
    {
        Pen pen = new(PageLook.Tight, size / 11);
        drawing.Add(new DrawnStroke(Layer, pen, [new(x + size / 2, y), new(x + size, y + 0.9 * size), new(x, y + 0.9 * size)], Closed: true));
        drawing.Line(pen with { Width = size / 9 }, new(x + size / 2, y + 0.3 * size), new(x + size / 2, y + 0.58 * size));
        drawing.Fill(PageLook.Tight, x + 0.44 * size, y + 0.66 * size, 0.12 * size, 0.12 * size);
    }

    /// <summary>An arrow to the right: go on to what is to be done.</summary>
    public static void Arrow(this Drawing drawing, double x, double y, double size, Ink ink)
    {
        Pen pen = new(ink, size / 9);
        drawing.Line(pen, new(x, y), new(x + size, y));
        drawing.Line(pen, new(x + 0.62 * size, y - 0.34 * size), new(x + size, y), new(x + 0.62 * size, y + 0.34 * size));
    }

    /// <summary>A filled circle.</summary>
    public static void Disc(this Drawing drawing, Ink ink, Point2 middle, double radius) => drawing.Add(new DrawnArea(Layer, ink, [Circle(middle, radius, 0, CircleCorners)]));

    /// <summary>The left half of a circle, filled.</summary>
    public static void HalfDisc(this Drawing drawing, Ink ink, Point2 middle, double radius) => drawing.Add(new DrawnArea(Layer, ink, [Circle(middle, radius, CircleCorners / 4, CircleCorners / 2 + 1)]));

    /// <summary>A circle.</summary>
    public static void Ring(this Drawing drawing, Pen pen, Point2 middle, double radius) => drawing.Add(new DrawnStroke(Layer, pen, Circle(middle, radius, 0, CircleCorners), Closed: true));

    private static Point2[] Corners(double x, double y, double width, double height) => [new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height)];

    private static Point2[] Circle(Point2 middle, double radius, int first, int count)
    {
        Point2[] corners = new Point2[count];
        for (int i = 0; i < count; i++)
        {
            (double sin, double cos) = Math.SinCos(2 * Math.PI * (first + i) / CircleCorners);
            corners[i] = middle + new Point2(radius * cos, radius * sin);
        }

        return corners;
    }
}
