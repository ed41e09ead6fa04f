namespace Finwright.Geometry.Pictures;

/// <summary>The light tone of a surface by the way it faces: paper where it meets the light, thin water-coloured ink where it turns away.</summary>
internal static class Wash
{
    /// <summary>Light from over the left shoulder, in picture axes (x right, y up, z to the eye), as draughtsmen agree on.</summary>
    private static readonly Point3 Light = Unit(new(-0.8, 0.5, 0.55));

    private static readonly Ink Lit = Palette.Paper.Under(Palette.Water, 0.05);
    private static readonly Ink Shaded = Palette.Paper.Under(Palette.Water, 0.45).Under(Palette.Line, 0.42);

    /// <summary>Colour for a unit normal in picture axes.</summary>
    public static Ink Of(Point3 normal)
    {
        // Half Lambert keeps form readable on the side away from the light; the power gives the lit side room.
        double facing = 0.5 + 0.5 * normal.Dot(Light);
        return Lit.Under(Shaded, Math.Pow(1 - Math.Clamp(facing, 0, 1), 1.5));
    }

    private static Point3 Unit(Point3 v) => 1 / v.Length * v;
}
