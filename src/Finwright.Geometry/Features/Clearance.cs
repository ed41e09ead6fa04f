using Finwright.Geometry.Bases;
using Finwright.Geometry.Blades;

namespace Finwright.Geometry.Features;

/// <summary>How much plastic is left between a feature and the outside.</summary>
/// <param name="Wall">Least distance, metres; negative when the feature breaks through, by how much.</param>
/// <param name="Place">The place on the outside surface that is closest, design axes, metres.</param>
public readonly record struct Clearance(double Wall, Point3 Place)
{
    private const int AxisSamples = 64;

    /// <summary>Clearance of a volume from surfaces, by exact distance to the volume.</summary>
    /// <param name="volume">The feature.</param>
    /// <param name="surfaces">The outside; at least one.</param>
    public static Clearance Between(FeatureVolume volume, IEnumerable<SurfacePatch> surfaces) =>
        Least(volume.SignedDistance, surfaces);

    /// <summary>
    /// Clearance of a volume from the skin of a blade. The part above the hull plane does not count; where the axis leaves
    /// the blade, the wall is minus the distance of the axis from the skin and minus the volume's reach from its axis.
    /// </summary>
    /// <param name="volume">The feature; its axis should lie inside the blade.</param>
    /// <param name="blade">The blade.</param>
    /// <param name="skin">The blade's surface, or the part of it that counts.</param>
    public static Clearance InBlade(FeatureVolume volume, BladeShape blade, IReadOnlyList<SurfacePatch> skin)
    {
        List<Point3> outside = [];
        for (int i = 0; i <= AxisSamples; i++)
        {
            Point3 p = volume.From + (double)i / AxisSamples * (volume.To - volume.From);
            if (p.Y >= 0 && !IsInside(blade, p))
                outside.Add(p);
        }

        return outside.Count == 0 ? Between(volume, skin) : Outside(volume, outside, skin);
    }

    /// <summary>
    /// Clearance of a volume from the faces of a base. Only the part above the hull plane counts; where the axis leaves the
    /// base through a face that counts, the wall is negative as for a blade.
    /// </summary>
    /// <param name="volume">The feature.</param>
    /// <param name="plan">The base.</param>
    /// <param name="faces">Faces of the base that the volume must stay clear of.</param>
    public static Clearance InBase(FeatureVolume volume, BasePlan plan, IReadOnlyList<SurfacePatch> faces)
    {
        List<Point3> outside = [];
        for (int i = 0; i <= AxisSamples; i++)
        {
            Point3 p = volume.From + (double)i / AxisSamples * (volume.To - volume.From);
            if (p.Y < 0 && !plan.Holds(p))
                outside.Add(p);
        }

        return outside.Count == 0 ? Between(volume, faces) : Outside(volume, outside, faces);
    }

    /// <summary>Whether a point at y ≥ 0 lies inside the blade.</summary>
    public static bool IsInside(BladeShape blade, Point3 p) =>
        p.Y >= 0 && p.Y <= blade.Span
        && p.X > blade.Outline.LeadingEdge(p.Y) && p.X < blade.Outline.TrailingEdge(p.Y)
        && Math.Abs(p.Z - blade.MidSurface(p.X, p.Y)) < blade.HalfThickness(p.X, p.Y);

    // A few of the axis points outside are enough to say by how much and where it is worst.
    private static Clearance Outside(FeatureVolume volume, List<Point3> outside, IReadOnlyList<SurfacePatch> surfaces)
    {
        Clearance farthest = new(double.NegativeInfinity, default);
        int stride = outside.Count / 4 + 1;
        for (int i = outside.Count - 1; i >= 0; i -= stride)
        {
            Point3 p = outside[i];
            Clearance distance = Least(q => (q - p).Length, surfaces);
            if (distance.Wall > farthest.Wall)
                farthest = distance;
        }

        return farthest with { Wall = -(farthest.Wall + volume.ReachFromAxis) };
    }

    private static Clearance Least(Func<Point3, double> distance, IEnumerable<SurfacePatch> surfaces)
    {
        Clearance least = new(double.PositiveInfinity, default);
        foreach (SurfacePatch patch in surfaces)
        {
            (double value, Point3 place) = patch.Least(distance, least.Wall);
            if (value < least.Wall)
                least = new(value, place);
        }

        return least;
    }
}
