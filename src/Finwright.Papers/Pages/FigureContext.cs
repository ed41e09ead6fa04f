using Finwright.Geometry.Pictures;
using OxyPlot;
using PdfSharp.Drawing;

namespace Finwright.Papers.Pages;

/// <summary>Draws plots on a page with the papers' type. Their sheet becomes white, as the paper is.</summary>
/// <param name="paper">The page.</param>
internal sealed class FigureContext(PdfPaper paper) : ClippingRenderContext
{
    private const double LineHeight = 1.2;
    private static readonly OxyColor Sheet = OxyColor.FromRgb(Palette.Paper.Red, Palette.Paper.Green, Palette.Paper.Blue);
    private XGraphicsState? _beforeClip;

    /// <inheritdoc/>
    public override void DrawLine(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        if (points.Count > 1 && stroke.IsVisible() && thickness > 0)
            paper.Stroke(Points(points), closed: false, Colour(stroke), thickness, dashArray, Join(lineJoin));
    }

    /// <inheritdoc/>
    public override void DrawPolygon(IList<ScreenPoint> points, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        if (points.Count < 3)
            return;
        if (fill.IsVisible())
            paper.Fill([Points(points)], Colour(fill));
        if (stroke.IsVisible() && thickness > 0)
            paper.Stroke(Points(points), closed: true, Colour(stroke), thickness, dashArray, Join(lineJoin));
    }

    /// <inheritdoc/>
    public override void DrawText(ScreenPoint p, string text, OxyColor fill, string fontFamily, double fontSize, double fontWeight, double rotation, HorizontalAlignment horizontalAlignment, VerticalAlignment verticalAlignment, OxySize? maxSize)
    {
        if (string.IsNullOrEmpty(text) || !fill.IsVisible())
            return;
        string[] lines = Lines(text);
        (double sin, double cos) = Math.SinCos(rotation * Math.PI / 180);
        double top = -LineHeight * fontSize * lines.Length * verticalAlignment switch
        {
            VerticalAlignment.Middle => 0.5,
            VerticalAlignment.Bottom => 1,
            _ => 0,
        };
        for (int i = 0; i < lines.Length; i++)
        {
            double across = -TextMeasure.Width(lines[i], fontSize, IsBold(fontWeight)) * horizontalAlignment switch
            {
                HorizontalAlignment.Center => 0.5,
                HorizontalAlignment.Right => 1,
                _ => 0,
            };
            double down = top + (i * LineHeight + (LineHeight + InterFont.CapitalHeight) / 2) * fontSize;
            paper.Write(lines[i], new(p.X + across * cos - down * sin, p.Y + across * sin + down * cos), fontSize, IsBold(fontWeight), Colour(fill), -rotation * Math.PI / 180);
        }
    }

    /// <inheritdoc/>
    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight)
    {
        if (string.IsNullOrEmpty(text))
            return OxySize.Empty;
        string[] lines = Lines(text);
        return new(lines.Max(line => TextMeasure.Width(line, fontSize, IsBold(fontWeight))), lines.Length * LineHeight * fontSize);
    }

    /// <inheritdoc/>
    protected override void SetClip(OxyRect clippingRectangle) =>
        _beforeClip = paper.Clip(new(clippingRectangle.Left, clippingRectangle.Top, clippingRectangle.Width, clippingRectangle.Height));

    /// <inheritdoc/>
    protected override void ResetClip()
    {
        if (_beforeClip is { } before)
            paper.Unclip(before);
        _beforeClip = null;
    }

    private static bool IsBold(double weight) => weight >= FontWeights.Bold;

    private static string[] Lines(string text) => text.ReplaceLineEndings("\n").Split('\n');

    private static XPoint[] Points(IList<ScreenPoint> points) => [.. points.Select(point => new XPoint(point.X, point.Y))];

    private static XColor Colour(OxyColor colour) => colour.Equals(Sheet) ? XColors.White : XColor.FromArgb(colour.A, colour.R, colour.G, colour.B);

    private static XLineJoin Join(LineJoin join) => join switch
    {
        LineJoin.Miter => XLineJoin.Miter,
        LineJoin.Bevel => XLineJoin.Bevel,
        _ => XLineJoin.Round,
    };
}
