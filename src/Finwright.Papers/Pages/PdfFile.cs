using Finwright.Papers.Drawings;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Finwright.Papers.Pages;

/// <summary>Writes pages as a PDF file (ISO 32000-1).</summary>
internal static class PdfFile
{
    // Fonts are kept for the whole process: one document is written after the other.
    private static readonly Lock Press = new();

    static PdfFile() => GlobalFontSettings.FontResolver = new InterResolver();

    /// <summary>Writes a file.</summary>
    public static byte[] Write(PaperSettings settings, PageMarks marks, IReadOnlyList<PaperPage> pages)
    {
        lock (Press)
        {
            using PdfDocument document = new();
            document.Info.Title = $"{marks.Title}: {marks.Kind}";
            document.Info.Creator = $"Finwright {settings.ProgramVersion}";
            document.Info.CreationDate = settings.Date.ToDateTime(new(12, 0), DateTimeKind.Utc);
            document.Language = settings.Language == PaperLanguage.German ? "de" : "en";
            document.ViewerPreferences.Elements.SetName("/PrintScaling", "/None");
            document.ViewerPreferences.DisplayDocTitle = true;
            for (int i = 0; i < pages.Count; i++)
            {
                PdfPage sheet = document.AddPage();
                sheet.Width = XUnit.FromMillimeter(1e3 * pages[i].Width);
                sheet.Height = XUnit.FromMillimeter(1e3 * pages[i].Height);
                using XGraphics graphics = XGraphics.FromPdfPage(sheet);
                PdfPaper paper = new(graphics);
                foreach (IPlaced placed in pages[i].Placed)
                    placed.Paint(paper);
                new PlacedDrawing(Marks(pages[i], marks, marks.PageOf(i + 1, pages.Count)).Items, new(0, 0), clip: null).Paint(paper);
            }

            using MemoryStream file = new();
            document.Save(file, closeStream: false);
            return SameBytes.Of(file.ToArray(), settings.Date);
        }
    }

    private static Drawing Marks(PaperPage page, PageMarks marks, string number)
    {
        Drawing drawing = new();
        TextLook quiet = PageLook.Quiet, name = quiet with { Bold = true, Colour = PageLook.Text.Colour }, right = quiet with { Anchor = TextAnchor.End };
        double left = PageLook.Margin, end = page.Width - PageLook.Margin, gap = 4e-3, line = PageLook.LineOf(quiet);
        double head = PageLook.Margin, foot = page.Height - PageLook.Margin - line;

        double kind = TextMeasure.Width(marks.Kind, quiet.Size);
        drawing.Write(TextMeasure.Fitted(marks.Title, end - left - kind - gap, name.Size, bold: true), left, head, name);
        drawing.Write(marks.Kind, end, head, right);
        drawing.Line(PageLook.Rule, new(left, head + line + 1e-3), new(end, head + line + 1e-3));

        double pageOf = TextMeasure.Width(number, quiet.Size);
        drawing.Line(PageLook.Rule, new(left, foot - 1e-3), new(end, foot - 1e-3));
        drawing.Write(TextMeasure.Fitted(marks.Foot, end - left - pageOf - gap, quiet.Size), left, foot, quiet);
        drawing.Write(number, end, foot, right);
        return drawing;
    }
}
