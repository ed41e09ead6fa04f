using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>A mark in the overlap of two tiles, by which they are laid over one another.</summary>
/// <param name="Label">Its number: the same on both.</param>
/// <param name="At">Its place on the template, metres.</param>
/// <param name="First">Upper or left tile.</param>
/// <param name="Second">Lower or right tile.</param>
public sealed record JoinMark(string Label, Point2 At, Tile First, Tile Second)
{
    /// <summary>From the middle of a mark to the ends of its cross, metres.</summary>
    public const double Reach = 3e-3;

    // Room for cross and number that no line of the template should pass through.
    private const double Clear = 6e-3;
    private const int Tries = 9;

    /// <summary>Two marks for each pair of neighbouring sheets, where they stand clear of what is drawn as well as can be.</summary>
    public static IReadOnlyList<JoinMark> Of(TilePlan plan, IReadOnlyList<Tile> sheets, Drawing drawing)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentNullException.ThrowIfNull(drawing);
        List<(Point2 A, Point2 B)> edges = [.. drawing.Items.SelectMany(Edges)];
        List<JoinMark> marks = [];
        foreach (Tile tile in sheets)
        {
            if (plan.At(tile.Row, tile.Column + 1) is { } right && sheets.Contains(right))
                Add(tile, right, tile.Box.To.X - plan.Overlap / 2, tile.Box.From.Y, tile.Box.To.Y, tile.Row > 0, tile.Row + 1 < plan.Rows, (along, across) => new(across, along));
            if (plan.At(tile.Row + 1, tile.Column) is { } below && sheets.Contains(below))
                Add(tile, below, tile.Box.To.Y - plan.Overlap / 2, tile.Box.From.X, tile.Box.To.X, tile.Column > 0, tile.Column + 1 < plan.Columns, (along, across) => new(along, across));
        }

        return marks;

        void Add(Tile first, Tile second, double middle, double from, double to, bool before, bool after, Func<double, double, Point2> place)
        {
            // Not where a third and a fourth tile overlap.
            double rim = plan.Overlap / 2, start = from + rim + (before ? plan.Overlap : 0), end = to - rim - (after ? plan.Overlap : 0);
            foreach (double lower in (ReadOnlySpan<double>)[0, 0.55])
            {
                IEnumerable<Point2> places = Enumerable.Range(0, Tries).Select(i => place(start + (end - start) * (lower + 0.45 * Outward(i)), middle));
                Point2 best = places.MaxBy(p => Math.Min(Clear, edges.Select(edge => Distance(p, edge.A, edge.B)).DefaultIfEmpty(Clear).Min()));
                marks.Add(new(FormattableString.Invariant($"{marks.Count + 1}"), best, first, second));
            }
        }
    }

    // From the middle of the range outward: of places that are equally clear the first is taken.
    private static double Outward(int number) => 0.5 + (number % 2 == 0 ? 1 : -1) * ((number + 1) / 2) / (Tries - 1.0);

    private static IEnumerable<(Point2, Point2)> Edges(DrawnItem item)
    {
        IEnumerable<(IReadOnlyList<Point2> Points, bool Closed)> lines = item switch
        {
            DrawnStroke stroke => [(stroke.Points, stroke.Closed)],
            DrawnArea area => area.Rings.Select(ring => (ring, true)),
            DrawnText text => [(Extent.Corners(text), true)],
            _ => [],
        };
        return lines.SelectMany(line => Enumerable.Range(0, line.Closed ? line.Points.Count : line.Points.Count - 1).Select(i => (line.Points[i], line.Points[(i + 1) % line.Points.Count])));
    }

    private static double Distance(Point2 p, Point2 a, Point2 b)
    {
        Point2 way = b - a;
        double square = way.Dot(way), share = square > 0 ? Math.Clamp((p - a).Dot(way) / square, 0, 1) : 0;
        return (p - a - share * way).Length;
    }
}
