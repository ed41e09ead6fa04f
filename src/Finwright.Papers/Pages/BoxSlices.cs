using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>A framed box with a heavy left edge.</summary>
internal static class BoxSlices
{
    private const double Edge = 1.4e-3, Padding = 3 * PageLook.Space;

    /// <summary>Lays it out in a width. It stays on one page when it fits one; else the frame stays open where the page turns.</summary>
    public static IReadOnlyList<Slice> Of(string title, IReadOnlyList<string> lines, double width)
    {
        double room = Math.Min(width - 2 * Padding, PageLook.TextWidth);
        List<Slice> text =
        [
            .. Slice.Text(title, Padding, room, PageLook.Head, 0),
            .. lines.SelectMany(line => Slice.Text(line, Padding, room, PageLook.Text, PageLook.Space)),
        ];
        text.Insert(0, Slice.Of(Padding * 0.7, _ => { }));
        text.Add(Slice.Of(Padding * 0.8, _ => { }));
        return [.. text.Select((slice, i) => Framed(slice, width, i == 0, i == text.Count - 1))];
    }

    private static Slice Framed(Slice slice, double width, bool isFirst, bool isLast)
    {
        // The gap belongs to the box, so that its edges do not break there.
        double height = slice.Gap + slice.Height;
        Drawing frame = new();
        frame.Fill(Palette.Line, 0, 0, Edge, height);
        frame.Line(PageLook.Frame, new(width, 0), new(width, height));
        if (isFirst)
            frame.Line(PageLook.Frame, new(0, 0), new(width, 0));
        if (isLast)
            frame.Line(PageLook.Frame, new(0, height), new(width, height));
        return new(height, (page, at) =>
        {
            page.Draw(frame, at);
            slice.Paint(page, new(at.X, at.Y + slice.Gap));
        }, isFirst ? 3 * PageLook.Space : 0, !isLast);
    }
}
