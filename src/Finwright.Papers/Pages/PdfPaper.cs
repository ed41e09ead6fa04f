using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Finwright.Papers.Pages;

/// <summary>A page of a PDF file that is drawn on, in points from its upper left corner, y down.</summary>
/// <param name="graphics">What draws on the page.</param>
internal sealed class PdfPaper(XGraphics graphics)
{
    // Glyphs by their number: what is drawn does not hang on a second table of characters in the file.
    private static readonly XPdfFontOptions Embedding = new(PdfFontEncoding.Unicode);
    private readonly Dictionary<(double Size, bool Bold), XFont> _fonts = [];

    /// <summary>Draws a line through points.</summary>
    /// <param name="points">The points.</param>
    /// <param name="closed">Whether the last joins the first.</param>
    /// <param name="colour">Its colour.</param>
    /// <param name="width">Its width.</param>
    /// <param name="dashes">Lengths of dash and gap in turn; null for a whole line.</param>
    /// <param name="join">How its corners look.</param>
    public void Stroke(XPoint[] points, bool closed, XColor colour, double width, IReadOnlyList<double>? dashes = null, XLineJoin join = XLineJoin.Round)
    {
        // Ends are flat: a line is as long as it says.
        XPen pen = new(colour, width) { LineJoin = join, LineCap = XLineCap.Flat };
        if (dashes is { Count: > 0 })
            pen.DashPattern = [.. dashes.Select(length => length / width)];
        XGraphicsPath path = new();
        path.AddLines(points);
        if (closed)
            path.CloseFigure();
        graphics.DrawPath(pen, path);
    }

    /// <summary>Fills what lies inside an odd number of rings.</summary>
    public void Fill(IEnumerable<XPoint[]> rings, XColor colour)
    {
        XGraphicsPath path = new() { FillMode = XFillMode.Alternate };
        foreach (XPoint[] ring in rings)
            path.AddPolygon(ring);
        graphics.DrawPath(new XSolidBrush(colour), path);
    }

    /// <summary>Writes a text with the left end of its base line at a place.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">The place.</param>
    /// <param name="size">Size of its type.</param>
    /// <param name="bold">Whether it is bold.</param>
    /// <param name="colour">Its colour.</param>
    /// <param name="upwardTurn">How far it is turned counter-clockwise about the place, radians.</param>
    public void Write(string text, XPoint at, double size, bool bold, XColor colour, double upwardTurn)
    {
        string printable = InterFont.Printable(text);
        if (string.IsNullOrWhiteSpace(printable))
            return;
        if (!_fonts.TryGetValue((size, bold), out XFont? font))
            _fonts[(size, bold)] = font = new(InterResolver.Family, size, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular, Embedding);
        if (upwardTurn == 0)
        {
            graphics.DrawString(printable, font, new XSolidBrush(colour), at);
            return;
        }

        XGraphicsState upright = graphics.Save();
        graphics.TranslateTransform(at.X, at.Y);
        graphics.RotateTransform(-upwardTurn * 180 / Math.PI);
        graphics.DrawString(printable, font, new XSolidBrush(colour), new XPoint(0, 0));
        graphics.Restore(upright);
    }

    /// <summary>From here on nothing is drawn outside a box.</summary>
    /// <returns>What <see cref="Unclip"/> takes.</returns>
    public XGraphicsState Clip(XRect box)
    {
        XGraphicsState before = graphics.Save();
        graphics.IntersectClip(box);
        return before;
    }

    /// <summary>Everything drawn until <see cref="Unclip"/> is moved, then grown.</summary>
    public XGraphicsState Place(XPoint at, double scale)
    {
        XGraphicsState before = graphics.Save();
        graphics.TranslateTransform(at.X, at.Y);
        graphics.ScaleTransform(scale);
        return before;
    }

    /// <summary>Takes back the last <see cref="Clip"/> or <see cref="Place"/>.</summary>
    public void Unclip(XGraphicsState before) => graphics.Restore(before);
}
