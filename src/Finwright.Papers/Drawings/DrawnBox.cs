using Finwright.Geometry;

namespace Finwright.Papers.Drawings;

/// <summary>An upright box on paper.</summary>
/// <param name="From">Its upper left corner, metres.</param>
/// <param name="To">Its lower right corner, metres.</param>
public readonly record struct DrawnBox(Point2 From, Point2 To)
{
    /// <summary>Its width, metres.</summary>
    public double Width => To.X - From.X;

    /// <summary>Its height, metres.</summary>
    public double Height => To.Y - From.Y;

    /// <summary>The shares of the way from a point to another between which it lies in the box; null when it passes by.</summary>
    /// <remarks>The way is clipped at the sides, one after the other (Liang and Barsky, 1984, from memory).</remarks>
    internal (double From, double To)? Inside(Point2 a, Point2 b)
    {
        double from = 0, to = 1;
        Point2 way = b - a;
        return Clip(-way.X, a.X - From.X) && Clip(way.X, To.X - a.X) && Clip(-way.Y, a.Y - From.Y) && Clip(way.Y, To.Y - a.Y) ? (from, to) : null;

        bool Clip(double rate, double room)
        {
            if (rate is 0)
                return room >= 0;
            double at = room / rate;
            if (rate < 0)
                from = Math.Max(from, at);
            else
                to = Math.Min(to, at);
            return from <= to;
        }
    }

    /// <summary>The smallest box round points; nothing at the origin when there are none.</summary>
    public static DrawnBox Round(IEnumerable<Point2> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        double left = double.PositiveInfinity, top = left, right = double.NegativeInfinity, bottom = right;
        foreach (Point2 p in points)
        {
            (left, top) = (Math.Min(left, p.X), Math.Min(top, p.Y));
            (right, bottom) = (Math.Max(right, p.X), Math.Max(bottom, p.Y));
        }

        return left <= right ? new(new(left, top), new(right, bottom)) : default;
    }
}
