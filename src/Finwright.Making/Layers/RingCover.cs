using Finwright.Geometry;

namespace Finwright.Making.Layers;

/// <summary>
/// Answers quickly and surely whether an area covers another. Edges are sorted into columns along x, so that each question looks at few
/// of them. When boundaries touch, the answer is no, which costs time but no truth: the areas are then cut with one another.
/// </summary>
internal sealed class RingCover
{
    private const int EdgesPerColumn = 4;
    private const int MostColumns = 512;

    private readonly IReadOnlyList<IReadOnlyList<Point2>> _rings;
    private readonly Point2[] _from;
    private readonly Point2[] _to;
    private readonly double _left;
    private readonly double _width;
    private readonly int _columns;
    private readonly int[] _starts;
    private readonly int[] _members;

    /// <summary>Sorts the edges.</summary>
    /// <param name="rings">Rings that do not cross, metres.</param>
    public RingCover(IReadOnlyList<IReadOnlyList<Point2>> rings)
    {
        _rings = rings;
        int count = 0;
        foreach (IReadOnlyList<Point2> ring in rings)
            count += ring.Count;
        _from = new Point2[count];
        _to = new Point2[count];
        int edge = 0;
        double left = double.PositiveInfinity, right = double.NegativeInfinity;
        foreach (IReadOnlyList<Point2> ring in rings)
        {
            for (int i = 0; i < ring.Count; i++, edge++)
            {
                (_from[edge], _to[edge]) = (ring[i], ring[i + 1 == ring.Count ? 0 : i + 1]);
                left = Math.Min(left, ring[i].X);
                right = Math.Max(right, ring[i].X);
            }
        }

        _columns = Math.Clamp(count / EdgesPerColumn, 1, MostColumns);
        _left = count == 0 ? 0 : left;
        _width = count == 0 || !(right > left) ? 1 : (right - left) / _columns;
        _starts = new int[_columns + 1];
        for (int i = 0; i < count; i++)
        {
            (int low, int high) = Columns(_from[i].X, _to[i].X);
            for (int column = low; column <= high; column++)
                _starts[column + 1]++;
        }

        for (int column = 0; column < _columns; column++)
            _starts[column + 1] += _starts[column];
        _members = new int[_starts[^1]];
        int[] next = _starts[..^1];
        for (int i = 0; i < count; i++)
        {
            (int low, int high) = Columns(_from[i].X, _to[i].X);
            for (int column = low; column <= high; column++)
                _members[next[column]++] = i;
        }
    }

    /// <summary>Whether the area inside other rings lies wholly inside this one.</summary>
    public bool Covers(IReadOnlyList<IReadOnlyList<Point2>> inner)
    {
        foreach (IReadOnlyList<Point2> ring in inner)
        {
            if (!Contains(ring[0]))
                return false;
            for (int i = 0; i < ring.Count; i++)
                if (Meets(ring[i], ring[i + 1 == ring.Count ? 0 : i + 1]))
                    return false;
        }

        // A hole of this area may lie wholly inside the other.
        foreach (IReadOnlyList<Point2> ring in _rings)
            if (RingAreas.Contains(inner, ring[0]))
                return false;
        return true;
    }

    private bool Contains(Point2 point)
    {
        int column = (int)Math.Floor((point.X - _left) / _width);
        if (column < 0 || column >= _columns)
            return false;
        bool inside = false;
        for (int k = _starts[column]; k < _starts[column + 1]; k++)
        {
            Point2 a = _from[_members[k]], b = _to[_members[k]];
            if (a.X <= point.X != b.X <= point.X && a.Y + (point.X - a.X) / (b.X - a.X) * (b.Y - a.Y) > point.Y)
                inside = !inside;
        }

        return inside;
    }

    private bool Meets(Point2 p, Point2 q)
    {
        (int low, int high) = Columns(p.X, q.X);
        double bottom = Math.Min(p.Y, q.Y), top = Math.Max(p.Y, q.Y);
        for (int k = _starts[low]; k < _starts[high + 1]; k++)
        {
            Point2 a = _from[_members[k]], b = _to[_members[k]];
            if (Math.Max(a.Y, b.Y) < bottom || Math.Min(a.Y, b.Y) > top)
                continue;
            double ap = (b - a).Cross(p - a), aq = (b - a).Cross(q - a);
            if (ap > 0 && aq > 0 || ap < 0 && aq < 0)
                continue;
            double pa = (q - p).Cross(a - p), pb = (q - p).Cross(b - p);
            if (pa > 0 && pb > 0 || pa < 0 && pb < 0)
                continue;
            return true;
        }

        return false;
    }

    private (int Low, int High) Columns(double x, double other) => (
        Math.Clamp((int)Math.Floor((Math.Min(x, other) - _left) / _width), 0, _columns - 1),
        Math.Clamp((int)Math.Floor((Math.Max(x, other) - _left) / _width), 0, _columns - 1));
}
