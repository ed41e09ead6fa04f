using Finwright.Geometry;

namespace Finwright.Making.Pores;

/// <summary>A hole through the wall into the core, for resin or for air.</summary>
/// <param name="Mouth">Where its middle meets the core, layer axes, metres.</param>
/// <param name="Outward">Unit vector along the hole, out of the part.</param>
/// <param name="Diameter">Diameter, metres.</param>
public sealed record PourPort(Point3 Mouth, Point3 Outward, double Diameter)
{
    /// <summary>Height of its mouth's highest point along a direction, metres from the origin of the axes.</summary>
    internal double Top(Point3 up)
    {
        double along = Outward.Dot(up);
        return Mouth.Dot(up) + Diameter / 2 * Math.Sqrt(Math.Max(0, 1 - along * along));
    }
}
