using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using PdfSharp.Drawing;

namespace Finwright.Papers.Pages;

/// <summary>Something that lies on a page.</summary>
internal interface IPlaced
{
    /// <summary>Puts it on paper.</summary>
    void Paint(PdfPaper paper);
}

/// <summary>A drawing on a page, in its own size.</summary>
/// <param name="items">What is drawn, the lowest first.</param>
/// <param name="at">Where its origin lies, metres.</param>
/// <param name="clip">Corners of the part of the page that is drawn on; null for all of it.</param>
internal sealed class PlacedDrawing(IReadOnlyList<DrawnItem> items, Point2 at, (Point2 From, Point2 To)? clip) : IPlaced
{
    /// <inheritdoc/>
    public void Paint(PdfPaper paper)
    {
        if (clip is not { } box)
        {
            foreach (DrawnItem item in items)
                Paint(paper, item);
            return;
        }

        XPoint from = Points(box.From), to = Points(box.To);
        XGraphicsState before = paper.Clip(new(from, to));
        // What lies wholly outside is left out: it would only make the file larger and be found where it is not seen.
        foreach (DrawnItem item in items)
            if (DrawnExtent.Of(item) is { } extent && Meets(extent, (box.From - at, box.To - at)))
                Paint(paper, item);
        paper.Unclip(before);
    }

    private static bool Meets((Point2 Low, Point2 High) a, (Point2 Low, Point2 High) b) => a.Low.X <= b.High.X && a.High.X >= b.Low.X && a.Low.Y <= b.High.Y && a.High.Y >= b.Low.Y;

    private void Paint(PdfPaper paper, DrawnItem item)
    {
        switch (item)
        {
            case DrawnStroke { Points.Count: > 1 } stroke:
                paper.Stroke(Placed(stroke.Points), stroke.Closed, Colour(stroke.Pen.Colour), stroke.Pen.Width / PageLook.Point, stroke.Pen.Dashes?.Select(length => length / PageLook.Point).ToArray());
                break;
            case DrawnArea area:
                paper.Fill(area.Rings.Where(ring => ring.Count > 2).Select(Placed), Colour(area.Colour));
                break;
            case DrawnText text:
                paper.Write(text.Text, Points(at + DrawnExtent.StartOf(text)), text.Look.Size / PageLook.Point, text.Look.Bold, Colour(text.Look.Colour), text.Look.UpwardTurn);
                break;
        }
    }

    private XPoint[] Placed(IReadOnlyList<Point2> points) => [.. points.Select(point => Points(point + at))];

    private static XPoint Points(Point2 metres) => new(metres.X / PageLook.Point, metres.Y / PageLook.Point);

    private static XColor Colour(Ink ink) => XColor.FromArgb(ink.Red, ink.Green, ink.Blue);
}
