using Finwright.Assessment.Figures;
using Finwright.Geometry;
using PdfSharp.Drawing;

namespace Finwright.Papers.Pages;

/// <summary>A figure on a page.</summary>
/// <param name="figure">The figure.</param>
/// <param name="at">Its upper left corner, metres.</param>
/// <param name="width">Its width on the page, metres.</param>
/// <param name="height">Its height on the page, metres.</param>
internal sealed class PlacedFigure(Figure figure, Point2 at, double width, double height) : IPlaced
{
    /// <inheritdoc/>
    public void Paint(PdfPaper paper)
    {
        double scale = width / (Figure.Width * PageLook.Point);
        XGraphicsState before = paper.Place(new(at.X / PageLook.Point, at.Y / PageLook.Point), scale);
        figure.Draw(new FigureContext(paper), new(0, 0, Figure.Width, height / (PageLook.Point * scale)));
        paper.Unclip(before);
    }
}
