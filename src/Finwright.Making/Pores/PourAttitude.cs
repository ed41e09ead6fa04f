using System.Globalization;
using Finwright.Geometry;
using Finwright.Numerics;

namespace Finwright.Making.Pores;

/// <summary>How a part is held for the pour.</summary>
/// <param name="Up">Upward unit vector, layer axes.</param>
/// <param name="Name">In words of the fin: "tip up, leading edge tilted down 30°".</param>
/// <param name="Practicality">0: one side straight up; 1: one tilt by 30, 45 or 60°; 2: anything else. Smaller is easier to hold.</param>
public sealed record PourAttitude(Point3 Up, string Name, int Practicality)
{
    // Tilts below this are not told: nobody holds a part truer by hand.
    private const double LeastTilt = 3 * Math.PI / 180;

    /// <summary>Names an attitude.</summary>
    /// <param name="up">Upward direction, layer axes; need not be of unit length.</param>
    /// <param name="toLayers">From design axes (x aft, y down the span, z to starboard) to layer axes; its axes of unit length and square to each other.</param>
    public static PourAttitude Of(Point3 up, Placement toLayers)
    {
        Point3 unit = 1 / Require.Positive(up.Length) * up;
        Point3 design = toLayers.RigidInverse().Turn(unit);
        double[] parts = [design.X, design.Y, design.Z];
        int[] order = [0, 1, 2];
        // The largest part first; equal ones (but for rounding) in the order span, chord, side.
        Array.Sort(order, (a, b) => Math.Abs(Math.Abs(parts[a]) - Math.Abs(parts[b])) < 1e-9 ? Rank(a).CompareTo(Rank(b)) : Math.Abs(parts[b]).CompareTo(Math.Abs(parts[a])));
        string name = Side(order[0], parts[order[0]] > 0) + " up";
        int tilts = 0;
        double only = 0;
        for (int i = 1; i < 3; i++)
        {
            // A part of up towards one side raises that side and lowers the other.
            double tilt = Math.Atan2(Math.Abs(parts[order[i]]), Math.Abs(parts[order[0]]));
            if (tilt < LeastTilt)
                continue;
            name += (tilts is 0 ? ", " : " and ") + Side(order[i], parts[order[i]] < 0) + string.Create(CultureInfo.InvariantCulture, $" tilted down {tilt * 180 / Math.PI:F0}°");
            only = tilt;
            tilts++;
        }

        return new(unit, name, tilts is 0 ? 0 : tilts is 1 && IsEasy(only) ? 1 : 2);
    }

    /// <summary>The attitudes that a search tries: 42 that are easy to hold, then those of 162 spread evenly over the sphere (the corners of an icosahedron parted twice) that are not among them.</summary>
    /// <param name="toLayers">From design axes to layer axes.</param>
    public static IReadOnlyList<PourAttitude> Spread(Placement toLayers)
    {
        List<PourAttitude> all = [];
        Point3[] axes = [new(0, 1, 0), new(0, -1, 0), new(1, 0, 0), new(-1, 0, 0), new(0, 0, 1), new(0, 0, -1)];
        foreach (Point3 axis in axes)
            all.Add(Of(toLayers.Turn(axis), toLayers));
        for (int a = 0; a < 6; a++)
            for (int b = a + 1; b < 6; b++)
                if (a / 2 != b / 2)
                    foreach (double degrees in new double[] { 30, 45, 60 })
                    {
                        (double sin, double cos) = Math.SinCos(degrees * Math.PI / 180);
                        all.Add(Of(toLayers.Turn(cos * axes[a] + sin * axes[b]), toLayers));
                    }

        // Six of the corners lie on the axes.
        foreach (Point3 corner in IcosahedronPartedTwice())
            if (Math.Max(Math.Abs(corner.X), Math.Max(Math.Abs(corner.Y), Math.Abs(corner.Z))) < 1 - 1e-9)
                all.Add(Of(toLayers.Turn(corner), toLayers));
        return all;
    }

    private static bool IsEasy(double tilt)
    {
        double degrees = tilt * 180 / Math.PI;
        return Math.Abs(degrees - 30) < 0.5 || Math.Abs(degrees - 45) < 0.5;
    }

    private static int Rank(int axis) => axis switch { 1 => 0, 0 => 1, _ => 2 };

    private static string Side(int axis, bool positive) => axis switch
    {
        0 => positive ? "trailing edge" : "leading edge",
        1 => positive ? "tip" : "root",
        _ => positive ? "starboard side" : "port side",
    };

    private static List<Point3> IcosahedronPartedTwice()
    {
        double golden = (1 + Math.Sqrt(5)) / 2;
        List<Point3> points = [];
        foreach (int s in new[] { 1, -1 })
            foreach (int t in new[] { 1, -1 })
            {
                points.Add(new(0, s, t * golden));
                points.Add(new(s, t * golden, 0));
                points.Add(new(t * golden, 0, s));
            }

        for (int i = 0; i < points.Count; i++)
            points[i] = 1 / points[i].Length * points[i];
        // Halving the edges twice: a point between every pair of neighbours, which are the pairs closer than 1.3 times the least distance.
        for (int pass = 0; pass < 2; pass++)
        {
            double least = double.PositiveInfinity;
            int count = points.Count;
            for (int i = 1; i < count; i++)
                least = Math.Min(least, (points[i] - points[0]).Length);
            for (int i = 0; i < count; i++)
                for (int j = i + 1; j < count; j++)
                    if ((points[i] - points[j]).Length < 1.3 * least)
                    {
                        Point3 middle = points[i] + points[j];
                        points.Add(1 / middle.Length * middle);
                    }
        }

        return points;
    }
}
