using Finwright.Geometry.Blades;

namespace Finwright.Geometry.Tests.Blades;

/// <summary>
/// Distance from a point to the surface of a plain blade: skin, trailing edge face, root face and flat tip. Gauss and Newton's steps over the
/// surface's own parameters; what they reach is never less than the true distance.
/// </summary>
/// <param name="blade">The blade.</param>
/// <param name="enough">The search ends at this distance, metres.</param>
internal sealed class SkinDistance(Blade blade, double enough)
{
    private const int Steps = 30;
    private const double Difference = 1e-6;

    // A point of a flat face lies in its plane but for rounding.
    private const double InPlane = 1e-9;

    /// <summary>The distance, or one not above the search's end, metres.</summary>
    public double From(Point3 p)
    {
        if (Math.Abs(p.Y) < InPlane || (Math.Abs(p.Y - blade.Span) < InPlane && !blade.Closes && blade.TipRounding is 0))
            return InFace(p);
        double y = Math.Clamp(p.Y / blade.Span, 0, 1), slow = Math.Sqrt(1 - y), u = PlaceNear(p), best = double.PositiveInfinity;
        // At a round tip depth is no parameter to go by, its square root is; on a flat one it is the other way about.
        (Func<double, double, Point3> Surface, double At)[] ways =
        [
            (Skin, y), (SlowSkin, slow), (SlowSkin, slow + 0.01), (EdgeFace, y), (SlowEdgeFace, slow),
        ];
        foreach ((Func<double, double, Point3> surface, double at) in ways)
            foreach (double place in surface == EdgeFace || surface == SlowEdgeFace ? [0.5] : (double[])[u, 1 - u])
            {
                best = Math.Min(best, Nearest(surface, p, at, place));
                if (best <= enough)
                    return best;
            }

        return best;
    }

    private Point3 Skin(double y, double u) => blade.Skin(y * blade.Span, u);

    private Point3 SlowSkin(double s, double u) => blade.Skin((1 - s * s) * blade.Span, u);

    private Point3 EdgeFace(double y, double s) => (1 - s) * Skin(y, 0) + s * Skin(y, 1);

    private Point3 SlowEdgeFace(double y, double s) => (1 - s) * SlowSkin(y, 0) + s * SlowSkin(y, 1);

    /// <summary>Distance within the plane of a flat face: none inside the section.</summary>
    private double InFace(Point3 p)
    {
        double y = Math.Clamp(p.Y, 0, blade.Span);
        Point3 middle = new(p.X, y, blade.MidSurface(p.X, y));
        if (Math.Abs(p.Z - middle.Z) <= blade.HalfThickness(p.X, y))
            return 0;
        double u = PlaceNear(p), v = y / blade.Span;
        Point3 Rim(double _, double place) => Skin(v, place);
        Point3 Edge(double _, double s) => EdgeFace(v, s);
        return Math.Min(Math.Min(Nearest(Rim, p, 0, u), Nearest(Rim, p, 0, 1 - u)), Nearest(Edge, p, 0, 0.5));
    }

    /// <summary>Place of the starboard side at the point's share of the chord.</summary>
    private double PlaceNear(Point3 p)
    {
        double y = Math.Clamp(p.Y, 0, blade.Span), chord = blade.Outline.Chord(y);
        double ahead = p.X - blade.Outline.LeadingEdge(y) - chord / 4;
        double along = ahead * Math.Cos(blade.Twist(y)) - p.Z * Math.Sin(blade.Twist(y));
        return chord > 0 ? Math.Acos(Math.Clamp(2 * (along / chord + 0.25) - 1, -1, 1)) / (2 * Math.PI) : 0.25;
    }

    private double Nearest(Func<double, double, Point3> surface, Point3 p, double a, double b)
    {
        (a, b) = (Math.Clamp(a, 0, 1), Math.Clamp(b, 0, 1));
        Point3 at = surface(a, b);
        double best = (p - at).Length;
        for (int i = 0; i < Steps && best > enough; i++)
        {
            double stepA = a < 0.5 ? Difference : -Difference, stepB = b < 0.5 ? Difference : -Difference;
            Point3 da = 1 / stepA * (surface(a + stepA, b) - at), db = 1 / stepB * (surface(a, b + stepB) - at), miss = p - at;
            double aa = da.Dot(da), ab = da.Dot(db), bb = db.Dot(db), ra = da.Dot(miss), rb = db.Dot(miss);
            double scale = 1e-9 * (aa + bb);
            (aa, bb) = (aa + scale, bb + scale);
            double determinant = aa * bb - ab * ab;
            if (!(determinant > 0))
                break;
            double moveA = (ra * bb - rb * ab) / determinant, moveB = (rb * aa - ra * ab) / determinant;
            double before = best;
            for (double share = 1; share > 1e-3; share /= 2)
            {
                double newA = Math.Clamp(a + share * moveA, 0, 1), newB = Math.Clamp(b + share * moveB, 0, 1);
                Point3 next = surface(newA, newB);
                if ((p - next).Length is var length && length < best)
                {
                    (a, b, at, best) = (newA, newB, next, length);
                    break;
                }
            }

            if (best >= before)
                break;
        }

        return best;
    }
}
