using System.Collections.Frozen;
using System.Globalization;

namespace Finwright.Geometry.Parts;

/// <summary>One letter as the path of a pen.</summary>
/// <param name="Width">Width of the letter, font units, without the pen.</param>
/// <param name="Strokes">Pen paths, font units: x to the right from the letter's left edge, y up from the baseline. A path of one point is a dot.</param>
public sealed record StrokeGlyph(double Width, IReadOnlyList<IReadOnlyList<Point2>> Strokes);

/// <summary>
/// The letters engraved on parts: capitals, digits, dash, plus, dot and space, each drawn by a few straight pen strokes.
/// </summary>
/// <remarks>
/// Our own drawing on a grid of four by six units. One pen width throughout and corners cut at 45 degrees, so that each
/// stroke can be printed as one line. Zero is slashed to tell it from O.
/// </remarks>
public static class StrokeFont
{
    /// <summary>Height of every capital and digit, font units, without the pen.</summary>
    public const double CapHeight = 6;

    /// <summary>Gap between two letters, font units, measured between pen edges.</summary>
    public const double LetterGap = 1.2;

    private const double SpaceWidth = 2;

    private static readonly FrozenDictionary<char, StrokeGlyph> Glyphs = new Dictionary<char, string>
    {
        ['A'] = "0,0 2,6 4,0|0.6667,2 3.3333,2",
        ['B'] = "0,0 0,6 3,6 4,5 4,4 3,3 0,3|3,3 4,2 4,1 3,0 0,0",
        ['C'] = "4,5 3,6 1,6 0,5 0,1 1,0 3,0 4,1",
        ['D'] = "0,0 0,6 2.5,6 4,4.5 4,1.5 2.5,0 0,0",
        ['E'] = "4,6 0,6 0,0 4,0|0,3 3,3",
        ['F'] = "4,6 0,6 0,0|0,3 3,3",
        ['G'] = "4,5 3,6 1,6 0,5 0,1 1,0 3,0 4,1 4,3 2.5,3",
        ['H'] = "0,0 0,6|4,0 4,6|0,3 4,3",
        ['I'] = "0,0 2,0|1,0 1,6|0,6 2,6",
        ['J'] = "4,6 4,1 3,0 1,0 0,1",
        ['K'] = "0,0 0,6|4,6 0,2.5|1.6,3.9 4,0",
        ['L'] = "0,6 0,0 4,0",
        ['M'] = "0,0 0,6 2,3 4,6 4,0",
        ['N'] = "0,0 0,6 4,0 4,6",
        ['O'] = "1,0 0,1 0,5 1,6 3,6 4,5 4,1 3,0 1,0",
        ['P'] = "0,0 0,6 3,6 4,5 4,4 3,3 0,3",
        ['Q'] = "1,0 0,1 0,5 1,6 3,6 4,5 4,1 3,0 1,0|2.5,1.5 4,0",
        ['R'] = "0,0 0,6 3,6 4,5 4,4 3,3 0,3|2,3 4,0",
        ['S'] = "4,5 3,6 1,6 0,5 0,4 1,3 3,3 4,2 4,1 3,0 1,0 0,1",
        ['T'] = "0,6 4,6|2,6 2,0",
        ['U'] = "0,6 0,1 1,0 3,0 4,1 4,6",
        ['V'] = "0,6 2,0 4,6",
        ['W'] = "0,6 1,0 2,3.5 3,0 4,6",
        ['X'] = "0,0 4,6|0,6 4,0",
        ['Y'] = "0,6 2,3 4,6|2,3 2,0",
        ['Z'] = "0,6 4,6 0,0 4,0",
        ['0'] = "1,0 0,1 0,5 1,6 3,6 4,5 4,1 3,0 1,0|0.5,0.5 3.5,5.5",
        ['1'] = "0,5 1,6 1,0|0,0 2,0",
        ['2'] = "0,5 1,6 3,6 4,5 4,4 0,0 4,0",
        ['3'] = "0,5 1,6 3,6 4,5 4,4 3,3 1.5,3|3,3 4,2 4,1 3,0 1,0 0,1",
        ['4'] = "3,0 3,6 0,2 4,2",
        ['5'] = "4,6 0,6 0,3.5 3,3.5 4,2.5 4,1 3,0 1,0 0,1",
        ['6'] = "4,5 3,6 1,6 0,5 0,1 1,0 3,0 4,1 4,2 3,3 0,3",
        ['7'] = "0,6 4,6 1.5,0",
        ['8'] = "1,3 0,4 0,5 1,6 3,6 4,5 4,4 3,3 1,3 0,2 0,1 1,0 3,0 4,1 4,2 3,3",
        ['9'] = "0,1 1,0 3,0 4,1 4,5 3,6 1,6 0,5 0,4 1,3 4,3",
        ['-'] = "0,3 3,3",
        ['+'] = "1.5,1.5 1.5,4.5|0,3 3,3",
        ['.'] = "0,0",
        [' '] = "",
    }.ToFrozenDictionary(pair => pair.Key, pair => Parse(pair.Value));

    /// <summary>Every character that can be engraved, in ordinal order.</summary>
    public static IReadOnlyList<char> Characters { get; } = [.. Glyphs.Keys.Order()];

    /// <summary>The letter for a character.</summary>
    /// <param name="character">Capital, digit, dash, plus, dot or space.</param>
    /// <param name="glyph">The letter; null when there is none.</param>
    /// <returns>False when the font has no such letter.</returns>
    public static bool TryGet(char character, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out StrokeGlyph? glyph) =>
        Glyphs.TryGetValue(character, out glyph);

    private static StrokeGlyph Parse(string drawing)
    {
        Point2[][] strokes = [.. drawing.Split('|', StringSplitOptions.RemoveEmptyEntries).Select(path => path.Split(' ').Select(ParsePoint).ToArray())];
        return new(strokes.Length == 0 ? SpaceWidth : strokes.Max(path => path.Max(p => p.X)), strokes);
    }

    private static Point2 ParsePoint(string text)
    {
        int comma = text.IndexOf(',', StringComparison.Ordinal);
        return new(double.Parse(text.AsSpan(0, comma), CultureInfo.InvariantCulture), double.Parse(text.AsSpan(comma + 1), CultureInfo.InvariantCulture));
    }
}
