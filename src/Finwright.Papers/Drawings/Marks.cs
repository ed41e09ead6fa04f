using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Words;

namespace Finwright.Papers.Drawings;

/// <summary>Marks that places are found by.</summary>
public static class Marks
{
    /// <summary>Length of the check line, metres.</summary>
    public const double CheckLength = 0.1;

    private const double Tick = 2e-3, SmallTick = 1.2e-3, WordSize = 2.6e-3;
    private static readonly Pen Fine = new(Palette.Line, 0.13e-3);
    private static readonly Pen Check = new(Palette.Holds, 0.25e-3);

    /// <summary>A cross in a circle, by which two sheets are laid over one another.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="layer">Layer.</param>
    /// <param name="at">Middle.</param>
    /// <param name="reach">From the middle to the ends of the cross, metres.</param>
    public static void Registration(Drawing drawing, string layer, Point2 at, double reach = 4e-3)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        Cross(drawing, layer, at, reach);
        drawing.Add(new DrawnStroke(layer, Fine, Rounds.Circle(at, 0.55 * reach), Closed: true));
    }

    /// <summary>A thin cross at the middle of something to drill.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="layer">Layer.</param>
    /// <param name="at">Middle.</param>
    /// <param name="reach">From the middle to the ends of the cross, metres.</param>
    public static void Cross(Drawing drawing, string layer, Point2 at, double reach)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        drawing.Add(new DrawnStroke(layer, Fine, [at - new Point2(reach, 0), at + new Point2(reach, 0)], Closed: false));
        drawing.Add(new DrawnStroke(layer, Fine, [at - new Point2(0, reach), at + new Point2(0, reach)], Closed: false));
    }

    /// <summary>A line of exactly 100 mm to measure before the paper is used, with its words below.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="from">Its left end.</param>
    public static void CheckLine(Drawing drawing, Tongue tongue, Point2 from)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(tongue);
        const string Layer = "check-100-mm";
        drawing.Add(new DrawnStroke(Layer, Check, [from, from + new Point2(CheckLength, 0)], Closed: false));
        for (int i = 0; i <= 10; i++)
        {
            Point2 at = from + new Point2(CheckLength * i / 10, 0);
            double up = i % 10 == 0 ? Tick : SmallTick;
            drawing.Add(new DrawnStroke(Layer, Check, [at - new Point2(0, up), at + new Point2(0, i % 10 == 0 ? Tick : 0)], Closed: false));
        }

        drawing.Add(new DrawnText("notes", tongue.Words.Templates.CheckLine, from + new Point2(Tick, Tick + WordSize), new(WordSize, Palette.Quiet)));
    }
}
