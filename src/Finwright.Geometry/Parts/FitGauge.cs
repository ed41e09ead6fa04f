using Finwright.Design;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Parts;

/// <summary>
/// A thin gauge of the base to try in the box: a plate of the side profile with a full-width post at either end. It tests
/// length, end angles, depth and thickness at once, and lies flat on the printer without overhang.
/// </summary>
public static class FitGauge
{
    /// <summary>Length of each post along the base, metres: wide enough to feel the fit of both sides, quick to print.</summary>
    public const double PostLength = 8e-3;

    /// <summary>Diameter of the finger hole, metres, where the plate is deep enough.</summary>
    public const double FingerHole = 16e-3;

    private const double SmallestFingerHole = 8e-3;
    private const double Beyond = 5e-3;

    /// <summary>The plate's upper face as it is printed: origin in its middle, x aft, z out of the plate.</summary>
    /// <param name="plan">The base.</param>
    /// <param name="thickness">Thickness of the plate, metres.</param>
    public static Placement PlateFace(BasePlan plan, double thickness)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Point3 outward = BaseFaces.Starboard(plan);
        Point2 middle = Middle(plan);
        Point3 onStarboard = new(middle.X, middle.Y, plan.Width(middle.Y) / 2);
        return Placement.Along(onStarboard - thickness * outward, -1 * outward, new(1, 0, 0));
    }

    /// <summary>How it lies on the printer: on its flush side.</summary>
    /// <param name="plan">The base.</param>
    public static Resting Rest(BasePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(PrintAttitude.Lying, BaseFaces.Starboard(plan));
    }

    /// <summary>The gauge, flush on the starboard side, in the place of the base.</summary>
    /// <param name="plan">The base with its allowances.</param>
    /// <param name="thickness">Thickness of the plate, metres; more than the base's width gives a plain block.</param>
    public static SolidExpression Solid(BasePlan plan, double thickness)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(thickness);
        Placement face = PlateFace(plan, thickness);
        Point3 front = BaseFaces.Front(plan), rear = BaseFaces.Rear(plan);
        double size = 2 * (plan.HullLength + plan.Depth);
        // What is taken from between the posts: everything above the plate, clear of both end faces by a post.
        SolidExpression room = new PrismSolid([Rings.Rectangle(size, size)], Math.Max(plan.HullWidth, plan.DeepWidth) + Beyond).Placed(face)
            .TrimmedBy(-1 * front, -front.Dot(new(plan.FrontX + PostLength, 0, 0)))
            .TrimmedBy(-1 * rear, -rear.Dot(new(plan.RearX - PostLength, 0, 0)));
        SolidExpression[] tools = Hole(plan) is { } diameter
            ? [room, Tools.Bore(diameter, face.Apply(new(0, 0, -thickness - Beyond)), face.Apply(new(0, 0, plan.HullWidth + Beyond)))]
            : [room];
        return plan.Solid().Without(tools);
    }

    /// <summary>Diameter of the finger hole, metres; null when the plate is too shallow for one.</summary>
    public static double? Hole(BasePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        double diameter = Math.Min(FingerHole, -Middle(plan).Y);
        return diameter >= SmallestFingerHole ? diameter : null;
    }

    // Halfway along the base and halfway up.
    private static Point2 Middle(BasePlan plan) => new(plan.MiddleX, plan.OnTopEdge(new(plan.MiddleX, 0, 0), new(0, -1, 0)).Y / 2);
}
