using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pictures;

/// <summary>Words in one or two lines that are placed as one.</summary>
/// <param name="First">First line.</param>
/// <param name="Second">Second line, smaller and quiet; empty for none.</param>
/// <param name="Size">Size of the first line, metres.</param>
/// <param name="IsBold">Whether the first line is bold.</param>
internal sealed record Label(string First, string Second = "", double Size = PictureInk.Small, bool IsBold = false)
{
    /// <summary>Layer of words.</summary>
    public const string Layer = "words";

    // From base line to base line, and from the middle of a line of capitals to its base line, in sizes of type.
    private const double Line = 1.3, HalfCapital = 0.36;

    /// <summary>Length along the words, metres.</summary>
    public double Length => Math.Max(Extent.Length(First, Size, IsBold), Second.Length == 0 ? 0 : Extent.Length(Second, PictureInk.Small));

    /// <summary>Height across the words, metres.</summary>
    public double Height => Second.Length == 0 ? Size : Size + Line * PictureInk.Small;

    /// <summary>The words round a middle.</summary>
    /// <param name="middle">Their middle.</param>
    /// <param name="turn">How far they are turned counter-clockwise, radians.</param>
    public IReadOnlyList<DrawnText> Laid(Point2 middle, double turn = 0)
    {
        (double sin, double cos) = Math.SinCos(turn);
        Point2 down = new(sin, cos);
        double step = Second.Length == 0 ? 0 : Line * PictureInk.Small;
        Point2 base1 = middle + (HalfCapital * Size - step / 2) * down;
        DrawnText first = new(Layer, First, base1, new(Size, Palette.Line, TextAnchor.Middle, IsBold, turn));
        return Second.Length == 0 ? [first] : [first, new(Layer, Second, base1 + step * down, new(PictureInk.Small, Palette.Line, TextAnchor.Middle, UpwardTurn: turn))];
    }
}
