using Finwright.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.OverlayNG;

namespace Finwright.Making.Layers;

/// <summary>Areas inside rings: measured, shrunk and cut with one another. Outer rings run counter-clockwise, holes clockwise.</summary>
internal static class RingAreas
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>Area inside rings, m²: holes count negative by their sense.</summary>
    public static double Area(IReadOnlyList<IReadOnlyList<Point2>> rings)
    {
        double sum = 0;
        foreach (IReadOnlyList<Point2> ring in rings)
            sum += Area(ring);
        return sum;
    }

    /// <summary>Signed area of a ring, m²: positive when it runs counter-clockwise.</summary>
    public static double Area(IReadOnlyList<Point2> ring)
    {
        if (ring.Count < 3)
            return 0;
        // Measured from a corner of its own, so that far from the origin no digits are lost.
        Point2 from = ring[0];
        double twice = 0;
        for (int i = 1; i + 1 < ring.Count; i++)
            twice += (ring[i] - from).Cross(ring[i + 1] - from);
        return twice / 2;
    }

    /// <summary>Length of all rings, metres.</summary>
    public static double Length(IReadOnlyList<IReadOnlyList<Point2>> rings)
    {
        double sum = 0;
        foreach (IReadOnlyList<Point2> ring in rings)
            for (int i = 0; i < ring.Count; i++)
                sum += (ring[(i + 1) % ring.Count] - ring[i]).Length;
        return sum;
    }

    /// <summary>Whether a point lies inside the rings (even-odd rule).</summary>
    public static bool Contains(IReadOnlyList<IReadOnlyList<Point2>> rings, Point2 point)
    {
        bool inside = false;
        foreach (IReadOnlyList<Point2> ring in rings)
            inside ^= Contains(ring, point);
        return inside;
    }

    /// <summary>Distance from a point along a direction to the first ring, metres; infinite when there is none.</summary>
    /// <param name="rings">The rings.</param>
    /// <param name="from">The point.</param>
    /// <param name="direction">Unit vector.</param>
    public static double Clear(IReadOnlyList<IReadOnlyList<Point2>> rings, Point2 from, Point2 direction)
    {
        double least = double.PositiveInfinity;
        foreach (IReadOnlyList<Point2> ring in rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                Point2 a = ring[i] - from, b = ring[(i + 1) % ring.Count] - from;
                double sideA = direction.Cross(a), sideB = direction.Cross(b);
                if (sideA > 0 == sideB > 0)
                    continue;
                double along = (a + sideA / (sideA - sideB) * (b - a)).Dot(direction);
                if (along >= 0)
                    least = Math.Min(least, along);
            }
        }

        return least;
    }

    /// <summary>The rings as one figure; each hole goes to the smallest outer ring round it.</summary>
    public static NetTopologySuite.Geometries.Geometry ToFigure(IReadOnlyList<IReadOnlyList<Point2>> rings)
    {
        List<(IReadOnlyList<Point2> Ring, double Area, List<LinearRing> Holes)> shells = [];
        foreach (IReadOnlyList<Point2> ring in rings)
            if (Area(ring) is > 0 and double area)
                shells.Add((ring, area, []));
        shells.Sort((a, b) => a.Area.CompareTo(b.Area));
        foreach (IReadOnlyList<Point2> ring in rings)
        {
            if (Area(ring) >= 0)
                continue;
            foreach ((IReadOnlyList<Point2> shell, double area, List<LinearRing> holes) in shells)
            {
                if (area <= -Area(ring) || !Contains(shell, ring[0]))
                    continue;
                holes.Add(ToRing(ring));
                break;
            }
        }

        Polygon[] polygons = new Polygon[shells.Count];
        for (int i = 0; i < polygons.Length; i++)
            polygons[i] = Factory.CreatePolygon(ToRing(shells[i].Ring), [.. shells[i].Holes]);
        return polygons.Length == 1 ? polygons[0] : Factory.CreateMultiPolygon(polygons);
    }

    /// <summary>The figure as rings, without pieces and holes below an area.</summary>
    /// <param name="figure">Polygons; lines and points in it are left out.</param>
    /// <param name="leastArea">Smaller rings are left out, m².</param>
    public static IReadOnlyList<IReadOnlyList<Point2>> ToRings(NetTopologySuite.Geometries.Geometry figure, double leastArea)
    {
        List<IReadOnlyList<Point2>> rings = [];
        for (int i = 0; i < figure.NumGeometries; i++)
        {
            if (figure.GetGeometryN(i) is not Polygon { IsEmpty: false } polygon || polygon.Area < leastArea)
                continue;
            rings.Add(ToPoints(polygon.Shell, counterClockwise: true));
            foreach (LinearRing hole in polygon.Holes)
                rings.Add(ToPoints(hole, counterClockwise: false));
        }

        return rings;
    }

    /// <summary>The figure less everything nearer to its edge than a margin.</summary>
    /// <param name="figure">What is shrunk.</param>
    /// <param name="by">Margin, metres, above 0.</param>
    public static NetTopologySuite.Geometries.Geometry Shrunk(NetTopologySuite.Geometries.Geometry figure, double by)
    {
        // Round joins: with sharp ones the library draws lines to and fro at every corner of a curve, ten to fifty times as slow. Its own
        // thinning of points, a hundredth of the margin, moves the area by up to 5e-4; this much moves it by 1e-5 and takes a third of the time
        // of none (measured on the demo blades).
        BufferParameters round = new(16) { SimplifyFactor = 3e-4 };
        return BufferOp.Buffer(figure, -by, round);
    }

    /// <summary>What two figures share.</summary>
    public static NetTopologySuite.Geometries.Geometry Shared(NetTopologySuite.Geometries.Geometry a, NetTopologySuite.Geometries.Geometry b)
    {
        try
        {
            return OverlayNGRobust.Overlay(a, b, NetTopologySuite.Operation.Overlay.SpatialFunction.Intersection);
        }
        catch (TopologyException)
        {
            // Rings that touch themselves: mended once, then cut again.
            return OverlayNGRobust.Overlay(GeometryFixer.Fix(a), GeometryFixer.Fix(b), NetTopologySuite.Operation.Overlay.SpatialFunction.Intersection);
        }
    }

    private static bool Contains(IReadOnlyList<Point2> ring, Point2 point)
    {
        bool inside = false;
        for (int i = 0; i < ring.Count; i++)
        {
            Point2 a = ring[i], b = ring[(i + 1) % ring.Count];
            if (a.X <= point.X == b.X <= point.X)
                continue;
            if (a.Y + (point.X - a.X) / (b.X - a.X) * (b.Y - a.Y) > point.Y)
                inside = !inside;
        }

        return inside;
    }

    private static LinearRing ToRing(IReadOnlyList<Point2> ring)
    {
        Coordinate[] corners = new Coordinate[ring.Count + 1];
        for (int i = 0; i < ring.Count; i++)
            corners[i] = new(ring[i].X, ring[i].Y);
        corners[^1] = corners[0].Copy();
        return Factory.CreateLinearRing(corners);
    }

    private static Point2[] ToPoints(LinearRing ring, bool counterClockwise)
    {
        Coordinate[] corners = ring.Coordinates;
        Point2[] points = new Point2[corners.Length - 1];
        for (int i = 0; i < points.Length; i++)
            points[i] = new(corners[i].X, corners[i].Y);
        if (Area(points) > 0 != counterClockwise)
            Array.Reverse(points);
        return points;
    }
}
