using Finwright.Geometry;

namespace Finwright.Papers.Drawings;

/// <summary>One side of a straight line.</summary>
internal static class HalfPlane
{
    /// <summary>The part of a ring where p · outward is at most a limit (Sutherland and Hodgman 1974, from memory).</summary>
    public static IReadOnlyList<Point2> Trim(IReadOnlyList<Point2> ring, Point2 outward, double limit)
    {
        List<Point2> kept = [];
        for (int i = 0; i < ring.Count; i++)
        {
            Point2 here = ring[i], next = ring[(i + 1) % ring.Count];
            double a = here.Dot(outward) - limit, b = next.Dot(outward) - limit;
            if (a <= 0)
                kept.Add(here);
            if (a < 0 && b > 0 || a > 0 && b < 0)
                kept.Add(here + a / (a - b) * (next - here));
        }

        return kept;
    }
}
