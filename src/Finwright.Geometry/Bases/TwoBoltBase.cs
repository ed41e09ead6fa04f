using Finwright.Geometry.Features;

namespace Finwright.Geometry.Bases;

/// <summary>The two-bolt tapered base and its deep version.</summary>
/// <remarks>
/// Length, end angles, depths, corner radius and hole spacing are common practice, no source: two descriptions of the
/// original drawing agree on length, angles, thickness and front depth. Everything else follows from them by arithmetic.
/// The drawing's bolts stand square to its sloping top edge, so they lean aft going up. The deep base has the same bolts
/// and the same end faces; its top edge is the standard one pushed up along the bolts.
/// </remarks>
public static class TwoBoltBase
{
    /// <summary>Length at the hull, metres: 155.85 to 155.96 mm (common practice, no source).</summary>
    public const double HullLength = 155.9e-3;

    /// <summary>Thickness of the head, metres: 15.75 to 15.85 mm (common practice, no source), for a box of 15.9 mm.</summary>
    public const double Thickness = 15.8e-3;

    /// <summary>Lean of both end faces from square to the hull, radians: 10 degrees (common practice, no source).</summary>
    public const double EndAngle = 10 * Math.PI / 180;

    /// <summary>Depth of the front sharp corner of the standard base, metres: 2.00 in (common practice, no source).</summary>
    public const double StandardFrontDepth = 50.8e-3;

    /// <summary>Depth of the rear sharp corner of the standard base, metres: 1.25 in (common practice, no source).</summary>
    public const double StandardRearDepth = 31.75e-3;

    /// <summary>Radius of the top corners, metres: 0.25 in (common practice, no source).</summary>
    public const double CornerRadius = 6.35e-3;

    /// <summary>Distance of the bolts along the top edge of the standard base, metres: 105.03 to 105.16 mm, centred on the edge (common practice, no source).</summary>
    public const double BoltSpacing = 105.1e-3;

    /// <summary>The standard base as drawn.</summary>
    /// <param name="middleX">Middle of the base at the hull, design axes, metres.</param>
    /// <param name="thread">Thread of the bolts.</param>
    public static BasePlan Standard(double middleX, MetricThread thread)
    {
        BasePlan plan = new()
        {
            FrontX = middleX - HullLength / 2,
            HullLength = HullLength,
            FrontDepth = StandardFrontDepth,
            RearDepth = StandardRearDepth,
            FrontAngle = EndAngle,
            RearAngle = EndAngle,
            CornerRadius = CornerRadius,
            HullWidth = Thickness,
            DeepWidth = Thickness,
        };
        Point2 edge = plan.RearTop - plan.FrontTop;
        double slope = Math.Atan2(edge.Y, edge.X);
        Point2 middle = 0.5 * (plan.FrontTop + plan.RearTop), along = 1 / edge.Length * edge;
        return plan with
        {
            Bolts = [.. new[] { -BoltSpacing / 2, BoltSpacing / 2 }.Select(offset => Square(middle + offset * along, slope, thread))],
        };
    }

    /// <summary>The deep base: the standard one with its top edge pushed up along the bolts.</summary>
    /// <param name="middleX">Middle of the base at the hull, design axes, metres.</param>
    /// <param name="thread">Thread of the bolts.</param>
    /// <param name="frontDepth">Depth of the front sharp corner, metres; more than <see cref="StandardFrontDepth"/>.</param>
    public static BasePlan Deep(double middleX, MetricThread thread, double frontDepth)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(frontDepth, StandardFrontDepth);
        BasePlan standard = Standard(middleX, thread);
        Point2 edge = standard.RearTop - standard.FrontTop;
        // A point at depth d of an end face stands d (t tan a + 1) or d (1 - t tan a) off the hull along the bolts, but
        // for one common factor, where t is the slope of the edge: equal shifts give the rear depth.
        double across = edge.Y / edge.X * Math.Tan(EndAngle);
        double rearDepth = StandardRearDepth + (frontDepth - StandardFrontDepth) * (1 + across) / (1 - across);
        return standard with { FrontDepth = frontDepth, RearDepth = rearDepth };
    }

    // The bolt through a point of the top edge, square to it.
    private static BoltAxis Square(Point2 hole, double slope, MetricThread thread)
    {
        BoltAxis axis = BoltAxis.Leaning(0, slope, thread);
        double shift = hole.X - axis.At(hole.Y).X;
        return BoltAxis.Leaning(shift, slope, thread);
    }
}
