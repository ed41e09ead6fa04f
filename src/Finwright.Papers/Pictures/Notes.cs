using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pictures;

/// <summary>Words below a picture, line by line.</summary>
internal static class Notes
{
    /// <summary>From base line to base line, metres.</summary>
    public const double Line = 3.3e-3;

    private const double Above = 3.0e-3;

    /// <summary>Height that words take, metres.</summary>
    public static double Height(IReadOnlyList<string> words, double width) => Above + Line * Lines(words, width).Count;

    /// <summary>Writes them.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="words">The words; a dot is put between them.</param>
    /// <param name="top">Where their room begins, metres down.</param>
    /// <param name="width">Width of their room, metres.</param>
    public static void Write(Drawing drawing, IReadOnlyList<string> words, double top, double width)
    {
        foreach ((int index, string line) in Lines(words, width).Index())
            drawing.Add(new DrawnText(Label.Layer, line, new(0, top + Above + index * Line), new(PictureInk.Small, Palette.Quiet)));
    }

    private static IReadOnlyList<string> Lines(IReadOnlyList<string> words, double width) => Extent.Wrap(string.Join(" · ", words), PictureInk.Small, width);
}
