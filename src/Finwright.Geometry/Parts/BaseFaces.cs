using Finwright.Geometry.Bases;

namespace Finwright.Geometry.Parts;

/// <summary>Which way the flat faces of a base look: unit normals, outward, design axes.</summary>
internal static class BaseFaces
{
    /// <summary>Front face.</summary>
    public static Point3 Front(BasePlan plan) => new(-Math.Cos(plan.FrontAngle), -Math.Sin(plan.FrontAngle), 0);

    /// <summary>Rear face.</summary>
    public static Point3 Rear(BasePlan plan) => new(Math.Cos(plan.RearAngle), -Math.Sin(plan.RearAngle), 0);

    /// <summary>Starboard side.</summary>
    public static Point3 Starboard(BasePlan plan)
    {
        double taper = Taper(plan);
        return new(0, -Math.Sin(taper), Math.Cos(taper));
    }

    /// <summary>Port side.</summary>
    public static Point3 Port(BasePlan plan) => Starboard(plan) with { Z = -Starboard(plan).Z };

    /// <summary>Top edge, up in the board.</summary>
    public static Point3 Top(BasePlan plan)
    {
        Point2 edge = plan.RearTop - plan.FrontTop;
        return 1 / edge.Length * new Point3(edge.Y, -edge.X, 0);
    }

    private static double Taper(BasePlan plan) => Math.Atan((plan.HullWidth - plan.DeepWidth) / 2 / plan.Depth);
}
