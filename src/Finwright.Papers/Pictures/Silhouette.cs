using Finwright.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Simplify;

namespace Finwright.Papers.Pictures;

/// <summary>What a mesh covers when it is looked at from far away.</summary>
/// <remarks>
/// Triangles are laid on fine dots and the border of the covered dots is followed; its stairs are smoothed and straightened. The outline is true
/// to about a dot: on paper a small part of a pen's width. Exact outlines of many thousand nearly upright triangles are slivers without end.
/// </remarks>
internal static class Silhouette
{
    // Along the longer side.
    private const int Dots = 1400;

    // Stairs of half a dot go, corners stay. In dots.
    private const double Straightened = 0.4;

    // Specks smaller than this are rounding, dots across.
    private const double Speck = 3;

    /// <summary>The outline.</summary>
    /// <param name="mesh">Closed mesh.</param>
    /// <param name="seen">Where a place is seen.</param>
    /// <returns>Closed rings, last point not repeated; holes are rings inside.</returns>
    public static IReadOnlyList<IReadOnlyList<Point2>> Of(TriangleMesh mesh, Func<Point3, Point2> seen)
    {
        Point2[] places = [.. mesh.Points().Select(seen)];
        double left = places.Min(p => p.X), top = places.Min(p => p.Y), width = places.Max(p => p.X) - left, height = places.Max(p => p.Y) - top;
        double dot = Math.Max(width, height) / Dots;
        Dotted dotted = new((int)Math.Ceiling(width / dot) + 2, (int)Math.Ceiling(height / dot) + 2);
        // The first row and column stay empty; dots lie in the middle of their squares.
        Point2[] laid = [.. places.Select(p => new Point2((p.X - left) / dot + 1, (p.Y - top) / dot + 1))];
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3)
            dotted.Cover(laid[corners[i]], laid[corners[i + 1]], laid[corners[i + 2]]);
        return
        [
            .. dotted.Borders().Select(Straight).Where(ring => ring.Count > 2 && Area(ring) > Speck * Speck)
                .Select(ring => (IReadOnlyList<Point2>)[.. ring.Select(p => new Point2(left + (p.X - 1) * dot, top + (p.Y - 1) * dot))]),
        ];
    }

    /// <summary>Whether a place lies inside an odd number of rings.</summary>
    public static bool Holds(IReadOnlyList<IReadOnlyList<Point2>> rings, Point2 place)
    {
        bool isIn = false;
        foreach (IReadOnlyList<Point2> ring in rings)
        {
            for (int i = 0, before = ring.Count - 1; i < ring.Count; before = i++)
            {
                (Point2 a, Point2 b) = (ring[before], ring[i]);
                if (a.Y <= place.Y != b.Y <= place.Y && place.X < a.X + (place.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X))
                    isIn = !isIn;
            }
        }

        return isIn;
    }

    private static double Area(IReadOnlyList<Point2> ring)
    {
        double sum = 0;
        for (int i = 0; i < ring.Count; i++)
            sum += ring[i].Cross(ring[(i + 1) % ring.Count]);
        return Math.Abs(sum) / 2;
    }

    // The middles of the border's steps, each drawn half way to the mean of its neighbours, then as few as keep the line.
    private static IReadOnlyList<Point2> Straight(IReadOnlyList<Point2> border)
    {
        int count = border.Count;
        Point2 Middle(int i) => 0.5 * (border[(i + count) % count] + border[(i + 1) % count]);
        List<Coordinate> line = [];
        for (int i = 0; i <= count; i++)
        {
            Point2 p = 0.5 * Middle(i) + 0.25 * (Middle(i - 1) + Middle(i + 1));
            line.Add(new(p.X, p.Y));
        }

        return [.. DouglasPeuckerLineSimplifier.Simplify([.. line], Straightened).SkipLast(1).Select(c => new Point2(c.X, c.Y))];
    }
}
