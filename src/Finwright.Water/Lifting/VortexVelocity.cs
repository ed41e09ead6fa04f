using Finwright.Geometry;

namespace Finwright.Water.Lifting;

/// <summary>Velocity of straight vortex lines of unit strength (Biot and Savart).</summary>
internal static class VortexVelocity
{
    // Below this share of the squared lengths a point counts as lying on the line, where the velocity of a straight line on itself is zero.
    // It only has to be far below the square of any distance between a control point and a vortex, which is about 1e-6 of a chord squared.
    private const double OnLine = 1e-20;

    /// <summary>Velocity at a point of a vortex from <paramref name="from"/> to <paramref name="to"/>.</summary>
    public static Point3 Segment(Point3 point, Point3 from, Point3 to)
    {
        Point3 r1 = point - from, r2 = point - to, cross = r1.Cross(r2);
        double l1 = r1.Length, l2 = r2.Length, product = l1 * l2;
        double square = cross.Dot(cross);
        if (square <= OnLine * product * product || product == 0)
            return default;
        // (r1 + r2)/(r1 r2 (r1 r2 + r1·r2)) has no cancellation unless the point lies between the ends of the line itself.
        double bottom = product + r1.Dot(r2);
        double factor = bottom > 0.1 * product
            ? (l1 + l2) / (product * bottom)
            : (to - from).Dot((1 / l1) * r1 - (1 / l2) * r2) / square;
        return factor / (4 * Math.PI) * cross;
    }

    /// <summary>Velocity at a point of a vortex that comes from a point and runs along +x to infinity.</summary>
    public static Point3 Trailing(Point3 point, Point3 from)
    {
        Point3 r = point - from;
        double length = r.Length, square = r.Y * r.Y + r.Z * r.Z;
        if (square <= OnLine * length * length || length == 0)
            return default;
        // (1 + x/r)/(y² + z²); ahead of the start 1 + x/r is written as (y² + z²)/(r (r - x)) to keep its digits.
        double factor = r.X > 0 ? (1 + r.X / length) / square : 1 / (length * (length - r.X));
        return factor / (4 * Math.PI) * new Point3(0, -r.Z, r.Y);
    }

    /// <summary>Velocity at a point of a closed ring through four corners, in that order.</summary>
    public static Point3 Ring(Point3 point, Point3 a, Point3 b, Point3 c, Point3 d) =>
        Segment(point, a, b) + Segment(point, b, c) + Segment(point, c, d) + Segment(point, d, a);

    /// <summary>Velocity at a point of a ring whose far side lies at infinity downstream: in from <paramref name="d"/>, across from a to b, out from <paramref name="c"/>.</summary>
    public static Point3 OpenRing(Point3 point, Point3 a, Point3 b, Point3 c, Point3 d) =>
        Segment(point, a, b) + Segment(point, b, c) + Segment(point, d, a) + Trailing(point, c) - Trailing(point, d);
}
