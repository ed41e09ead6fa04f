using Finwright.Assessment.Figures;
using Finwright.Geometry;
using PdfSharp.Drawing;

namespace Finwright.Papers.Pages;

/// <summary>A figure on a page.</summary>
/// <param name="figure">The figure.</param>
/// <param name="at">Its upper left corner, metres.</param>
/// <param name="width">Its width on the page, metres.</param>
internal sealed class PlacedFigure(Figure figure, Point2 at, double width) : IPlaced
{
    /// <inheritdoc/>
    public void Paint(PdfPaper paper)
    {
        XGraphicsState before = paper.Place(new(at.X / PageLook.Point, at.Y / PageLook.Point), width / (Figure.Width * PageLook.Point));
        figure.Draw(new FigureContext(paper));
        paper.Unclip(before);
    }
}
