using Finwright.Geometry.Solids;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace Finwright.Geometry.Features;

/// <summary>
/// The room that one feature takes inside the fin: a straight prism over a circle or a convex polygon. Design axes, metres.
/// Cutting tools and distance checks are both made from it, so they cannot disagree.
/// </summary>
public sealed class FeatureVolume
{
    private readonly Placement _frame;
    private readonly double _length;
    private readonly double _radius;
    private readonly IReadOnlyList<Point2> _ring;

    private FeatureVolume(Placement frame, double length, double radius, IReadOnlyList<Point2> ring) =>
        (_frame, _length, _radius, _ring) = (frame, length, radius, ring);

    /// <summary>A cylinder.</summary>
    /// <param name="diameter">Diameter, metres.</param>
    /// <param name="from">Middle of one end.</param>
    /// <param name="to">Middle of the other end.</param>
    public static FeatureVolume Cylinder(double diameter, Point3 from, Point3 to)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(diameter);
        return new(Frame(from, to, null), Length(from, to), diameter / 2, []);
    }

    /// <summary>A prism.</summary>
    /// <param name="ring">Convex polygon round the axis, counter-clockwise, metres.</param>
    /// <param name="from">Start of the axis.</param>
    /// <param name="to">End of the axis.</param>
    /// <param name="hintX">Direction that the polygon's x axis leans to; null for aft.</param>
    public static FeatureVolume Prism(IReadOnlyList<Point2> ring, Point3 from, Point3 to, Point3? hintX = null) =>
        new(Frame(from, to, hintX), Length(from, to), 0, ring);

    /// <summary>Start of the axis.</summary>
    public Point3 From => _frame.Origin;

    /// <summary>End of the axis.</summary>
    public Point3 To => _frame.Origin + _length * _frame.AxisZ;

    /// <summary>Middle of the axis.</summary>
    public Point3 Middle => _frame.Origin + _length / 2 * _frame.AxisZ;

    /// <summary>Diameter of a cylinder; 0 for a prism.</summary>
    public double Diameter => 2 * _radius;

    /// <summary>Radius of the smallest circle round the axis that holds the cross-section.</summary>
    public double ReachFromAxis => _ring.Count == 0 ? _radius : _ring.Max(p => p.Length);

    /// <summary>The same volume, longer at either end.</summary>
    /// <param name="before">Added before the start of the axis, metres.</param>
    /// <param name="after">Added after the end of the axis, metres.</param>
    public FeatureVolume Lengthened(double before, double after) =>
        new(_frame with { Origin = _frame.Origin - before * _frame.AxisZ }, _length + before + after, _radius, _ring);

    /// <summary>The room that a body of this form needs to sink in straight from above: its whole shadow, from its middle to its highest point and a little beyond.</summary>
    /// <param name="up">Unit vector.</param>
    /// <param name="beyond">Added above its highest point, metres.</param>
    public FeatureVolume WayIn(Point3 up, double beyond)
    {
        Placement frame = Placement.Along(Middle, up, Math.Abs(up.X) > 0.9 ? new Point3(0, 1, 0) : new Point3(1, 0, 0));
        Placement back = frame.RigidInverse();
        IReadOnlyList<Point2> ring = _ring.Count == 0 ? Rings.Circle(_radius) : _ring;
        Coordinate[] ends = [.. ring.SelectMany(p => new[] { 0, _length }.Select(along => back.Apply(_frame.Apply(new(p.X, p.Y, along))))).Select(p => new Coordinate(p.X, p.Y))];
        Coordinate[] hull = new ConvexHull(ends, GeometryFactory.Default).GetConvexHull().Coordinates;
        Point2[] shadow = [.. hull[..^1].Select(c => new Point2(c.X, c.Y))];
        if (Orientation.IsCCW(hull) is false)
            Array.Reverse(shadow);
        return Prism(shadow, Middle, Middle + (Reach(up) - Middle.Dot(up) + beyond) * up, frame.AxisX);
    }

    /// <summary>The volume as a cutting tool.</summary>
    public SolidExpression Tool() =>
        new PrismSolid([_ring.Count == 0 ? Rings.Circle(_radius) : _ring], _length).Placed(_frame);

    /// <summary>Enclosed volume, m³.</summary>
    public double Volume()
    {
        if (_ring.Count == 0)
            return Math.PI * _radius * _radius * _length;
        double twice = 0;
        for (int i = 0; i < _ring.Count; i++)
            twice += _ring[i].Cross(_ring[(i + 1) % _ring.Count]);
        return twice / 2 * _length;
    }

    /// <summary>Distance of a point from the volume's surface, metres; negative inside.</summary>
    public double SignedDistance(Point3 point)
    {
        (Point2 flat, double along) = Local(point);
        double axial = Math.Max(-along, along - _length);
        double radial = Radial(flat);
        return radial > 0 && axial > 0 ? Math.Sqrt(radial * radial + axial * axial) : Math.Max(radial, axial);
    }

    /// <summary>The point of the volume closest to a point; the point itself when it lies inside.</summary>
    public Point3 Nearest(Point3 point)
    {
        (Point2 flat, double along) = Local(point);
        if (Radial(flat) > 0)
            flat = _ring.Count == 0 ? _radius / flat.Length * flat : NearestOnRing(flat);
        return _frame.Apply(new(flat.X, flat.Y, Math.Clamp(along, 0, _length)));
    }

    /// <summary>How far the volume reaches along a direction, metres: the greatest p · direction over its points.</summary>
    /// <param name="direction">Unit vector.</param>
    public double Reach(Point3 direction)
    {
        Point2 flat = new(direction.Dot(_frame.AxisX), direction.Dot(_frame.AxisY));
        double along = direction.Dot(_frame.AxisZ);
        double side = _ring.Count == 0 ? _radius * flat.Length : _ring.Max(p => p.Dot(flat));
        return _frame.Origin.Dot(direction) + side + Math.Max(0, along * _length);
    }

    /// <summary>Seen from the side: the convex outline of the volume's shadow on the x–y plane, metres.</summary>
    public IReadOnlyList<Point2> SideView()
    {
        IReadOnlyList<Point2> ring = _ring.Count == 0 ? Rings.Circle(_radius, _radius / 500) : _ring;
        Coordinate[] ends = [.. ring.SelectMany(p => new[] { 0, _length }.Select(along => _frame.Apply(new(p.X, p.Y, along)))).Select(p => new Coordinate(p.X, p.Y))];
        Coordinate[] hull = new ConvexHull(ends, GeometryFactory.Default).GetConvexHull().Coordinates;
        return [.. hull[..^1].Select(c => new Point2(c.X, c.Y))];
    }

    /// <summary>Cut across the fin at one depth: the convex outline of the volume in that plane, x aft and y to starboard, metres.</summary>
    /// <param name="y">Depth, metres.</param>
    /// <returns>The outline; empty when the volume is not there.</returns>
    public IReadOnlyList<Point2> SliceAt(double y)
    {
        IReadOnlyList<Point2> ring = _ring.Count == 0 ? Rings.Circle(_radius) : _ring;
        Point3[] near = [.. ring.Select(p => _frame.Apply(new(p.X, p.Y, 0)))], far = [.. ring.Select(p => _frame.Apply(new(p.X, p.Y, _length)))];
        List<Coordinate> met = [];
        for (int i = 0; i < near.Length; i++)
        {
            int next = (i + 1) % near.Length;
            Meet(near[i], far[i]);
            Meet(near[i], near[next]);
            Meet(far[i], far[next]);
        }

        // Fewer than three places make no area.
        Coordinate[] hull = met.Count < 3 ? [] : new ConvexHull([.. met], GeometryFactory.Default).GetConvexHull().Coordinates;
        return hull.Length < 4 ? [] : [.. hull[..^1].Select(c => new Point2(c.X, c.Y))];

        void Meet(Point3 a, Point3 b)
        {
            if (a.Y > y == b.Y > y)
                return;
            Point3 at = a + (y - a.Y) / (b.Y - a.Y) * (b - a);
            met.Add(new(at.X, at.Z));
        }
    }

    /// <summary>
    /// Shortest distance between two volumes, metres; 0 when they touch or share room.
    /// </summary>
    /// <remarks>
    /// Both are convex, so projecting to and fro between them converges to a closest pair (Cheney and Goldstein,
    /// "Proximity maps for convex sets", Proc. AMS 10, 1959). A projection round is a gradient step, so momentum with restarts
    /// (Nesterov 1983) speeds it up. Volumes that barely touch converge slowest: there the answer may be some micrometres large.
    /// </remarks>
    public double DistanceTo(FeatureVolume other)
    {
        const int rounds = 3000;
        const double settled = 1e-11, touching = 1e-6;
        Point3 mine = Nearest(other.Middle), from = mine;
        double least = (mine - other.Nearest(mine)).Length;
        int momentum = 0;
        for (int i = 0; i < rounds && least > touching; i++)
        {
            Point3 next = Nearest(other.Nearest(from));
            double distance = (next - other.Nearest(next)).Length;
            double moved = (next - mine).Length;
            // A round that does not come closer is taken back, and starts without momentum.
            if (distance > least)
            {
                if (momentum == 0)
                    break;
                (from, momentum) = (mine, 0);
                continue;
            }

            from = next + momentum / (momentum + 3.0) * (next - mine);
            (mine, least) = (next, distance);
            if (moved < settled && momentum == 0)
                break;
            momentum = moved < settled ? 0 : momentum + 1;
        }

        return least <= touching ? 0 : least;
    }

    private static double Length(Point3 from, Point3 to)
    {
        double length = (to - from).Length;
        return length > 0 ? length : throw new ArgumentException("The two ends of the axis are the same point.", nameof(to));
    }

    private static Placement Frame(Point3 from, Point3 to, Point3? hintX)
    {
        Point3 axis = to - from;
        Point3 hint = hintX ?? (Math.Abs(axis.X) > 0.9 * axis.Length ? new Point3(0, 1, 0) : new Point3(1, 0, 0));
        return Placement.Along(from, axis, hint);
    }

    private (Point2 Flat, double Along) Local(Point3 point)
    {
        Point3 d = point - _frame.Origin;
        return (new(d.Dot(_frame.AxisX), d.Dot(_frame.AxisY)), d.Dot(_frame.AxisZ));
    }

    // Distance from the cross-section's edge, negative inside.
    private double Radial(Point2 p)
    {
        if (_ring.Count == 0)
            return p.Length - _radius;
        double outermost = double.NegativeInfinity;
        for (int i = 0; i < _ring.Count; i++)
        {
            Point2 a = _ring[i], edge = _ring[(i + 1) % _ring.Count] - a;
            outermost = Math.Max(outermost, (p - a).Cross(edge) / edge.Length);
        }

        return outermost <= 0 ? outermost : (p - NearestOnRing(p)).Length;
    }

    private Point2 NearestOnRing(Point2 p)
    {
        Point2 best = _ring[0];
        double least = double.PositiveInfinity;
        for (int i = 0; i < _ring.Count; i++)
        {
            Point2 a = _ring[i], edge = _ring[(i + 1) % _ring.Count] - a;
            Point2 q = a + Math.Clamp((p - a).Dot(edge) / edge.Dot(edge), 0, 1) * edge;
            double distance = (p - q).Length;
            if (distance < least)
                (least, best) = (distance, q);
        }

        return best;
    }
}
