using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>Lays out heads and rows of a table.</summary>
internal sealed class TableSlices
{
    private const double BoxPadding = 1.5e-3, BoxToWriteIn = 8e-3;
    private const double Above = 0.75 * PageLook.Space, ColumnGap = 4.5e-3;

    private readonly IReadOnlyList<TableColumn> _columns;
    private readonly bool _boxed;
    private readonly double _width;
    private readonly double[] _edges;

    /// <summary>A table in a width.</summary>
    public TableSlices(IReadOnlyList<TableColumn> columns, bool boxed, double width)
    {
        ArgumentNullException.ThrowIfNull(columns);
        double all = columns.Sum(column => column.Share);
        if (columns.Count == 0 || !(all > 0) || columns.Any(column => !(column.Share > 0)))
            throw new ArgumentException("A table needs columns, each with a share above zero.", nameof(columns));
        (_columns, _boxed, _width) = (columns, boxed, width);
        _edges = new double[columns.Count + 1];
        for (int i = 0; i < columns.Count; i++)
            _edges[i + 1] = _edges[i] + width * columns[i].Share / all;
    }

    private static TextLook Look => PageLook.Small;

    /// <summary>The heads.</summary>
    public IReadOnlyList<Slice> Heads()
    {
        TextLook bold = Look with { Bold = true };
        IReadOnlyList<string>[] cells = [.. _columns.Select((column, i) => TextMeasure.Lines(column.Title, Room(i), bold.Size, bold: true))];
        return [Row(cells, 0, cells.Max(lines => lines.Count), isLast: true, bold, ink: PageLook.Ink) with { Gap = 2 * PageLook.Space, KeepsNext = true }];
    }

    /// <summary>A row; one higher than its room is broken between its lines.</summary>
    /// <param name="entries">An entry for each column.</param>
    /// <param name="room">Greatest height, metres.</param>
    public IReadOnlyList<Slice> Row(IReadOnlyList<string> entries, double room)
    {
        if (entries.Count != _columns.Count)
            throw new ArgumentException($"A row has {entries.Count} entries, the table {_columns.Count} columns.", nameof(entries));
        IReadOnlyList<string>[] cells = [.. entries.Select((entry, i) => TextMeasure.Lines(entry, Room(i), Look.Size))];
        int lines = cells.Max(cell => cell.Count), most = Math.Max(1, (int)Math.Floor((room - 2 * Above) / PageLook.LineOf(Look)));
        List<Slice> slices = [];
        for (int from = 0; from < lines; from += most)
            slices.Add(Row(cells, from, Math.Min(most, lines - from), from + most >= lines, Look, PageLook.Rule));
        return slices;
    }

    private Slice Row(IReadOnlyList<string>[] cells, int from, int count, bool isLast, TextLook look, Pen ink)
    {
        double line = PageLook.LineOf(look), height = count * line + 2 * Above;
        if (_boxed && cells.Any(cell => cell is [""]))
            height = Math.Max(height, BoxToWriteIn);
        double top = (height - count * line) / 2;
        return Slice.Of(height, drawing =>
        {
            for (int i = 0; i < cells.Length; i++)
            {
                if (cells[i] is [PageFlow.TickEntry])
                    drawing.TickBox(_columns[i].IsNumber ? Right(i) - PageLook.TickBox : Start(i), (height - PageLook.TickBox) / 2);
                else
                    drawing.Write([.. cells[i].Skip(from).Take(count)], _columns[i].IsNumber ? Right(i) : Start(i), top, look with { Anchor = _columns[i].IsNumber ? TextAnchor.End : TextAnchor.Start });
                if (_boxed)
                    drawing.Frame(PageLook.Frame, _edges[i], 0, _edges[i + 1] - _edges[i], height);
            }

            if (!_boxed && isLast)
                drawing.Line(ink, new(0, height), new(_width, height));
        });
    }

    // Without frames the outer columns are flush with the text above and below.
    private double Start(int column) => _edges[column] + (_boxed ? BoxPadding : column == 0 ? 0 : ColumnGap / 2);

    private double Right(int column) => _edges[column + 1] - (_boxed ? BoxPadding : column == _columns.Count - 1 ? 0 : ColumnGap / 2);

    private double Room(int column) => Right(column) - Start(column);
}
