using Finwright.Assessment.Figures;
using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>A page of a document. Metres from its upper left corner, x to the right, y down.</summary>
public sealed class PaperPage
{
    private readonly List<IPlaced> _placed = [];

    internal PaperPage(double width, double height) => (Width, Height) = (width, height);

    /// <summary>Width of the page.</summary>
    public double Width { get; }

    /// <summary>Height of the page.</summary>
    public double Height { get; }

    /// <summary>Upper left corner of the room that marks and margins leave free.</summary>
    public static Point2 RoomFrom => new(PageLook.Margin, PageLook.Margin + PageLook.HeadHeight);

    /// <summary>Lower right corner of that room.</summary>
    public Point2 RoomTo => new(Width - PageLook.Margin, Height - PageLook.Margin - PageLook.FootHeight);

    /// <summary>What lies on the page, the lowest first.</summary>
    internal IReadOnlyList<IPlaced> Placed => _placed;

    /// <summary>Draws a drawing in its own size.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="at">Where its origin comes to lie.</param>
    /// <param name="clip">Corners of the part of the page that is drawn on; null for all of it.</param>
    public void Draw(Drawing drawing, Point2 at, (Point2 From, Point2 To)? clip = null)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        _placed.Add(new PlacedDrawing([.. drawing.Items], at, clip));
    }

    /// <summary>Draws a figure in its own proportions.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="at">Its upper left corner.</param>
    /// <param name="width">Its width.</param>
    public void Draw(Figure figure, Point2 at, double width) => _placed.Add(new PlacedFigure(figure, at, width));
}
