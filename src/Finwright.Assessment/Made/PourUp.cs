using Finwright.Design;
using Finwright.Geometry;

namespace Finwright.Assessment.Made;

/// <summary>From the design's words to the direction that points up while a part is poured.</summary>
internal static class PourUp
{
    /// <summary>Upward unit vector, design axes; null when it is to be found.</summary>
    /// <param name="pour">The design's pour.</param>
    public static Point3? Of(Pour pour)
    {
        // Each position's up, and what a positive tilt turns it toward: the trailing edge, or the tip where an edge points up or down.
        Point3 aft = new(1, 0, 0), toTip = new(0, 1, 0), starboard = new(0, 0, 1);
        (Point3 Up, Point3 Toward)? position = pour.Attitude switch
        {
            PourPosition.TipDown => (-1 * toTip, aft),
            PourPosition.TipUp => (toTip, aft),
            PourPosition.LeadingEdgeDown => (aft, toTip),
            PourPosition.LeadingEdgeUp => (-1 * aft, toTip),
            PourPosition.StarboardUp => (starboard, aft),
            PourPosition.PortUp => (-1 * starboard, aft),
            _ => null,
        };
        if (position is not { } own)
            return null;
        (double sin, double cos) = Math.SinCos(double.DegreesToRadians(pour.TiltDegrees));
        return cos * own.Up + sin * own.Toward;
    }
}
