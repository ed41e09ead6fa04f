namespace Finwright.Geometry.Pictures;

/// <summary>Where a picture is seen from. Parallel projection: lengths along one direction keep their proportion, as in a workshop drawing.</summary>
/// <param name="Towards">Direction in which the eye looks; need not be of unit length.</param>
/// <param name="Up">What should point up on the picture; not parallel to <paramref name="Towards"/>.</param>
public readonly record struct View(Point3 Towards, Point3 Up)
{
    /// <summary>A fin in design axes, as it hangs under the board: water from the left, tip down, seen from port, a little from ahead and below.</summary>
    public static View Fin { get; } = new(new(0.62, -0.3, 1), new(0, -1, 0));

    /// <summary>Parts as they lie on the printer's bed, z up: from the front left and above.</summary>
    public static View Bed { get; } = new(new(0.55, 1, -0.75), new(0, 0, 1));

    /// <summary>Axes of the picture: x to the right, y up, z towards the eye.</summary>
    internal (Point3 Right, Point3 Up, Point3 Eye) Axes()
    {
        Point3 eye = -1 / Towards.Length * Towards;
        Point3 right = Up.Cross(eye);
        if (!(right.Length > 0))
            throw new InvalidOperationException("The direction of the view and what is up are parallel.");
        right = 1 / right.Length * right;
        return (right, eye.Cross(right), eye);
    }
}
