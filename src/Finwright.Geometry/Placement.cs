namespace Finwright.Geometry;

/// <summary>
/// A linear map with an offset, given by its columns: p ↦ x·<see cref="AxisX"/> + y·<see cref="AxisY"/> + z·<see cref="AxisZ"/> + <see cref="Origin"/>.
/// </summary>
/// <param name="AxisX">Image of the x unit vector.</param>
/// <param name="AxisY">Image of the y unit vector.</param>
/// <param name="AxisZ">Image of the z unit vector.</param>
/// <param name="Origin">Image of the origin, metres.</param>
public readonly record struct Placement(Point3 AxisX, Point3 AxisY, Point3 AxisZ, Point3 Origin)
{
    /// <summary>Leaves every point where it is.</summary>
    public static Placement Identity { get; } = new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1), default);

    /// <summary>A shift.</summary>
    public static Placement Shift(Point3 by) => Identity with { Origin = by };

    /// <summary>Right-handed rotation about an axis through the origin.</summary>
    /// <param name="axis">Unit vector.</param>
    /// <param name="angle">Radians.</param>
    public static Placement Rotation(Point3 axis, double angle)
    {
        double c = Math.Cos(angle), s = Math.Sin(angle);
        Point3 Turn(Point3 v) => c * v + s * axis.Cross(v) + (1 - c) * axis.Dot(v) * axis;
        return new(Turn(new(1, 0, 0)), Turn(new(0, 1, 0)), Turn(new(0, 0, 1)), default);
    }

    /// <summary>A frame whose z axis points along <paramref name="direction"/>; x is chosen square to it, as close to <paramref name="hintX"/> as can be.</summary>
    /// <param name="origin">Origin of the frame, metres.</param>
    /// <param name="direction">Direction of the frame's z axis; need not be of unit length.</param>
    /// <param name="hintX">Direction that the frame's x axis should lean to; not parallel to <paramref name="direction"/>.</param>
    public static Placement Along(Point3 origin, Point3 direction, Point3 hintX)
    {
        Point3 z = 1 / direction.Length * direction;
        Point3 x = hintX - hintX.Dot(z) * z;
        x = 1 / x.Length * x;
        return new(x, z.Cross(x), z, origin);
    }

    /// <summary>Image of a point.</summary>
    public Point3 Apply(Point3 p) => p.X * AxisX + p.Y * AxisY + p.Z * AxisZ + Origin;

    /// <summary>Image of a direction (no offset).</summary>
    public Point3 Turn(Point3 v) => v.X * AxisX + v.Y * AxisY + v.Z * AxisZ;

    /// <summary>First this map, then <paramref name="next"/>.</summary>
    public Placement Then(Placement next) => new(next.Turn(AxisX), next.Turn(AxisY), next.Turn(AxisZ), next.Apply(Origin));

    /// <summary>The way back, for a map that only turns and shifts: its axes are of unit length and square to each other.</summary>
    public Placement RigidInverse()
    {
        Placement back = new(new(AxisX.X, AxisY.X, AxisZ.X), new(AxisX.Y, AxisY.Y, AxisZ.Y), new(AxisX.Z, AxisY.Z, AxisZ.Z), default);
        return back with { Origin = -1 * back.Turn(Origin) };
    }

    /// <summary>Volume factor; negative when the map mirrors.</summary>
    public double Determinant => AxisX.Cross(AxisY).Dot(AxisZ);
}
