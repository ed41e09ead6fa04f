using Finwright.Assessment;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pages;
using Finwright.Papers.Templates;
using Finwright.Papers.Words;

namespace Finwright.Papers.Views;

/// <summary>The dimensioned drawing of a fin on one sheet.</summary>
public static class FinDrawing
{
    /// <summary>Draws it.</summary>
    /// <param name="result">A fin without errors, worked out to its parts at least.</param>
    /// <param name="settings">Paper, date and version.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <returns>The sheet as PDF and as SVG. Same fin and settings, same bytes.</returns>
    /// <exception cref="ArgumentException">The fin has errors or was not worked out to its parts, or the paper is too small.</exception>
    public static (byte[] Pdf, byte[] Svg) Write(AssessmentResult result, PaperSettings settings, Tongue tongue)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(tongue);
        PaperDocument document = new(settings, FinMarks.Of(result, settings, tongue, tongue.Words.Views.DrawingTitle));
        PaperPage page = document.AddPage(landscape: true);
        Drawing sheet = Sheet(result, settings, tongue, page.RoomTo.X - PaperPage.RoomFrom.X, page.RoomTo.Y - PaperPage.RoomFrom.Y).Drawing;
        page.Draw(sheet, PaperPage.RoomFrom);
        using MemoryStream svg = new();
        SvgFile.Write(sheet, result.Design?.Name ?? "", svg);
        return (document.ToBytes(), svg.ToArray());
    }

    /// <summary>The sheet as a drawing in a room of its own, from its upper left corner, and the scale of its main views.</summary>
    internal static (Drawing Drawing, double Scale) Sheet(AssessmentResult result, PaperSettings settings, Tongue tongue, double width, double height)
    {
        FinSheet sheet = new(TemplateFin.Of(result), FinMarks.Hash(result), settings, tongue);
        foreach (double scale in ViewScale.All)
            foreach (bool compact in (ReadOnlySpan<bool>)[false, true])
                if (sheet.TryLay(scale, compact, width, height) is { } drawing)
                    return (drawing, scale);
        throw new ArgumentException("The paper is too small to draw the fin on: take a larger paper.", nameof(settings));
    }
}
