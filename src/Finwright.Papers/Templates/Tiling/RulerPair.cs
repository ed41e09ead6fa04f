using System.Globalization;
using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>The two rulers of 100 mm by which a print is checked.</summary>
internal static class RulerPair
{
    /// <summary>Layer of the base lines, which are exactly 100 mm long.</summary>
    public const string Layer = "ruler-100-mm";

    /// <summary>Room that the ruler across takes below its base line, and that the one down takes to its left, metres.</summary>
    public const double Depth = 9e-3;

    private const int Millimetres = 100;
    private const double Size = 2.2e-3;
    private static readonly Pen Base = new(Palette.Line, 0.2e-3);
    private static readonly Pen Tick = new(Palette.Line, 0.13e-3);

    /// <summary>A ruler across the page, ticks and numbers below its base line.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="from">Its left end.</param>
    /// <param name="scale">The printer's scale.</param>
    public static void Across(Drawing drawing, Point2 from, PrinterScale scale)
    {
        Draw(drawing, i => from + new Point2(scale.Across * 1e-3 * i, 0), new(0, 1));
        for (int i = 0; i <= Millimetres; i += 10)
            Say(drawing, Number(i), from + new Point2(scale.Across * 1e-3 * i, Length(i) + 0.9e-3 + 0.73 * Size), TextAnchor.Middle);
    }

    /// <summary>A ruler down the page, ticks and numbers left of its base line.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="from">Its upper end.</param>
    /// <param name="scale">The printer's scale.</param>
    public static void Down(Drawing drawing, Point2 from, PrinterScale scale)
    {
        Draw(drawing, i => from + new Point2(0, scale.Down * 1e-3 * i), new(-1, 0));
        for (int i = 0; i <= Millimetres; i += 10)
            Say(drawing, Number(i), from + new Point2(-Length(i) - 0.9e-3, scale.Down * 1e-3 * i + 0.36 * Size), TextAnchor.End);
    }

    private static void Draw(Drawing drawing, Func<int, Point2> at, Point2 way)
    {
        drawing.Add(new DrawnStroke(Layer, Base, [at(0), at(Millimetres)], Closed: false));
        for (int i = 0; i <= Millimetres; i++)
            drawing.Add(new DrawnStroke("ruler-ticks", Tick, [at(i), at(i) + Length(i) * way], Closed: false));
    }

    private static double Length(int millimetre) => millimetre % 10 == 0 ? 3e-3 : millimetre % 5 == 0 ? 2.2e-3 : 1.4e-3;

    private static string Number(int millimetre) => millimetre.ToString(CultureInfo.InvariantCulture) + (millimetre == Millimetres ? " mm" : "");

    private static void Say(Drawing drawing, string text, Point2 at, TextAnchor anchor) =>
        drawing.Add(new DrawnText("ruler-numbers", text, at, new(Size, Palette.Line, anchor)));
}
