using Finwright.Geometry;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pages;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Graphics;

namespace Finwright.Papers.Tests.Pages;

/// <summary>Makes small papers and reads them back with PdfPig, which shares no code with what writes them.</summary>
internal static class Press
{
    /// <summary>A typographic point, millimetres (ISO 32000-1, 8.3.2.3: 1/72 inch).</summary>
    public const double PointMm = 25.4 / 72;

    public static PaperSettings Settings { get; } = new() { Date = new(2026, 11, 27), ProgramVersion = "0.9.0" };

    public static PageMarks Marks { get; } = new("Mudflat 21", "Build sheet", "Finwright 0.9.0 · 27 November 2026 · 4f1c0a22", (page, pages) => $"Page {page} of {pages}");

    public static byte[] Pages(Action<PaperDocument> draw, PaperSettings? settings = null, PageMarks? marks = null)
    {
        PaperDocument document = new(settings ?? Settings, marks ?? Marks);
        draw(document);
        return document.ToBytes();
    }

    public static byte[] Flow(Action<PageFlow> write, PaperSettings? settings = null) => Pages(document => write(new(document)), settings);

    public static byte[] Drawn(params DrawnItem[] items) => Pages(document =>
    {
        Drawing drawing = new();
        foreach (DrawnItem item in items)
            drawing.Add(item);
        document.AddPage().Draw(drawing, new(0.02, 0.03));
    });

    /// <summary>Words of each page between head and foot, in the order in which they were written.</summary>
    public static string[][] Words(byte[] file)
    {
        using PdfDocument read = PdfDocument.Open(file);
        return [.. read.GetPages().Select(page => Within(page).ToArray())];
    }

    /// <summary>What stands on each page between head and foot, as one text.</summary>
    public static string[] Texts(byte[] file) => [.. Words(file).Select(words => string.Join(' ', words))];

    /// <summary>The lines and areas of a page between head and foot.</summary>
    public static PdfPath[] Paths(byte[] file, int page = 1)
    {
        using PdfDocument read = PdfDocument.Open(file);
        Page found = read.GetPage(page);
        return [.. found.Paths.Where(path => path.GetBoundingRectangle() is { } box && box.Bottom * PointMm > 19 && box.Top * PointMm < found.Height * PointMm - 20)];
    }

    public static (Point2 From, Point2 To) Room(PaperSettings settings)
    {
        PaperPage page = new PaperDocument(settings, Marks).AddPage();
        return (PaperPage.RoomFrom, page.RoomTo);
    }

    private static IEnumerable<string> Within(Page page) => page.GetWords()
        .Where(word => word.BoundingBox.Bottom * PointMm > 18 && word.BoundingBox.Top * PointMm < page.Height * PointMm - 18.5)
        .Select(word => word.Text);
}
