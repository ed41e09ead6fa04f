namespace Finwright.Geometry.Solids;

/// <summary>Cutting tools placed in space.</summary>
public static class Tools
{
    /// <summary>A prism of a ring from one point to another.</summary>
    /// <param name="ring">Ring in the plane square to the axis.</param>
    /// <param name="from">Start of the axis, metres.</param>
    /// <param name="to">End of the axis, metres.</param>
    /// <param name="hintX">Direction that the ring's x axis leans to; default aft, or down the span for an axis that runs aft.</param>
    public static SolidExpression Along(IReadOnlyList<Point2> ring, Point3 from, Point3 to, Point3? hintX = null)
    {
        Point3 axis = to - from;
        Point3 hint = hintX ?? (Math.Abs(axis.X) > 0.9 * axis.Length ? new Point3(0, 1, 0) : new Point3(1, 0, 0));
        return new PrismSolid([ring], axis.Length).Placed(Placement.Along(from, axis, hint));
    }

    /// <summary>A round bore from one point to another.</summary>
    /// <param name="diameter">Diameter, metres.</param>
    /// <param name="from">Start of the axis, metres.</param>
    /// <param name="to">End of the axis, metres.</param>
    public static SolidExpression Bore(double diameter, Point3 from, Point3 to) => Along(Rings.Circle(diameter / 2), from, to);
}
