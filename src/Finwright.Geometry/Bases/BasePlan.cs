using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Bases;

/// <summary>
/// The base before anything is bored into it: a four-cornered side profile with rounded top corners, drawn out across the
/// fin between parallel or tapering sides. Design axes, metres: the base lies at y &lt; 0, its front toward −x.
/// </summary>
/// <remarks>"Top" means the deep end, up in the board, as the trade says it of a fin standing in its box.</remarks>
public sealed record BasePlan
{
    /// <summary>A point this close to an edge lies on it, metres: the end of a bolt's axis is worked out to lie on the top edge, to rounding.</summary>
    private const double OnEdge = 1e-9;

    /// <summary>Front corner at the hull, x.</summary>
    public required double FrontX { get; init; }

    /// <summary>Length at the hull.</summary>
    public required double HullLength { get; init; }

    /// <summary>Depth of the front sharp corner of the top edge, positive.</summary>
    public required double FrontDepth { get; init; }

    /// <summary>Depth of the rear sharp corner of the top edge, positive.</summary>
    public required double RearDepth { get; init; }

    /// <summary>Lean of the front face from square to the hull, radians, positive when the base gets shorter going up.</summary>
    public required double FrontAngle { get; init; }

    /// <summary>Lean of the rear face from square to the hull, radians, positive when the base gets shorter going up.</summary>
    public required double RearAngle { get; init; }

    /// <summary>Radius of the two top corners; 0 for sharp ones.</summary>
    public required double CornerRadius { get; init; }

    /// <summary>Width across the fin at the hull.</summary>
    public required double HullWidth { get; init; }

    /// <summary>Width across the fin at the deepest point.</summary>
    public required double DeepWidth { get; init; }

    /// <summary>Bolts from the deck, front first.</summary>
    public IReadOnlyList<BoltAxis> Bolts { get; init; } = [];

    /// <summary>Cross pin of a long slot; null for other bases.</summary>
    public SlotPin? Pin { get; init; }

    /// <summary>Screw from below into the plate of a long slot; null for other bases.</summary>
    public BoltAxis? PlateScrew { get; init; }

    /// <summary>Depth of the deepest sharp corner, positive.</summary>
    public double Depth => Math.Max(FrontDepth, RearDepth);

    /// <summary>Middle of the base at the hull, x.</summary>
    public double MiddleX => FrontX + HullLength / 2;

    /// <summary>Rear corner at the hull, x.</summary>
    public double RearX => FrontX + HullLength;

    /// <summary>Front end of the top edge before rounding.</summary>
    public Point2 FrontTop => new(FrontX + FrontDepth * Math.Tan(FrontAngle), -FrontDepth);

    /// <summary>Rear end of the top edge before rounding.</summary>
    public Point2 RearTop => new(RearX - RearDepth * Math.Tan(RearAngle), -RearDepth);

    /// <summary>Width across the fin at a depth.</summary>
    /// <param name="y">Design axis, metres; negative inside the base.</param>
    public double Width(double y) => HullWidth + (DeepWidth - HullWidth) * (-y / Depth);

    /// <summary>
    /// Whether a point lies within the side profile or on its edge, whatever its z; the rounding of the corners is not counted.
    /// </summary>
    public bool Holds(Point3 point)
    {
        double depth = -point.Y;
        Point2 edge = RearTop - FrontTop;
        return depth >= -OnEdge
            && point.X >= FrontX + depth * Math.Tan(FrontAngle) - OnEdge
            && point.X <= RearX - depth * Math.Tan(RearAngle) + OnEdge
            && edge.Cross(new Point2(point.X, point.Y) - FrontTop) >= -OnEdge * edge.Length;
    }

    /// <summary>Where a line in the x–y plane crosses the line of the top edge.</summary>
    /// <param name="through">A point of the line; z is kept.</param>
    /// <param name="along">Direction of the line; not parallel to the top edge.</param>
    public Point3 OnTopEdge(Point3 through, Point3 along)
    {
        Point2 edge = RearTop - FrontTop;
        Point2 offset = FrontTop - new Point2(through.X, through.Y);
        double t = offset.Cross(edge) / new Point2(along.X, along.Y).Cross(edge);
        return through + t * along;
    }

    /// <summary>Side profile, counter-clockwise in the x–y plane, top corners rounded to within 2 µm.</summary>
    public IReadOnlyList<Point2> Ring()
    {
        List<Point2> ring = [new(FrontX, 0)];
        AddCorner(ring, new(FrontX, 0), FrontTop, RearTop);
        AddCorner(ring, FrontTop, RearTop, new(RearX, 0));
        ring.Add(new(RearX, 0));
        return ring;
    }

    /// <summary>
    /// The largest radius that both top corners can take: their tangent points must not meet on the top edge nor pass the hull.
    /// </summary>
    public double LargestCornerRadius()
    {
        double front = TangentLength(new(FrontX, 0), FrontTop, RearTop), rear = TangentLength(FrontTop, RearTop, new(RearX, 0));
        return Math.Min(
            (RearTop - FrontTop).Length / (front + rear),
            Math.Min((FrontTop - new Point2(FrontX, 0)).Length / front, (RearTop - new Point2(RearX, 0)).Length / rear));
    }

    /// <summary>The base as a solid, nothing bored yet.</summary>
    public SolidExpression Solid()
    {
        double widest = Math.Max(HullWidth, DeepWidth);
        SolidExpression block = new PrismSolid([Ring()], widest).Placed(Placement.Shift(new(0, 0, -widest / 2)));
        return Tapers ? block.Within(SideWedge()) : block;
    }

    private bool Tapers => Math.Abs(HullWidth - DeepWidth) > 1e-9;

    // The tapering sides as a prism along x. It reaches past the hull plane, past the top and past both ends, so that only
    // its two slanting sides cut the block and no faces coincide.
    private SolidExpression SideWedge()
    {
        const double beyond = 1e-3;
        double start = Math.Min(FrontX, FrontTop.X) - beyond, end = Math.Max(RearX, RearTop.X) + beyond;
        double low = -Depth - beyond;
        // Ring axes: first the design y, then z; drawn out along the design x.
        Point2[] ring =
        [
            new(low, -Width(low) / 2), new(beyond, -Width(beyond) / 2),
            new(beyond, Width(beyond) / 2), new(low, Width(low) / 2),
        ];
        Placement across = new(new(0, 1, 0), new(0, 0, 1), new(1, 0, 0), new(start, 0, 0));
        return new PrismSolid([ring], end - start).Placed(across);
    }

    private void AddCorner(List<Point2> ring, Point2 before, Point2 corner, Point2 after)
    {
        if (CornerRadius <= 0)
        {
            ring.Add(corner);
            return;
        }

        Point2 back = before - corner, ahead = after - corner;
        back = 1 / back.Length * back;
        ahead = 1 / ahead.Length * ahead;
        double tangent = CornerRadius * TangentLength(before, corner, after);
        Point2 start = corner + tangent * back, end = corner + tangent * ahead;
        Point2 bisector = back + ahead;
        Point2 centre = corner + Math.Sqrt(tangent * tangent + CornerRadius * CornerRadius) / bisector.Length * bisector;
        Point2 from = start - centre, to = end - centre;
        double turn = Math.Atan2(from.Cross(to), from.Dot(to));
        const double tolerance = 2e-6;
        int steps = Math.Max(2, (int)Math.Ceiling(Math.Abs(turn) / (2 * Math.Acos(Math.Max(0.7, 1 - tolerance / CornerRadius)))));
        for (int i = 0; i <= steps; i++)
        {
            double angle = turn * i / steps, c = Math.Cos(angle), s = Math.Sin(angle);
            ring.Add(centre + new Point2(c * from.X - s * from.Y, s * from.X + c * from.Y));
        }
    }

    // Distance from the sharp corner to the tangent point, for a radius of one: cot of half the inner angle.
    private static double TangentLength(Point2 before, Point2 corner, Point2 after)
    {
        Point2 back = before - corner, ahead = after - corner;
        double inner = Math.Abs(Math.Atan2(back.Cross(ahead), back.Dot(ahead)));
        return 1 / Math.Tan(inner / 2);
    }
}

/// <summary>The pin that lies across the tab of a long slot and runs in the rail of the box.</summary>
/// <param name="Middle">Middle of the pin, design axes, metres.</param>
/// <param name="Diameter">Diameter of the pin, metres.</param>
public sealed record SlotPin(Point3 Middle, double Diameter);
