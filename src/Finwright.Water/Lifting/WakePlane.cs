using Finwright.Geometry;

namespace Finwright.Water.Lifting;

/// <summary>The plane across the wake far downstream (Trefftz), where induced drag is the energy left behind.</summary>
/// <remarks>
/// Drag of the fin = -ρ/2 ∮ Γ w dl over its own wake and over the starboard half of the hull's wake; the port half of the hull and the image's half of the fin are the other half
/// space. What the hull's front edge adds by its own suction is left out: in the water it is thrown off as spray, and with some wetted length ahead of the fin it is nothing.
/// </remarks>
internal sealed class WakePlane
{
    private readonly FinInfluence _influence;
    private readonly double[] _finByFin;
    private readonly double[] _finByHull;
    private readonly double[] _hullByFin;
    private readonly double[] _hullByHull;
    private readonly int _columns;

    public WakePlane(FinInfluence influence)
    {
        _influence = influence;
        FinLattice lattice = influence.Lattice;
        int strips = lattice.Strips, columns = influence.Hull?.Columns ?? 0;
        _finByFin = new double[strips * strips];
        _finByHull = new double[strips * columns];
        _hullByFin = new double[columns * strips];
        _hullByHull = new double[columns * columns];
        _columns = columns;
        ReadOnlySpan<Point3> ends = lattice.EdgeEnds;
        for (int i = 0; i < strips; i++)
        {
            // Across the wake strip, times its width, toward starboard.
            Point2 across = new(ends[i + 1].Y - ends[i].Y, ends[i + 1].Z - ends[i].Z);
            double y = lattice.Span.Middles[i] + lattice.Gap, share = (y - ends[i].Y) / across.X;
            Point2 p = new(y, ends[i].Z + share * across.Y);
            for (int j = 0; j < strips; j++)
            {
                Point2 v = FinStrip(p, ends[j], ends[j + 1]);
                _finByFin[i * strips + j] = v.Y * across.X - v.X * across.Y;
            }

            for (int j = 0; j < columns; j++)
                _finByHull[i * columns + j] = HullColumn(new(p.X, 0), j).Y * across.X;
        }

        for (int i = 0; i < columns; i++)
        {
            HullPlate hull = influence.Hull!;
            Point2 p = new(0, hull.MiddlesZ[i]);
            double width = hull.EdgesZ[i + 1] - hull.EdgesZ[i];
            // A ring of positive strength on the hull pushes up, against y.
            for (int j = 0; j < strips; j++)
                _hullByFin[i * strips + j] = -FinStrip(p, ends[j] with { Z = 0 }, ends[j + 1] with { Z = 0 }).X * width;
            for (int j = 0; j < columns; j++)
                _hullByHull[i * columns + j] = -HullColumn(p, j).X * width;
        }
    }

    /// <summary>Induced drag over density, of vortex strengths in m²/s: m⁴/s².</summary>
    /// <param name="vortices">Strength of every vortex of the fin.</param>
    /// <param name="strips">Sum of these strip by strip.</param>
    public double Drag(ReadOnlySpan<double> vortices, ReadOnlySpan<double> strips)
    {
        int n = strips.Length, columns = _columns;
        double[] transom = new double[columns];
        _influence.Transom(vortices, transom);
        double sum = 0;
        for (int i = 0; i < n; i++)
            sum += strips[i] * (Dot(_finByFin.AsSpan(i * n, n), strips) + Dot(_finByHull.AsSpan(i * columns, columns), transom));
        for (int i = 0; i < columns; i++)
            sum += transom[i] * (Dot(_hullByFin.AsSpan(i * n, n), strips) + Dot(_hullByHull.AsSpan(i * columns, columns), transom));
        return -sum / 2;
    }

    // Velocity (y, z) at a point (y, z) of the two trailing vortices of a strip and their image.
    private Point2 FinStrip(Point2 p, Point3 near, Point3 far)
    {
        double image = _influence.ImageSign;
        Point2 inner = new(near.Y, near.Z), outer = new(far.Y, far.Z), below = new(-p.X, p.Y);
        Point2 v = Vortex(p, outer) - Vortex(p, inner), m = Vortex(below, outer) - Vortex(below, inner);
        return new(v.X - image * m.X, v.Y + image * m.Y);
    }

    private Point2 HullColumn(Point2 p, int column)
    {
        HullPlate hull = _influence.Hull!;
        Point2 inner = new(0, hull.EdgesZ[column]), outer = new(0, hull.EdgesZ[column + 1]), port = new(p.X, -p.Y);
        Point2 v = Vortex(p, outer) - Vortex(p, inner), m = Vortex(port, outer) - Vortex(port, inner);
        return new(v.X - m.X, v.Y + m.Y);
    }

    // Endless vortex along +x: (y, z) velocity of unit strength.
    private static Point2 Vortex(Point2 p, Point2 at)
    {
        Point2 r = p - at;
        double square = r.Dot(r);
        return square > 0 ? new(-r.Y / (2 * Math.PI * square), r.X / (2 * Math.PI * square)) : default;
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
            sum += a[i] * b[i];
        return sum;
    }
}
