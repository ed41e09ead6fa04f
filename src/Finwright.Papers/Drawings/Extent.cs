using Finwright.Geometry;

namespace Finwright.Papers.Drawings;

/// <summary>How much room items take. The length of words is an estimate, a little on the long side.</summary>
public static class Extent
{
    // Height above and depth below the base line, in sizes of type: what the tallest and the lowest letters take.
    private const double Ascent = 0.8, Descent = 0.22;

    /// <summary>Points of an item that its box must hold.</summary>
    public static IEnumerable<Point2> Of(DrawnItem item) => item switch
    {
        DrawnStroke stroke => stroke.Points,
        DrawnArea area => area.Rings.SelectMany(ring => ring),
        DrawnText text => Corners(text),
        _ => [],
    };

    /// <summary>Length of words in one line, metres.</summary>
    /// <param name="text">The words.</param>
    /// <param name="size">Size of their type, metres.</param>
    /// <param name="bold">Whether they are bold.</param>
    public static double Length(string text, double size, bool bold = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        return size * text.Sum(Advance) * (bold ? 1.06 : 1);
    }

    /// <summary>The four corners round words, as they are turned.</summary>
    public static IReadOnlyList<Point2> Corners(DrawnText text)
    {
        ArgumentNullException.ThrowIfNull(text);
        TextLook look = text.Look;
        double length = Length(text.Text, look.Size, look.Bold);
        double start = look.Anchor switch { TextAnchor.Middle => -length / 2, TextAnchor.End => -length, _ => 0 };
        (double sin, double cos) = Math.SinCos(look.UpwardTurn);
        Point2 Turned(double along, double down) => text.At + new Point2(cos * along + sin * down, -sin * along + cos * down);
        return [Turned(start, -Ascent * look.Size), Turned(start + length, -Ascent * look.Size), Turned(start + length, Descent * look.Size), Turned(start, Descent * look.Size)];
    }

    /// <summary>Breaks words into lines no longer than a room; a single word may be longer.</summary>
    /// <param name="text">The words.</param>
    /// <param name="size">Size of their type, metres.</param>
    /// <param name="width">The room, metres.</param>
    /// <param name="bold">Whether they are bold.</param>
    public static IReadOnlyList<string> Wrap(string text, double size, double width, bool bold = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<string> lines = [];
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines.Count > 0 && Length($"{lines[^1]} {word}", size, bold) <= width)
                lines[^1] += " " + word;
            else
                lines.Add(word);
        }

        return lines;
    }

    // In sizes of type: rounded up from what sans families of this kind have (judgement).
    private static double Advance(char letter) => letter switch
    {
        'i' or 'j' or 'l' or 'I' or '.' or ',' or ':' or ';' or '|' or '\'' or '!' or ' ' or '\u00a0' => 0.3,
        'f' or 't' or 'r' or '(' or ')' or '-' or '/' or '"' => 0.41,
        'm' or 'w' or 'M' or 'W' or '%' or '@' or '—' => 0.95,
        '°' => 0.45,
        >= 'A' and <= 'Z' or 'Ä' or 'Ö' or 'Ü' or 'Ø' => 0.75,
        _ => 0.64,
    };
}
