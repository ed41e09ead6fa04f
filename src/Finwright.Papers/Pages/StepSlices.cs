using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>A step to tick: its box, what to do, why, and what to take care of.</summary>
internal static class StepSlices
{
    /// <summary>Lays it out in a width; all of it stays on one page.</summary>
    public static IReadOnlyList<Slice> Of(string text, string reason, IReadOnlyList<string> cautions, double width)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        double indent = PageLook.Indent, room = width - indent;
        TextLook look = PageLook.Text, care = PageLook.Small;
        List<Slice> slices =
        [
            .. Slice.Text(text, indent, room, look, 2.5 * PageLook.Space, keepsNext: true),
            .. Slice.Text(reason, indent, room, PageLook.Quiet, PageLook.Space / 2, keepsNext: true),
        ];
        slices[0] = slices[0].With(drawing => drawing.TickBox(0, (PageLook.LineOf(look) - PageLook.TickBox) / 2));
        foreach (string caution in cautions)
        {
            int first = slices.Count;
            slices.AddRange(Slice.Text(caution, indent + PageLook.SignIndent, room - PageLook.SignIndent, care, PageLook.Space / 2, keepsNext: true));
            slices[first] = slices[first].With(drawing => drawing.Caution(indent, (PageLook.LineOf(care) - PageLook.Sign) / 2, PageLook.Sign));
        }

        slices[^1] = slices[^1] with { KeepsNext = false };
        return slices;
    }
}
