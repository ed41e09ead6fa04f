namespace Finwright.Geometry.Blades;

/// <summary>A grid of points of the true skin over one run of rows, with outward normals.</summary>
internal sealed class SkinRows
{
    private readonly double[] _depths;
    private readonly Point2[] _points, _planeNormals;
    private readonly Point3[] _normals;

    private SkinRows(int rows, int count)
    {
        (RowCount, Count) = (rows, count);
        _depths = new double[rows];
        _points = new Point2[rows * count];
        _planeNormals = new Point2[rows * count];
        _normals = new Point3[rows * count];
    }

    /// <summary>Number of rows.</summary>
    public int RowCount { get; }

    /// <summary>Points in a row.</summary>
    public int Count { get; }

    /// <summary>A point of the skin.</summary>
    public Point3 At(int row, int j)
    {
        Point2 p = _points[row * Count + j];
        return new(p.X, _depths[row], p.Y);
    }

    /// <summary>Outward unit normal of the skin.</summary>
    public Point3 Normal(int row, int j) => _normals[row * Count + j];

    /// <summary>Computes the skin at the given parameters of a run.</summary>
    public static SkinRows Sample(Blade blade, RingTable table, RowSegment run, double[] parameters)
    {
        SkinRows rows = new(parameters.Length, table.Count);
        for (int r = 0; r < parameters.Length; r++)
        {
            (double depth, double offset) = run.At(parameters[r]);
            rows._depths[r] = depth;
            table.Fill(blade.FrameAt(depth), offset, rows._points.AsSpan(r * table.Count, table.Count), rows._planeNormals.AsSpan(r * table.Count, table.Count));
        }

        rows.FillNormals();
        return rows;
    }

    /// <summary>The normal is square to the ring, whose direction lies in the plane, and to the line of equal places along the span.</summary>
    private void FillNormals()
    {
        int last = RowCount - 1;
        for (int r = 0; r <= last; r++)
            for (int j = 0; j < Count; j++)
            {
                // Central differences; at the ends of the run the parabola through three rows.
                Point3 along = r == 0 ? 4 * At(1, j) - 3 * At(0, j) - At(2, j)
                    : r == last ? 3 * At(last, j) - 4 * At(last - 1, j) + At(last - 2, j)
                    : At(r + 1, j) - At(r - 1, j);
                Point2 plane = _planeNormals[r * Count + j];
                Point3 normal = new(plane.X * along.Y, -(plane.X * along.X + plane.Y * along.Z), plane.Y * along.Y);
                double length = normal.Length;
                _normals[r * Count + j] = length > 0 ? 1 / length * normal : new(plane.X, 0, plane.Y);
            }
    }
}
