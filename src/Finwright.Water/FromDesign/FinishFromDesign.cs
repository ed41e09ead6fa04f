using Finwright.Design;
using Finwright.Water.Finishes;

namespace Finwright.Water.FromDesign;

/// <summary>The finishes of a design, in SI units.</summary>
public static class FinishFromDesign
{
    // Standing, the blade's wall is upright but for the taper of its thickness, a degree or so: no stairs to speak of.
    private const double StandingWall = 89 * Math.PI / 180;

    // Lying, the wall near the nose decides where the layer trips: at 5 % of the chord a four-digit section of 10 % is inclined by
    // 14 degrees (NACA TR-460), so each layer ends in nearly its full height.
    private const double LyingWall = 15 * Math.PI / 180;

    /// <summary>The finish of the starboard side.</summary>
    /// <param name="design">Every value within the range of its field.</param>
    /// <param name="standing">Whether the blade is printed standing; null to go by the design, where "auto" counts as standing, which it tries first.</param>
    public static SurfaceFinish Starboard(FinDesign design, bool? standing = null)
    {
        ArgumentNullException.ThrowIfNull(design);
        return Of(design.Shape.StarboardFinish, design, standing);
    }

    /// <summary>The finish of the port side.</summary>
    /// <param name="design">Every value within the range of its field.</param>
    /// <param name="standing">Whether the blade is printed standing; null to go by the design, where "auto" counts as standing, which it tries first.</param>
    public static SurfaceFinish Port(FinDesign design, bool? standing = null)
    {
        ArgumentNullException.ThrowIfNull(design);
        return Of(design.Shape.PortFinish, design, standing);
    }

    private static SurfaceFinish Of(Finish finish, FinDesign design, bool? standing)
    {
        bool stands = standing ?? design.Parts.BladeAttitude is not PrintAttitude.Lying;
        return finish switch
        {
            Finish.Polished => SurfaceFinish.Polished,
            Finish.Grit400 => SurfaceFinish.Grit400,
            // Standing, layers are level with the hull and their lines run along the stream at any rake.
            Finish.BarePrint when stands => SurfaceFinish.BarePrint(design.Print.LayerMm * 1e-3, StandingWall, 0),
            Finish.BarePrint => SurfaceFinish.BarePrint(design.Print.LayerMm * 1e-3, LyingWall, Math.PI / 2),
            _ => throw new ArgumentOutOfRangeException(nameof(design), finish, "Not a finish."),
        };
    }
}
