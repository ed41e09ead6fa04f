using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Pen = Finwright.Papers.Drawings.Pen;

namespace Finwright.Papers.Templates;

/// <summary>A small table in a drawing, its columns as wide as what stands in them.</summary>
/// <param name="Heads">Heads of the columns.</param>
/// <param name="Numbers">Which columns stand to the right.</param>
/// <param name="Rows">Its rows, as many entries as heads.</param>
internal sealed record TemplateTable(IReadOnlyList<string> Heads, IReadOnlyList<bool> Numbers, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    private const double Size = 2.5e-3, Pitch = 4.4e-3, Between = 4e-3, Sink = 1.3e-3;
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
        Line(drawing, at, Heads, bold: true);
        foreach ((int index, IReadOnlyList<string> row) in Rows.Index())
        {
            Point2 above = at + new Point2(0, (index + 1) * Pitch);
            drawing.Add(new DrawnStroke("table", Rule, [above, above + new Point2(width, 0)], Closed: false));
            Line(drawing, above, row, bold: false);
        }

        return (Rows.Count + 1) * Pitch;
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

    private double ColumnWidth(int column) => Math.Max(Extent.Length(Heads[column], Size, bold: true), Rows.Select(row => Extent.Length(row[column], Size)).DefaultIfEmpty(0).Max());
}
