namespace Finwright.Geometry.Parts;

/// <summary>Shortest distances from a straight segment.</summary>
/// <remarks>Closest points after C. Ericson, "Real-Time Collision Detection", 2005, sections 5.1.5 (point and triangle) and 5.1.9 (two segments).</remarks>
internal static class SegmentDistance
{
    /// <summary>Distance between two segments, metres; a segment may be a point.</summary>
    public static double ToSegment(Point3 p1, Point3 q1, Point3 p2, Point3 q2)
    {
        Point3 d1 = q1 - p1, d2 = q2 - p2, r = p1 - p2;
        double a = d1.Dot(d1), e = d2.Dot(d2), f = d2.Dot(r), c = d1.Dot(r), b = d1.Dot(d2);
        double denominator = a * e - b * b;
        // Parallel segments have no single closest pair: any start on the first will do. Exact zero only guards the division.
        double s = a > 0 && denominator > 0 ? Math.Clamp((b * f - c * e) / denominator, 0, 1) : 0;
        double t = e > 0 ? (b * s + f) / e : 0;
        if (t < 0 || t > 1 || e == 0)
        {
            t = Math.Clamp(t, 0, 1);
            s = a > 0 ? Math.Clamp((b * t - c) / a, 0, 1) : 0;
        }

        return (p1 + s * d1 - (p2 + t * d2)).Length;
    }

    /// <summary>Distance between a segment and a triangle, metres; 0 when the segment passes through.</summary>
    public static double ToTriangle(Point3 p, Point3 q, Point3 a, Point3 b, Point3 c)
    {
        if (Pierces(p, q, a, b, c))
            return 0;
        double edges = Math.Min(ToSegment(p, q, a, b), Math.Min(ToSegment(p, q, b, c), ToSegment(p, q, c, a)));
        return Math.Min(edges, Math.Min(AbovePlane(p, a, b, c), AbovePlane(q, a, b, c)));
    }

    /// <summary>Distance of a point from the triangle's plane when its foot lies inside the triangle, else infinity: edges are looked at apart.</summary>
    private static double AbovePlane(Point3 p, Point3 a, Point3 b, Point3 c)
    {
        Point3 normal = (b - a).Cross(c - a);
        double length = normal.Length;
        bool inside = length > 0
            && (b - a).Cross(p - a).Dot(normal) >= 0 && (c - b).Cross(p - b).Dot(normal) >= 0 && (a - c).Cross(p - c).Dot(normal) >= 0;
        return inside ? Math.Abs((p - a).Dot(normal)) / length : double.PositiveInfinity;
    }

    private static bool Pierces(Point3 p, Point3 q, Point3 a, Point3 b, Point3 c)
    {
        Point3 normal = (b - a).Cross(c - a);
        double from = (p - a).Dot(normal), to = (q - a).Dot(normal);
        if (from * to > 0 || from == to)
            return false;
        Point3 hit = p + from / (from - to) * (q - p);
        return (b - a).Cross(hit - a).Dot(normal) >= 0 && (c - b).Cross(hit - b).Dot(normal) >= 0 && (a - c).Cross(hit - c).Dot(normal) >= 0;
    }
}
