using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Words;

namespace Finwright.Papers.Drawings;

/// <summary>Draws dimensions: thin lines with arrows, extension lines from what is measured, numbers beside them that read from below or from the right.</summary>
/// <param name="drawing">Where.</param>
/// <param name="tongue">How lengths and angles are told.</param>
public sealed class Dimensions(Drawing drawing, Tongue tongue)
{
    /// <summary>Layer of lines and arrows.</summary>
    public const string LineLayer = "dimensions";

    /// <summary>Layer of numbers and words.</summary>
    public const string WordLayer = "notes";

    /// <summary>Size of numbers, metres.</summary>
    public const double WordSize = 2.6e-3;

    private const double ArrowLength = 2.2e-3, ArrowHalf = 0.38e-3, Outside = 4.5e-3, Gap = 0.8e-3, Past = 1.2e-3, Shelf = 2.5e-3;

    // From the base line to half the height of figures, in sizes of type.
    private const double HalfFigure = 0.36;

    private static readonly Pen Thin = new(Palette.Quiet, 0.13e-3);

    /// <summary>How far two points are apart across the paper.</summary>
    /// <param name="a">One point.</param>
    /// <param name="b">The other.</param>
    /// <param name="y">Where the line of the dimension lies.</param>
    /// <param name="text">What it says; null for the length.</param>
    public void Across(Point2 a, Point2 b, double y, string? text = null) =>
        Between(a, b, new(a.X, y), new(b.X, y), text ?? tongue.BareLength(Math.Abs(b.X - a.X)));

    /// <summary>How far two points are apart down the paper.</summary>
    /// <param name="a">One point.</param>
    /// <param name="b">The other.</param>
    /// <param name="x">Where the line of the dimension lies.</param>
    /// <param name="text">What it says; null for the length.</param>
    public void Down(Point2 a, Point2 b, double x, string? text = null) =>
        Between(a, b, new(x, a.Y), new(x, b.Y), text ?? tongue.BareLength(Math.Abs(b.Y - a.Y)));

    /// <summary>How far two points are apart.</summary>
    /// <param name="a">One point.</param>
    /// <param name="b">The other.</param>
    /// <param name="aside">How far to the left of the way from one to the other the line of the dimension lies, metres; negative for the right.</param>
    /// <param name="text">What it says; null for the length.</param>
    public void Along(Point2 a, Point2 b, double aside, string? text = null)
    {
        Point2 way = Unit(b - a), left = new(way.Y, -way.X);
        Between(a, b, a + aside * left, b + aside * left, text ?? tongue.BareLength((b - a).Length));
    }

    /// <summary>Words beside a place, with a line and an arrow to it.</summary>
    /// <param name="at">The place.</param>
    /// <param name="elbow">Where the line turns level.</param>
    /// <param name="text">The words; they stand on the side away from the place.</param>
    public void Leader(Point2 at, Point2 elbow, string text)
    {
        double side = elbow.X >= at.X ? 1 : -1;
        Point2 end = elbow + new Point2(side * Shelf, 0);
        drawing.Add(new DrawnStroke(LineLayer, Thin, [at, elbow, end], Closed: false));
        Arrow(at, Unit(at - elbow));
        Say(text, end + new Point2(side * Gap, HalfFigure * WordSize), side > 0 ? TextAnchor.Start : TextAnchor.End);
    }

    /// <summary>Radius of an arc, told outside it.</summary>
    /// <param name="centre">Centre of the arc.</param>
    /// <param name="radius">Its radius, metres.</param>
    /// <param name="turn">Where on the arc: from straight right, counter-clockwise, radians.</param>
    /// <param name="reach">How far from the arc the words stand, metres; negative for inside it.</param>
    public void Radius(Point2 centre, double radius, double turn, double reach) =>
        Leader(Rounds.At(centre, radius, turn), Rounds.At(centre, radius + reach, turn), "R " + tongue.BareLength(radius));

    /// <summary>The angle between two directions from a place.</summary>
    /// <param name="apex">The place.</param>
    /// <param name="from">One direction: from straight right, counter-clockwise, radians.</param>
    /// <param name="to">The other, likewise; the arc runs from one to the other. An arc too short for its arrows gets them from outside, and its number behind the second direction.</param>
    /// <param name="radius">Radius of the arc, metres.</param>
    /// <param name="legs">Whether thin lines show both directions.</param>
    public void Angle(Point2 apex, double from, double to, double radius, bool legs = true)
    {
        if (legs)
            foreach (double turn in (ReadOnlySpan<double>)[from, to])
                drawing.Add(new DrawnStroke(LineLayer, Thin, [apex, Rounds.At(apex, radius + Past, turn)], Closed: false));
        double sense = Math.Sign(to - from), arc = radius * Math.Abs(to - from), outside = arc < 2.5 * ArrowLength ? 1 : -1, more = outside > 0 ? sense * Outside / radius : 0;
        drawing.Add(new DrawnStroke(LineLayer, Thin, Rounds.Arc(apex, radius, from - more, to + more), Closed: false));
        // An arrow seems to follow its arc when it lies along the chord of its own length.
        double half = sense * ArrowLength / radius / 2;
        Arrow(Rounds.At(apex, radius, from), outside * Tangent(from - outside * half, sense));
        Arrow(Rounds.At(apex, radius, to), -outside * Tangent(to + outside * half, sense));
        string text = tongue.Angle(Math.Abs(to - from));
        if (outside > 0)
        {
            // No room between the legs: the number stands where the arc runs out behind the second one.
            Point2 way = Tangent(to + more, sense), sink = new(0, HalfFigure * WordSize);
            Say(text, Rounds.At(apex, radius, to + more) + Gap * way + sink, way.X >= 0 ? TextAnchor.Start : TextAnchor.End);
            return;
        }

        double middle = (from + to) / 2, reach = radius + Gap + (Math.Abs(Math.Cos(middle)) * Extent.Length(text, WordSize) + Math.Abs(Math.Sin(middle)) * WordSize) / 2;
        Say(text, Rounds.At(apex, reach, middle) + new Point2(0, HalfFigure * WordSize), TextAnchor.Middle);
    }

    /// <summary>An arrow's head.</summary>
    /// <param name="tip">Its tip.</param>
    /// <param name="way">Unit vector to where it points.</param>
    public void Arrow(Point2 tip, Point2 way)
    {
        Point2 rear = tip - ArrowLength * way, aside = ArrowHalf * new Point2(-way.Y, way.X);
        drawing.Add(new DrawnArea(LineLayer, Palette.Quiet, [[tip, rear + aside, rear - aside]]));
    }

    private void Between(Point2 a, Point2 b, Point2 start, Point2 end, string text)
    {
        Extend(a, start);
        Extend(b, end);
        Point2 way = Unit(end - start);
        double length = (end - start).Length, words = Extent.Length(text, WordSize);
        bool isShort = length < 2.5 * ArrowLength, isNarrow = length < words + 1e-3;
        Point2 before = isShort ? start - Outside * way : start, after = isShort ? end + Outside * way : end;
        drawing.Add(new DrawnStroke(LineLayer, Thin, [before, after], Closed: false));
        Arrow(start, (isShort ? 1 : -1) * way);
        Arrow(end, (isShort ? -1 : 1) * way);

        // Numbers read from below, or from the right where the line runs up.
        Point2 reading = way.X < -1e-9 || Math.Abs(way.X) <= 1e-9 && way.Y > 0 ? -1 * way : way, above = new(reading.Y, -reading.X);
        double turn = Math.Atan2(-reading.Y, reading.X);
        if (isNarrow)
        {
            Point2 last = (after - before).Dot(reading) > 0 ? after : before;
            if (!isShort)
                drawing.Add(new DrawnStroke(LineLayer, Thin, [last, last + Outside * reading], Closed: false));
            Say(text, last + ((isShort ? 0 : Outside) + Gap) * reading - HalfFigure * WordSize * above, TextAnchor.Start, turn);
        }
        else
        {
            Say(text, 0.5 * (start + end) + Gap * above, TextAnchor.Middle, turn);
        }
    }

    private void Extend(Point2 measured, Point2 line)
    {
        double length = (line - measured).Length;
        if (length > Gap)
            drawing.Add(new DrawnStroke(LineLayer, Thin, [measured + Gap / length * (line - measured), measured + (length + Past) / length * (line - measured)], Closed: false));
    }

    private void Say(string text, Point2 at, TextAnchor anchor, double turn = 0) =>
        drawing.Add(new DrawnText(WordLayer, text, at, new(WordSize, Palette.Line, anchor, UpwardTurn: turn)));

    // Counter-clockwise for a positive sense.
    private static Point2 Tangent(double turn, double sense) => sense * new Point2(-Math.Sin(turn), -Math.Cos(turn));

    private static Point2 Unit(Point2 way) => 1 / way.Length * way;
}
