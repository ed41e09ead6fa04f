using NetTopologySuite.Geometries;

namespace Finwright.Geometry.Parts;

/// <summary>Plane areas passed between the ring form of solids and the area form in which they are grown, shrunk and joined.</summary>
internal static class PlaneAreas
{
    /// <summary>Makes plane figures.</summary>
    public static GeometryFactory Factory { get; } = new();

    /// <summary>Outer rings counter-clockwise, holes clockwise; empty for an empty area.</summary>
    public static IReadOnlyList<IReadOnlyList<Point2>> ToRings(NetTopologySuite.Geometries.Geometry area)
    {
        List<IReadOnlyList<Point2>> rings = [];
        for (int i = 0; i < area.NumGeometries; i++)
        {
            if (area.GetGeometryN(i) is not Polygon { IsEmpty: false } polygon)
                continue;
            rings.Add(Ring(polygon.Shell, counterClockwise: true));
            rings.AddRange(polygon.Holes.Select(hole => Ring(hole, counterClockwise: false)));
        }

        return rings;
    }

    /// <summary>The area inside rings: the even-odd rule, which equals the winding rule for rings that do not cross.</summary>
    public static NetTopologySuite.Geometries.Geometry ToArea(IReadOnlyList<IReadOnlyList<Point2>> rings)
    {
        NetTopologySuite.Geometries.Geometry area = Factory.CreatePolygon();
        foreach (IReadOnlyList<Point2> ring in rings.Where(r => r.Count >= 3))
            area = area.SymmetricDifference(Factory.CreatePolygon([.. ring.Append(ring[0]).Select(p => new Coordinate(p.X, p.Y))]));
        return area;
    }

    private static Point2[] Ring(LinearRing ring, bool counterClockwise)
    {
        IEnumerable<Point2> points = ring.Coordinates.SkipLast(1).Select(c => new Point2(c.X, c.Y));
        return [.. ring.IsCCW == counterClockwise ? points : points.Reverse()];
    }
}
