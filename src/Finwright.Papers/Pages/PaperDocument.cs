using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>What stands on every page of a paper.</summary>
/// <param name="Title">Name of the fin.</param>
/// <param name="Kind">What the paper is, for example "Build sheet".</param>
/// <param name="Foot">Version of the program, date, hash of the design.</param>
/// <param name="PageOf">Page n of m in words.</param>
public sealed record PageMarks(string Title, string Kind, string Foot, Func<int, int, string> PageOf);

/// <summary>A PDF document in the making. Same calls, same bytes.</summary>
public sealed class PaperDocument
{
    /// <summary>An empty document.</summary>
    /// <param name="settings">Paper and date.</param>
    /// <param name="marks">What stands on every page.</param>
    public PaperDocument(PaperSettings settings, PageMarks marks) => throw new NotImplementedException();

    /// <summary>Number of pages so far.</summary>
    public int PageCount => throw new NotImplementedException();

    /// <summary>Adds a page.</summary>
    /// <param name="landscape">Whether its long side lies level.</param>
    public PaperPage AddPage(bool landscape = false) => throw new NotImplementedException();

    /// <summary>Puts page numbers and marks on all pages and gives the file.</summary>
    public byte[] ToBytes() => throw new NotImplementedException();
}

/// <summary>A page of a document. Metres from its upper left corner, x to the right, y down.</summary>
public sealed class PaperPage
{
    /// <summary>Width of the page.</summary>
    public double Width => throw new NotImplementedException();

    /// <summary>Height of the page.</summary>
    public double Height => throw new NotImplementedException();

    /// <summary>Upper left corner of the room that marks and margins leave free.</summary>
    public Point2 RoomFrom => throw new NotImplementedException();

    /// <summary>Lower right corner of that room.</summary>
    public Point2 RoomTo => throw new NotImplementedException();

    /// <summary>Draws a drawing in its own size.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="at">Where its origin comes to lie.</param>
    /// <param name="clip">Corners of the part of the page that is drawn on; null for all of it.</param>
    public void Draw(Drawing drawing, Point2 at, (Point2 From, Point2 To)? clip = null) => throw new NotImplementedException();
}
