using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>Lines to write on.</summary>
internal static class BlankSlices
{
    private const double Height = 9e-3, Between = 6e-3;

    // Of its line: a longer label leaves too little to write on.
    private const double LongestLabel = 0.55;

    /// <summary>Lays them out in a width, two beside each other when the labels are short.</summary>
    public static IReadOnlyList<Slice> Of(IReadOnlyList<string> labels, double width)
    {
        TextLook look = PageLook.Small;
        double half = (width - Between) / 2;
        int across = labels.Count > 1 && labels.All(label => TextMeasure.Width(label, look.Size) <= LongestLabel * half) ? 2 : 1;
        double room = across == 2 ? half : width;
        List<Slice> slices = [];
        foreach (string[] row in labels.Chunk(across))
        {
            IReadOnlyList<string>[] words = [.. row.Select(label => TextMeasure.Lines(label, across == 2 ? room : LongestLabel * room, look.Size))];
            double text = words.Max(lines => lines.Count) * PageLook.LineOf(look), height = Math.Max(Height, text + 2 * PageLook.Space);
            slices.Add(Slice.Of(height, drawing =>
            {
                for (int i = 0; i < row.Length; i++)
                {
                    double x = i * (half + Between), top = height - words[i].Count * PageLook.LineOf(look), label = words[i].Max(line => TextMeasure.Width(line, look.Size));
                    drawing.Write(words[i], x, top, look);
                    drawing.Line(PageLook.Frame, new(x + label + (label > 0 ? PageLook.Space : 0), height - PageLook.Space / 2), new(x + room, height - PageLook.Space / 2));
                }
            }, slices.Count == 0 ? PageLook.Space : 0));
        }

        return slices;
    }
}
