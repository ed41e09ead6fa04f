namespace Finwright.Geometry;

/// <summary>A point or vector in a plane; the meaning of the axes is stated where it is used. Metres unless said otherwise.</summary>
/// <param name="X">First coordinate.</param>
/// <param name="Y">Second coordinate.</param>
public readonly record struct Point2(double X, double Y)
{
    /// <summary>Sum of two vectors.</summary>
    public static Point2 operator +(Point2 a, Point2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference of two points.</summary>
    public static Point2 operator -(Point2 a, Point2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Vector scaled by a factor.</summary>
    public static Point2 operator *(double s, Point2 a) => new(s * a.X, s * a.Y);

    /// <summary>Scalar product.</summary>
    public double Dot(Point2 other) => X * other.X + Y * other.Y;

    /// <summary>z component of the cross product: positive when <paramref name="other"/> lies to the left.</summary>
    public double Cross(Point2 other) => X * other.Y - Y * other.X;

    /// <summary>Euclidean length.</summary>
    public double Length => Math.Sqrt(X * X + Y * Y);
}

/// <summary>
/// A point or vector in space. Design axes: origin at the root quarter chord, <c>X</c> aft, <c>Y</c> down the span away
/// from the hull, <c>Z</c> to starboard; metres.
/// </summary>
/// <param name="X">Aft.</param>
/// <param name="Y">Down the span.</param>
/// <param name="Z">To starboard.</param>
public readonly record struct Point3(double X, double Y, double Z)
{
    /// <summary>Sum of two vectors.</summary>
    public static Point3 operator +(Point3 a, Point3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference of two points.</summary>
    public static Point3 operator -(Point3 a, Point3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Vector scaled by a factor.</summary>
    public static Point3 operator *(double s, Point3 a) => new(s * a.X, s * a.Y, s * a.Z);

    /// <summary>Scalar product.</summary>
    public double Dot(Point3 other) => X * other.X + Y * other.Y + Z * other.Z;

    /// <summary>Vector product.</summary>
    public Point3 Cross(Point3 o) => new(Y * o.Z - Z * o.Y, Z * o.X - X * o.Z, X * o.Y - Y * o.X);

    /// <summary>Euclidean length.</summary>
    public double Length => Math.Sqrt(X * X + Y * Y + Z * Z);
}

/// <summary>Axis-aligned box, metres.</summary>
/// <param name="Minimum">Corner with the smallest coordinates.</param>
/// <param name="Maximum">Corner with the largest coordinates.</param>
public readonly record struct Bounds(Point3 Minimum, Point3 Maximum)
{
    /// <summary>Edge lengths.</summary>
    public Point3 Size => Maximum - Minimum;

    /// <summary>Middle.</summary>
    public Point3 Centre => 0.5 * (Minimum + Maximum);
}
