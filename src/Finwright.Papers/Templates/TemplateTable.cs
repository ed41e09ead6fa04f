using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates;

/// <summary>A small table in a drawing, its columns as wide as what stands in them; heads are broken between words to keep it narrow.</summary>
/// <param name="Heads">Heads of the columns.</param>
/// <param name="Numbers">Which columns stand to the right.</param>
/// <param name="Rows">Its rows, as many entries as heads.</param>
internal sealed record TemplateTable(IReadOnlyList<string> Heads, IReadOnlyList<bool> Numbers, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    private const double Size = 2.5e-3, Pitch = 4.4e-3, HeadPitch = 3.3e-3, Between = 3.5e-3, Sink = 1.3e-3, HeadWidth = 18e-3;
    private static readonly Pen Rule = new(Palette.Quiet, 0.13e-3);

    /// <summary>Its width, metres.</summary>
    public double Width => Enumerable.Range(0, Heads.Count).Sum(ColumnWidth) + (Heads.Count - 1) * Between;

    /// <summary>Draws it.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="at">Its upper left corner.</param>
    /// <returns>Its height, metres.</returns>
    public double Draw(Drawing drawing, Point2 at)
    {
        double width = Width;
        IReadOnlyList<string>[] heads = [.. Heads.Select((head, column) => Extent.Wrap(head, Size, Math.Max(HeadWidth, ColumnWidth(column)), bold: true))];
        int lines = Math.Max(1, heads.Max(head => head.Count));
        // Heads end on one line, whatever their number of lines.
        for (int i = 0; i < lines; i++)
            Line(drawing, at + new Point2(0, i * HeadPitch), [.. heads.Select(head => i < lines - head.Count ? "" : head[i - lines + head.Count])], bold: true);
        double top = at.Y + Pitch + (lines - 1) * HeadPitch;
        foreach ((int index, IReadOnlyList<string> row) in Rows.Index())
        {
            Point2 above = new(at.X, top + index * Pitch);
            drawing.Add(new DrawnStroke("table", Rule, [above, above + new Point2(width, 0)], Closed: false));
            Line(drawing, above, row, bold: false);
        }

        return top + Rows.Count * Pitch - at.Y;
    }

    private void Line(Drawing drawing, Point2 at, IReadOnlyList<string> cells, bool bold)
    {
        double x = at.X;
        foreach ((int column, string cell) in cells.Index())
        {
            double width = ColumnWidth(column);
            if (cell.Length > 0)
                drawing.Add(new DrawnText("notes", cell, new(Numbers[column] ? x + width : x, at.Y + Pitch - Sink), new(Size, Palette.Line, Numbers[column] ? TextAnchor.End : TextAnchor.Start, bold)));
            x += width + Between;
        }
    }

    // As wide as the widest entry, and as its head broken into few lines.
    private double ColumnWidth(int column) => Math.Max(
        Extent.Wrap(Heads[column], Size, HeadWidth, bold: true).Select(line => Extent.Length(line, Size, bold: true)).DefaultIfEmpty(0).Max(),
        Rows.Select(row => Extent.Length(row[column], Size)).DefaultIfEmpty(0).Max());
}
