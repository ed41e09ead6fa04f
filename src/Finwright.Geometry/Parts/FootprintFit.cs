using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace Finwright.Geometry.Parts;

/// <summary>How a flat shape fits on a rectangle when it may be turned.</summary>
/// <param name="Angle">Turn, radians, counter-clockwise, 0 to π: the one chosen.</param>
/// <param name="SizeX">Size of the turned shape along x, metres.</param>
/// <param name="SizeY">Size of the turned shape along y, metres.</param>
/// <param name="Fill">Larger of the two sizes over the room there is; 1 is just full.</param>
public readonly record struct FootprintFit(double Angle, double SizeX, double SizeY, double Fill)
{
    /// <summary>Relative slack for rounding: a shape of exactly the room's size fits. A nanometre on a bed of a metre.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Whether the turned shape fits.</summary>
    public bool Fits => Fill <= 1 + Rounding;

    /// <summary>
    /// Finds how to turn a shape on a rectangle. Straight ways are preferred: as it is, then a quarter turn; only when
    /// neither fits, the angle that leaves most room.
    /// </summary>
    /// <remarks>
    /// Exact. The size of a convex shape along a turning direction is D cos(θ − φ) between two directions where the touching corners
    /// change, concave there; so the least larger-of-two lies at such a direction or where both are equal.
    /// </remarks>
    /// <param name="points">Points of the shape, metres; at least one.</param>
    /// <param name="roomX">Room along x, metres, positive.</param>
    /// <param name="roomY">Room along y, metres, positive.</param>
    public static FootprintFit Find(IEnumerable<Point2> points, double roomX, double roomY)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(roomX);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(roomY);
        Point2[] hull = Hull(points);
        FootprintFit straight = At(hull, 0, roomX, roomY), quarter = At(hull, Math.PI / 2, roomX, roomY);
        if (straight.Fits)
            return straight;
        if (quarter.Fits)
            return quarter;

        FootprintFit best = straight.Fill <= quarter.Fill ? straight : quarter;
        double[] corners = [.. TouchingChanges(hull)];
        for (int i = 0; i < corners.Length; i++)
        {
            Consider(corners[i]);
            double next = i + 1 < corners.Length ? corners[i + 1] : corners[0] + Math.PI;
            double angle = EqualFill(hull, (corners[i] + next) / 2, roomX, roomY);
            foreach (double turned in (ReadOnlySpan<double>)[angle, angle + Math.PI])
                if (turned > corners[i] && turned < next)
                    Consider(turned % Math.PI);
        }

        return best;

        void Consider(double angle)
        {
            FootprintFit fit = At(hull, angle, roomX, roomY);
            if (fit.Fill < best.Fill)
                best = fit;
        }
    }

    /// <summary>Corners of the convex hull, counter-clockwise or clockwise, without the repeated last point.</summary>
    public static Point2[] Hull(IEnumerable<Point2> points)
    {
        Coordinate[] corners = new ConvexHull([.. points.Select(p => new Coordinate(p.X, p.Y))], PlaneAreas.Factory).GetConvexHull().Coordinates;
        if (corners.Length == 0)
            throw new ArgumentException("A shape has at least one point.", nameof(points));
        return [.. corners.Take(Math.Max(1, corners.Length - 1)).Concat(corners.Length == 2 ? corners.Skip(1) : []).Select(c => new Point2(c.X, c.Y))];
    }

    private static FootprintFit At(Point2[] hull, double angle, double roomX, double roomY)
    {
        (double sin, double cos) = Math.SinCos(angle);
        // A quarter turn is meant exactly.
        if (angle == Math.PI / 2)
            (sin, cos) = (1, 0);
        double sizeX = Extent(hull, new(cos, -sin)), sizeY = Extent(hull, new(sin, cos));
        return new(angle, sizeX, sizeY, Math.Max(sizeX / roomX, sizeY / roomY));
    }

    /// <summary>Size of the shape along a direction.</summary>
    private static double Extent(Point2[] hull, Point2 direction)
    {
        (Point2 low, Point2 high) = Touching(hull, direction);
        return (high - low).Dot(direction);
    }

    private static (Point2 Low, Point2 High) Touching(Point2[] hull, Point2 direction)
    {
        Point2 low = hull[0], high = hull[0];
        foreach (Point2 p in hull)
        {
            if (p.Dot(direction) < low.Dot(direction))
                low = p;
            if (p.Dot(direction) > high.Dot(direction))
                high = p;
        }

        return (low, high);
    }

    /// <summary>Turns at which an edge lies along x or y, 0 to π, rising.</summary>
    private static SortedSet<double> TouchingChanges(Point2[] hull)
    {
        SortedSet<double> angles = [0, Math.PI / 2];
        for (int i = 0; i < hull.Length; i++)
        {
            Point2 edge = hull[(i + 1) % hull.Length] - hull[i];
            for (int quarter = 0; quarter < 2; quarter++)
            {
                double angle = (quarter * Math.PI / 2 - Math.Atan2(edge.Y, edge.X)) % Math.PI;
                angles.Add(angle < 0 ? angle + Math.PI : angle);
            }
        }

        angles.Remove(Math.PI);
        return angles;
    }

    /// <summary>
    /// The turn, 0 to π, at which both sizes fill their room alike, for the corners that touch at <paramref name="near"/>.
    /// Sizes are a·(cos θ, −sin θ) and b·(sin θ, cos θ), with a and b the corner-to-corner vectors.
    /// </summary>
    private static double EqualFill(Point2[] hull, double near, double roomX, double roomY)
    {
        (double sin, double cos) = Math.SinCos(near);
        (Point2 lowX, Point2 highX) = Touching(hull, new(cos, -sin));
        (Point2 lowY, Point2 highY) = Touching(hull, new(sin, cos));
        Point2 a = 1 / roomX * (highX - lowX), b = 1 / roomY * (highY - lowY);
        // (a.X − b.Y) cos θ = (a.Y + b.X) sin θ
        double angle = Math.Atan2(a.X - b.Y, a.Y + b.X);
        return angle < 0 ? angle + Math.PI : angle;
    }
}
