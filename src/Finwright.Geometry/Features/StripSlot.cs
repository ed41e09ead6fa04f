using Finwright.Geometry.Blades;

namespace Finwright.Geometry.Features;

/// <summary>
/// The slot for a thin sheet along the trailing edge: it follows the edge in the planform and the mid-surface across the fin,
/// and opens out behind the edge. Design axes, metres.
/// </summary>
public sealed class StripSlot
{
    // How far the tool stands out behind the edge; past the blunt edge of any blade.
    private const double Overrun = 3e-3;
    private const double RowSpacing = 1.5e-3;
    private const int DepthSteps = 6;

    private readonly Point3[,] _middle;

    /// <summary>Lays out the slot.</summary>
    /// <param name="blade">The blade.</param>
    /// <param name="width">Width of the slot across the fin, metres.</param>
    /// <param name="depth">Depth square to the trailing edge in the planform, metres.</param>
    /// <param name="fromY">Depth below the hull where the slot begins at the edge, metres.</param>
    /// <param name="toY">Depth below the hull where it ends at the edge, metres; more than <paramref name="fromY"/>.</param>
    public StripSlot(BladeShape blade, double width, double depth, double fromY, double toY)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(depth);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(toY, fromY);
        (Width, Depth) = (width, depth);
        int rows = Math.Max(9, (int)Math.Ceiling((toY - fromY) / RowSpacing) + 1);
        _middle = new Point3[rows, DepthSteps + 2];
        IsFolded = false;
        (Thinnest, Mouth) = (new(double.PositiveInfinity, default), new(double.PositiveInfinity, default));
        Point2 edgeBefore = default;
        for (int i = 0; i < rows; i++)
        {
            double y = fromY + (toY - fromY) * i / (rows - 1);
            (Point3 middle, double half) = Edge(blade, y);
            Point2 edge = new(middle.X, middle.Y);
            Point2 tangent = Tangent(blade, y);
            Point2 inward = new(-tangent.Y, tangent.X);
            for (int j = 1; j < DepthSteps + 2; j++)
            {
                Point2 p = edge + depth * (j - 1) / DepthSteps * inward;
                _middle[i, j] = j == 1 ? middle : new(p.X, p.Y, MidSurface(blade, p));
                Clearance wall = new((j == 1 ? half : HalfThickness(blade, p)) - width / 2, _middle[i, j]);
                if (j == 1 && wall.Wall < Mouth.Wall)
                    Mouth = wall;
                if (wall.Wall < Thinnest.Wall)
                    Thinnest = wall;
                IsFolded |= i > 0 && (p - new Point2(_middle[i - 1, j].X, _middle[i - 1, j].Y)).Dot(tangent) <= 0;
            }

            // Behind the edge there is no mid-surface: go straight on.
            double slope = (_middle[i, 1].Z - _middle[i, 2].Z) / (depth / DepthSteps);
            Point2 behind = edge - Overrun * inward;
            _middle[i, 0] = new(behind.X, behind.Y, _middle[i, 1].Z + Overrun * slope);
            IsFolded |= i > 0 && (behind - new Point2(_middle[i - 1, 0].X, _middle[i - 1, 0].Y)).Dot(tangent) <= 0;
            EdgeLength += i > 0 ? (edge - edgeBefore).Length : 0;
            edgeBefore = edge;
        }
    }

    /// <summary>Width of the slot across the fin.</summary>
    public double Width { get; }

    /// <summary>Depth square to the trailing edge.</summary>
    public double Depth { get; }

    /// <summary>Length of the slot along the trailing edge.</summary>
    public double EdgeLength { get; }

    /// <summary>True when the edge curves so tightly that the slot's rows cross: no solid can be made.</summary>
    public bool IsFolded { get; }

    /// <summary>Wall on each side at the mouth, where it is thinnest.</summary>
    public Clearance Mouth { get; }

    /// <summary>Wall on each side anywhere in the slot, where it is thinnest; minus half the width where the slot leaves the outline.</summary>
    public Clearance Thinnest { get; }

    /// <summary>Shortest distance of a feature from the slot; negative when they share room.</summary>
    public Clearance DistanceFrom(FeatureVolume volume)
    {
        Clearance least = new(double.PositiveInfinity, default);
        for (int i = 0; i < _middle.GetLength(0); i++)
            for (int j = 1; j < _middle.GetLength(1); j++)
            {
                double distance = volume.SignedDistance(_middle[i, j]) - Width / 2;
                if (distance < least.Wall)
                    least = new(distance, _middle[i, j]);
            }

        return least;
    }

    /// <summary>Seen from the side: the slot's bottom, from its upper end at the edge to its lower end at the edge, metres.</summary>
    public IReadOnlyList<Point2> SideView()
    {
        int rows = _middle.GetLength(0), bottom = _middle.GetLength(1) - 1;
        Point2 Flat(int row, int column) => new(_middle[row, column].X, _middle[row, column].Y);
        return [Flat(0, 1), .. Enumerable.Range(0, rows).Select(row => Flat(row, bottom)), Flat(rows - 1, 1)];
    }

    /// <summary>Seen from the side: the line that runs along the trailing edge at a distance, from the upper end to the lower, metres.</summary>
    /// <param name="inward">Distance square to the edge, metres; negative behind it.</param>
    public IReadOnlyList<Point2> Line(double inward)
    {
        int bottom = _middle.GetLength(1) - 1;
        Point2 Flat(int row, int column) => new(_middle[row, column].X, _middle[row, column].Y);
        return [.. Enumerable.Range(0, _middle.GetLength(0)).Select(row => Flat(row, 1) + inward / Depth * (Flat(row, bottom) - Flat(row, 1)))];
    }

    /// <summary>The slot as a closed mesh: two sheets half a width to either side of the mid-surface, joined round the rim.</summary>
    /// <exception cref="InvalidOperationException">The slot is folded.</exception>
    public TriangleMesh Tool()
    {
        if (IsFolded)
            throw new InvalidOperationException("A folded slot has no inside.");
        int rows = _middle.GetLength(0), columns = _middle.GetLength(1), sheet = rows * columns;
        double[] vertices = new double[6 * sheet];
        for (int i = 0; i < rows; i++)
            for (int j = 0; j < columns; j++)
            {
                Point3 along = _middle[Math.Min(i + 1, rows - 1), j] - _middle[Math.Max(i - 1, 0), j];
                Point3 inward = _middle[i, Math.Min(j + 1, columns - 1)] - _middle[i, Math.Max(j - 1, 0)];
                Point3 across = along.Cross(inward);
                across = Width / 2 / across.Length * across;
                Write(vertices, i * columns + j, _middle[i, j] + across);
                Write(vertices, sheet + i * columns + j, _middle[i, j] - across);
            }

        List<int> corners = [];
        for (int i = 0; i + 1 < rows; i++)
            for (int j = 0; j + 1 < columns; j++)
            {
                int a = i * columns + j, b = a + columns, c = b + 1, d = a + 1;
                Quad(corners, a, b, c, d);
                Quad(corners, sheet + d, sheet + c, sheet + b, sheet + a);
            }

        for (int i = 0; i + 1 < rows; i++)
        {
            int first = i * columns, last = first + columns - 1;
            Quad(corners, first + columns, first, sheet + first, sheet + first + columns);
            Quad(corners, last, last + columns, sheet + last + columns, sheet + last);
        }

        for (int j = 0; j + 1 < columns; j++)
        {
            int last = (rows - 1) * columns + j;
            Quad(corners, j, j + 1, sheet + j + 1, sheet + j);
            Quad(corners, last + 1, last, sheet + last, sheet + last + 1);
        }

        return new(vertices, [.. corners]);
    }

    // The middle of the blunt edge and half its thickness. In a twisted blade it stands a little ahead of the outline.
    private static (Point3 Middle, double Half) Edge(BladeShape blade, double y)
    {
        Point3 starboard = blade.Skin(y, 0), port = blade.Skin(y, 1);
        return (0.5 * (starboard + port), (starboard - port).Length / 2);
    }

    private static Point2 Tangent(BladeShape blade, double y)
    {
        const double h = 1e-5;
        double low = Math.Max(0, y - h), high = Math.Min(blade.Span, y + h);
        Point2 t = new(Edge(blade, high).Middle.X - Edge(blade, low).Middle.X, high - low);
        return 1 / t.Length * t;
    }

    // Beyond the outline the nearest place inside it counts, where the mid-surface is defined.
    private static double MidSurface(BladeShape blade, Point2 p)
    {
        const double hair = 1e-7;
        double y = Math.Clamp(p.Y, 0, blade.Span);
        double leading = blade.Outline.LeadingEdge(y), trailing = Edge(blade, y).Middle.X;
        double x = trailing - leading > 2 * hair ? Math.Clamp(p.X, leading + hair, trailing - hair) : (leading + trailing) / 2;
        return blade.MidSurface(x, y);
    }

    private static double HalfThickness(BladeShape blade, Point2 p)
    {
        bool inside = p.Y >= 0 && p.Y <= blade.Span && p.X > blade.Outline.LeadingEdge(p.Y) && p.X < blade.Outline.TrailingEdge(p.Y);
        return inside ? blade.HalfThickness(p.X, p.Y) : 0;
    }

    private static void Write(double[] vertices, int index, Point3 p) =>
        (vertices[3 * index], vertices[3 * index + 1], vertices[3 * index + 2]) = (p.X, p.Y, p.Z);

    private static void Quad(List<int> corners, int a, int b, int c, int d) => corners.AddRange([a, b, c, a, c, d]);
}
