using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pages;
using Finwright.Papers.Words;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>A page with a tile: words above, rulers left and below, the tile in the room between them.</summary>
internal static class TilePage
{
    private const double Head = 15.5e-3, Left = RulerPair.Depth + 3e-3, Below = RulerPair.Depth + 3e-3;
    private const double NameSize = 4.2e-3, PlaceSize = 3e-3, WordSize = 2.2e-3, FirstLine = 3.9e-3, Line = 3e-3, LabelSize = 2.4e-3;

    // What is cut off at the window's edge reaches so far past it that no line's end shows; the page shows nothing of it.
    private const double Beyond = 1e-3;

    private static readonly Pen CutHere = new(Palette.Line, 0.25e-3, [4e-3, 2e-3]);
    private static readonly Pen LayHere = new(Palette.Quiet, 0.15e-3, [0.8e-3, 1.6e-3]);

    /// <summary>Room for a tile on a page.</summary>
    public static TileRoom Room(PaperPage page) => new(page.RoomTo.X - PaperPage.RoomFrom.X - Left, page.RoomTo.Y - PaperPage.RoomFrom.Y - Head - Below);

    /// <summary>Upper left corner of that room on the page.</summary>
    public static Point2 Window(PaperPage page) => PaperPage.RoomFrom + new Point2(Left, Head);

    /// <summary>Whether both rulers have room on a page.</summary>
    public static bool HoldsRulers(PaperPage page, PrinterScale scale) =>
        page.RoomTo.X - PaperPage.RoomFrom.X - Left >= RulerReading.Meant * scale.Across && page.RoomTo.Y - PaperPage.RoomFrom.Y - Head >= RulerReading.Meant * scale.Down;

    /// <summary>Draws the page.</summary>
    /// <param name="page">The page.</param>
    /// <param name="template">The template.</param>
    /// <param name="tile">What of it the page shows.</param>
    /// <param name="scale">The printer's scale on an upright page, which is what was measured.</param>
    /// <param name="tongue">How it speaks.</param>
    public static void Draw(PaperPage page, TiledTemplate template, Tile tile, PrinterScale scale, Tongue tongue)
    {
        TilePlan plan = template.Plan;
        Point2 window = Window(page), rim = new(Beyond, Beyond), origin = window - tile.Box.From;
        DrawnBox wide = new(tile.Box.From - rim, tile.Box.To + rim);
        page.Draw(WindowCut.Of(template.Scaled, wide), origin, (window, window + tile.Box.To - tile.Box.From));

        Drawing over = new();
        if (template.IsJoined)
            Joins(over, template, tile, origin);
        Words(over, page, template, tile, scale, tongue);
        RulerPair.Down(over, window - new Point2(3e-3, 0), template.Scale);
        RulerPair.Across(over, new(window.X, page.RoomTo.Y - RulerPair.Depth + 2e-3), template.Scale);
        page.Draw(over, default);
    }

    /// <summary>Where this sheet is cut, where its neighbours come to lie on it, and the marks.</summary>
    private static void Joins(Drawing over, TiledTemplate template, Tile tile, Point2 origin)
    {
        TilePlan plan = template.Plan;
        Point2 from = origin + tile.Box.From, to = origin + tile.Box.To;
        if (template.HasSheet(tile.Row, tile.Column - 1))
            Line(CutHere, from, new(from.X, to.Y));
        if (template.HasSheet(tile.Row - 1, tile.Column))
            Line(CutHere, from, new(to.X, from.Y));
        if (template.HasSheet(tile.Row, tile.Column + 1))
            Line(LayHere, new(to.X - plan.Overlap, from.Y), new(to.X - plan.Overlap, to.Y));
        if (template.HasSheet(tile.Row + 1, tile.Column))
            Line(LayHere, new(from.X, to.Y - plan.Overlap), new(to.X, to.Y - plan.Overlap));
        foreach (JoinMark mark in template.Marks.Where(mark => mark.First == tile || mark.Second == tile))
        {
            Point2 at = origin + mark.At;
            Marks.Registration(over, "join-marks", at, JoinMark.Reach);
            over.Add(new DrawnText("join-labels", mark.Label, at + 0.55 * JoinMark.Reach * new Point2(1, -1), new(LabelSize, Palette.Line, Bold: true)));
        }

        void Line(Pen pen, Point2 a, Point2 b) => over.Add(new DrawnStroke("joins", pen, [a, b], Closed: false));
    }

    private static void Words(Drawing over, PaperPage page, TiledTemplate template, Tile tile, PrinterScale scale, Tongue tongue)
    {
        TemplateWords words = tongue.Words.Templates;
        Point2 at = PaperPage.RoomFrom + new Point2(0, NameSize);
        double width = page.RoomTo.X - at.X;
        bool joined = template.IsJoined;
        string name = joined ? $"{template.Template.Title}, {tile.Name}" : template.Template.Title;
        Say(name, at, NameSize, Palette.Line, bold: true);
        if (joined)
            Say(Place(template, tile, words), new(at.X + Extent.Length(name, NameSize, bold: true) + 3e-3, at.Y), PlaceSize, Palette.Line);
        double y = at.Y + FirstLine;
        foreach (string text in (ReadOnlySpan<string>)[joined ? words.JoinSheets : "", scale.IsTrue ? "" : ScaleWords(scale, tongue)])
        {
            foreach (string line in Extent.Wrap(text, WordSize, width))
            {
                Say(line, new(at.X, y), WordSize, Palette.Quiet);
                y += Line;
            }
        }

        void Say(string text, Point2 place, double height, Ink ink, bool bold = false) =>
            over.Add(new DrawnText("words", text, place, new(height, ink, Bold: bold)));
    }

    /// <summary>That the scale was put right, with what was measured.</summary>
    public static string ScaleWords(PrinterScale scale, Tongue tongue) =>
        tongue.Words.Templates.ScalePutRight(tongue.Number(100 / scale.Across, 2), tongue.Number(100 / scale.Down, 2));

    private static string Place(TiledTemplate template, Tile tile, TemplateWords words)
    {
        List<string> places = [];
        if (template.HasSheet(tile.Row, tile.Column - 1))
            places.Add(words.RightOf(Tile.NameOf(tile.Row, tile.Column - 1)));
        else if (template.HasSheet(tile.Row, tile.Column + 1))
            places.Add(words.LeftOf(Tile.NameOf(tile.Row, tile.Column + 1)));
        if (template.HasSheet(tile.Row - 1, tile.Column))
            places.Add(words.BelowSheet(Tile.NameOf(tile.Row - 1, tile.Column)));
        else if (template.HasSheet(tile.Row + 1, tile.Column))
            places.Add(words.AboveSheet(Tile.NameOf(tile.Row + 1, tile.Column)));
        return string.Join(", ", places);
    }
}
