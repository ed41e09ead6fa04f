using Finwright.Geometry;

namespace Finwright.Papers.Templates;

/// <summary>How far the skin of a blade reaches fore and aft near its root, where a flange makes it stand out.</summary>
internal static class SkinSide
{
    private const int Depths = 48;

    // Cut this far below the hull, where the root face itself is out of the way, metres.
    private const double Hair = 1e-6;

    /// <summary>The line round the flange seen from the side: up the front, along the hull, down the rear.</summary>
    /// <param name="skin">Closed skin, design axes, metres.</param>
    /// <param name="height">How far down it is followed, metres.</param>
    public static IReadOnlyList<Point2> Rim(TriangleMesh skin, double height)
    {
        double[] depths = [.. Enumerable.Range(0, Depths + 1).Select(i => Hair + (height - Hair) * i / Depths)];
        (double Front, double Rear)[] reach = new (double, double)[depths.Length];
        Array.Fill(reach, (double.PositiveInfinity, double.NegativeInfinity));
        ReadOnlySpan<int> corners = skin.Corners;
        for (int t = 0; t < skin.TriangleCount; t++)
        {
            Point3 a = skin.Vertex(corners[3 * t]), b = skin.Vertex(corners[3 * t + 1]), c = skin.Vertex(corners[3 * t + 2]);
            for (int i = 0; i < depths.Length; i++)
            {
                Meet(a, b, depths[i], ref reach[i]);
                Meet(b, c, depths[i], ref reach[i]);
                Meet(c, a, depths[i], ref reach[i]);
            }
        }

        IEnumerable<Point2> front = depths.Select((y, i) => new Point2(reach[i].Front, i == 0 ? 0 : y)), rear = depths.Select((y, i) => new Point2(reach[i].Rear, i == 0 ? 0 : y));
        return [.. front.Reverse(), .. rear];
    }

    private static void Meet(Point3 from, Point3 to, double y, ref (double Front, double Rear) reach)
    {
        if (from.Y <= y == to.Y <= y)
            return;
        double x = from.X + (y - from.Y) / (to.Y - from.Y) * (to.X - from.X);
        reach = (Math.Min(reach.Front, x), Math.Max(reach.Rear, x));
    }
}
