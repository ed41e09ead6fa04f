using Finwright.Assessment.Verdicts;
using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>Marks of how a fin stands; the shape alone tells which.</summary>
internal static class VerdictMark
{
    /// <summary>Ink of a state.</summary>
    public static Ink InkOf(VerdictState state) => state switch
    {
        VerdictState.Fails => PageLook.Fails,
        VerdictState.Tight => PageLook.Tight,
        VerdictState.NotKnown => Palette.Quiet,
        _ => Palette.Holds,
    };

    /// <summary>Draws the mark: a disc holds, half a disc is tight, a cross fails, a ring with a question mark is not known.</summary>
    /// <param name="drawing">What it is drawn on.</param>
    /// <param name="state">The state.</param>
    /// <param name="middle">Its middle.</param>
    /// <param name="radius">Half its size.</param>
    public static void Draw(Drawing drawing, VerdictState state, Point2 middle, double radius)
    {
        Ink ink = InkOf(state);
        Pen pen = new(ink, radius / 5);
        switch (state)
        {
            case VerdictState.Fails:
                Pen cross = pen with { Width = radius / 2.5 };
                double arm = 0.8 * radius;
                drawing.Line(cross, middle + new Point2(-arm, -arm), middle + new Point2(arm, arm));
                drawing.Line(cross, middle + new Point2(-arm, arm), middle + new Point2(arm, -arm));
                break;
            case VerdictState.Tight:
                drawing.HalfDisc(ink, middle, radius);
                drawing.Ring(pen, middle, radius - pen.Width / 2);
                break;
            case VerdictState.NotKnown:
                drawing.Ring(pen, middle, radius - pen.Width / 2);
                TextLook mark = new(1.45 * radius, ink, TextAnchor.Middle, Bold: true);
                drawing.Write("?", middle.X, middle.Y - PageLook.LineOf(mark) / 2, mark);
                break;
            default:
                drawing.Disc(ink, middle, radius);
                break;
        }
    }
}
