using Finwright.Geometry.Blades;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Features;

/// <summary>
/// A cavity opened from one side, with a ledge for a lid. Its floor lies parallel to the chord plane of the blade there.
/// Design axes, metres.
/// </summary>
public sealed class LidCavity
{
    // How far the tools stand out of the skin.
    private const double Beyond = 5e-3;

    private LidCavity()
    {
    }

    /// <summary>The room below the lid, up to the lowest point of the opening.</summary>
    public required FeatureVolume Room { get; init; }

    /// <summary>The recess for the lid, up to the lowest point of the opening; null when there is no lid.</summary>
    public required FeatureVolume? Recess { get; init; }

    /// <summary>How much the skin over the opening rises above its lowest point: what the lid is thicker in the middle.</summary>
    public required double Rise { get; init; }

    /// <summary>How far the cutting tools run out past the lowest point of the opening.</summary>
    public double ToolOverrun => Rise + Beyond;

    /// <summary>Lays out a cavity.</summary>
    /// <param name="blade">The blade.</param>
    /// <param name="size">What is wanted.</param>
    /// <returns>The cavity, or null when its opening reaches past the outline of the blade.</returns>
    public static LidCavity? Make(BladeShape blade, CavitySize size)
    {
        double twist = blade.Twist(size.Y), side = size.ToStarboard ? 1 : -1;
        Point3 chordwise = new(Math.Cos(twist), 0, -Math.Sin(twist));
        Point3 outward = side * new Point3(Math.Sin(twist), 0, Math.Cos(twist));
        if (!IsInOutline(blade, size.X, size.Y))
            return null;
        Point3 middle = new(size.X, size.Y, blade.MidSurface(size.X, size.Y));
        double lowest = double.PositiveInfinity, highest = double.NegativeInfinity;
        foreach (Point2 p in Opening(size))
        {
            if (SkinHeight(blade, middle + p.X * chordwise + new Point3(0, p.Y, 0), outward) is not { } height)
                return null;
            lowest = Math.Min(lowest, height);
            highest = Math.Max(highest, height);
        }

        double floor = size.Ledge > 0 ? lowest - size.Lid : lowest;
        Point3 At(double height) => middle + height * outward;
        FeatureVolume Prism(double wider, double from, double to) => size.IsRound
            ? FeatureVolume.Cylinder(size.Length + 2 * wider, At(from), At(to))
            : FeatureVolume.Prism(Rings.Rectangle(size.Length + 2 * wider, size.Height + 2 * wider), At(from), At(to), chordwise);
        return new()
        {
            Room = Prism(0, floor - size.Room, lowest),
            Recess = size.Ledge > 0 ? Prism(size.Ledge, floor, lowest) : null,
            Rise = highest - lowest,
        };
    }

    // Places over the opening, ledge included, in the plane of the chord: rim and inside.
    private static IEnumerable<Point2> Opening(CavitySize size)
    {
        const int steps = 12;
        for (int i = 0; i <= steps; i++)
            for (int j = 0; j <= 2 * steps; j++)
            {
                if (size.IsRound)
                {
                    double radius = (size.Length / 2 + size.Ledge) * i / steps, angle = Math.PI * j / steps;
                    yield return new(radius * Math.Cos(angle), radius * Math.Sin(angle));
                }
                else
                {
                    yield return new(
                        (size.Length / 2 + size.Ledge) * (2.0 * i / steps - 1),
                        (size.Height / 2 + size.Ledge) * (1.0 * j / steps - 1));
                }
            }
    }

    // Height of the skin over a point, along a direction; null outside the outline. The direction is nearly that of z, so
    // climbing to the skin's z over the place reached so far converges in a few rounds; at once without twist. Where it
    // does not, the skin stands as steep as the direction itself: that is the nose, and no place for a lid.
    private static double? SkinHeight(BladeShape blade, Point3 from, Point3 outward)
    {
        const int rounds = 40;
        const double settled = 1e-9;
        double height = 0, side = Math.Sign(outward.Z);
        for (int i = 0; i < rounds; i++)
        {
            Point3 p = from + height * outward;
            if (!IsInOutline(blade, p.X, p.Y))
                return null;
            double next = (blade.MidSurface(p.X, p.Y) + side * blade.HalfThickness(p.X, p.Y) - from.Z) / outward.Z;
            if (Math.Abs(next - height) < settled)
                return next;
            height = next;
        }

        return null;
    }

    private static bool IsInOutline(BladeShape blade, double x, double y) =>
        y >= 0 && y < blade.Span && x > blade.Outline.LeadingEdge(y) && x < blade.Outline.TrailingEdge(y);
}

/// <summary>What is wanted of a cavity. Design axes, metres.</summary>
/// <param name="X">Middle, aft of the root quarter chord.</param>
/// <param name="Y">Middle, below the hull.</param>
/// <param name="IsRound">A cylinder across the fin; else a box.</param>
/// <param name="ToStarboard">Opens to starboard; else to port.</param>
/// <param name="Length">Along the chord; the diameter of a cylinder.</param>
/// <param name="Height">Along the span; not used by a cylinder.</param>
/// <param name="Room">Room across the fin under the lid.</param>
/// <param name="Ledge">Width of the ledge all round; 0 for no lid.</param>
/// <param name="Lid">Thickness of the lid at the lowest point of the opening.</param>
public sealed record CavitySize(
    double X, double Y, bool IsRound, bool ToStarboard, double Length, double Height, double Room, double Ledge, double Lid);
