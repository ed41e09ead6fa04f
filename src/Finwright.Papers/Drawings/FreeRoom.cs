using Finwright.Geometry;

namespace Finwright.Papers.Drawings;

/// <summary>Finds room for words where they cross no line and no other words.</summary>
public static class FreeRoom
{
    // Directions that are tried round a place, beginning to the right and going round both ways.
    private const int Ways = 16;

    /// <summary>Whether words would stand clear of everything drawn so far. Inside a closed line is clear as long as they do not touch it.</summary>
    /// <param name="drawing">What is drawn so far.</param>
    /// <param name="text">The words.</param>
    /// <param name="rim">Free room asked for round them, metres.</param>
    public static bool IsClear(Drawing drawing, DrawnText text, double rim)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(text);
        (double sin, double cos) = Math.SinCos(text.Look.UpwardTurn);
        Point2 along = new(cos, -sin), down = new(sin, cos);
        DrawnBox box = DrawnBox.Round(Extent.Corners(text).Select(Turned));
        DrawnBox wide = new(box.From - new Point2(rim, rim), box.To + new Point2(rim, rim));
        return !drawing.Items.Any(item => item switch
        {
            DrawnStroke stroke => Touches(stroke.Points, stroke.Closed),
            DrawnArea area => area.Rings.Any(ring => Touches(ring, closed: true)),
            _ => !ReferenceEquals(item, text) && Touches([.. Extent.Of(item)], closed: true),
        });

        Point2 Turned(Point2 p) => new(p.Dot(along), p.Dot(down));

        bool Touches(IReadOnlyList<Point2> points, bool closed)
        {
            for (int i = closed ? 0 : 1; i < points.Count; i++)
                if (wide.Inside(Turned(points[i == 0 ? points.Count - 1 : i - 1]), Turned(points[i])) is not null)
                    return true;
            return false;
        }
    }

    /// <summary>Puts words as near to a place as there is room for them.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="text">The words; their place is the one that they belong to.</param>
    /// <param name="nearest">Least distance between the place and the middle of the words, metres.</param>
    /// <param name="rim">Free room asked for round them, metres.</param>
    /// <returns>Where they stand; the nearest place to the right when there is no room within eight steps.</returns>
    public static DrawnText Put(Drawing drawing, DrawnText text, double nearest, double rim = 0.4e-3)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(text);
        DrawnText? first = null;
        double size = text.Look.Size, half = Extent.Length(text.Text, size, text.Look.Bold) / 2;
        for (int step = 0; step < 8; step++)
        {
            for (int way = 0; way < Ways; way++)
            {
                double turn = Math.PI * 2 * (way % 2 == 0 ? way / 2 : -(way + 1) / 2) / Ways, reach = nearest + step * size;
                (double sin, double cos) = Math.SinCos(turn);
                Point2 middle = text.At + new Point2(cos * (reach + half - size / 2), -sin * reach);
                DrawnText there = text with { At = middle + new Point2(0, 0.36 * size), Look = text.Look with { Anchor = TextAnchor.Middle } };
                first ??= there;
                if (!IsClear(drawing, there, rim))
                    continue;
                drawing.Add(there);
                return there;
            }
        }

        drawing.Add(first!);
        return first!;
    }
}
