using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Views;

/// <summary>The block that tells which drawing it is: name of the fin in a dark head, rows of labelled entries below.</summary>
internal static class TitleBlock
{
    private const double Row = 7.6e-3, Head = 9e-3, Side = 1.6e-3;
    private const double LabelSize = 1.9e-3, EntrySize = 2.8e-3, NameSize = 4.2e-3;
    private static readonly Pen Frame = new(Palette.Line, 0.3e-3);
    private static readonly Pen Rule = new(Palette.Quiet, 0.13e-3);

    /// <summary>Height of a block with so many rows, metres.</summary>
    public static double Height(int rows) => Head + rows * Row;

    /// <summary>Draws it.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="at">Its upper left corner.</param>
    /// <param name="width">Its width, metres.</param>
    /// <param name="name">Name of the fin.</param>
    /// <param name="rows">Rows of entries; the entries of a row share its width evenly.</param>
    public static void Draw(Drawing drawing, Point2 at, double width, string name, IReadOnlyList<IReadOnlyList<(string Label, string Entry)>> rows)
    {
        double height = Height(rows.Count);
        drawing.Add(new DrawnArea("title", Palette.Line, [Box(at, width, Head)]));
        Say(name, at + new Point2(Side, Head / 2 + 0.36 * NameSize), NameSize, ViewPens.Paper, width - 2 * Side, bold: true);
        for (int i = 0; i < rows.Count; i++)
        {
            double y = at.Y + Head + i * Row, cell = width / rows[i].Count;
            if (i > 0)
                drawing.Add(new DrawnStroke("title", Rule, [new(at.X, y), new(at.X + width, y)], Closed: false));
            for (int k = 0; k < rows[i].Count; k++)
            {
                double x = at.X + k * cell;
                if (k > 0)
                    drawing.Add(new DrawnStroke("title", Rule, [new(x, y), new(x, y + Row)], Closed: false));
                Say(rows[i][k].Label, new(x + Side, y + 2.6e-3), LabelSize, Palette.Quiet, cell - 2 * Side);
                Say(rows[i][k].Entry, new(x + Side, y + Row - 1.7e-3), EntrySize, Palette.Line, cell - 2 * Side);
            }
        }

        drawing.Add(new DrawnStroke("title", Frame, Box(at, width, height), Closed: true));

        // What is too long for its room is written smaller.
        void Say(string text, Point2 place, double size, Ink ink, double room, bool bold = false) =>
            drawing.Add(new DrawnText("title", text, place, new(Math.Min(size, size * room / Math.Max(Extent.Length(text, size, bold), 1e-9)), ink, Bold: bold)));
    }

    private static Point2[] Box(Point2 at, double width, double height) => [at, at + new Point2(width, 0), at + new Point2(width, height), at + new Point2(0, height)];
}
