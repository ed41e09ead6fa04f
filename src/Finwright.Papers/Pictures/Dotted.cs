using Finwright.Geometry;

namespace Finwright.Papers.Pictures;

/// <summary>Squares of side 1, each covered or not. Square (column, row) has its corner at (column, row).</summary>
/// <param name="columns">Squares across.</param>
/// <param name="rows">Squares down.</param>
internal sealed class Dotted(int columns, int rows)
{
    private readonly bool[] _covered = new bool[columns * rows];

    /// <summary>Covers every square whose middle lies in a triangle.</summary>
    public void Cover(Point2 a, Point2 b, Point2 c)
    {
        double top = Math.Min(a.Y, Math.Min(b.Y, c.Y)), bottom = Math.Max(a.Y, Math.Max(b.Y, c.Y));
        for (int row = Math.Max(0, (int)Math.Ceiling(top - 0.5)); row < rows && row + 0.5 <= bottom; row++)
        {
            (double from, double to) = (double.PositiveInfinity, double.NegativeInfinity);
            Cross(a, b, row + 0.5);
            Cross(b, c, row + 0.5);
            Cross(c, a, row + 0.5);
            for (int column = Math.Max(0, (int)Math.Ceiling(from - 0.5)); column < columns && column + 0.5 <= to; column++)
                _covered[row * columns + column] = true;

            void Cross(Point2 start, Point2 end, double y)
            {
                if (Math.Min(start.Y, end.Y) > y || Math.Max(start.Y, end.Y) < y)
                    return;
                double x = start.Y == end.Y ? start.X : start.X + (y - start.Y) / (end.Y - start.Y) * (end.X - start.X);
                (from, to) = (Math.Min(from, x), Math.Max(to, x));
            }
        }
    }

    /// <summary>The borders of what is covered: rings of unit steps, the covered squares always on the same hand.</summary>
    public IEnumerable<IReadOnlyList<Point2>> Borders()
    {
        SortedDictionary<int, List<int>> next = [];
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < columns; column++)
            {
                if (!IsCovered(column, row))
                    continue;
                if (!IsCovered(column, row - 1))
                    Step(column, row, column + 1, row);
                if (!IsCovered(column + 1, row))
                    Step(column + 1, row, column + 1, row + 1);
                if (!IsCovered(column, row + 1))
                    Step(column + 1, row + 1, column, row + 1);
                if (!IsCovered(column - 1, row))
                    Step(column, row + 1, column, row);
            }
        }

        while (next.Count > 0)
        {
            int start = next.Keys.First(), here = start;
            List<Point2> ring = [];
            do
            {
                ring.Add(new(here % (columns + 1), here / (columns + 1)));
                List<int> ends = next[here];
                int end = ends[^1];
                ends.RemoveAt(ends.Count - 1);
                if (ends.Count == 0)
                    next.Remove(here);
                here = end;
            }
            while (here != start);
            yield return ring;
        }

        void Step(int fromX, int fromY, int toX, int toY)
        {
            int from = fromY * (columns + 1) + fromX;
            if (!next.TryGetValue(from, out List<int>? ends))
                next[from] = ends = [];
            ends.Add(toY * (columns + 1) + toX);
        }
    }

    private bool IsCovered(int column, int row) => column >= 0 && row >= 0 && column < columns && row < rows && _covered[row * columns + column];
}
