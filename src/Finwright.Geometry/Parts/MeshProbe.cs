namespace Finwright.Geometry.Parts;

/// <summary>
/// Measures a finished mesh: where lines across the fin meet it, and how much room there is round a rod. Skin, bores,
/// pockets and slots all count alike, because all are surface.
/// </summary>
/// <remarks>Triangles are sorted into a grid over x and y, so that each question looks at few of them.</remarks>
public sealed class MeshProbe
{
    private const int CellsAlongTheLongerSide = 160;

    /// <summary>Lines are shifted by this, metres, so that they do not run exactly along an edge of a regular mesh.</summary>
    private const double Aside = 1.3e-9;

    private readonly TriangleMesh _mesh;
    private readonly Bounds _bounds;
    private readonly double _cell;
    private readonly int _columns;
    private readonly int _rows;
    private readonly int[] _starts;
    private readonly int[] _members;

    /// <summary>Sorts the triangles.</summary>
    /// <param name="mesh">Closed mesh, at least one triangle, metres.</param>
    public MeshProbe(TriangleMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        if (mesh.TriangleCount == 0)
            throw new ArgumentException("An empty mesh cannot be measured.", nameof(mesh));
        _mesh = mesh;
        _bounds = mesh.Bounds();
        _cell = Math.Max(1e-6, Math.Max(_bounds.Size.X, _bounds.Size.Y) / CellsAlongTheLongerSide);
        _columns = (int)(_bounds.Size.X / _cell) + 1;
        _rows = (int)(_bounds.Size.Y / _cell) + 1;
        _starts = new int[_columns * _rows + 1];
        for (int t = 0; t < mesh.TriangleCount; t++)
            EachCell(CellsOf(t), cell => _starts[cell + 1]++);
        for (int cell = 0; cell < _columns * _rows; cell++)
            _starts[cell + 1] += _starts[cell];
        _members = new int[_starts[^1]];
        int[] next = _starts[..^1];
        for (int t = 0; t < mesh.TriangleCount; t++)
            EachCell(CellsOf(t), cell => _members[next[cell]++] = t);
    }

    /// <summary>The box round the mesh.</summary>
    public Bounds Bounds => _bounds;

    /// <summary>Where a line across the fin meets the surface: all z, falling, so that starboard comes first. An even number for a closed mesh.</summary>
    /// <param name="x">Design axis, metres.</param>
    /// <param name="y">Design axis, metres.</param>
    public IReadOnlyList<double> Crossings(double x, double y)
    {
        x += Aside;
        y += Aside / 2;
        List<double> hits = [];
        int column = Column(x), row = Row(y);
        if (column < 0 || column >= _columns || row < 0 || row >= _rows)
            return hits;
        int cell = row * _columns + column;
        for (int i = _starts[cell]; i < _starts[cell + 1]; i++)
        {
            (Point3 a, Point3 b, Point3 c) = Triangle(_members[i]);
            double wa = Side(b, c, x, y), wb = Side(c, a, x, y), wc = Side(a, b, x, y);
            if ((wa > 0 && wb > 0 && wc > 0) || (wa < 0 && wb < 0 && wc < 0))
                hits.Add((wa * a.Z + wb * b.Z + wc * c.Z) / (wa + wb + wc));
        }

        hits.Sort((p, q) => q.CompareTo(p));
        return hits;
    }

    /// <summary>Whether a point lies inside the solid.</summary>
    public bool Contains(Point3 point) => Crossings(point.X, point.Y).Count(z => z > point.Z) % 2 == 1;

    /// <summary>Distance of a segment from the nearest surface, metres; <paramref name="within"/> when it is farther than that. It does not tell inside from outside.</summary>
    /// <param name="from">One end, metres.</param>
    /// <param name="to">Other end, metres.</param>
    /// <param name="within">How far to look, metres.</param>
    public double Distance(Point3 from, Point3 to, double within)
    {
        int left = Math.Max(0, Column(Math.Min(from.X, to.X) - within)), right = Math.Min(_columns - 1, Column(Math.Max(from.X, to.X) + within));
        int low = Math.Max(0, Row(Math.Min(from.Y, to.Y) - within)), high = Math.Min(_rows - 1, Row(Math.Max(from.Y, to.Y) + within));
        double least = within;
        for (int row = low; row <= high; row++)
        {
            for (int column = left; column <= right; column++)
            {
                int cell = row * _columns + column;
                for (int i = _starts[cell]; i < _starts[cell + 1]; i++)
                {
                    // A long triangle stands in many cells: it is measured in the first of them that is looked at.
                    (int firstColumn, int firstRow, _, _) = CellsOf(_members[i]);
                    if (column != Math.Max(left, firstColumn) || row != Math.Max(low, firstRow))
                        continue;
                    (Point3 a, Point3 b, Point3 c) = Triangle(_members[i]);
                    if (BoxesApart(from, to, a, b, c) < least)
                        least = Math.Min(least, SegmentDistance.ToTriangle(from, to, a, b, c));
                }
            }
        }

        return least;
    }

    /// <summary>Greatest gap along one axis between the boxes round the segment and the triangle: never more than their distance.</summary>
    private static double BoxesApart(Point3 from, Point3 to, Point3 a, Point3 b, Point3 c) => Math.Max(
        Gap(from.X, to.X, a.X, b.X, c.X), Math.Max(Gap(from.Y, to.Y, a.Y, b.Y, c.Y), Gap(from.Z, to.Z, a.Z, b.Z, c.Z)));

    private static double Gap(double p, double q, double a, double b, double c) => Math.Max(
        Math.Min(a, Math.Min(b, c)) - Math.Max(p, q), Math.Min(p, q) - Math.Max(a, Math.Max(b, c)));

    private static double Side(Point3 a, Point3 b, double x, double y) => (b.X - a.X) * (y - a.Y) - (b.Y - a.Y) * (x - a.X);

    private (Point3 A, Point3 B, Point3 C) Triangle(int t) =>
        (_mesh.Vertex(_mesh.Triangles[3 * t]), _mesh.Vertex(_mesh.Triangles[3 * t + 1]), _mesh.Vertex(_mesh.Triangles[3 * t + 2]));

    private int Column(double x) => (int)Math.Floor((x - _bounds.Minimum.X) / _cell);

    private int Row(double y) => (int)Math.Floor((y - _bounds.Minimum.Y) / _cell);

    private (int Left, int Low, int Right, int High) CellsOf(int t)
    {
        (Point3 a, Point3 b, Point3 c) = Triangle(t);
        return (
            Column(Math.Min(a.X, Math.Min(b.X, c.X))), Row(Math.Min(a.Y, Math.Min(b.Y, c.Y))),
            Column(Math.Max(a.X, Math.Max(b.X, c.X))), Row(Math.Max(a.Y, Math.Max(b.Y, c.Y))));
    }

    private void EachCell((int Left, int Low, int Right, int High) range, Action<int> visit)
    {
        for (int row = Math.Max(0, range.Low); row <= Math.Min(_rows - 1, range.High); row++)
            for (int column = Math.Max(0, range.Left); column <= Math.Min(_columns - 1, range.Right); column++)
                visit(row * _columns + column);
    }
}
