using OxyPlot;

namespace Finwright.Assessment.Figures;

/// <summary>A field on a grid of rows and columns laid over a shape.</summary>
/// <remarks>Between the points the field is taken as flat over triangles, two to each cell. Rows may draw together to a point.</remarks>
internal sealed class FieldGrid
{
    private readonly double[] _values;
    private readonly DataPoint[] _places;

    /// <summary>Takes places and values, row after row.</summary>
    /// <param name="columns">Points in a row, 2 or more.</param>
    /// <param name="places">Where the points are.</param>
    /// <param name="values">The field there, finite.</param>
    public FieldGrid(int columns, DataPoint[] places, double[] values)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(columns, 2);
        if (places.Length != values.Length || places.Length % columns != 0 || places.Length < 2 * columns)
            throw new ArgumentException($"A field needs whole rows of {columns} and a value for each place; it was given {places.Length} places and {values.Length} values.", nameof(values));
        if (!values.All(double.IsFinite))
            throw new ArgumentException("A field must be finite everywhere.", nameof(values));
        (Columns, _places, _values) = (columns, places, values);
    }

    /// <summary>Points in a row.</summary>
    public int Columns { get; }

    /// <summary>Rows.</summary>
    public int Rows => _places.Length / Columns;

    /// <summary>Least value.</summary>
    public double Least => _values.Min();

    /// <summary>Greatest value.</summary>
    public double Greatest => _values.Max();

    /// <summary>Where a point is.</summary>
    public DataPoint At(int row, int column) => _places[row * Columns + column];

    /// <summary>Where the field reaches a level, as closed rings: outer ones turn one way, holes the other.</summary>
    /// <param name="level">The level.</param>
    /// <returns>The rings, last point not repeated; none when the field stays below.</returns>
    public IReadOnlyList<IReadOnlyList<DataPoint>> RegionFrom(double level)
    {
        // Triangles are clipped at the level; edges between neighbours run both ways and cancel, what is left is the border.
        HashSet<(long From, long To)> edges = [];
        for (int row = 0; row + 1 < Rows; row++)
        {
            for (int column = 0; column + 1 < Columns; column++)
            {
                int a = row * Columns + column, b = a + 1, c = b + Columns, d = a + Columns;
                Clip(edges, level, a, b, c);
                Clip(edges, level, a, c, d);
            }
        }

        SortedDictionary<long, List<long>> next = [];
        foreach ((long from, long to) in edges.Order())
        {
            if (!next.TryGetValue(from, out List<long>? ends))
                next[from] = ends = [];
            ends.Add(to);
        }

        List<IReadOnlyList<DataPoint>> rings = [];
        while (next.Count > 0)
        {
            long start = next.Keys.First(), here = start;
            List<DataPoint> ring = [];
            do
            {
                ring.Add(Place(here, level));
                List<long> ends = next[here];
                long end = ends[^1];
                ends.RemoveAt(ends.Count - 1);
                if (ends.Count == 0)
                    next.Remove(here);
                here = end;
            }
            while (here != start);
            rings.Add(ring);
        }

        return rings;
    }

    /// <summary>Rings as one line that is closed and encloses what they enclose: from the first ring to each other one and back on the same way.</summary>
    /// <param name="rings">The rings.</param>
    public static IReadOnlyList<DataPoint> Joined(IReadOnlyList<IReadOnlyList<DataPoint>> rings)
    {
        List<DataPoint> line = [];
        foreach (IReadOnlyList<DataPoint> ring in rings)
        {
            line.AddRange(ring);
            line.Add(ring[0]);
            line.Add(rings[0][0]);
        }

        return line;
    }

    private void Clip(HashSet<(long From, long To)> edges, double level, int a, int b, int c)
    {
        Span<long> kept = stackalloc long[4];
        int count = 0;
        ReadOnlySpan<int> corners = [a, b, c];
        for (int i = 0; i < corners.Length; i++)
        {
            int here = corners[i], other = corners[(i + 1) % corners.Length];
            bool isIn = _values[here] >= level;
            if (isIn)
                kept[count++] = Key(here, here);
            if (isIn != _values[other] >= level)
                kept[count++] = Key(Math.Min(here, other), Math.Max(here, other));
        }

        for (int i = 0; i < count; i++)
        {
            (long from, long to) = (kept[i], kept[(i + 1) % count]);
            if (!edges.Remove((to, from)))
                edges.Add((from, to));
        }
    }

    // A point of the grid is its own pair; a crossing is the pair of points that it lies between.
    private long Key(int low, int high) => (long)low * _places.Length + high;

    private DataPoint Place(long key, double level)
    {
        int low = (int)(key / _places.Length), high = (int)(key % _places.Length);
        if (low == high)
            return _places[low];
        double share = (level - _values[low]) / (_values[high] - _values[low]);
        return new(_places[low].X + share * (_places[high].X - _places[low].X), _places[low].Y + share * (_places[high].Y - _places[low].Y));
    }
}
