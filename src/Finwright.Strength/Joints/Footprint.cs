using Finwright.Numerics;

namespace Finwright.Strength.Joints;

/// <summary>A point of the face where two parts meet.</summary>
/// <param name="X">Aft, m.</param>
/// <param name="Z">To starboard, m.</param>
public readonly record struct FootprintPoint(double X, double Z);

/// <summary>The face on which two parts meet, level with the hull: one outline, convex or not, with holes or without.</summary>
public sealed class Footprint
{
    /// <summary>Makes the face.</summary>
    /// <param name="outline">Corners in order, either way round, at least 3, m; must not cross itself.</param>
    /// <param name="holes">Corners of each hole, inside the outline and apart from one another.</param>
    /// <exception cref="ArgumentException">A ring has fewer than 3 corners or no area, or the holes leave nothing.</exception>
    public Footprint(IReadOnlyList<FootprintPoint> outline, params IReadOnlyList<IReadOnlyList<FootprintPoint>> holes)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(holes);
        Rings = [Ring(outline, 1), .. holes.Select(hole => Ring(hole, -1))];
        AreaMoments moments = default;
        foreach (FootprintPoint[] ring in Rings)
            moments = moments.Plus(ring);
        if (!(moments.Area > 0))
            throw new ArgumentException("The holes leave nothing of the face.", nameof(holes));
        Area = moments.Area;
        Centroid = new(moments.FirstX / Area, moments.FirstZ / Area);
        foreach (FootprintPoint[] ring in Rings)
        {
            for (int i = 0; i < ring.Length; i++)
                ring[i] = new(ring[i].X - Centroid.X, ring[i].Z - Centroid.Z);
        }

        foreach (FootprintPoint corner in Rings[0])
            Reach = Math.Max(Reach, Math.Max(Math.Abs(corner.X), Math.Abs(corner.Z)));
    }

    /// <summary>Area, m².</summary>
    public double Area { get; }

    /// <summary>Centre of the area, m.</summary>
    public FootprintPoint Centroid { get; }

    /// <summary>Greatest distance of a corner from the centroid along x or z, m.</summary>
    internal double Reach { get; }

    /// <summary>Corners from the centroid; the outline runs one way, holes the other.</summary>
    internal FootprintPoint[][] Rings { get; }

    /// <summary>A rectangle around the origin.</summary>
    /// <param name="length">Along x, m.</param>
    /// <param name="width">Along z, m.</param>
    public static Footprint Rectangle(double length, double width)
    {
        Require.Positive(length);
        Require.Positive(width);
        return new([new(-length / 2, -width / 2), new(length / 2, -width / 2), new(length / 2, width / 2), new(-length / 2, width / 2)]);
    }

    private static FootprintPoint[] Ring(IReadOnlyList<FootprintPoint> corners, int sense)
    {
        if (corners.Count < 3)
            throw new ArgumentException($"A ring of {corners.Count} corners encloses nothing; give at least 3.", nameof(corners));
        foreach (FootprintPoint corner in corners)
        {
            Require.Finite(corner.X);
            Require.Finite(corner.Z);
        }

        FootprintPoint[] ring = [.. corners];
        double area = default(AreaMoments).Plus(ring).Area;
        if (area is 0)
            throw new ArgumentException("The ring encloses no area.", nameof(corners));
        if (area * sense < 0)
            Array.Reverse(ring);
        return ring;
    }
}
