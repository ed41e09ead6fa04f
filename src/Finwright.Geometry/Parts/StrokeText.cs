using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace Finwright.Geometry.Parts;

/// <summary>A line of stroke letters as outlines of given pen width and height.</summary>
public static class StrokeText
{
    /// <summary>Height below which the letters close up, in pen widths: then the bars of an E stand less than two pen widths apart.</summary>
    public const double LeastHeightInPens = 7;

    private static readonly BufferParameters RoundPen = new(4, EndCapStyle.Round, JoinStyle.Round, 5) { SimplifyFactor = 0 };

    /// <summary>Width of a line of text over the pen's outer edges, metres.</summary>
    /// <param name="text">Characters of <see cref="StrokeFont"/>, at least one.</param>
    /// <param name="height">Height over the pen's outer edges, metres, more than the pen.</param>
    /// <param name="pen">Pen width, metres.</param>
    public static double Width(string text, double height, double pen)
    {
        double unit = Unit(text, height, pen);
        return text.Sum(c => Glyph(c).Width * unit + pen) + (text.Length - 1) * StrokeFont.LetterGap * unit;
    }

    /// <summary>The outlines of a line of text, its box centred on the origin, x in the direction of reading, y up.</summary>
    /// <param name="text">Characters of <see cref="StrokeFont"/>, at least one.</param>
    /// <param name="height">Height over the pen's outer edges, metres, more than the pen.</param>
    /// <param name="pen">Pen width, metres.</param>
    /// <returns>Outer rings counter-clockwise, holes clockwise, metres; none for a line of spaces.</returns>
    /// <exception cref="ArgumentException">A character has no letter, or the height leaves no room for the pen.</exception>
    public static IReadOnlyList<IReadOnlyList<Point2>> Outline(string text, double height, double pen)
    {
        double unit = Unit(text, height, pen);
        double x = (pen - Width(text, height, pen)) / 2, y = (pen - height) / 2;
        List<NetTopologySuite.Geometries.Geometry> strokes = [];
        foreach (StrokeGlyph glyph in text.Select(Glyph))
        {
            foreach (IReadOnlyList<Point2> path in glyph.Strokes)
            {
                Coordinate[] points = [.. path.Select(p => new Coordinate(x + unit * p.X, y + unit * p.Y))];
                strokes.Add(points.Length == 1 ? PlaneAreas.Factory.CreatePoint(points[0]) : PlaneAreas.Factory.CreateLineString(points));
            }

            x += (glyph.Width + StrokeFont.LetterGap) * unit + pen;
        }

        return PlaneAreas.ToRings(PlaneAreas.Factory.CreateGeometryCollection([.. strokes]).Buffer(pen / 2, RoundPen));
    }

    private static double Unit(string text, double height, double pen)
    {
        ArgumentException.ThrowIfNullOrEmpty(text);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pen);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(height, pen);
        return (height - pen) / StrokeFont.CapHeight;
    }

    private static StrokeGlyph Glyph(char character) => StrokeFont.TryGet(character, out StrokeGlyph? glyph)
        ? glyph
        : throw new ArgumentException($"There is no letter for '{character}'.", nameof(character));
}
