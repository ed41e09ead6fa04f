using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pictures;

/// <summary>The tube from the feed up beside the part, and the funnel on it. Shortened: a break in it says so.</summary>
internal static class FeedTube
{
    // Beside the part, and the dimension beside that; funnel and resin's surface from the top of the paper; all in metres.
    private const double Aside = 5e-3, HeadAside = 10e-3, Rim = 1.5e-3, Surface = 3e-3, Neck = 7e-3, HalfRim = 3.6e-3, HalfNeck = 0.7e-3, Out = 2.6e-3, BreakAbove = 4.5e-3;
    private static readonly Drawings.Pen Wall = new(Palette.Line, 1.5e-3);
    private static readonly Drawings.Pen Inside = new(PictureInk.Bare, 1.1e-3);
    private static readonly Drawings.Pen Broken = new(PictureInk.Bare, 1.0e-3);

    /// <summary>Draws it.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="dimensions">For the height of the resin.</param>
    /// <param name="held">The box round the part on paper.</param>
    /// <param name="feed">The feed's mouth on paper.</param>
    /// <param name="way">Where the feed points on paper.</param>
    /// <param name="isRight">Whether the tube runs up on the right.</param>
    /// <param name="head">Height of the resin above the part in words.</param>
    public static void Draw(Drawing drawing, Dimensions dimensions, DrawnBox held, Point2 feed, Point2 way, bool isRight, string head)
    {
        double side = isRight ? 1 : -1, edge = isRight ? held.To.X : held.From.X, x = edge + side * Aside, headX = edge + side * HeadAside;
        Point2 first = way.Length > 0.3 ? feed + Out / way.Length * way : feed;
        IReadOnlyList<Point2> run = [feed, first, new(x, first.Y), new(x, Neck)];
        drawing.Add(new DrawnStroke("tube", Wall, run, Closed: false));
        drawing.Add(new DrawnStroke("tube", Inside, run, Closed: false));
        double Half(double y) => HalfNeck + (HalfRim - HalfNeck) * (Neck - y) / (Neck - Rim);
        drawing.Add(new DrawnArea("funnel", PictureInk.Wall, [[new(x - Half(Surface), Surface), new(x + Half(Surface), Surface), new(x + HalfNeck, Neck), new(x - HalfNeck, Neck)]]));
        drawing.Add(new DrawnStroke("funnel", PictureInk.Outline, [new(x - HalfRim, Rim), new(x - HalfNeck, Neck)], Closed: false));
        drawing.Add(new DrawnStroke("funnel", PictureInk.Outline, [new(x + HalfRim, Rim), new(x + HalfNeck, Neck)], Closed: false));

        double gap = held.From.Y - BreakAbove;
        Point2 slant = new(1.4e-3, -0.6e-3), apart = new(0, 0.5e-3), middle = new(x, gap);
        drawing.Add(new DrawnStroke("break", Broken, [middle - slant, middle + slant], Closed: false));
        foreach (Point2 off in (ReadOnlySpan<Point2>)[apart, -1 * apart])
            drawing.Add(new DrawnStroke("break", PictureInk.Fitting, [middle + off - slant, middle + off + slant], Closed: false));
        dimensions.Down(new(x + side * HalfRim, Surface), new(edge, held.From.Y), headX, head);
    }
}
