using Finwright.Geometry;

namespace Finwright.Water.Lifting;

/// <summary>Vortex rings on the starboard half of the hull's underside; the port half carries the opposite.</summary>
/// <remarks>
/// With zero potential on the free surface the flow continues above it as a negative image, in which the hull is a plate with potentials of opposite sign on its two faces: rings in the plane
/// y = 0 with a straight wake from the transom. A fin makes a potential that is odd in z, so half the plate is enough; the fin is taken in the plane z = 0 for this
/// exchange, which neglects the square of its camber.
/// </remarks>
internal sealed class HullPlate
{
    private readonly double[] _x;
    private readonly double[] _z;
    private readonly double[] _controlX;
    private readonly double[] _controlZ;

    /// <summary>Lays out the rings.</summary>
    /// <param name="hull">Width and position.</param>
    /// <param name="leading">x of the root's leading edge.</param>
    /// <param name="trailing">x of the root's trailing edge.</param>
    /// <param name="grid">Numbers of rings.</param>
    public HullPlate(FiniteHull hull, double leading, double trailing, HullGrid grid)
    {
        List<double> x = [leading - hull.Ahead];
        Append(x, leading, hull.Ahead > 0 ? grid.Ahead : 0, s => 1 - (1 - s) * (1 - s));
        Append(x, trailing, grid.Beside, s => (1 - Math.Cos(Math.PI * s)) / 2);
        Append(x, trailing + hull.Behind, hull.Behind > 0 ? grid.Behind : 0, s => (1 - Math.Cos(Math.PI * s)) / 2);
        Rows = x.Count - 1;
        SpanRule across = SpanRule.TowardBothEnds(hull.HalfWidth, grid.Across);
        (_z, _controlZ) = (across.Edges, across.Middles);
        (_x, _controlX) = (new double[Rows + 1], new double[Rows]);
        for (int k = 0; k < Rows; k++)
        {
            double length = x[k + 1] - x[k];
            _x[k] = x[k] + 0.25 * length;
            _controlX[k] = x[k] + 0.75 * length;
        }

        _x[Rows] = x[Rows];
    }

    public int Rows { get; }

    public int Columns => _controlZ.Length;

    public int Count => Rows * Columns;

    /// <summary>z of the edges of the columns, from the middle of the hull to its rail.</summary>
    public ReadOnlySpan<double> EdgesZ => _z;

    public ReadOnlySpan<double> MiddlesZ => _controlZ;

    /// <summary>Control point of a ring (column, row).</summary>
    public Point3 Control(int index) => new(_controlX[index % Rows], 0, _controlZ[index / Rows]);

    /// <summary>Velocity at a point of a ring of unit strength and its opposite on the port side.</summary>
    public Point3 Velocity(Point3 point, int index)
    {
        Point3 own = Ring(point, index), other = Ring(new(point.X, point.Y, -point.Z), index);
        return new(own.X - other.X, own.Y - other.Y, own.Z + other.Z);
    }

    private Point3 Ring(Point3 point, int index)
    {
        int j = index / Rows, k = index % Rows;
        Point3 a = new(_x[k], 0, _z[j]), b = new(_x[k], 0, _z[j + 1]), c = new(_x[k + 1], 0, _z[j + 1]), d = new(_x[k + 1], 0, _z[j]);
        return k == Rows - 1 ? VortexVelocity.OpenRing(point, a, b, c, d) : VortexVelocity.Ring(point, a, b, c, d);
    }

    private static void Append(List<double> x, double to, int count, Func<double, double> place)
    {
        double from = x[^1];
        for (int i = 1; i <= count; i++)
            x.Add(i == count ? to : from + (to - from) * place((double)i / count));
    }
}

/// <summary>Numbers of rings on the hull's underside.</summary>
/// <param name="Ahead">Rows ahead of the fin.</param>
/// <param name="Beside">Rows beside the root chord.</param>
/// <param name="Behind">Rows behind the fin.</param>
/// <param name="Across">Columns from the middle to the rail.</param>
internal readonly record struct HullGrid(int Ahead, int Beside, int Behind, int Across)
{
    /// <summary>Enough for the root condition within one per cent of the gap between bare surface and mirror.</summary>
    public static HullGrid Usual { get; } = new(9, 7, 5, 12);
}
