using Finwright.Geometry;

namespace Finwright.Papers.Drawings;

/// <summary>Even lines at an angle inside rings.</summary>
public static class Hatching
{
    /// <summary>The lines. They lie on one grid for the whole paper, so that areas that touch are hatched through.</summary>
    /// <param name="rings">Closed rings, last point not repeated; where rings overlap, what lies inside an even number of them stays free. Metres.</param>
    /// <param name="upwardTurn">Direction of the lines, turned counter-clockwise from across, radians.</param>
    /// <param name="spacing">From line to line, metres, positive.</param>
    /// <returns>Both ends of each line.</returns>
    public static IReadOnlyList<(Point2 From, Point2 To)> Lines(IReadOnlyList<IReadOnlyList<Point2>> rings, double upwardTurn, double spacing)
    {
        ArgumentNullException.ThrowIfNull(rings);
        if (!(spacing > 0 && double.IsFinite(spacing)))
            throw new ArgumentOutOfRangeException(nameof(spacing), spacing, "Lines need a distance from one another.");
        (double sin, double cos) = Math.SinCos(upwardTurn);
        Point2 along = new(cos, -sin), across = new(sin, cos);
        double[] levels = [.. rings.SelectMany(ring => ring).Select(p => p.Dot(across))];
        if (levels.Length == 0)
            return [];
        List<(Point2, Point2)> lines = [];
        List<double> crossings = [];
        for (double number = Math.Ceiling(levels.Min() / spacing - 0.5); (number + 0.5) * spacing < levels.Max(); number++)
        {
            double level = (number + 0.5) * spacing;
            crossings.Clear();
            foreach (IReadOnlyList<Point2> ring in rings)
            {
                for (int i = 0; i < ring.Count; i++)
                {
                    (Point2 a, Point2 b) = (ring[i], ring[i + 1 < ring.Count ? i + 1 : 0]);
                    double from = a.Dot(across), to = b.Dot(across);
                    // A line through a corner meets one of its two edges only.
                    if (from <= level != to <= level)
                        crossings.Add((a + (level - from) / (to - from) * (b - a)).Dot(along));
                }
            }

            crossings.Sort();
            for (int i = 0; i + 1 < crossings.Count; i += 2)
                if (crossings[i + 1] > crossings[i])
                    lines.Add((crossings[i] * along + level * across, crossings[i + 1] * along + level * across));
        }

        return lines;
    }

    /// <summary>Draws the lines.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="layer">Layer.</param>
    /// <param name="pen">Pen.</param>
    /// <param name="rings">Rings, as in <see cref="Lines"/>.</param>
    /// <param name="upwardTurn">Direction, radians.</param>
    /// <param name="spacing">From line to line, metres.</param>
    public static void Draw(Drawing drawing, string layer, Pen pen, IReadOnlyList<IReadOnlyList<Point2>> rings, double upwardTurn, double spacing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        foreach ((Point2 from, Point2 to) in Lines(rings, upwardTurn, spacing))
            drawing.Add(new DrawnStroke(layer, pen, [from, to], Closed: false));
    }
}
