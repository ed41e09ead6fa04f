using Finwright.Page.Words;

namespace Finwright.Page.Plots;

/// <summary>A plot as a table: heads, and rows of text.</summary>
/// <param name="Heads">One for each column.</param>
/// <param name="Rows">The rows, each with as many texts as there are heads; an empty one where a line is not.</param>
public sealed record PlotTable(IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    // More rows than this are read by nobody: every second, third … is left in, and the marks.
    private const int MostRows = 40;

    /// <summary>Tells a plot as a table.</summary>
    /// <param name="sheet">The plot.</param>
    /// <param name="reader">The reader.</param>
    public static PlotTable Of(PlotSheet sheet, Reader reader)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(reader);
        IReadOnlyList<double> grid = sheet.Grid();
        int step = (grid.Count + MostRows - 1) / MostRows;
        HashSet<double> marked = [.. sheet.Lines.Where(line => line.Dash is PlotDash.Marks).SelectMany(line => line.Points).Select(point => point.X)];
        IEnumerable<double> shown = grid.Where((x, i) => i % Math.Max(step, 1) == 0 || i == grid.Count - 1 || marked.Contains(x));
        return new(
            [Head(sheet.X), .. sheet.Lines.Select(line => line.Name)],
            [.. shown.Select(x => (IReadOnlyList<string>)[reader.Tongue.Number(x, sheet.X.Decimals), .. sheet.Lines.Select(line => line.At(x) is double y ? reader.Tongue.Number(y, sheet.Y.Decimals) : "")])]);
    }

    /// <summary>Quantity and unit of an axis: "leeway, °".</summary>
    public static string Head(PlotAxis axis)
    {
        ArgumentNullException.ThrowIfNull(axis);
        return axis.Unit.Length == 0 ? axis.Title : $"{axis.Title}, {axis.Unit}";
    }
}
