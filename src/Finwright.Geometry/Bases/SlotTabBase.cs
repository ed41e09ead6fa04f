using Finwright.Geometry.Features;

namespace Finwright.Geometry.Bases;

/// <summary>The plain tab of a fin for a long slot: square ends, a cross pin near the rear, a screw hole near the front.</summary>
/// <remarks>
/// Which end carries the pin and how far both stand from the ends is from memory; the screw goes up from below into a
/// plate in the rail of the box (common practice, no source).
/// </remarks>
public static class SlotTabBase
{
    /// <summary>Distance of pin and screw from their end of the tab, metres (from memory).</summary>
    public const double EndDistance = 8e-3;

    /// <summary>Makes the tab.</summary>
    /// <param name="middleX">Middle of the tab, design axes, metres.</param>
    /// <param name="length">Length, metres.</param>
    /// <param name="thickness">Thickness, metres.</param>
    /// <param name="depth">Depth inside the slot, metres.</param>
    /// <param name="pinDiameter">Diameter of the cross pin, metres.</param>
    /// <param name="pinDepth">Distance of the pin's middle from the hull plane, metres.</param>
    /// <param name="screw">Thread of the plate screw.</param>
    public static BasePlan Plan(double middleX, double length, double thickness, double depth, double pinDiameter, double pinDepth, MetricThread screw)
    {
        double frontX = middleX - length / 2;
        return new()
        {
            FrontX = frontX,
            HullLength = length,
            FrontDepth = depth,
            RearDepth = depth,
            FrontAngle = 0,
            RearAngle = 0,
            CornerRadius = 0,
            HullWidth = thickness,
            DeepWidth = thickness,
            Pin = new(new(frontX + length - EndDistance, -pinDepth, 0), pinDiameter),
            PlateScrew = BoltAxis.Leaning(frontX + EndDistance, 0, screw),
        };
    }
}
