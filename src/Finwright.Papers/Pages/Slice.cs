using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>A strip across the column that no page break goes through.</summary>
/// <param name="Height">Its height, metres.</param>
/// <param name="Paint">Puts it on a page, given its upper left corner.</param>
/// <param name="Gap">Room above it, left out at the top of a page, metres.</param>
/// <param name="KeepsNext">Whether it stays on one page with the slice below it.</param>
internal sealed record Slice(double Height, Action<PaperPage, Point2> Paint, double Gap = 0, bool KeepsNext = false)
{
    /// <summary>A slice with something drawn from its upper left corner.</summary>
    public static Slice Of(double height, Action<Drawing> draw, double gap = 0, bool keepsNext = false) => new Slice(height, (_, _) => { }, gap, keepsNext).With(draw);

    /// <summary>Lines of text, one slice each; no first or last line stands alone on a page. None when the text is empty.</summary>
    /// <param name="text">The text.</param>
    /// <param name="x">Where its lines start.</param>
    /// <param name="width">How long they may be.</param>
    /// <param name="look">Their look.</param>
    /// <param name="gap">Room above the first.</param>
    /// <param name="keepsNext">Whether all of it stays on one page with what follows.</param>
    public static IEnumerable<Slice> Text(string text, double x, double width, TextLook look, double gap, bool keepsNext = false)
    {
        IReadOnlyList<string> lines = text.Length == 0 ? [] : TextMeasure.Lines(text, width, look.Size, look.Bold);
        return lines.Select((line, i) => Of(PageLook.LineOf(look), drawing => drawing.Write(line, x, 0, look), i == 0 ? gap : 0, keepsNext || (i < lines.Count - 1 && (i == 0 || i == lines.Count - 2))));
    }

    /// <summary>The same with more drawn on it.</summary>
    public Slice With(Action<Drawing> draw)
    {
        Drawing drawing = new();
        draw(drawing);
        return this with
        {
            Paint = (page, at) =>
            {
                Paint(page, at);
                page.Draw(drawing, at);
            },
        };
    }
}
