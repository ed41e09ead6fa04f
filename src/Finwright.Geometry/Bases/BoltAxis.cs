using Finwright.Geometry.Features;

namespace Finwright.Geometry.Bases;

/// <summary>The axis of a bolt that comes down from the deck of the board. Design axes.</summary>
/// <param name="AtHull">Where the axis meets the hull plane (y = 0), metres.</param>
/// <param name="Up">Unit vector along the axis, up into the board (y negative).</param>
/// <param name="Thread">Thread of the bolt.</param>
public sealed record BoltAxis(Point3 AtHull, Point3 Up, MetricThread Thread)
{
    /// <summary>A bolt in the fin's middle plane.</summary>
    /// <param name="x">Where it meets the hull plane, metres aft of the root quarter chord.</param>
    /// <param name="lean">Lean from square to the hull, radians, positive when it leans aft going up.</param>
    /// <param name="thread">Thread of the bolt.</param>
    public static BoltAxis Leaning(double x, double lean, MetricThread thread) =>
        new(new(x, 0, 0), new(Math.Sin(lean), -Math.Cos(lean), 0), thread);

    /// <summary>Point of the axis at depth <paramref name="y"/>, metres; negative inside the box.</summary>
    public Point3 At(double y) => AtHull + y / Up.Y * Up;
}
