namespace Finwright.Geometry.Solids;

/// <summary>Unpacks the flat arrays in which an engine hands over its slices.</summary>
internal static class SliceReader
{
    private const double Metres = 1 / SolidProgram.Millimetres;

    /// <summary>Least area of a ring, mm²: what remains of a feature the size of the mesh's own rounding.</summary>
    private const double LeastRingArea = 1e-9;

    /// <summary>Rings at each height; those without area are left out.</summary>
    public static SliceRings[] Rings(IReadOnlyList<double> heights, ReadOnlySpan<double> flat)
    {
        SliceRings[] slices = new SliceRings[heights.Count];
        int at = 0;
        for (int i = 0; i < slices.Length; i++)
        {
            int count = (int)flat[at++];
            List<IReadOnlyList<Point2>> rings = new(count);
            for (int r = 0; r < count; r++)
            {
                int length = (int)flat[at++];
                ReadOnlySpan<double> points = flat.Slice(at, 2 * length);
                at += 2 * length;
                if (length >= 3 && Math.Abs(Area(points)) > LeastRingArea)
                    rings.Add(Ring(points));
            }

            slices[i] = new(heights[i], rings);
        }

        return slices;
    }

    /// <summary>Areas at each height.</summary>
    public static SliceArea[] Areas(IReadOnlyList<double> heights, ReadOnlySpan<double> flat)
    {
        SliceArea[] areas = new SliceArea[heights.Count];
        for (int i = 0; i < areas.Length; i++)
            areas[i] = new(heights[i], flat[2 * i] * Metres * Metres, flat[2 * i + 1] * Metres * Metres);
        return areas;
    }

    private static double Area(ReadOnlySpan<double> points)
    {
        double sum = 0, x0 = points[0], y0 = points[1];
        for (int i = 2; i + 3 < points.Length; i += 2)
            sum += (points[i] - x0) * (points[i + 3] - y0) - (points[i + 2] - x0) * (points[i + 1] - y0);
        return sum / 2;
    }

    private static Point2[] Ring(ReadOnlySpan<double> points)
    {
        Point2[] ring = new Point2[points.Length / 2];
        for (int i = 0; i < ring.Length; i++)
            ring[i] = new(points[2 * i] * Metres, points[2 * i + 1] * Metres);
        return ring;
    }
}
