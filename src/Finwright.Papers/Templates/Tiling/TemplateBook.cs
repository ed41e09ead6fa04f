using Finwright.Assessment;
using Finwright.Papers.Pages;
using Finwright.Papers.Words;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>The templates as a PDF for an ordinary printer, tiled over sheets of paper.</summary>
public static class TemplateBook
{
    /// <summary>Writes it.</summary>
    /// <param name="templates">The templates.</param>
    /// <param name="result">The fin.</param>
    /// <param name="settings">Paper, and what the rulers of an earlier print measured.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <returns>The file. Same templates and settings, same bytes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A ruler measured less than 90 mm or more than 110 mm.</exception>
    /// <exception cref="ArgumentException">The paper is too small.</exception>
    public static byte[] Write(IReadOnlyList<Template> templates, AssessmentResult result, PaperSettings settings, Tongue tongue)
    {
        ArgumentNullException.ThrowIfNull(templates);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(tongue);
        PrinterScale scale = PrinterScale.Of(settings.Rulers);
        string fin = result.Design?.Name ?? "";
        PageMarks marks = FinMarks.Of(result, settings, tongue, tongue.Words.Templates.BookTitle);
        TiledTemplate[] tiled = LayOut(templates, settings, marks, scale);

        PaperDocument document = new(settings, marks);
        MeasureFirst.Write(document, fin, tiled, scale, tongue);
        foreach (TiledTemplate template in tiled)
            foreach (Tile tile in template.Sheets)
                TilePage.Draw(document.AddPage(template.Plan.IsLandscape), template, tile, scale, tongue);
        return document.ToBytes();
    }

    /// <summary>Lays templates out over sheets.</summary>
    internal static TiledTemplate[] LayOut(IReadOnlyList<Template> templates, PaperSettings settings, PageMarks marks, PrinterScale scale)
    {
        PaperDocument scratch = new(settings, marks);
        TileRoom upright = RoomOf(scratch.AddPage(), scale), landscape = RoomOf(scratch.AddPage(landscape: true), scale.Turned);
        return [.. templates.Select(template => TiledTemplate.Of(template, scale, upright, landscape))];

        static TileRoom RoomOf(PaperPage page, PrinterScale scale) => TilePage.HoldsRulers(page, scale) ? TilePage.Room(page) : default;
    }
}
