using Finwright.Geometry;
using Finwright.Making.Layers;
using Finwright.Making.Voxels;
using OxyPlot;

namespace Finwright.Assessment.Figures;

/// <summary>A part seen level from the side while it is held for the pour: up on the paper is up. The eye looks along that direction, square to up, in which the part is thinnest.</summary>
/// <remarks>Places on the view are in millimetres, x to the right and y downward, from the upper left corner of a frame round the part.</remarks>
internal sealed class SideView
{
    private const double Millimetres = 1e3;

    // Rays are this much closer together than the cells, and so are the samples along each.
    private const double Finer = 0.75;

    // The outline is found on dots: so many along the longer side of the frame, or fewer, so that layers and lines through them lie this much closer together than dots.
    private const int Dots = 700;
    private const double Closer = 0.6;

    // Empty rim round the part, in rays.
    private const int Rim = 3;

    private readonly PartVoxels _voxels;
    private readonly Point3 _right, _up, _toEye;
    private readonly double _left, _top, _near, _far, _step;
    private readonly int _columns, _rows;

    /// <summary>Looks at a part.</summary>
    /// <param name="voxels">The part on its grid.</param>
    /// <param name="layers">The part layer by layer: its outline.</param>
    /// <param name="up">Upward direction, layer axes.</param>
    /// <param name="aft">Direction that is laid to the right as far as it can be, layer axes.</param>
    public SideView(PartVoxels voxels, PartLayers layers, Point3 up, Point3 aft)
    {
        _voxels = voxels;
        _up = 1 / up.Length * up;
        _toEye = Thinnest(voxels, _up);
        _right = _up.Cross(_toEye);
        Point3 wanted = aft - aft.Dot(_up) * _up;
        if (_right.Dot(wanted) < 0)
            (_right, _toEye) = (-1 * _right, -1 * _toEye);
        double edge = Math.Min(voxels.Cell.X, Math.Min(voxels.Cell.Y, voxels.Cell.Z));
        _step = Finer * edge;
        (double left, double right) = Extent(voxels, _right);
        (double low, double high) = Extent(voxels, _up);
        (_near, _far) = Extent(voxels, _toEye);
        (_left, _top) = (left - Rim * _step, high + Rim * _step);
        _columns = (int)Math.Ceiling((right - left) / _step) + 2 * Rim + 1;
        _rows = (int)Math.Ceiling((high - low) / _step) + 2 * Rim + 1;
        Silhouette = Outline(layers);
    }

    /// <summary>Width of the frame, mm.</summary>
    public double Width => Millimetres * (_columns - 1) * _step;

    /// <summary>Height of the frame, mm.</summary>
    public double Height => Millimetres * (_rows - 1) * _step;

    /// <summary>Outline of the part, mm.</summary>
    public IReadOnlyList<IReadOnlyList<DataPoint>> Silhouette { get; }

    /// <summary>Where a place is seen, mm.</summary>
    /// <param name="place">Layer axes, metres.</param>
    public DataPoint At(Point3 place) => new(Millimetres * (place.Dot(_right) - _left), Millimetres * (_top - place.Dot(_up)));

    /// <summary>Where a direction points on the view: to the right and downward.</summary>
    public DataPoint Way(Point3 direction) => new(direction.Dot(_right), -direction.Dot(_up));

    /// <summary>How much of something lies behind each place: the sum of shares along the ray, metres.</summary>
    /// <param name="shares">Share of each cell of the grid.</param>
    public FieldGrid Through(double[] shares) => Over((_, _, sample) =>
    {
        double sum = 0;
        for (double depth = _near + _step / 2; depth < _far; depth += _step)
            sum += _step * Blend(shares, sample(depth)).Value;
        return sum;
    });

    /// <summary>The greatest value behind each place; beside the part, that of the nearest place of the part.</summary>
    /// <param name="values">Value of each cell of the grid; not a number where there is none. At least one is a number.</param>
    public FieldGrid Greatest(double[] values)
    {
        double[] greatest = new double[_rows * _columns];
        FieldGrid field = Over((row, column, sample) =>
        {
            double most = double.NegativeInfinity;
            for (double depth = _near + _step / 2; depth < _far; depth += _step)
            {
                (double value, double weight) = Blend(values, sample(depth));
                if (weight > 0.25)
                    most = Math.Max(most, value / weight);
            }

            greatest[row * _columns + column] = most;
            return 0;
        });
        Spread(greatest);
        return new(_columns, [.. Enumerable.Range(0, greatest.Length).Select(i => field.At(i / _columns, i % _columns))], greatest);
    }

    /// <summary>Every dot that a line through the part meets, layer by layer and row by row; the border of these dots, softened over three of them.</summary>
    private IReadOnlyList<IReadOnlyList<DataPoint>> Outline(PartLayers part)
    {
        double width = (_columns - 1) * _step, height = (_rows - 1) * _step, dot = Math.Max(Math.Max(width, height) / Dots, part.Layers.Max(layer => layer.Height) / Closer);
        int columns = (int)Math.Ceiling(width / dot) + 1, rows = (int)Math.Ceiling(height / dot) + 1;
        bool[] isMet = new bool[rows * columns];
        List<double> crossings = [];
        foreach (Layer layer in part.Layers)
        {
            double low = layer.Outline.SelectMany(ring => ring).Select(p => p.Y).DefaultIfEmpty(0).Min(), high = layer.Outline.SelectMany(ring => ring).Select(p => p.Y).DefaultIfEmpty(0).Max();
            int lines = Math.Max(1, (int)Math.Ceiling((high - low) / (Closer * dot)));
            for (int line = 0; line < lines; line++)
            {
                double y = low + (line + 0.5) * (high - low) / lines;
                Crossings(layer.Outline, y, crossings);
                for (int i = 0; i + 1 < crossings.Count; i += 2)
                    Meet(new(crossings[i], y, layer.Middle), new(crossings[i + 1], y, layer.Middle));
            }
        }

        DataPoint[] places = new DataPoint[rows * columns];
        double[] share = new double[places.Length];
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < columns; column++)
            {
                places[row * columns + column] = new(Millimetres * column * dot, Millimetres * row * dot);
                int met = 0;
                for (int r = Math.Max(0, row - 1); r <= Math.Min(rows - 1, row + 1); r++)
                    for (int c = Math.Max(0, column - 1); c <= Math.Min(columns - 1, column + 1); c++)
                        met += isMet[r * columns + c] ? 1 : 0;
                share[row * columns + column] = met / 9.0;
            }
        }

        return new FieldGrid(columns, places, share).RegionFrom(0.5);

        void Meet(Point3 from, Point3 to)
        {
            int steps = Math.Max(1, (int)Math.Ceiling((to - from).Length / (Closer * dot)));
            for (int step = 0; step <= steps; step++)
            {
                Point3 at = from + (double)step / steps * (to - from);
                int column = (int)Math.Round((at.Dot(_right) - _left) / dot), row = (int)Math.Round((_top - at.Dot(_up)) / dot);
                if (column >= 0 && row >= 0 && column < columns && row < rows)
                    isMet[row * columns + column] = true;
            }
        }
    }

    /// <summary>Where rings cross a line of one y, from left to right.</summary>
    private static void Crossings(IReadOnlyList<IReadOnlyList<Point2>> rings, double y, List<double> crossings)
    {
        crossings.Clear();
        foreach (IReadOnlyList<Point2> ring in rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                (Point2 a, Point2 b) = (ring[i], ring[i + 1 < ring.Count ? i + 1 : 0]);
                if (a.Y <= y != b.Y <= y)
                    crossings.Add(a.X + (y - a.Y) / (b.Y - a.Y) * (b.X - a.X));
            }
        }

        crossings.Sort();
    }

    private FieldGrid Over(Func<int, int, Func<double, Point3>, double> of)
    {
        DataPoint[] places = new DataPoint[_rows * _columns];
        double[] values = new double[places.Length];
        for (int row = 0; row < _rows; row++)
        {
            for (int column = 0; column < _columns; column++)
            {
                double x = _left + column * _step, y = _top - row * _step;
                places[row * _columns + column] = new(Millimetres * column * _step, Millimetres * row * _step);
                values[row * _columns + column] = of(row, column, depth => x * _right + y * _up + depth * _toEye);
            }
        }

        return new(_columns, places, values);
    }

    /// <summary>Value between the middles of the eight cells round a place, and the weight of those that have one; nothing outside the grid.</summary>
    private (double Value, double Weight) Blend(double[] values, Point3 at)
    {
        double x = (at.X - _voxels.Origin.X) / _voxels.Cell.X - 0.5, y = (at.Y - _voxels.Origin.Y) / _voxels.Cell.Y - 0.5, z = (at.Z - _voxels.Origin.Z) / _voxels.Cell.Z - 0.5;
        int i = (int)Math.Floor(x), j = (int)Math.Floor(y), k = (int)Math.Floor(z);
        (x, y, z) = (x - i, y - j, z - k);
        double sum = 0, weights = 0;
        for (int c = 0; c < 8; c++)
        {
            (int di, int dj, int dk) = (c & 1, (c >> 1) & 1, c >> 2);
            if (i + di < 0 || j + dj < 0 || k + dk < 0 || i + di >= _voxels.CountX || j + dj >= _voxels.CountY || k + dk >= _voxels.CountZ)
                continue;
            double value = values[_voxels.Index(i + di, j + dj, k + dk)];
            if (double.IsNaN(value))
                continue;
            double weight = (di == 1 ? x : 1 - x) * (dj == 1 ? y : 1 - y) * (dk == 1 ? z : 1 - z);
            sum += weight * value;
            weights += weight;
        }

        return (sum, weights);
    }

    /// <summary>Carries values outward to places that have none, ring by ring: each takes the mean of its neighbours that have one.</summary>
    private void Spread(double[] values)
    {
        List<int> empty = [.. Enumerable.Range(0, values.Length).Where(i => double.IsNegativeInfinity(values[i]))];
        while (empty.Count > 0 && empty.Count < values.Length)
        {
            List<(int Index, double Value)> filled = [];
            foreach (int i in empty)
            {
                double sum = 0;
                int count = 0, row = i / _columns, column = i % _columns;
                for (int r = Math.Max(0, row - 1); r <= Math.Min(_rows - 1, row + 1); r++)
                {
                    for (int c = Math.Max(0, column - 1); c <= Math.Min(_columns - 1, column + 1); c++)
                    {
                        if (double.IsNegativeInfinity(values[r * _columns + c]))
                            continue;
                        sum += values[r * _columns + c];
                        count++;
                    }
                }

                if (count > 0)
                    filled.Add((i, sum / count));
            }

            foreach ((int index, double value) in filled)
                values[index] = value;
            empty.RemoveAll(i => !double.IsNegativeInfinity(values[i]));
        }
    }

    /// <summary>Of the grid's axes laid square to up, the one along which the part is thinnest.</summary>
    private static Point3 Thinnest(PartVoxels voxels, Point3 up)
    {
        Point3 best = default;
        double least = double.PositiveInfinity;
        foreach (Point3 axis in (Point3[])[new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)])
        {
            Point3 level = axis - axis.Dot(up) * up;
            // An axis that stands nearly upright says nothing about the way to look.
            if (level.Length < 0.5)
                continue;
            level = 1 / level.Length * level;
            (double low, double high) = Extent(voxels, level);
            if (high - low < least)
                (best, least) = (level, high - low);
        }

        return best;
    }

    private static (double Low, double High) Extent(PartVoxels voxels, Point3 way)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        double half = 0.5 * (Math.Abs(way.X) * voxels.Cell.X + Math.Abs(way.Y) * voxels.Cell.Y + Math.Abs(way.Z) * voxels.Cell.Z);
        for (int k = 0; k < voxels.CountZ; k++)
            for (int j = 0; j < voxels.CountY; j++)
                for (int i = 0; i < voxels.CountX; i++)
                    if (voxels.Part[voxels.Index(i, j, k)] > 0)
                    {
                        double at = voxels.Centre(i, j, k).Dot(way);
                        (low, high) = (Math.Min(low, at - half), Math.Max(high, at + half));
                    }

        return (low, high);
    }
}
