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
