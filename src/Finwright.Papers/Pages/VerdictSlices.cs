using Finwright.Assessment.Verdicts;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>A verdict: mark, word, what was checked, its numbers to the right, and what to change below.</summary>
internal static class VerdictSlices
{
    // Words of several verdicts stand below one another.
    private const double LeastWordRoom = 25.5e-3;

    // Of the width: numbers that need more go to a line of their own.
    private const double NumbersShare = 0.4;

    /// <summary>Lays it out in a width; all of it stays on one page.</summary>
    public static IReadOnlyList<Slice> Of(VerdictState state, string stateWord, string what, string numbers, string change, double width)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(what);
        TextLook look = PageLook.Text, word = look with { Bold = true, Colour = VerdictMark.InkOf(state) }, number = look with { Anchor = TextAnchor.End };
        double line = PageLook.LineOf(look), start = PageLook.SignIndent + Math.Max(LeastWordRoom, TextMeasure.Width(stateWord, word.Size, bold: true) + 2 * PageLook.Space);
        double numbersWidth = TextMeasure.Width(numbers, number.Size);
        bool isBeside = numbers.Length > 0 && numbersWidth <= NumbersShare * width;
        double room = width - start - (isBeside ? numbersWidth + 4 * PageLook.Space : 0);

        List<Slice> slices = [.. Slice.Text(what, start, Math.Min(room, PageLook.TextWidth), look, 2 * PageLook.Space, keepsNext: true)];
        slices[0] = slices[0].With(drawing =>
        {
            VerdictMark.Draw(drawing, state, new(PageLook.Sign / 2, line / 2), PageLook.Sign / 2);
            drawing.Write(stateWord, PageLook.SignIndent, 0, word);
            if (isBeside)
                drawing.Write(numbers, width, 0, number);
        });
        if (!isBeside)
            slices.AddRange(Slice.Text(numbers, start, width - start, PageLook.Small with { Colour = Palette.Quiet }, 0, keepsNext: true));
        if (change.Length > 0)
        {
            int first = slices.Count;
            double text = start + PageLook.SignIndent;
            slices.AddRange(Slice.Text(change, text, Math.Min(width - text, PageLook.TextWidth), PageLook.Small, PageLook.Space / 4, keepsNext: true));
            slices[first] = slices[first].With(drawing => drawing.Arrow(start, PageLook.LineOf(PageLook.Small) / 2, PageLook.Sign, PageLook.Small.Colour));
        }

        slices[^1] = slices[^1] with { KeepsNext = false };
        return slices;
    }
}
